"""Checks that hang on tonnes of CO2 equivalent and on the mass of HFO."""

from collections.abc import Iterator
from dataclasses import replace

from chargebench.calc import climate
from chargebench.calc.climate import CheckInterval
from chargebench.desk.appliance import Appliance
from chargebench.reports import DueLine, LeakRateLine
from chargebench.reports.dated import standing
from chargebench.rules import Climate
from chargebench.units import Quantity

LEAK_CHECKS = "leak checks"


def checked(appliance: Appliance, rule: Climate) -> LeakRateLine:
    """The line of an equipment under leak checks: its tonnes, and the checks owed."""
    co2e, interval = _interval(appliance, rule)
    duties = tuple(_duties(appliance, interval, rule))
    lacking = None
    if interval.detection_compulsory and not appliance.row.yes("leak_detection"):
        lacking = next(row.reaching for row in interval.by if row.detection_compulsory)
    return replace(
        appliance.bare,
        regulation=LEAK_CHECKS,
        co2e_t=co2e.m_as("t"),
        lacks_detection=lacking,
        duties=duties,
        due=standing(duties),
    )


def owes_checks(appliance: Appliance, rule: Climate) -> bool:
    """Whether its content makes it one that is checked for leaks."""
    return _interval(appliance, rule)[1].every is not None


def _interval(appliance: Appliance, rule: Climate) -> tuple[Quantity, CheckInterval]:
    known, charge, row = appliance.refrigerant, appliance.charge, appliance.row
    co2e = climate.tonnes_co2e(charge, appliance.gwp if known.contains_hfc else 0.0)
    unsaturated = sum(
        float(part.mass_percent) / 100
        for part, fluid in zip(known.composition, known.fluids, strict=True)
        if fluid.family == "HFO"
    )
    return co2e, climate.check_interval(
        co2e=co2e,
        hfo_mass=charge * unsaturated,
        charge=charge,
        rule=rule,
        hermetic_labelled=bool(row.yes("hermetic_labelled")),
        residential=bool(row.yes("residential")),
        detection=bool(row.yes("leak_detection")),
    )


def _duties(appliance: Appliance, interval: CheckInterval, rule: Climate) -> Iterator[DueLine]:
    row, past = appliance.row, appliance.past
    installed, first, retired = row.date("installed"), past.first, row.date("retired")
    since = installed or (first.on if first else None)
    if interval.every is None or since is None:
        return  # nothing is owed, or nothing is known from which it would run
    known_by = (first.entry,) if first is not None and installed is None else ()
    for duty in (
        *climate.check_duties(since, interval, past.searches, known_by),
        *(climate.recheck_duty(one, rule, past.rechecks) for one in past.repairs),
    ):
        ended = duty.ended(retired, "retired") if retired and not duty.done_on else duty
        yield appliance.due_line(ended, LEAK_CHECKS)
    if row.yes("leak_detection") and interval.detection_compulsory:
        yield from appliance.detection_checks(rule.detection_check, LEAK_CHECKS)
