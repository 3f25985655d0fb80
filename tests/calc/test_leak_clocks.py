"""Worked timelines, day by day: what starts a clock, what puts it off, what ends it.

The regulations' duties are in the words of 40 CFR 82.157 (84.106 has the same paragraphs): repair
"within 30 days (or 120 days if an industrial process shutdown is required)", a follow-up test
"within 10 days of the successful initial verification test"; days of the calendar, not of business.
"""

from datetime import date, timedelta

import pytest

from chargebench.calc.duty import Duty, State
from chargebench.calc.leak_rate import (
    Afterwards,
    Exceedance,
    Extension,
    Paper,
    VerificationTest,
    exceedance_duties,
    proof,
)
from chargebench.rules import Regulation
from tests.calc.leaks import hfc, ozone

REPAIR, INITIAL = "repair", "initial verification test"
FOLLOW_UP, PLAN = "follow-up verification test", "retrofit or retirement plan, if not repaired"
PLAN_MADE = "retrofit or retirement plan"


def duties(
    on: date,
    afterwards: Afterwards | None = None,
    *,
    rule: Regulation | None = None,
    today: date | None = None,
    shutdown: bool = False,
    next_addition: date | None = None,
) -> dict[str, Duty]:
    exceedance = Exceedance(on, (1,), shutdown=shutdown, next_addition=next_addition)
    found = exceedance_duties(
        exceedance, rule or hfc(), afterwards or Afterwards(), today or on + timedelta(days=1)
    )
    return {each.what: each for each in found}


def tight(on: date, kind: str = "initial", entry: int = 0) -> VerificationTest:
    return VerificationTest(on, kind, tight=True, entry=entry)


def leaks(on: date, kind: str = "initial") -> VerificationTest:
    return VerificationTest(on, kind, tight=False)


# 82.157(d): "within 30 days"; counted on a printed calendar over month ends and leap days.
@pytest.mark.parametrize(
    ("exceeded", "repair"),
    [
        (date(2026, 1, 10), date(2026, 2, 9)),
        (date(2026, 1, 31), date(2026, 3, 2)),  # February has 28 days
        (date(2028, 1, 31), date(2028, 3, 1)),  # and 29 in a leap year
        (date(2028, 2, 29), date(2028, 3, 30)),
        (date(2026, 12, 2), date(2027, 1, 1)),  # a holiday: no business days in the rule
        (date(2026, 11, 24), date(2026, 12, 24)),
    ],
)
def test_that_thirty_days_are_days_of_the_calendar(exceeded: date, repair: date) -> None:
    found = duties(exceeded)
    assert found[REPAIR].due == found[INITIAL].due == found[PLAN].due == repair
    assert found[FOLLOW_UP].due == repair + timedelta(days=10)
    assert found[REPAIR].start == exceeded
    assert found[REPAIR].rule.text == "30 day"


# 82.157(d), (f): 120 days with an industrial process shutdown.
def test_that_a_shutdown_gives_120_days() -> None:
    found = duties(date(2026, 1, 10), shutdown=True)
    assert found[REPAIR].due == date(2026, 5, 10)
    assert found[REPAIR].rule.text == "120 day"
    assert found[PLAN].due == date(2026, 2, 9)


def test_that_a_duty_is_overdue_from_the_day_after_it_was_due() -> None:
    repair = duties(date(2026, 1, 10))[REPAIR]
    assert repair.state(date(2026, 2, 9)) is State.OPEN
    assert repair.state(date(2026, 2, 10)) is State.OVERDUE
    assert repair.ended(date(2026, 3, 1), "done").state(date(2027, 1, 1)) is State.DONE


