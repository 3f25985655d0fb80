"""Which leak repair regulation binds, its thresholds and clocks, chronic leakers."""

from datetime import date

import pytest

from chargebench.calc.leak_rate import (
    Circuit,
    annualizing,
    applies,
    chronic,
    due_dates,
    over_threshold,
    threshold,
)
from chargebench.units import Q, from_mg, mg
from tests.calc.leaks import TODAY, additions, american, hfc, lb, ozone, percent


# "Over" is strictly above: 82.157(c).
@pytest.mark.parametrize(
    ("rate", "over"), [(19.99, False), (20.0, False), (20.01, True), (20.001, True), (36.5, True)]
)
def test_that_over_is_strictly_above(rate: float, *, over: bool) -> None:
    limit = threshold(ozone(), "commercial refrigeration")
    assert over_threshold(Q(rate, "percent"), limit) is over


# A ledger keeps whole milligrams; 20 % exactly as typed must not go over by their rounding.
@pytest.mark.parametrize("full", [15, 50, 55, 123.4, 500, 777])
def test_that_rounding_to_milligrams_makes_no_exceedance(full: float) -> None:
    kept = from_mg(mg(lb(full / 5)))
    rate = annualizing(kept, from_mg(mg(lb(full))), 365)
    assert not over_threshold(rate, threshold(hfc(), "commercial refrigeration"))


def circuit(
    pounds: float,
    *,
    ozone_depleting: bool = False,
    hfc_inside: bool = False,
    solely: bool = False,
    gwp: float = 0,
    excluded: bool = False,
) -> Circuit:
    return Circuit(
        full_charge=lb(pounds),
        category="commercial refrigeration",
        ozone_depleting=ozone_depleting,
        hfc=hfc_inside,
        solely_ozone_depleting=solely,
        gwp=gwp,
        excluded_subsector=excluded,
    )


def binding(one: Circuit, on: date = TODAY) -> list[str]:
    return [regulation.key for regulation in applies(one, american(), on)]


@pytest.mark.parametrize("limit", [15, 50])
def test_that_a_limit_typed_in_pounds_is_reached_in_whole_milligrams(limit: float) -> None:
    one = circuit(0, ozone_depleting=True, hfc_inside=True, gwp=3000)
    kept = Circuit(from_mg(mg(lb(limit))), one.category, True, True, False, 3000)
    assert len(applies(kept, american(), TODAY)) == (1 if limit == 15 else 2)


def test_that_a_blend_of_both_kinds_comes_under_both() -> None:
    blend = circuit(60, ozone_depleting=True, hfc_inside=True, gwp=1500)
    assert binding(blend) == ["82.157", "84.106"]
    assert binding(circuit(20, ozone_depleting=True, hfc_inside=True, gwp=1500)) == ["84.106"]


# 84.106(a): substitutes with a GWP over 53, such as 42 U.S.C. 7675's HFC-152 at 53 itself is not.
@pytest.mark.parametrize(("gwp", "keys"), [(3, []), (53, []), (53.1, ["84.106"])])
def test_that_a_substitute_is_bound_above_its_gwp(gwp: float, keys: list[str]) -> None:
    assert binding(circuit(100, gwp=gwp)) == keys


def test_that_an_excluded_subsector_is_not_bound() -> None:
    assert binding(circuit(20, hfc_inside=True, gwp=2088, excluded=True)) == []
    r22 = circuit(60, ozone_depleting=True, solely=True, gwp=1810, excluded=True)
    assert binding(r22) == ["82.157"]


@pytest.mark.parametrize(("on", "keys"), [(date(2025, 12, 31), []), (date(2026, 1, 1), ["84.106"])])
def test_that_a_regulation_binds_from_its_day(on: date, keys: list[str]) -> None:
    assert binding(circuit(20, hfc_inside=True, gwp=3922), on) == keys


@pytest.mark.parametrize(("on", "keys"), [(date(2020, 4, 9), []), (date(2020, 4, 10), ["82.157"])])
def test_that_the_older_regulation_binds_from_its_day(on: date, keys: list[str]) -> None:
    assert binding(circuit(60, ozone_depleting=True, solely=True), on) == keys


def test_that_no_regulation_binds_where_the_set_has_none() -> None:
    assert applies(circuit(500, hfc_inside=True), None, TODAY) == ()


# 82.157(d), (e): 30 d, 120 d with an industrial shutdown, follow-up 10 d later; by calendar.
def test_that_clocks_run_from_the_day_of_exceedance() -> None:
    due = due_dates(date(2026, 1, 10), ozone())
    assert due.repair == date(2026, 2, 9)
    assert due.initial_test == date(2026, 2, 9)
    assert due.follow_up == date(2026, 2, 19)
    assert due.plan == date(2026, 2, 9)
    assert due.plan_finish == date(2027, 2, 9)
    assert due.extension_cap == date(2026, 7, 9)


def test_that_an_industrial_shutdown_has_longer_clocks() -> None:
    due = due_dates(date(2026, 1, 10), hfc(), shutdown=True)
    assert due.repair == date(2026, 5, 10)
    assert due.extension_cap == date(2026, 10, 7)
    assert due.plan == date(2026, 2, 9)
    assert due.plan_finish == date(2027, 2, 9)


def test_that_the_follow_up_runs_from_a_good_initial_test() -> None:
    due = due_dates(date(2026, 1, 10), ozone(), initial_test_on=date(2026, 1, 12))
    assert due.follow_up == date(2026, 1, 22)


# 82.157(j): at least 125 % of the full charge in a calendar year, report by 1 March of the next.
@pytest.mark.parametrize(
    ("pounds", "due"), [(62.4, None), (62.5, date(2027, 3, 1)), (63, date(2027, 3, 1))]
)
def test_that_a_chronic_leaker_is_reported_by_the_first_of_march(
    pounds: float, due: date | None
) -> None:
    past = additions((date(2026, 1, 1), 30), (date(2026, 12, 31), pounds - 30), (TODAY, 0))
    found = chronic(past, lb(50), 2026, ozone())
    assert found.report_due == due
    assert found.is_chronic == (due is not None)
    assert percent(found.share) == pytest.approx(2 * pounds)


def test_that_a_calendar_year_ends_with_december() -> None:
    past = additions((date(2025, 12, 31), 40), (date(2027, 1, 1), 40), (date(2026, 6, 1), 10))
    assert percent(chronic(past, lb(50), 2026, hfc()).share) == 20
