"""Shapes a decay test can have, and their weighted least squares, many time constants at once.

A shape is a level and up to two parts that rise: a straight line, and a bend that is either an
exponential approach or a logarithm. A gauge that lags shows the mean of the shape over the past,
weighted with exp(-age/lag): 30 s make the first minute look like the start of moisture.
"""

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal, Self

import numpy as np
from numpy.typing import NDArray

from chargebench.words import say

Array = NDArray[np.float64]
Bend = Literal["", "exponential", "log rise"]

_TIMES, _FINER = 24, 12  # time constants tried, and again around the best
_LEAST_FOR_CURVES = 5  # readings; with fewer only constant and line can be told apart
_ALIKE = 1e-12  # squared share of a column that is its own; below it, it says nothing of its own
_NODES, _MASSES = np.polynomial.legendre.leggauss(6)


@dataclass(frozen=True, slots=True)
class Readings:
    """Readings in order of time from zero, and the standard deviation of each to a factor."""

    times: Array
    pressures: Array
    scatter: Array

    def without(self, place: int) -> Self:
        """The same but one reading."""
        kept = np.arange(len(self.times)) != place
        return type(self)(self.times[kept], self.pressures[kept], self.scatter[kept])


def _bent(bend: Bend, times: Array, constants: Array) -> Array:
    scaled = times[None] / constants.reshape(-1, *[1] * times.ndim)
    return np.log1p(scaled) if bend == "log rise" else -np.expm1(-scaled)


@dataclass(frozen=True, slots=True)
class Shapes:
    """One kind of shape with many time constants, fitted: the first axis counts them."""

    line: bool
    bend: Bend
    constants: Array  # min, shape (s,): time constant of the approach, knee of the logarithm
    lag: float  # min, of the gauge
    parameters: Array  # (s, k): level, slope if any, size of the bend if any
    spread: Array  # (s, k, k): covariance at unit variance
    residual: Array  # (s,): weighted sum of squares
    without: Array  # (s, n): the same if one reading were not there; inf where a part would fall

    @property
    def name(self) -> str:
        """What the shape is called."""
        if self.line:
            return say("line + {bend}", bend=self.bend) if self.bend else "line"
        return self.bend or "constant"

    @property
    def rising(self) -> NDArray[np.bool_]:
        """Where no part falls: a pressure that falls is no leak, nor water. Shape (s,)."""
        found: NDArray[np.bool_] = np.all(self.parameters[:, 1:] >= 0, axis=1)
        return found

    def columns(self, times: Array) -> Array:
        """Columns of the shape at times, shape (s, n, k)."""
        return _columns(
            times, line=self.line, bend=self.bend, constants=self.constants, lag=self.lag
        )

    def where(self, wanted: NDArray[np.bool_]) -> Self:
        """Only some of the time constants."""
        return type(self)(
            self.line, self.bend, self.constants[wanted], self.lag, self.parameters[wanted],
            self.spread[wanted], self.residual[wanted], self.without[wanted],
        )  # fmt: skip

    def best(self) -> Self:
        """Only the time constant that fits best."""
        return self.where(np.arange(len(self.residual)) == np.argmin(self.residual))

    def rise(self, length: float) -> float:
        """What the first time constant rises over a length, the gauge's lag left out."""
        row = self.parameters[0]
        straight = float(row[1]) * length if self.line else 0.0
        bend = _bent(self.bend, np.full(1, length), self.constants[:1]) if self.bend else 0.0
        return straight + float(row[-1] * np.squeeze(bend))

    def least(self, *, rising: bool = False) -> float:
        """Least sum of squares; infinite where none is."""
        values = self.residual[self.rising] if rising else self.residual
        return float(values.min()) if len(values) else math.inf


def _columns(times: Array, *, line: bool, bend: Bend, constants: Array, lag: float) -> Array:
    if lag:
        # u = 1 - exp(-age/lag) turns the mean over the past into a plain integral over u.
        most = -np.expm1(-np.maximum(times, 0) / lag)[:, None]
        ages = -lag * np.log1p(-most * (_NODES + 1) / 2)
        past, mass = np.maximum(times[:, None] - ages, 0), most * _MASSES / 2
    else:
        past, mass = times[:, None], np.ones((1, 1))
    count = len(constants)
    made = [np.ones((count, len(times)))]
    if line:
        made.append(np.repeat((past * mass).sum(axis=1)[None], count, axis=0))
    if bend:
        made.append((_bent(bend, past, constants) * mass).sum(axis=2))
    return np.stack(made, axis=2)