def test_that_one_leak_is_followed_from_addition_to_its_last_test() -> None:
    """A job's timeline, a line a day."""
    tests: list[VerificationTest] = []

    def states(today: date) -> list[str]:
        found = duties(date(2026, 3, 2), Afterwards(tests=tuple(tests)), today=today)
        return [found[what].state(today) for what in (REPAIR, INITIAL, FOLLOW_UP, PLAN)]

    # 2 March: refrigerant is added, the rate is over.
    assert states(date(2026, 3, 2)) == ["open"] * 4
    # 20 March: a repair is tested and leaks; nothing is ended (82.157(e)(1): as many as needed).
    tests.append(leaks(date(2026, 3, 20)))
    assert states(date(2026, 3, 20)) == ["open"] * 4
    # 1 April: the 30th day. 2 April: overdue, but the follow-up still has its ten days.
    assert states(date(2026, 4, 1)) == ["open"] * 4
    assert states(date(2026, 4, 2)) == ["overdue", "overdue", "open", "overdue"]
    # 3 April: the initial test is good, late; it ends repair and initial test.
    tests.append(tight(date(2026, 4, 3)))
    assert states(date(2026, 4, 3)) == ["done", "done", "open", "overdue"]
    # 13 April: ten days later the follow-up is due, 14 April it is overdue.
    assert states(date(2026, 4, 13)) == ["done", "done", "open", "overdue"]
    assert states(date(2026, 4, 14)) == ["done", "done", "overdue", "overdue"]
    # 15 April: the follow-up is good; no plan is owed any more.
    tests.append(tight(date(2026, 4, 15), "follow-up"))
    assert states(date(2026, 4, 15)) == ["done"] * 4


# 82.157(e)(2): "within 10 days of the successful initial verification test or 10 days of the
# appliance reaching normal operating characteristics and conditions".
def test_that_the_follow_up_runs_from_the_good_initial_test_or_normal_running() -> None:
    first = Afterwards(tests=(tight(date(2026, 3, 5), entry=8),))
    found = duties(date(2026, 3, 2), first)[FOLLOW_UP]
    assert (found.start, found.due, found.entries) == (date(2026, 3, 5), date(2026, 3, 15), (8,))
    running = Afterwards(tests=first.tests, normal_running=(date(2026, 3, 1), date(2026, 3, 9)))
    assert duties(date(2026, 3, 2), running)[FOLLOW_UP].due == date(2026, 3, 19)


def test_that_a_test_that_leaks_sets_the_proof_back() -> None:
    on = date(2026, 3, 2)
    tests = [tight(date(2026, 3, 4)), leaks(date(2026, 3, 8), "follow-up")]
    assert proof(tests, on).initial is None
    tests += [tight(date(2026, 3, 10)), tight(date(2026, 3, 12), "follow-up")]
    shown = proof(tests, on)
    assert shown.initial is not None
    assert shown.follow_up is not None
    assert (shown.initial.on, shown.follow_up.on) == (date(2026, 3, 10), date(2026, 3, 12))


def test_that_every_leak_tested_of_a_day_must_be_tight() -> None:
    on = date(2026, 3, 2)
    assert proof([tight(on), leaks(on)], on).initial is None
    assert proof([tight(on), tight(on)], on).initial is not None
    assert proof([tight(on - timedelta(days=1))], on).initial is None


# 82.157(f): extension while parts are awaited: 30 days after delivery, at most 180 (270) days from
# the day of exceedance. 2026-01-10 + 180 d = 9 July, + 270 d = 7 October.
@pytest.mark.parametrize(
    ("until", "delivered", "shutdown", "due"),
    [
        (date(2026, 4, 30), None, False, date(2026, 4, 30)),
        (date(2026, 7, 9), None, False, date(2026, 7, 9)),
        (date(2026, 7, 10), None, False, date(2026, 7, 9)),
        (date(2026, 12, 31), None, True, date(2026, 10, 7)),
        (date(2026, 7, 9), date(2026, 3, 1), False, date(2026, 3, 31)),
        (date(2026, 2, 1), None, False, date(2026, 2, 9)),  # never sooner than without it
    ],
)
def test_that_more_time_is_capped(
    until: date, delivered: date | None, *, shutdown: bool, due: date
) -> None:
    longer = Extension(date(2026, 2, 5), until, "parts not available in time", delivered, 33)
    found = duties(
        date(2026, 1, 10), Afterwards(extensions=(longer,)), rule=ozone(), shutdown=shutdown
    )
    assert found[REPAIR].due == due
    if due > date(2026, 2, 9):
        assert found[REPAIR].extended_to == found[PLAN].due == due
        assert found[REPAIR].entries == (1, 33)
        assert found[REPAIR].how == "extended: parts not available in time"


