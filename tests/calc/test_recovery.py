"""Recovery levels by class, charge and machine, small appliances, what was missing, release."""

import dataclasses
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench import rules
from chargebench.calc.recovery import (
    Requirement,
    is_small_appliance,
    missing,
    release_allowed,
    required,
    result,
)
from chargebench.errors import ChargebenchError
from chargebench.rules import Day, Recovery
from chargebench.units import STANDARD_ATMOSPHERE, Kind, Q, Quantity, absolute, from_mg, mg, read

OLD, NEW = date(1993, 11, 14), date(1993, 11, 15)


def table() -> Recovery:
    recovery = rules.load("us-federal").recovery
    assert recovery is not None
    return recovery


def lb(pounds: float) -> Quantity:
    return Q(pounds, "lb")


def need(
    pressure_class: str = "medium",
    pounds: float = 10,
    made: date | None = NEW,
    *,
    small: bool = False,
    works: bool = True,
) -> Requirement:
    found = required(
        pressure_class=pressure_class,
        full_charge=lb(pounds),
        small_appliance=small,
        machine_made_on=made,
        compressor_works=works,
        rule=table(),
    )
    assert found is not None
    return found


def test_that_an_unknown_machine_counts_as_newer() -> None:
    assert need("medium", 250, None) == need("medium", 250, date(2001, 1, 1))


def test_that_a_charge_of_whole_milligrams_reaches_two_hundred_pounds() -> None:
    kept = from_mg(mg(lb(200)))
    assert need("medium", kept.m_as("lb")) == need("medium", 200)


@pytest.mark.parametrize(("pounds", "inches"), [(199.9, 10), (200, 15)])
def test_that_the_order_of_rows_does_not_matter(pounds: float, inches: float) -> None:
    turned = dataclasses.replace(table(), levels=table().levels[::-1])
    found = required(
        pressure_class="medium",
        full_charge=lb(pounds),
        small_appliance=False,
        machine_made_on=NEW,
        compressor_works=True,
        rule=turned,
    )
    assert found is not None
    assert found.level is not None
    assert found.level.value == inches


def test_that_an_unknown_pressure_class_is_refused() -> None:
    with pytest.raises(ChargebenchError, match="“extreme” at this charge; expected very high"):
        need("extreme")


def test_that_no_level_is_owed_where_the_set_has_none() -> None:
    assert (
        required(
            pressure_class="high",
            full_charge=lb(10),
            small_appliance=False,
            machine_made_on=None,
            compressor_works=True,
            rule=rules.load("eu-2024-573").recovery,
        )
        is None
    )


# 40 CFR 82.156(b): 80 % with an older machine; 90 % compressor working, 80 % not; or 4 inHg.
@pytest.mark.parametrize(
    ("made", "works", "percent"),
    [(OLD, True, 80), (OLD, False, 80), (NEW, True, 90), (NEW, False, 80), (None, True, 90)],
)
def test_that_a_small_appliance_owes_a_share(
    made: date | None, percent: float, *, works: bool
) -> None:
    found = need(made=made, small=True, works=works)
    assert found.share is not None
    assert found.share.quantity.m_as("percent") == percent
    assert found.level is None
    assert found.vacuum_instead is not None
    assert found.vacuum_instead.quantity.m_as("inHg") == pytest.approx(4)
    assert found.absolute_pressure.m_as("inHg") == pytest.approx(25.92, abs=0.01)


# A gauge that reads the level itself at sea level has met it, whatever floats do.
@pytest.mark.parametrize(("pounds", "inches"), [(100, 10), (250, 15)])
def test_that_a_gauge_on_the_level_meets_it(pounds: float, inches: float) -> None:
    reached = absolute(read(Kind.PRESSURE, f"-{inches} inHg"), STANDARD_ATMOSPHERE)
    found = result(need("medium", pounds), charge=None, recovered=None, absolute_pressure=reached)
    assert found.word == "met"


# 40 CFR 82.152: made, charged and hermetically sealed in a factory, with 5 lb or less.
@pytest.mark.parametrize(
    ("pounds", "sealed", "small"), [(5, True, True), (5.01, True, False), (1, False, False)]
)
def test_that_five_pounds_sealed_is_a_small_appliance(
    pounds: float, *, sealed: bool, small: bool
) -> None:
    found = is_small_appliance(charge=lb(pounds), factory_sealed=sealed, rule=table())
    assert found is small
    kept = from_mg(mg(lb(pounds)))
    assert is_small_appliance(charge=kept, factory_sealed=sealed, rule=table()) is small


def grams(value: float | None) -> Quantity | None:
    return None if value is None else Q(value, "g")


