"""Hand-over in the window: what to write and where, and taking files in with progress."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QHBoxLayout,
    QLineEdit,
    QProgressDialog,
    QPushButton,
    QWidget,
)

from chargebench.desk import Desk, HandedOut
from chargebench.errors import ChargebenchError, ExportRefused
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.outgoing import Panel
from chargebench.words import say

FILES = "Job and chain files (*.json *.chain);;All files (*)"
CHAINS = "Chain files (*.chain);;All files (*)"
_SHOWN_AFTER_MS = 300


@contextmanager
def told(parent: QWidget, what: str) -> Iterator[Callable[[int, int], None]]:
    """Progress in a dialog that keeps the page from being typed in; cancelling undoes all.

    What is recorded belongs to the window's own thread, so the dialog takes the window's events
    meanwhile.
    """
    dialog = QProgressDialog(tr(what), tr("&Cancel"), 0, 0, parent)
    dialog.setWindowModality(Qt.WindowModality.WindowModal)
    dialog.setMinimumDuration(_SHOWN_AFTER_MS)
    dialog.setAutoReset(False)

    def tell(done: int, of: int) -> None:
        dialog.setMaximum(of)
        dialog.setValue(done)
        if dialog.wasCanceled():
            raise ExportRefused("Cancelled; nothing of this file was taken in.")

    try:
        yield tell
    finally:
        dialog.close()
        dialog.deleteLater()


def files_to_take(parent: QWidget) -> list[Path]:
    """The files a person chooses to take in."""
    names, _ = QFileDialog.getOpenFileNames(parent, tr("Take in files"), "", tr(FILES))
    return [Path(name) for name in names]


def file_to_begin(parent: QWidget) -> Path | None:
    """The chain file a person chooses to begin a bench with."""
    name, _ = QFileDialog.getOpenFileName(parent, tr("Join a shop"), "", tr(CHAINS))
    return Path(name) if name else None


class HandOverPanel(Panel):
    """Says what a chain file will hold and where it goes, writes it, says what to do with it."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "&Write it", parent)
        self.file = QLineEdit()
        self.file.setAccessibleName(tr("File to write"))
        self.choose = QPushButton(tr("C&hoose file…"))
        self.further = QCheckBox()
        row = QHBoxLayout()
        row.addWidget(wrapped("Into the file"))
        row.addWidget(self.file, 1)
        row.addWidget(self.choose)
        self._column.insertLayout(0, row)
        self._column.insertWidget(1, self.further)
        self.choose.clicked.connect(lambda _: self._choose())
        self.file.textChanged.connect(lambda _: self._tell())
        self.further.toggled.connect(lambda _: self._offer_file())

    def offer(self) -> None:
        """Offer to hand over as things stand now."""
        self._letter = self._desk.next_bench()
        self.further.setText(tr(say("To begin a further bench, {letter}", letter=self._letter)))
        self.further.setChecked(False)
        self._offer_file()

    def _offer_file(self) -> None:
        day, bench = self._desk.today.isoformat(), self._desk.reading.bench
        what = f"begin {self._letter}" if self.further.isChecked() else f"bench {bench}"
        folder, number = self._desk.folder, 1
        name = f"{what} {day}.chain"
        while (folder / name).exists():
            number += 1
            name = f"{what} {day} {number}.chain"
        self.file.setText(str(folder / name))

    def _path(self) -> Path:
        return Path(self.file.text().strip()).expanduser()

    def _tell(self) -> None:
        says = (
            "Will be written: every entry known here, as it was signed, with its hash. The other "
            "bench takes the file in under Records; what it has already is passed over."
        )
        if self.further.isChecked():
            says += say(
                " On the new bench's computer choose the file at the first start. "
                "Letter {letter} is then given, which is recorded; use the file on one "
                "computer only.",
                letter=self._letter,
            )
        self.says.setText(tr(says))
        self.main.setEnabled(bool(self.file.text().strip()))

    def _choose(self) -> None:
        chosen, _ = QFileDialog.getSaveFileName(
            self, tr("File to write"), self.file.text(), tr(CHAINS)
        )
        if chosen:
            self.file.setText(chosen)

    def begin(self) -> None:
        """Write."""
        path = self._path()
        try:
            if self.further.isChecked():
                self._desk.name_bench(self._letter, path)
        except ChargebenchError as refusal:
            self._refuse(str(refusal))
            return
        letter = self._letter if self.further.isChecked() else ""
        self._start(
            lambda desk, errand: desk.write_chain_file(
                path,
                for_bench=letter,
                progress=lambda done, of: errand.progress("entries written", done, of),
            ),
            self._written,
        )
        self.cancel.hide()  # a letter once given stays given

    def _written(self, handed: HandedOut) -> None:
        self.says.setText(
            tr(say("Written: {path}, {words}.", path=handed.path, words=handed.words))
        )
