"""Charge limits by rule set and type of equipment."""

from dataclasses import dataclass
from datetime import date

from chargebench.rules import ChargeLimitRule, Figure, Flammability, RuleSet
from chargebench.units import Quantity, dimensions


@dataclass(frozen=True, slots=True)
class ChargeLimit:
    """Most refrigerant of a circuit by one rule."""

    mass: Quantity
    title: str
    by: Figure  # the mass itself, the multiple of the lower limit, or the cap
    rule: ChargeLimitRule

    @property
    def unverified(self) -> bool:
        """Whether a figure the limit hangs on was not checked against its source."""
        parts = (self.by, self.rule.times_lfl, self.rule.made_from, self.rule.made_until)
        return any(part is not None and part.unverified for part in parts)


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
    made_on: date,
) -> ChargeLimit | None:
    """Charge limit of a circuit by the rule set and the type of equipment.

    Parameters
    ----------
    refrigerant : str
        Name in the catalogue.
    safety_class : str
        Class such as A3.
    lfl : Quantity or None [kg/m**3]
        Lower flammable limit; needed where a rule is a multiple of it.
    cabinet : str
        Type as in the equipment register.
    rule_set : RuleSet
        The rule set that holds.
    made_on : date
        Day of manufacture, or of installation, or today where neither is known.

    Returns
    -------
    ChargeLimit or None
        The first rule that fits; None where none does. The nameplate holds in any case.

    Notes
    -----
    A multiple of the lower limit is a volume in m**3 times the limit in kg/m**3.

    Source
    ------
    IEC60335-2-24; IEC60335-2-89; UL60335-2-89; SNAP. Each limit names its own.
    """
    for rule in rule_set.flammability.limits:
        if _fits(rule, refrigerant, safety_class, cabinet, made_on):
            if rule.mass is not None:
                return ChargeLimit(rule.mass.quantity.to("kg"), rule.title, rule.mass, rule)
            if lfl is not None:
                return _multiple(rule, lfl)
    return None


def _fits(
    rule: ChargeLimitRule, refrigerant: str, safety_class: str, cabinet: str, made_on: date
) -> bool:
    return (
        cabinet in rule.cabinets
        and safety_class in rule.classes
        and (not rule.refrigerants or refrigerant in rule.refrigerants)
        and (rule.made_from is None or made_on >= rule.made_from.value)
        and (rule.made_until is None or made_on <= rule.made_until.value)
    )


def _multiple(rule: ChargeLimitRule, lfl: Quantity) -> ChargeLimit:
    assert rule.times_lfl is not None, rule.title
    mass = (rule.times_lfl.quantity * lfl).to("kg")
    if rule.cap is not None and mass > rule.cap.quantity:
        return ChargeLimit(rule.cap.quantity.to("kg"), rule.title, rule.cap, rule)
    return ChargeLimit(mass, rule.title, rule.times_lfl, rule)


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
