"""Readings of a test from a file or the clipboard, shown as understood before they are added."""

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
    QHBoxLayout,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.errors import ReadingRefused
from chargebench.steps.form import TypedLine
from chargebench.steps.series import lines_from_file, lines_from_text
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.units import Kind
from chargebench.words import joined, say

_FIRST = 3  # lines shown from the start, beside the last
_THERE_ALREADY = "There are readings already. Take their lines out of the form, then add a series."


class Series(QWidget):
    """Paste, file or drop; then what was understood, and two buttons: add it, or leave it."""

    wanted = Signal(list, str)  # lines, where they are from
    said = Signal(str)  # why there is nothing to add

    def __init__(self, free: Callable[[], bool], *, third: Kind | None = None) -> None:
        super().__init__()
        self._third = third  # what a third column may hold
        self._free = free  # whether a series may come in
        self._lines: list[TypedLine] = []
        self._source = ""
        self.paste = QPushButton(tr("&Paste"))
        self.paste.setToolTip(tr("Two columns from the clipboard: time and reading, with units."))
        self.file = QPushButton(tr("From &file…"))
        self.file.setToolTip(tr("A text file of two columns; it can be dropped here, too."))
        self.understood = wrapped()
        self.add = QPushButton(tr("Add these readings"))
        self.add.setProperty("weight", "main")
        self.leave_button = QPushButton(tr("Leave them"))
        self._preview = QWidget()
        top, below = QHBoxLayout(), QHBoxLayout()
        for line, buttons in (
            (top, (self.paste, self.file)),
            (below, (self.add, self.leave_button)),
        ):
            line.setContentsMargins(0, 0, 0, 0)
            for button in buttons:
                line.addWidget(button)
            line.addStretch(1)
        preview = QVBoxLayout(self._preview)
        preview.setContentsMargins(0, 0, 0, 0)
        preview.addWidget(self.understood)
        preview.addLayout(below)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(top)
        column.addWidget(self._preview)
        self._preview.hide()
        self.setAcceptDrops(True)
        self.paste.clicked.connect(lambda _: self.take_clipboard())
        self.file.clicked.connect(lambda _: self._choose_file())
        self.add.clicked.connect(lambda _: self._add())
        self.leave_button.clicked.connect(lambda _: self.leave())

    def take_clipboard(self) -> None:
        """Look at the clipboard's two columns."""
        text = QApplication.clipboard().text()
        self._look(lambda: self._read(text), "pasted")

    def take_file(self, path: Path) -> None:
        """Look at a two-column text file."""
        self._look(
            lambda: lines_from_file(path, third=self._third), say("file {path}", path=path.name)
        )

    def _read(self, text: str) -> tuple[TypedLine, ...]:
        return lines_from_text(text, third=self._third)

    def leave(self) -> None:
        """Put the preview away."""
        self._lines = []
        self._preview.hide()

    def _choose_file(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self,
            tr("Readings from a file"),
            "",
            tr("Two columns (*.txt *.csv *.tsv *.log);;All files (*)"),
        )
        if name:
            self.take_file(Path(name))

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:  # noqa: N802 - Qt's name
        """A file or text may be dropped here."""
        if event.mimeData().hasUrls() or event.mimeData().hasText():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:  # noqa: N802 - Qt's name
        """Look at what is dropped."""
        dropped = event.mimeData()
        files = [url.toLocalFile() for url in dropped.urls() if url.isLocalFile()]
        if files:
            self.take_file(Path(files[0]))
        else:
            text = dropped.text()
            self._look(lambda: self._read(text), "dropped")
        event.acceptProposedAction()

    def _look(self, lines: Callable[[], Sequence[TypedLine]], source: str) -> None:
        self.leave()
        try:
            found = lines()
        except ReadingRefused as refusal:
            self.said.emit(str(refusal))
            return
        if not self._free():
            self.said.emit(_THERE_ALREADY)
            return
        self._lines, self._source = list(found), source
        self.understood.setText(tr(joined("\n", _understood(found, source))))
        self._preview.show()
        self.add.setFocus()

    def _add(self) -> None:
        lines, source = self._lines, self._source
        self.leave()
        if self._free():  # none was typed while the preview stood open
            self.wanted.emit(lines, source)
        else:
            self.said.emit(_THERE_ALREADY)


def _understood(lines: Sequence[TypedLine], source: str) -> list[str]:
    rows = [f"{number}.  {_row(line)}" for number, line in enumerate(lines[:_FIRST], 1)]
    if len(lines) > _FIRST:
        rows += ["…"] * (len(lines) > _FIRST + 1) + [f"{len(lines)}.  {_row(lines[-1])}"]
    return [say("Understood {count} readings ({source}):", count=len(lines), source=source), *rows]


def _row(line: TypedLine) -> str:
    parts = (line["at"], line["reading"], line.get("temperature", ""))
    return "   ".join(part for part in parts if part)
