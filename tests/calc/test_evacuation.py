import math
from collections.abc import Callable
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chargebench.calc.evacuation import (
    MICRON_PA,
    DecayLimits,
    DecayVerdict,
    DecayWord,
    judge,
)
from chargebench.errors import OutsideDomain
from chargebench.fluids import water
from chargebench.units import Q


def microns(shape: Callable[[float], float], minutes: list[float]) -> DecayVerdict:
    return judge(minutes, [shape(at) * MICRON_PA for at in minutes])


def every_minute(length: int) -> list[float]:
    return [float(at) for at in range(length + 1)]


def wobble(at: float, share: float = 0.01) -> float:
    """Scatter of a gauge, always the same at the same minute."""
    return 1 + share * Random(round(at)).gauss(0, 1)  # noqa: S311


def test_that_a_line_is_a_leak_and_its_slope_is_found() -> None:
    found = microns(lambda at: (300 + 60 * at) * wobble(at), every_minute(20))
    assert found.word is DecayWord.LEAK
    assert found.firm
    assert found.minutes_more == 0
    assert found.slope_lower is not None
    assert found.slope_upper_micron is not None
    assert found.slope_lower / MICRON_PA < 60 < found.slope_upper_micron < 75


def test_that_levelling_off_is_moisture() -> None:
    found = microns(lambda at: (300 + 1500 * -math.expm1(-at / 3)) * wobble(at), every_minute(20))
    assert found.word is DecayWord.MOISTURE


def test_that_a_still_gauge_is_tight_but_not_proof_of_no_leak() -> None:
    found = microns(lambda _: 300, every_minute(20))
    assert found.word is DecayWord.TIGHT
    assert found.slope_upper_micron is not None
    assert found.slope_upper_micron > 0


@pytest.mark.parametrize("step", [1.0, 10.0])
def test_that_readings_that_do_not_move_prove_no_more_than_the_display_shows(step: float) -> None:
    # A rise of one step over 20 minutes can stay unseen.
    found = judge(every_minute(20), [40.0] * 21, steps=[step] * 21)
    assert found.slope_upper is not None
    assert found.slope_upper >= step / 20
    assert "did not move" in found.reason


@pytest.mark.parametrize("factor", [0.1, 0.5, 2, 10])
@pytest.mark.parametrize("at", range(1, 20, 3))
@pytest.mark.parametrize(
    ("shape", "word"),
    [
        (lambda _: 300, DecayWord.TIGHT),
        (lambda at: 300 + 1500 * -math.expm1(-at / 3), DecayWord.MOISTURE),
        (lambda at: 300 + 60 * at, DecayWord.LEAK),
    ],
    ids=["tight", "moisture", "leak"],
)
def test_that_one_wrong_reading_changes_nothing_and_is_named(
    shape: Callable[[float], float], word: DecayWord, at: int, factor: float
) -> None:
    found = microns(lambda t: shape(t) * wobble(t) * (factor if t == at else 1), every_minute(20))
    assert found.word is word
    assert found.set_aside == at
    assert f"at {at} min" in found.reason


def test_that_a_wrong_reading_at_an_end_may_be_a_rise() -> None:
    def tight(at: int, factor: float) -> DecayVerdict:
        return microns(lambda t: 300 * wobble(t) * (factor if t == at else 1), every_minute(20))

    assert "The last reading stands far off" in tight(20, 3).reason
    assert "The first reading stands far off" in tight(0, 0.3).reason
    assert tight(20, 0.3).word is tight(0, 3).word is DecayWord.TIGHT


def test_that_a_lasting_jump_is_not_set_aside() -> None:
    found = microns(lambda at: (300 if at < 17 else 3000) * wobble(at), every_minute(20))
    assert found.set_aside is None
    assert found.word is not DecayWord.TIGHT


def test_that_a_slow_gauge_is_seen() -> None:
    # The answer of a first-order gauge to a straight rise: late by its time constant, 30 s.
    found = microns(
        lambda at: (300 + 200 * (at + 0.5 * math.expm1(-at / 0.5))) * wobble(at), every_minute(20)
    )
    assert found.fit is not None
    assert found.fit.lag == 0.5
    assert found.word is DecayWord.LEAK


def test_that_falling_pressure_is_no_tight_system() -> None:
    found = microns(lambda at: (600 - 20 * at) * wobble(at), every_minute(20))
    assert found.word is DecayWord.UNDECIDED
    assert "falls" in found.reason


