import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.leak_flow import Gas, as_refrigerant, mass_rate, smallest_leak
from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity

FLOW = "Pa * m**3 / s"


def a_year(pascal_m3_s: float, molar: float, celsius: float) -> float:
    found = mass_rate(
        leak=Q(pascal_m3_s, FLOW), molar_mass=Q(molar, "g/mol"), temperature=Q(celsius, "degC")
    )
    return float(found.m_as("g/year"))


# Arithmetic of the ideal gas at 20 °C (COMPUTED): flows of 1 g a year.
@pytest.mark.parametrize(
    ("flow", "molar"),
    [(7.58e-7, 102.03), (1.75e-6, 44.10), (8.94e-7, 86.47), (1.33e-6, 58.12), (1.76e-6, 44.01)],
)
def test_that_a_gram_a_year_is_the_flow_of_its_gas(flow: float, molar: float) -> None:
    assert a_year(flow, molar, 20) == pytest.approx(1, rel=5e-3)


def range_from(test_gas: Gas, refrigerant: Gas, leak: float = 1e-6) -> tuple[float, float]:
    found = as_refrigerant(
        leak=Q(leak, FLOW), test_gas=test_gas, refrigerant=refrigerant, temperature=Q(20, "degC")
    )
    return float(found.molecular.m_as("g/year")), float(found.viscous.m_as("g/year"))


def gas(molar: float, pascal: float, viscosity: float, outside: float = 101_325) -> Gas:
    return Gas(Q(molar, "g/mol"), Q(pascal, "Pa"), Q(outside, "Pa"), Q(viscosity, "Pa * s"))


# Air into vacuum at 1 micron/min and litre, to refrigerant out at 20 °C saturation: computed apart
# from this program with CoolProp 8.0.0 pressures and viscosities (COMPUTED), g/yr.
@pytest.mark.parametrize(
    ("molar", "pascal", "viscosity", "molecular", "viscous"),
    [
        (102.03, 571_700, 1.15e-5, 7.3, 143),
        (44.10, 836_500, 0.81e-5, 7.5, 192),
        (52.02, 1_474_600, 1.24e-5, 15, 429),
        (58.12, 302_200, 0.74e-5, 2.3, 33),
    ],
)
def test_that_a_vacuum_leak_is_known_only_to_an_order_of_magnitude(
    molar: float, pascal: float, viscosity: float, molecular: float, viscous: float
) -> None:
    leak = smallest_leak(expanded_uncertainty=Q(1, "micron_Hg"), volume=Q(1, "L"), time=Q(1, "min"))
    air = gas(28.96, 0, 1.82e-5)
    found = range_from(air, gas(molar, pascal, viscosity), float(leak.m_as(FLOW)))
    assert found == pytest.approx((molecular, viscous), rel=0.09)


# Vapours of refrigerants at 20 °C lie between 0.7e-5 and 1.3e-5 Pa s.
def test_that_a_gas_without_a_viscosity_has_that_of_a_refrigerant() -> None:
    plain = Gas(Q(102, "g/mol"), Q(5e5, "Pa"), Q(101_325, "Pa"))
    air = gas(28.96, 0, 1.82e-5)
    assert range_from(air, plain) == pytest.approx(range_from(air, gas(102, 5e5, 1e-5)))


def test_that_the_range_is_ordered() -> None:
    found = as_refrigerant(
        leak=Q(1e-6, FLOW),
        test_gas=gas(28, 1e6, 1.8e-5),
        refrigerant=gas(102, 2e5, 1e-5),
        temperature=Q(20, "degC"),
    )
    assert found.lower <= found.upper
    assert {found.lower.m, found.upper.m} == {found.molecular.m, found.viscous.m}


def test_that_impossible_states_are_refused() -> None:
    still = gas(28, 101_325, 1.8e-5)
    with pytest.raises(OutsideDomain, match="pressure difference"):
        range_from(still, still)
    with pytest.raises(OutsideDomain, match="absolute zero"):
        a_year(1e-6, 100, -273.15)


def test_that_a_gas_has_a_mass_a_viscosity_and_no_pressure_below_zero() -> None:
    air = gas(28.96, 0, 1.82e-5)
    for impossible in (gas(0, 5e5, 1e-5), gas(102, 5e5, 0), gas(-102, 5e5, 1e-5)):
        with pytest.raises(OutsideDomain, match="molar masses and viscosities above zero"):
            range_from(air, impossible)
    for side in (gas(102, -0.5, 1e-5), gas(102, 5e5, 1e-5, outside=-0.5)):
        with pytest.raises(OutsideDomain, match="none of them below zero"):
            range_from(air, side)
    assert range_from(air, gas(102, 0, 1e-5, outside=5e5))[0] > 0  # vacuum itself is a pressure


# By hand: hydrogen's 2 g/mol and an imaginary half of it; 1 Pa across the hole; half a kelvin.
def test_that_small_figures_are_figures() -> None:
    assert a_year(1e-6, 0.5, 20) == pytest.approx(a_year(1e-6, 1, 20) / 2)
    assert a_year(1e-6, 1, -272.65) == pytest.approx(a_year(1e-6, 1, -272.15) * 2)
    across = gas(28, 101_326, 1.8e-5)
    assert range_from(across, gas(0.5, 101_326, 1.8e-5))[1] == pytest.approx(a_year(1e-6, 0.5, 20))
    doubt, volume = Q(1, "Pa"), Q(1, "m**3")
    found = smallest_leak(expanded_uncertainty=doubt, volume=volume, time=Q(0.5, "s"))
    assert found.m_as(FLOW) == 2


@given(st.floats(1e-12, 1), st.floats(1, 500))
def test_that_flow_and_mass_are_proportional(flow: float, molar: float) -> None:
    assert a_year(2 * flow, molar, 20) == pytest.approx(2 * a_year(flow, molar, 20))


def test_that_the_unit_of_a_leak_does_not_matter() -> None:
    leak: Quantity = Q(1, "mbar * L / s")
    found = mass_rate(leak=leak, molar_mass=Q(0.1, "kg/mol"), temperature=Q(293.15, "kelvin"))
    assert found.m_as("g/year") == pytest.approx(a_year(0.1, 100, 20))
