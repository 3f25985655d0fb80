"""Words written as large as the room they are given."""

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter


def slot(room: QRectF, start: float, end: float) -> QRectF:
    """A band of a room between two shares of its height."""
    height = room.height()
    return QRectF(room.left(), room.top() + start * height, room.width(), (end - start) * height)


def sized(font: QFont, pixels: float, *, bold: bool = False) -> QFont:
    """A font of a height in pixels."""
    made = QFont(font)
    made.setPixelSize(max(round(pixels), 8))
    made.setBold(bold)
    return made


def fit(
    painter: QPainter,
    room: QRectF,
    words: str,
    colour: QColor,
    align: Qt.AlignmentFlag,
    *,
    bold: bool = False,
) -> None:
    """Write words as large as they fit the room."""
    font = sized(painter.font(), room.height() * 0.82, bold=bold)
    wide = QFontMetricsF(font).horizontalAdvance(words)
    if wide > room.width():
        font = sized(font, font.pixelSize() * room.width() / wide * 0.99, bold=bold)
    painter.setFont(font)
    painter.setPen(colour)
    painter.drawText(room, align | Qt.AlignmentFlag.AlignVCenter, words)
