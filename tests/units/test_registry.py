"""What the registry remembers is what pint itself works out."""

from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.units import Q

PLAIN: pint.UnitRegistry[Any] = pint.UnitRegistry()  # pint without our memory
PAIRS = [
    ("kg", "lb"), ("oz", "g"), ("Pa", "psi"), ("bar", "inHg"), ("m", "ft"), ("L", "in**3"),
    ("g/year", "oz/day"), ("delta_degC", "delta_degF"), ("degC", "K"), ("degF", "degC"),
    ("percent", "dimensionless"), ("kg/m**3", "lb/ft**3"), ("s", "h"),
]  # fmt: skip


@pytest.mark.parametrize(("unit", "other"), PAIRS)
@given(magnitude=st.floats(-1e12, 1e12))
def test_that_a_conversion_is_bit_for_bit_that_of_pint(
    unit: str, other: str, magnitude: float
) -> None:
    assert Q(magnitude, unit).m_as(other) == PLAIN.Quantity(magnitude, unit).m_as(other)


@pytest.mark.parametrize("other", ["Pa", "degC", "g/year"])
def test_that_another_dimension_is_refused_every_time(other: str) -> None:
    for _ in range(2):
        with pytest.raises(pint.DimensionalityError):
            Q(1.5, "kg").to(other)


def test_that_a_name_nobody_knows_is_refused_every_time() -> None:
    for _ in range(2):
        with pytest.raises(pint.UndefinedUnitError):
            Q(1.5, "firkinish")
