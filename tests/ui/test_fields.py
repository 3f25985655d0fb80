"""Editors that are not lines of text: ticks, yes and no, choices."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import STEPS, answer
from chargebench.ui import theme
from chargebench.ui.fields import Choice, YesNo
from chargebench.ui.longtext import LongText
from chargebench.ui.ticks import TicksField
from tests.hands import focused
from tests.ui.page import Page

pytestmark = pytest.mark.usefixtures("themed")


def test_that_space_ticks_a_line_with_who_and_when(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["safety"], desk)
    page.view.focus_first()
    qtbot.keyClick(focused(), Qt.Key.Key_Space)
    ticks = page.view.typed()["ticks"]
    assert isinstance(ticks, list)
    (tick,) = ticks
    assert (tick["line"], tick["by"]) == ("fan", desk.person)
    assert answer(STEPS["safety"], page.view.typed()).ticked("ticks") == {"fan"}
    qtbot.keyClick(focused(), Qt.Key.Key_Space)
    assert "ticks" not in page.view.typed()


def test_that_a_tick_of_a_line_no_longer_asked_is_not_lost(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["safety"], desk)
    tick = {"line": "gone", "at": "2026-11-25T14:30:00+00:00", "by": "P-01"}
    page.view.put({"ticks": [tick]})
    assert isinstance(page.view.field("ticks"), TicksField)
    assert page.view.typed() == {"ticks": [tick]}


def test_that_keys_say_yes_and_no_and_take_it_back(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["close"], desk)
    row = page.view.row("resealed")
    assert isinstance(row.editor, YesNo)
    row.editor.setFocus()
    said = []
    for key in (Qt.Key.Key_Y, Qt.Key.Key_N, Qt.Key.Key_Delete):
        qtbot.keyClick(focused(), key)
        said.append(row.text())
    assert said == ["yes", "no", ""]


def test_that_letters_choose_and_the_wheel_does_not(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["recovery"], desk)
    row = page.type("how", "rel")
    assert isinstance(row.editor, Choice)
    assert row.text() == "released where the law allows"
    qtbot.keyClick(row.editor, Qt.Key.Key_Delete)
    assert row.text() == ""


def test_that_a_choice_that_is_not_offered_any_more_is_shown_as_it_was(
    qtbot: QtBot, desk: Desk
) -> None:
    page = Page(qtbot, STEPS["close"], desk)
    page.view.put({"ends": "left standing"})
    page.tell()
    assert page.view.typed() == {"ends": "left standing"}
    assert "Expected one of" in page.view.row("ends").refusal.text()


def test_that_a_long_text_shows_all_its_lines_as_it_grows(qtbot: QtBot) -> None:
    text = LongText()
    qtbot.addWidget(text)
    text.resize(30 * theme.em(), 100)
    text.show()
    low = text.height()
    text.put(
        "Valve core leaking.\nCap without gasket.\nValve left on after the last repair.\nDrier."
    )
    assert text.height() > low
    assert not text.verticalScrollBar().isVisible()
    assert text.cursorRect().height() * 4 < text.viewport().height()
    for _ in range(40):
        qtbot.keyClick(text, Qt.Key.Key_Return)
    assert text.height() < 12 * theme.em()
    assert text.verticalScrollBar().isVisible()
