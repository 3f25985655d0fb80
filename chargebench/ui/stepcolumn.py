"""A job's steps as a column: state by shape and word."""

from collections.abc import Sequence

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import (
    QListWidget,
    QListWidgetItem,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from chargebench.desk.views import StepView
from chargebench.ui import theme
from chargebench.ui.language import tr
from chargebench.ui.shapes import draw
from chargebench.words import say

_KEY = Qt.ItemDataRole.UserRole
_STATE = Qt.ItemDataRole.UserRole + 1
_TITLE = Qt.ItemDataRole.UserRole + 2


class _StepPainter(QStyledItemDelegate):
    """Shape, title, and the state's word under it."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint one step."""
        view = option.widget
        assert isinstance(view, QListWidget)
        rect = option.rect
        current = view.currentRow() == index.row()
        colours = theme.colours()
        painter.save()
        if current:
            painter.fillRect(rect, QColor(colours.chosen))
            if view.hasFocus():
                painter.setPen(QPen(QColor(colours.focus), 2))
                painter.drawRect(rect.adjusted(1, 1, -2, -2))
        state = str(index.data(_STATE))
        line = theme.em()
        side = line * 3 // 4
        shape = "now" if current and state == "open" else state
        top = rect.top() + (rect.height() - side) / 2
        draw(painter, QRectF(rect.left() + line // 3, top, side, side), shape)
        text = rect.adjusted(line // 3 + side + line // 2, 0, 0, 0)
        middle = text.center().y()
        font = painter.font()
        font.setBold(current)
        painter.setFont(font)
        painter.setPen(QColor(colours.ink))
        left = Qt.AlignmentFlag.AlignLeft
        above = text.adjusted(0, 0, 0, middle - text.bottom() + line // 10)
        painter.drawText(above, left | Qt.AlignmentFlag.AlignBottom, str(index.data(_TITLE)))
        font.setBold(False)
        font.setPointSizeF(font.pointSizeF() * 0.85)
        painter.setFont(font)
        painter.setPen(QColor(colours.ink if current else colours.faint))
        word = tr("now" if shape == "now" else state)
        below = text.adjusted(0, middle - text.top(), 0, 0)
        painter.drawText(below, left | Qt.AlignmentFlag.AlignTop, word)
        painter.restore()

    def sizeHint(  # noqa: N802 - Qt's name
        self,
        option: QStyleOptionViewItem,  # noqa: ARG002
        index: QModelIndex | QPersistentModelIndex,  # noqa: ARG002
    ) -> QSize:
        """High enough for a gloved finger."""
        return QSize(theme.em() * 8, theme.target())


class StepColumn(QListWidget):
    """The steps; choosing one shows its form."""

    chosen = Signal(str)
    entered = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setItemDelegate(_StepPainter(self))
        self.setAccessibleName(tr("Steps"))
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setTabKeyNavigation(False)
        self.currentItemChanged.connect(self._on_current)
        self.itemActivated.connect(lambda _: self.entered.emit())

    def show_steps(self, steps: Sequence[StepView]) -> None:
        """Show the steps and their states, staying at the current one."""
        current = self.current()
        self.blockSignals(True)  # noqa: FBT003 - Qt's signature
        if [self._key(row) for row in range(self.count())] != [step.key for step in steps]:
            self.clear()
            for step in steps:
                self.addItem(QListWidgetItem())
                self.item(self.count() - 1).setData(_KEY, step.key)
        for row, step in enumerate(steps):
            item = self.item(row)
            item.setData(_TITLE, tr(step.title))
            item.setData(_STATE, step.state)
            spoken = say("{step}, {state}", step=step.title, state=step.state)
            item.setData(Qt.ItemDataRole.AccessibleTextRole, tr(spoken))
            item.setToolTip(tr(spoken))
        self.blockSignals(False)  # noqa: FBT003 - Qt's signature
        if current:
            self.choose(current)

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As wide as the longest title while it is bold."""
        bold = QFont(self.font())
        bold.setBold(True)
        words, line = QFontMetrics(bold), theme.em()
        titles = [str(self.item(row).data(_TITLE)) for row in range(self.count())]
        longest = max((words.horizontalAdvance(title) for title in titles), default=0)
        beside = line * 2 + self.verticalScrollBar().sizeHint().width()
        return QSize(longest + beside, super().sizeHint().height())

    def current(self) -> str:
        """Key of the step chosen."""
        item = self.currentItem()
        return str(item.data(_KEY)) if item else ""

    def choose(self, key: str) -> None:
        """Go to a step."""
        for row in range(self.count()):
            if self._key(row) == key:
                self.setCurrentRow(row)

    def go(self, by: int) -> None:
        """Go up or down."""
        self.setCurrentRow(max(0, min(self.count() - 1, self.currentRow() + by)))

    def _key(self, row: int) -> str:
        return str(self.item(row).data(_KEY))

    def _on_current(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self.chosen.emit(str(item.data(_KEY)))
        self.viewport().update()
