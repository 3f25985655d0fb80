"""A weigh-in to the stop by the scale itself: keys on the window, another hand on the valve."""

import os
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.instruments.practice import SCALE_SETTINGS, Practice, PracticeScale
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.bench_ports import Plugged, plug
from chargebench.ui.bench_zone import Zone
from chargebench.ui.line_dialog import LineDialog
from chargebench.units import Kind, read
from tests.hands import Hands

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(not hasattr(os, "openpty"), reason="no pseudo-terminals here"),
]

LINE = {
    "cylinder": "C-014",
    "scale": "S-2",
    "arrangement": "cylinder on the scale",
    "drawn_as": "liquid",
    "hose_state": "no hose, closed at the equipment",
}
RATE_G_PER_MIN = 900.0  # quick, so that the walk is; the person closes the valve at the stop


class Pour:
    """The practice scale, plugged in at this bench, and the hand on its valve."""

    def __init__(self, practice: Practice, scale: PracticeScale) -> None:
        self.port = practice.port
        self.valve = scale.turn_valve
        self.scale = scale


@pytest.fixture
def pour() -> Iterator[Pour]:
    scale = PracticeScale(start_g=4312.5, rate_g_per_min=RATE_G_PER_MIN)
    with Practice(scale.line, every_s=0.05) as practice:
        yield Pour(practice, scale)
    plug("S-2", None)


@pytest.fixture
def weigh_in(hands: Hands, desk: Desk) -> Hands:
    job = desk.open_job("E-203", "recharge")
    hands.window.bench.open_job(job, "weigh_in")
    hands.fill(hands.form, {"kind": "into an evacuated system", "lines": [LINE]})
    return hands


def _save_port(hands: Hands, qtbot: QtBot, port: str) -> None:
    """Choose the port in the dialog by keys, watching the preview."""
    hands.push(hands.page.pane.live.settings_button)
    dialog = QApplication.activeModalWidget()
    assert isinstance(dialog, LineDialog)
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    hands.to(dialog.port)
    hands.press(Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    hands.type(port)
    hands.to(dialog.stable)
    hands.type("ST")
    qtbot.waitUntil(lambda: dialog.understood.text() == "= 4312.5 g, rests")
    assert "ST,GR,+004312.5 g" in dialog.lines.text()
    hands.push(dialog.save_button)
    hands.window.activateWindow()
    qtbot.waitUntil(hands.window.isActiveWindow)


def test_that_a_charge_is_weighed_to_the_stop_by_the_scale_itself(
    weigh_in: Hands, desk: Desk, pour: Pour, qtbot: QtBot, tmp_path: Path
) -> None:
    _save_port(weigh_in, qtbot, pour.port)
    assert desk.row("instrument", "S-2")["serial_line"] == "9600 8N1, stable ST"
    pane = weigh_in.page.pane
    qtbot.waitUntil(lambda: pane.live.listens and pane.live.live().steady)
    weigh_in.press(Qt.Key.Key_F11)
    display = next(w for w in QApplication.topLevelWidgets() if isinstance(w, BenchDisplay))
    display.activateWindow()
    qtbot.waitUntil(display.isActiveWindow)
    qtbot.waitUntil(lambda: display.present == "4312.5 g rests")
    weigh_in.press(Qt.Key.Key_Space)
    stop = read(Kind.SCALE, display.stop.replace("\u202f", "")).quantity.m_as("g")
    assert stop == pytest.approx(4312.5 - 85.05, abs=0.051)  # 3.0 oz = 85.05 g, no hose
    pour.valve()
    qtbot.waitUntil(lambda: "stop in" in display.rate)
    weigh_in.press(Qt.Key.Key_Return)  # while it still pours
    assert display.isVisible()
    assert "still moves" in display.says
    qtbot.waitUntil(lambda: pour.scale.mass_g <= stop, timeout=15_000)
    pour.valve()
    qtbot.waitUntil(lambda: display.zone is Zone.AT and display.present.endswith("rests"))
    weigh_in.press(Qt.Key.Key_Return)
    typed = weigh_in.form.typed()
    end = typed["lines"][0]["end"]  # type: ignore[index]
    assert typed["taken"] == [
        {"path": "lines[0].start", "source": "S-2", "text": "4312.5 g"},
        {"path": "lines[0].end", "source": "S-2", "text": end},
    ]
    weigh_in.window.activateWindow()
    qtbot.waitUntil(weigh_in.window.isActiveWindow)
    weigh_in.sign()
    weigh_in.page.steps.choose("weigh_in")
    assert "2 read from S-2." in weigh_in.page.pane.strip.will.text()
    entry = next(e for e in desk.reading.entries() if e.payload.get("step") == "weigh_in")
    assert entry.payload["typed"]["taken"][1]["source"] == "S-2"
    book = openpyxl.load_workbook(next(desk.export(tmp_path / "out").folder.glob("*.xlsx")))
    cells = {(row[5].value, row[7].value) for row in book["As typed"].iter_rows() if row[2].value}
    assert ("Cylinders 1: start reading", "read: S-2") in cells
    assert ("Cylinders 1: cylinder", "typed") in cells


def test_that_a_key_takes_the_reading_into_the_field_and_typing_over_it_is_typing(
    weigh_in: Hands, desk: Desk, pour: Pour, qtbot: QtBot
) -> None:
    desk.save_row(
        "instrument", "S-2", {**desk.row("instrument", "S-2"), "serial_line": str(SCALE_SETTINGS)}
    )
    plug("S-2", Plugged(pour.port))
    start = weigh_in.form.lines("lines").line_rows(0)["start"]
    weigh_in.to(start.editor, Qt.Key.Key_Backtab)
    weigh_in.type("1")
    qtbot.waitUntil(lambda: weigh_in.page.pane.live.listens)
    qtbot.waitUntil(lambda: weigh_in.page.pane.live.live().steady)
    weigh_in.press(Qt.Key.Key_F2)
    assert start.text() == "4312.5 g"
    assert start.editor.hasFocus()
    assert weigh_in.form.typed()["taken"] == [
        {"path": "lines[0].start", "source": "S-2", "text": "4312.5 g"}
    ]
    weigh_in.press(Qt.Key.Key_End)
    weigh_in.press(Qt.Key.Key_Backspace)
    weigh_in.type("kg")
    assert "taken" not in weigh_in.form.typed()
    weigh_in.press(Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
