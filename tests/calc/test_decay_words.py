"""The decision rule of the decay test at its edges: limits of our own choice, reckoned by hand."""

import dataclasses
import math
from typing import Any

import pytest

from chargebench.calc import evacuation
from chargebench.calc.decay_fit import Fit, Interval
from chargebench.calc.evacuation import MICRON_PA, DecayLimits, DecayVerdict, DecayWord, judge
from chargebench.errors import OutsideDomain

MINUTES = [float(at) for at in range(21)]
LEAK = judge(MINUTES, [(300 + 60 * at) * MICRON_PA for at in MINUTES]).fit


def micron(low: float, high: float) -> Interval:
    return Interval(low * MICRON_PA, high * MICRON_PA)


def fit_of(**changed: Any) -> Fit:
    """A plain leak: 40 to 60 micron a minute over 20 minutes, 800 to 1200 micron of rise."""
    assert LEAK is not None
    leak: dict[str, Any] = {
        "slope": micron(40, 60),
        "rise": micron(800, 1200),
        "linear_share": Interval(0.9, 1.0),
        "line_significant": True,
        "curve_significant": False,
        "information": {"line": -50.0, "exponential": -40.0, "log rise": -30.0},
        "best_slope": 50 * MICRON_PA,
        "settled": 300 * MICRON_PA,
        "scatter": 0.01,
    }
    return dataclasses.replace(LEAK, **leak | changed)


def word(length: float = 20, **changed: Any) -> DecayWord:
    return evacuation._word(fit_of(**changed), length, DecayLimits())[0]


@pytest.mark.parametrize(("length", "said"), [(9.99, False), (10, True)])
def test_that_something_is_said_from_ten_minutes_on(length: float, *, said: bool) -> None:
    assert (word(length) is DecayWord.LEAK) is said


@pytest.mark.parametrize(("scatter", "said"), [(0.25, True), (0.2501, False)])
def test_that_scatter_up_to_a_quarter_is_a_measurement(scatter: float, *, said: bool) -> None:
    assert (word(scatter=scatter) is DecayWord.LEAK) is said


# Over 20 min a tight system rises at most 5 x 20 + 150 = 250 micron, and its slope may be open to
# 10 + 150 / 20 = 17.5 micron/min; the gauge may be 10 % wrong.
@pytest.mark.parametrize(
    ("slope", "rise", "tight"),
    [
        (17.4 / 1.1, 249 / 1.1, True),
        (17.6 / 1.1, 249 / 1.1, False),
        (17.4 / 1.1, 251 / 1.1, False),
        (0, 0, True),
    ],
)
def test_that_a_tight_system_has_a_limit_of_rise_and_of_slope(
    slope: float, rise: float, *, tight: bool
) -> None:
    found = word(slope=micron(0, slope), rise=micron(0, rise))
    assert (found is DecayWord.TIGHT) is tight


def test_that_the_limits_of_a_tight_system_follow_the_length() -> None:
    # Over 60 min: 5 x 60 + 150 = 450 micron, and 10 + 150 / 60 = 12.5 micron/min.
    assert word(60, slope=micron(0, 11.3), rise=micron(0, 409)) is DecayWord.TIGHT
    assert word(60, slope=micron(0, 11.4), rise=micron(0, 409)) is not DecayWord.TIGHT
    assert word(60, slope=micron(0, 11.3), rise=micron(0, 410)) is not DecayWord.TIGHT


@pytest.mark.parametrize(("slope", "leak"), [(4.99, False), (5.0, False), (5.01, True)])
def test_that_a_leak_is_over_five_micron_a_minute(slope: float, *, leak: bool) -> None:
    assert (word(slope=micron(slope, 60)) is DecayWord.LEAK) is leak


@pytest.mark.parametrize(
    ("share", "significant", "best", "leak"),
    [
        (0.51, False, "exponential", True),
        (0.5, False, "exponential", False),
        (0.5, True, "exponential", True),
        (0.5, False, "line", True),
    ],
)
def test_that_a_leak_is_a_straight_part_by_share_by_proof_or_by_the_best_shape(
    share: float, best: str, *, significant: bool, leak: bool
) -> None:
    information = {"line": -50.0, "exponential": -50.0, best: -51.0}
    found = word(
        linear_share=Interval(share, 1),
        line_significant=significant,
        information=information,
    )
    assert (found is DecayWord.LEAK) is leak


