"""Unit factors and the air's pressure against what is printed elsewhere."""

from decimal import Decimal
from fractions import Fraction

import pint
import pytest

from chargebench.units import (
    Kind,
    Q,
    Quantity,
    absolute,
    air_pressure_at,
    dimensions,
    from_mg,
    mass_mg,
    mg,
    read,
)


# NIST SP 811, B.8 (from memory): 1 lb = 0.453 592 37 kg exactly, 1 oz = 1/16 lb.
@pytest.mark.parametrize(
    ("value", "unit", "milligrams"),
    [
        ("1", "lb", 453_592),  # 453 592.37
        ("100", "lb", 45_359_237),
        ("1600", "oz", 45_359_237),
        ("3.5", "oz", 99_223),  # 28 349.523 125 x 3.5 = 99 223.330 9
        ("2", "oz", 56_699),  # 56 699.046 25
        ("0.0000005", "kg", 0),  # half a milligram goes to the even one
        ("0.0000015", "kg", 2),
        ("-0.0005", "g", 0),
        ("-1.5", "mg", -2),
        ("0.11", "kg", 110_000),
        ("1", "t", 1_000_000_000),
    ],
)
def test_that_milligrams_come_from_the_exact_factor(value: str, unit: str, milligrams: int) -> None:
    assert mass_mg(Fraction(Decimal(value)), unit) == milligrams


def test_that_a_compound_is_converted_once_and_not_in_parts() -> None:
    # 1 lb 2.5 oz = 18.5 oz = 18.5 x 28 349.523 125 mg = 524 466.177 8 mg, by hand.
    assert read(Kind.MASS, "1 lb 2.5 oz").mass_mg == 524_466
    # 3 lb 8 oz = 3.5 lb = 1 587 573.295 mg; a pound rounded first would give 1 587 572.
    assert read(Kind.MASS, "3 lb 8 oz").mass_mg == 1_587_573


def test_that_milligrams_and_grams_go_both_ways() -> None:
    assert from_mg(99_223).m_as("g") == pytest.approx(99.223, rel=1e-15)
    assert mg(Q(0.0025, "g")) == 2
    assert mg(Q(1, "lb")) == 453_592


# ISO 2533:1975, table of pressures at geopotential height; printed figures from memory.
@pytest.mark.parametrize(
    ("metres", "pascal"), [(0, 101_325), (1_000, 89_875), (2_000, 79_495), (5_000, 54_020)]
)
def test_that_the_air_thins_as_the_standard_atmosphere_prints(metres: int, pascal: int) -> None:
    assert air_pressure_at(Q(metres, "m")).m_as("Pa") == pytest.approx(pascal, abs=1)


def test_that_a_gauge_reading_stands_on_the_air_of_its_place() -> None:
    # 68 psig = 68 x 6 894.757 Pa = 468 843.5 Pa above the air.
    typed = read(Kind.PRESSURE, "68 psig")
    assert absolute(typed, Q(101_325, "Pa")).m_as("Pa") == pytest.approx(570_168.5, abs=0.1)
    assert absolute(typed, Q(79_495, "Pa")).m_as("Pa") == pytest.approx(548_338.5, abs=0.1)


def test_that_an_absolute_reading_does_not_ask_for_the_air() -> None:
    typed = read(Kind.PRESSURE, "500 micron")
    assert absolute(typed, Q(101_325, "Pa")) == absolute(typed, Q(79_495, "Pa"))


def test_that_a_wrong_dimension_is_refused_by_name() -> None:
    @dimensions(charge="[mass]", hose="[mass]")
    def both(charge: Quantity, hose: Quantity | None = None) -> str:
        return f"{charge} {hose}"

    assert both(Q(1, "g")) == "1 gram None"
    with pytest.raises(pint.DimensionalityError, match="for hose"):
        both(Q(1, "g"), Q(1, "Pa"))
