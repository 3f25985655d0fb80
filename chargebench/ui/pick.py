"""A register pick: type an id or part of a name, or scan; Enter takes it."""

from collections.abc import Callable, Mapping

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QStringListModel, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QAbstractItemView, QCompleter, QWidget

from chargebench.ui.fields import LineEdit

SHOWN_MOST = 40


class _Matches(QCompleter):
    """Shows labels, gives ids."""

    def __init__(self, model: QStringListModel, id_of: Callable[[int], str]) -> None:
        super().__init__(model)
        self._id_of = id_of
        self.setCompletionMode(QCompleter.CompletionMode.UnfilteredPopupCompletion)

    def pathFromIndex(self, index: QModelIndex | QPersistentModelIndex) -> str:  # noqa: N802
        """The id of a row in the list."""
        return self._id_of(index.row())


class PickEdit(LineEdit):
    """The id of a register row; `wanted` is called for "new", with the register."""

    wants_new = Signal(str)

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
        self._ids: list[str] = []
        self._list = QStringListModel(self)
        self._matches = _Matches(self._list, self._id_at)
        self._matches.setParent(self)
        self._popup().setObjectName("matches")
        self._matches.setMaxVisibleItems(8)
        self._matches.activated[QModelIndex].connect(self._taken)  # type: ignore[index]
        self.setCompleter(self._matches)
        self.setPlaceholderText("id or part of the name")
        self.textEdited.connect(self._fill)
        self.editingFinished.connect(self.settle)

    def _popup(self) -> QAbstractItemView:
        popup = self._matches.popup()
        assert popup is not None
        return popup

    def reread(self) -> None:
        """Read the register again."""
        self._labels = self._rows()

    def id(self) -> str:
        """The id typed, where the register has it."""
        return next((each for each in self._labels if each == self.text().strip()), "")

    def matching(self) -> list[str]:
        """Ids that what is typed could mean."""
        typed = self.text().strip().casefold()
        exact = [each for each in self._labels if each.casefold() == typed]
        if exact:
            return exact
        return [each for each, label in self._labels.items() if typed in label.casefold()]

    def settle(self) -> None:
        """Put the id where what is typed can only mean one row."""
        if self.isReadOnly() or not self.text().strip():
            return
        found = self.matching()
        if len(found) == 1:
            self.type_over(found[0])

    def label_of(self) -> str:
        """What the row is called, beyond its id."""
        return self._labels.get(self.id(), "").removeprefix(self.id()).strip(" ,")

    def _fill(self) -> None:
        self._ids = self.matching()[:SHOWN_MOST]
        labels = [self._labels[each] for each in self._ids]
        self._list.setStringList([*labels, f"New {self._register} …"])

    def _id_at(self, row: int) -> str:
        return self._ids[row] if row < len(self._ids) else self.text()

    def _taken(self, index: QModelIndex) -> None:
        if index.row() >= len(self._ids):
            self.wants_new.emit(self._register)
            return
        self.type_over(self._ids[index.row()])
        self.edited.emit()

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Read the register: it may have grown."""
        self.reread()
        super().focusInEvent(event)
        self._fill()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Down lists what there is."""
        down = event.key() == Qt.Key.Key_Down and not event.modifiers()
        if down and not self._popup().isVisible():
            if not self.isReadOnly():
                self._fill()
                self._matches.complete()
            return
        super().keyPressEvent(event)
