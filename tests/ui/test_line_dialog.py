"""The settings of an instrument's line: a preview that lives, kept where each part belongs."""

import os
from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.bench_ports import Plugged, plug, plugged
from chargebench.ui.line_dialog import LineDialog
from tests.instruments.terminals import Terminal, pause

pytestmark = pytest.mark.skipif(not hasattr(os, "openpty"), reason="no pseudo-terminals here")


@pytest.fixture
def terminal() -> Iterator[Terminal]:
    with Terminal() as made:
        yield made
    plug("S-2", None)


@pytest.fixture
def dialog(qtbot: QtBot, desk: Desk, terminal: Terminal) -> Iterator[LineDialog]:
    window = QWidget()
    window.resize(1024, 700)
    qtbot.addWidget(window)
    made = LineDialog(desk, "S-2", window)
    made.port.setEditText(terminal.port)
    made.show()
    made.refresh()
    pause(0.3)  # the port is open, and silent for long enough
    yield made
    made.reject()


def test_that_the_preview_says_what_is_missing_and_follows_each_choice(
    qtbot: QtBot, dialog: LineDialog, terminal: Terminal
) -> None:
    def sends(text: str, shown: str) -> None:
        def seen() -> bool:
            terminal.say(text)
            return shown in dialog.understood.text()

        qtbot.waitUntil(seen, timeout=8_000)

    sends("US,+  4,312\r\n", "say in the settings which unit")
    assert "US,+  4,312" in dialog.lines.text()
    dialog.unit.put("kg")
    sends("US,+  4,312\r\n", "the comma is the decimal mark")
    dialog.mark.setCurrentText("comma")
    dialog.moving.put("US")
    sends("US,+  4,312\r\n", "= 4.312 kg, moves")
    sends("ST,+  4,312\r\n", "= 4.312 kg, rests")


def test_that_saving_keeps_the_port_here_and_the_rest_in_the_register(
    qtbot: QtBot, dialog: LineDialog, desk: Desk, terminal: Terminal
) -> None:
    dialog.baud.setCurrentText("2400")
    dialog.bits.setCurrentText("7")
    dialog.parity.setCurrentText("even")
    dialog.stable.put("S")
    dialog.save()
    assert desk.row("instrument", "S-2")["serial_line"] == "2400 7E1, stable S"
    changed = next(e for e in desk.reading.entries() if "serial_line" in str(e.payload))
    assert "2400 7E1, stable S" in str(changed.payload)
    assert plugged("S-2") == Plugged(terminal.port)
    assert "/" not in desk.row("instrument", "S-2")["serial_line"]
    qtbot.waitUntil(lambda: not dialog.isVisible())


def test_that_a_mark_that_can_not_be_one_is_refused_in_the_dialog(
    dialog: LineDialog, desk: Desk
) -> None:
    dialog.stable.put("S, T")
    dialog.save()
    assert "Expected after the speed" in dialog.says.text()
    assert "serial_line" not in desk.row("instrument", "S-2")


def test_that_the_practice_scale_is_a_press_away(qtbot: QtBot, dialog: LineDialog) -> None:
    dialog.practice.click()
    qtbot.waitUntil(lambda: dialog.understood.text() == "= 4312.5 g, rests", timeout=8_000)
