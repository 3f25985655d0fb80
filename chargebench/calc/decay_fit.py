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
_ANGLES = np.linspace(0.0, 2 * math.pi, 64, endpoint=False)
_CIRCLE = np.stack([np.cos(_ANGLES), np.sin(_ANGLES)])
_TIMES, _FINER = 36, 16  # time constants tried, and again around the best
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


@dataclass(frozen=True, slots=True)
class _Solutions:
    """Everything fitted: with and without a line, by time constant; fewer with few readings."""

    constant: _Solved
    line: _Solved
    single: list[_Solved] = field(default_factory=list)  # exponential
    both: list[_Solved] = field(default_factory=list)  # line + exponential
    logs: list[_Solved] = field(default_factory=list)

    def best(self) -> dict[str, _Solved]:
        """Best of each shape, by name."""
        found = {"constant": self.constant, "line": self.line}
        for name, solutions in (
            ("exponential", self.single),
            ("line + exponential", [one for one in self.both if one.parameters[2] >= 0]),
            ("log rise", self.logs),
        ):
            if solutions:
                found[name] = _least(solutions)
        return found


def _physical(solutions: Sequence[_Solved], otherwise: _Solved) -> _Solved:
    """Best of those whose every added part rises; a pressure that falls is no leak, nor water."""
    return _least([one for one in solutions if min(one.parameters[1:]) >= 0] or [otherwise])


def _solutions(times: Array, pressures: Array) -> _Solutions:
    constant = _solve([_Shape()], times, pressures)[0]
    line = _solve([_Shape(line=True)], times, pressures)[0]
    if len(times) < _LEAST_FOR_CURVES:
        return _Solutions(constant, line)
    length, steps = float(times[-1]), np.diff(times)
    shortest = max(float(np.min(steps[steps > 0])) / 2, length / 200)
    single, both = (
        _by_time(line=line, shortest=shortest, longest=length, times=times, pressures=pressures)
        for line in (False, True)
    )
    knees = [float(knee) for knee in np.geomspace(length / 400, length / 4, _TIMES)]
    return _Solutions(
        constant,
        line,
        single=single,
        both=both,
        logs=_solve([_Shape(knee=knee) for knee in knees], times, pressures),
    )


def _by_time(
    *, line: bool, shortest: float, longest: float, times: Array, pressures: Array
) -> list[_Solved]:
    """Exponentials of all time constants: a coarse grid, then a finer one around the best.

    Too coarse a grid would leave a remainder that a line takes up, and a leak be seen in it.
    """
    found: list[_Solved] = []
    low, high, count = shortest, longest, _TIMES
    for _ in range(2):
        taus = [float(tau) for tau in np.geomspace(low, high, count)]
        found += _solve([_Shape(line=line, tau=tau) for tau in taus], times, pressures)
        best, step = _least(found).shape.tau or low, (high / low) ** (1 / (count - 1))
        low, high, count = max(best / step, shortest), min(best * step, longest), _FINER
    return found


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

    With line and exponential the edge is an ellipse in slope and size. Parts that fall are not
    physical: there the edge is that of the shape without the part, which is asked as well.
    """
    shape, slack = solved.shape, math.sqrt(threshold - solved.residual)
    values, axes = np.linalg.eigh(solved.spread[1:, 1:])
    radius = np.sqrt(np.maximum(values, 0.0)) * slack
    circle = _CIRCLE[: len(values)]
    parts = solved.parameters[1:, None] + np.hstack(
        [np.zeros((len(values), 1)), axes @ (radius[:, None] * circle)]
    )
    parts = parts[:, (parts >= 0).all(axis=0)]
    none = np.zeros(parts.shape[1])
    slope = parts[0] if shape.line else none
    size = parts[-1] if shape.tau is not None else none
    straight = slope * length
    rise = straight - size * math.expm1(-length / shape.tau) if shape.tau else straight
    share = np.divide(straight, rise, out=none.copy(), where=rise > 0)
    return np.stack([slope, rise, np.clip(share, 0.0, 1.0)], axis=1)


def fit(minutes: Sequence[float], pascals: Sequence[float], *, noise_floor: float) -> Fit:
    """Fit all shapes to readings in order of time, at three or more times.

    `noise_floor` is the least relative scatter believed: readings that agree better than the
    gauge can are not proof.
    """
    times, pressures = np.asarray(minutes, dtype=float), np.asarray(pascals, dtype=float)
    origin = float(times[0])
    times = times - origin
    found = _solutions(times, pressures)
    shapes = found.best()
    straight = _physical([found.line], found.constant)
    curved = _physical(found.single, found.constant)
    full = _least([_physical(found.both, straight), straight, curved])
    freedom = len(times) - 4 if found.both else len(times) - 2
    variance = max(full.residual / freedom, noise_floor**2)
    threshold = full.residual + variance * f95_one(freedom)
    every = (found.constant, found.line, *found.single, *found.both)
    accepted = [one for one in every if one.residual <= threshold]
    edge = np.concatenate([_edge(one, threshold, float(times[-1])) for one in accepted])
    limits = [
        Interval(*pair) for pair in zip(edge.min(0).tolist(), edge.max(0).tolist(), strict=True)
    ]
    information = _information(shapes, len(times), noise_floor)
    name = min(information, key=information.__getitem__) if information else "line"
    return Fit(
        shape=name,
        slope=limits[0],
        rise=limits[1],
        linear_share=limits[2],
        line_significant=curved.residual - full.residual > variance * f95_one(freedom),
        curve_significant=bool(found.both)
        and straight.residual - full.residual > 2 * variance * f95_two(freedom),
        information=information,
        best_slope=float(full.parameters[1]) if full.shape.line else 0.0,
        _origin=origin,
        _curve=shapes[name],
        _accepted=tuple(accepted),
        _threshold=threshold,
    )
