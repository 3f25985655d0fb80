"""Shapes fitted to a decay test: constant, line, exponential, line + exponential, log rise.

Numbers only: minutes and pascals. `calc.evacuation` draws the verdict. Weights are 1/p**2, for the
doubt of a vacuum gauge is a share of its reading. Imported only when a test is judged: numpy.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

# Two-sided 95 % points of Student's t by degrees of freedom, as printed in JCGM100, table G.2.
_T95 = {
    1: 12.71, 2: 4.30, 3: 3.18, 4: 2.78, 5: 2.57, 6: 2.45, 7: 2.36, 8: 2.31, 9: 2.26, 10: 2.23,
    11: 2.20, 12: 2.18, 13: 2.16, 14: 2.14, 15: 2.13, 16: 2.12, 17: 2.11, 18: 2.10, 19: 2.09,
    20: 2.09, 25: 2.06, 30: 2.04, 40: 2.02, 50: 2.01, 100: 1.984,
}  # fmt: skip
_T95_LIMIT = 1.960
_ANGLES = np.linspace(0.0, 2 * math.pi, 96, endpoint=False)
_TIMES = 72  # time constants tried
_LEAST_FOR_CURVES = 5  # readings; with fewer only constant and line can be told apart


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
class _Shape:
    """Columns of a shape: a level, and what is added to it."""

    line: bool = False
    tau: float | None = None  # time constant of an exponential approach, min
    knee: float | None = None  # t0 of a rise with ln(1 + t/t0), min

    def columns(self, times: Array) -> Array:
        made = [np.ones_like(times)]
        if self.line:
            made.append(times)
        if self.tau is not None:
            made.append(-np.expm1(-times / self.tau))
        if self.knee is not None:
            made.append(np.log1p(times / self.knee))
        return np.stack(made, axis=1)


@dataclass(frozen=True, slots=True)
class _Solved:
    """A shape fitted: parameters, their covariance at unit variance, residual sum of squares."""

    shape: _Shape
    parameters: Array
    spread: Array
    residual: float


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
    _origin: float = field(repr=False, compare=False)
    _curve: _Solved = field(repr=False, compare=False)
    _accepted: tuple[_Solved, ...] = field(repr=False, compare=False)
    _threshold: float = field(repr=False, compare=False)

    def at(self, minutes: Sequence[float]) -> list[float]:
        """Pressure [Pa] of the best shape at the minutes given."""
        columns = self._curve.shape.columns(np.asarray(minutes, dtype=float) - self._origin)
        values: list[float] = (columns @ self._curve.parameters).tolist()
        return values

    def band(self, minutes: Sequence[float]) -> tuple[list[float], list[float]]:
        """95 % limits [Pa] of the fitted pressure at the minutes given, over all shapes allowed."""
        times = np.asarray(minutes, dtype=float) - self._origin
        low, high = np.full(times.shape, math.inf), np.full(times.shape, -math.inf)
        for solved in self._accepted:
            columns = solved.shape.columns(times)
            middle = columns @ solved.parameters
            square = np.einsum("ij,jk,ik->i", columns, solved.spread, columns)
            half = np.sqrt(np.maximum(square * (self._threshold - solved.residual), 0.0))
            low, high = np.minimum(low, middle - half), np.maximum(high, middle + half)
        return low.tolist(), high.tolist()


def _solve(shapes: Sequence[_Shape], times: Array, pressures: Array) -> list[_Solved]:
    """Weighted least squares of shapes with the same number of columns, all at once."""
    weighted = np.stack([shape.columns(times) for shape in shapes]) / pressures[:, None]
    scale = np.linalg.norm(weighted, axis=1, keepdims=True)
    inverse = np.linalg.pinv(weighted / scale) / scale.transpose(0, 2, 1)
    parameters = inverse.sum(axis=2)
    residuals = ((weighted @ parameters[..., None])[..., 0] - 1) ** 2
    return [
        _Solved(shape, parameters[i], inverse[i] @ inverse[i].T, float(residuals[i].sum()))
        for i, shape in enumerate(shapes)
    ]


def _least(solutions: Sequence[_Solved]) -> _Solved:
    return min(solutions, key=lambda one: one.residual)


def _shapes(times: Array, pressures: Array) -> tuple[dict[str, _Solved], list[_Solved]]:
    """Best of each shape that the number of readings allows, and line + exponential by time."""
    best = {
        "constant": _solve([_Shape()], times, pressures)[0],
        "line": _solve([_Shape(line=True)], times, pressures)[0],
    }
    if len(times) < _LEAST_FOR_CURVES:
        return best, []
    length, steps = float(times[-1]), np.diff(times)
    shortest = max(float(np.min(steps[steps > 0])) / 2, length / 200)
    taus = [float(tau) for tau in np.geomspace(shortest, length, _TIMES)]
    knees = [float(knee) for knee in np.geomspace(length / 400, length / 4, _TIMES // 4)]
    both = _solve([_Shape(line=True, tau=tau) for tau in taus], times, pressures)
    best["exponential"] = _least(_solve([_Shape(tau=tau) for tau in taus], times, pressures))
    best["log rise"] = _least(_solve([_Shape(knee=knee) for knee in knees], times, pressures))
    if rising := [one for one in both if one.parameters[2] >= 0]:
        best["line + exponential"] = _least(rising)
    return best, both


_PARAMETERS = {"constant": 2, "line": 3, "exponential": 4, "line + exponential": 5, "log rise": 4}


def _information(shapes: dict[str, _Solved], count: int, floor: float) -> dict[str, float]:
    """Akaike's criterion corrected for few readings (AICC), of each shape that has enough."""
    return {
        name: count * math.log(max(solved.residual / count, floor**2))
        + 2 * k
        + 2 * k * (k + 1) / (count - k - 1)
        for name, solved in shapes.items()
        if count > (k := _PARAMETERS[name]) + 1
    }


