"""Words written as large as the room they are given."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter

from chargebench.ui.language import tr


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
    words = tr(words)
    font = sized(painter.font(), room.height() * 0.82, bold=bold)
    wide = QFontMetricsF(font).horizontalAdvance(words)
    if wide > room.width():
        font = sized(font, font.pixelSize() * room.width() / wide * 0.99, bold=bold)
    painter.setFont(font)
    painter.setPen(colour)
    painter.drawText(room, align | Qt.AlignmentFlag.AlignVCenter, words)


UNIT_SHARE = 0.5  # of the figure's height: the unit is known, the figure is what is read


def fit_figure(
    painter: QPainter,
    room: QRectF,
    words: str,
    colour: QColor,
    align: Qt.AlignmentFlag,
    *,
    like: str = "",
) -> float:
    """Write a figure as large as it fits, its unit smaller beside it; height of its digits [px].

    Words that are no figure with a unit are written whole. A figure is never larger than one as
    long as `like` would be, so that it does not jump as it runs down.
    """
    words, like = tr(words), tr(like)
    number, _, unit = words.rpartition(" ")
    if not number or not any(each.isdigit() for each in number):
        number, unit = words, ""
    longest = like.rpartition(" ")[0]
    large = sized(painter.font(), room.height() * 0.9, bold=True)
    while True:
        small = sized(large, large.pixelSize() * UNIT_SHARE)
        gap = large.pixelSize() * 0.12 if unit else 0.0
        figure = QFontMetricsF(large).horizontalAdvance(number)
        rest = gap + QFontMetricsF(small).horizontalAdvance(unit)
        widest = rest + max(figure, QFontMetricsF(large).horizontalAdvance(longest))
        if widest <= room.width() or large.pixelSize() <= 8:
            break
        large = sized(
            large, min(large.pixelSize() * room.width() / widest, large.pixelSize() - 1), bold=True
        )
    left, wide = room.left(), figure + rest
    if align & Qt.AlignmentFlag.AlignHCenter:
        left += (room.width() - wide) / 2
    digits = QFontMetricsF(large).tightBoundingRect("0").height()
    baseline = room.center().y() + digits / 2
    painter.setPen(colour)
    for font, text, at in ((large, number, left), (small, unit, left + figure + gap)):
        painter.setFont(font)
        painter.drawText(QPointF(at, baseline), text)
    return digits
