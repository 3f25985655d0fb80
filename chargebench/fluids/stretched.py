"""Chebyshev curves over the square root of the distance from the critical temperature.

Bare floats in kelvin, pascal and kg/m³ for loops; `saturation` puts units and refusals around it.
"""

import math
from collections.abc import Sequence

_TOLERANCE_LN = 1e-12  # of ln p; well under the stored curves' own error
_MOST_STEPS = 60


def chebyshev(series: Sequence[float], x: float) -> tuple[float, float]:
    """Value and slope of a Chebyshev series.

    Parameters
    ----------
    series : sequence of float [1]
        Coefficients, constant first.
    x : float [1]
        Argument, -1 to 1.

    Returns
    -------
    tuple of float [1]
        The sum and its derivative by x.

    Notes
    -----
    Clenshaw's recurrence b_k = c_k + 2 x b_k+1 - b_k+2, and its derivative beside it.

    Source
    ------
    CLENSHAW
    """
    b1 = b2 = d1 = d2 = 0.0
    twice = 2 * x
    for coefficient in series[:0:-1]:
        d1, d2 = 2 * b1 + twice * d1 - d2, d1
        b1, b2 = coefficient + twice * b1 - b2, b1
    return series[0] + x * b1 - b2, b1 + x * d1 - d2


class Axis:
    """The stretched temperature axis of one refrigerant's curves."""

    __slots__ = ("_far", "_per_s", "critical", "high", "low")

    def __init__(self, *, low: float, high: float, critical: float) -> None:
        self.low, self.high, self.critical = low, high, critical
        self._far = math.sqrt(critical - low)
        self._per_s = 2 / (self._far - math.sqrt(critical - high))

    def value(self, series: Sequence[float], kelvin: float) -> float:
        """The curve's quantity, whose logarithm the series holds.

        Parameters
        ----------
        series : sequence of float [1]
            Chebyshev coefficients of the logarithm.
        kelvin : float [K]
            Temperature within the axis.

        Returns
        -------
        float [Pa or kg/m**3]
            As the series was fitted.

        Source
        ------
        CLENSHAW
        """
        x = (self._far - math.sqrt(self.critical - kelvin)) * self._per_s - 1
        return math.exp(chebyshev(series, x)[0])

    def kelvin(self, series: Sequence[float], pascal: float) -> float:
        """Temperature at which a rising curve reaches a value.

        Parameters
        ----------
        series : sequence of float [1]
            Chebyshev coefficients of ln p, which rises with temperature.
        pascal : float [Pa]
            Between the values at the ends of the axis.

        Returns
        -------
        float [K]
            Temperature.

        Notes
        -----
        Newton's steps on ln p, halving the bracket instead where one would leave it.

        Source
        ------
        CLENSHAW
        """
        wanted = math.log(pascal)
        cold, warm = -1.0, 1.0
        at_cold, at_warm = chebyshev(series, cold)[0], chebyshev(series, warm)[0]
        x = cold + (warm - cold) * (wanted - at_cold) / (at_warm - at_cold)
        for _ in range(_MOST_STEPS):
            x = min(max(x, cold), warm)
            found, slope = chebyshev(series, x)
            if found < wanted:
                cold = x
            else:
                warm = x
            step = (wanted - found) / slope
            x = x + step if cold <= x + step <= warm else (cold + warm) / 2
            if abs(wanted - found) < _TOLERANCE_LN or warm - cold < 1e-15:
                break
        s = self._far - (x + 1) / self._per_s
        return min(max(self.critical - s * s, self.low), self.high)
