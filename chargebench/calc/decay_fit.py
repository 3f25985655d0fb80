"""What decay readings allow: the best shape, 95 % limits, and the reading that fits none.

Numbers only: minutes and pascals. `calc.evacuation` draws the verdict. Imported only when a test
is judged: numpy. Weights: the doubt of a vacuum gauge is a share of its reading, and a step of its
display beside. Limits are those of the profile: every shape and time constant whose misfit is not
significantly worse than the best has its say.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache

import numpy as np

from chargebench.calc.decay_shapes import Array, Family, Readings, Shapes, family

# Two-sided 95 % points of Student's t by degrees of freedom, as printed in JCGM100, table G.2.
_T95 = {
    1: 12.71, 2: 4.30, 3: 3.18, 4: 2.78, 5: 2.57, 6: 2.45, 7: 2.36, 8: 2.31, 9: 2.26, 10: 2.23,
    11: 2.20, 12: 2.18, 13: 2.16, 14: 2.14, 15: 2.13, 16: 2.12, 17: 2.11, 18: 2.10, 19: 2.09,
    20: 2.09, 25: 2.06, 30: 2.04, 40: 2.02, 50: 2.01, 100: 1.984,
}  # fmt: skip
_T95_LIMIT = 1.960
_ANGLES = np.linspace(0.0, 2 * math.pi, 64, endpoint=False)
_CIRCLE = np.vstack([np.zeros(2), np.stack([np.cos(_ANGLES), np.sin(_ANGLES)], axis=1)])
_LAG = 0.5  # min, of a slow gauge: tried beside none
_SHARE = 0.01  # usual scatter of a gauge, weighed against the step of its display
_LEAST_SHARE = 1e-4  # of the highest reading: no reading is weighed as if its doubt were less
_LEAST_FOR_STRAYS = 8  # readings; with fewer none is set aside


def f95_one(freedom: int) -> float:
    """95 % point of F with 1 and `freedom` degrees: Student's t squared (JCGM100, table G.2)."""
    if freedom > 100:
        return _T95_LIMIT**2
    return float(_T95[max(step for step in _T95 if step <= freedom)] ** 2)


def f95_two(freedom: int) -> float:
    """95 % point of F with 2 and `freedom` degrees of freedom, in closed form."""
    return float(freedom / 2 * (0.05 ** (-2 / freedom) - 1))


@dataclass(frozen=True, slots=True)
class Interval:
    """Limits of a figure, from below and above."""

    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Fit:
    """What the readings allow: the best shape, and the 95 % limits of what matters."""

    shape: str
    slope: Interval  # Pa/min, of the linear part
    rise: Interval  # Pa, over the test
    linear_share: Interval  # of the rise
    line_significant: bool
    curve_significant: bool
    information: dict[str, float]  # AICc of each shape that has readings enough
    best_slope: float  # Pa/min
    settled: float  # Pa: level and bend of the best shape without its line, at the end
    scatter: float  # of the readings about the best shape, risen or fallen, relative
    lag: float  # min, of the gauge
    stray: int | None  # place of the reading set aside
    _origin: float = field(repr=False, compare=False)
    _curve: Shapes = field(repr=False, compare=False)
    _accepted: tuple[Shapes, ...] = field(repr=False, compare=False)
    _threshold: float = field(repr=False, compare=False)

    def at(self, minutes: Sequence[float]) -> list[float]:
        """Pressure [Pa] of the best shape at the minutes given."""
        columns = self._curve.columns(np.asarray(minutes, dtype=float) - self._origin)[0]
        values: list[float] = (columns @ self._curve.parameters[0]).tolist()
        return values

    def band(self, minutes: Sequence[float]) -> tuple[list[float], list[float]]:
        """95 % limits [Pa] of the fitted pressure at the minutes given, over all shapes allowed."""
        times = np.asarray(minutes, dtype=float) - self._origin
        low, high = np.full(times.shape, math.inf), np.full(times.shape, -math.inf)
        for shapes in self._accepted:
            columns = shapes.columns(times)
            middle = (columns @ shapes.parameters[..., None])[..., 0]
            square = np.einsum("sij,sjk,sik->si", columns, shapes.spread, columns)
            slack = np.maximum(self._threshold - shapes.residual, 0.0)[:, None]
            half = np.sqrt(np.maximum(square, 0.0) * slack)
            low = np.minimum(low, (middle - half).min(axis=0))
            high = np.maximum(high, (middle + half).max(axis=0))
        return low.tolist(), high.tolist()


