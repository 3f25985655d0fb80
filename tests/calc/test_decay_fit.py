"""The decay fit beside the same limits reckoned another way: scipy, numpy and a plain search."""

import math
from collections.abc import Sequence

import numpy as np
import pytest
from scipy import stats

from chargebench.calc.decay_fit import _scatter, f95_one, f95_two, fit
from chargebench.calc.decay_shapes import Array, Readings, family
from chargebench.calc.evacuation import judge
from tests.calc.decay_search import CURVES, Search, fitted, seeded


# Student's t and F by scipy; JCGM 100, table G.2, prints t to three figures.
@pytest.mark.parametrize("freedom", [*range(1, 21), 25, 30, 40, 50, 100])
def test_that_the_printed_points_of_student_s_t_are_those_of_scipy(freedom: int) -> None:
    assert f95_one(freedom) ** 0.5 == pytest.approx(stats.t.ppf(0.975, freedom), abs=0.006)


@pytest.mark.parametrize(
    ("freedom", "row"),
    [(24, 20), (29, 25), (39, 30), (49, 40), (99, 50), (101, math.inf), (10_000, math.inf)],
)
def test_that_between_printed_points_the_wider_one_holds(freedom: int, row: float) -> None:
    assert f95_one(freedom) ** 0.5 == pytest.approx(stats.t.ppf(0.975, row), abs=0.006)


@pytest.mark.parametrize("freedom", [1, 2, 3, 5, 10, 30, 200])
def test_that_the_points_of_f_with_two_degrees_are_those_of_scipy(freedom: int) -> None:
    assert f95_two(freedom) == pytest.approx(stats.f.ppf(0.95, 2, freedom), rel=1e-6)


FOUR = ([0.0, 4.0, 9.0, 20.0], [40.0, 61.0, 83.0, 138.0])


def polynomial(minutes: Sequence[float], pascals: Sequence[float]) -> tuple[Array, Array]:
    """Weighted straight line by numpy: coefficients, and covariance scaled by the scatter."""
    weights = 1 / np.asarray(pascals)  # the doubt of a gauge is a share of its reading
    line, covariance = np.polyfit(minutes, pascals, 1, w=weights, cov=True)
    return line, covariance


# With four readings only a line and a level are tried, so the limits are those of a textbook line.
def test_that_four_readings_have_the_limits_of_a_weighted_line() -> None:
    found, (line, covariance) = fitted(*FOUR), polynomial(*FOUR)
    half = stats.t.ppf(0.975, 2) * covariance[0, 0] ** 0.5
    assert found.shape == "line"
    assert found.best_slope == pytest.approx(line[0])
    assert found.slope.low == pytest.approx(line[0] - half, rel=1e-3)
    assert found.slope.high == pytest.approx(line[0] + half, rel=1e-3)
    assert found.rise.low == pytest.approx(20 * found.slope.low)
    assert found.rise.high == pytest.approx(20 * found.slope.high)
    assert (found.linear_share.low, found.linear_share.high) == pytest.approx((1, 1))
    assert found.settled == pytest.approx(line[1])
    assert found.line_significant
    assert not found.curve_significant
    assert found.lag == 0


def test_that_the_band_of_four_readings_is_that_of_a_weighted_line() -> None:
    line, covariance = polynomial(*FOUR)
    times = np.asarray([0.0, 7.0, 30.0])
    middle = line[1] + line[0] * times
    spread = np.stack([times, np.ones(3)], axis=1)
    square = np.einsum("ni,ij,nj->n", spread, covariance, spread)
    half = stats.t.ppf(0.975, 2) * np.sqrt(square)
    found = fitted(*FOUR)
    low, high = found.band(times.tolist())
    assert found.at(times.tolist()) == pytest.approx(middle.tolist())
    assert low == pytest.approx((middle - half).tolist(), rel=1e-3)
    assert high == pytest.approx((middle + half).tolist(), rel=1e-3)


def test_that_the_scatter_is_that_about_the_line() -> None:
    minutes, pascals = FOUR
    line, _ = polynomial(minutes, pascals)
    misses = [(p - np.polyval(line, t)) / p for t, p in zip(minutes, pascals, strict=True)]
    assert fitted(*FOUR).scatter == pytest.approx(math.sqrt(math.fsum(m**2 for m in misses) / 2))


# Hurvich and Tsai's correction of Akaike's criterion, counting the variance as a parameter.
def test_that_the_criterion_is_reckoned_as_printed() -> None:
    minutes = [float(at) for at in range(15)]
    pascals = seeded([50 + 4 * at for at in minutes], 0.02, 4)
    line, _ = polynomial(minutes, pascals)
    misses = (np.asarray(pascals) - np.polyval(line, minutes)) / pascals
    squares, n, k = float((misses**2).sum()), 15, 3
    expected = n * math.log(squares / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1)
    found = fitted(minutes, pascals).information
    assert found["line"] == pytest.approx(expected)
    weights = 1 / np.asarray(pascals) ** 2
    level = float((weights * pascals).sum() / weights.sum())
    squares, k = float((((np.asarray(pascals) - level) / pascals) ** 2).sum()), 2
    expected = n * math.log(squares / n) + 2 * k + 2 * k * (k + 1) / (n - k - 1)
    assert found["constant"] == pytest.approx(expected)


