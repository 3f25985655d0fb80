"""Pseudo-terminals that stand for instruments: written to by a test, listened to by the program."""

import os
import time
import tty
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import Self

from chargebench.instruments.listening import Listener, Live
from chargebench.instruments.settings import LineSettings
from chargebench.units import Kind, Quantity

WAIT_S = 8.0
STEP_S = 0.02


class Terminal:
    """One end is an instrument, the other a port."""

    def __init__(self) -> None:
        self.ours, self.theirs = os.openpty()
        tty.setraw(self.theirs)
        self.port = os.ttyname(self.theirs)
        self._open = True

    def say(self, text: str | bytes) -> None:
        """Send as it stands."""
        data = text.encode("latin-1") if isinstance(text, str) else text
        while data:
            data = data[os.write(self.ours, data) :]

    def heard(self) -> bytes:
        """What was sent to the instrument."""
        os.set_blocking(self.ours, False)
        try:
            return os.read(self.ours, 4096)
        except BlockingIOError:
            return b""

    def unplug(self) -> None:
        """Take the adapter out."""
        if self._open:
            self._open = False
            os.close(self.theirs)
            os.close(self.ours)

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        _type: type[BaseException] | None,
        _error: BaseException | None,
        _at: TracebackType | None,
    ) -> None:
        self.unplug()


@contextmanager
def listen(
    port: str | Path,
    settings: str = "9600 8N1",
    kind: Kind = Kind.SCALE,
    *,
    resolution: Quantity | None = None,
) -> Iterator[Listener]:
    """A listener by its settings' text, stopped at the end."""
    listener = Listener(str(port), LineSettings.read(settings), kind, resolution=resolution)
    try:
        yield listener
    finally:
        listener.stop(wait=True)


def until(
    listener: Listener, holds: Callable[[Live], bool], also: Callable[[], None] = lambda: None
) -> Live:
    """What the listener knows once something holds; `also` is done in every round."""
    for _ in range(round(WAIT_S / STEP_S)):
        also()
        live = listener.live()
        if holds(live):
            return live
        pause()
    raise AssertionError(f"never came: {listener.live()}")


def pause(seconds: float = STEP_S) -> None:
    """Let the other threads run."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        os.sched_yield() if hasattr(os, "sched_yield") else None