_PARAMETERS = {"constant": 2, "line": 3, "exponential": 4, "line + exponential": 5, "log rise": 4}


def _information(best: dict[str, Shapes], count: int, floor: float) -> dict[str, float]:
    """Akaike's criterion corrected for few readings (AICC), of each shape that has enough."""
    return {
        name: count * math.log(max(shapes.least() / count, floor))
        + 2 * k
        + 2 * k * (k + 1) / (count - k - 1)
        for name, shapes in best.items()
        if count > (k := _PARAMETERS[name]) + 1
    }


def _edge(shapes: Shapes, threshold: float, length: float) -> Array:
    """Rows (slope, rise, linear share) at the edge of what the readings allow with a shape.

    With line and exponential the edge is an ellipse in slope and size. Parts that fall are not
    physical: there the edge is that of the shape without the part, which is asked as well.
    """
    slack = np.sqrt(np.maximum(threshold - shapes.residual, 0.0))[:, None]
    none = np.zeros((len(slack), len(_CIRCLE)))
    slope, size = none, none
    first = np.sqrt(shapes.spread[:, -1, -1])[:, None]
    if shapes.line and shapes.bend:
        # Half axes by Cholesky, from the last part upwards.
        cross = shapes.spread[:, 1, 2][:, None] / first
        second = np.sqrt(np.maximum(shapes.spread[:, 1, 1][:, None] - cross**2, 0.0))
        size = shapes.parameters[:, 2, None] + first * slack * _CIRCLE[:, 0]
        slope = shapes.parameters[:, 1, None] + slack * (
            cross * _CIRCLE[:, 0] + second * _CIRCLE[:, 1]
        )
    elif shapes.line:
        slope = shapes.parameters[:, 1, None] + first * slack * _CIRCLE[:, 0]
    elif shapes.bend:
        size = shapes.parameters[:, 1, None] + first * slack * _CIRCLE[:, 0]
    straight = slope * length
    rise = straight - size * np.expm1(-length / shapes.constants[:, None])
    share = np.divide(straight, rise, out=none.copy(), where=rise > 0)
    rows: Array = np.stack([slope, rise, np.clip(share, 0.0, 1.0)], axis=2)
    return rows[(slope >= 0) & (size >= 0)]


def _with_lag(readings: Readings) -> Family:
    """All shapes; with the lag of the gauge where that fits clearly better."""
    plain = family(readings, 0.0)
    count = len(readings.times)
    if count < _LEAST_FOR_STRAYS:
        return plain
    lagging = family(readings, _LAG)
    clearly = 1 + f95_one(count - 5) / (count - 5)
    return lagging if lagging.least() * clearly < plain.least() else plain


def _stray(found: Family, readings: Readings, floor: float, limit: float) -> int | None:
    """The one reading that fits none of the shapes the others fit, if there is one.

    Deletion residual: how much the misfit falls without the reading, against the scatter of the
    others. All shapes have their say, so a bend or a late straight rise is not set aside.
    """
    count = len(readings.times)
    if count < _LEAST_FOR_STRAYS:
        return None
    without = found.without()
    place = int(np.argmin(without))
    scatter = max(float(without[place]) / (count - 5), floor)
    return place if found.least() - float(without[place]) > limit**2 * scatter else None


def _scatter(pressures: Array, steps: Array, noise_floor: float) -> tuple[Array, float]:
    """Standard deviation of each reading to a factor, and the least square of that factor."""
    rounding = steps**2 / 12  # JCGM100, 4.3.7
    # The doubt of a gauge stops falling with its reading somewhere: four decades below is enough.
    believed = np.maximum(pressures, pressures.max() * _LEAST_SHARE)
    scatter = np.sqrt(believed**2 + rounding / _SHARE**2)
    return scatter, float(np.mean(((noise_floor * believed) ** 2 + rounding) / scatter**2))


