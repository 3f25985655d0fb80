"""How views learn that something was recorded."""

from PySide6.QtCore import QObject, Signal


class Notifier(QObject):
    """One signal for the whole window: something was recorded, read again what you show."""

    changed = Signal()
