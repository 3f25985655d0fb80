"""What a screen reader is told of everything that takes the keys."""

from collections import Counter
from collections.abc import Iterator

from PySide6.QtGui import QAccessible, QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QHeaderView,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

INPUTS = (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSpinBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
)


def inputs(page: QWidget) -> list[QWidget]:
    """What can be typed into, chosen from or pressed on a page."""
    return [
        each
        for each in page.findChildren(QWidget)
        if isinstance(each, INPUTS)
        and each.isVisible()
        and not isinstance(each, QHeaderView)
        and not each.objectName().startswith("qt_")
        and not isinstance(each.parentWidget(), QComboBox | QAbstractSpinBox)
    ]


def name_of(widget: QWidget) -> str:
    """What a screen reader says a widget is called."""
    if isinstance(widget, QComboBox):  # on Unix Qt tells its choice as its name, its label beside
        return widget.accessibleName()
    told = QAccessible.queryAccessibleInterface(widget)
    return str(told.text(QAccessible.Text.Name)).replace("&", "").strip() if told else ""


def unnamed(page: QWidget) -> Iterator[str]:
    """Inputs that have no name, and names that several inputs of one kind bear on one page."""
    names = Counter[tuple[str, str]]()
    for widget in inputs(page):
        name = name_of(widget)
        if not any(each.isalpha() for each in name):
            yield f"{type(widget).__name__} has no name: “{name}”"
        names[_kind(widget), name] += 1
    for (_, name), count in names.items():
        if count > 1 and name:
            yield f"{count} inputs are called “{name}”"


def letters_twice(page: QWidget) -> Iterator[str]:
    """Alt letters that several things of one page ask for: pressed, they only wander between."""
    asked: dict[str, list[str]] = {}
    for widget in page.findChildren(QWidget):
        words = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
        leads = isinstance(widget, QAbstractButton) or (
            isinstance(widget, QLabel) and widget.buddy() is not None
        )
        if leads and widget.isVisible() and widget.isEnabled():
            letter = QKeySequence.mnemonic(words).toString()
            asked.setdefault(letter, []).append(words)
    for letter, several in asked.items():
        if letter and len(several) > 1:
            yield f"{letter}: {several}"


def _kind(widget: QWidget) -> str:
    return next(kind.__name__ for kind in INPUTS if isinstance(widget, kind))