def test_that_readings_at_equal_times_count_as_readings() -> None:
    once = microns(lambda at: (300 + 60 * at) * wobble(at), every_minute(20))
    twice = microns(lambda at: (300 + 60 * at) * wobble(at), sorted(every_minute(20) * 2))
    assert twice.word is once.word is DecayWord.LEAK


def test_that_half_a_minute_gives_no_word_but_the_leak_left_open() -> None:
    found = microns(lambda at: 300 + 60 * at, [0, 0.1, 0.2, 0.3, 0.4, 0.5])
    assert found.word is DecayWord.UNDECIDED
    assert found.slope_upper_micron is not None
    assert found.slope_upper_micron > 60


def test_that_warming_of_wet_oil_is_no_leak() -> None:
    # Water's vapour pressure rises by 6.2 % from 20 to 21 °C (2339 to 2488 Pa, IAPWS-SR1).
    def wet(at: float) -> float:
        return (300 + 5000 * -math.expm1(-at / 2)) * (1 + 0.062 * 0.05 * at) * wobble(at, 0.003)

    assert microns(wet, every_minute(20)).word is DecayWord.MOISTURE


def test_that_a_verdict_before_20_minutes_is_not_firm_and_says_how_long_to_go_on() -> None:
    found = microns(lambda _: 300, every_minute(12))
    assert (found.word, found.firm, found.minutes_more) == (DecayWord.TIGHT, False, 8)


def test_that_two_sentences_say_the_verdict_and_what_it_leaves_open() -> None:
    first, second = microns(lambda _: 300, every_minute(12)).sentences
    assert first.startswith("Tight, not firm yet. ")
    assert second.startswith("A leak below ")
    assert second.endswith(" Pa/min) can not be excluded; go on for 8 more minutes.")
    firm = microns(lambda at: (300 + 60 * at) * wobble(at), every_minute(20)).sentences
    assert firm[0].startswith("Leak. ")
    assert "go on" not in firm[1]
    assert judge([], []).sentences[1] == "Go on for 20 more minutes."
    assert judge([0, 20], [40, 40]).sentences[1] == ""


def test_that_a_long_test_has_narrow_limits() -> None:
    found = microns(lambda at: (300 + 60 * at) * wobble(at), every_minute(120))
    assert found.slope_lower is not None
    assert found.slope_upper is not None
    # The gauge's own 10 % stays, however long the test.
    assert 1.1**2 < found.slope_upper / found.slope_lower < 1.1**2 * 1.02


def test_that_times_nearer_than_a_clock_shows_are_one_time() -> None:
    assert judge([0, 5e-324, 1e-9, 20], [40, 40, 40, 40]).fit is None


def test_that_nothing_is_said_before_10_minutes() -> None:
    found = microns(lambda at: 300 + 100 * at, every_minute(9))
    assert found.word is DecayWord.UNDECIDED
    assert found.minutes_more == 11
    assert found.slope_upper is not None


@pytest.mark.parametrize("minutes", [[], [0.0], [0.0, 20.0], [3.0, 3.0, 3.0, 3.0]])
def test_that_fewer_than_three_times_decide_nothing_and_say_why(minutes: list[float]) -> None:
    found = judge(minutes, [40.0] * len(minutes))
    assert found.word is DecayWord.UNDECIDED
    assert "three readings" in found.reason
    assert found.fit is None
    assert found.firm is False
    assert found.slope_upper_micron is None


def test_that_three_readings_at_odd_times_are_enough_for_a_clear_leak() -> None:
    found = microns(lambda at: 300 + 100 * at, [0, 7.5, 21])
    assert found.slope_upper is not None
    assert found.slope_upper > 100 * MICRON_PA
    assert found.word in (DecayWord.LEAK, DecayWord.UNDECIDED)


def test_that_the_order_of_the_readings_does_not_matter() -> None:
    minutes = every_minute(20)
    pascals = [(300 + 60 * at) * wobble(at) * MICRON_PA for at in minutes]
    assert judge(minutes[::-1], pascals[::-1]) == judge(minutes, pascals)


def test_that_the_clock_may_start_anywhere() -> None:
    minutes = every_minute(20)
    pascals = [(300 + 60 * at) * wobble(at) * MICRON_PA for at in minutes]
    late = judge([at + 1_000 for at in minutes], pascals)
    soon = judge(minutes, pascals)
    assert late.slope_upper == pytest.approx(soon.slope_upper)
    assert late.fit is not None
    assert soon.fit is not None
    assert late.fit.at([1_010]) == pytest.approx(soon.fit.at([10]))
    assert late.fit.band([1_010])[1] == pytest.approx(soon.fit.band([10])[1])


