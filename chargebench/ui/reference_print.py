"""The reference on paper: what is known, the chart, the table; A4 or Letter, printed or as PDF."""

from collections.abc import Sequence
from html import escape
from pathlib import Path

from PySide6.QtCore import QMarginsF, QRectF, Qt, QUrl
from PySide6.QtGui import (
    QFont,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QTextDocument,
)
from PySide6.QtPrintSupport import QPrinter, QPrinterInfo, QPrintPreviewWidget
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QFileDialog,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench import sources
from chargebench.steps.known import Known
from chargebench.steps.reference import Tabled
from chargebench.ui import theme
from chargebench.ui.reference_chart import draw_chart, paper_ink
from chargebench.ui.turning import row_of

PAPERS = {"A4": QPageSize.PageSizeId.A4, "Letter": QPageSize.PageSizeId.Letter}
_MARGIN_MM = 5  # a document adds 2 cm of its own
_CHART_PX = (520, 300)
_FINER = 4  # times a screen's pixels, so that print is sharp


def document(table: Tabled, facts: Sequence[Known], kept_by: str) -> QTextDocument:
    """The reference as a document."""
    made = QTextDocument()
    made.setDefaultFont(QFont("sans-serif", 9))
    made.addResource(QTextDocument.ResourceType.ImageResource.value, QUrl("chart"), _chart(table))
    made.setHtml(_html(table, facts, kept_by))
    return made


def _chart(table: Tabled) -> QImage:
    wide, high = (side * _FINER for side in _CHART_PX)
    image = QImage(wide, high, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    font = QFont("sans-serif")
    font.setPixelSize(11 * _FINER)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    draw_chart(painter, QRectF(0, 0, wide, high), table, paper_ink(font))
    painter.end()
    return image


def _html(table: Tabled, facts: Sequence[Known], kept_by: str) -> str:
    known = "".join(
        f"<tr><td>{escape(each.what)}</td><td>{escape(each.value)}</td>"
        f"<td><small>{escape(cited(each))}</small></td></tr>"
        for each in facts
    )
    heads = "".join(f'<th align="right">{escape(head)}</th>' for head in table.heads)
    rows = "".join(
        "<tr>" + "".join(f'<td align="right">{cell}</td>' for cell in row) + "</tr>"
        for row in table.rows
    )
    wide, high = _CHART_PX
    says = "".join(f"<p>{escape(each)}</p>" for each in table.says)
    return (
        f"<h2>{escape(table.refrigerant)}: saturation</h2><p><small>{escape(kept_by)}</small></p>"
        f'<p><img src="chart" width="{wide}" height="{high}"></p>{says}'
        f'<table cellpadding="2" width="100%"><thead><tr>{heads}</tr></thead>{rows}</table>'
        f'<h3>What is known</h3><table cellpadding="2" width="100%">{known}</table>'
    )


def cited(fact: Known) -> str:
    """Where a fact is from, in full, and whether it was checked there."""
    if not fact.source:
        return ""
    key, comma, place = fact.source.partition(",")
    cite = f"{sources.cite(key)}{comma}{place}"
    return f"{cite} ({sources.MARKS_SAID[fact.mark]})" if fact.mark == "MEMORY" else cite


def layout_of(paper: str) -> QPageLayout:
    """Portrait, with margins every printer can keep."""
    edge = QMarginsF(_MARGIN_MM, _MARGIN_MM, _MARGIN_MM, _MARGIN_MM)
    return QPageLayout(
        QPageSize(PAPERS[paper]),
        QPageLayout.Orientation.Portrait,
        edge,
        QPageLayout.Unit.Millimeter,
    )


def write_pdf(printed: QTextDocument, path: Path, paper: str) -> None:
    """Write a document as PDF."""
    writer = QPdfWriter(str(path))
    writer.setPageLayout(layout_of(paper))
    writer.setTitle(printed.metaInformation(QTextDocument.MetaInformation.DocumentTitle))
    printed.print_(writer)


class PrintDialog(QDialog):
    """What will be printed, on which paper; then to a printer or into a PDF."""

    def __init__(self, printed: QTextDocument, name: str, paper: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._printed = printed
        self._name = name
        self.setWindowTitle(f"Print {name}")
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        self.paper = QComboBox()
        self.paper.addItems(list(PAPERS))
        self.paper.setCurrentText(paper)
        label = QLabel("Pa&per")
        label.setBuddy(self.paper)
        self.printer.setPageLayout(layout_of(paper))
        self.preview = QPrintPreviewWidget(self.printer)
        self.preview.paintRequested.connect(self._printed.print_)
        self.pdf = QPushButton("&Save as PDF…")
        self.to_printer = QPushButton("Print &now")
        self.to_printer.setEnabled(bool(QPrinterInfo.availablePrinterNames()))
        self.to_printer.setToolTip("" if self.to_printer.isEnabled() else "No printer is set up.")
        self.close_button = QPushButton("&Close")
        self.says = QLabel()
        column = QVBoxLayout(self)
        column.addWidget(row_of(label, self.paper, self.pdf, self.to_printer, self.close_button))
        column.addWidget(self.says)
        column.addWidget(self.preview, 1)
        for button in (self.pdf, self.to_printer, self.close_button):
            button.setAutoDefault(False)
        self.paper.currentTextChanged.connect(self._on_paper)
        self.pdf.clicked.connect(lambda _: self._ask_pdf())
        self.to_printer.clicked.connect(lambda _: self.preview.print_())
        self.close_button.clicked.connect(lambda _: self.reject())
        room = parent.window().size()
        self.resize(min(theme.em() * 46, room.width()), min(theme.em() * 44, room.height() - 40))

    def _on_paper(self, paper: str) -> None:
        self.printer.setPageLayout(layout_of(paper))
        self.preview.updatePreview()

    def _ask_pdf(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self, "Save as PDF", f"{self._name}.pdf", "PDF (*.pdf)"
        )
        if path:
            self.save(Path(path))

    def save(self, path: Path) -> None:
        """Write the PDF on the paper chosen."""
        try:
            path.open("ab").close()
        except OSError as problem:
            self.says.setText(f"Expected a file that can be written; {problem}.")
            return
        write_pdf(self._printed, path, self.paper.currentText())
        self.says.setText(f"Saved: {path}.")
