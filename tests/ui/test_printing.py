"""Printing from the window by keys: preview, paper, PDF; of a job, a cylinder, the records."""

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter
from PySide6.QtPrintSupport import QPrinter
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk, Filters
from chargebench.reports.drawn import Words
from chargebench.ui import papers
from chargebench.ui.paper_painter import paint_page
from chargebench.ui.period import Period
from chargebench.ui.printing import PrintDialog
from chargebench.ui.records import RecordsArea
from chargebench.ui.stock import StockArea
from tests.hands import CTRL, Hands
from tests.reports.papers import POINTS, boxes, faults, text_of
from tests.reports.qr import read_label

ALT = Qt.KeyboardModifier.AltModifier


def dialog(hands: Hands, qtbot: QtBot) -> PrintDialog:
    qtbot.waitUntil(lambda: bool(hands.window.findChildren(PrintDialog)))
    made = hands.window.findChildren(PrintDialog)[-1]
    qtbot.waitUntil(made.isActiveWindow)
    qtbot.waitUntil(lambda: made.preview.pageCount() > 0)
    return made


def choices(made: PrintDialog) -> list[str]:
    return [made.what.itemText(place) for place in range(made.what.count())]


def close(hands: Hands, qtbot: QtBot) -> None:
    hands.press(Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not hands.window.findChildren(PrintDialog))
    qtbot.waitUntil(hands.window.isActiveWindow)


def choose(made: PrintDialog, words: str) -> None:
    made.what.setCurrentText(words)
    assert made.what.currentText() == words


def saved(made: PrintDialog, path: Path) -> str:
    made.save(path)
    assert made.says.text() == f"Saved: {path}."
    assert faults(path) == []
    return text_of(path)


@pytest.mark.parametrize("paper", POINTS)
def test_that_ctrl_p_prints_report_and_checklist_of_the_job(
    at_job: Hands, qtbot: QtBot, tmp_path: Path, paper: str
) -> None:
    at_job.press(Qt.Key.Key_P, CTRL)
    made = dialog(at_job, qtbot)
    assert choices(made) == ["Job report", "Handling checklist"]
    made.paper.setCurrentText(paper)
    text = saved(made, tmp_path / "report.pdf")
    assert "Bakery freezer" in text
    assert "No findings are signed yet." in text
    (box,) = boxes(tmp_path / "report.pdf")
    assert box == pytest.approx(POINTS[paper], abs=0.1)
    choose(made, "Handling checklist")
    assert "NOT TICKED" in saved(made, tmp_path / "checklist.pdf")
    assert made.preview.pageCount() == len(made.drawn.pages)
    close(at_job, qtbot)


def test_that_what_is_typed_is_kept_before_the_report_is_made(
    at_job: Hands, desk: Desk, job: str, qtbot: QtBot
) -> None:
    at_job.window.bench.job_page().open(job, "findings")
    at_job.window.bench.job_page().pane.form().row("found").editor.setFocus()
    at_job.type("valve core leaking")
    at_job.press(Qt.Key.Key_P, CTRL)
    dialog(at_job, qtbot)
    assert desk.typed(job, "findings")["found"] == "valve core leaking"
    close(at_job, qtbot)


def test_that_the_label_of_the_chosen_cylinder_is_printed_and_scanned(
    hands: Hands, qtbot: QtBot, tmp_path: Path
) -> None:
    hands.press(Qt.Key.Key_2, ALT)
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    hands.press(Qt.Key.Key_P, CTRL)
    made = dialog(hands, qtbot)
    assert choices(made) == ["Label", "Label on a sheet"]
    saved(made, tmp_path / "label.pdf")
    close(hands, qtbot)
    # A scanner types what the code holds and presses Enter.
    hands.press(Qt.Key.Key_F, CTRL)
    hands.type(read_label(tmp_path / "label.pdf"), then=Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: stock.currentIndex() == 1)
    assert stock.page.cylinder == "C-014"
    hands.press(Qt.Key.Key_P, CTRL)
    assert "C-014" in saved(dialog(hands, qtbot), tmp_path / "again.pdf")
    close(hands, qtbot)


