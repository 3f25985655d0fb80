"""Stored curves against the equations they were fitted to, at points of this test's own.

The build script compares many more; its `--points` says how many.
"""

import functools
from typing import Any

import pytest
from CoolProp import CoolProp

from chargebench.fluids import names, refrigerant, saturation
from chargebench.fluids.child import equation_state
from tests.curve_accuracy import worst

PURE_POINTS, BLEND_POINTS = 200, 60


@functools.cache
def _state(name: str) -> Any:
    known = refrigerant(name)
    return equation_state(known.equation, known.equation_shares)


# `python -m tests.curve_accuracy` does the same at 1500 points: far within 0.001 %, 0.01 K, 0.01 %.
@pytest.mark.parametrize("name", names())
def test_that_curves_reproduce_their_equation_across_the_bands_where_its_solver_fails(
    name: str,
) -> None:
    points = PURE_POINTS if refrigerant(name).kind == "pure" else BLEND_POINTS
    found = worst(name, points)
    assert found.held
    assert found.pressure <= 2e-5  # per cent
    assert found.kelvin <= 1e-5
    assert max(found.liquid, found.vapour) <= 2.2e-3  # per cent
    assert found.compared + len(found.skipped) == 2 * points
    assert len(found.skipped) <= 0.05 * points


def test_that_a_curve_that_is_off_is_found() -> None:
    found = worst("R290", 1)
    found.take(saturation("R600a"), 0, 280.0, _answered("R290", 280.0))
    assert not found.held


def _answered(name: str, kelvin: float) -> Any:
    state = _state(name)
    state.update(CoolProp.QT_INPUTS, 0, kelvin)
    return state


# Where the solver fails, a traced phase envelope answers: another way through the same equation.
@pytest.mark.parametrize(
    ("name", "celsius"), [("R407F", 52.0), ("R407F", 56.0), ("R407H", 55.0), ("R442A", 55.0)]
)
def test_that_curves_hold_where_the_solver_fails(name: str, celsius: float) -> None:
    state = _state(name)
    with pytest.raises(ValueError, match="unable to find a solution"):
        state.update(CoolProp.QT_INPUTS, 0, celsius + 273.15)
    known = refrigerant(name)
    traced = equation_state(known.equation, known.equation_shares)
    traced.build_phase_envelope("")
    traced.update(CoolProp.QT_INPUTS, 0, celsius + 273.15)
    lines = saturation(name)
    assert lines.bubble_pa(celsius + 273.15) == pytest.approx(traced.p(), rel=1e-6)
    assert lines.liquid_kgm3(celsius + 273.15) == pytest.approx(traced.rhomass(), rel=2e-5)


def test_that_the_stored_curves_are_of_the_installed_major_version() -> None:
    installed = CoolProp.get_global_param_string("version").split(".")[0]
    assert saturation("R290").coolprop_version.split(".")[0] == installed


def test_that_borrowed_pair_data_are_said_to_be_estimated() -> None:
    estimated = [name for name in names() if saturation(name).estimated_pairs]
    assert estimated == ["R438A"]
    assert "estimated" in saturation("R438A").model


# ASHRAE 34 prints a dew point of R438A at one atmosphere of -36.4 °C, bubble -43.0 °C: MEMORY.
# Without the borrowed data the dew point comes out at -33.7 °C.
def test_that_borrowed_pair_data_bring_r438a_to_its_published_dew_point() -> None:
    assert saturation("R438A").dew_kelvin(101_325) - 273.15 == pytest.approx(-36.4, abs=0.3)
