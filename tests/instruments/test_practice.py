"""The practice instruments, as a listener hears them."""

import os
import signal
import subprocess
import sys

import pytest

from chargebench.instruments.practice import (
    GAUGE_SETTINGS,
    SCALE_SETTINGS,
    Practice,
    PracticeGauge,
    PracticeScale,
)
from chargebench.units import Kind, read
from tests.instruments.terminals import listen, until

pytestmark = pytest.mark.skipif(not hasattr(os, "openpty"), reason="no pseudo-terminals here")


class Clock:
    def __init__(self) -> None:
        self.now = 100.0

    def __call__(self) -> float:
        return self.now


def test_that_the_scale_pours_at_its_rate_while_the_valve_is_open_and_rests_after() -> None:
    clock = Clock()
    scale = PracticeScale(start_g=4312.5, rate_g_per_min=60.0, clock=clock)
    assert scale.line() == "ST,GR,+004312.5 g"
    scale.turn_valve()
    clock.now += 30
    assert scale.line() == "US,GR,+004282.5 g"  # 60 g/min for half a minute: 30 g
    scale.turn_valve()
    assert scale.line().startswith("US")
    clock.now += 5
    assert scale.line() == "ST,GR,+004282.5 g"


def test_that_the_gauge_rises() -> None:
    clock = Clock()
    gauge = PracticeGauge(start_micron=320, leak_micron_per_min=2, water_micron=0, clock=clock)
    clock.now += 600
    assert gauge.line() == "VAC    340 micron"  # 320 + 2 x 10


def test_that_both_are_heard_through_a_port() -> None:
    with (
        Practice(PracticeScale().line) as scale,
        Practice(PracticeGauge().line) as gauge,
        listen(scale.port, str(SCALE_SETTINGS)) as weighs,
        listen(gauge.port, str(GAUGE_SETTINGS), Kind.PRESSURE) as gauges,
    ):
        live = until(weighs, lambda live: live.steady)
        assert live.heard is not None
        assert live.heard.text == "4312.5 g"
        live = until(gauges, lambda live: live.heard is not None)
        assert live.heard is not None
        assert read(Kind.PRESSURE, live.heard.text).unit == "micron"


def test_that_the_command_names_its_port_and_enter_turns_the_valve() -> None:
    with subprocess.Popen(
        [sys.executable, "-m", "chargebench", "practice-scale"],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
    ) as command:
        assert command.stdout is not None
        assert command.stdin is not None
        first = command.stdout.readline()
        port = first.removeprefix("Practice scale at ").partition(",")[0]
        with listen(port, str(SCALE_SETTINGS)) as listener:
            live = until(listener, lambda live: live.steady)
            assert live.heard is not None
            assert live.heard.text == "4312.5 g"
            command.stdin.write("\n")
            command.stdin.flush()
            until(listener, lambda live: live.heard is not None and live.heard.value < 4312)
        command.send_signal(signal.SIGINT)
        assert command.wait(5) == 0
