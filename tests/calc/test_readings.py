import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.readings import (
    compression_ratio,
    condensing_split,
    evaporator_difference,
    subcooling,
    superheat,
    surface_differences,
)
from chargebench.errors import OutsideDomain
from chargebench.fluids import saturation
from chargebench.units import STANDARD_ATMOSPHERE, Q, Quantity


def psig(gauge: float) -> Quantity:
    pressure: Quantity = Q(gauge, "psi") + STANDARD_ATMOSPHERE
    return pressure


# Lemmon (2003), Table V, as quoted in public tests: R407C at 300 K has dew and bubble apart by its
# glide; ASHRAE 34 prints a glide of about 7 K at 1 atm (bubble -43.8, dew -36.7 °C).
def test_that_a_zeotrope_is_read_from_dew_for_superheat_and_bubble_for_subcooling() -> None:
    r407c = saturation("R407C")
    line = Q(-30, "degC")
    vapour = superheat(r407c, suction_pressure=STANDARD_ATMOSPHERE, line_temperature=line)
    liquid = subcooling(r407c, liquid_pressure=STANDARD_ATMOSPHERE, line_temperature=line)
    assert vapour.m_as("kelvin") == pytest.approx(-30 + 36.7, abs=0.5)
    assert liquid.m_as("kelvin") == pytest.approx(-43.8 + 30, abs=0.5)
    split = condensing_split(r407c, discharge_pressure=STANDARD_ATMOSPHERE, ambient=Q(-50, "degC"))
    assert split.m_as("kelvin") == pytest.approx(50 - (43.8 + 36.7) / 2, abs=0.5)
    coil = evaporator_difference(
        r407c, suction_pressure=STANDARD_ATMOSPHERE, air_temperature=Q(-25, "degC")
    )
    assert coil.m_as("kelvin") == pytest.approx(36.7 - 25, abs=0.5)


def test_that_the_compression_ratio_is_of_absolute_pressures() -> None:
    # By hand: 14.7 psig is 2 atm absolute, 132.3 psig is 10 atm.
    found = compression_ratio(suction_pressure=psig(14.696), discharge_pressure=psig(9 * 14.696))
    assert found == pytest.approx(5, rel=1e-3)


def test_that_a_ratio_to_a_perfect_vacuum_is_refused() -> None:
    with pytest.raises(OutsideDomain):
        compression_ratio(suction_pressure=Q(0, "Pa"), discharge_pressure=Q(1, "bar"))


def test_that_a_pressure_outside_the_curve_is_refused() -> None:
    with pytest.raises(OutsideDomain):
        superheat(saturation("R290"), suction_pressure=Q(900, "bar"), line_temperature=Q(0, "degC"))


@given(st.floats(-40, 60), st.floats(-60, 100))
def test_that_superheat_is_the_same_in_any_unit(boils: float, line: float) -> None:
    curve = saturation("R290")
    pressure = curve.dew_pressure(Q(boils, "degC"))
    metric = superheat(curve, suction_pressure=pressure, line_temperature=Q(line, "degC"))
    customary = superheat(
        curve, suction_pressure=pressure.to("psi"), line_temperature=Q(line, "degC").to("degF")
    )
    assert metric.m_as("kelvin") == pytest.approx(line - boils, abs=1e-6)
    assert customary.m_as("kelvin") == pytest.approx(metric.m_as("kelvin"), abs=1e-9)


def test_that_surfaces_give_each_difference_whose_ends_are_known() -> None:
    found = surface_differences(
        evaporator_middle=Q(-20, "degC"),
        suction_line=Q(-12, "degC"),
        air_on_evaporator=Q(-14, "degC"),
        condenser_middle=Q(45, "degC"),
        ambient=Q(90, "degF"),
    )
    assert found.superheat is not None
    assert found.evaporator_difference is not None
    assert found.condensing_split is not None
    assert found.superheat.m_as("kelvin") == pytest.approx(8)
    assert found.evaporator_difference.m_as("kelvin") == pytest.approx(6)
    assert found.condensing_split.m_as("kelvin") == pytest.approx(45 - 58 / 1.8)
    assert found.subcooling is None
