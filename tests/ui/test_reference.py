"""The reference window: asked, turned, looked up by key from a job and from Stock, printed."""

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.printing import PrintDialog
from chargebench.ui.reference import CHART, KNOWN, Reference
from chargebench.ui.reference_chart import Axis, axes
from chargebench.ui.stock import StockArea
from chargebench.ui.window import MainWindow
from tests.hands import CTRL, Hands, focused


def opened(window: MainWindow, qtbot: QtBot) -> Reference:
    made = window.findChildren(Reference)[-1]
    qtbot.waitUntil(made.isActiveWindow)
    return made


@pytest.fixture
def reference(hands: Hands, qtbot: QtBot) -> Reference:
    hands.window.show_reference("R290")
    return opened(hands.window, qtbot)


def test_that_f7_looks_up_the_refrigerant_of_the_open_job(at_job: Hands, qtbot: QtBot) -> None:
    at_job.press(Qt.Key.Key_F7)
    made = opened(at_job.window, qtbot)
    assert made.table is not None
    assert (made.table.refrigerant, made.windowTitle()) == ("R290", "Reference: R290")
    at_job.press(Qt.Key.Key_F7)
    qtbot.waitUntil(lambda: not at_job.window.findChildren(Reference))


def test_that_stock_looks_up_the_refrigerant_of_the_chosen_cylinder(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    desk.save_row(
        "cylinder", "C-001", {"refrigerant": "R449A", "contents": "new", "refillable": "no"}
    )
    hands.press(Qt.Key.Key_2, Qt.KeyboardModifier.AltModifier)
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    hands.press(Qt.Key.Key_E, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: bool(hands.window.findChildren(Reference)))
    assert opened(hands.window, qtbot).windowTitle() == "Reference: R449A"


def test_that_what_is_typed_is_worked_out(reference: Reference, hands: Hands, qtbot: QtBot) -> None:
    editor = reference.forms[reference.by].row("refrigerant").editor
    assert focused() is editor
    hands.press(Qt.Key.Key_A, CTRL)
    hands.type("R134a", then=Qt.Key.Key_Return)
    for text in ("0 °C", "10 °C", "5 K"):
        hands.press(Qt.Key.Key_A, CTRL)
        hands.type(text, then=Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: reference.windowTitle() == "Reference: R134a")
    qtbot.waitUntil(lambda: [row[0] for row in reference.rows.rows] == ["0.0", "5.0", "10.0"])
    assert "R134a: from" in reference.chart.accessibleDescription()


def test_that_what_is_asked_badly_is_said_and_the_old_table_stays(
    reference: Reference, hands: Hands, qtbot: QtBot
) -> None:
    before = reference.rows.rows
    reference.forms[reference.by].row("step").editor.setFocus()
    hands.press(Qt.Key.Key_A, CTRL)
    hands.type("0 K")
    qtbot.waitUntil(lambda: "Expected a step above zero" in reference.refusal.text())
    hands.press(Qt.Key.Key_A, CTRL)
    hands.type("5 psig")
    qtbot.waitUntil(lambda: "marked fields" in reference.refusal.text())
    assert reference.rows.rows == before


def test_that_turning_to_pressure_keeps_refrigerant_and_units(
    reference: Reference, hands: Hands, qtbot: QtBot
) -> None:
    reference.forms[reference.by].type_over({"refrigerant": "R32", "temperature": "°F"})
    hands.press(Qt.Key.Key_R, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: reference.by == "pressure")
    assert reference.table is not None
    assert reference.table.refrigerant == "R32"
    assert reference.table.heads[:2] == ("Pressure [bar(g)]", "Bubble [°F]")


def test_that_estimated_pair_data_is_said(reference: Reference, qtbot: QtBot) -> None:
    assert "Estimated" not in reference.says.text()
    reference.show_refrigerant("R438A")
    qtbot.waitUntil(lambda: "Estimated pair data" in reference.says.text())
    reference.show_view(KNOWN)
    assert any("CoolProp" in fact.value for fact in reference.facts)


def test_that_the_chart_is_drawn(reference: Reference, qapp: QApplication) -> None:
    reference.show_view(CHART)
    qapp.processEvents()
    picture = reference.chart.grab().toImage()
    colours = {
        picture.pixel(x, y) for x in range(0, picture.width(), 3) for y in range(picture.height())
    }
    assert len(colours) > 3  # ground, grid, curve, words


def test_that_ticks_are_round_and_inside() -> None:
    assert Axis(-50, 60).ticks() == [-40, -20, 0, 20, 40, 60]
    assert Axis(0.3, 30, powers=True).ticks() == [0.5, 1, 2, 5, 10, 20]
    assert Axis(1, 100, powers=True).share(10) == pytest.approx(0.5)


def test_that_a_single_row_has_no_chart(reference: Reference, qtbot: QtBot) -> None:
    reference.forms[reference.by].type_over({"low": "0 °C", "high": "0 °C"})
    qtbot.waitUntil(lambda: len(reference.rows.rows) == 1)
    assert reference.table is not None
    assert axes(reference.table) is None
    assert not reference.chart.grab().isNull()


# ISO 216: A4 is 210 x 297 mm. ANSI Y14.1: Letter is 8.5 x 11 in. A point is 1/72 in.
@pytest.mark.parametrize(("paper", "points"), [("A4", (595.3, 841.9)), ("Letter", (612, 792))])
def test_that_the_reference_is_printed_on_both_papers(
    reference: Reference, hands: Hands, qtbot: QtBot, tmp_path: Path, paper: str, points: object
) -> None:
    hands.press(Qt.Key.Key_P, CTRL)
    qtbot.waitUntil(lambda: bool(reference.findChildren(PrintDialog)))
    dialog = reference.findChild(PrintDialog)
    assert dialog is not None
    dialog.paper.setCurrentText(paper)
    qtbot.waitUntil(lambda: dialog.preview.pageCount() > 0)
    dialog.save(tmp_path / "r.pdf")
    assert "Saved" in dialog.says.text()
    pages = PdfReader(tmp_path / "r.pdf").pages
    box = pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx(points, abs=1)
    text = " ".join(" ".join(page.extract_text().split()) for page in pages)
    for words in ("R290: saturation", "Larkmoor Cold", "Safety class", "60.0", "CoolProp 8"):
        assert words in text
    assert len(pages) == dialog.preview.pageCount()
    dialog.reject()


def test_that_a_pdf_that_can_not_be_written_is_said(
    reference: Reference, qtbot: QtBot, tmp_path: Path
) -> None:
    reference.show_print()
    dialog = reference.findChild(PrintDialog)
    assert dialog is not None
    dialog.save(tmp_path)
    assert "could not be written" in dialog.says.text()
    dialog.reject()
    qtbot.waitUntil(lambda: not reference.findChildren(PrintDialog))


def test_that_the_window_has_the_keys_again_when_the_reference_goes(
    at_job: Hands, qtbot: QtBot
) -> None:
    at_job.press(Qt.Key.Key_F7)
    opened(at_job.window, qtbot)
    at_job.press(Qt.Key.Key_F7)
    qtbot.waitUntil(at_job.window.isActiveWindow)