def _solve(readings: Readings, *, line: bool, bend: Bend, constants: Array, lag: float) -> Shapes:
    """Weighted least squares; left out: time constants whose columns look alike at these times."""
    columns = _columns(readings.times, line=line, bend=bend, constants=constants, lag=lag)
    weighted = columns / readings.scatter[:, None]
    scale = np.maximum(np.linalg.norm(weighted, axis=1, keepdims=True), 1e-300)
    weighted = weighted / scale
    gram = weighted.transpose(0, 2, 1) @ weighted
    told = np.linalg.det(gram) > _ALIKE
    weighted, scale, constants = weighted[told], scale[told, 0], constants[told]
    inner = np.linalg.inv(gram[told])
    inverse = inner @ weighted.transpose(0, 2, 1)
    target = readings.pressures / readings.scatter
    parameters = inverse @ target
    misses = target - (weighted @ parameters[..., None])[..., 0]
    residual = (misses**2).sum(axis=1)
    own = np.maximum(1 - np.einsum("snk,skn->sn", weighted, inverse), 1e-9)
    changed = parameters[:, 1:, None] - inverse[:, 1:] * (misses / own)[:, None]
    less = np.where((changed >= 0).all(axis=1), residual[:, None] - misses**2 / own, math.inf)
    spread = inner / (scale[:, :, None] * scale[:, None, :])
    return Shapes(line, bend, constants, lag, parameters / scale, spread, residual, less)


def _over(
    readings: Readings, *, line: bool, bend: Bend, lag: float, low: float, high: float
) -> Shapes:
    """A bend with all time constants: a coarse grid, then a finer one around the best.

    Too coarse a grid would leave a remainder that a line takes up, and a leak be seen in it.
    """
    coarse = np.geomspace(low, high, _TIMES)
    found = _solve(readings, line=line, bend=bend, constants=coarse, lag=lag)
    if bend == "log rise" or not len(found.residual):
        return found
    best, step = float(found.best().constants[0]), (high / low) ** (1 / (_TIMES - 1))
    finer = np.geomspace(max(best / step, low), min(best * step, high), _FINER)
    constants = np.concatenate([coarse, finer])
    return _solve(readings, line=line, bend=bend, constants=constants, lag=lag)


@dataclass(frozen=True, slots=True)
class Family:
    """All shapes fitted with one lag of the gauge; with few readings the bends are empty."""

    constant: Shapes
    line: Shapes
    single: Shapes  # exponential
    both: Shapes  # line + exponential
    log: Shapes

    def __iter__(self) -> Iterator[Shapes]:
        return iter((self.constant, self.line, self.single, self.both, self.log))

    @property
    def curved(self) -> bool:
        """Whether there are readings enough for bends."""
        return bool(len(self.both.residual))

    def least(self) -> float:
        """Least sum of squares of any shape that rises."""
        return min(shapes.least(rising=True) for shapes in self)

    def without(self) -> Array:
        """The same were one reading not there, shape (n,)."""
        found: Array = np.concatenate([shapes.without for shapes in self]).min(axis=0)
        return found


def family(readings: Readings, lag: float) -> Family:
    """Fit every shape to readings at three or more times."""
    times = readings.times
    length, one = float(times[-1]), np.ones(1)
    steps = np.diff(times)
    shortest = max(float(np.min(steps[steps > 0])), length / 100)
    constant = _solve(readings, line=False, bend="", constants=one, lag=lag)
    line = _solve(readings, line=True, bend="", constants=one, lag=lag)
    if len(times) < _LEAST_FOR_CURVES:
        none = _solve(readings, line=False, bend="exponential", constants=np.ones(0), lag=lag)
        return Family(constant, line, none, none, none)
    single, both = (
        _over(readings, line=ramp, bend="exponential", lag=lag, low=shortest, high=length)
        for ramp in (False, True)
    )
    log = _over(readings, line=False, bend="log rise", lag=lag, low=length / 400, high=length / 4)
    return Family(constant, line, single, both, log)
