"""Weigh-in: hose content, stop reading, what went in, and how it stands against the nameplate."""

import math
from collections.abc import Iterable
from dataclasses import dataclass, field
from enum import StrEnum

from chargebench.calc.hose import hose_content, hose_volume, share_of_charge
from chargebench.calc.scale import COVERAGE
from chargebench.units import Q, Quantity, dimensions

__all__ = [
    "Arrangement",
    "ChargeWord",
    "CylinderLine",
    "Verdict",
    "Withdrawal",
    "charged",
    "hose_content",
    "hose_volume",
    "share_of_charge",
    "stop_reading",
    "to_charge",
    "verdict",
    "withdraw_as",
]


class Arrangement(StrEnum):
    """What stands on the scale during the weigh-in."""

    CYLINDER = "cylinder on the scale"
    EQUIPMENT = "equipment on the scale"
    ZEROED = "zeroed display"


class ChargeWord(StrEnum):
    """How a charge stands against the nameplate."""

    UNDER = "under"
    WITHIN = "within"
    OVER = "over"
    TOO_COARSE = "scale too coarse to tell"


@dataclass(frozen=True, slots=True)
class CylinderLine:
    """One cylinder's part of a charge: readings before and after, and what its hose held.

    `hose` is what was still in the hose at disconnection, `hose_at_start` what was in it already
    at the start reading (nothing after an evacuation, much after purging it with liquid).
    """

    arrangement: Arrangement
    start: Quantity
    end: Quantity
    hose: Quantity = field(default_factory=lambda: Q(0, "g"))
    hose_at_start: Quantity = field(default_factory=lambda: Q(0, "g"))

    @property
    def into_equipment(self) -> Quantity:
        """Mass [g] that reached the equipment."""
        gone = self.start.m_as("g") - self.end.m_as("g")
        if self.arrangement is Arrangement.EQUIPMENT:
            return Q(-gone, "g")
        return Q(gone - self.hose.m_as("g") + self.hose_at_start.m_as("g"), "g")

    @property
    def left_cylinder(self) -> Quantity:
        """Mass [g] that left the cylinder between the two readings."""
        if self.arrangement is Arrangement.EQUIPMENT:
            left: Quantity = self.into_equipment + self.hose.to("g") - self.hose_at_start.to("g")
            return left
        gone: Quantity = (self.start - self.end).to("g")
        return gone


@dataclass(frozen=True, slots=True)
class Verdict:
    """A charge against its nameplate, with the difference, its doubt and a scale that would do."""

    word: ChargeWord
    difference: Quantity  # charged - nameplate
    expanded_uncertainty: Quantity
    resolution_enough: Quantity | None  # None: no finer scale alone would decide


@dataclass(frozen=True, slots=True)
class Withdrawal:
    """How a refrigerant must leave its cylinder, and why."""

    phase: str  # "liquid" or "liquid or vapour"
    reason: str


@dimensions(nameplate="[mass]", opening_content="[mass]")
def to_charge(*, nameplate: Quantity, opening_content: Quantity) -> Quantity:
    """Mass still to be weighed in.

    Parameters
    ----------
    nameplate : Quantity [g]
        Charge on the nameplate.
    opening_content : Quantity [g]
        What is in the equipment before the weigh-in; nothing after an evacuation.

    Returns
    -------
    Quantity [g]
        Nameplate less content; negative where there is already too much in it.

    Source
    ------
    COMMON.
    """
    left: Quantity = nameplate.to("g") - opening_content.to("g")
    return left


def charged(lines: Iterable[CylinderLine]) -> Quantity:
    """Mass that reached the equipment, over all cylinders of one charge.

    Parameters
    ----------
    lines : iterable of CylinderLine [g]
        One line for each cylinder or each time it was connected.

    Returns
    -------
    Quantity [g]
        Sum of start - end - hose at disconnection + hose at start; where the equipment stands on
        the scale, of end - start.

    Notes
    -----
    What is still in the hose at disconnection left the cylinder but is not in the equipment.

    Source
    ------
    COMMON (balance of masses).
    """
    return Q(math.fsum(line.into_equipment.m_as("g") for line in lines), "g")


