"""A register pick: type an id or part of a name, or scan; Enter takes it.

What fits is listed under the field, in the page: nothing covers what is being read.
"""

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget

from chargebench.ui import theme
from chargebench.ui.fields import LineEdit
from chargebench.ui.language import tr
from chargebench.words import say

LISTED_MOST = 40
_ROWS_SHOWN = 4


class PickEdit(LineEdit):
    """The id of a register row."""

    wants_new = Signal(str)
    taken = Signal(str)  # the id taken from what was listed

    def __init__(
        self,
        register: str,
        rows: Callable[[], Mapping[str, str]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent=parent)
        self._register = register
        self._rows = rows  # id -> label
        self._labels: Mapping[str, str] = {}
        self._first: tuple[str, ...] = ()  # ids that are listed before the others
        self.matches = QListWidget()
        self.matches.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.matches.setAccessibleName(tr(say("What fits in {register}", register=register)))
        self.matches.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.matches.hide()
        self.setPlaceholderText(tr("id or part of the name"))
        self.textEdited.connect(lambda _: self.list_matches())
        self.editingFinished.connect(self.settle)
        self.matches.itemClicked.connect(self._taken)

    def reread(self) -> None:
        """Read the register again."""
        rows = self._rows()
        first = {each: rows[each] for each in self._first if each in rows}
        self._labels = {**first, **rows}

    def offer(self, first: Sequence[str]) -> None:
        """List what there is, these before the others; Enter takes the very first."""
        self._first = tuple(first)
        self.reread()
        self.list_matches()
        if self._first:
            self.matches.setCurrentRow(0)

    def id(self) -> str:
        """The id typed, where the register has it."""
        typed = self.text().strip()
        return typed if typed in self._labels else ""

    def matching(self) -> list[str]:
        """Ids that what is typed could mean."""
        typed = self.text().strip().casefold()
        exact = [each for each in self._labels if each.casefold() == typed]
        if exact:
            return exact
        words = typed.split()
        return [
            each
            for each, label in self._labels.items()
            if all(word in label.casefold() for word in words)
        ]

    def listing(self) -> bool:
        """Whether what fits is being shown."""
        return not self.matches.isHidden()

    def settle(self) -> None:
        """Put the id where what is typed can only mean one row."""
        self.matches.hide()
        if self.isReadOnly() or not self.text().strip():
            return
        found = self.matching()
        if len(found) == 1:
            self.type_over(found[0])

    def label_of(self) -> str:
        """What the row is called, beyond its id."""
        return self._labels.get(self.id(), "").removeprefix(self.id()).strip(" ,")

    def list_matches(self) -> None:
        """List under the field what fits, and the way to a new row."""
        if self.isReadOnly():
            return
        self.matches.clear()
        for row_id in self.matching()[:LISTED_MOST]:
            self._list(self._labels[row_id], row_id)
        self._list(say("New {register} …", register=self._register), "")
        rows = min(self.matches.count(), _ROWS_SHOWN)
        self.matches.setFixedHeight(rows * theme.target() + 6)
        self.matches.show()

    def _list(self, text: str, row_id: str) -> None:
        item = QListWidgetItem(text)
        item.setData(Qt.ItemDataRole.UserRole, row_id)
        item.setSizeHint(QSize(theme.target(), theme.target()))
        self.matches.addItem(item)

    def _taken(self, item: QListWidgetItem) -> None:
        self.matches.hide()
        row_id = str(item.data(Qt.ItemDataRole.UserRole))
        if row_id:
            self.type_over(row_id)
            self.taken.emit(row_id)
        else:
            self.wants_new.emit(self._register)

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Read the register: it may have grown."""
        self.reread()
        super().focusInEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Up and Down go through what fits, Enter takes it, Esc puts the list away."""
        key, listed = event.key(), self.listing()
        if event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            super().keyPressEvent(event)
        elif key == Qt.Key.Key_Down and not listed:
            self.list_matches()
        elif key in (Qt.Key.Key_Down, Qt.Key.Key_Up) and listed:
            by = 1 if key == Qt.Key.Key_Down else -1
            last = self.matches.count() - 1
            self.matches.setCurrentRow(max(0, min(last, self.matches.currentRow() + by)))
        elif key == Qt.Key.Key_Escape and listed:
            self.matches.hide()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.matches.currentItem() and listed:
            self._taken(self.matches.currentItem())
        else:
            super().keyPressEvent(event)
