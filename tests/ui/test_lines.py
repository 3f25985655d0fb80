"""Repeated groups of a form: lines added, picked by scanner, removed, brought back."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import STEPS
from chargebench.ui.fields import LineEdit
from chargebench.ui.lines import LinesField
from chargebench.ui.pick import PickEdit
from tests.hands import focused
from tests.ui.page import Page

pytestmark = pytest.mark.usefixtures("themed")


@pytest.fixture
def weigh_in(qtbot: QtBot, desk: Desk) -> Page:
    return Page(qtbot, STEPS["weigh_in"], desk)


def test_that_undo_brings_a_removed_line_back(weigh_in: Page) -> None:
    typed = {"lines": [{"cylinder": "C-014"}, {"cylinder": "C-015"}]}
    weigh_in.view.put(typed)
    first = weigh_in.view.lines("lines").line_rows(0)["start"].editor
    first.setFocus()
    held = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    weigh_in.bot.keyClick(first, Qt.Key.Key_Delete, held)
    assert weigh_in.view.typed() == {"lines": [{"cylinder": "C-015"} | _rest(weigh_in)]}
    weigh_in.bot.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    lines = weigh_in.view.typed()["lines"]
    assert [line["cylinder"] for line in lines if isinstance(line, dict)] == ["C-014", "C-015"]


def _rest(page: Page) -> dict[str, str]:
    keys = page.view.lines("lines").line_rows(0)
    return {key: "" for key in keys if key != "cylinder"}


def test_that_a_scanned_id_and_enter_pick_the_row_and_go_on(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)
    row["cylinder"].editor.setFocus()
    weigh_in.bot.keyClicks(focused(), "c-014")
    weigh_in.bot.keyClick(focused(), Qt.Key.Key_Return)
    assert row["cylinder"].text() == "C-014"
    assert focused() is row["scale"].editor
    assert isinstance(row["cylinder"].editor, PickEdit)
    assert row["cylinder"].editor.tail() == "= R290"


def test_that_part_of_a_name_picks_the_only_row_that_has_it(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["scale"]
    row.editor.setFocus()
    weigh_in.bot.keyClicks(row.editor, "floor")
    weigh_in.bot.keyClick(row.editor, Qt.Key.Key_Tab)
    assert row.text() == "S-3"


def test_that_down_lists_the_rows_and_enter_takes_one(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["scale"]
    row.editor.setFocus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return):
        weigh_in.bot.keyClick(row.editor, key)
    assert row.text() == "S-3"


def test_that_an_id_no_row_has_is_refused_and_kept(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["cylinder"]
    row.editor.setFocus()
    weigh_in.bot.keyClicks(row.editor, "C-999")
    weigh_in.view.row("remarks").editor.setFocus()
    weigh_in.tell()
    assert row.text() == "C-999"
    assert "Expected an id of the cylinder register" in row.refusal.text()


def test_that_a_line_shows_its_own_values_and_refusals(weigh_in: Page) -> None:
    weigh_in.view.put({"lines": [{"start": "9 lb 8.1 oz"}, {"start": "warm"}]})
    weigh_in.tell()
    first, second = (weigh_in.view.lines("lines").line_rows(n)["start"] for n in (0, 1))
    # 9 lb 8.1 oz = 152.1 oz x 28.349 523 125 g (NIST SP 811, B.8) = 4311.96 g
    assert isinstance(first.editor, LineEdit)
    assert first.editor.tail() == "= 4.3120 kg"
    assert first.refusal.isHidden()
    assert "scale reading" in second.refusal.text()


def test_that_a_decay_table_grows_as_one_types_and_drops_blank_lines(
    qtbot: QtBot, desk: Desk
) -> None:
    page = Page(qtbot, STEPS["evacuation"], desk)
    table = page.view.field("decay")
    assert isinstance(table, LinesField)
    at = table.line_rows(0)["at"].editor
    at.setFocus()
    for text in ("5 min", "420 micron", "10 min", "440 micron"):
        qtbot.keyClicks(focused(), text)
        qtbot.keyClick(focused(), Qt.Key.Key_Return)
    assert page.view.typed()["decay"] == [
        {"at": "5 min", "reading": "420 micron"},
        {"at": "10 min", "reading": "440 micron"},
    ]
