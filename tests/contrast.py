"""Contrast of words as they are painted, by WCAG 2.2, success criterion 1.4.3 and its formula.

The ground is the colour most pixels have; the ink is the pixel furthest from it, which soft edges
can only make look paler than it is: what is measured is never more than what is there.
"""

from collections import Counter
from collections.abc import Iterator

from PySide6.QtCore import QModelIndex, QPoint, QRect, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QTableView,
    QWidget,
)

LEAST = 4.5  # WCAG 2.2, 1.4.3, text that is not large
EDGE_PX = 5  # of a frame, which is no word
HIGH_PX = 8  # lower than this there is no word to read


def ratio(one: QColor, other: QColor) -> float:
    """Contrast of two colours: (L1 + 0.05) / (L2 + 0.05), relative luminances."""
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def _luminance(colour: QColor) -> float:
    """WCAG 2.2, definition of relative luminance (sRGB)."""
    parts = [
        part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4
        for part in (colour.redF(), colour.greenF(), colour.blueF())
    ]
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2]


def painted(picture: QImage, room: QRect) -> float | None:
    """Contrast of the words painted in a room; None where only ground is painted."""
    room = room.intersected(picture.rect())
    if room.height() < HIGH_PX or room.width() < HIGH_PX:
        return None
    part = picture.copy(room).convertToFormat(QImage.Format.Format_RGB32)
    raw = bytes(part.constBits())
    pixels = Counter(raw[place : place + 3] for place in range(0, len(raw), 4))
    (ground, _), *others = pixels.most_common()
    if not others:
        return None
    paper = _colour(ground)
    return max(ratio(paper, _colour(each)) for each, _ in others)


def _colour(raw: bytes) -> QColor:
    blue, green, red = raw
    return QColor(red, green, blue)


def pale(page: QWidget) -> Iterator[str]:
    """Words on a page that are painted with less contrast than can be read."""
    picture = page.grab().toImage()
    for words, room in _words(page):
        found = painted(picture, room)
        if found is not None and found < LEAST:
            yield f"“{words[:50]}” has {found:.2f}:1"


def _words(page: QWidget) -> Iterator[tuple[str, QRect]]:
    for widget in page.findChildren(QWidget):
        if not widget.isVisible() or widget.visibleRegion().isEmpty():
            continue
        seen = widget.visibleRegion().boundingRect()
        inside = widget.rect().adjusted(EDGE_PX, EDGE_PX, -EDGE_PX, -EDGE_PX) & seen
        at = QRect(widget.mapTo(page, inside.topLeft()), inside.size())
        match widget:
            case QLabel() if widget.text():
                yield widget.text(), QRect(widget.mapTo(page, seen.topLeft()), seen.size())
            case QAbstractButton() if widget.text():
                yield widget.text(), at
            case QLineEdit() if widget.text() or widget.placeholderText():
                yield widget.text() or widget.placeholderText(), at
            case QComboBox() if widget.currentText():
                at.setWidth(at.width() - at.height())  # without its arrow
                yield widget.currentText(), at
            case QPlainTextEdit() if widget.toPlainText() or widget.placeholderText():
                yield widget.toPlainText() or widget.placeholderText(), at
            case QHeaderView():
                yield from _heads(widget, page)
            case QAbstractItemView():
                yield from _cells(widget, page)


def _heads(header: QHeaderView, page: QWidget) -> Iterator[tuple[str, QRect]]:
    for section in range(header.count()):
        words = str(header.model().headerData(section, header.orientation()) or "")
        if words and not header.isSectionHidden(section):
            left = header.sectionViewportPosition(section)
            room = QRect(left, 0, header.sectionSize(section), header.height() - EDGE_PX)
            room &= header.viewport().rect()
            yield words, QRect(header.viewport().mapTo(page, room.topLeft()), room.size())


def _cells(view: QAbstractItemView, page: QWidget) -> Iterator[tuple[str, QRect]]:
    model, pane = view.model(), view.viewport()
    seen = pane.visibleRegion().boundingRect()
    for row in range(min(model.rowCount(), 12)):
        for column in range(
            model.columnCount(QModelIndex()) if isinstance(view, QTableView) else 1
        ):
            index = model.index(row, column)
            words = str(index.data(Qt.ItemDataRole.DisplayRole) or "")
            room = view.visualRect(index).adjusted(2, 2, -2, -2) & seen
            if words and room.height() >= HIGH_PX * 2:
                top_left: QPoint = pane.mapTo(page, room.topLeft())
                yield words, QRect(top_left, room.size())
