"""Where a shop can not be opened, or is to go back: what happened, and what can be done."""

from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QThread, Signal
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.errors import ChargebenchError
from chargebench.ledger import Kept, Rescued, going_back, kept, rescue
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.rowtable import Column, RowModel, RowView
from chargebench.ui.stock_words import moment
from chargebench.ui.turning import scrolled
from chargebench.words import joined, say

_NO_BACKUP = "There is no backup beside this file."
_RESCUE_SAYS = (
    "Or bring every entry that can be read, here or in a backup, into a new file. This file is "
    "only read."
)


class _Work(QThread):
    """One piece of work on files, beside the window."""

    done = Signal(object)
    refused = Signal(str)

    def __init__(self, work: Callable[[], object], parent: QWidget) -> None:
        super().__init__(parent)
        self._work = work

    def run(self) -> None:
        """Work, on the thread."""
        try:
            self.done.emit(self._work())
        except ChargebenchError as refusal:
            self.refused.emit(str(refusal))


class TroublePage(QWidget):
    """What can be done with a shop file and its backups."""

    again = Signal()  # open it, as it is now
    back_to_work = Signal()
    restore_wanted = Signal(object)  # the copy to go back to

    def __init__(self, shop: Path, says: str = "", parent: QWidget | None = None) -> None:
        """Without words of trouble the shop is open and only offers its backups."""
        super().__init__(parent)
        self._shop = shop
        self._trouble = bool(says)
        self._work: _Work | None = None
        self.rescued: Rescued | None = None
        self.says = wrapped(says or say("Backups of {shop}.", shop=shop), "refusal" if says else "")
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        self.model: RowModel[Kept] = RowModel(_columns())
        self.table = RowView(self.model, "Backups, newest first")
        self.leaves = wrapped()
        self.go_back = QPushButton(tr("&Go back to this backup"))
        self.other = QPushButton(tr("Another &copy\u2026"))
        self.first = QPushButton(tr("&Try again" if says else "\u2039 &Records"))
        self.rescue = QPushButton(tr("&Rescue into a new file\u2026"))
        self.found = wrapped()
        self.use = QPushButton(tr("&Work in the rescued file"))
        self.use.hide()
        self._copy: Path | None = None
        self._build()
        self.read()

    def _build(self) -> None:
        if self._trouble:
            self.first.setProperty("weight", "main")
        acts, saved = QHBoxLayout(), QHBoxLayout()
        for row, buttons in ((acts, (self.go_back, self.other)), (saved, (self.rescue, self.use))):
            for button in buttons:
                row.addWidget(button)
            row.addStretch(1)
        head = QHBoxLayout()
        head.addWidget(self.first)
        head.addStretch(1)
        title = "This shop can not be opened" if self._trouble else "Go back to a backup"
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (wrapped(title, "title"), self.says, head, self.table, self.leaves, acts,
                     wrapped(_RESCUE_SAYS), saved, self.found, self.refusal):  # fmt: skip
            if isinstance(part, QHBoxLayout):
                column.addLayout(part)
            else:
                column.addWidget(part)
        column.addStretch(1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(page))
        self.first.clicked.connect(
            lambda _: (self.again if self._trouble else self.back_to_work).emit()
        )
        self.table.selectionModel().currentRowChanged.connect(lambda *_: self._chosen())
        self.table.opened.connect(lambda _: self._chosen())
        self.go_back.clicked.connect(lambda _: self.restore_wanted.emit(self._copy))
        self.other.clicked.connect(lambda _: self._choose())
        self.rescue.clicked.connect(lambda _: self._ask_rescue())
        self.use.clicked.connect(lambda _: self._use())

    def read(self) -> None:
        """Read which backups there are."""
        self.model.show_rows(kept(self._shop))
        any_kept = bool(self.model.rowCount())
        self.table.setVisible(any_kept)
        self.leaves.setText(tr(_NO_BACKUP))
        self.go_back.setEnabled(any_kept)
        if any_kept:
            self.table.selectRow(0)

    def _chosen(self) -> None:
        row = self.table.currentIndex().row()
        if 0 <= row < self.model.rowCount():
            self._offer(self.model.row(row).path)

    def _choose(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, tr("Go back to a copy of this shop"), str(self._shop.parent), tr("Shop files (*)")
        )
        if name:
            self._offer(Path(name))

    def _offer(self, copy: Path) -> None:
        """Say what going back to a copy leaves out; it is done by a press of its own."""
        self._copy = None
        try:
            found = going_back(self._shop, copy)
        except ChargebenchError as refusal:
            self.leaves.setText(tr(str(refusal)))
        else:
            self._copy = copy
            self.leaves.setText(
                tr(say("{copy}: {sentence}", copy=copy.name, sentence=found.sentence))
            )
        self.go_back.setEnabled(self._copy is not None)

    def _ask_rescue(self) -> None:
        new = self._shop.with_name(f"{self._shop.stem}-rescued.chargebench")
        name, _ = QFileDialog.getSaveFileName(self, tr("Rescue into a new file"), str(new))
        if name:
            self.rescue_into(Path(name))

    def rescue_into(self, new: Path) -> None:
        """Bring what can be read into a new file, beside the window."""
        if self._work is not None:
            return
        self.refusal.hide()
        self.found.setText(tr("Reading what can be read \u2026"))
        self.rescue.setEnabled(False)
        shop, now = self._shop, datetime.now(UTC)
        self._work = _Work(lambda: rescue(shop, new, now), self)
        self._work.done.connect(self._rescued)
        self._work.refused.connect(self.refuse)
        self._work.finished.connect(self._over)
        self._work.start()

    @property
    def working(self) -> bool:
        """Whether a rescue is going on."""
        return self._work is not None

    def _rescued(self, found: Rescued) -> None:
        self.rescued = found
        self.found.setText(tr(joined("\n", found.sentences)))
        self.use.show()
        self.use.setFocus()

    def _over(self) -> None:
        self._work = None
        self.rescue.setEnabled(True)

    def _use(self) -> None:
        """Put the rescued file in the shop's place; what stood there is kept aside."""
        if self.rescued is not None:
            self.restore_wanted.emit(self.rescued.path)

    def refuse(self, says: str) -> None:
        """Say why something could not be done."""
        self.found.setText("")
        self.refusal.setText(tr(says))
        self.refusal.show()

    def finish(self) -> None:
        """Wait for work on files, before the page goes."""
        if self._work is not None:
            self._work.wait()


def _columns() -> Sequence[Column[Kept]]:
    return (
        Column("Made", lambda row: moment(row.made_at)),
        Column("Entries", lambda row: f"{row.entries:,}".replace(",", " "), right=True),
        Column("Size", lambda row: say("{size:.1f} MB", size=row.size / 1000000.0), right=True),
        Column("File", lambda row: row.path.name, least=10),
    )