# A shape with k parameters is asked only where n > k + 1, or the correction has no meaning.
@pytest.mark.parametrize(
    ("count", "names"),
    [
        (3, set()),
        (4, {"constant"}),
        (5, {"constant", "line"}),
        (6, {"constant", "line", "exponential", "log rise"}),
        (7, {"constant", "line", "exponential", "log rise", "line + exponential"}),
    ],
)
def test_that_few_readings_are_not_asked_for_many_parameters(count: int, names: set[str]) -> None:
    minutes = [float(3 * at) for at in range(count)]
    pascals = [30 + 5 * at + 20 * -math.expm1(-at / 3) for at in minutes]
    found = fitted(minutes, [p * (1 + 0.01 * (-1) ** n) for n, p in enumerate(pascals)])
    expected = names & {"constant", "line"} if count < 5 else names
    assert set(found.information) - {"line + exponential"} == expected - {"line + exponential"}
    assert ("line + exponential" in found.information) <= ("line + exponential" in names)


@pytest.mark.parametrize("seed", [1, 2])
@pytest.mark.parametrize("name", CURVES)
def test_that_the_limits_are_those_of_a_plain_search(name: str, seed: int) -> None:
    minutes = [float(at) for at in range(21)]
    pascals: Array = np.asarray(seeded([CURVES[name](at) for at in minutes], 0.02, seed))
    found, searched = fitted(minutes, pascals.tolist()), Search(minutes, pascals)
    assert found.lag == 0
    assert (found.rise.low, found.rise.high) == pytest.approx(searched.rise, rel=0.01)
    # Fewer time constants are tried than here: slopes were up to 6 % of the upper limit apart.
    near = 0.06 * searched.slope[1]
    assert (found.slope.low, found.slope.high) == pytest.approx(searched.slope, abs=near)
    if name == "leak":  # no time constant to miss
        assert (found.slope.low, found.slope.high) == pytest.approx(searched.slope, rel=1e-3)
        every = family(Readings(np.asarray(minutes), pascals, pascals), 0.0)
        least = min(shapes.least() for shapes in every)
        assert found.scatter == pytest.approx((least / (21 - 4)) ** 0.5)
    shares = (found.linear_share.low, found.linear_share.high)
    assert shares == pytest.approx(searched.share, abs=0.04)


# Within, and as far again as the test was long.
def test_that_the_band_is_that_of_a_plain_search() -> None:
    minutes = [float(at) for at in range(21)]
    wet = [CURVES["leak under moisture"](at) for at in minutes]
    pascals: Array = np.asarray(seeded(wet, 0.02, 1))
    low, high = fitted(minutes, pascals.tolist()).band([0.0, 10.0, 40.0])
    searched = Search(minutes, pascals)
    assert low == pytest.approx(searched.low, rel=0.02)
    assert high == pytest.approx(searched.high, rel=0.02)


@pytest.mark.parametrize("scale", [1e-3, 1e3])
def test_that_the_limits_go_with_the_pressures(scale: float) -> None:
    minutes = [float(at) for at in range(21)]
    pascals = seeded([CURVES["leak under moisture"](at) for at in minutes], 0.02, 1)
    plain = fitted(minutes, pascals, step=0.5)
    scaled = fitted(minutes, [scale * each for each in pascals], step=0.5 * scale)
    for one, other in ((plain.slope, scaled.slope), (plain.rise, scaled.rise)):
        assert other.low == pytest.approx(scale * one.low)
        assert other.high == pytest.approx(scale * one.high)
    assert scaled.linear_share.low == pytest.approx(plain.linear_share.low)
    assert scaled.scatter == pytest.approx(plain.scatter)
    assert scaled.information == pytest.approx(plain.information)
    for band, larger in zip(plain.band([5.0, 30.0]), scaled.band([5.0, 30.0]), strict=True):
        assert larger == pytest.approx([scale * each for each in band])


# With the variance: level 2, line 3, exponential and logarithm 4, line and exponential 5.
def test_that_each_shape_pays_for_its_own_parameters() -> None:
    minutes = [float(at) for at in range(15)]
    pascals = np.asarray(seeded([CURVES["slow moisture"](at) for at in minutes], 0.02, 2))
    found = fitted(minutes, pascals.tolist()).information
    every = family(Readings(np.asarray(minutes), pascals, pascals), 0.0)
    for shapes, k in zip(every, (2, 3, 4, 5, 4), strict=True):
        expected = 15 * math.log(shapes.least() / 15) + 2 * k + 2 * k * (k + 1) / (15 - k - 1)
        if shapes.name in found:
            assert found[shapes.name] == pytest.approx(expected), shapes.name
    assert {"constant", "line", "exponential", "log rise"} <= set(found)


