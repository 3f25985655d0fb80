"""Putting a part of a page away for good.

`deleteLater` frees what Qt holds, but PySide keeps a Python object for every widget and layout
inside for as long as the program runs: some 0.3 MiB for each job opened. Deleted through Shiboken
these go too.
"""

import shiboken6
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QWidget


def let_go(widget: QWidget) -> None:
    """Hide a widget at once; it goes when the event loop comes round: it may be in use now."""
    widget.hide()

    def delete() -> None:
        if shiboken6.isValid(widget):
            shiboken6.delete(widget)

    QTimer.singleShot(0, delete)
