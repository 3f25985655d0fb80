"""Sees whether somebody is at work, so that a signature left unlocked locks itself."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QTimer, Signal
from PySide6.QtGui import QGuiApplication, QWindow

if TYPE_CHECKING:
    from chargebench.desk import Desk

CHECK_MS = 5_000
_WORK = frozenset(
    {
        QEvent.Type.KeyPress,
        QEvent.Type.MouseButtonPress,
        QEvent.Type.Wheel,
        QEvent.Type.TouchBegin,
    }
)


class IdleWatch(QObject):
    """Watches only while a signature is unlocked, and only the window that has the keys.

    A filter on the application would see every event of every object, also of those that are
    just being made or destroyed; each of them would be handed to Python half alive.
    """

    lapsed = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._desk: Desk | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(CHECK_MS)
        self._timer.timeout.connect(self.check)
        app = QGuiApplication.instance()
        assert isinstance(app, QGuiApplication)
        app.focusWindowChanged.connect(self._look_at)

    def watch(self, desk: "Desk") -> None:
        """Watch if there is something to lock."""
        self._desk = desk
        if desk.unlocked:
            self._timer.start()
        else:
            self._timer.stop()
        self._look_at(QGuiApplication.focusWindow())

    @property
    def watching(self) -> bool:
        """Whether there is something to lock."""
        return self._timer.isActive()

    def check(self) -> None:
        """Lock and say so once the shift or the patience is over."""
        if self._desk is not None and not self._desk.unlocked:
            self._desk.lock()
            self.watch(self._desk)
            self.lapsed.emit()

    def _look_at(self, window: QWindow | None) -> None:
        """Keys and touches come in through the window that has the focus: this one, a dialog."""
        if window is None:
            return
        window.removeEventFilter(self)
        if self.watching:
            window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802, ARG002 - Qt's
        """A key or a touch is work."""
        if event.type() in _WORK and self._desk is not None:
            self._desk.touch()
        return False