def test_that_a_line_over_a_bend_is_seen_and_neither_is_seen_without_it() -> None:
    minutes = [float(at) for at in range(31)]
    for name, line, curve in [
        ("leak under moisture", True, True),
        ("moisture", False, True),
        ("leak", True, False),
    ]:
        found = fitted(minutes, seeded([CURVES[name](at) for at in minutes], 0.005, 3))
        assert (found.line_significant, found.curve_significant) == (line, curve), name


# By hand: 60 + 180 (1 - exp(-30/4)) Pa are left of the shape at its end without its line.
def test_that_what_is_settled_is_level_and_bend_at_the_end() -> None:
    minutes = [float(at) for at in range(31)]
    found = fitted(minutes, [CURVES["leak under moisture"](at) for at in minutes])
    assert found.settled == pytest.approx(60 + 180 * -math.expm1(-30 / 4), rel=0.01)
    assert found.best_slope == pytest.approx(8, rel=0.01)
    assert found.shape == "line + exponential"


# Readings that lie on a line to the last digit: what a step of 0.5 Pa hides is all their doubt.
def test_that_readings_on_a_line_are_doubted_by_a_step_either_way() -> None:
    minutes = [float(at) for at in range(21)]
    found = fitted(minutes, [100 + 5 * at for at in minutes], step=0.5)
    assert found.slope.low <= 5 - 0.5 / 20
    assert found.rise.low <= 100 - 0.5
    plain = fitted(minutes, [100 + 5 * at for at in minutes])
    assert plain.slope.low == pytest.approx(5, rel=1e-6)


def test_that_a_display_of_which_nothing_is_said_has_no_step() -> None:
    minutes = [float(at) for at in range(21)]
    pascals = seeded([CURVES["leak"](at) / 100 for at in minutes], 0.01, 2)
    assert judge(minutes, pascals) == judge(minutes, pascals, steps=[0.0] * 21)


def test_that_the_coarsest_step_of_the_display_counts() -> None:
    minutes, pascals = FOUR
    found = fit(minutes, pascals, [0, 30, 0, 0], noise_floor=1e-9, stray_limit=1e9)
    assert found is not None
    assert found.slope.high - found.best_slope >= 30 / 20 * (1 - 1e-9)


# Readings that agree exactly are believed only as far as the gauge: at 0.5 % of 100 Pa, 21 readings
# of one level know their slope as a line with that scatter would (JCGM 100, 4.3.7 for a step).
@pytest.mark.parametrize(
    ("step", "noise_floor", "scatter"), [(0.0, 0.005, 0.5), (3.0, 1e-9, 3 / 12**0.5)]
)
def test_that_agreement_is_believed_no_further_than_the_gauge(
    step: float, noise_floor: float, scatter: float
) -> None:
    minutes = [float(at) for at in range(21)]
    found = fitted(minutes, [100.0] * 21, step=step, noise_floor=noise_floor)
    error = scatter / math.sqrt(math.fsum((at - 10) ** 2 for at in minutes))
    expected = stats.t.ppf(0.975, 17) * error
    assert found.slope.low == 0
    assert found.slope.high == pytest.approx(max(expected, step / 20), rel=0.003)


# By hand: 100 Pa with steps of 12 Pa, of variance 12 (JCGM 100, 4.3.7), beside 1 % of scatter; and
# a reading of a millionth, believed no better than one of a ten-thousandth.
def test_that_a_reading_s_doubt_is_its_share_and_its_step() -> None:
    pressures, steps = np.asarray([100.0, 1e-4]), np.asarray([12.0, 0.0])
    scatter, floor = _scatter(pressures, steps, 0.003)
    assert scatter.tolist() == pytest.approx([(1e4 + 12 / 0.01**2) ** 0.5, 0.01])
    first = ((0.003 * 100) ** 2 + 12) / (1e4 + 12 / 0.01**2)
    assert floor == pytest.approx((first + 0.003**2) / 2)


def test_that_a_step_of_the_display_widens_every_limit_to_itself() -> None:
    minutes, pascals = FOUR
    found = fitted(minutes, pascals, step=30)
    best = found.best_slope
    assert found.slope.high >= best + 30 / 20
    assert found.slope.low <= best - 30 / 20
    assert found.rise.high >= 20 * best + 30 * (1 - 1e-9)
    assert found.rise.low <= max(20 * best - 30, 0) + 1e-9


def test_that_too_few_times_to_tell_a_line_give_no_fit() -> None:
    steps = [1e7, 0.0, 1e7]
    assert fit([0, 10, 20], [40, 41, 42], steps, noise_floor=0.003, stray_limit=5) is None
