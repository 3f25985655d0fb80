"""What is written is read as the same; what is shown is read back; units do not change masses."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st

from chargebench.errors import ReadingRefused
from chargebench.units import (
    EXACT_MG,
    RULES,
    Kind,
    Q,
    Reading,
    System,
    mass_mg,
    read,
    show,
    shown,
    unit_for,
    write,
)

DECIMALS = st.decimals(-5_000, 5_000, places=4, allow_nan=False)
KINDS_AND_UNITS = [
    (kind, label)
    for kind, rule in RULES.items()
    for label in dict.fromkeys(unit.label for unit in rule.units.values())
]


def _read_or_refusal(kind: Kind, text: str) -> Reading | str:
    try:
        return read(kind, text)
    except ReadingRefused as refusal:
        return str(refusal)


@pytest.mark.parametrize(("kind", "label"), KINDS_AND_UNITS)
@given(value=DECIMALS)
def test_that_what_is_written_is_read_as_the_same(kind: Kind, label: str, value: Decimal) -> None:
    text = write(value, label)
    reading = _read_or_refusal(kind, text)
    if isinstance(reading, str):
        # Only the fences of sense, or a dial's vacuum typed above zero, stand in the way.
        assert any(word in reading for word in ("outside", "negative", "vacuum"))
        return
    said = -abs(value) if label == "inHg vac" else value
    assert reading.value == Fraction(said)
    assert reading.unit == ("inHg" if label == "inHg vac" else label)
    assert reading.text == text


# A thousand milligrams make a gram, and so on: NIST SP 811, table 5, and B.8 for the pound.
SAME: dict[str, int | Fraction] = {
    "mg": 1,
    "g": 1_000,
    "kg": 10**6,
    "t": 10**9,
    "oz": Fraction(45_359_237, 1_600),
}


@given(
    mass=st.fractions(0, 10**7, max_denominator=10**6),
    unit=st.sampled_from(sorted(SAME)),
    other=st.sampled_from(sorted(SAME)),
)
def test_that_a_mass_is_the_same_in_every_unit(mass: Fraction, unit: str, other: str) -> None:
    assume(mass * SAME[unit] < 10**14)
    in_other = mass * SAME[unit] / SAME[other]
    assert mass_mg(mass, unit) == mass_mg(in_other, other) == round(mass * SAME[unit])


def test_that_sixteen_ounces_are_a_pound_exactly() -> None:
    assert EXACT_MG["oz"] * 16 == EXACT_MG["lb"]


@given(pounds=st.integers(0, 2_000), ounces=st.decimals(0, Decimal("15.999"), places=3))
def test_that_a_compound_is_the_sum_of_its_parts(pounds: int, ounces: Decimal) -> None:
    together = read(Kind.MASS, f"{pounds} lb {ounces} oz")
    in_ounces = 16 * pounds + Fraction(ounces)
    assert together.mass_mg == round(in_ounces * Fraction(45_359_237, 1_600))


SHOWN = [
    (Kind.SCALE, "g", 90_000_000),
    (Kind.PRESSURE, "Pa", 5_000_000),
    (Kind.LENGTH, "m", 9_000),
    (Kind.AREA, "m**2", 90_000),
    (Kind.VOLUME, "L", 5_000),
    (Kind.MASS_RATE, "g/year", 900_000),
    (Kind.TEMPERATURE, "degC", 500),
    (Kind.DURATION, "hour", 20_000),
    (Kind.CURRENT, "A", 900),
    (Kind.PERCENT, "percent", 900),
    (Kind.NUMBER, "", 900),
]


@pytest.mark.parametrize("system", ["SI", "IP"])
@pytest.mark.parametrize(("kind", "unit", "most"), SHOWN, ids=lambda x: str(x))
@given(part=st.floats(0, 1))
@example(part=0.0)
@example(part=1.0)
def test_that_what_is_shown_is_read_back(
    system: System, kind: Kind, unit: str, most: float, part: float
) -> None:
    quantity = Q(part * most, unit)
    text = shown(quantity, system)
    chosen, places = unit_for(quantity, system)
    back = read(kind, text).quantity.m_as(chosen)
    assert back == pytest.approx(quantity.m_as(chosen), abs=0.5001 * 10**-places)


@given(part=st.floats(-1, 1, allow_nan=False))
def test_that_a_difference_is_shown_and_read_back(part: float) -> None:
    pairs: tuple[tuple[System, str], ...] = (("SI", "kelvin"), ("IP", "delta_degF"))
    for system, unit in pairs:
        text = shown(Q(part * 400, "kelvin"), system)
        back = read(Kind.DIFFERENCE, text).quantity.m_as(unit)
        assert back == pytest.approx(Q(part * 400, "kelvin").m_as(unit), abs=0.0501)


@pytest.mark.parametrize(
    ("number", "unit", "system", "text"),
    [
        (0.4, "g", "SI", "0.4 g"),
        (999.9, "g", "SI", "999.9 g"),
        (1_000, "g", "SI", "1.000 kg"),
        (-0.001, "g", "SI", "0.0 g"),  # no minus before a nought
        (-12.34, "g", "SI", "\u221212.3 g"),
        (1_234_567, "g", "SI", "1\u202f234.567 kg"),
        (20, "oz", "IP", "1.25 lb"),
        (3.5, "oz", "IP", "3.50 oz"),
        (500, "micron_Hg", "IP", "500 micron"),
        (500, "micron_Hg", "SI", "66.7 Pa"),  # 500 x 0.133 322 Pa
        (68, "psi", "IP", "68.0 psia"),
        (2, "bar", "SI", "2.00 bar(a)"),
        (6.894_757, "kPa", "IP", "1.00 psi"),  # a difference of pressures: NIST SP 811, B.8
        (3, "kPa", "SI", "3.0 kPa"),
        (20, "degC", "IP", "68.0 °F"),
        (5, "kelvin", "IP", "9.0 °F"),
        (35.04, "percent", "SI", "35.0 %"),
        (90, "minute", "SI", "90 min"),
        (3, "hour", "SI", "3.0 h"),
        (49, "hour", "SI", "2 d"),
        (0.064, "kg/m**3", "SI", "64.0 g/m³"),
        (5, "micron_Hg/minute", "IP", "5.0 micron/min"),
    ],
)
def test_that_a_quantity_is_shown_in_the_shops_units(
    number: float, unit: str, system: System, text: str
) -> None:
    assert shown(Q(number, unit), system) == text


def test_that_a_doubt_is_shown_in_the_unit_of_its_figure() -> None:
    assert shown(Q(0.2, "g"), "SI", like=Q(2, "kg")) == "0.000 kg"
    assert shown(Q(2, "g"), "SI", like=Q(2, "kg")) == "0.002 kg"


def test_that_a_figure_that_is_no_number_is_a_bug_and_not_shown() -> None:
    with pytest.raises(AssertionError):
        shown(Q(float("nan"), "g"), "SI")


def test_that_places_are_kept_when_a_quantity_is_shown() -> None:
    assert show(Q(1234.5, "g"), "g", 2) == "1\u202f234.50 g"
