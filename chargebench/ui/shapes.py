"""The shapes that tell a state or a flag's level, always beside its word."""

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from chargebench.ui import icons, theme

_NAMED = ("stop", "check", "note", "signed", "ticked", "now")


def colour_of(name: str) -> str:
    """Colour a shape is drawn in."""
    now = theme.colours()
    own = {
        "stop": now.stop,
        "check": now.check,
        "note": now.note,
        "signed": now.accent,
        "ticked": now.on_accent,
    }
    return own.get(name, now.faint)


def draw(painter: QPainter, rect: QRectF, name: str) -> None:
    """Draw the shape of a state or level into a square; a ring for what is still open."""
    known = {"not needed": "not-needed", **{each: each for each in _NAMED}}
    icons.draw(painter, rect, known.get(name, "open"), colour_of(name))


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
