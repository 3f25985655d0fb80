"""Tonnes of CO2 equivalent and leak check intervals at their boundaries."""

import dataclasses
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench import rules
from chargebench.calc.climate import (
    CheckInterval,
    Recheck,
    check_duties,
    check_interval,
    recheck_duty,
    service_ban,
    tonnes_co2e,
)
from chargebench.calc.duty import Done
from chargebench.rules import Climate
from chargebench.units import Q, Quantity


def climate(name: str = "eu-2024-573") -> Climate:
    found = rules.load(name).climate
    assert found is not None
    return found


def interval(
    tonnes: float = 0,
    *,
    hfo: float = 0,
    charge: float = 10,
    name: str = "eu-2024-573",
    hermetic: bool = False,
    residential: bool = False,
    detection: bool = False,
) -> CheckInterval:
    return check_interval(
        co2e=Q(tonnes, "t"),
        hfo_mass=Q(hfo, "kg"),
        charge=Q(charge, "kg"),
        rule=climate(name),
        hermetic_labelled=hermetic,
        residential=residential,
        detection=detection,
    )


def months(found: CheckInterval) -> int | None:
    return None if found.every is None else int(found.every.value)


# Regulation 2024/573, article 5: 1.275 kg of R404A are 5.00 t; 7.0 kg of R134a are 10.01 t.
@pytest.mark.parametrize(
    ("kilograms", "gwp", "tonnes"),
    [(1.275, 3921.6, 5.000), (1.27, 3921.6, 4.980), (3.0, 1430, 4.29), (7.0, 1430, 10.01)],
)
def test_that_tonnes_are_mass_times_potential(kilograms: float, gwp: float, tonnes: float) -> None:
    assert tonnes_co2e(Q(kilograms, "kg"), gwp).m_as("t") == pytest.approx(tonnes, abs=0.001)
    exact = Decimal(str(gwp))
    assert tonnes_co2e(Q(kilograms, "kg"), exact).m_as("t") == pytest.approx(tonnes, abs=0.001)


# Regulation 2024/573, annex VI: 60 % DME, 10 % R152a, 30 % R600a come to 13.0.
def test_that_parts_of_a_blend_sum_to_the_printed_example() -> None:
    parts = ((60, 1.0), (10, 124.0), (30, 0.0))
    total = sum(tonnes_co2e(Q(percent, "kg"), gwp).m_as("kg") for percent, gwp in parts)
    assert total / 100 == pytest.approx(13.0, abs=0.05)


@given(st.floats(1e-6, 1e6), st.floats(0, 2e4))
def test_that_tonnes_are_the_same_in_any_unit(kilograms: float, gwp: float) -> None:
    mass: Quantity = Q(kilograms, "kg")
    tonnes = tonnes_co2e(mass, gwp).m_as("t")
    assert tonnes_co2e(mass.to("oz"), gwp).m_as("t") == pytest.approx(tonnes, rel=1e-12)


# Regulation 2024/573 article 6; Great Britain the same (517/2014 article 5).
@pytest.mark.parametrize("name", ["eu-2024-573", "gb"])
@pytest.mark.parametrize(("tonnes", "compulsory"), [(5, False), (499.99, False), (500.0, True)])
def test_that_detection_is_compulsory_from_500_tonnes(
    name: str, tonnes: float, *, compulsory: bool
) -> None:
    assert interval(tonnes, name=name).detection_compulsory is compulsory


def test_that_hfo_mass_does_not_count_in_great_britain() -> None:
    assert months(interval(hfo=200, name="gb")) is None


def test_that_the_shorter_interval_counts_and_both_rows_are_named() -> None:
    found = interval(6, hfo=12)
    assert months(found) == 6
    assert [row.counts for row in found.by] == ["CO2e", "HFO mass"]


@pytest.mark.parametrize(("charge", "expected"), [(2.99, None), (3.0, 12)])
def test_that_a_hermetic_circuit_at_home_is_checked_from_three_kilograms(
    charge: float, expected: int | None
) -> None:
    found = interval(11, charge=charge, hermetic=True, residential=True)
    assert months(found) == expected
    assert months(interval(11, charge=charge, residential=True)) == 12


