"""How much a cylinder may hold, and when it may not be filled at all.

A share of the water capacity without the density of the refrigerant would overfill a cylinder of
hydrocarbon and is not offered.
"""

from dataclasses import dataclass
from datetime import date
from typing import Literal

from chargebench.calc.compare import at_least
from chargebench.errors import ChargebenchError
from chargebench.rules import Cylinders, Figure
from chargebench.units import Q, Quantity, dimensions
from chargebench.words import say

By = Literal["80 % at 25 °C", "liquid full at hot temperature", "printed filling ratio"]


@dataclass(frozen=True, slots=True)
class FillLimit:
    """Most refrigerant a cylinder may hold, by the lowest of the limits that hold for it."""

    mass: Quantity
    by: By
    at_reference: Quantity | None
    at_hot: Quantity | None
    printed: Quantity | None
    hot_temperature: Figure


@dataclass(frozen=True, slots=True)
class TareLoss:
    """Mass a cylinder lost since its tare was stamped."""

    share: Quantity
    blocks_filling: bool


@dataclass(frozen=True, slots=True)
class RequalificationState:
    """Where a cylinder stands before its requalification."""

    word: Literal["current", "due this month", "overdue", "unknown"]
    may_be_filled: bool
    days_left: int | None


@dimensions(
    refrigerant_liquid_density_25C="[density]",
    liquid_density_hot="[density]",
)
def fill_limit(
    *,
    water_capacity: Quantity,
    refrigerant_liquid_density_25C: Quantity | None,  # noqa: N803 - the C is the kelvin scale's
    liquid_density_hot: Quantity | None,
    rule: Cylinders,
    refrigerant: str = "",
) -> FillLimit:
    """Most refrigerant a cylinder may hold.

    Parameters
    ----------
    water_capacity : Quantity [kg or L]
        Water the cylinder holds, by mass as stamped, or its volume.
    refrigerant_liquid_density_25C : Quantity or None [kg/m**3]
        Saturated liquid density at the rule's fill temperature; None above the critical point.
    liquid_density_hot : Quantity or None [kg/m**3]
        Saturated liquid density at the rule's hot temperature; None above the critical point.
    rule : Cylinders
        The rule set's figures.
    refrigerant : str
        Name in the catalogue, for a filling ratio the rule set prints; empty for none.

    Returns
    -------
    FillLimit
        The lowest of: a share of the volume as liquid at the fill temperature; not liquid full at
        the hot temperature; the printed ratio.

    Raises
    ------
    ChargebenchError
        A water capacity that is none, or a gas without liquid and without a printed ratio.

    Notes
    -----
    0.80 x water capacity x relative density at 25 °C; hot share x volume x hot liquid density.

    Source
    ------
    AHRI-K, maximum gross weight; 49CFR173, 173.304a(a)(2).
    """
    volume = _volume(water_capacity, rule)
    at_reference = _held(rule.fill_share, volume, refrigerant_liquid_density_25C)
    at_hot = _held(rule.hot_share, volume, liquid_density_hot)
    ratio = next((row.ratio for row in rule.filling_ratios if row.refrigerant == refrigerant), None)
    printed = None if ratio is None else _held(ratio, volume, rule.water_density.quantity)
    if printed is None and (at_reference is None or at_hot is None):
        raise _without_liquid(refrigerant, rule)
    limits: dict[By, Quantity | None] = {
        "80 % at 25 °C": at_reference,
        "liquid full at hot temperature": at_hot,
        "printed filling ratio": printed,
    }
    known = {by: mass for by, mass in limits.items() if mass is not None}
    by = min(known, key=lambda one: known[one].magnitude)
    return FillLimit(known[by], by, at_reference, at_hot, printed, rule.hot_temperature)


def _without_liquid(refrigerant: str, rule: Cylinders) -> ChargebenchError:
    return ChargebenchError(
        say(
            "{refrigerant} has no liquid at {temperature}; expected a filling "
            "ratio in the rule set. Fill by the ratio stamped on the cylinder.",
            refrigerant=refrigerant or "This refrigerant",
            temperature=rule.hot_temperature.text,
        )
    )


def _held(share: Figure, volume: Quantity, density: Quantity | None) -> Quantity | None:
    if density is None:
        return None
    mass: Quantity = (share.quantity.m_as("") * volume * density).to("kg")
    return mass


