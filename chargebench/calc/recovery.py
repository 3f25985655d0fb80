"""How far refrigerant is recovered before a circuit is opened, and what was missing."""

from dataclasses import dataclass
from datetime import date
from typing import Literal

from chargebench.calc.compare import at_least
from chargebench.errors import ChargebenchError
from chargebench.rules import (
    Figure,
    Recovery,
    RecoveryLevel,
    RuleSet,
    SmallAppliance,
    VentingExemption,
)
from chargebench.units import Q, Quantity, dimensions
from chargebench.words import say

Word = Literal["met", "not met", "not shown"]


@dataclass(frozen=True, slots=True)
class Requirement:
    """What recovery must reach: a level, or a share of the charge with a vacuum in its place."""

    level: Figure | None  # as the rule prints it
    share: Figure | None
    absolute_pressure: Quantity  # the level, or the vacuum that serves instead of the share
    vacuum_instead: Figure | None


@dataclass(frozen=True, slots=True)
class Result:
    """Whether a recovery met its requirement, and by what."""

    word: Word
    by: Literal["share", "level", ""]
    share: Quantity | None


@dimensions(charge="[mass]")
def is_small_appliance(*, charge: Quantity, factory_sealed: bool, rule: Recovery) -> bool:
    """Whether a circuit is a small appliance.

    Parameters
    ----------
    charge : Quantity [kg]
        Full charge.
    factory_sealed : bool
        Made, charged and hermetically sealed in a factory.
    rule : Recovery
        The rule set's recovery table.

    Returns
    -------
    bool
        True up to and including the limit.

    Source
    ------
    40CFR82F, 82.152 (small appliance).
    """
    limit = rule.small_appliance.charge_up_to.quantity
    return factory_sealed and at_least(limit, charge)


@dimensions(full_charge="[mass]")
def required(
    *,
    pressure_class: str,
    full_charge: Quantity,
    small_appliance: bool,
    machine_made_on: date | None,
    compressor_works: bool,
    rule: Recovery | None,
) -> Requirement | None:
    """What a recovery must reach before opening or disposal.

    Parameters
    ----------
    pressure_class : str
        "very high", "high", "medium" or "low".
    full_charge : Quantity [kg]
        Full charge of the appliance or isolated part.
    small_appliance : bool
        As found by `is_small_appliance`.
    machine_made_on : date or None
        Day the recovery machine was made; unknown counts as newer, the stricter column.
    compressor_works : bool
        Whether the appliance's compressor runs.
    rule : Recovery or None
        The rule set's recovery table; None where the jurisdiction sets no level.

    Returns
    -------
    Requirement or None
        None where no level is set; recover as far as the machine goes.

    Raises
    ------
    ChargebenchError
        A pressure class that is not in the table.

    Notes
    -----
    A vacuum is below the table's reference pressure, so its absolute pressure is the same at any
    height above the sea.

    Source
    ------
    40CFR82F, 82.156 table 1 and 82.156(b).
    """
    if rule is None:
        return None
    older = machine_made_on is not None and machine_made_on < rule.machine_date.value
    reference = rule.vacuum_reference.quantity
    if small_appliance:
        share = _share(rule.small_appliance, older=older, compressor_works=compressor_works)
        vacuum = rule.small_appliance.vacuum
        return Requirement(None, share, reference - vacuum.quantity, vacuum)
    row = _row(rule, pressure_class, full_charge)
    level = row.older_machine if older else row.newer_machine
    pressure = level.quantity if row.measure == "absolute" else reference - level.quantity
    return Requirement(level, None, pressure, None)


def _share(small: SmallAppliance, *, older: bool, compressor_works: bool) -> Figure:
    if older:
        return small.older_machine
    if compressor_works:
        return small.newer_machine_compressor_works
    return small.newer_machine_compressor_dead


def _row(rule: Recovery, pressure_class: str, full_charge: Quantity) -> RecoveryLevel:
    for row in rule.levels:
        if row.pressure_class != pressure_class:
            continue
        if row.charge_from is not None and not at_least(full_charge, row.charge_from.quantity):
            continue
        if row.charge_below is not None and at_least(full_charge, row.charge_below.quantity):
            continue
        return row
    raise ChargebenchError(
        say(
            "No recovery level for pressure class “{pressure_class}” at this charge; "
            "expected very high, high, medium or low.",
            pressure_class=pressure_class,
        )
    )


@dimensions(charge="[mass]", recovered="[mass]", absolute_pressure="[pressure]")
def result(
    requirement: Requirement,
    *,
    charge: Quantity | None,
    recovered: Quantity | None,
    absolute_pressure: Quantity | None,
) -> Result:
    """Whether a recovery met its requirement.

    Parameters
    ----------
    requirement : Requirement
        As found by `required`.
    charge : Quantity or None [kg]
        Refrigerant in the appliance before, by its nameplate where nothing better is known.
    recovered : Quantity or None [kg]
        Mass found in the cylinder.
    absolute_pressure : Quantity or None [Pa]
        Pressure reached in the appliance, absolute.

    Returns
    -------
    Result
        "not shown" where neither share nor level was measured. A leaked charge can fall short of
        the share; the vacuum settles it.

    Source
    ------
    40CFR82F, 82.156(a) and (b).
    """
    share = None
    if charge is not None and recovered is not None and charge.magnitude > 0:
        share = Q(100 * recovered.m_as("kg") / charge.m_as("kg"), "percent")
    wanted = requirement.share
    if wanted is not None and share is not None and at_least(share, wanted.quantity):
        return Result("met", "share", share)
    if absolute_pressure is None:
        shown = wanted is not None and share is not None
        return Result("not met" if shown else "not shown", "share" if shown else "", share)
    reached = at_least(requirement.absolute_pressure, absolute_pressure)
    return Result("met" if reached else "not met", "level", share)


@dimensions(nameplate="[mass]", recovered="[mass]")
def missing(*, nameplate: Quantity, recovered: Quantity) -> Quantity:
    """Mass that recovery did not find; negative where more was found than the nameplate says.

    Parameters
    ----------
    nameplate : Quantity [g]
        Charge by the nameplate.
    recovered : Quantity [g]
        Mass recovered.

    Returns
    -------
    Quantity [g]
        Nameplate less recovered.

    Source
    ------
    COMMON, the nameplate is the only record of a factory charge.
    """
    return Q(nameplate.m_as("g") - recovered.m_as("g"), "g")


def release_allowed(
    refrigerant: str, *, cabinet: str, on: date, rule_set: RuleSet
) -> VentingExemption | None:
    """Exemption under which a refrigerant may be released from an equipment.

    Parameters
    ----------
    refrigerant : str
        Name as in the catalogue.
    cabinet : str
        Type as in the equipment register.
    on : date
        Day of the release.
    rule_set : RuleSet
        The rule set that holds.

    Returns
    -------
    VentingExemption or None
        None means recover. Its uses in words are to be read against the equipment by a person.

    Source
    ------
    40CFR82F, 82.154(a)(1).
    """
    for exemption in rule_set.venting.exemptions:
        if refrigerant not in exemption.refrigerants:
            continue
        if exemption.since is not None and on < exemption.since.value:
            continue
        if not exemption.cabinets or cabinet in exemption.cabinets:
            return exemption
    return None
