"""Water's boiling and ice lines against IAPWS codes by others and against printed values."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import OutsideDomain
from chargebench.fluids import water
from chargebench.units import Q


def test_that_the_two_lines_meet_at_the_triple_point() -> None:
    ice = water.vapour_pressure(Q(273.16 - 1e-9, "K")).m_as("Pa")
    liquid = water.vapour_pressure(Q(273.16, "K")).m_as("Pa")
    assert liquid == pytest.approx(ice, rel=1e-5)


@given(st.floats(-79.9, 199.9))
def test_that_the_boiling_temperature_is_the_inverse_of_the_pressure(celsius: float) -> None:
    pressure = water.vapour_pressure(Q(celsius, "degC"))
    # The triple point's step of 4 parts in a million is worth a tenth of a millikelvin.
    assert water.boiling_temperature(pressure).m_as("degC") == pytest.approx(celsius, abs=2e-4)


@pytest.mark.parametrize("celsius", [-81, 201, float("nan")])
def test_that_water_outside_its_range_is_refused(celsius: float) -> None:
    with pytest.raises(OutsideDomain) as refusal:
        water.vapour_pressure(Q(celsius, "degC"))
    assert str(refusal.value) == "Expected a temperature of water between −80 °C and 200 °C."


@pytest.mark.parametrize("pascal", [0, -5, 2e6, float("nan")])
def test_that_a_pressure_without_a_boiling_temperature_is_refused(pascal: float) -> None:
    with pytest.raises(OutsideDomain) as refusal:
        water.boiling_temperature(Q(pascal, "Pa"))
    assert str(refusal.value) == (
        "Expected an absolute pressure between 0.05 Pa and 1\u202f555 kPa(a) "
        "for the boiling line of water."
    )
