"""Shapes of a decay test beside their closed forms, and their least squares beside numpy's."""

import math
from collections.abc import Callable
from functools import partial
from random import Random

import numpy as np
import pytest
from scipy import integrate

from chargebench.calc.decay_shapes import Array, Readings, Shapes, family

TIMES = np.asarray([0.0, 0.2, 1.0, 2.0, 3.0, 5.0, 8.0, 12.0, 16.0, 20.0])


def readings(pressures: Array, times: Array = TIMES) -> Readings:
    return Readings(times, pressures, pressures)


def wet_leak(times: Array, seed: int = 1) -> Array:
    chance = Random(seed)  # noqa: S311 - a fixed scatter
    rough = np.asarray([1 + 0.02 * chance.gauss(0, 1) for _ in times])
    made: Array = (60 + 8 * times - 180 * np.expm1(-times / 4)) * rough
    return made


def shown_late(shape: Callable[[float], float], at: float, lag: float) -> float:
    """A first-order gauge: the past by exp(-age / lag), and what was there before by the rest."""
    if at == 0:
        return shape(0)
    past, _ = integrate.quad(lambda age: shape(at - age) * math.exp(-age / lag) / lag, 0, at)
    return float(past) + shape(0) * math.exp(-at / lag)


def constant(_: float) -> float:
    return 1.0


def straight(at: float) -> float:
    return at


def levelling(at: float, *, tau: float) -> float:
    return -math.expm1(-at / tau)


def outgassing(at: float, *, tau: float) -> float:
    return math.log1p(at / tau)


BENDS = {"exponential": levelling, "log rise": outgassing}


@pytest.mark.parametrize("lag", [0.0, 0.5])
def test_that_each_shape_is_its_formula_as_a_gauge_shows_it(lag: float) -> None:
    found = family(readings(wet_leak(TIMES)), lag)
    times = np.asarray([0.0, 0.3, 1.0, 4.0, 20.0])
    for shapes in found:
        columns, tau = shapes.columns(times)[0], float(shapes.constants[0])
        parts: list[Callable[[float], float]] = [constant]
        parts += [straight] if shapes.line else []
        parts += [partial(BENDS[shapes.bend], tau=tau)] if shapes.bend else []
        for part, column in zip(parts, columns.T, strict=True):
            shown = [shown_late(part, at, lag) if lag else part(at) for at in times]
            assert column.tolist() == pytest.approx(shown, abs=2e-3 * max(shown)), shapes.name


def test_that_the_shapes_are_called_by_their_parts() -> None:
    names = [shapes.name for shapes in family(readings(wet_leak(TIMES)), 0.0)]
    assert names == ["constant", "line", "exponential", "line + exponential", "log rise"]


def alone(shapes: Shapes, place: int, pressures: Array) -> tuple[Array, Array, float]:
    """Weighted least squares of one time constant by numpy: parameters, covariance, misfit."""
    columns = shapes.columns(TIMES)[place] / pressures[:, None]
    parameters, misfit, *_ = np.linalg.lstsq(columns, np.ones(len(TIMES)), rcond=None)
    return parameters, np.linalg.inv(columns.T @ columns), float(misfit[0])


def test_that_the_least_squares_are_those_of_numpy() -> None:
    pressures = wet_leak(TIMES)
    for shapes in family(readings(pressures), 0.0):
        for place in (0, len(shapes.residual) // 2, -1):
            parameters, covariance, misfit = alone(shapes, place, pressures)
            assert shapes.parameters[place].tolist() == pytest.approx(parameters.tolist(), rel=1e-6)
            assert shapes.residual[place] == pytest.approx(misfit, rel=1e-6)
            spread = shapes.spread[place].ravel().tolist()
            assert spread == pytest.approx(covariance.ravel().tolist(), rel=1e-5)


# The misfit without a reading is that of a fit made anew without it.
def test_that_leaving_one_reading_out_is_as_fitting_without_it() -> None:
    pressures = wet_leak(TIMES)
    for shapes in family(readings(pressures), 0.0):
        place = int(np.argmin(shapes.residual))
        columns = shapes.columns(TIMES)[place] / pressures[:, None]
        for out in range(len(TIMES)):
            kept = np.arange(len(TIMES)) != out
            target = np.ones(len(TIMES) - 1)
            parameters, *_ = np.linalg.lstsq(columns[kept], target, rcond=None)
            misfit = float(((target - columns[kept] @ parameters) ** 2).sum())
            expected = misfit if (parameters[1:] >= 0).all() else math.inf
            assert shapes.without[place, out] == pytest.approx(expected, rel=1e-5), shapes.name


def test_that_the_time_constants_cover_the_test() -> None:
    found = family(readings(wet_leak(TIMES)), 0.0)
    for shapes in (found.single, found.both):
        # From the shortest pause between readings, 0.2 min, to the length of the test.
        assert shapes.constants.min() == pytest.approx(0.2)
        assert shapes.constants.max() == pytest.approx(20)
    # The knee of outgassing lies early: with a late one it would be a straight line.
    assert found.log.constants.min() == pytest.approx(20 / 400)
    assert found.log.constants.max() == pytest.approx(20 / 4)


def test_that_pauses_of_no_length_and_far_shorter_than_the_test_do_not_count() -> None:
    times = np.asarray([0.0, 0.0, 0.01, 4.0, 8.0, 12.0, 16.0, 20.0])
    assert family(readings(wet_leak(times), times), 0.0).single.constants.min() == pytest.approx(
        0.2
    )


def test_that_the_best_time_constant_is_found_between_those_tried_first() -> None:
    times = np.linspace(0, 20, 41)
    for tau in (1.7, 4.4, 9.1):
        exact = readings(60 - 180 * np.expm1(-times / tau), times)
        best = family(exact, 0.0).single.best()
        assert float(best.constants[0]) == pytest.approx(tau, rel=0.015)
        assert best.rise(20) == pytest.approx(180 * -math.expm1(-20 / tau), rel=0.005)


@pytest.mark.parametrize(("count", "curved"), [(4, False), (5, True)])
def test_that_bends_are_asked_from_five_readings_on(count: int, *, curved: bool) -> None:
    times = TIMES[2 : 2 + count] - TIMES[2]
    assert family(readings(wet_leak(times), times), 0.0).curved is curved


def test_that_a_shape_that_falls_is_not_among_those_that_rise() -> None:
    found = family(readings(np.linspace(100, 50, 10)), 0.0)
    assert found.line.least() < found.line.least(rising=True) == math.inf
    assert found.least() == found.constant.least()


def test_that_the_rise_leaves_the_lag_of_the_gauge_out() -> None:
    exact = 60 + 8 * TIMES
    late = exact + 8 * 0.5 * np.expm1(-TIMES / 0.5)
    line = family(readings(late), 0.5).line
    assert line.rise(20) == pytest.approx(160, rel=1e-3)
    assert family(readings(exact), 0.0).constant.rise(20) == 0


def test_that_the_same_readings_without_one_are_the_others() -> None:
    left = readings(wet_leak(TIMES)).without(3)
    assert left.times.tolist() == [*TIMES[:3], *TIMES[4:]]
    assert len(left.pressures) == len(left.scatter) == 9
