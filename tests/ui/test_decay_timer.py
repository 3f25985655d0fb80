"""The timer of a decay test: asks, takes readings, and outlives a restart."""

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.ui.decay_timer import DecayTimer
from chargebench.ui.decay_watch import span
from chargebench.units import Kind, read


class Clock:
    def __init__(self) -> None:
        self.now = datetime(2026, 11, 25, 14, 30, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.now

    def on(self, **by: float) -> None:
        self.now += timedelta(**by)


class Step:
    """The step's typed text, as the form would hold it."""

    def __init__(self, timer: DecayTimer) -> None:
        self.typed: dict[str, Any] = {}
        timer.changed.connect(self.typed.update)

    @property
    def readings(self) -> list[tuple[str, str]]:
        return [(line["at"], line["reading"]) for line in self.typed["decay"]]


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def timer(qtbot: QtBot, clock: Clock) -> DecayTimer:
    made = DecayTimer(now=clock, sound=lambda _: None)
    qtbot.addWidget(made)
    made.show()
    return made


@pytest.fixture
def step(timer: DecayTimer) -> Step:
    return Step(timer)


def type_reading(qtbot: QtBot, timer: DecayTimer, text: str) -> None:
    qtbot.keyClicks(timer.reading, text)
    qtbot.keyClick(timer.reading, Qt.Key.Key_Return)


def test_that_each_reading_is_asked_for_and_kept_with_its_time(
    qtbot: QtBot, timer: DecayTimer, step: Step, clock: Clock
) -> None:
    timer.begin()
    assert step.typed["decay_started"] == "2026-11-25 14:30:00+00:00"
    assert timer.running
    assert timer.asks.text() == "Read the gauge now: 0:00"
    clock.on(seconds=4)
    type_reading(qtbot, timer, "350 micron")
    clock.on(seconds=30)
    timer.refresh()
    assert timer.asks.text() == "Next reading in 0:26"
    clock.on(seconds=30)
    timer.refresh()
    assert timer.asks.text() == "Read the gauge now: 1:04"
    type_reading(qtbot, timer, "381")  # the unit of the reading before
    assert step.readings == [("4 s", "350 micron"), ("1 min 4 s", "381 micron")]


def test_that_the_time_is_when_typing_began(
    qtbot: QtBot, timer: DecayTimer, step: Step, clock: Clock
) -> None:
    timer.begin()
    clock.on(seconds=60)
    qtbot.keyClicks(timer.reading, "40")
    clock.on(seconds=9)
    type_reading(qtbot, timer, "0 micron")
    assert step.readings == [("1 min", "400 micron")]


def test_that_a_restart_goes_on_from_the_typed_start(
    qtbot: QtBot, timer: DecayTimer, step: Step, clock: Clock
) -> None:
    timer.begin()
    type_reading(qtbot, timer, "350 micron")
    again = DecayTimer(now=clock)
    qtbot.addWidget(again)
    clock.on(minutes=7, seconds=30)
    again.show_typed({**step.typed, "decay_every": "5 min"})
    assert again.running
    assert again.asks.text() == "Read the gauge now: 7:30"


def test_that_a_refused_reading_stays_in_its_field_and_is_not_kept(
    qtbot: QtBot, timer: DecayTimer, step: Step
) -> None:
    type_reading(qtbot, timer, "350 micron")
    assert "Isolated now" in timer.says.text()
    timer.begin()
    timer.reading.clear()
    type_reading(qtbot, timer, "350 g")
    assert "pressure" in timer.says.text()
    assert timer.reading.text() == "350 g"
    assert "decay" not in step.typed


def test_that_readings_are_pasted_and_read_from_a_file(
    qtbot: QtBot, timer: DecayTimer, step: Step, tmp_path: Path
) -> None:
    QApplication.clipboard().setText("min;micron\n0;350\n1,5;380")
    qtbot.mouseClick(timer.series.paste, Qt.MouseButton.LeftButton)
    assert "Understood 2 readings (pasted)" in timer.series.understood.text()
    assert "2.  1,5 min   380 micron" in timer.series.understood.text()
    assert step.typed == {}
    qtbot.keyClick(timer.series.add, Qt.Key.Key_Space)
    assert step.readings == [("0 min", "350 micron"), ("1,5 min", "380 micron")]
    timer.show_typed({})
    file = tmp_path / "logger.txt"
    file.write_text("0 s\t46.7 Pa\n60 s\t50 Pa\n", encoding="utf-8")
    timer.series.take_file(file)
    timer.series.add.click()
    assert step.typed["taken"][1] == {
        "path": "decay[1].reading",
        "source": "file logger.txt",
        "text": "50 Pa",
    }
    assert step.readings == [("0 s", "46.7 Pa"), ("60 s", "50 Pa")]


def test_that_a_series_never_replaces_readings_that_are_there(
    timer: DecayTimer, step: Step
) -> None:
    timer.show_typed({"decay": [{"at": "1 min", "reading": "350 micron"}]})
    QApplication.clipboard().setText("min;micron\n0;350\n1;380")
    timer.series.take_clipboard()
    assert "There are readings already" in timer.says.text()
    timer.begin()
    assert step.typed == {}


def test_that_what_is_no_series_is_refused(timer: DecayTimer, step: Step) -> None:
    QApplication.clipboard().setText("hello")
    timer.series.take_clipboard()
    assert "Expected two columns" in timer.says.text()
    assert step.typed == {}


def test_that_a_signed_step_takes_nothing(timer: DecayTimer) -> None:
    timer.show_typed({"decay_started": "2026-11-25 14:30:00+00:00"}, locked=True)
    assert not timer.running
    assert not timer.add.isEnabled()
    assert timer.reading.isReadOnly()


@pytest.mark.parametrize("seconds", [0, 1, 59, 60, 61, 3_599, 3_600, 7_261])
def test_that_a_written_span_is_understood_as_the_same_span(seconds: int) -> None:
    assert read(Kind.DURATION, span(seconds)).quantity.m_as("s") == pytest.approx(seconds)