def test_that_an_exemption_is_named_with_the_row_it_lifts() -> None:
    found = interval(6, hermetic=True)
    assert found.exempt is not None
    assert found.exempt.quantity == Q(10, "t")
    assert len(found.by) == 1
    at_home = interval(11, charge=1, hermetic=True, residential=True)
    assert at_home.exempt is not None
    assert at_home.exempt.quantity == Q(3, "kg")
    assert interval(3, hermetic=True).exempt is None


def test_that_a_hermetic_blend_is_checked_for_the_part_that_is_not_exempt() -> None:
    found = interval(6, hfo=2.5, hermetic=True)
    assert [row.counts for row in found.by] == ["HFO mass"]
    assert months(found) == 12


def test_that_what_is_not_said_of_a_circuit_lifts_no_check() -> None:
    found = check_interval(co2e=Q(8, "t"), hfo_mass=Q(0, "kg"), charge=Q(2, "kg"), rule=climate())
    assert found == interval(8, charge=2)
    assert months(found) == 12


# 517/2014 article 4 frees labelled hermetic circuits under 10 t and knows no limit for homes.
@pytest.mark.parametrize(("tonnes", "expected"), [(9.99, None), (10, 12)])
@pytest.mark.parametrize("residential", [False, True])
def test_that_great_britain_frees_hermetic_circuits_alike_at_home(
    tonnes: float, expected: int | None, *, residential: bool
) -> None:
    found = interval(tonnes, charge=2, name="gb", hermetic=True, residential=residential)
    assert months(found) == expected
    assert not found.detection_compulsory


def test_that_the_limit_for_homes_does_not_free_a_shop() -> None:
    assert months(interval(11, charge=2, hermetic=True)) == 12
    unsaid = check_interval(
        co2e=Q(11, "t"),
        hfo_mass=Q(0, "kg"),
        charge=Q(2, "kg"),
        rule=climate(),
        hermetic_labelled=True,
    )
    assert months(unsaid) == 12


# Article 6 binds from 500 t, whatever the mass of HFO beside it.
def test_that_one_row_that_compels_detection_is_enough() -> None:
    assert interval(600, hfo=2).detection_compulsory


@given(st.floats(0, 1e4), st.floats(0, 1e4))
def test_that_more_tonnes_are_never_checked_less_often(one: float, other: float) -> None:
    less, more = (months(interval(tonnes)) or 99 for tonnes in sorted((one, other)))
    assert more <= less


def test_that_the_next_check_is_calendar_months_later() -> None:
    def following(tonnes: float) -> list[date]:
        return [duty.due for duty in check_duties(date(2026, 8, 31), interval(tonnes), ())]

    assert following(50) == [date(2027, 2, 28)]
    assert following(5) == [date(2027, 8, 31)]
    assert following(1) == []


# Regulation 2024/573 article 4(5): not before 24 h of running, not later than one month.
def test_that_a_repair_is_checked_again_within_a_month() -> None:
    assert recheck_duty(Done(date(2026, 1, 31)), climate(), ()).due == date(2026, 2, 28)
    earliest = climate().recheck_earliest
    assert earliest is not None
    assert earliest.quantity.m_as("hour") == 24


# Regulation 2024/573 article 13 as summarised: virgin from GWP 2500 in refrigeration since 2025,
# in air conditioning since 2026; reclaimed until 2030 and 2032; from GWP 750 since 2032.
@pytest.mark.parametrize(
    ("gwp", "use", "on", "reclaimed", "banned"),
    [
        (3921.6, "refrigeration", date(2024, 12, 31), False, False),
        (3921.6, "refrigeration", date(2025, 1, 1), False, True),
        (2500, "refrigeration", date(2025, 1, 1), False, True),
        (2499.9, "refrigeration", date(2025, 1, 1), False, False),
        (3921.6, "refrigeration", date(2029, 12, 31), True, False),
        (3921.6, "refrigeration", date(2030, 1, 1), True, True),
        (3921.6, "air conditioning", date(2025, 6, 1), False, False),
        (3921.6, "air conditioning", date(2026, 1, 1), False, True),
        (1430, "refrigeration", date(2032, 1, 1), False, True),
        (1430, "refrigeration", date(2032, 1, 1), True, False),
    ],
)
def test_that_service_with_high_gwp_is_banned_from_its_day(
    gwp: float, use: str, on: date, *, reclaimed: bool, banned: bool
) -> None:
    ban = service_ban(gwp=gwp, use=use, on=on, rule=climate(), reclaimed=reclaimed)
    assert (ban is not None) is banned


