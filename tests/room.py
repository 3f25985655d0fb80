"""Words on a page that have less room than they need."""

from collections.abc import Iterator
from typing import TypeVar

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QScrollArea,
    QStyle,
    QStyleOptionComboBox,
    QWidget,
)

from chargebench.ui.oneline import OneLine

SLACK_PX = 1  # of rounding
Kind = TypeVar("Kind", bound=QWidget)


def without_room(page: QWidget) -> Iterator[str]:
    """Words that are cut, and lists and pages that have to be scrolled sideways."""
    for label in _shown(page, QLabel):
        yield from _label(label)
    for button in _shown(page, QAbstractButton):
        words = button.text().replace("&&", "\0").replace("&", "").replace("\0", "&")
        if words:
            yield from _less(words, _wide(button, words), button.contentsRect().width())
            yield from _less(words, button.fontMetrics().height(), button.height(), "height")
    for box in _shown(page, QComboBox):
        yield from _box(box)
    for header in _shown(page, QHeaderView):
        yield from _heads(header)
    for edit in _shown(page, QLineEdit):
        needed = edit.fontMetrics().height()
        yield from _less(edit.accessibleName(), needed, edit.contentsRect().height(), "height")
    for area in _shown(page, QAbstractScrollArea):
        more = area.horizontalScrollBar().maximum()
        if more > SLACK_PX and not isinstance(area, QHeaderView):
            yield f"{area.accessibleName() or type(area).__name__}: {more} px to scroll sideways"
    for child in page.findChildren(QWidget):
        yield from _outside(child)


def _shown(page: QWidget, kind: type[Kind]) -> list[Kind]:
    return [each for each in page.findChildren(kind) if each.isVisible()]


def _less(words: str, needed: int, has: int, way: str = "width") -> Iterator[str]:
    if needed > has + SLACK_PX:
        yield f"“{words[:60]}” has {has} of {needed} px in {way}"


def _wide(widget: QWidget, words: str) -> int:
    return max(widget.fontMetrics().horizontalAdvance(line) for line in words.split("\n"))


def _label(label: QLabel) -> Iterator[str]:
    words = label.text()
    if not words or label.textFormat() is Qt.TextFormat.RichText:
        return
    room = label.contentsRect()
    if label.wordWrap():
        yield from _less(words, label.heightForWidth(label.width()), label.height(), "height")
        longest = max(words.replace("\u200b", " ").split(), key=len, default="")
        yield from _less(longest, _wide(label, longest), room.width())
        return
    plain = words.replace("&", "") if label.buddy() else words
    if not isinstance(label, OneLine):  # which says less where there is no room
        yield from _less(words, _wide(label, plain), room.width())
    yield from _less(words, label.fontMetrics().height(), room.height(), "height")


def _box(box: QComboBox) -> Iterator[str]:
    option = QStyleOptionComboBox()
    box.initStyleOption(option)
    room: QRect = box.style().subControlRect(
        QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, box
    )
    yield from _less(box.currentText(), _wide(box, box.currentText()), room.width())
    yield from _less(box.currentText(), box.fontMetrics().height(), room.height(), "height")


def _heads(header: QHeaderView) -> Iterator[str]:
    bold = QFont(header.font())
    bold.setBold(True)
    words, model = QFontMetrics(bold), header.model()
    for section in range(header.count()):
        if header.isSectionHidden(section):
            continue
        head = str(model.headerData(section, header.orientation()) or "")
        needed = words.boundingRect(QRect(0, 0, 9_999, 9_999), 0, head).size() if head else QSize()
        yield from _less(head, needed.width(), header.sectionSize(section))
        yield from _less(head, needed.height(), header.height(), "height")


def _outside(child: QWidget) -> Iterator[str]:
    """A part of a page that reaches beyond the page it lies on, where nothing scrolls."""
    parent = child.parentWidget()
    if parent is None or child.isWindow() or not child.isVisible() or not child.size().isValid():
        return
    scrolls = isinstance(parent.parentWidget(), QScrollArea | QAbstractScrollArea)
    if scrolls or not isinstance(child, QAbstractButton | QLabel | QLineEdit | QComboBox):
        return
    over = child.geometry().right() - parent.rect().right()
    if over > SLACK_PX:
        yield f"{type(child).__name__} “{child.accessibleName()}” is {over} px beyond its page"