@dimensions(start="[mass]", target="[mass]", hose="[mass]", hose_at_start="[mass]")
def stop_reading(
    *,
    start: Quantity | None,
    target: Quantity,
    hose: Quantity,
    arrangement: Arrangement,
    hose_at_start: Quantity | None = None,
) -> Quantity:
    """Scale reading at which to shut the valve.

    Parameters
    ----------
    start : Quantity [g] or None
        Reading before charging; None for a zeroed display.
    target : Quantity [g]
        Mass wanted in the equipment.
    hose : Quantity [g]
        What the hose will hold at disconnection.
    arrangement : Arrangement
        What stands on the scale.
    hose_at_start : Quantity [g] or None
        What the hose held already at the start reading.

    Returns
    -------
    Quantity [g]
        Stop reading; negative on a zeroed display, which counts down.

    Notes
    -----
    Cylinder: start - target - hose + hose at start: the hose keeps what the equipment does not
    get. Equipment: start + target, the hose does not count (but must not pull at the scale).

    Source
    ------
    COMMON (balance of masses).
    """
    assert start is not None or arrangement is Arrangement.ZEROED, "a start reading is needed"
    begin = start.m_as("g") if start is not None else 0.0
    wanted = target.m_as("g")
    if arrangement is Arrangement.EQUIPMENT:
        return Q(begin + wanted, "g")
    already = hose_at_start.m_as("g") if hose_at_start is not None else 0.0
    return Q(begin - wanted - hose.m_as("g") + already, "g")


@dimensions(
    charged="[mass]",
    nameplate="[mass]",
    tolerance="[mass]",
    expanded_uncertainty="[mass]",
    resolution="[mass]",
)
def verdict(
    *,
    charged: Quantity,
    nameplate: Quantity,
    tolerance: Quantity,
    expanded_uncertainty: Quantity,
    resolution: Quantity | None = None,
    lines: int = 1,
) -> Verdict:
    """How a charge stands against the nameplate, where the scale can tell.

    Parameters
    ----------
    charged, nameplate : Quantity [g]
        What is in the equipment, and what should be.
    tolerance : Quantity [g]
        Largest difference allowed, either way.
    expanded_uncertainty : Quantity [g]
        Of the charged mass, k = 2.
    resolution : Quantity [g] or None
        Of the scale used; None takes the whole uncertainty as coming from it.
    lines : int
        Number of net masses in the charge.

    Returns
    -------
    Verdict [g]
        Word, difference, uncertainty, and the coarsest resolution that would decide.

    Notes
    -----
    Within if |difference| + U <= tolerance; over if difference - U > tolerance; under alike;
    otherwise the scale can not tell. The resolution that would do leaves all other doubt as is.

    Source
    ------
    JCGM106, 8.3.2 (guard bands on both sides of the limit).
    """
    off = charged.m_as("g") - nameplate.m_as("g")
    allowed, doubt = abs(tolerance.m_as("g")), abs(expanded_uncertainty.m_as("g"))
    if abs(off) + doubt <= allowed:
        word = ChargeWord.WITHIN
    elif abs(off) - doubt > allowed:
        word = ChargeWord.OVER if off > 0 else ChargeWord.UNDER
    else:
        word = ChargeWord.TOO_COARSE
    others_squared = 0.0
    if resolution is not None:
        others_squared = max((doubt / COVERAGE) ** 2 - lines * resolution.m_as("g") ** 2 / 6, 0.0)
    spare = (abs(abs(off) - allowed) / COVERAGE) ** 2 - others_squared
    enough = Q(math.sqrt(6 * spare / lines), "g") if spare > 0 else None
    return Verdict(word, Q(off, "g"), Q(doubt, "g"), enough)


def withdraw_as(kind: str) -> Withdrawal:
    """How a refrigerant must leave its cylinder.

    Parameters
    ----------
    kind : str [-]
        "pure", "azeotrope" or "zeotrope".

    Returns
    -------
    Withdrawal [-]
        Phase and reason.

    Source
    ------
    RD552/2019, IF-09 1.8: zeotropes in the liquid phase.
    """
    if kind == "zeotrope":
        return Withdrawal(
            "liquid",
            "Vapour drawn from a zeotrope has another composition than the liquid: take it as "
            "liquid and let it expand before the suction side.",
        )
    return Withdrawal("liquid or vapour", "Liquid and vapour have the same composition.")
