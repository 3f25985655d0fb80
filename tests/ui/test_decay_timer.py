"""The timer of a decay test: asks, takes readings, and outlives a restart."""

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from chargebench.ui.decay_timer import DecayTimer
from chargebench.ui.decay_watch import PRESSURE, span
from chargebench.ui.sound import Tone
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


def test_that_a_gauge_that_is_listened_to_is_read_when_each_reading_is_due(
    qtbot: QtBot, clock: Clock
) -> None:
    shown = iter(["350 micron", "381 micron"])
    timer = DecayTimer(now=clock, live=lambda: (next(shown), "V-1"), sound=lambda _: None)
    qtbot.addWidget(timer)
    step = Step(timer)
    timer.begin()
    clock.on(seconds=59)
    timer.refresh()
    assert step.readings == [("0 s", "350 micron")]
    clock.on(seconds=2)
    timer.refresh()
    assert step.readings == [("0 s", "350 micron"), ("1 min 1 s", "381 micron")]
    assert step.typed["taken"] == [
        {"path": "decay[0].reading", "source": "V-1", "text": "350 micron"},
        {"path": "decay[1].reading", "source": "V-1", "text": "381 micron"},
    ]


def test_that_a_prompt_is_heard_once_for_each_reading(qtbot: QtBot, clock: Clock) -> None:
    tones: list[Tone] = []
    timer = DecayTimer(now=clock, sound=tones.append)
    qtbot.addWidget(timer)
    timer.begin()
    timer.refresh()
    assert tones == [Tone.PROMPT]
    type_reading(qtbot, timer, "350 micron")
    clock.on(seconds=60)
    timer.refresh()
    timer.refresh()
    assert tones == [Tone.PROMPT] * 2


def test_that_a_pressure_test_is_timed_alike_and_its_ends_follow_the_readings(
    qtbot: QtBot, clock: Clock
) -> None:
    timer = DecayTimer(PRESSURE, now=clock, sound=lambda _: None)
    qtbot.addWidget(timer)
    step = Step(timer)
    timer.begin()
    qtbot.keyClicks(timer.temperature, "72 F")
    type_reading(qtbot, timer, "150.0 psig")
    assert step.typed["start_temperature"] == "72 F"
    assert "end_pressure" not in step.typed
    clock.on(minutes=30)
    timer.temperature.put("71 F")
    type_reading(qtbot, timer, "149.6")
    assert step.typed["readings"][1] == {
        "at": "30 min",
        "reading": "149.6 psig",
        "temperature": "71 F",
    }
    ends = {key: step.typed[key] for key in ("start_pressure", "end_pressure", "end_temperature")}
    assert ends == {
        "start_pressure": "150.0 psig",
        "end_pressure": "149.6 psig",
        "end_temperature": "71 F",
    }
    assert step.typed["hold"] == "30 min"


def test_that_a_dropped_file_is_looked_at_and_a_bad_line_is_named(
    timer: DecayTimer, step: Step, tmp_path: Path
) -> None:
    file = tmp_path / "logger.csv"
    file.write_text("time;vacuum [micron]\n14:30:00;350\n14:31:00;oops\n", encoding="utf-8")
    drop(timer.series, QUrl.fromLocalFile(str(file)))
    assert "Line 3" in timer.says.text()
    file.write_text("time;vacuum [micron]\n14:30:00;350\n14:31:30;381,5\n", encoding="utf-8")
    drop(timer.series, QUrl.fromLocalFile(str(file)))
    assert "2.  1 min 30 s   381,5 micron" in timer.series.understood.text()
    timer.series.leave_button.click()
    assert step.typed == {}
    drop(timer.series, QUrl.fromLocalFile(str(file)))
    timer.series.add.click()
    assert step.readings == [("0 s", "350 micron"), ("1 min 30 s", "381,5 micron")]


def drop(onto: QWidget, url: QUrl) -> None:
    mime = QMimeData()
    mime.setUrls([url])
    left = Qt.MouseButton.LeftButton
    bare = Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(4, 4), Qt.DropAction.CopyAction, mime, left, bare)
    QApplication.sendEvent(onto, enter)
    assert enter.isAccepted()
    event = QDropEvent(QPointF(4, 4), Qt.DropAction.CopyAction, mime, left, bare)
    QApplication.sendEvent(onto, event)
