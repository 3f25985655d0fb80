"""Fault by reading: speaks for it, against it, or tells nothing; the reason of the chosen cell."""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFocusEvent,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from chargebench.steps import Table
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.ink import Ink, ink
from chargebench.ui.language import tr
from chargebench.words import say

_LEGEND = "+ speaks for it, \u2212 against it, · tells nothing. Arrow keys give the reason."
_SIGNS = {"for": "+", "against": "\u2212"}
_HEAD_EMS, _FAULT_EMS, _CELL_EMS = 9.5, 10.5, 1.9
_ON_PURPOSE = (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
_MOVES = {
    Qt.Key.Key_Up: (-1, 0),
    Qt.Key.Key_Down: (1, 0),
    Qt.Key.Key_Left: (0, -1),
    Qt.Key.Key_Right: (0, 1),
}


class Matrix(QWidget):
    """The table drawn, its heads upright on their ends so that many readings fit."""

    moved = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self.at = (0, 0)  # fault, reading
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("What speaks for which fault"))

    def show_table(self, table: Table) -> None:
        """Draw a table; the chosen cell stays where there still is one."""
        self._table = table
        most = (len(table.rows) - 1, len(table.heads) - 2)
        self.at = (min(self.at[0], most[0]), min(self.at[1], most[1]))
        self.updateGeometry()
        self.update()

    @property
    def reason(self) -> str:
        """What the chosen reading says of the chosen fault, and why."""
        if self._table is None:
            return ""
        row = self._table.rows[self.at[0]]
        cell = row[self.at[1] + 1]
        word = (
            "tells nothing of" if cell.value == "nothing" else say("speaks {cell}", cell=cell.value)
        )
        return say(
            "{partition} {word} {value}: {partition_2}",
            partition=cell.why.partition(". ")[0],
            word=word,
            value=row[0].value,
            partition_2=cell.why.partition(". ")[2],
        )

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As high as its heads and faults."""
        rows = len(self._table.rows) if self._table else 0
        high = _HEAD_EMS * theme.em() + rows * self._row_height()
        return QSize(round(theme.em() * 18), round(high) + 4)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As narrow as its cells."""
        return QSize(theme.em() * 10, self.sizeHint().height())

    def _row_height(self) -> float:
        return theme.em() * 2.1

    def _cell(self, fault: int, reading: int) -> QRectF:
        assert self._table is not None
        line = theme.em()
        count = len(self._table.heads) - 1
        spare = max(self.width() - line * 6, line)
        wide = min(line * _CELL_EMS, spare / count)
        left = min(line * _FAULT_EMS, self.width() - wide * count - 2)
        top = line * _HEAD_EMS + fault * self._row_height()
        return QRectF(left + reading * wide, top, wide, self._row_height())

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw heads, faults, signs, and where one is."""
        table = self._table
        if table is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, line = ink(), theme.em()
        for reading, head in enumerate(table.heads[1:]):
            self._draw_head(painter, reading, head, colours)
        for fault, row in enumerate(table.rows):
            first = self._cell(fault, 0)
            painter.setPen(QPen(colours.line, 1))
            painter.drawLine(QPointF(0, first.top()), QPointF(self.width(), first.top()))
            painter.setPen(colours.text)
            room = QRectF(0, first.top(), first.left() - line / 4, first.height())
            flags = Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(room, int(flags), tr(str(row[0].value)))
            for reading, cell in enumerate(row[1:]):
                self._draw_sign(painter, self._cell(fault, reading), str(cell.value), colours)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.colours().focus), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(self._cell(*self.at).adjusted(1, 1, -1, -1))
        painter.end()

    def _draw_head(self, painter: QPainter, reading: int, head: str, colours: Ink) -> None:
        cell = self._cell(0, reading)
        metrics = QFontMetricsF(self.font())
        text = metrics.elidedText(
            tr(head), Qt.TextElideMode.ElideRight, theme.em() * (_HEAD_EMS - 0.4)
        )
        painter.save()
        painter.translate(cell.center().x() + metrics.ascent() / 2 - 1, cell.top() - 4)
        painter.rotate(-90)
        painter.setPen(colours.text)
        painter.drawText(QPointF(0, 0), text)
        painter.restore()

    @staticmethod
    def _draw_sign(painter: QPainter, cell: QRectF, says: str, colours: Ink) -> None:
        side = min(cell.width(), cell.height()) * 0.62
        disc = QRectF(0, 0, side, side)
        disc.moveCenter(cell.center())
        if says not in _SIGNS:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colours.quiet)
            painter.drawEllipse(cell.center(), side / 9, side / 9)
            return
        filled = says == "for"
        painter.setPen(QPen(colours.mass if filled else colours.text, 1.2))
        painter.setBrush(colours.mass if filled else colours.paper)
        painter.drawEllipse(disc)
        painter.setPen(QPen(colours.on_mass if filled else colours.text, max(side / 9, 1.6)))
        reach = side * 0.24
        middle = disc.center()
        painter.drawLine(middle - QPointF(reach, 0), middle + QPointF(reach, 0))
        if filled:
            painter.drawLine(middle - QPointF(0, reach), middle + QPointF(0, reach))

    def _go(self, fault: int, reading: int) -> None:
        assert self._table is not None
        rows, columns = len(self._table.rows), len(self._table.heads) - 1
        self.at = (min(max(fault, 0), rows - 1), min(max(reading, 0), columns - 1))
        self.moved.emit()
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Arrow keys go from cell to cell."""
        step = _MOVES.get(Qt.Key(event.key()))
        if step is None or self._table is None or event.modifiers():
            super().keyPressEvent(event)
            return
        self._go(self.at[0] + step[0], self.at[1] + step[1])

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802 - Qt's name
        """A touch chooses a cell."""
        if self._table is None:
            return
        first = self._cell(0, 0)
        spot = event.position()
        fault = int((spot.y() - first.top()) // first.height())
        self._go(fault, int((spot.x() - first.left()) // first.width()))

    def focusInEvent(self, event: QFocusEvent) -> None:  # noqa: N802 - Qt's name
        """Say the reason of where one is, if one came here on purpose."""
        super().focusInEvent(event)
        if event.reason() in _ON_PURPOSE:
            self.moved.emit()


class EvidenceTable(QWidget):
    """The drawn table with its title, its legend and the chosen cell's reason."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self._asked = False
        self.title = wrapped(weight="head")
        self.matrix = Matrix()
        self.reason = wrapped()
        self.says = wrapped(_LEGEND, "faint")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.em() // 3, 0, theme.em() // 3)
        column.setSpacing(theme.em() // 4)
        for each in (self.title, self.matrix, self.reason, self.says):
            column.addWidget(each)
        self.reason.hide()
        self.matrix.moved.connect(self._ask)

    def show_table(self, table: Table) -> None:
        """Show a table."""
        if table == self._table:
            return
        self._table = table
        self.title.setText(tr(table.title))
        self.says.setText(tr(say("{legend} {says}", legend=_LEGEND, says=table.says)))
        self.matrix.show_table(table)
        if not self.matrix.hasFocus():  # another table: nobody asked about it yet
            self._asked = False
            self.reason.hide()
        self._say()

    def _ask(self) -> None:
        self._asked = True
        self._say()

    def _say(self) -> None:
        if self._asked:
            self.reason.setText(tr(self.matrix.reason))
            self.reason.show()
            self.matrix.setAccessibleDescription(tr(self.matrix.reason))
