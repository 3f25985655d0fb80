"""Corrections by keys: from a job's step, the list of entries and a cylinder's history."""

from typing import Any

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import ENTRIES, USAGE
from chargebench.ui.rowtable import RowModel
from chargebench.ui.stock import StockArea
from tests.hands import ALT, CTRL, Hands

NAMEPLATE = {"refrigerant": "R290", "charge": "85 g"}


def _struck(model: RowModel[Any]) -> list[str]:
    """What each struck row says it was."""
    rows = range(model.rowCount())
    return [
        str(model.data(model.index(row, 1)))
        for row in rows
        if (font := model.data(model.index(row, 0), Qt.ItemDataRole.FontRole)) and font.strikeOut()
    ]


def _to_reason(qtbot: QtBot, hands: Hands, reason: str) -> None:
    hands.press(Qt.Key.Key_R, CTRL)
    hands.type(reason, then=Qt.Key.Key_Return)
    qtbot.waitUntil(hands.window.isActiveWindow)


@pytest.fixture
def at_signed(at_job: Hands, desk: Desk, job: str) -> Hands:
    """At a nameplate that is signed."""
    desk.sign(job, "nameplate", NAMEPLATE)
    at_job.page.open(job, "nameplate")
    return at_job


def test_that_a_step_is_reversed_and_replaced_and_shows_both(
    qtbot: QtBot, at_signed: Hands, desk: Desk, job: str
) -> None:
    first = desk.job(job).steps[0]
    _to_reason(qtbot, at_signed, "wrong plate read")
    assert desk.job(job).steps[0].state == "open"
    before = at_signed.page.pane.strip.before
    assert f"<s>Entry {first.number}," in before.text()
    assert "<b>reversed</b>" in before.text()
    assert "wrong plate read" in before.text()
    at_signed.sign()
    again = desk.job(job).steps[0]
    assert desk.entry(again.entry).payload["replaces"] == first.entry
    at_signed.page.open(job, "nameplate")
    assert at_signed.page.pane.strip.before.isVisible()
    assert "Signed by N. Okafor" in at_signed.page.pane.strip.will.text()


def test_that_a_reason_with_marks_in_it_is_shown_as_typed(qtbot: QtBot, at_signed: Hands) -> None:
    _to_reason(qtbot, at_signed, "<i>85 & 58</i> swapped")
    assert "&lt;i&gt;85 &amp; 58&lt;/i&gt; swapped" in at_signed.page.pane.strip.before.text()


@pytest.fixture
def records(at_signed: Hands) -> RecordsArea:
    """The list of entries, reached by keys, at its newest."""
    at_signed.press(Qt.Key.Key_3, ALT)
    area = at_signed.window.stack.currentWidget()
    assert isinstance(area, RecordsArea)
    area.show_view(ENTRIES)
    area.tables[ENTRIES].setFocus()
    return area


def test_that_an_entry_is_reversed_from_the_list_and_both_are_reached(
    qtbot: QtBot, at_signed: Hands, records: RecordsArea, desk: Desk, job: str
) -> None:
    signed = desk.entry(desk.job(job).steps[0].entry)
    assert f"Entry {signed.number}, step signed by N. Okafor" in records.entry.words.text()
    _to_reason(qtbot, at_signed, "wrong plate read")
    assert desk.job(job).steps[0].state == "open"
    assert _struck(records.entries) == ["step signed, reversed"]
    assert records.entry.entry == signed
    assert "wrong plate read" in records.entry.words.text()
    assert records.entry.take_back.isHidden()
    at_signed.push(records.entry.go[0])
    assert records.entry.entry is not None
    assert (records.entry.entry.kind, records.entry.entry.number) == (
        "reversal",
        signed.number + 1,
    )
    assert f"takes entry {signed.number} back: wrong plate read" in records.entry.words.text()
    at_signed.push(records.entry.go[0])
    assert records.entry.entry == signed


def test_that_an_entry_without_a_reason_stays(
    qtbot: QtBot, at_signed: Hands, records: RecordsArea, desk: Desk, job: str
) -> None:
    _to_reason(qtbot, at_signed, " ")
    assert "Expected a reason" in records.entry.says.text()
    assert desk.job(job).steps[0].state == "signed"


def test_that_a_register_entry_offers_no_reversal(at_signed: Hands, records: RecordsArea) -> None:
    at_signed.press(Qt.Key.Key_End, CTRL)
    assert records.entry.entry is not None
    assert records.entry.entry.kind == "register"
    assert records.entry.take_back.isHidden()
    at_signed.press(Qt.Key.Key_R, CTRL)
    assert records.entry.reason.isHidden()


def test_that_an_entry_of_a_closed_job_says_how_to_reach_it(
    qtbot: QtBot, at_signed: Hands, records: RecordsArea, desk: Desk, job: str
) -> None:
    for step in desk.job(job).steps[1:]:
        if step.key != "follow_up":
            desk.not_needed(job, step.key, "only looked at")
    desk.close_job(job)
    at_signed.window.notifier.changed.emit()
    signed = desk.job(job).steps[0].entry
    row = records.entries.find(lambda entry: entry.id == signed)
    records.tables[ENTRIES].selectRow(row)
    records.tables[ENTRIES].setFocus()
    _to_reason(qtbot, at_signed, "wrong plate read")
    assert "Reopen it with a reason" in records.entry.says.text()


def test_that_a_movement_is_reversed_in_its_cylinder_and_opens_to_be_mended(
    qtbot: QtBot, hands: Hands, desk: Desk
) -> None:
    hands.press(Qt.Key.Key_2, ALT)
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    stock.search.setFocus()
    hands.type("C-014", then=Qt.Key.Key_Return)
    assert "received by N. Okafor" in stock.page.entry.words.text()
    _to_reason(qtbot, hands, "a nought too many")
    assert desk.reading.balance("cylinder:C-014", "R290") == 0
    assert stock.act("receive").form.typed() == {"cylinder": "C-014", "mass": "4 kg"}
    hands.press(Qt.Key.Key_Escape)
    assert _struck(stock.page.model) == ["received, reversed"]
    assert [row.kind for row in stock.page.model.rows] == ["reversal", "received"]
    hands.press(Qt.Key.Key_Down)
    assert "a nought too many" in stock.page.entry.words.text()
    hands.push(stock.page.entry.go[0])
    assert "takes entry" in stock.page.entry.words.text()


def test_that_the_usage_log_strikes_what_was_taken_back(
    qtbot: QtBot, hands: Hands, desk: Desk
) -> None:
    received = next(entry for entry in desk.entries() if entry.kind == "received")
    desk.reverse(received.id, "a nought too many")
    hands.press(Qt.Key.Key_3, ALT)
    area = hands.window.stack.currentWidget()
    assert isinstance(area, RecordsArea)
    area.show_view(USAGE)
    qtbot.waitUntil(lambda: area.usage.rowCount() == 2)
    assert _struck(area.usage) == ["received, reversed"]