def kilopascals(value: float | None) -> Quantity | None:
    return None if value is None else Q(value, "kPa")


# 160 g with a 2010 machine: 144 g if the compressor runs, 128 g if not (82.156(b), by hand).
@pytest.mark.parametrize(
    ("works", "recovered", "word"),
    [
        (True, 144, "met"),
        (True, 143.9, "not met"),
        (False, 128, "met"),
        (False, 127.9, "not met"),
        (True, None, "not shown"),
    ],
)
def test_that_a_share_recovered_is_judged(
    recovered: float | None, word: str, *, works: bool
) -> None:
    requirement = need(made=date(2010, 1, 1), small=True, works=works)
    found = result(
        requirement, charge=grams(160), recovered=grams(recovered), absolute_pressure=None
    )
    assert found.word == word
    assert found.by == ("" if recovered is None else "share")


# A leaked charge falls short of the share; 4 inHg of vacuum serves in every case: 82.156(b).
@pytest.mark.parametrize(("kilopascal", "word"), [(87.6, "met"), (88.0, "not met")])
def test_that_the_vacuum_serves_instead_of_the_share(kilopascal: float, word: str) -> None:
    found = result(
        need(small=True),
        charge=grams(160),
        recovered=grams(60),
        absolute_pressure=kilopascals(kilopascal),
    )
    assert (found.word, found.by) == (word, "level")
    assert found.share is not None
    assert found.share.m_as("percent") == pytest.approx(37.5)


@pytest.mark.parametrize(
    ("kilopascal", "word", "by"),
    [(50.5, "met", "level"), (50.6, "not met", "level"), (None, "not shown", "")],
)
def test_that_a_level_is_judged_by_pressure(kilopascal: float | None, word: str, by: str) -> None:
    found = result(
        need("medium", 250),
        charge=lb(250),
        recovered=lb(249),
        absolute_pressure=kilopascals(kilopascal),
    )
    assert (found.word, found.by) == (word, by)


def test_that_less_than_a_kilogram_has_its_share() -> None:
    found = result(
        need(small=True),
        charge=Q(0.5, "kg"),
        recovered=Q(0.45, "kg"),
        absolute_pressure=None,
    )
    assert (found.word, found.by) == ("met", "share")


def test_that_a_charge_of_zero_has_no_share() -> None:
    found = result(need(small=True), charge=grams(0), recovered=grams(0), absolute_pressure=None)
    assert found.share is None
    assert found.word == "not shown"


@given(st.floats(0, 1e5), st.floats(0, 1e5))
def test_that_found_and_missing_make_the_nameplate(nameplate: float, recovered: float) -> None:
    gone = missing(nameplate=Q(nameplate, "g"), recovered=Q(recovered, "g").to("oz"))
    assert gone.m_as("g") + recovered == pytest.approx(nameplate, abs=1e-6)


@pytest.mark.parametrize(("on", "allowed"), [(date(2024, 7, 14), False), (date(2024, 7, 15), True)])
def test_that_an_exemption_holds_from_its_day(on: date, *, allowed: bool) -> None:
    american = rules.load("us-federal")
    began = Day("40CFR82F", "82.154(a)(1)", "SEEN", on, "since", date(2024, 7, 15))
    carbon_dioxide = dataclasses.replace(american.venting.exemptions[0], since=began)
    venting = dataclasses.replace(american.venting, exemptions=(carbon_dioxide,))
    dated = dataclasses.replace(american, venting=venting)
    found = release_allowed("R744", cabinet="other", on=on, rule_set=dated)
    assert (found is not None) is allowed


# 82.154(a)(1): each exemption stands alone; one that does not hold yet hides none after it.
def test_that_an_exemption_to_come_hides_none_that_holds() -> None:
    american = rules.load("us-federal")
    first = american.venting.exemptions[0]
    to_come = Day("40CFR82F", "82.154(a)(1)", "SEEN", date(2026, 1, 1), "since", date(2030, 1, 1))
    later = dataclasses.replace(first, since=to_come)
    for exemptions in ((later, first), (american.venting.exemptions[-1], first)):
        venting = dataclasses.replace(american.venting, exemptions=exemptions)
        dated = dataclasses.replace(american, venting=venting)
        cabinet = (first.cabinets or ("other",))[0]
        found = release_allowed(
            first.refrigerants[0], cabinet=cabinet, on=date(2026, 9, 1), rule_set=dated
        )
        assert found is first


def test_that_europe_names_no_exemption() -> None:
    european = rules.load("eu-2024-573")
    day = date(2026, 9, 1)
    assert release_allowed("R290", cabinet="ice machine", on=day, rule_set=european) is None
