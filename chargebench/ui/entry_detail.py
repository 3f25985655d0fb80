"""Under a list: what the chosen entry is and became; take it back, go to what corrects it."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.ledger import Entry
from chargebench.ui.correction_words import correction_words, others
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.signing import ReasonLine
from chargebench.words import say

_GO_MOST = 3  # an entry can be replaced, be a replacement and be taken back


class EntryDetail(QWidget):
    """One entry with its corrections, and the acts on it."""

    reversed = Signal(object)  # the entry taken back
    said = Signal(str)
    wanted = Signal(str)  # id of an entry to go to

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.entry: Entry | None = None
        self.words = wrapped()
        self.words.setTextFormat(Qt.TextFormat.RichText)
        self.words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.take_back = QPushButton(tr("Reverse"))
        self.take_back.setToolTip(tr("Ctrl+R: take it back by a further entry, with a reason"))
        self.go = [QPushButton() for _ in range(_GO_MOST)]
        self.reason = ReasonLine()
        self.says = wrapped(weight="refusal")
        line = QHBoxLayout()
        line.addWidget(self.words, 1)
        for number, button in enumerate(self.go):
            button.clicked.connect(lambda _, n=number: self._go_to(n))
            line.addWidget(button, 0, Qt.AlignmentFlag.AlignTop)
        line.addWidget(self.take_back, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(line)
        column.addWidget(self.says)
        column.addWidget(self.reason)
        self.take_back.clicked.connect(lambda _: self.ask())
        self._others: tuple[Entry, ...] = ()
        self.show_entry(None)

    def listen(self, page: QWidget) -> None:
        """Take back by Ctrl+R anywhere on the page this belongs to."""
        QShortcut(
            QKeySequence("Ctrl+R"),
            page,
            self._by_key,
            context=Qt.ShortcutContext.WidgetWithChildrenShortcut,
        )

    def _by_key(self) -> None:
        if self.isVisible() and not self.take_back.isHidden():
            self.ask()

    def show_entry(self, entry: Entry | None) -> None:
        """Show an entry; none hides this."""
        self.entry = entry
        self.says.hide()
        self.reason.leave()
        self.setVisible(entry is not None)
        if entry is None:
            return
        correction = self._desk.correction(entry)
        self.words.setText(tr(correction_words(entry, correction, self._name)))
        self._others = others(correction)
        for button, other in zip(self.go, (*self._others, *[None] * _GO_MOST), strict=False):
            button.setVisible(other is not None)
            if other is not None:
                button.setText(tr(say("Go to {other_number}", other_number=other.number)))
        self.take_back.setVisible(
            correction.reversed_by is None and not self._desk.why_not_reversed(entry)
        )

    def _name(self, person: str) -> str:
        return self._desk.label("person", person)

    def ask(self) -> None:
        """Ask why, in place."""
        assert self.entry is not None
        self.says.hide()
        self.reason.ask(
            say(
                "Why is entry {entry_number} taken back? It stays in the records, and a "
                "further entry reverses it.",
                entry_number=self.entry.number,
            ),
            "Record reversal",
            self._reverse,
        )

    def _reverse(self, reason: str) -> None:
        assert self.entry is not None
        entry = self.entry
        try:
            reversal = self._desk.reverse(entry.id, reason)
        except ChargebenchError as refusal:
            self.says.setText(tr(str(refusal)))
            self.says.show()
            return
        self.reason.leave()
        self.said.emit(
            say(
                "Entry {entry_number} reversed by entry {reversal_number}.",
                entry_number=entry.number,
                reversal_number=reversal.number,
            )
        )
        self.reversed.emit(entry)

    def _go_to(self, number: int) -> None:
        if number < len(self._others):
            self.wanted.emit(self._others[number].id)