# Warming by 0.1 K/min makes 6.2 % a kelvin of what has settled: of 1000 micron 6.2 a minute.
@pytest.mark.parametrize(
    ("slope", "curved", "leak"),
    [(6.1, True, False), (6.3, True, True), (6.1, False, True)],
)
def test_that_what_warming_explains_over_water_is_no_leak(
    slope: float, *, curved: bool, leak: bool
) -> None:
    found = word(slope=micron(slope, 60), settled=1000 * MICRON_PA, curve_significant=curved)
    assert (found is DecayWord.LEAK) is leak


@pytest.mark.parametrize(("behind", "leak"), [(2.0, False), (2.01, True)])
def test_that_slow_outgassing_as_good_as_a_line_leaves_it_open(
    behind: float, *, leak: bool
) -> None:
    information = {"line": -50.0, "log rise": -50.0 + behind}
    assert (word(information=information) is DecayWord.LEAK) is leak


def test_that_no_surface_gives_off_more_than_3000_micron_slowly() -> None:
    close = {"line": -50.0, "log rise": -49.0}
    assert word(information=close, rise=micron(3000, 4000)) is DecayWord.UNDECIDED
    assert word(information=close, rise=micron(3001, 4000)) is DecayWord.LEAK


WET: dict[str, Any] = {
    "slope": micron(0, 40),
    "linear_share": Interval(0, 0.4),
    "line_significant": False,
    "curve_significant": True,
    "information": {"line": -40.0, "exponential": -50.0},
    "best_slope": 0.0,
}


@pytest.mark.parametrize(
    ("changed", "moist"),
    [
        ({}, True),
        ({"linear_share": Interval(0, 0.5)}, True),
        ({"linear_share": Interval(0, 0.51)}, False),
        ({"curve_significant": False}, False),
        # A proven line is let through as far as warming makes it: of 300 micron 1.86 a minute.
        ({"line_significant": True, "best_slope": 1.85 * MICRON_PA}, True),
        ({"line_significant": True, "best_slope": 1.87 * MICRON_PA}, False),
    ],
)
def test_that_moisture_bends_and_is_most_of_the_rise(
    changed: dict[str, Any], *, moist: bool
) -> None:
    assert (word(**WET | changed) is DecayWord.MOISTURE) is moist


@pytest.mark.parametrize(
    ("information", "moist"),
    [
        ({"line": -47.9, "log rise": -50.0}, True),
        ({"line": -48.0, "log rise": -50.0}, False),
        ({"line": -50.0, "log rise": -49.0}, False),
        ({"line": -40.0, "exponential": -49.0, "log rise": -50.0}, False),
        ({"log rise": -50.0}, False),
    ],
)
def test_that_a_clearly_logarithmic_rise_is_off_something_wet(
    information: dict[str, float], *, moist: bool
) -> None:
    found = word(**WET | {"curve_significant": False, "information": information})
    assert (found is DecayWord.MOISTURE) is moist


# The half-width falls as length**-1.5; the slope stands 5 micron/min from the limit of 5.
@pytest.mark.parametrize(
    ("length", "half", "more"),
    [
        (12, 5, 8),  # to 20 min first
        (20, 4.999 * 1.5**1.5, 10),  # half as long again
        (40, 4.999 * 1.5**1.5, 20),
        (20, 50, 20),  # never more than as long again
        (20, 0.1, 5),  # and never less than a quarter
    ],
)
def test_that_the_minutes_more_narrow_the_slope_to_its_limit(
    length: float, half: float, more: float
) -> None:
    middle = 100.0
    fitted = fit_of(slope=micron(middle - half, middle + half), best_slope=10 * MICRON_PA)
    found = evacuation._minutes_more(fitted, length, DecayLimits())
    assert math.ceil(found - 1e-6) == more


def test_that_a_slope_on_its_limit_asks_for_as_long_again() -> None:
    fitted = fit_of(slope=micron(4, 6), best_slope=5 * MICRON_PA)
    assert evacuation._minutes_more(fitted, 30, DecayLimits()) == 30


def level(pressures: list[float], **more: Any) -> DecayVerdict:
    return judge(MINUTES[: len(pressures)], [each * MICRON_PA for each in pressures], **more)


# 2 K of cooling over water leave 0.88 of it; what falls below 0.8 has another cause.
@pytest.mark.parametrize(("last", "said"), [(243, DecayWord.TIGHT), (237, DecayWord.UNDECIDED)])
def test_that_a_fall_by_a_fifth_is_no_tight_system(last: float, said: DecayWord) -> None:
    fallen = [300.0] * 7 + [270.0] * 7 + [last] * 7
    assert level(fallen).word is said


