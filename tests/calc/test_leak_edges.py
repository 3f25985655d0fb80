"""The clocks of a leak at the edges of their days; every date is counted by hand from the text.

40 CFR 82.157 and 84.106, the paragraphs named beside each test; `test_leak_clocks` has timelines.
"""

import dataclasses
from datetime import date

import pytest

from chargebench.calc.duty import Done, Duty
from chargebench.calc.leak_rate import (
    Addition,
    Afterwards,
    Exceedance,
    Extension,
    Paper,
    VerificationTest,
    chronic,
    exceedance_duties,
    inspection,
    inspection_duties,
    report_duty,
)
from chargebench.rules import Regulation
from tests.calc.leaks import hfc, lb, ozone

ON = date(2026, 1, 10)  # repair and plan within 30 days: by 9 February
REPAIR, FOLLOW_UP = "repair", "follow-up verification test"
PLAN = "retrofit or retirement plan, if not repaired"
MADE, CARRIED_OUT = "retrofit or retirement plan", "plan carried out"


def owed(
    *,
    today: date = ON,
    rule: Regulation | None = None,
    exceedance: Exceedance | None = None,
    **recorded: object,
) -> dict[str, Duty]:
    afterwards = dataclasses.replace(Afterwards(), **recorded)  # type: ignore[arg-type]
    found = exceedance_duties(exceedance or Exceedance(ON), rule or ozone(), afterwards, today)
    return {each.what: each for each in found}


def asked(on: date, until: date, entry: int = 0) -> Extension:
    return Extension(on, until, "parts", entry=entry)


def test_that_what_is_not_said_of_an_exceedance_is_not_so() -> None:
    plain = Exceedance(ON)
    assert (plain.entries, plain.shutdown, plain.next_addition) == ((), False, None)
    assert owed()[REPAIR].due == date(2026, 2, 9)
    assert owed()[REPAIR].entries == ()


# (f): the time asked for is of this leak from its own day on; the latest day granted holds.
@pytest.mark.parametrize(
    ("extensions", "due"),
    [
        ([asked(ON, date(2026, 4, 1))], date(2026, 4, 1)),
        ([asked(date(2026, 1, 9), date(2026, 4, 1))], date(2026, 2, 9)),
        (
            [asked(date(2026, 1, 9), date(2026, 5, 1)), asked(ON, date(2026, 4, 1))],
            date(2026, 4, 1),
        ),
        ([asked(ON, date(2026, 4, 1)), asked(ON, date(2026, 3, 1))], date(2026, 4, 1)),
        ([asked(ON, date(2026, 3, 1)), asked(ON, date(2026, 4, 1))], date(2026, 4, 1)),
    ],
)
def test_that_the_latest_day_asked_for_this_leak_holds(
    extensions: list[Extension], due: date
) -> None:
    assert owed(extensions=tuple(extensions))[REPAIR].due == due


def test_that_time_asked_for_to_the_day_it_was_due_is_no_more_time() -> None:
    found = owed(extensions=(asked(ON, date(2026, 2, 9), 7),))[REPAIR]
    assert (found.due, found.extended_to, found.how, found.entries) == (
        date(2026, 2, 9), None, "", (),
    )  # fmt: skip
    longer = owed(extensions=(asked(ON, date(2026, 2, 10)),))[REPAIR]
    assert (longer.due, longer.how, longer.entries) == (date(2026, 2, 10), "extended: parts", ())


# (e)(2): ten days from the good initial test, or from the first day of normal running after it.
@pytest.mark.parametrize(
    ("running", "due"),
    [
        ((date(2026, 1, 20),), date(2026, 1, 30)),
        ((date(2026, 1, 19),), date(2026, 1, 30)),
        ((date(2026, 1, 28), date(2026, 1, 24)), date(2026, 2, 3)),
    ],
)
def test_that_the_follow_up_runs_from_the_first_normal_day(
    running: tuple[date, ...], due: date
) -> None:
    initial = VerificationTest(date(2026, 1, 20), "initial", tight=True)
    assert owed(tests=(initial,), normal_running=running)[FOLLOW_UP].due == due


# (h): a plan takes the place of the repair from the day of exceedance on; other papers do not.
@pytest.mark.parametrize(
    ("paper", "is_plan"),
    [
        (Paper(MADE, ON, 5), True),
        (Paper(MADE, date(2026, 1, 9), 5), False),
        (Paper("chronic leaker report", ON, 5), False),
        (Paper(CARRIED_OUT, date(2026, 1, 20), 5), False),
    ],
)
def test_that_only_a_plan_made_since_is_a_plan(paper: Paper, *, is_plan: bool) -> None:
    found = owed(papers=(paper,))
    assert (found[REPAIR].how == "retrofitted or retired instead") is is_plan
    assert (found[PLAN].how == "plan on file") is is_plan
    assert (CARRIED_OUT in found) is is_plan


