"""How full a cylinder is, drawn against its own limit."""

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QApplication,
    QSizePolicy,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QWidget,
)

from chargebench.desk import CylinderLine
from chargebench.ui import theme
from chargebench.ui.ink import ink
from chargebench.ui.language import tr
from chargebench.ui.mass_bar import hatch
from chargebench.words import say

_OVER_ROOM = 1.15  # the bar ends this far past the limit, so that over can be seen as over
NO_LIMIT = "limit not known"


def share_words(line: CylinderLine) -> str:
    """How full in words."""
    if line.share is None:
        return NO_LIMIT
    if line.share > 1:
        return say("over limit, {share:.0f} %", share=line.share * 100)
    return f"{line.share * 100:.0f} %"


def draw_fill(painter: QPainter, box: QRectF, line: CylinderLine) -> None:
    """Draw content against limit: the limit is a mark, what is over it is hatched."""
    colours = ink()
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(box, colours.paper)
    share = line.share
    if share is None:
        painter.setPen(QPen(colours.line, 1.5, Qt.PenStyle.DashLine))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(box)
        painter.restore()
        return
    scale = box.width() / max(_OVER_ROOM, share)
    held = QRectF(box.left(), box.top(), max(min(share, 1.0), 0.0) * scale, box.height())
    painter.fillRect(held, colours.mass)
    if share > 1:
        over = QRectF(held.right(), box.top(), (share - 1) * scale, box.height())
        hatch(painter, over, colours.stop, colours.paper)
    painter.setPen(QPen(colours.line, 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(box)
    limit = box.left() + scale
    painter.setPen(QPen(colours.text, 2.5))
    painter.drawLine(QPointF(limit, box.top() - 3), QPointF(limit, box.bottom() + 3))
    painter.restore()


class FillDelegate(QStyledItemDelegate):
    """Paints a cell of cylinders: the bar, and how full in words."""

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Draw the ground as chosen or not, the bar, the words."""
        line = index.data(Qt.ItemDataRole.UserRole)
        assert isinstance(line, CylinderLine)
        ground = QStyleOptionViewItem(option)
        self.initStyleOption(ground, index)
        ground.text = ""
        style = ground.widget.style() if ground.widget else QApplication.style()
        style.drawControl(QStyle.ControlElement.CE_ItemViewItem, ground, painter, ground.widget)
        cell = QRectF(option.rect)
        em = theme.em()
        words_wide = painter.fontMetrics().horizontalAdvance(NO_LIMIT) + em // 2
        bar = QRectF(cell.left() + em / 3, cell.center().y() - em * 0.45, 0, em * 0.9)
        bar.setWidth(max(cell.width() - words_wide - em, em * 2))
        draw_fill(painter, bar, line)
        painter.setPen(ink().stop if (line.share or 0) > 1 else ink().text)
        words = QRectF(bar.right() + em / 2, cell.top(), cell.right() - bar.right(), cell.height())
        align = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(words, align, share_words(line))


class FillBar(QWidget):
    """The same bar, large, above a cylinder's history."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._line: CylinderLine | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def show_cylinder(self, line: CylinderLine) -> None:
        """Draw a cylinder."""
        self._line = line
        self.setAccessibleName(tr(say("Fill: {share_words}", share_words=share_words(line))))
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """One and a half lines high."""
        return QSize(theme.em() * 16, theme.em() * 2)

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw."""
        if self._line is not None:
            painter = QPainter(self)
            draw_fill(painter, QRectF(self.rect()).adjusted(2, 5, -2, -5), self._line)
            painter.end()
