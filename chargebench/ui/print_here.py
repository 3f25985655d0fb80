"""Printing by button and key; what draws papers is brought in when it is first wanted."""

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QPushButton, QWidget

from chargebench.desk import Desk, Filters
from chargebench.ui.language import tr
from chargebench.ui.period import Period

KEY = "Ctrl+P"


def print_button(words: str, tip: str, page: QWidget, show: Callable[[], object]) -> QPushButton:
    """A button that shows what can be printed on a page, and its key."""
    button = QPushButton(tr(words))
    button.setToolTip(tr(tip))
    button.clicked.connect(lambda _: show())
    shortcut = QShortcut(QKeySequence(KEY), page)
    shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    shortcut.activated.connect(show)
    return button


def print_job(desk: Desk, job: str, parent: QWidget) -> None:
    """Show a job's report, checklist and statement."""
    from chargebench.ui import papers

    papers.show(papers.of_job(desk, job), desk, parent)


def print_cylinder(desk: Desk, cylinder: str, listed: Sequence[str], parent: QWidget) -> None:
    """Show a cylinder's label, those of all that are listed, and how it was handed over."""
    from chargebench.ui import papers

    if cylinder:
        papers.show(papers.of_cylinder(desk, cylinder, listed), desk, parent)


def print_usage(desk: Desk, period: Period, filters: Filters, parent: QWidget) -> None:
    """Show the usage log of a period."""
    from chargebench.ui import papers

    papers.show(papers.of_usage(desk, period, filters), desk, parent)
