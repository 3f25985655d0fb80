"""When readings rest, and how fast they pour; figures by hand."""

from decimal import Decimal

import pytest

from chargebench.instruments.pouring import Pouring, seconds_to
from chargebench.instruments.resting import Resting

STEP = Decimal("0.1")


def run(values: list[str], every_s: float) -> list[bool]:
    resting = Resting()
    return [resting.add(Decimal(v), "g", STEP, n * every_s) for n, v in enumerate(values)]


def test_that_readings_within_a_step_for_two_seconds_rest() -> None:
    assert run(["5.0", "5.1", "5.0", "5.1", "5.0"], 0.5) == [False, False, False, False, True]


def test_that_a_pour_never_rests() -> None:
    # 12 g/min read each half second falls by 0.1 g: over two seconds by 0.4 g.
    falling = [f"{100 - 0.1 * n:.1f}" for n in range(40)]
    assert not any(run(falling, 0.5))


def test_that_a_change_begins_the_wait_again() -> None:
    assert run(["5.0"] * 5 + ["6.0"] * 5, 0.5) == [False] * 4 + [True] + [False] * 4 + [True]


def test_that_silence_in_between_proves_nothing() -> None:
    resting = Resting()
    assert [resting.add(Decimal(5), "g", STEP, at) for at in (0, 3, 6, 9)] == [False] * 4


def test_that_another_unit_begins_again() -> None:
    resting = Resting()
    rests = [
        resting.add(Decimal(5), unit, STEP, n) for n, unit in enumerate(["g", "g", "oz", "oz"])
    ]
    assert rests == [False] * 4


def test_that_a_steady_pour_is_told_by_its_slope() -> None:
    pouring = Pouring()
    for n in range(30):
        pouring.add(100.0 - 1.0 * n * 0.25, n * 0.25)  # 1 g/s
    assert pouring.per_minute == pytest.approx(-60.0)


def test_that_the_rate_forgets_what_was_and_keeps_little() -> None:
    pouring = Pouring()
    for n in range(10_000):
        pouring.add(0.0 if n < 9_000 else 0.001 * (n - 9_000), n * 0.001 * 10)
    # The last six seconds rose by 0.001 each 0.01 s: 6 a minute.
    assert pouring.per_minute == pytest.approx(6.0, rel=1e-3)
    assert len(pouring._points) <= 31


def test_that_no_time_is_named_where_nothing_pours() -> None:
    assert seconds_to(30.0, 60.0, 0.5) == pytest.approx(30.0)
    assert seconds_to(30.0, 0.1, 0.5) is None
    assert seconds_to(30.0, None, 0.5) is None
    assert seconds_to(-1.0, 60.0, 0.5) is None
