"""What returns after an exceedance: inspections, the report of a year; and what is no leak."""

from datetime import date

import pytest

from chargebench.calc.duty import Done
from chargebench.calc.leak_rate import (
    Addition,
    Afterwards,
    Exceedance,
    Paper,
    Removal,
    VerificationTest,
    chronic,
    inspection,
    inspection_duties,
    report_duty,
    without_seasonal,
)
from chargebench.rules import Regulation
from chargebench.units import Q
from tests.calc.leaks import american, hfc, lb, ozone


def inspected(
    rule: Regulation, pounds: float, afterwards: Afterwards, category: str = "industrial process"
) -> list[tuple[date, bool]]:
    row = inspection(rule, category=category, full_charge=lb(pounds))
    assert row is not None
    found = inspection_duties(Exceedance(date(2026, 1, 10), (1,)), row, rule, afterwards)
    return [(each.due, each.done_on is not None) for each in found]


# 84.106(g): from the good follow-up test, every three months from 500 lb on, else yearly, until
# four quarters, or a year, did not go over.
def test_that_inspections_are_counted_from_the_good_follow_up() -> None:
    follow_up = VerificationTest(date(2026, 1, 31), "follow-up", tight=True)
    assert inspected(hfc(), 600, Afterwards()) == []
    assert inspected(hfc(), 600, Afterwards(tests=(follow_up,))) == [(date(2026, 4, 30), False)]
    assert inspected(hfc(), 499, Afterwards(tests=(follow_up,))) == [(date(2027, 1, 31), False)]
    looked = tuple(
        Done(day)
        for day in (date(2026, 4, 15), date(2026, 7, 15), date(2026, 10, 20), date(2027, 1, 18))
    )
    done = Afterwards(tests=(follow_up,), inspections=looked)
    assert inspected(hfc(), 600, done) == [
        (date(2026, 4, 30), True),
        (date(2026, 7, 15), True),
        (date(2026, 10, 15), True),  # done five days late
        (date(2027, 1, 20), True),
    ]


def test_that_a_search_after_the_clean_year_is_no_inspection_owed() -> None:
    looked = (Done(date(2027, 1, 20)), Done(date(2028, 1, 1)))
    follow_up = VerificationTest(date(2026, 1, 31), "follow-up", tight=True)
    past = Afterwards(tests=(follow_up,), inspections=looked)
    assert inspected(hfc(), 499, past) == [(date(2027, 1, 31), True)]


# 82.157(g): on any appliance exceeding; three months for commercial and industrial from 500 lb.
def test_that_the_older_rule_counts_inspections_from_the_exceedance() -> None:
    assert inspected(ozone(), 600, Afterwards()) == [(date(2026, 4, 10), False)]
    assert inspected(ozone(), 600, Afterwards(), "comfort cooling") == [(date(2027, 1, 10), False)]
    assert inspected(ozone(), 600, Afterwards(retired=date(2026, 2, 1))) == []


# 82.157(j): 125 % or more of the full charge in a calendar year, report by 1 March.
@pytest.mark.parametrize(
    ("sent", "ends"),
    [
        (date(2026, 8, 31), False),  # before the share was reached: of the year before
        (date(2026, 9, 1), True),
        (date(2027, 2, 28), True),
        (date(2028, 1, 1), False),
    ],
)
def test_that_the_report_of_the_year_ends_its_duty(sent: date, *, ends: bool) -> None:
    added = [Addition(date(2026, 2, 1), lb(30)), Addition(date(2026, 9, 1), lb(32.5))]
    found = chronic(added, lb(50), 2026, ozone())
    assert found.reached_on == date(2026, 9, 1)
    papers = [Paper("chronic leaker report", sent, 77)]
    report = report_duty(found, 2026, ozone(), papers, (3, 9))
    assert report is not None
    assert (report.due, report.entries) == (date(2027, 3, 1), (3, 9))
    assert (report.done_on == sent) is ends
    below = chronic(added[:1], lb(50), 2026, ozone())
    assert report_duty(below, 2026, ozone(), papers, ()) is None


# 82.152 (seasonal variance): "an amount that is less than or equal to the amount removed", within
# one consecutive 12-month period.
@pytest.mark.parametrize(
    ("back_on", "pounds", "counted"),
    [
        (date(2026, 5, 1), 10, 0),
        (date(2026, 5, 1), 11.5, 1.5),
        (date(2026, 11, 30), 10, 0),
        (date(2026, 12, 1), 10, 10),  # more than 12 months after
        (date(2025, 11, 29), 10, 10),  # nothing was taken out before
    ],
)
def test_that_what_was_taken_out_for_the_season_is_no_leak(
    back_on: date, pounds: float, counted: float
) -> None:
    removed = [Removal(date(2025, 11, 30), lb(10), 4)]
    added = [Addition(back_on, lb(pounds), "seasonal variance", (5,))]
    found = without_seasonal(added, removed, american().seasonal_within)
    total = sum((one.mass.m_as("lb") for one in found if not one.not_counted), 0.0)
    assert total == pytest.approx(counted, abs=1e-9)
    assert sum(one.mass.m_as("lb") for one in found) == pytest.approx(pounds)
    assert all(one.entries == (5,) for one in found)


def test_that_a_seasonal_removal_is_put_back_only_once() -> None:
    removed = [Removal(date(2025, 11, 30), Q(10, "kg"))]
    added = [
        Addition(date(2026, 4, 1), Q(6, "kg"), "seasonal variance"),
        Addition(date(2026, 5, 1), Q(6, "kg"), "seasonal variance"),
        Addition(date(2026, 6, 1), Q(1, "kg")),
    ]
    found = without_seasonal(added, removed, american().seasonal_within)
    counted = [(one.on, one.mass.m_as("kg")) for one in found if not one.not_counted]
    assert counted == [(date(2026, 5, 1), pytest.approx(2)), (date(2026, 6, 1), 1)]