def test_that_more_time_belongs_to_the_leak_it_was_asked_for() -> None:
    asked = Extension(date(2026, 2, 5), date(2026, 4, 30), "parts not available in time")
    later = Afterwards(extensions=(asked,))
    assert duties(date(2026, 2, 6), later)[REPAIR].extended_to is None
    following = duties(date(2026, 1, 10), later, next_addition=date(2026, 2, 5))
    assert following[REPAIR].extended_to is None


# 82.157(h), (i): a plan within 30 days takes the place of the repair and is carried out in a year.
def test_that_a_plan_on_file_takes_the_place_of_the_repair() -> None:
    made = Paper(PLAN_MADE, date(2026, 2, 1), 20)
    found = duties(date(2026, 1, 10), Afterwards(papers=(made,)), rule=ozone())
    for what in (REPAIR, INITIAL, FOLLOW_UP, PLAN):
        assert (found[what].done_on, found[what].ended_by) == (date(2026, 2, 1), (20,))
    assert found["plan carried out"].due == date(2027, 2, 1)
    done = Afterwards(papers=(made, Paper("plan carried out", date(2026, 8, 3), 41)))
    ended = duties(date(2026, 1, 10), done)["plan carried out"]
    assert (ended.done_on, ended.ended_by) == (date(2026, 8, 3), (41,))
    retired = Afterwards(papers=(made,), retired=date(2026, 5, 1))
    assert duties(date(2026, 1, 10), retired)["plan carried out"].how == "retired"


# A plan made on a leap day is to be carried out within 12 months: by 28 February.
def test_that_a_year_from_a_leap_day_ends_with_february() -> None:
    made = Afterwards(papers=(Paper(PLAN_MADE, date(2028, 2, 29)),))
    assert duties(date(2028, 2, 10), made)["plan carried out"].due == date(2029, 2, 28)


# 82.157(d)(2): "presumed to be repaired if there is no further refrigerant addition for 12 months".
def test_that_a_year_without_an_addition_presumes_the_repair_but_no_test() -> None:
    on = date(2026, 1, 10)
    before = duties(on, today=date(2027, 1, 9), rule=ozone())
    assert before[REPAIR].done_on is None
    presumed = duties(on, today=date(2027, 1, 10), rule=ozone())
    assert presumed[REPAIR].done_on == presumed[PLAN].done_on == date(2027, 1, 10)
    assert presumed[INITIAL].state(date(2027, 1, 10)) is State.OVERDUE
    again = duties(on, today=date(2027, 2, 1), rule=ozone(), next_addition=date(2026, 12, 31))
    assert again[REPAIR].done_on is None


# 82.152 (mothball): the clocks stand still while the appliance is evacuated and shut down.
def test_that_mothballing_stops_the_clock() -> None:
    on, since = date(2026, 1, 10), date(2026, 1, 20)
    for until, today, due in (
        (None, date(2026, 1, 30), date(2026, 2, 19)),
        (date(2026, 3, 1), date(2026, 6, 1), date(2026, 3, 21)),
        (None, since, date(2026, 2, 9)),
    ):
        found = duties(on, Afterwards(mothballed=(since, until)), today=today)[REPAIR]
        assert found.due == due
    late = Afterwards(mothballed=(date(2026, 2, 10), None))
    assert duties(on, late, today=date(2026, 5, 1))[REPAIR].due == date(2026, 2, 9)


def test_that_retirement_ends_what_is_owed() -> None:
    found = duties(date(2026, 1, 10), Afterwards(retired=date(2026, 1, 20)))
    assert {each.how for each in found.values()} == {"retired"}
