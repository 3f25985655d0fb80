"""Typed text to readings and back: the one pint registry, exact mass factors, gauge and absolute.

Sums of mass are made in integer milligrams, physics in quantities.
"""

from chargebench.units.air import absolute, air_pressure_at
from chargebench.units.reading import Reading, read, show, write
from chargebench.units.registry import (
    EXACT_MG,
    STANDARD_ATMOSPHERE,
    Q,
    Quantity,
    dimensions,
    from_mg,
    mass_mg,
    mg,
    ureg,
)
from chargebench.units.shown import YEARLY, System, brief, digits, gauge, shown, unit_for
from chargebench.units.tables import RULES, Kind

__all__ = [
    "EXACT_MG",
    "RULES",
    "STANDARD_ATMOSPHERE",
    "YEARLY",
    "Kind",
    "Q",
    "Quantity",
    "Reading",
    "System",
    "absolute",
    "air_pressure_at",
    "brief",
    "digits",
    "dimensions",
    "from_mg",
    "gauge",
    "mass_mg",
    "mg",
    "read",
    "show",
    "shown",
    "unit_for",
    "ureg",
    "write",
]
