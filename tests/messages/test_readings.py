"""Wrong readings as people type them, each refused in the words kept in readings.txt."""

import pytest

from chargebench.errors import ReadingRefused
from chargebench.units import Kind, read
from tests.messages.kept import kept

TYPED: dict[str, tuple[Kind, str]] = {
    "text for a number": (Kind.MASS, "three ounces"),
    "wrong kind of unit": (Kind.MASS, "68 psig"),
    "unit nobody knows": (Kind.MASS, "85 stone"),
    "no unit": (Kind.MASS, "85"),
    "unit alone": (Kind.MASS, "g"),
    "negative mass": (Kind.MASS, "-85 g"),
    "absurdly large": (Kind.MASS, "85000000 kg"),
    "more than fits": (Kind.MASS, "9" * 5_000 + " g"),
    "exponent": (Kind.MASS, "8.5e1 g"),
    "not a number": (Kind.MASS, "NaN g"),
    "infinity": (Kind.MASS, "inf g"),
    "empty": (Kind.MASS, ""),
    "spaces only": (Kind.MASS, " \t "),
    "mixed commas": (Kind.MASS, "1,234.5 g"),
    "two commas": (Kind.MASS, "1,234,5 g"),
    "comma that may part thousands": (Kind.MASS, "1,234 g"),
    "spaces that part nothing": (Kind.MASS, "43 12.5 g"),
    "two masses": (Kind.MASS, "85 g 90 g"),
    "ounces that make a pound": (Kind.MASS, "1 lb 17 oz"),
    "a formula": (Kind.MASS, "=85 g"),
    "gauge or absolute": (Kind.PRESSURE, "68 psi"),
    "vacuum or absolute": (Kind.PRESSURE, "10 inHg"),
    "absolute below nothing": (Kind.PRESSURE, "-1 psia"),
    "mass for a pressure": (Kind.PRESSURE, "85 g"),
    "below the coldest": (Kind.TEMPERATURE, "-500 °F"),
    "temperature without unit": (Kind.TEMPERATURE, "20"),
    "fraction of a gram": (Kind.MASS, "1/2 g"),
    "third of an inch": (Kind.LENGTH, "1/3 in"),
    "per cent of nothing": (Kind.PERCENT, "%"),
}


@pytest.mark.parametrize("name", TYPED)
def test_that_a_wrong_reading_is_refused_in_the_words_kept(name: str) -> None:
    kind, text = TYPED[name]
    with pytest.raises(ReadingRefused) as refusal:
        read(kind, text)
    assert str(refusal.value) == kept("readings")[name]


def test_that_no_words_are_kept_for_a_reading_nobody_types() -> None:
    assert list(kept("readings")) == list(TYPED)