def fit(
    minutes: Sequence[float],
    pascals: Sequence[float],
    steps: Sequence[float],
    *,
    noise_floor: float,
    stray_limit: float,
) -> Fit | None:
    """Fit all shapes to readings in order of time, at three or more times.

    `steps` are those of the display; they and `noise_floor`, the least relative scatter believed,
    keep readings that agree better than the gauge can from being proof. None: one reading weighs so
    much, or others are so near in time, that a line can not be told from a level.
    """
    times, pressures = np.asarray(minutes, dtype=float), np.asarray(pascals, dtype=float)
    display = np.asarray(steps, dtype=float)
    scatter, floor = _scatter(pressures, display, noise_floor)
    readings = Readings(times - times[0], pressures, scatter)
    found = _with_lag(readings)
    stray = _stray(found, readings, floor, stray_limit)
    if stray is not None:
        readings = readings.without(stray)
        found = _with_lag(readings)
    if not len(found.line.residual):
        return None
    hidden = float(display.max())
    return _limits(readings, found, origin=float(times[0]), floor=floor, hidden=hidden, stray=stray)


def _limits(
    readings: Readings,
    found: Family,
    *,
    origin: float,
    floor: float,
    hidden: float,
    stray: int | None,
) -> Fit:
    """Limits over all shapes not clearly worse than the best; `hidden`: a step of the display."""
    count, length = len(readings.times), float(readings.times[-1])
    straight = min(found.constant.least(), found.line.least(rising=True))
    curved = min(found.constant.least(), found.single.least(rising=True))
    least = min(found.both.least(rising=True), straight, curved)
    freedom = count - 4 if found.curved else count - 2
    variance = max(least / freedom, floor)
    threshold = least + variance * f95_one(freedom)
    every = (found.constant, found.line, found.single, found.both)
    accepted = tuple(
        shapes.where(allowed) for shapes in every if (allowed := shapes.residual <= threshold).any()
    )
    edge = np.concatenate([_edge(shapes, threshold, length) for shapes in accepted])
    full = min(
        (shapes.where(shapes.rising).best() for shapes in every if shapes.rising.any()),
        key=Shapes.least,
    )
    slope = float(full.parameters[0, 1]) if full.line else 0.0
    limits = [Interval(*pair) for pair in zip(edge.min(0), edge.max(0), strict=True)]
    best = _best(found)
    information = _information(best, count, floor)
    # A criterion that can not be asked of the line, for want of readings, chooses nothing.
    name = min(information, key=information.__getitem__) if "line" in information else "line"
    return Fit(
        shape=name,
        slope=_widened(limits[0], slope, hidden / length),
        rise=_widened(limits[1], full.rise(length), hidden),
        linear_share=limits[2],
        line_significant=curved - least > variance * f95_one(freedom),
        curve_significant=found.curved and straight - least > 2 * variance * f95_two(freedom),
        information=information,
        best_slope=slope,
        settled=float(full.parameters[0, 0]) + full.rise(length) - slope * length,
        scatter=math.sqrt(min(shapes.least() for shapes in found) / freedom),
        lag=found.constant.lag,
        stray=stray,
        _origin=origin,
        _curve=best[name],
        _accepted=accepted,
        _threshold=threshold,
    )


def _widened(limits: Interval, best: float, hidden: float) -> Interval:
    """Limits no nearer to the best figure than what one step of the display hides.

    Readings rounded to the same step do not scatter, so the fit alone would be too sure.
    """
    low, high = min(limits.low, best - hidden), max(limits.high, best + hidden)
    return Interval(float(max(low, 0.0)), float(high))


def _best(found: Family) -> dict[str, Shapes]:
    """Best of each shape, by name; a line over a bend that falls is none of them."""
    both = found.both.where(found.both.parameters[:, -1] >= 0)
    every = (found.constant, found.line, found.single, both, found.log)
    return {shapes.name: shapes.best() for shapes in every if len(shapes.residual)}


fitted = lru_cache(maxsize=16)(fit)  # a key elsewhere in a form changes no reading
