"""The lag of a gauge and the reading that fits nothing: when the fit believes in them."""

import math
from collections.abc import Callable

import numpy as np
import pytest
from scipy import optimize, stats

from chargebench.calc.decay_shapes import Array, Readings, family
from tests.calc.decay_search import fitted, seeded


# A first-order gauge answers a straight rise late by its time constant, 30 s.
def test_that_a_late_gauge_is_believed_only_where_it_fits_clearly_better() -> None:
    late = [60 + 40 * (at + 0.5 * math.expm1(-at / 0.5)) for at in (n / 4 for n in range(21))]
    quarters = [n / 4 for n in range(21)]
    assert fitted(quarters, seeded(late, 0.002, 5)).lag == 0.5
    straight = [60 + 40 * at for at in quarters]
    assert fitted(quarters, seeded(straight, 0.002, 5)).lag == 0
    assert fitted(quarters[:8], late[:8]).lag == 0.5
    assert fitted(quarters[:7], late[:7]).lag == 0  # under eight readings it is not asked


def crossing(statistic: Callable[[float], float], limit: float) -> tuple[float, float]:
    """Sizes between nought and one at which a statistic is one per cent under and over a limit."""

    def at(share: float) -> float:
        return float(optimize.brentq(lambda size: statistic(size) - limit * share, 0, 1, xtol=1e-9))

    return at(0.99), at(1.01)


# The lag is one parameter more: believed where F with 1 and n - 5 degrees says so (scipy's F).
def test_that_the_lag_of_a_gauge_is_believed_by_the_test_of_fisher() -> None:
    quarters: Array = np.linspace(0.0, 3.5, 15)

    def shown(size: float) -> list[float]:
        late = 60 + 40 * quarters + size * 20 * np.expm1(-quarters / 0.5)
        return seeded(late.tolist(), 0.02, 11)

    def ratio(size: float) -> float:
        pressures = np.asarray(shown(size))
        readings = Readings(quarters, pressures, pressures)
        return family(readings, 0.0).least() / family(readings, 0.5).least()

    under, over = crossing(ratio, 1 + stats.f.ppf(0.95, 1, 10) / 10)
    assert fitted(quarters.tolist(), shown(under)).lag == 0
    assert fitted(quarters.tolist(), shown(over)).lag == 0.5


# A bend has two parameters more than a line: F with 2 and n - 4 degrees (scipy's F).
def test_that_a_bend_is_proven_by_the_test_of_fisher() -> None:
    minutes: Array = np.linspace(0.0, 21.0, 15)

    def shown(size: float) -> list[float]:
        return seeded((60 + 8 * minutes - size * 150 * np.expm1(-minutes / 4)).tolist(), 0.02, 3)

    def statistic(size: float) -> float:
        pressures = np.asarray(shown(size))
        found = family(Readings(minutes, pressures, pressures), 0.0)
        both = min(found.both.least(rising=True), found.line.least())
        return (found.line.least() - both) / 2 / (both / 11)

    under, over = crossing(statistic, stats.f.ppf(0.95, 2, 11))
    for size, proven in ((under, False), (over, True)):
        found = fitted(minutes.tolist(), shown(size))
        assert (found.lag, found.curve_significant) == (0, proven)


# A deletion residual: the misfit taken away against the scatter of the others, five deviations.
def test_that_a_reading_is_set_aside_beyond_five_deviations_of_the_others() -> None:
    minutes, seen = [float(at) for at in range(15)], set()
    for factor in np.linspace(1.0, 1.4, 60):
        pascals = seeded([60 + 8 * at for at in minutes], 0.02, 6)
        pascals[7] *= factor
        every = family(Readings(np.asarray(minutes), np.asarray(pascals), np.asarray(pascals)), 0.0)
        without = float(every.without().min())
        deviations = ((every.least() - without) / (without / (15 - 5))) ** 0.5
        found = fitted(minutes, pascals, stray_limit=5)
        if fitted(minutes, pascals).lag == 0:
            assert (found.stray is not None) is (deviations > 5)
            seen.add((deviations > 5, abs(deviations - 5) < 0.5))
    assert {(True, True), (False, True)} <= seen


def straight(count: int, stray: int, factor: float) -> tuple[list[float], list[float]]:
    minutes = [float(at) for at in range(count)]
    pascals = seeded([60 + 8 * at for at in minutes], 0.01, 6)
    pascals[stray] *= factor
    return minutes, pascals


def test_that_one_reading_is_set_aside_beyond_the_limit_and_not_within() -> None:
    minutes, pascals = straight(21, 12, 1.5)
    assert fitted(minutes, pascals, stray_limit=5).stray == 12
    assert fitted(minutes, pascals, stray_limit=1e9).stray is None
    calm = straight(21, 12, 1.0)
    assert fitted(*calm, stray_limit=5).stray is None


@pytest.mark.parametrize(("count", "stray"), [(7, None), (8, 4)])
def test_that_of_fewer_than_eight_readings_none_is_set_aside(count: int, stray: int | None) -> None:
    minutes, pascals = straight(count, 4, 3.0)
    assert fitted(minutes, pascals, stray_limit=5).stray == stray


def test_that_what_was_set_aside_changes_no_limit() -> None:
    minutes, pascals = straight(21, 12, 1.5)
    kept = fitted(minutes[:12] + minutes[13:], pascals[:12] + pascals[13:])
    found = fitted(minutes, pascals, stray_limit=5)
    assert found.slope == kept.slope
    assert found.rise == kept.rise
