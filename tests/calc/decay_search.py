"""Decay tests made up, fitted by the program, and searched through another way."""

import math
from collections.abc import Callable, Sequence
from random import Random

import numpy as np
from scipy import stats

from chargebench.calc.decay_fit import Fit, fit
from chargebench.calc.decay_shapes import Array

CURVES: dict[str, Callable[[float], float]] = {
    "leak under moisture": lambda at: 60 + 8 * at + 180 * -math.expm1(-at / 4),
    "moisture": lambda at: 60 + 300 * -math.expm1(-at / 3),
    "leak": lambda at: 60 + 8 * at,
    "slow moisture": lambda at: 60 + 300 * -math.expm1(-at / 15),
}


def seeded(shape: Sequence[float], noise: float, seed: int) -> list[float]:
    chance = Random(seed)  # noqa: S311 - a fixed scatter
    return [pascal * (1 + noise * chance.gauss(0, 1)) for pascal in shape]


def fitted(
    minutes: Sequence[float],
    pascals: Sequence[float],
    *,
    step: float = 0.0,
    noise_floor: float = 1e-9,
    stray_limit: float = 1e9,
) -> Fit:
    steps = [step] * len(minutes)
    found = fit(minutes, pascals, steps, noise_floor=noise_floor, stray_limit=stray_limit)
    assert found is not None
    return found


class Search:
    """Limits by trying every share of a straight part and every time constant, one by one.

    p0 + R (f t / L + (1 - f) (1 - exp(-t / tau)) / (1 - exp(-L / tau))), level p0 and rise R by
    least squares: another way to write line and exponential, and no formula of the program's.
    """

    def __init__(self, minutes: Sequence[float], pascals: Array) -> None:
        times, weights = np.asarray(minutes, dtype=float), 1 / pascals
        length, shortest = times[-1], float(np.diff(times).min())
        shares, rows = np.linspace(0, 1, 2001), []
        for tau in np.geomspace(shortest, length, 200):
            bend = np.expm1(-times / tau) / np.expm1(-length / tau)
            shape = np.outer(shares, times / length - bend) + bend
            # Normal equations of two unknowns, solved by hand.
            one, first, second = (weights**2).sum(), shape @ weights**2, shape**2 @ weights**2
            determinant = one * second - first**2
            level = (second * weights.sum() - first * (shape @ weights)) / determinant
            rise = (one * (shape @ weights) - first * weights.sum()) / determinant
            misses = 1 - (level[:, None] + rise[:, None] * shape) * weights
            tested = [(misses**2).sum(axis=1), rise, one / determinant, shares]
            for at in (0.0, length / 2, 2 * length):  # the curve there, and its spread
                bent = np.expm1(-at / tau) / np.expm1(-length / tau)
                s = shares * at / length + (1 - shares) * bent
                tested += [level + rise * s, (second - 2 * s * first + s**2 * one) / determinant]
            rows.append(np.stack(tested))
        residual, rise, spread, share, *curves = np.concatenate(rows, axis=1)
        least = float(residual[rise >= 0].min())
        freedom = len(times) - 4
        self.threshold = least * (1 + stats.f.ppf(0.95, 1, freedom) / freedom)
        near = (residual <= self.threshold) & (rise >= 0)
        half = np.sqrt((self.threshold - residual[near]) * spread[near])
        low, high = np.maximum(rise[near] - half, 0), rise[near] + half
        self.rise = (low.min(), high.max())
        slopes = share[near] / length
        self.slope = ((low * slopes).min(), (high * slopes).max())
        self.share = (share[near].min(), share[near].max())
        slack = self.threshold - residual[near]
        self.low, self.high = [], []
        for middle, square in zip(curves[::2], curves[1::2], strict=True):
            half = np.sqrt(slack * square[near])
            self.low.append(float((middle[near] - half).min()))
            self.high.append(float((middle[near] + half).max()))
