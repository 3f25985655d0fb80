"""Sees whether somebody is at work, so that a signature left unlocked locks itself."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QTimer, Signal

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
    """Watches only while a signature is unlocked: the filter sees every event there is."""

    lapsed = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._desk: Desk | None = None
        self._timer = QTimer(self)
        self._timer.setInterval(CHECK_MS)
        self._timer.timeout.connect(self.check)

    def watch(self, desk: "Desk") -> None:
        """Watch if there is something to lock."""
        self._desk = desk
        app = QCoreApplication.instance()
        assert app is not None
        app.removeEventFilter(self)
        self._timer.stop()
        if desk.unlocked:
            app.installEventFilter(self)
            self._timer.start()

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

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802, ARG002 - Qt's
        """A key or a touch is work."""
        if event.type() in _WORK and self._desk is not None:
            self._desk.touch()
        return False
