"""Calendar spans: days by count, months and years by the day of the month."""

from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.dates import after
from chargebench.rules import Figure


def span(count: int, unit: str) -> Figure:
    return Figure("COMMON", "calendar", "SEEN", date(2026, 1, 1), "span", Decimal(count), unit)


# By the calendar on the wall; 2028 is a leap year, 2100 is none.
@pytest.mark.parametrize(
    ("start", "count", "unit", "end"),
    [
        (date(2026, 1, 10), 30, "day", date(2026, 2, 9)),
        (date(2026, 1, 10), 0, "day", date(2026, 1, 10)),
        (date(2026, 1, 31), 1, "month", date(2026, 2, 28)),
        (date(2028, 1, 31), 1, "month", date(2028, 2, 29)),
        (date(2028, 2, 29), 1, "year", date(2029, 2, 28)),
        (date(2026, 11, 30), 3, "month", date(2027, 2, 28)),
        (date(2026, 12, 15), 12, "month", date(2027, 12, 15)),
        (date(2026, 12, 15), 1, "month", date(2027, 1, 15)),
        (date(2099, 3, 1), 1, "year", date(2100, 3, 1)),
    ],
)
def test_that_a_span_ends_on_its_day(start: date, count: int, unit: str, end: date) -> None:
    assert after(start, span(count, unit)) == end


@given(st.dates(date(1990, 1, 1), date(2090, 1, 1)), st.integers(0, 60))
def test_that_twelve_months_are_a_year(start: date, years: int) -> None:
    assert after(start, span(12 * years, "month")) == after(start, span(years, "year"))
