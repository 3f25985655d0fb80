import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.calc.pressure_test import (
    PressureVerdict,
    PressureWord,
    State,
    check_test_pressure,
    drop_uncertainty,
    expected_pressure,
    ideal_pressure,
    judge,
    smallest_leak,
    time_needed,
)
from chargebench.errors import OutsideDomain, PressureTooHigh
from chargebench.units import Q, Quantity

BAR_ABOVE = Q(1.01325, "bar")
# Density of nitrogen by CoolProp 8.0.0 (COMPUTED) at 30 bar(g) and 20 °C, and where the ideal law
# would have it after cooling: 28.942 bar(g) at 10 °C.
REAL_START, REAL_END = Q(35.83054, "kg/m**3"), Q(35.92675, "kg/m**3")


def test_that_the_real_gas_expects_what_constant_density_gives() -> None:
    start = State(BAR_ABOVE + Q(30, "bar"), Q(20, "degC"), REAL_START)
    end = State(BAR_ABOVE + Q(28.942, "bar"), Q(10, "degC"), REAL_END)
    found = expected_pressure(start=start, end=end)
    assert (found - BAR_ABOVE).m_as("bar") == pytest.approx(28.862, abs=0.002)


def held(
    end_bar: float, *, kelvin: float = 0.5, step_bar: float = 0.1, **more: Quantity
) -> PressureVerdict:
    return judge(
        start=State(Q(31, "bar"), Q(20, "degC")),
        end=State(Q(end_bar, "bar"), Q(20, "degC")),
        gauge_resolution=Q(step_bar, "bar"),
        thermometer=Q(kelvin, "delta_degC"),
        **more,
    )


# By JCGM 100, 5.1.2, worked by hand for 31 bar: u**2 = 2 (0.1 / sqrt 12)**2 + 2 (31 0.5 / 293)**2.
def test_that_the_doubt_is_that_of_gauge_and_thermometer() -> None:
    assert held(31).expanded_uncertainty.m_as("bar") / 2 == pytest.approx(0.085, abs=0.001)
    fine = held(31, kelvin=0.3, step_bar=0.01)
    assert fine.expanded_uncertainty.m_as("bar") == pytest.approx(0.09, abs=0.002)


# By the formulas printed in the notes: a step alone is 2 (res / sqrt 12)**2, and the ideal law's
# error 8.3e-6 p**2 |dT| per bar and kelvin is a half-width (JCGM 100, 4.3.7).
def test_that_each_part_of_the_doubt_is_its_formula() -> None:
    step = held(31, kelvin=0, step_bar=0.12).expanded_uncertainty.m_as("bar")
    assert step == pytest.approx(2 * (2 * 0.12**2 / 12) ** 0.5, rel=1e-9)
    ideal = drop_uncertainty(
        start=State(Q(20, "bar"), Q(20, "degC")),
        end=State(Q(19, "bar"), Q(10, "degC")),
        gauge_resolution=Q(0, "bar"),
        thermometer=Q(0, "delta_degC"),
    )
    assert ideal.m_as("bar") == pytest.approx(8.3e-6 * 400 * 10 / 3**0.5, rel=1e-9)


def test_that_two_gauges_add_their_own_error_twice() -> None:
    one = held(31).expanded_uncertainty.m_as("bar")
    two = held(31, other_gauge=Q(0.2, "bar")).expanded_uncertainty.m_as("bar")
    assert two**2 - one**2 == pytest.approx(4 * 2 * 0.2**2)


def test_that_the_ideal_law_adds_its_error_where_the_temperature_changed() -> None:
    def doubt(density: Quantity | None) -> float:
        u = drop_uncertainty(
            start=State(Q(31, "bar"), Q(20, "degC"), density),
            end=State(Q(30, "bar"), Q(10, "degC"), density),
            gauge_resolution=Q(0, "bar"),
            thermometer=Q(0, "delta_degC"),
        )
        return float(u.m_as("bar"))

    assert doubt(Q(36, "kg/m**3")) == 0
    # The two forms differ by 0.080 bar here (worked_examples.csv: 28.942 and 28.862 bar).
    assert doubt(None) == pytest.approx(0.080 / 3**0.5, rel=0.03)


@pytest.mark.parametrize(
    ("end_bar", "word"),
    [
        (31.0, PressureWord.HOLDS),
        (30.9, PressureWord.HOLDS),
        (30.7, PressureWord.LEAKS),
        (31.3, PressureWord.ROSE),
    ],
)
def test_that_a_drop_is_a_leak_only_beyond_its_doubt(end_bar: float, word: PressureWord) -> None:
    assert held(end_bar).word is word
    assert held(end_bar).ideal


# By arithmetic: 0.17 bar in 5 L over 1, 4 and 24 h.
@pytest.mark.parametrize(("hours", "mbar_litre_a_second"), [(1, 0.236), (4, 0.059), (24, 0.00984)])
def test_that_the_smallest_leak_falls_with_time(hours: float, mbar_litre_a_second: float) -> None:
    found = smallest_leak(
        expanded_uncertainty=Q(0.17, "bar"), volume=Q(5, "L"), time=Q(hours, "hour")
    )
    assert found.m_as("mbar * L / s") == pytest.approx(mbar_litre_a_second, rel=0.01)


@given(st.floats(1e-3, 1e3), st.floats(1e-3, 1e4), st.floats(1e-2, 1e4))
def test_that_time_needed_and_smallest_leak_are_each_other_s_inverse(
    bar: float, litres: float, hours: float
) -> None:
    doubt, volume = Q(bar, "bar"), Q(litres, "L")
    leak = smallest_leak(expanded_uncertainty=doubt, volume=volume, time=Q(hours, "hour"))
    found = time_needed(expanded_uncertainty=doubt, volume=volume, leak=leak)
    assert found.m_as("hour") == pytest.approx(hours)


