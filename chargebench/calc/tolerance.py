"""Default charge tolerance of an equipment, where none is typed for it."""

from dataclasses import dataclass

from chargebench.calc.compare import at_least
from chargebench.rules import Charge, ChargeTolerance, Figure
from chargebench.units import Q, Quantity, dimensions


@dataclass(frozen=True, slots=True)
class Tolerance:
    """Mass a charge may differ from its nameplate by, and the row it comes from."""

    mass: Quantity
    by: Figure
    row: ChargeTolerance


@dimensions(nameplate="[mass]")
def charge_tolerance(*, nameplate: Quantity, safety_class: str, rule: Charge) -> Tolerance | None:
    """Default tolerance of a charge.

    Parameters
    ----------
    nameplate : Quantity [g]
        Charge by the nameplate.
    safety_class : str
        Class such as A3.
    rule : Charge
        The rule set's tolerances.

    Returns
    -------
    Tolerance or None
        The first row that fits: the larger of its mass and its share; None where none fits.

    Source
    ------
    COMMON; each row names its own and most are from memory.
    """
    for row in rule.tolerances:
        if row.classes and safety_class not in row.classes:
            continue
        if row.charge_up_to is not None and not at_least(row.charge_up_to.quantity, nameplate):
            continue
        share = Q(row.share.quantity.m_as("") * nameplate.m_as("g"), "g")
        if row.mass is not None and row.mass.quantity > share:
            return Tolerance(row.mass.quantity.to("g"), row.mass, row)
        return Tolerance(share, row.share, row)
    return None
