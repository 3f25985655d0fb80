"""Looks now and then what other benches of a shared shop have recorded."""

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from chargebench.errors import ChargebenchError

if TYPE_CHECKING:
    from chargebench.desk import Desk

EACH_MS = 4_000
GONE_MS = 60_000  # while the server does not answer, for each try holds the window for seconds


class Lookout(QTimer):
    """Says when another bench has recorded, and once when the server is gone."""

    moved = Signal()
    gone = Signal(str)

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._desk: Desk | None = None
        self.timeout.connect(self.look)

    def watch(self, desk: "Desk") -> None:
        """Watch a shop, if it is one that others record in too."""
        self._desk = desk
        if desk.shared:
            self.start(EACH_MS)
        else:
            self.stop()

    def look(self) -> None:
        """Look now."""
        assert self._desk is not None
        try:
            if self._desk.refresh():
                self.moved.emit()
            self.setInterval(EACH_MS)
        except ChargebenchError as refusal:
            if self.interval() == EACH_MS:
                self.gone.emit(str(refusal))
            self.setInterval(GONE_MS)
