"""Refrigerants and their properties: the only door to CoolProp, which runs in its own process."""

from chargebench.fluids import water
from chargebench.fluids.catalogue import names, refrigerant
from chargebench.fluids.gas import (
    NITROGEN,
    await_gas_density,
    close,
    gas_density,
    gas_density_ready,
    warm_up,
)
from chargebench.fluids.refrigerants import (
    GWP_SETS,
    Component,
    Figure,
    LimitFigure,
    Refrigerant,
)
from chargebench.fluids.saturated import Saturation, saturation

__all__ = [
    "GWP_SETS",
    "NITROGEN",
    "Component",
    "Figure",
    "LimitFigure",
    "Refrigerant",
    "Saturation",
    "await_gas_density",
    "close",
    "gas_density",
    "gas_density_ready",
    "names",
    "refrigerant",
    "saturation",
    "warm_up",
    "water",
]
