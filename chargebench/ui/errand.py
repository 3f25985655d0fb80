"""Work on a thread of its own, with progress and cancel; the window never waits for it."""

import threading
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QCoreApplication, QThread, Signal, Slot

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError

_STOP_MS = 10_000
_RUNNING: set["Errand"] = set()


class Errand(QThread):
    """One piece of reading work on a desk of its own."""

    progressed = Signal(str, int, int)  # what, done, of
    partly = Signal(object)  # what is known so far, to be shown meanwhile
    done = Signal(object)
    refused = Signal(str)
    _broke = Signal(object)

    def __init__(self, desk: Desk, work: Callable[[Desk, "Errand"], Any]) -> None:
        super().__init__()
        self._desk = desk
        self._work = work
        self._cancelled = threading.Event()
        self._broke.connect(self._raise)
        self.finished.connect(self._over)
        app = QCoreApplication.instance()
        assert app is not None
        app.aboutToQuit.connect(self.finish)

    def begin(self) -> None:
        """Start; the thread is kept until it is done, whatever becomes of the page."""
        _RUNNING.add(self)
        self.start()

    @Slot()
    def _over(self) -> None:
        _RUNNING.discard(self)

    def cancel(self) -> None:
        """Ask the work to stop; it stops at its next step."""
        self._cancelled.set()

    def cancelled(self) -> bool:
        """Whether it was asked to stop."""
        return self._cancelled.is_set()

    def progress(self, what: str, so_far: int, of: int) -> None:
        """Tell how far the work is; called by the work."""
        self.progressed.emit(what, so_far, of)

    def run(self) -> None:
        """Work, on the thread; the connection belongs to the thread that opens it."""
        try:
            with self._desk.reader() as reader:
                result = self._work(reader, self)
        except ChargebenchError as refusal:
            self.refused.emit(str(refusal))
            return
        except Exception as bug:  # noqa: BLE001 - raised again where bugs are told and logged
            self._broke.emit(bug)
            return
        self.done.emit(result)

    @Slot(object)
    def _raise(self, bug: Exception) -> None:
        raise bug

    def finish(self) -> None:
        """Cancel and wait, before the window goes."""
        self.cancel()
        self.wait(_STOP_MS)
