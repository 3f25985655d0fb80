"""What holds for every curve: inverse, rising, bubble over dew, refused outside."""

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.errors import OutsideDomain, UnknownRefrigerant
from chargebench.fluids import names, refrigerant, saturation
from chargebench.units import Q

SHARE = st.floats(0, 1)


def _kelvin(name: str, share: float) -> float:
    axis = saturation(name).axis
    return axis.low + share * (axis.high - axis.low)


@given(st.sampled_from(names()), SHARE)
def test_that_temperature_of_pressure_is_the_inverse_of_pressure(name: str, share: float) -> None:
    lines, kelvin = saturation(name), _kelvin(name, share)
    assert lines.bubble_kelvin(lines.bubble_pa(kelvin)) == pytest.approx(kelvin, abs=5e-6)
    assert lines.dew_kelvin(lines.dew_pa(kelvin)) == pytest.approx(kelvin, abs=5e-6)


@given(st.sampled_from(names()), SHARE, SHARE)
def test_that_warmer_means_higher_pressure_lighter_liquid_denser_vapour(
    name: str, one: float, other: float
) -> None:
    cold, warm = sorted((_kelvin(name, one), _kelvin(name, other)))
    lines = saturation(name)
    if warm - cold > 1e-6:
        assert lines.bubble_pa(cold) < lines.bubble_pa(warm)
        assert lines.dew_pa(cold) < lines.dew_pa(warm)
        assert lines.liquid_kgm3(cold) > lines.liquid_kgm3(warm)
        assert lines.vapour_kgm3(cold) < lines.vapour_kgm3(warm)
    assert lines.liquid_kgm3(warm) > lines.vapour_kgm3(warm)


@given(st.sampled_from(names()), SHARE)
def test_that_blends_begin_to_boil_above_the_pressure_at_which_they_condense(
    name: str, share: float
) -> None:
    lines, kelvin = saturation(name), _kelvin(name, share)
    bubble, dew = lines.bubble_pa(kelvin), lines.dew_pa(kelvin)
    if refrigerant(name).kind == "pure":
        assert bubble == dew
    else:
        assert bubble >= dew * (1 - 1e-7)


@given(st.sampled_from(names()), SHARE)
def test_that_quantities_and_bare_numbers_say_the_same(name: str, share: float) -> None:
    lines, kelvin = saturation(name), _kelvin(name, share)
    celsius = Q(kelvin - 273.15, "degC")
    assert lines.bubble_pressure(celsius).m_as("Pa") == pytest.approx(lines.bubble_pa(kelvin))
    assert lines.dew_pressure(celsius).m_as("Pa") == pytest.approx(lines.dew_pa(kelvin))
    assert lines.liquid_density(celsius).m_as("g/L") == pytest.approx(lines.liquid_kgm3(kelvin))
    assert lines.vapour_density(celsius).m_as("g/L") == pytest.approx(lines.vapour_kgm3(kelvin))
    bubble = lines.bubble_temperature(Q(lines.bubble_pa(kelvin), "Pa"))
    dew = lines.dew_temperature(Q(lines.dew_pa(kelvin), "Pa"))
    assert bubble.m_as("K") == pytest.approx(kelvin)
    assert dew.m_as("K") == pytest.approx(kelvin)


@pytest.mark.parametrize("name", names())
def test_that_curves_reach_what_a_bench_and_a_hot_cylinder_need(name: str) -> None:
    low, high = saturation(name).domain
    assert low.m_as("degC") <= (-56.5 if name == "R744" else -65)
    critical_soon = name in ("R744", "R170")
    assert high.m_as("degC") >= (30.85 if critical_soon else 65)


@pytest.mark.parametrize("name", names())
def test_that_the_ends_of_the_domain_are_inside_in_any_unit(name: str) -> None:
    lines = saturation(name)
    for end in lines.domain:
        pressure = lines.bubble_pressure(end.to("degF"))
        assert lines.bubble_temperature(pressure.to("psi")).m_as("degC") == pytest.approx(
            end.m_as("degC"), abs=1e-4
        )


@pytest.mark.parametrize(
    ("name", "celsius", "said"),
    [
        (
            "R290",
            95,
            (
                "R290 saturation is known here from −80.0 °C (−112.0 °F) to 90.0 °C (194.0 °F); "
                "got 95.0 °C (203.0 °F)."
            ),
        ),
        (
            "R290",
            -90,
            (
                "R290 saturation is known here from −80.0 °C (−112.0 °F) to 90.0 °C (194.0 °F); "
                "got −90.0 °C (−130.0 °F)."
            ),
        ),
        (
            "R744",
            40,
            (
                "R744 saturation is known here from −56.6 °C (−69.8 °F) to 30.9 °C (87.6 °F); "
                "got 40.0 °C (104.0 °F). Above its critical temperature of 31.0 °C (87.8 °F) it "
                "does not boil."
            ),
        ),
    ],
)
def test_that_a_temperature_outside_is_refused(name: str, celsius: float, said: str) -> None:
    lines = saturation(name)
    for asked in (
        lines.bubble_pressure, lines.dew_pressure, lines.liquid_density, lines.vapour_density,
    ):  # fmt: skip
        with pytest.raises(OutsideDomain) as refusal:
            asked(Q(celsius, "degC"))
        assert str(refusal.value) == said


# The limits are vapour pressures of propane at -80 °C and 90 °C: 13.0 kPa and 3.76 MPa (NIST
# WebBook, MEMORY).
@pytest.mark.parametrize(
    ("pressure", "got"),
    [
        (Q(50, "bar"), "5\u202f000 kPa (725.2 psi)"),
        (Q(5, "kPa"), "5.0 kPa (0.7 psi)"),
        (Q(-1, "kPa"), "−1.0 kPa (−0.1 psi)"),
        (Q(0, "Pa"), "0.0 kPa (0.0 psi)"),
    ],
)
def test_that_a_pressure_outside_is_refused(pressure: object, got: str) -> None:
    for line, asked in (
        ("bubble", saturation("R290").bubble_temperature),
        ("dew", saturation("R290").dew_temperature),
    ):
        with pytest.raises(OutsideDomain) as refusal:
            asked(pressure)  # type: ignore[arg-type]
        assert str(refusal.value) == (
            f"R290 {line} temperature is known here from 13.0 kPa (1.9 psi) to 3\u202f764 kPa "
            f"(545.9 psi), absolute; got {got}."
        )


@pytest.mark.parametrize("odd", [float("nan"), float("inf"), float("-inf")])
def test_that_what_is_no_number_is_refused(odd: float) -> None:
    with pytest.raises(OutsideDomain):
        saturation("R290").bubble_pa(odd)
    with pytest.raises(OutsideDomain):
        saturation("R290").dew_kelvin(odd)


def test_that_a_pressure_is_not_taken_for_a_temperature() -> None:
    with pytest.raises(pint.DimensionalityError):
        saturation("R290").bubble_pressure(Q(1, "bar"))


def test_that_curves_of_an_unknown_refrigerant_are_refused() -> None:
    with pytest.raises(UnknownRefrigerant, match="No saturation curves are stored for “R11”"):
        saturation("R11")


def test_that_every_curve_says_what_it_rests_on() -> None:
    for name in names():
        lines = saturation(name)
        assert lines.model
        assert any(year in lines.source for year in ("199", "200", "201", "202")), name
        assert set(lines.fit_error) == {"bubble", "dew", "liquid", "vapour"}
        assert max(lines.fit_error["bubble"], lines.fit_error["dew"]) <= 1.2e-7
        assert max(lines.fit_error["liquid"], lines.fit_error["vapour"]) <= 2.2e-5
