"""Charge limits by rule set and type of equipment."""

from dataclasses import dataclass
from datetime import date
from typing import get_args

from chargebench.rules import ChargeLimitRule, Figure, Flammability, RuleSet
from chargebench.sources import Mark
from chargebench.units import Quantity, dimensions

_WEAKNESS: tuple[Mark, ...] = get_args(Mark)  # from read in the source to recalled


@dataclass(frozen=True, slots=True)
class ChargeLimit:
    """Most refrigerant of a circuit by one rule."""

    mass: Quantity
    by: Figure  # the mass itself, the multiple of the lower limit, or the cap
    rule: ChargeLimitRule

    @property
    def title(self) -> str:
        """The standard or listing in words."""
        return self.rule.title

    @property
    def source(self) -> str:
        """Key of the source with the place in it."""
        return f"{self.by.source}, {self.by.place}"

    @property
    def mark(self) -> Mark:
        """Weakest mark of the figures the limit hangs on."""
        parts = (self.by, self.rule.times_lfl, self.rule.made_from, self.rule.made_until)
        marks = [part.mark for part in parts if part is not None]
        return max(marks, key=_WEAKNESS.index)

    @property
    def unverified(self) -> bool:
        """Whether a figure the limit hangs on was not checked against its source."""
        return self.mark == "MEMORY"


def is_flammable(safety_class: str, rule: Flammability) -> bool:
    """Whether a safety class is one of flammable refrigerants.

    Parameters
    ----------
    safety_class : str
        Class such as A3.
    rule : Flammability
        The rule set's figures.

    Returns
    -------
    bool
        True from class 2L on.

    Source
    ------
    ISO817, safety classes.
    """
    return safety_class in rule.flammable_classes.value.split()


@dimensions(lfl="[density]")
def charge_limit(
    *,
    refrigerant: str,
    safety_class: str,
    lfl: Quantity | None,
    cabinet: str,
    rule_set: RuleSet,
    made_on: date | None = None,
) -> ChargeLimit | None:
    """Charge limit of a circuit by the rule set and the type of equipment.

    Parameters
    ----------
    refrigerant : str
        Name in the catalogue.
    safety_class : str
        Class such as A3.
    lfl : Quantity or None [kg/m**3]
        Lower flammable limit; a rule that is a multiple of it is passed over without it.
    cabinet : str
        Type as in the equipment register.
    rule_set : RuleSet
        The rule set that holds.
    made_on : date, optional
        Day of manufacture or installation; without it the limits for equipment made now.

    Returns
    -------
    ChargeLimit or None
        The first rule that fits [kg]; None where none does. The nameplate holds in any case.

    Notes
    -----
    A multiple of the lower limit is a volume in m**3 times the limit in kg/m**3.

    Source
    ------
    IEC60335-2-24; IEC60335-2-89; UL60335-2-89; SNAP. Each limit names its own.
    """
    for rule in rule_set.flammability.limits:
        fits = (
            cabinet in rule.cabinets
            and safety_class in rule.classes
            and (not rule.refrigerants or refrigerant in rule.refrigerants)
            and _in_force(rule, made_on)
        )
        if fits and rule.mass is not None:
            return ChargeLimit(rule.mass.quantity.to("kg"), rule.mass, rule)
        if fits and lfl is not None:
            return _multiple(rule, lfl)
    return None


def _in_force(rule: ChargeLimitRule, made_on: date | None) -> bool:
    if made_on is None:
        return rule.made_until is None
    begun = rule.made_from is None or made_on >= rule.made_from.value
    return begun and (rule.made_until is None or made_on <= rule.made_until.value)


def _multiple(rule: ChargeLimitRule, lfl: Quantity) -> ChargeLimit:
    assert rule.times_lfl is not None, rule.title
    mass = (rule.times_lfl.quantity * lfl).to("kg")
    if rule.cap is not None and mass > rule.cap.quantity:
        return ChargeLimit(rule.cap.quantity.to("kg"), rule.cap, rule)
    return ChargeLimit(mass, rule.times_lfl, rule)


@dimensions(lfl="[density]")
def charge_steps(lfl: Quantity, rule: Flammability) -> tuple[Quantity, ...]:
    """Charges m1, m2 and m3 at which the room rules change.

    Parameters
    ----------
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    rule : Flammability
        The rule set's figures.

    Returns
    -------
    tuple of Quantity [kg]
        Rising: below the first no room rule holds, above the last no charge is allowed indoors.

    Notes
    -----
    m = V x LFL with V of 4, 26 and 130 m**3.

    Source
    ------
    IEC60335-2-40, annex GG.
    """
    return tuple((step.quantity * lfl).to("kg") for step in rule.steps)
