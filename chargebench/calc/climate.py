"""Tonnes of CO2 equivalent and the leak checks that hang on them."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal

from chargebench.calc.compare import above, at_least
from chargebench.calc.dates import after
from chargebench.calc.duty import Done, Duty, periodic
from chargebench.rules import Climate, Figure, LeakCheck, ServiceBan
from chargebench.units import Q, Quantity, dimensions


@dataclass(frozen=True, slots=True)
class CheckInterval:
    """How often a circuit is checked for leaks; `every` is None where no check is owed."""

    every: Figure | None
    by: tuple[LeakCheck, ...]  # the row reached by CO2e and the row reached by HFO mass
    exempt: Figure | None  # the hermetic limit below which no check is owed
    detection_compulsory: bool


@dataclass(frozen=True, slots=True)
class Recheck:
    """A test of a repaired leak with the equipment running."""

    on: date
    tight: bool
    ran: Quantity | None = None  # since the repair, where it was said
    entry: int = 0


@dimensions(mass="[mass]")
def tonnes_co2e(mass: Quantity, gwp: float | Decimal) -> Quantity:
    """Mass of CO2 with the same warming over 100 years.

    Parameters
    ----------
    mass : Quantity [kg]
        Mass of refrigerant.
    gwp : float or Decimal [1]
        Global warming potential in the set that counts.

    Returns
    -------
    Quantity [t]
        Tonnes of CO2 equivalent.

    Notes
    -----
    mass x GWP

    Source
    ------
    EU2024/573, article 3 (tonnes of CO2 equivalent).
    """
    return Q(mass.m_as("t") * float(gwp), "t")


@dimensions(co2e="[mass]", hfo_mass="[mass]", charge="[mass]")
def check_interval(
    *,
    co2e: Quantity,
    hfo_mass: Quantity,
    charge: Quantity,
    rule: Climate,
    hermetic_labelled: bool = False,
    residential: bool = False,
    detection: bool = False,
) -> CheckInterval:
    """Leak check interval of a circuit.

    Parameters
    ----------
    co2e : Quantity [t]
        CO2 equivalent of the charge; zero for a refrigerant without HFC.
    hfo_mass : Quantity [kg]
        Mass of unsaturated fluorinated substances in the charge.
    charge : Quantity [kg]
        Whole charge, for the limit in residential buildings.
    rule : Climate
        The rule set's checks.
    hermetic_labelled : bool
        Hermetically sealed and labelled so.
    residential : bool
        In a residential building.
    detection : bool
        A leakage detection system is fitted.

    Returns
    -------
    CheckInterval
        The shorter interval where CO2e and HFO mass both reach a row; both rows are named.

    Source
    ------
    EU2024/573, articles 5 and 6.
    """
    rows = tuple(
        row
        for counts, amount in (("CO2e", co2e), ("HFO mass", hfo_mass))
        if (row := _reached(rule, counts, amount)) is not None
    )
    if hermetic_labelled:
        limits = {"CO2e": (co2e, rule.hermetic_co2e), "HFO mass": (hfo_mass, rule.hermetic_hfo)}
        exempt = rule.hermetic_co2e
        kept = tuple(row for row in rows if _still_owed(*limits[row.counts]))
        if rule.hermetic_residential is not None and residential:
            in_home = rule.hermetic_residential
            if not at_least(charge, in_home.quantity):
                kept, exempt = (), in_home
        if rows and not kept:
            return CheckInterval(None, rows, exempt, detection_compulsory=False)
        rows = kept
    spans = [row.every_with_detection if detection else row.every for row in rows]
    shortest = min(spans, key=lambda span: span.quantity.m_as("month"), default=None)
    compulsory = any(row.detection_compulsory for row in rows)
    return CheckInterval(shortest, rows, None, detection_compulsory=compulsory)


def _reached(rule: Climate, counts: str, amount: Quantity) -> LeakCheck | None:
    rows = [
        row
        for row in rule.checks
        if row.counts == counts and at_least(amount, row.reaching.quantity)
    ]
    return max(rows, key=lambda row: row.reaching.quantity.m_as("kg"), default=None)


def _still_owed(amount: Quantity, limit: Figure | None) -> bool:
    return limit is None or at_least(amount, limit.quantity)


def check_duties(
    since: date, interval: CheckInterval, checks: Sequence[Done], entries: tuple[int, ...] = ()
) -> tuple[Duty, ...]:
    """Leak checks owed by a circuit, those done and the next.

    Parameters
    ----------
    since : date
        Day of installation, or from which the circuit is known.
    interval : CheckInterval
        As found by `check_interval`.
    checks : sequence of Done
        Checks of the whole circuit.
    entries : tuple of int
        Entries from which `since` is known.

    Returns
    -------
    tuple of Duty
        None where no check is owed.

    Source
    ------
    EU2024/573, article 5(6).
    """
    if interval.every is None:
        return ()
    return periodic("leak check", since, interval.every, checks, entries=entries)


def recheck_duty(repaired: Done, rule: Climate, rechecks: Sequence[Recheck]) -> Duty:
    """The check that a repaired leak is closed.

    Parameters
    ----------
    repaired : Done
        Day of the repair and its entry.
    rule : Climate
        The rule set's checks; its `recheck_earliest` says how long the circuit runs before.
    rechecks : sequence of Recheck
        Tests on record. One that says how long the equipment ran is held to that; one that does
        not counts from so many whole days later.

    Returns
    -------
    Duty
        Ended by the first good test that is not too early.

    Source
    ------
    EU2024/573, article 4(5).
    """
    entries = (repaired.entry,) if repaired.entry else ()
    owed = Duty(
        "check after repair",
        after(repaired.on, rule.recheck_latest),
        repaired.on,
        rule.recheck_latest,
        entries,
    )
    for one in sorted(rechecks, key=lambda each: each.on):
        if one.tight and one.on >= repaired.on and _ran_long_enough(one, repaired.on, rule):
            return owed.ended(one.on, "found tight", one.entry)
    return owed


def _ran_long_enough(one: Recheck, repaired_on: date, rule: Climate) -> bool:
    if rule.recheck_earliest is None:
        return True
    earliest = rule.recheck_earliest.quantity
    if one.ran is not None:
        return at_least(one.ran, earliest)
    return one.on >= repaired_on + timedelta(days=math.ceil(earliest.m_as("day")))


def service_ban(
    *, gwp: float | Decimal, use: str, on: date, rule: Climate, reclaimed: bool = False
) -> ServiceBan | None:
    """Ban under which a refrigerant may not be used to service equipment.

    Parameters
    ----------
    gwp : float or Decimal [1]
        Global warming potential in the set that counts.
    use : str
        "refrigeration" or "air conditioning".
    on : date
        Day of the service.
    rule : Climate
        The rule set's bans.
    reclaimed : bool
        Whether the refrigerant is reclaimed, or recycled by its owner.

    Returns
    -------
    ServiceBan or None
        The first that forbids it. Reclaimed refrigerant is free where no last day is named.

    Source
    ------
    EU2024/573, article 13.
    """
    for ban in rule.service_bans:
        reached = not above(ban.gwp_from.quantity, Q(float(gwp), ""))
        if ban.use != use or not reached or on < ban.since.value:
            continue
        until = ban.reclaimed_until
        if not reclaimed or (until is not None and on > until.value):
            return ban
    return None