# By hand: a third of twenty readings is seven; of the last seven 241 is the middle one, not below
# 0.8 of 300, though of the last six or five it would be 239.5 or 238.
def test_that_a_fall_is_seen_in_whole_thirds() -> None:
    last = [250.0, 241.0, 238.0, 238.0, 238.0, 241.0, 241.0]
    assert level([300.0] * 13 + last).word is DecayWord.TIGHT


@pytest.mark.parametrize(("share", "said"), [(1.0, "moisture"), (0.999, "not yet decided")])
def test_that_water_rises_to_its_own_pressure_and_not_above(share: float, said: str) -> None:
    wet = [300 + 1500 * -math.expm1(-at / 3) for at in MINUTES]
    found = level(wet, water_pa=max(wet) * MICRON_PA * share)
    assert found.word.value == said


@pytest.mark.parametrize(
    "readings",
    [
        [(0, 40, 0), (1.01e7, 40, 0), (5, 40, 0)],
        [(0, 40, 0), (-1.01e7, 40, 0), (5, 40, 0)],
        [(0, 0.9e-6, 0), (1, 40, 0), (5, 40, 0)],
        [(0, 1.01e7, 0), (1, 40, 0), (5, 40, 0)],
        [(0, 40, -0.1), (1, 40, 0), (5, 40, 0)],
        [(0, 40, 1.01e7), (1, 40, 0), (5, 40, 0)],
    ],
)
def test_that_readings_beyond_the_fences_are_refused(
    readings: list[tuple[float, float, float]],
) -> None:
    minutes, pascals, steps = zip(*readings, strict=True)
    with pytest.raises(OutsideDomain, match="Expected finite times and absolute pressures"):
        judge(minutes, pascals, steps=steps)


def test_that_readings_on_the_fences_are_taken() -> None:
    assert judge([-1e7, 0, 1e7], [1e-6, 40, 1e7], steps=[0, 1e7, 1e7]).minutes == 2e7


@pytest.mark.parametrize(("nearest", "told"), [(0.0004, False), (0.0006, True)])
def test_that_times_are_told_apart_from_half_a_thousandth_of_a_minute(
    nearest: float, *, told: bool
) -> None:
    # Scattered apart, so that the fit itself finds a line.
    found = judge([0, nearest, 20], [40, 41, 60])
    assert (found.fit is not None) is told


def test_that_a_verdict_widens_the_slope_by_the_gauge_s_gain() -> None:
    found = judge(MINUTES, [(300 + 60 * at) * MICRON_PA for at in MINUTES])
    assert found.fit is not None
    assert found.slope_upper == pytest.approx(found.fit.slope.high * 1.1)
    assert found.slope_lower == pytest.approx(found.fit.slope.low / 1.1)
    assert found.set_aside is None


@pytest.mark.parametrize(("length", "firm"), [(19, False), (20, True)])
def test_that_a_verdict_is_firm_from_twenty_minutes_on(length: int, *, firm: bool) -> None:
    minutes = MINUTES[: length + 1]
    found = judge(minutes, [(300 + 60 * at) * MICRON_PA for at in minutes])
    assert (found.word, found.firm) == (DecayWord.LEAK, firm)
    assert found.minutes_more == (0 if firm else 1)


def test_that_only_a_still_gauge_that_reads_tight_is_asked_after() -> None:
    still = level([300.0] * 21).reason
    assert still.startswith("The whole rise stays within")
    assert "did not move" in still
    assert "did not move" not in level([300.0, 301.0] * 10 + [300.0]).reason
    short = level([300.0] * 5)
    assert (short.word, "did not move" in short.reason) == (DecayWord.UNDECIDED, False)


def test_that_one_minute_more_is_said() -> None:
    found = level([300.0] * 20)
    assert found.minutes_more == 1
    assert found.sentences[1].endswith("go on for 1 more minutes.")


def test_that_every_reading_has_its_time_and_step() -> None:
    with pytest.raises(ValueError, match="shorter"):
        judge([0, 10, 20], [40, 41])


# A wrong reading above water's pressure was set aside and says nothing of water.
def test_that_a_reading_set_aside_is_not_held_against_water() -> None:
    wet = [300 + 1500 * -math.expm1(-at / 3) for at in MINUTES]
    wet[9] *= 3
    found = level(wet, water_pa=1900 * MICRON_PA)
    assert (found.word, found.set_aside) == (DecayWord.MOISTURE, 9)
