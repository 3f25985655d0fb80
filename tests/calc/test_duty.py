"""Duties that return, at the edges of their spans; the dates are counted by hand."""

import dataclasses
from datetime import date
from decimal import Decimal

import pytest

from chargebench import rules
from chargebench.calc.duty import Done, Duty, State, periodic
from chargebench.rules import Figure

DAY = date(2026, 1, 10)


def days(count: int) -> Figure:
    span = rules.load("us-federal").leak_rate
    assert span is not None
    return dataclasses.replace(span.regulations[0].repair, value=Decimal(count), unit="day")


def owed(
    done: list[Done], *, until: date | None = None, entries: tuple[int, ...] = ()
) -> list[tuple[date, date | None]]:
    found = periodic("search", DAY, days(10), done, entries=entries, until=until)
    return [(each.due, each.done_on) for each in found]


def test_that_nothing_done_leaves_the_first_span_open() -> None:
    assert owed([]) == [(date(2026, 1, 20), None)]
    duty = periodic("search", DAY, days(10), [], entries=(3,))[0]
    assert (duty.what, duty.start, duty.entries, duty.ended_by) == ("search", DAY, (3,), ())
    assert periodic("search", DAY, days(10), [])[0].entries == ()


def test_that_each_time_done_starts_the_next_span() -> None:
    late_and_early = [Done(date(2026, 1, 29), 8), Done(date(2026, 1, 15), 7)]
    assert owed(late_and_early) == [
        (date(2026, 1, 20), date(2026, 1, 15)),
        (date(2026, 1, 25), date(2026, 1, 29)),
        (date(2026, 2, 8), None),
    ]
    first, second, third = periodic("search", DAY, days(10), late_and_early, entries=(3,))
    assert [each.entries for each in (first, second, third)] == [(3,), (7,), (8,)]
    assert (first.ended_by, first.how, third.ended_by) == ((7,), "done", ())


def test_that_what_was_done_on_the_first_day_or_before_does_not_count() -> None:
    assert owed([Done(DAY), Done(date(2026, 1, 9))]) == [(date(2026, 1, 20), None)]
    assert owed([Done(date(2026, 1, 11))])[0] == (date(2026, 1, 20), date(2026, 1, 11))


def test_that_what_was_done_without_an_entry_names_none() -> None:
    first, second = periodic("search", DAY, days(10), [Done(date(2026, 1, 15))])
    assert (first.ended_by, second.entries) == ((), ())


@pytest.mark.parametrize(
    ("until", "dues"),
    [
        (date(2026, 1, 19), []),
        (date(2026, 1, 20), [date(2026, 1, 20)]),
        (date(2026, 1, 29), [date(2026, 1, 20)]),
        (date(2026, 1, 30), [date(2026, 1, 20), date(2026, 1, 30)]),
    ],
)
def test_that_nothing_is_owed_after_the_last_day(until: date, dues: list[date]) -> None:
    done = [Done(date(2026, 1, 20)), Done(date(2026, 1, 30))]
    assert [due for due, _ in owed(done, until=until)] == dues


def test_that_a_duty_ends_with_the_entries_there_are() -> None:
    plain = Duty("report", date(2026, 3, 1), DAY, days(50))
    assert (plain.entries, plain.extended_to, plain.done_on, plain.ended_by) == ((), None, None, ())
    assert plain.how == ""
    assert plain.state(date(2026, 3, 1)) is State.OPEN
    assert plain.state(date(2026, 3, 2)) is State.OVERDUE
    ended = plain.ended(date(2026, 4, 1), "sent", 0, 5)
    assert (ended.ended_by, ended.how, ended.done_on) == ((5,), "sent", date(2026, 4, 1))
    assert ended.state(date(2026, 5, 1)) is State.DONE