def test_that_refrigerant_counts_as_virgin_unless_said_otherwise() -> None:
    day = date(2026, 1, 1)
    assert service_ban(gwp=3921.6, use="refrigeration", on=day, rule=climate()) is not None


# Article 5(6)(b) of Regulation 2024/573: "at least every 6 months or, where a leakage detection
# system is installed in such equipment, at least every 12 months" from 50 t; (a) and (c) likewise.
@pytest.mark.parametrize(
    ("tonnes", "detection", "due"),
    [
        (4.99, False, None),
        (5.0, False, date(2027, 8, 31)),
        (5.0, True, date(2028, 8, 31)),
        (49.99, False, date(2027, 8, 31)),
        (50.0, False, date(2027, 2, 28)),
        (50.0, True, date(2027, 8, 31)),
        (499.99, False, date(2027, 2, 28)),
        (500.0, True, date(2027, 2, 28)),
        (500.0, False, date(2026, 11, 30)),
    ],
)
def test_that_checks_return_by_tonnes_and_detection(
    tonnes: float, due: date | None, *, detection: bool
) -> None:
    owed = check_duties(date(2026, 8, 31), interval(tonnes, detection=detection), (), (12,))
    assert [duty.due for duty in owed] == ([] if due is None else [due])
    assert all(duty.entries == (12,) for duty in owed)


def test_that_a_check_made_starts_the_next_span() -> None:
    made = [Done(date(2027, 3, 31), 40), Done(date(2027, 1, 31), 30), Done(date(2026, 8, 31), 9)]
    owed = check_duties(date(2026, 8, 31), interval(60), made)
    assert [(duty.due, duty.done_on, duty.ended_by) for duty in owed] == [
        (date(2027, 2, 28), date(2027, 1, 31), (30,)),
        (date(2027, 7, 31), date(2027, 3, 31), (40,)),
        (date(2027, 9, 30), None, ()),
    ]


# Article 4(5): "at the earliest after an operating time of 24 hours has elapsed but not later than
# 1 month after the repair". Great Britain's text names no 24 hours here.
@pytest.mark.parametrize(
    ("on", "ran", "tight", "name", "ended"),
    [
        (date(2026, 1, 31), None, True, "eu-2024-573", False),
        (date(2026, 2, 1), None, True, "eu-2024-573", True),
        (date(2026, 2, 1), Q(23.9, "hour"), True, "eu-2024-573", False),
        (date(2026, 2, 1), Q(24, "hour"), True, "eu-2024-573", True),
        (date(2026, 2, 1), Q(2, "day"), False, "eu-2024-573", False),
        (date(2026, 1, 30), None, True, "eu-2024-573", False),
        (date(2026, 1, 31), None, True, "gb", True),
    ],
)
def test_that_a_check_after_repair_is_not_too_early(
    on: date, ran: Quantity | None, name: str, *, tight: bool, ended: bool
) -> None:
    check = Recheck(on, tight, ran, entry=6)
    owed = recheck_duty(Done(date(2026, 1, 31), 5), climate(name), [check])
    assert (owed.start, owed.due, owed.entries) == (date(2026, 1, 31), date(2026, 2, 28), (5,))
    assert (owed.ended_by == (6,)) is ended


def test_that_of_several_checks_the_first_good_one_ends_the_duty() -> None:
    checks = [Recheck(date(2026, 2, 9), tight=True), Recheck(date(2026, 2, 3), tight=True)]
    owed = recheck_duty(Done(date(2026, 1, 31)), climate(), checks)
    assert (owed.done_on, owed.entries, owed.ended_by) == (date(2026, 2, 3), (), ())


def test_that_hours_to_run_are_whole_days_where_they_were_not_said() -> None:
    rule = climate()
    assert rule.recheck_earliest is not None
    longer = dataclasses.replace(rule.recheck_earliest, value=Decimal(36))
    rule = dataclasses.replace(rule, recheck_earliest=longer)
    for day, ended in ((1, False), (2, True)):
        check = Recheck(date(2026, 2, day), tight=True)
        assert (recheck_duty(Done(date(2026, 1, 31)), rule, [check]).done_on is not None) is ended
