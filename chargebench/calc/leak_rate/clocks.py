"""The clocks that start when an appliance goes over its threshold, and what stops them."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from chargebench.calc.dates import after
from chargebench.calc.duty import Done, Duty, periodic
from chargebench.calc.leak_rate.duties import Chronic, due_dates
from chargebench.calc.leak_rate.verifying import (
    CHRONIC_REPORT,
    PLAN,
    PLAN_DONE,
    Extension,
    Paper,
    Proof,
    VerificationTest,
    proof,
)
from chargebench.rules import Inspection, Regulation
from chargebench.words import joined, say

REPAIR, INITIAL_TEST = "repair", "initial verification test"
PLAN_OWED = "retrofit or retirement plan, if not repaired"
FOLLOW_UP_TEST, INSPECTION = "follow-up verification test", "leak inspection"


@dataclass(frozen=True, slots=True)
class Exceedance:
    """An addition after which an appliance is over its threshold."""

    on: date
    entries: tuple[int, ...] = ()
    shutdown: bool = False  # the repair needs an industrial process shutdown
    next_addition: date | None = None


@dataclass(frozen=True, slots=True)
class Afterwards:
    """What was recorded of an appliance that may stop a clock."""

    tests: tuple[VerificationTest, ...] = ()
    inspections: tuple[Done, ...] = ()
    extensions: tuple[Extension, ...] = ()
    papers: tuple[Paper, ...] = ()
    normal_running: tuple[date, ...] = ()
    retired: date | None = None
    mothballed: tuple[date, date | None] | None = None  # since, until


def extended_to(
    exceedance: Exceedance, extensions: Sequence[Extension], rule: Regulation
) -> tuple[date, Extension] | None:
    """The latest day an extension leaves for a repair.

    Parameters
    ----------
    exceedance : Exceedance
        The exceedance whose repair is put off.
    extensions : sequence of Extension
        Those on record; one asked for before the exceedance, or after the next addition, is not
        of it.
    rule : Regulation
        The regulation that binds the appliance.

    Returns
    -------
    tuple of date and Extension, or None
        Never later than the cap from the day of exceedance, nor than so long after parts came.

    Source
    ------
    40CFR82F, 82.157(f); 40CFR84.106, (f).
    """
    cap = after(
        exceedance.on, rule.extension_cap_shutdown if exceedance.shutdown else rule.extension_cap
    )
    found: list[tuple[date, Extension]] = []
    for each in extensions:
        following = exceedance.next_addition
        if each.asked < exceedance.on or (following is not None and each.asked >= following):
            continue
        until = min(each.until, cap)
        if each.delivered is not None and rule.extension_after_delivery is not None:
            until = min(until, after(each.delivered, rule.extension_after_delivery))
        found.append((until, each))
    return max(found, key=lambda pair: pair[0], default=None)


def exceedance_duties(
    exceedance: Exceedance, rule: Regulation, afterwards: Afterwards, today: date
) -> tuple[Duty, ...]:
    """What an exceedance sets in motion: repair, both tests, the plan and its end.

    Parameters
    ----------
    exceedance : Exceedance
        The addition that went over.
    rule : Regulation
        The regulation that binds the appliance.
    afterwards : Afterwards
        What was recorded since.
    today : date
        The day asked about.

    Returns
    -------
    tuple of Duty
        A plan on file takes the place of repair and tests; a good follow-up test that of the plan.
        A year without an addition ends repair and plan, but not the tests: they stay on record as
        not done.

    Source
    ------
    40CFR82F, 82.157(d) to (i); 40CFR84.106, (d) to (i).
    """
    proven = proof(afterwards.tests, exceedance.on)
    duties = _clocks(exceedance, rule, afterwards, proven)
    plan = next(
        (each for each in afterwards.papers if each.what == PLAN and each.on >= exceedance.on),
        None,
    )
    presumed = _presumed(exceedance, rule, afterwards, today)
    ended = tuple(
        _stood_still(
            _ended(duty, proven, plan, presumed, afterwards.retired), afterwards.mothballed, today
        )
        for duty in duties
    )
    return ended if plan is None else (*ended, _plan_end(plan, rule, afterwards))


def _clocks(
    exceedance: Exceedance, rule: Regulation, afterwards: Afterwards, proven: Proof
) -> tuple[Duty, ...]:
    """The duties of an exceedance, none ended yet."""
    due = due_dates(exceedance.on, rule, shutdown=exceedance.shutdown)
    span = rule.repair_shutdown if exceedance.shutdown else rule.repair
    longer = extended_to(exceedance, afterwards.extensions, rule)
    repair = Duty(REPAIR, due.repair, exceedance.on, span, exceedance.entries)
    plan = Duty(PLAN_OWED, due.plan, exceedance.on, rule.plan, exceedance.entries)
    if longer is not None and longer[0] > due.repair:
        repair, plan = _put_off(repair, *longer), _put_off(plan, *longer)
    start, entries = repair.due, repair.entries
    if proven.initial is not None:
        start, entries = proven.initial.on, (proven.initial.entry,)
        # An appliance that was evacuated is tested once it runs as normal.
        running = [day for day in afterwards.normal_running if day >= start]
        start = min(running, default=start)
    follow_up = Duty(FOLLOW_UP_TEST, after(start, rule.follow_up), start, rule.follow_up, entries)
    return repair, replace(repair, what=INITIAL_TEST), follow_up, plan


def _put_off(duty: Duty, day: date, extension: Extension) -> Duty:
    entries = (*duty.entries, *((extension.entry,) if extension.entry else ()))
    how = say("extended: {ground}", ground=extension.ground)
    return replace(duty, due=day, extended_to=day, entries=entries, how=how)


def _presumed(
    exceedance: Exceedance, rule: Regulation, afterwards: Afterwards, today: date
) -> date | None:
    """The day from which leaks are presumed repaired, if it has come."""
    if rule.presumed_repaired is None or afterwards.retired is not None:
        return None
    day = after(exceedance.on, rule.presumed_repaired)
    following = exceedance.next_addition
    return day if day <= today and (following is None or following > day) else None


def _ended(
    duty: Duty,
    proven: Proof,
    plan: Paper | None,
    presumed: date | None,
    retired: date | None,
) -> Duty:
    initial, follow_up = proven.initial, proven.follow_up
    shown = {
        REPAIR: initial or follow_up,
        INITIAL_TEST: initial,
        FOLLOW_UP_TEST: follow_up,
        PLAN_OWED: follow_up,
    }[duty.what]
    if duty.what == PLAN_OWED and plan is not None:
        return duty.ended(plan.on, "plan on file", plan.entry)
    if shown is not None:
        return duty.ended(shown.on, say("{kind} test tight", kind=shown.kind), shown.entry)
    if plan is not None:
        return duty.ended(plan.on, "retrofitted or retired instead", plan.entry)
    if retired is not None:
        return duty.ended(retired, "retired")
    if presumed is not None and duty.what in (REPAIR, PLAN_OWED):
        return duty.ended(presumed, "no addition since: presumed repaired")
    return duty


def _stood_still(duty: Duty, mothballed: tuple[date, date | None] | None, today: date) -> Duty:
    """The duty put off by the days its clock stood still (40 CFR 82.152, mothball)."""
    if mothballed is None or duty.done_on is not None:
        return duty
    since, until = max(mothballed[0], duty.start), min(mothballed[1] or today, today)
    days = (until - since).days
    if since > duty.due or days <= 0:
        return duty
    later = duty.due + timedelta(days=days)
    how = joined("; ", filter(None, (duty.how, say("mothballed for {days} days", days=days))))
    return replace(duty, due=later, extended_to=later, how=how)


def _plan_end(plan: Paper, rule: Regulation, afterwards: Afterwards) -> Duty:
    owed = Duty(PLAN_DONE, after(plan.on, rule.plan_finish), plan.on, rule.plan_finish,
                (plan.entry,) if plan.entry else ())  # fmt: skip
    for each in afterwards.papers:
        if each.what == PLAN_DONE and each.on >= plan.on:
            return owed.ended(each.on, "carried out", each.entry)
    if afterwards.retired is not None:
        return owed.ended(afterwards.retired, "retired")
    return owed


def inspection_duties(
    exceedance: Exceedance, row: Inspection, rule: Regulation, afterwards: Afterwards
) -> tuple[Duty, ...]:
    """Leak inspections owed after an exceedance, those done and the next.

    Parameters
    ----------
    exceedance : Exceedance
        The newest exceedance; a further one starts the count anew.
    row : Inspection
        As found by `inspection`.
    rule : Regulation
        Says from when inspections are counted.
    afterwards : Afterwards
        What was recorded since.

    Returns
    -------
    tuple of Duty
        None before a good follow-up test where they are counted from it; none after the span in
        which the appliance did not go over again.

    Source
    ------
    40CFR82F, 82.157(g); 40CFR84.106, (g).
    """
    start, entries = exceedance.on, exceedance.entries
    if afterwards.retired is not None:
        return ()
    if rule.inspected_from == "follow-up":
        shown = proof(afterwards.tests, exceedance.on).follow_up
        if shown is None:
            return ()
        start, entries = shown.on, (shown.entry,) if shown.entry else ()
    until = None if row.ends_after is None else after(start, row.ends_after)
    return periodic(
        INSPECTION, start, row.every, afterwards.inspections, entries=entries, until=until
    )


def report_duty(
    found: Chronic, year: int, rule: Regulation, papers: Sequence[Paper], entries: tuple[int, ...]
) -> Duty | None:
    """The report of a chronic leaker.

    Parameters
    ----------
    found : Chronic
        As found by `chronic` for the year.
    year : int
        Calendar year.
    rule : Regulation
        The regulation that binds the appliance.
    papers : sequence of Paper
        Reports sent; one from the day the share was reached to the end of the next year ends it.
    entries : tuple of int
        Entries of the additions counted.

    Returns
    -------
    Duty or None
        None where the share is not reached.

    Source
    ------
    40CFR82F, 82.157(j); 40CFR84.106, (j).
    """
    if found.report_due is None or found.reached_on is None:
        return None
    owed = Duty(
        CHRONIC_REPORT, found.report_due, date(year, 12, 31), rule.chronic_report_by, entries
    )
    for each in papers:
        in_time = found.reached_on <= each.on <= date(year + 1, 12, 31)
        if each.what == CHRONIC_REPORT and in_time:
            return owed.ended(each.on, "report sent", each.entry)
    return owed