def _edge(solved: _Solved, threshold: float, length: float) -> Array:
    """Rows (slope, rise, linear share) at the edge of what the readings allow with one shape.

    With an exponential the edge is an ellipse in slope and size; sizes below zero are not
    physical and left to the plain line.
    """
    if solved.shape.tau is None:
        half = math.sqrt(max(threshold - solved.residual, 0.0) * solved.spread[1, 1])
        slope = solved.parameters[1] + np.array([-half, half])
        return np.stack([slope, slope * length, np.where(slope > 0, 1.0, 0.0)], axis=1)
    values, axes = np.linalg.eigh(solved.spread[1:, 1:])
    radius = np.sqrt(np.maximum(values, 0.0) * (threshold - solved.residual))
    circle = np.stack([np.cos(_ANGLES), np.sin(_ANGLES)])
    slope, size = solved.parameters[1:, None] + axes @ (radius[:, None] * circle)
    slope, size = slope[size >= 0], size[size >= 0]
    straight = slope * length
    rise = straight - size * math.expm1(-length / solved.shape.tau)
    share = np.divide(straight, rise, out=np.zeros_like(rise), where=rise > 0)
    return np.stack([slope, rise, np.clip(share, 0.0, 1.0)], axis=1)


def fit(minutes: Sequence[float], pascals: Sequence[float], *, noise_floor: float) -> Fit:
    """Fit all shapes to three or more readings, in order of time, at two or more times.

    `noise_floor` is the least relative scatter believed: readings that agree better than the
    gauge can are not proof.
    """
    times = np.asarray(minutes, dtype=float)
    origin, pressures = float(times[0]), np.asarray(pascals, dtype=float)
    times = times - origin
    count, length = len(times), float(times[-1])
    shapes, both = _shapes(times, pressures)
    information = _information(shapes, count, noise_floor)
    line = shapes["line"]
    full = shapes.get("line + exponential", line)
    freedom = count - 4 if both else count - 2
    least = min(full.residual, line.residual)
    variance = max(least / freedom, noise_floor**2)
    threshold = least + variance * f95_one(freedom)
    accepted = [one for one in (line, *both) if one.residual <= threshold]
    edge = np.concatenate([_edge(one, threshold, length) for one in accepted])
    limits = [
        Interval(float(low), float(high))
        for low, high in zip(edge.min(axis=0), edge.max(axis=0), strict=True)
    ]
    name = min(information, key=information.__getitem__) if information else "line"
    without_line = shapes.get("exponential", shapes["constant"]).residual
    return Fit(
        shape=name,
        slope=limits[0],
        rise=limits[1],
        linear_share=limits[2],
        line_significant=without_line - least > variance * f95_one(freedom),
        curve_significant=bool(both) and line.residual - least > 2 * variance * f95_two(freedom),
        information=information,
        best_slope=float(full.parameters[1]),
        _origin=origin,
        _curve=shapes[name],
        _accepted=tuple(accepted),
        _threshold=threshold,
    )
