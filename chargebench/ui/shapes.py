"""The shapes that tell a state or a flag's level, always beside its word."""

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from chargebench.ui import theme

# Corners in a square from 0 to 10.
_OCTAGON = ((3, 0), (7, 0), (10, 3), (10, 7), (7, 10), (3, 10), (0, 7), (0, 3))
_TRIANGLE = ((5, 0.5), (10, 9.5), (0, 9.5))
_ARROW = ((1, 1), (9, 5), (1, 9))
_SQUARE = ((0.5, 0.5), (9.5, 0.5), (9.5, 9.5), (0.5, 9.5))


def colour_of(name: str) -> str:
    """Colour a shape is drawn in."""
    now = theme.colours()
    return {"stop": now.stop, "check": now.check, "note": now.note, "signed": now.accent}.get(
        name, now.faint
    )


def draw(painter: QPainter, rect: QRectF, name: str) -> None:
    """Draw the shape of a state or level into a square."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    colour = QColor(colour_of(name))
    painter.translate(rect.topLeft())
    painter.scale(rect.width() / 10, rect.height() / 10)
    pen = QPen(colour, 1.3)
    painter.setPen(pen)
    inside = QPen(QColor(theme.colours().panel), 1.5)
    match name:
        case "stop":
            _filled(painter, _OCTAGON, colour)
            _mark(painter, inside)
        case "check":
            _filled(painter, _TRIANGLE, colour)
            painter.setPen(inside)
            painter.drawLine(QPointF(5, 4), QPointF(5, 6.2))
            painter.drawPoint(QPointF(5, 8))
        case "note":
            painter.drawEllipse(QPointF(5, 5), 4.3, 4.3)
            painter.drawLine(QPointF(5, 4.6), QPointF(5, 7.4))
            painter.drawPoint(QPointF(5, 2.7))
        case "signed":
            _filled(painter, _SQUARE, colour)
            painter.setPen(inside)
            painter.drawPolyline(QPolygonF([QPointF(2.3, 5), QPointF(4.3, 7.2), QPointF(8, 2.8)]))
        case "ticked":
            painter.setPen(QPen(QColor(theme.colours().on_accent), 1.5))
            painter.drawPolyline(QPolygonF([QPointF(2.3, 5), QPointF(4.3, 7.2), QPointF(8, 2.8)]))
        case "now":
            _filled(painter, _ARROW, colour)
        case "not needed":
            painter.drawLine(QPointF(1, 5), QPointF(9, 5))
        case _:
            painter.drawEllipse(QPointF(5, 5), 4, 4)
    painter.restore()


def _filled(painter: QPainter, corners: tuple[tuple[float, float], ...], colour: QColor) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))


def _mark(painter: QPainter, pen: QPen) -> None:
    painter.setPen(pen)
    painter.drawLine(QPointF(5, 2.2), QPointF(5, 5.8))
    painter.drawPoint(QPointF(5, 8))


class Shape(QWidget):
    """One shape, as high as a line of text."""

    def __init__(self, name: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._name = name
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def show_shape(self, name: str) -> None:
        """Draw another shape."""
        self._name = name
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """A square of one line."""
        return QSize(theme.em(), theme.em())

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802, ARG002 - Qt's name
        """Draw."""
        if self._name:
            side = min(self.width(), self.height()) - 2
            painter = QPainter(self)
            draw(painter, QRectF(1, 1, side, side), self._name)
            painter.end()
