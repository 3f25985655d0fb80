"""Leak rates, regulations, clocks and chronic leakers at their boundaries."""

from datetime import date, timedelta

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.leak_rate import (
    Addition,
    annualizing,
    beyond_seasonal_variance,
    chronic,
    days_since_last,
    merged,
    rolling,
)
from chargebench.errors import ChargebenchError
from chargebench.units import Q
from tests.calc.leaks import TODAY, additions, american, hfc, lb, ozone, percent

MASSES = st.floats(1e-3, 1e5)


# 40 CFR 82.152: the days are counted to 365 at most; by hand 10 / 100 and 3 / 50 x 365 / 60.
@pytest.mark.parametrize(
    ("added", "full", "days", "expected"),
    [(10, 100, 500, 10.0), (10, 100, 365, 10.0), (10, 100, 366, 10.0), (3, 50, 60, 36.5)],
)
def test_that_days_count_to_a_year_at_most(
    added: float, full: float, days: int, expected: float
) -> None:
    assert percent(annualizing(lb(added), lb(full), days)) == pytest.approx(expected, abs=1e-9)


def test_that_additions_of_one_day_have_no_annual_rate() -> None:
    with pytest.raises(ChargebenchError, match="at least one day since the last addition"):
        annualizing(lb(1), lb(100), 0)


def test_that_one_day_is_enough() -> None:
    assert percent(annualizing(lb(1), lb(365), 1)) == pytest.approx(100)


def test_that_no_full_charge_has_no_rate() -> None:
    with pytest.raises(ChargebenchError, match="full charge above zero"):
        annualizing(lb(1), lb(0), 10)


def test_that_a_volume_is_no_mass() -> None:
    with pytest.raises(pint.DimensionalityError, match="for added"):
        annualizing(Q(1, "L"), lb(10), 10)


@given(MASSES, MASSES, st.integers(1, 800))
def test_that_the_rate_is_the_same_in_any_unit(added: float, full: float, days: int) -> None:
    in_pounds = percent(annualizing(lb(added), lb(full), days))
    in_grams = percent(annualizing(lb(added).to("g"), lb(full).to("kg"), days))
    assert in_grams == pytest.approx(in_pounds, rel=1e-12)


@given(MASSES, MASSES, st.integers(1, 800))
def test_that_more_added_or_sooner_is_never_a_lower_rate(
    added: float, full: float, days: int
) -> None:
    rate = percent(annualizing(lb(added), lb(full), days))
    assert percent(annualizing(lb(added * 2), lb(full), days)) > rate
    assert percent(annualizing(lb(added), lb(full), days + 1)) <= rate


YEAR_AGO = TODAY - timedelta(days=365)


# 40 CFR 82.152, rolling average: 4 + 3 + 5 of 100 within the year; the older 6 is passed over.
def test_that_the_rolling_average_counts_a_year_back() -> None:
    past = additions(
        (date(2025, 6, 1), 6),
        (date(2025, 10, 1), 4),
        (date(2026, 3, 1), 3),
        (date(2026, 8, 1), 5),
    )
    assert percent(rolling(past, lb(100), TODAY)) == pytest.approx(12.0, abs=1e-9)


@pytest.mark.parametrize(
    ("on", "counts"),
    [
        (YEAR_AGO - timedelta(days=1), False),
        (YEAR_AGO, True),
        (TODAY, True),
        (TODAY + timedelta(days=1), False),
    ],
)
def test_that_the_window_is_365_days_and_ends_today(on: date, *, counts: bool) -> None:
    assert percent(rolling(additions((on, 7)), lb(100), TODAY)) == (7 if counts else 0)


# 40 CFR 82.152: or since the last follow-up test that showed all leaks repaired, if shorter.
@pytest.mark.parametrize(("days_before", "expected"), [(0, 0), (1, 5), (400, 5)])
def test_that_a_good_follow_up_test_starts_the_count_anew(
    days_before: int, expected: float
) -> None:
    added_on = date(2026, 8, 1)
    rate = rolling(
        additions((added_on, 5)),
        lb(100),
        TODAY,
        last_good_follow_up=added_on - timedelta(days=days_before),
    )
    assert percent(rate) == expected


# 40 CFR 84.106: the first rolling average counts only what was added since 1 January 2026.
@pytest.mark.parametrize(("on", "expected"), [(date(2025, 12, 31), 0), (date(2026, 1, 1), 5)])
def test_that_only_what_was_added_under_the_rule_counts(on: date, expected: float) -> None:
    begun = hfc().applies_from.value
    rate = rolling(additions((on, 5)), lb(100), date(2026, 2, 1), counted_from=begun)
    assert percent(rate) == expected


# 40 CFR 82.157(b): not after a retrofit or a new installation, nor seasonal variance.
@pytest.mark.parametrize("reason", ["retrofit", "new installation", "seasonal variance"])
def test_that_what_is_no_leak_is_not_counted(reason: str) -> None:
    past = [Addition(date(2026, 5, 1), lb(80), reason), Addition(date(2026, 6, 1), lb(2))]
    assert percent(rolling(past, lb(100), TODAY)) == 2
    assert percent(chronic(past, lb(50), 2026, ozone()).share) == 4


def test_that_nothing_added_is_no_leak() -> None:
    assert percent(rolling([], lb(100), TODAY)) == 0


@pytest.mark.parametrize(
    ("removed", "added", "counted"),
    [(10, 10, 0), (10, 8, 0), (10, 11.5, 1.5)],
)
def test_that_only_what_exceeds_a_seasonal_removal_counts(
    removed: float, added: float, counted: float
) -> None:
    beyond = beyond_seasonal_variance(removed=lb(removed), added_back=lb(added))
    assert beyond.m_as("lb") == pytest.approx(counted, abs=1e-9)


# 84.106: 365 days are put into the first computation after 1 January 2026; 82.157 has no such rule.
def test_that_the_first_computation_takes_a_year() -> None:
    past = additions((date(2025, 11, 1), 4))
    assert days_since_last(past, date(2026, 2, 1), hfc()) == 365
    assert days_since_last(past, date(2026, 2, 1), ozone()) == 92
    assert days_since_last([], date(2026, 2, 1), ozone()) is None


def test_that_the_last_addition_before_the_day_counts() -> None:
    past = additions((date(2026, 1, 1), 4), (date(2026, 3, 1), 4), (date(2026, 4, 1), 4))
    assert days_since_last(past, date(2026, 4, 1), hfc()) == 31
    assert days_since_last(past, date(2026, 1, 2), hfc()) == 1


def test_that_additions_of_one_leak_are_summed_within_the_window() -> None:
    day = date(2026, 5, 1)
    past = [*additions((day, 2), (day, 3), (day + timedelta(days=1), 4))]
    summed = merged(past, american().merge_window)
    assert [(one.on, one.mass.m_as("lb")) for one in summed] == [
        (day, pytest.approx(5)),
        (day + timedelta(days=1), pytest.approx(4)),
    ]


def test_that_what_is_not_counted_is_not_merged_with_what_is() -> None:
    day = date(2026, 5, 1)
    past = [Addition(day, lb(2)), Addition(day, lb(30), "retrofit")]
    assert len(merged(past, american().merge_window)) == 2
