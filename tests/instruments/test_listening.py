"""Listening at real pseudo-terminals: good, noisy, partial, fast, babbling, lost and back."""

import os
import threading
import time
from pathlib import Path

import pytest

from chargebench.instruments.listening import LINES_KEPT, Listener, State, where_now
from chargebench.units import Kind, Q
from tests.instruments.terminals import Terminal, listen, pause, until

pytestmark = pytest.mark.skipif(not hasattr(os, "openpty"), reason="no pseudo-terminals here")


def opened(listener: Listener) -> None:
    """Wait until the port is open for long enough that a line begins at its beginning."""
    until(listener, lambda live: live.says.startswith("Listening"))
    pause(0.2)


def test_that_a_good_line_is_a_reading_with_its_mark() -> None:
    with Terminal() as scale, listen(scale.port, "9600 8N1, stable ST") as listener:
        opened(listener)
        scale.say("US,GS,+  4312.4 g\r\n")
        assert not until(listener, lambda live: live.heard is not None).steady
        scale.say("ST,GS,+  4312.5 g\r\n")
        live = until(listener, lambda live: live.steady)
        assert live.heard is not None
        assert live.heard.text == "4312.5 g"
        assert live.state is State.LIVE


def test_that_rest_is_found_where_the_instrument_says_nothing_of_it() -> None:
    with Terminal() as scale, listen(scale.port, resolution=Q(0.1, "g")) as listener:
        opened(listener)
        scale.say("4300.0 g\n")
        until(listener, lambda live: live.heard is not None)
        began = time.monotonic()
        until(listener, lambda live: live.steady, lambda: scale.say("4312.5 g\n"))
        assert time.monotonic() - began >= 2.0
        scale.say("4312.0 g\n")
        until(listener, lambda live: not live.steady)


def test_that_noise_around_and_between_lines_does_no_harm() -> None:
    with Terminal() as scale, listen(scale.port) as listener:
        opened(listener)
        scale.say(b"\x00\xff garbage \x80\r\n\r\n\x1b[K~~~\r\n")
        live = until(listener, lambda live: live.state is State.GARBLED)
        assert "No number" in live.refusal
        scale.say(b"~\x07 4312.5 g \xfe\r\n")
        live = until(listener, lambda live: live.heard is not None)
        assert live.heard is not None
        assert live.heard.text == "4312.5 g"


def test_that_a_line_in_pieces_is_one_reading() -> None:
    with Terminal() as scale, listen(scale.port) as listener:
        opened(listener)
        scale.say("43")
        pause(0.15)
        assert listener.live().heard is None
        scale.say("12.5 g\r\n")
        live = until(listener, lambda live: live.heard is not None)
        assert live.heard is not None
        assert live.heard.text == "4312.5 g"


def test_that_a_thousand_lines_a_second_are_kept_up_with() -> None:
    with Terminal() as scale, listen(scale.port, "115200 8N1") as listener:
        opened(listener)
        began = time.monotonic()
        for number in range(2_000):
            while time.monotonic() - began < number / 1_000:
                pause(0.001)
            scale.say(f"{number:.1f} g\r\n")
        live = until(listener, lambda live: live.count == 2_000)
        assert live.heard is not None
        assert live.heard.text == "1999.0 g"
        assert time.monotonic() - live.at < 1.0
        assert len(live.lines) == LINES_KEPT


def test_that_a_babbling_port_costs_no_memory_and_no_waiting() -> None:
    with Terminal() as scale, listen(scale.port) as listener:
        opened(listener)
        stop = threading.Event()

        def babble() -> None:
            while not stop.is_set():
                scale.say(os.urandom(512))

        thread = threading.Thread(target=babble)
        thread.start()
        try:
            until(listener, lambda live: live.count > 500)
            slowest = 0.0
            for _ in range(200):
                before = time.perf_counter()
                live = listener.live()
                slowest = max(slowest, time.perf_counter() - before)
                assert len(live.lines) <= LINES_KEPT
                pause(0.001)
            assert slowest < 0.25
        finally:
            stop.set()
            thread.join()


def test_that_a_lost_port_is_shown_and_found_again_by_itself(tmp_path: Path) -> None:
    port = tmp_path / "scale"
    first = Terminal()
    port.symlink_to(first.port)
    with listen(port) as listener:
        opened(listener)
        first.say("4312.5 g\r\n")
        until(listener, lambda live: live.heard is not None)
        port.unlink()
        first.unplug()
        live = until(listener, lambda live: live.state is State.LOST)
        assert live.heard is None
        assert "trying again" in live.says
        with Terminal() as second:
            port.symlink_to(second.port)
            opened(listener)
            second.say("4250.0 g\r\n")
            live = until(listener, lambda live: live.heard is not None)
            assert live.heard is not None
            assert live.heard.text == "4250.0 g"


def test_that_a_port_that_is_not_there_is_said_and_waited_for(tmp_path: Path) -> None:
    with listen(tmp_path / "nothing") as listener:
        live = until(listener, lambda live: live.state is State.LOST)
        assert "nothing" in live.says


def test_that_silence_is_shown_and_an_old_reading_is_none() -> None:
    with Terminal() as scale, listen(scale.port) as listener:
        opened(listener)
        scale.say("4312.5 g\r\n")
        until(listener, lambda live: live.heard is not None)
        live = until(listener, lambda live: live.state is State.SILENT)
        assert live.heard is None
        assert "is the instrument on" in live.says


def test_that_an_instrument_that_waits_to_be_asked_is_asked() -> None:
    with Terminal() as gauge, listen(gauge.port, "9600 8N1, asked READ", Kind.PRESSURE) as listener:
        opened(listener)
        asked: list[bytes] = []

        def answer() -> None:
            if b"READ\r\n" in (heard := gauge.heard()):
                asked.append(heard)
                gauge.say("350 micron\r\n")

        live = until(listener, lambda live: live.heard is not None, answer)
        assert asked
        assert live.heard is not None
        assert live.heard.text == "350 micron"


def test_that_an_adapter_without_an_identity_keeps_its_name() -> None:
    assert where_now("no such port", "") == "no such port"
    assert where_now("no such port", "USB VID:PID=0000:0000 SER=none") == "no such port"