def test_that_the_band_holds_the_fitted_shape_and_widens_beyond_the_readings() -> None:
    fit = microns(lambda at: (300 + 60 * at) * wobble(at), every_minute(20)).fit
    assert fit is not None
    grid = [0.0, 5.0, 10.0, 20.0, 40.0]
    low, high = fit.band(grid)
    assert all(a <= p <= b for a, p, b in zip(low, fit.at(grid), high, strict=True))
    assert high[4] - low[4] > high[2] - low[2]


def test_that_what_rises_above_the_vapour_pressure_of_water_is_not_called_moisture() -> None:
    minutes = every_minute(20)
    pascals = [(300 + 8000 * -math.expm1(-at / 3)) * wobble(at) * MICRON_PA for at in minutes]
    warm = water.vapour_pressure(Q(20, "degC")).m_as("Pa")  # 2339 Pa, above 8300 micron
    cold = water.vapour_pressure(Q(-30, "degC")).m_as("Pa")  # ice, 285 micron
    assert judge(minutes, pascals, water_pa=warm).word is DecayWord.MOISTURE
    found = judge(minutes, pascals, water_pa=cold)
    assert found.word is DecayWord.UNDECIDED
    assert "not water" in found.reason


@pytest.mark.parametrize("bad", [0.0, -1.0, math.nan, math.inf, 5e-324, 1e300])
def test_that_an_impossible_pressure_is_refused(bad: float) -> None:
    with pytest.raises(OutsideDomain, match="above zero"):
        judge([0, 5, 10], [40, bad, 41])


def test_that_a_doubtful_test_asks_for_more_time_but_not_more_than_as_long_again() -> None:
    found = microns(lambda at: (300 + 10 * at) * wobble(at, 0.1), every_minute(24))
    assert found.word is DecayWord.UNDECIDED
    assert 6 <= found.minutes_more <= 24


def test_that_the_limits_are_settings() -> None:
    strict = DecayLimits(rise_allowed=1, slope_allowed=0.1, slope_open=0.1)
    minutes = every_minute(20)
    pascals = [(300 + 3 * at) * wobble(at) * MICRON_PA for at in minutes]
    assert judge(minutes, pascals).word is DecayWord.TIGHT
    assert judge(minutes, pascals, strict).word is not DecayWord.TIGHT


def test_that_a_reading_of_next_to_nothing_does_not_outweigh_the_rest() -> None:
    # A gauge's doubt is no share of so small a reading any more.
    found = judge([0, 5, 10, 20], [1e-3, 1e5, 1e-3, 2e5])
    assert found.fit is not None
    assert found.word is DecayWord.UNDECIDED


def test_that_wild_readings_decide_nothing() -> None:
    found = microns(lambda at: 300 if at % 3 else 9000, every_minute(20))
    assert found.word is DecayWord.UNDECIDED
    assert "scatter" in found.reason


def test_that_readings_that_can_not_tell_a_line_from_a_level_decide_nothing() -> None:
    found = judge([0, 10, 20], [40, 41, 42], steps=[1e7, 0, 1e7])
    assert found.fit is None
    assert found.word is DecayWord.UNDECIDED


READINGS = st.lists(st.tuples(st.floats(-1e5, 1e5), st.floats(1e-3, 2e5)), min_size=0, max_size=30)


@settings(max_examples=100)
@given(READINGS)
def test_that_any_readings_give_a_verdict_in_finite_figures(
    readings: list[tuple[float, float]],
) -> None:
    found = judge([at for at, _ in readings], [pressure for _, pressure in readings])
    assert found.minutes_more >= 0
    if found.fit is not None:
        assert found.slope_upper is not None
        assert math.isfinite(found.slope_upper)
        assert all(map(math.isfinite, found.fit.at([0.0, 1.0, 20.0])))


@settings(max_examples=30)
@given(st.integers(0, 10_000), st.floats(0, 200))
def test_that_a_faster_leak_never_lowers_the_leak_left_open(seed: int, more: float) -> None:
    minutes = every_minute(15)
    scatter = [1 + 0.01 * math.sin(seed + 37 * at) for at in minutes]

    def upper(slope: float) -> float:
        pascals = [(300 + slope * at) * s for at, s in zip(minutes, scatter, strict=True)]
        found = judge(minutes, pascals).slope_upper
        assert found is not None
        return found

    assert upper(10 + more) >= upper(10) * 0.98