def _volume(water_capacity: Quantity, rule: Cylinders) -> Quantity:
    if not water_capacity.magnitude > 0:
        raise ChargebenchError("Expected a water capacity above zero, as stamped on the cylinder.")
    if water_capacity.check("[volume]"):
        return water_capacity
    if water_capacity.check("[mass]"):
        volume: Quantity = water_capacity / rule.water_density.quantity
        return volume
    raise ChargebenchError("Expected a water capacity as a mass of water or a volume.")


@dimensions(tare="[mass]")
def gross_limit(*, tare: Quantity, limit: FillLimit) -> Quantity:
    """Highest reading of the cylinder on a scale.

    Parameters
    ----------
    tare : Quantity [kg]
        Tare as stamped.
    limit : FillLimit
        As found by `fill_limit`.

    Returns
    -------
    Quantity [kg]
        Tare and limit together.

    Source
    ------
    AHRI-K, maximum gross weight.
    """
    return Q(tare.m_as("kg") + limit.mass.m_as("kg"), "kg")


@dimensions(content="[mass]")
def room_left(*, limit: FillLimit, content: Quantity) -> Quantity:
    """Mass that may still be put in; negative where the cylinder is over its limit.

    Parameters
    ----------
    limit : FillLimit
        As found by `fill_limit`.
    content : Quantity [kg]
        Refrigerant in the cylinder.

    Returns
    -------
    Quantity [kg]
        Limit less content.

    Source
    ------
    AHRI-K, maximum gross weight.
    """
    return Q(limit.mass.m_as("kg") - content.m_as("kg"), "kg")


@dimensions(stamped="[mass]", found="[mass]")
def tare_loss(*, stamped: Quantity, found: Quantity, rule: Cylinders) -> TareLoss:
    """Mass a cylinder lost since its tare was stamped, and whether that stops filling.

    Parameters
    ----------
    stamped : Quantity [kg]
        Tare stamped on the cylinder.
    found : Quantity [kg]
        Mass of the cylinder weighed empty.
    rule : Cylinders
        The rule set's figures.

    Returns
    -------
    TareLoss
        Share [percent] of the stamped tare, negative for a gain; blocks from the limit on.

    Raises
    ------
    ChargebenchError
        A stamped tare of zero.

    Source
    ------
    49CFR173, 180.209(c).
    """
    whole = stamped.m_as("kg")
    if not whole > 0:
        raise ChargebenchError("Expected a stamped tare above zero.")
    share = Q(100 * (whole - found.m_as("kg")) / whole, "percent")
    return TareLoss(share, at_least(share, rule.tare_loss.quantity))


def requalification_state(due: date | None, on: date) -> RequalificationState:
    """Where a cylinder stands before its requalification.

    Parameters
    ----------
    due : date or None
        Last day on which it may be filled; a stamp of month and year is the month's last day.
    on : date
        The day asked about.

    Returns
    -------
    RequalificationState
        A cylinder past its day, or of unknown day, may not be filled; it may be used up.

    Source
    ------
    49CFR173, 180.205(c).
    """
    if due is None:
        return RequalificationState("unknown", may_be_filled=False, days_left=None)
    left = (due - on).days
    if left < 0:
        return RequalificationState("overdue", may_be_filled=False, days_left=left)
    same_month = (due.year, due.month) == (on.year, on.month)
    word: Literal["current", "due this month"] = "due this month" if same_month else "current"
    return RequalificationState(word, may_be_filled=True, days_left=left)


@dimensions(gross="[mass]")
def weighing_tolerance(*, gross: Quantity, rule: Cylinders) -> Quantity:
    """Difference between ledger and scale that is not asked about.

    Parameters
    ----------
    gross : Quantity [kg]
        Reading of the scale with the cylinder on it.
    rule : Cylinders
        The rule set's figures.

    Returns
    -------
    Quantity [kg]
        The larger of a share of the reading and a least difference.

    Source
    ------
    HVACLAB, accuracy of a field scale; CHARGEBENCH for the least difference.
    """
    share = rule.weighing_share.quantity.m_as("") * gross.m_as("kg")
    return Q(max(share, rule.weighing_floor.quantity.m_as("kg")), "kg")