def test_that_a_list_of_cylinders_prints_all_its_labels(
    hands: Hands, desk: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    desk.save_row(
        "cylinder", "C-020", {"refrigerant": "R449A", "contents": "new", "refillable": "no"}
    )
    hands.press(Qt.Key.Key_2, ALT)
    hands.press(Qt.Key.Key_B, ALT)
    made = dialog(hands, qtbot)
    choose(made, "Labels of all that are listed")
    text = saved(made, tmp_path / "labels.pdf")
    assert "C-014" in text
    assert "C-020" in text
    close(hands, qtbot)


def test_that_a_cylinder_handed_over_prints_its_statement(
    hands: Hands, desk: Desk, qtbot: QtBot, tmp_path: Path
) -> None:
    desk.act(
        "return",
        {
            "cylinder": "C-014",
            "to": "reclaimer",
            "mass": "1.5 kg",
            "receiver": "Holm Reclaim, 4 Wharf Road",
            "document": "HR-77",
        },
    )
    hands.window.open_cylinder("C-014")
    hands.press(Qt.Key.Key_P, CTRL)
    made = dialog(hands, qtbot)
    choose(made, "Statement of the last hand-over")
    text = saved(made, tmp_path / "hand-over.pdf")
    for words in ("to a reclaimer", "Holm Reclaim, 4 Wharf Road", "HR-77", "1.500 kg"):
        assert words in text
    close(hands, qtbot)


def test_that_the_usage_log_is_printed_as_it_stands(
    hands: Hands, qtbot: QtBot, tmp_path: Path
) -> None:
    hands.press(Qt.Key.Key_3, ALT)
    records = hands.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    hands.press(Qt.Key.Key_P, CTRL)
    made = dialog(hands, qtbot)
    text = saved(made, tmp_path / "usage.pdf")
    for words in ("Usage log", "Totals", "supplier", "C-014 R290", "4 kg", "4.000 kg"):
        assert words in text
    close(hands, qtbot)


def test_that_of_a_long_log_the_newest_lines_are_printed_and_the_rest_is_counted(
    desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    for _ in range(7):
        desk.act("receive", {"cylinder": "C-014", "mass": "10 g"})
    monkeypatch.setattr(papers, "LINES_MOST", 5)
    monkeypatch.setattr(papers, "PAGE", 3)
    (paper,) = papers.of_usage(desk, Period(), Filters())
    words = " ".join(m.text for m in paper.drawn("A4").pages[0] if isinstance(m, Words))
    assert "The newest 5 lines; 3 older ones are not printed." in words


def test_that_the_preview_shows_what_the_pdf_holds(at_job: Hands, qtbot: QtBot) -> None:
    at_job.press(Qt.Key.Key_P, CTRL)
    made = dialog(at_job, qtbot)
    made.preview.grab()
    drawn = made.drawn
    dots = 8  # a millimetre
    image = QImage(
        round(drawn.width * dots), round(drawn.height * dots), QImage.Format.Format_RGB32
    )
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    paint_page(drawn.pages[0], painter, dots)
    painter.end()
    for mark in drawn.pages[0]:
        if isinstance(mark, Words) and mark.text.strip():
            assert _inked(image, mark, dots), mark
    margin = [image.pixelColor(x, y).lightness() for x in range(5, 100) for y in (20, 50)]
    assert min(margin) == 255
    close(at_job, qtbot)


def _inked(image: QImage, mark: Words, dots: int) -> bool:
    top, bottom = round((mark.y - mark.size * 0.25) * dots), round(mark.y * dots)
    left = round(mark.x * dots)
    return any(
        image.pixelColor(x, y).lightness() < 200
        for x in range(left, left + 24)
        for y in range(top, bottom)
    )


def test_that_a_folder_that_can_not_be_written_is_said(
    at_job: Hands, qtbot: QtBot, tmp_path: Path
) -> None:
    at_job.press(Qt.Key.Key_P, CTRL)
    made = dialog(at_job, qtbot)
    made.save(tmp_path / "missing" / "report.pdf")
    assert "could not be written" in made.says.text()
    close(at_job, qtbot)


@pytest.mark.parametrize("paper", POINTS)
def test_that_the_printer_gets_every_page_in_its_size(
    at_job: Hands, qtbot: QtBot, tmp_path: Path, paper: str
) -> None:
    """Qt's own PDF printer stands in for one of paper: the same painter, pages and sizes."""
    at_job.press(Qt.Key.Key_P, CTRL)
    made = dialog(at_job, qtbot)
    made.paper.setCurrentText(paper)
    choose(made, "Handling checklist")
    made.printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    made.printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    made.preview.print_()
    pages = PdfReader(tmp_path / "printed.pdf").pages
    assert len(pages) == len(made.drawn.pages) > 1
    (box,) = boxes(tmp_path / "printed.pdf")
    assert box == pytest.approx(POINTS[paper], abs=1)
    assert "NOT TICKED" in text_of(tmp_path / "printed.pdf")
    close(at_job, qtbot)
