"""Charge limits and room rules of flammable refrigerants against printed tables."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench import rules
from chargebench.calc.flammability import (
    ChargeLimit,
    alarm_concentration,
    charge_limit,
    charge_steps,
    concentration_if_leaked,
    is_flammable,
    marked_floor_area,
    max_charge_for_area,
    max_charge_for_volume,
    minimum_floor_area,
    share_of_lfl,
)
from chargebench.errors import ChargebenchError
from chargebench.rules import RoomForm
from chargebench.units import Q, Quantity

# Printed in an appliance manual's annex GG table; R32 0.307 in the 2018 edition's tables.
R290, R32 = Q(0.038, "kg/m**3"), Q(0.307, "kg/m**3")
GENERIC = rules.load("generic").flammability
CLOSED, OPEN = "self-contained with doors or drawers", "self-contained open"
HOME, ICE = "household refrigerator or freezer", "ice machine"


def form(key: str = "2018") -> RoomForm:
    return GENERIC.room_form(key)


# Annex GG as printed in appliance manuals: 4 m2, 0.6 m: R290 0.05 kg, R32 0.68 kg (LFL 0.306).
@pytest.mark.parametrize(("lfl", "kilograms"), [(0.038, 0.0503), (0.306, 0.683)])
def test_that_the_older_form_agrees_with_its_printed_table(lfl: float, kilograms: float) -> None:
    most = max_charge_for_area(
        lfl=Q(lfl, "kg/m**3"),
        floor_area=Q(4, "m**2"),
        height=Q(0.6, "m"),
        form=form("before 2018"),
    )
    assert most.m_as("kg") == pytest.approx(kilograms, rel=0.01)


@pytest.mark.parametrize("key", ["2018", "before 2018"])
@given(charge=st.floats(1e-3, 50), lfl=st.floats(0.02, 0.5), height=st.floats(0.3, 3))
def test_that_the_smallest_floor_holds_just_the_charge(
    key: str, charge: float, lfl: float, height: float
) -> None:
    low, high = Q(lfl, "kg/m**3"), Q(height, "m")
    area = minimum_floor_area(charge=Q(charge, "kg"), lfl=low, height=high, form=form(key))
    most = max_charge_for_area(lfl=low, floor_area=area, height=high, form=form(key))
    assert most.m_as("kg") == pytest.approx(charge, rel=1e-9)


@given(st.floats(0, 500), st.floats(0, 500))
def test_that_a_larger_floor_never_holds_less(one: float, other: float) -> None:
    small, large = (
        max_charge_for_area(
            lfl=R290, floor_area=Q(area, "m**2"), height=Q(1.8, "m"), form=form()
        ).m_as("kg")
        for area in sorted((one, other))
    )
    assert small <= large


@given(st.floats(0.01, 500), st.floats(0.1, 4))
def test_that_room_figures_are_the_same_in_any_unit(square_metres: float, metres: float) -> None:
    area, height = Q(square_metres, "m**2"), Q(metres, "m")
    plain = max_charge_for_area(lfl=R290, floor_area=area, height=height, form=form())
    turned = max_charge_for_area(
        lfl=R290.to("lb/ft**3"), floor_area=area.to("ft**2"), height=height.to("in"), form=form()
    )
    assert turned.m_as("kg") == pytest.approx(plain.m_as("kg"), rel=1e-9)


# Annex GG and UL 60335-2-89: 4, 8, 13, 26, 130 m3 times 0.038 kg/m3, by hand.
def test_that_charge_steps_are_multiples_of_the_lower_limit() -> None:
    kilograms = [step.m_as("kg") for step in charge_steps(R290, GENERIC)]
    assert kilograms == pytest.approx([0.152, 0.988, 4.94], abs=0.001)
    r32 = [step.m_as("kg") for step in charge_steps(Q(0.306, "kg/m**3"), GENERIC)]
    assert r32 == pytest.approx([1.224, 7.956, 39.78], abs=0.005)


# EN 378 as quoted: 8 g/m3 in 3 m x 3 m x 2.5 m; 85 g of R290 in 40 m3 are 2.1 g/m3, by hand.
def test_that_a_leak_into_a_room_is_a_share_of_the_lower_limit() -> None:
    inside = concentration_if_leaked(charge=Q(180, "g"), room_volume=Q(22.5, "m**3"))
    assert inside.m_as("g/m**3") == pytest.approx(8.0)
    share = share_of_lfl(concentration=inside, lfl=R290)
    assert share.m_as("percent") == pytest.approx(21.05, abs=0.01)


# The refrigerant handbook's 20 % rule: 150 g of R290 asks for 150 / (0.2 x 38) = 19.7 m3.
def test_that_a_room_holds_a_share_of_the_lower_limit() -> None:
    most = max_charge_for_volume(lfl=R290, room_volume=Q(19.74, "m**3"), rule=GENERIC)
    assert most.m_as("g") == pytest.approx(150, abs=0.1)
    american = rules.load("us-federal").flammability
    more = max_charge_for_volume(lfl=R290, room_volume=Q(19.74, "m**3"), rule=american)
    assert more.m_as("g") == pytest.approx(187.5, abs=0.1)


# Annex DD: alarm at 25 % of the lower limit at most; R290 9.5 g/m3.
def test_that_a_detector_alarms_at_a_quarter() -> None:
    assert alarm_concentration(R290, GENERIC).m_as("g/m**3") == pytest.approx(9.5)


# From memory: m / (0.25 LFL x 2.2 m) above 150 g: 300 g 14.4 m2, 494 g 23.6 m2.
@pytest.mark.parametrize(
    ("grams", "area"), [(150, None), (150.1, 7.18), (300, 14.35), (494, 23.64)]
)
def test_that_a_room_is_marked_above_150_grams(grams: float, area: float | None) -> None:
    found = marked_floor_area(charge=Q(grams, "g"), lfl=R290, rule=GENERIC)
    assert (None if found is None else found.m_as("m**2")) == (
        None if area is None else pytest.approx(area, abs=0.01)
    )
    assert GENERIC.marking.share_of_lfl.unverified


@pytest.mark.parametrize(
    "work",
    [
        lambda: concentration_if_leaked(charge=Q(1, "kg"), room_volume=Q(0, "m**3")),
        lambda: share_of_lfl(concentration=R290, lfl=Q(0, "kg/m**3")),
        lambda: marked_floor_area(charge=Q(1, "kg"), lfl=Q(0, "kg/m**3"), rule=GENERIC),
        lambda: minimum_floor_area(charge=Q(1, "kg"), lfl=R290, height=Q(0, "m"), form=form()),
        lambda: minimum_floor_area(
            charge=Q(1, "kg"), lfl=Q(0, "kg/m**3"), height=Q(1, "m"), form=form()
        ),
    ],
)
def test_that_zero_is_no_room_and_no_limit(work: object) -> None:
    assert callable(work)
    with pytest.raises(ChargebenchError, match=r"^Expected a .* above zero\.$"):
        work()


# ISO 817: classes 1 are those without flame propagation.
@pytest.mark.parametrize(
    ("safety_class", "flammable"),
    [("A1", False), ("B1", False), ("A2L", True), ("A2", True), ("A3", True), ("B2L", True)],
)
def test_that_classes_from_2l_on_are_flammable(safety_class: str, *, flammable: bool) -> None:
    assert is_flammable(safety_class, GENERIC) is flammable


def found(
    name: str,
    cabinet: str,
    *,
    refrigerant: str = "R290",
    safety_class: str = "A3",
    lfl: Quantity | None = R290,
    made_on: date | None = None,
) -> ChargeLimit | None:
    return charge_limit(
        refrigerant=refrigerant,
        safety_class=safety_class,
        lfl=lfl,
        cabinet=cabinet,
        rule_set=rules.load(name),
        made_on=made_on,
    )


# IEC 60335-2-24: 150 g; IEC 60335-2-89: 150 g (2010), 13 m3 x LFL for A3, 1.2 kg for A2L (2019).
@pytest.mark.parametrize("name", ["generic", "eu-2024-573", "gb"])
@pytest.mark.parametrize(
    ("safety_class", "lfl", "cabinet", "made", "grams"),
    [
        ("A2L", Q(0.05, "kg/m**3"), CLOSED, None, 650),
        ("A1", None, CLOSED, None, None),
        ("A3", None, CLOSED, None, None),
    ],
)
def test_that_standards_limit_by_class_and_edition(
    name: str,
    safety_class: str,
    lfl: Quantity | None,
    cabinet: str,
    made: date | None,
    grams: float | None,
) -> None:
    limit = found(name, cabinet, safety_class=safety_class, lfl=lfl, made_on=made)
    assert (None if limit is None else limit.mass.m_as("g")) == (
        None if grams is None else pytest.approx(grams)
    )


def test_that_a_limit_names_its_source_and_weakest_mark() -> None:
    seen = found("us-federal", CLOSED)
    assert seen is not None
    assert (seen.title, seen.source, seen.mark, seen.unverified) == (
        "UL 60335-2-89, with doors or drawers",
        "UL60335-2-89, with doors or drawers",
        "SEEN-2",
        False,
    )
    capped = found("generic", CLOSED, safety_class="A2L", lfl=R32)
    assert capped is not None
    assert (capped.source, capped.mark, capped.unverified) == (
        "IEC60335-2-89, 2019",
        "MEMORY",
        True,
    )
