"""Water's boiling and ice lines against IAPWS codes by others and against printed values."""

import iapws.iapws97
import pytest
from chemicals import iapws95_Psat
from hypothesis import given
from hypothesis import strategies as st
from iapws import _iapws

from chargebench.errors import OutsideDomain
from chargebench.fluids import water
from chargebench.units import Q
from tests.fluids.published import label, rows


@pytest.mark.parametrize("row", rows("water"), ids=label)
def test_that_water_agrees_with_the_published_rows(row: dict[str, str]) -> None:
    number, unit = row["condition"].split(" ")[:2]
    given_unit = {"C": "degC", "micron": "micron_Hg"}.get(unit, unit)
    expected, tolerance = float(row["expected"]), row["tolerance"]
    if given_unit == "degC":
        found = water.vapour_pressure(Q(float(number), "degC")).m_as(row["unit"])
    else:
        unit = {"C": "degC"}.get(row["unit"], row["unit"])
        found = water.boiling_temperature(Q(float(number), given_unit)).m_as(unit)
    if tolerance.endswith("%"):
        assert found == pytest.approx(expected, rel=float(tolerance.removesuffix("%")) / 100)
    else:
        assert found == pytest.approx(expected, rel=0, abs=float(tolerance))


@pytest.mark.parametrize("celsius", [0.02, 5, 20, 45, 70, 100, 150, 200])
def test_that_boiling_agrees_with_iapws97_and_iapws95(celsius: float) -> None:
    kelvin = celsius + 273.15
    found = water.vapour_pressure(Q(kelvin, "K")).m_as("MPa")
    assert found == pytest.approx(iapws.iapws97._PSat_T(kelvin), rel=2e-4)
    assert found == pytest.approx(iapws95_Psat(kelvin) / 1e6, rel=2e-4)


@pytest.mark.parametrize("celsius", [-80, -60, -40, -24.5, -17.3, -10, -1, 0])
def test_that_ice_agrees_with_the_iapws_sublimation_line(celsius: float) -> None:
    kelvin = celsius + 273.15
    expected = _iapws._Sublimation_Pressure(kelvin)
    assert water.vapour_pressure(Q(kelvin, "K")).m_as("MPa") == pytest.approx(expected, rel=1e-6)


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
