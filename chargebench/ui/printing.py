"""One way to print: what it will look like, on which paper; then to a printer or into a PDF."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
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

from chargebench.errors import ChargebenchError
from chargebench.reports.drawn import Drawn
from chargebench.reports.page import PAPERS
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.paper_painter import layout_of, paint
from chargebench.ui.turning import Turning, row_of
from chargebench.words import say


@dataclass(slots=True)
class Paper:
    """A paper that is drawn when it is looked at, once for each size."""

    words: str
    name: str
    draw: Callable[[str], Drawn]
    _drawn: tuple[str, Drawn] | None = None

    def drawn(self, paper: str) -> Drawn:
        """The paper as drawn."""
        if self._drawn is None or self._drawn[0] != paper:
            self._drawn = (paper, self.draw(paper))
        return self._drawn[1]


class PrintDialog(QDialog):
    """What can be printed here, shown as it will be."""

    def __init__(self, papers: Sequence[Paper], paper: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._papers = tuple(papers)
        self.setWindowTitle(tr("Print"))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        self.what, self.paper = QComboBox(), QComboBox()
        self.what.addItems([tr(each.words) for each in self._papers])
        self.paper.addItems(list(PAPERS))
        self.paper.setCurrentText(paper)
        self.what.setAccessibleName(tr("What"))
        self.paper.setAccessibleName(tr("Paper"))
        self.preview = QPrintPreviewWidget(self.printer)
        self.preview.setAccessibleName(tr("Preview"))
        self.preview.setZoomMode(QPrintPreviewWidget.ZoomMode.FitToWidth)  # to be read
        self.pdf = QPushButton(tr("&Save as PDF…"))
        self.to_printer = QPushButton(tr("Print &now"))
        self.to_printer.setEnabled(bool(QPrinterInfo.availablePrinterNames()))
        self.to_printer.setToolTip(
            "" if self.to_printer.isEnabled() else tr("No printer is set up.")
        )
        self.close_button = QPushButton(tr("&Close"))
        self.says = wrapped()
        self.says.hide()
        self._build()
        self._connect()
        self.finished.connect(parent.window().activateWindow)  # the next key goes on there
        room = parent.window().size()
        self.resize(min(theme.em() * 46, room.width()), min(theme.em() * 44, room.height() - 40))
        self._fit()

    def _build(self) -> None:
        parts: list[QWidget] = []
        for words, box in (("&What", self.what), ("Pa&per", self.paper)):
            label = QLabel(tr(words))
            label.setBuddy(box)
            parts += [label, box]
        if len(self._papers) == 1:
            for part in parts[:2]:
                part.hide()
        column = QVBoxLayout(self)
        acts = row_of(self.pdf, self.to_printer, self.close_button)
        column.addWidget(Turning((row_of(*parts), acts)))
        column.addWidget(self.says)
        column.addWidget(self.preview, 1)
        for button in (self.pdf, self.to_printer, self.close_button):
            button.setAutoDefault(False)

    def _connect(self) -> None:
        self.preview.paintRequested.connect(lambda printer: paint(self.drawn, printer))
        for box in (self.what, self.paper):
            box.currentTextChanged.connect(lambda _: self._show())
        self.pdf.clicked.connect(lambda _: self._ask_pdf())
        self.to_printer.clicked.connect(lambda _: self.preview.print_())
        self.close_button.clicked.connect(lambda _: self.reject())
        QShortcut(QKeySequence("Ctrl+P"), self).activated.connect(self.to_printer.click)

    @property
    def chosen(self) -> Paper:
        """What is shown."""
        return self._papers[max(self.what.currentIndex(), 0)]

    @property
    def drawn(self) -> Drawn:
        """What is shown, on the paper chosen."""
        return self.chosen.drawn(self.paper.currentText())

    def _fit(self) -> None:
        self.printer.setPageLayout(layout_of(self.drawn))

    def _show(self) -> None:
        self._tell("")
        self._fit()
        self.preview.updatePreview()

    def _ask_pdf(self) -> None:
        path, _ = QFileDialog.getSaveFileName(
            self, tr("Save as PDF"), f"{self.chosen.name}.pdf", "PDF (*.pdf)"
        )
        if path:
            self.save(Path(path))

    def save(self, path: Path) -> None:
        """Write the PDF on the paper chosen."""
        from chargebench.reports import pdf  # half a second to load; the preview does without

        try:
            pdf.write(self.drawn, path)
        except ChargebenchError as refusal:
            self._tell(str(refusal))
            return
        self._tell(say("Saved: {path}.", path=path))

    def _tell(self, words: str) -> None:
        self.says.setText(tr(words))
        self.says.setVisible(bool(words))