def test_that_a_plan_may_be_carried_out_on_its_own_day() -> None:
    made = Paper(MADE, date(2026, 1, 20), 5)
    end = owed(papers=(made,))[CARRIED_OUT]
    assert (end.entries, end.done_on, end.start) == ((5,), None, date(2026, 1, 20))
    assert end.how == ""
    same_day = owed(papers=(made, Paper(CARRIED_OUT, date(2026, 1, 20), 6)))[CARRIED_OUT]
    assert (same_day.done_on, same_day.how) == (date(2026, 1, 20), "carried out")
    unsigned = owed(papers=(Paper(MADE, date(2026, 1, 20)),))[CARRIED_OUT]
    assert unsigned.entries == ()


# (d)(2): presumed repaired after 12 months without an addition; one on the very day is within them.
@pytest.mark.parametrize(
    ("following", "presumed"), [(date(2027, 1, 10), False), (date(2027, 1, 11), True)]
)
def test_that_an_addition_on_the_last_day_is_one_within_the_year(
    following: date, *, presumed: bool
) -> None:
    exceedance = Exceedance(ON, next_addition=following)
    found = owed(exceedance=exceedance, today=date(2027, 3, 1))
    assert (found[REPAIR].done_on == date(2027, 1, 10)) is presumed


def test_that_a_rule_without_a_presumption_presumes_nothing() -> None:
    rule = dataclasses.replace(ozone(), presumed_repaired=None)
    assert owed(rule=rule, today=date(2028, 1, 1))[REPAIR].done_on is None


# 82.152 (mothball): the clock stands still; on the last day it still ran, the day after no more.
@pytest.mark.parametrize(
    ("since", "today", "due", "how"),
    [
        (date(2026, 2, 9), date(2026, 2, 19), date(2026, 2, 19), "mothballed for 10 days"),
        (date(2026, 2, 10), date(2026, 2, 19), date(2026, 2, 9), ""),
        (date(2026, 2, 1), date(2026, 2, 1), date(2026, 2, 9), ""),
        (date(2026, 2, 1), date(2026, 2, 2), date(2026, 2, 10), "mothballed for 1 days"),
        (date(2026, 1, 1), date(2026, 1, 15), date(2026, 2, 14), "mothballed for 5 days"),
    ],
)
def test_that_days_in_mothballs_are_added(since: date, today: date, due: date, how: str) -> None:
    found = owed(mothballed=(since, None), today=today)[REPAIR]
    assert (found.due, found.how) == (due, how)
    assert found.extended_to == (due if how else None)


def test_that_mothballs_come_on_top_of_more_time() -> None:
    longer = (asked(ON, date(2026, 4, 1)),)
    standing = (date(2026, 3, 1), date(2026, 3, 11))
    found = owed(extensions=longer, mothballed=standing, today=date(2026, 6, 1))[REPAIR]
    assert (found.due, found.how) == (date(2026, 4, 11), "extended: parts; mothballed for 10 days")


# (g): counted from the follow-up test where the regulation says so, with an end where it has one.
def test_that_inspections_name_the_test_they_are_counted_from() -> None:
    row = inspection(hfc(), category="comfort cooling", full_charge=lb(60))
    assert row is not None
    for entry, entries in ((4, (4,)), (0, ())):
        test = VerificationTest(date(2026, 1, 31), "follow-up", tight=True, entry=entry)
        found = inspection_duties(Exceedance(ON), row, hfc(), Afterwards(tests=(test,)))
        assert found[0].entries == entries
    endless = dataclasses.replace(row, ends_after=None)
    done = tuple(Done(date(year, 1, 5)) for year in (2027, 2028, 2029))
    found = inspection_duties(Exceedance(ON), endless, ozone(), Afterwards(inspections=done))
    assert [each.due for each in found] == [date(year, 1, 10) for year in (2027,)] + [
        date(year, 1, 5) for year in (2028, 2029, 2030)
    ]


# (j): by 1 March of the year after; a report to the last day of that year is still this one's.
def test_that_a_late_report_ends_its_duty_to_the_end_of_the_next_year() -> None:
    found = chronic([Addition(date(2026, 9, 1), lb(70))], lb(50), 2026, ozone())
    assert (found.is_chronic, found.report_due) == (True, date(2027, 3, 1))
    last = report_duty(
        found, 2026, ozone(), [Paper("chronic leaker report", date(2027, 12, 31))], ()
    )
    assert last is not None
    assert (last.start, last.done_on) == (date(2026, 12, 31), date(2027, 12, 31))