def test_that_the_verdict_says_what_it_could_see_where_volume_and_time_are_known() -> None:
    assert held(31).smallest_leak is None
    found = held(31, volume=Q(5, "L"), time=Q(24, "hour"))
    assert found.smallest_leak is not None
    assert found.smallest_leak.m_as("mbar * L / s") == pytest.approx(0.0099, rel=0.02)


def test_that_a_volume_alone_or_a_time_alone_tells_no_smallest_leak() -> None:
    assert held(31, volume=Q(5, "L")).smallest_leak is None
    assert held(31, time=Q(24, "hour")).smallest_leak is None


def test_that_one_density_alone_is_the_ideal_law() -> None:
    known, unknown = (
        State(Q(31, "bar"), Q(20, "degC"), REAL_START),
        State(Q(30, "bar"), Q(10, "degC")),
    )
    for start, end in ((known, unknown), (unknown, known)):
        ideal = ideal_pressure(
            start_pressure=start.pressure,
            start_temperature=start.temperature,
            end_temperature=end.temperature,
        )
        assert expected_pressure(start=start, end=end) == ideal
        found = judge(
            start=start, end=end, gauge_resolution=Q(1, "Pa"), thermometer=Q(0, "delta_degC")
        )
        assert found.ideal
        plain = judge(
            start=State(start.pressure, start.temperature),
            end=State(end.pressure, end.temperature),
            gauge_resolution=Q(1, "Pa"),
            thermometer=Q(0, "delta_degC"),
        )
        assert found.expanded_uncertainty == plain.expanded_uncertainty


# By hand: with the same temperature and no doubt but a step of 0.01 Pa, half a pascal is a drop.
@pytest.mark.parametrize(("end", "word"), [(-0.5, PressureWord.LEAKS), (0.5, PressureWord.ROSE)])
def test_that_a_small_drop_is_one_where_the_doubt_is_smaller(
    end: float, word: PressureWord
) -> None:
    found = judge(
        start=State(Q(1e5, "Pa"), Q(20, "degC")),
        end=State(Q(1e5 + end, "Pa"), Q(20, "degC")),
        gauge_resolution=Q(0.01, "Pa"),
        thermometer=Q(0, "delta_degC"),
    )
    assert found.word is word


# By hand: thin gas and cold gas are gas; at constant volume pressure goes with temperature.
def test_that_little_pressure_and_density_and_cold_are_reckoned_with() -> None:
    found = ideal_pressure(
        start_pressure=Q(0.5, "Pa"),
        start_temperature=Q(0.5, "kelvin"),
        end_temperature=Q(0.25, "kelvin"),
    )
    assert found.m_as("Pa") == pytest.approx(0.25)
    thin = State(Q(0.5, "Pa"), Q(0.5, "kelvin"), Q(0.5, "kg/m**3"))
    thinner = State(Q(0.5, "Pa"), Q(0.25, "kelvin"), Q(0.25, "kg/m**3"))
    assert expected_pressure(start=thin, end=thinner).m_as("Pa") == pytest.approx(1)
    doubt = drop_uncertainty(
        start=thin, end=thinner, gauge_resolution=Q(0, "Pa"), thermometer=Q(0.1, "delta_degC")
    )
    assert doubt.m_as("Pa") == pytest.approx(2**0.5 * 0.5 * 0.1 / 0.5)


def test_that_a_pressure_above_the_lowest_design_pressure_is_refused() -> None:
    sides = {"low side": Q(10, "bar"), "high side": Q(28, "bar")}
    check_test_pressure(planned=Q(10, "bar"), design_pressures=sides)
    with pytest.raises(PressureTooHigh, match=r"at most 10\.0 bar.* low side"):
        check_test_pressure(planned=Q(10.1, "bar"), design_pressures=sides)
    with pytest.raises(PressureTooHigh, match="design pressure from the nameplate"):
        check_test_pressure(planned=Q(1, "bar"), design_pressures={})


@pytest.mark.parametrize("kelvin", [0, -1])
def test_that_no_gas_is_colder_than_absolute_zero(kelvin: float) -> None:
    cold = State(Q(30, "bar"), Q(kelvin, "kelvin"))
    warm = State(Q(31, "bar"), Q(293, "kelvin"))
    with pytest.raises(OutsideDomain):
        expected_pressure(start=warm, end=cold)
    with pytest.raises(OutsideDomain):
        drop_uncertainty(
            start=cold, end=warm, gauge_resolution=Q(1, "Pa"), thermometer=Q(1, "delta_degC")
        )


def test_that_impossible_figures_are_refused() -> None:
    empty = State(Q(30, "bar"), Q(293, "kelvin"), Q(0, "kg/m**3"))
    with pytest.raises(OutsideDomain):
        expected_pressure(start=empty, end=empty)
    with pytest.raises(OutsideDomain):
        smallest_leak(expanded_uncertainty=Q(1, "bar"), volume=Q(1, "L"), time=Q(0, "hour"))
    with pytest.raises(OutsideDomain, match="no test can prove"):
        time_needed(expanded_uncertainty=Q(1, "bar"), volume=Q(1, "L"), leak=Q(0, "Pa * m**3 / s"))


@given(st.floats(200, 400), st.floats(200, 400), st.floats(1, 1e7))
def test_that_warming_raises_and_cooling_lowers(first: float, last: float, pascal: float) -> None:
    found = ideal_pressure(
        start_pressure=Q(pascal, "Pa"),
        start_temperature=Q(first, "kelvin"),
        end_temperature=Q(last, "kelvin"),
    )
    assert (found.m_as("Pa") >= pascal) == (last >= first) or found.m_as("Pa") == pytest.approx(
        pascal
    )
