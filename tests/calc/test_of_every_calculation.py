"""What holds of every calculation: the units typed do not matter, and no number breaks it."""

import math

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import ChargebenchError
from chargebench.units import Q
from tests.calc.calls import CALLS, UNITS, Call, numbers

each = pytest.mark.parametrize("call", CALLS, ids=str)
# Far beyond what a reading of any kind may be typed as: units refuse that before it gets here.
SIZES = st.floats(1e-12, 1e12)
NUMBERS = st.just(0.0) | SIZES | SIZES.map(lambda size: -size)


def values_of(call: Call) -> st.SearchStrategy[dict[str, float]]:
    ordinary = {
        name: st.floats(150, 450) if kind == "temperature" else st.floats(1e-2, 1e4)
        for name, kind in call.takes.items()
    }
    return st.fixed_dictionaries(ordinary)


def units_of(call: Call) -> st.SearchStrategy[dict[str, str]]:
    kinds = {name: st.sampled_from(UNITS[kind]) for name, kind in call.takes.items()}
    return st.fixed_dictionaries(kinds)


def first_units(call: Call) -> dict[str, str]:
    return {name: UNITS[kind][0] for name, kind in call.takes.items()}


@each
@given(st.data())
def test_that_the_answer_is_the_same_in_whatever_units_were_typed(
    call: Call, data: st.DataObject
) -> None:
    values = data.draw(values_of(call))
    plain = list(numbers(call.of(values, first_units(call))))
    typed = list(numbers(call.of(values, data.draw(units_of(call)))))
    # A small difference of large numbers keeps the rounding of the large ones.
    least = 1e-12 * max((abs(one) for one in (*plain, *values.values())), default=0)
    assert typed == pytest.approx(plain, rel=1e-9, abs=least)


@each
@given(st.data())
def test_that_no_finite_number_breaks_a_calculation(call: Call, data: st.DataObject) -> None:
    values = data.draw(st.fixed_dictionaries(dict.fromkeys(call.takes, NUMBERS)))
    try:
        found = list(numbers(call.of(values, first_units(call))))
    except ChargebenchError:
        return
    assert not any(math.isnan(one) for one in found)


@each
def test_that_a_wrong_dimension_is_refused_wherever_it_stands(call: Call) -> None:
    good = {name: Q(300.0, UNITS[kind][0]) for name, kind in call.takes.items()}
    call.function(**good)
    for name in call.takes:
        with pytest.raises((pint.DimensionalityError, ChargebenchError)):
            call.function(**good | {name: Q(1, "ampere")})
