"""Practice instruments on pseudo-terminals: a scale that pours slowly, a vacuum gauge that rises.

For trying the bench out without hardware, and for the tests; they speak as a real one would.
"""

import math
import os
import threading
import time
from collections.abc import Callable
from typing import Self

from chargebench.errors import ChargebenchError
from chargebench.instruments.settings import LineSettings

EVERY_S = 0.2
SETTLE_S = 1.2  # a platform rings for so long after the mass on it changed
SCALE_SETTINGS = LineSettings(stable="ST", moving="US")
GAUGE_SETTINGS = LineSettings()


def offered() -> bool:
    """Whether this system has pseudo-terminals."""
    return hasattr(os, "openpty")


class Practice:
    """A pseudo-terminal at which something writes a line every so often until it is closed."""

    def __init__(self, line: Callable[[], str], *, every_s: float = EVERY_S) -> None:
        if not offered():
            raise ChargebenchError(
                "Practice instruments need pseudo-terminals, which this system does not have; "
                "expected Linux or macOS."
            )
        import tty  # not on every system

        self._line = line
        self._every_s = every_s
        self._stop = threading.Event()
        self._ours, self._theirs = os.openpty()
        tty.setraw(self._theirs)
        os.set_blocking(self._ours, False)
        self.port = os.ttyname(self._theirs)
        self._thread = threading.Thread(target=self._run, name="practice", daemon=True)
        self._thread.start()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def close(self) -> None:
        """Pull the plug."""
        if self._stop.is_set():
            return
        self._stop.set()
        self._thread.join(2.0)
        os.close(self._ours)
        os.close(self._theirs)

    def _run(self) -> None:
        while not self._stop.wait(self._every_s):
            try:
                os.write(self._ours, self._line().encode("ascii") + b"\r\n")
            except BlockingIOError:
                _drain(self._theirs)  # nobody listens; what is old is of no use


def _drain(terminal: int) -> None:
    import termios  # not on every system

    termios.tcflush(terminal, termios.TCIFLUSH)


class PracticeScale:
    """A cylinder on a scale of 0.1 g; its valve is opened and closed."""

    def __init__(
        self,
        *,
        start_g: float = 4312.5,
        rate_g_per_min: float = 60.0,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._clock = clock
        self._mass_g = start_g
        self._rate = rate_g_per_min / 60.0
        self._opened_at: float | None = None
        self._changed_at = -math.inf

    @property
    def pouring(self) -> bool:
        """Whether the valve is open."""
        return self._opened_at is not None

    @property
    def mass_g(self) -> float:
        """What stands on it now."""
        if self._opened_at is None:
            return self._mass_g
        return max(self._mass_g - self._rate * (self._clock() - self._opened_at), 0.0)

    def turn_valve(self) -> None:
        """Open the valve, or close it."""
        now = self._clock()
        if self._opened_at is None:
            self._opened_at = now
        else:
            self._mass_g = self.mass_g
            self._opened_at, self._changed_at = None, now

    def line(self) -> str:
        """What it sends now."""
        since = self._clock() - self._changed_at
        rests = not self.pouring and since > SETTLE_S
        ring = 0.0 if rests or self.pouring else 0.4 * math.exp(-4 * since) * math.cos(25 * since)
        return f"{'ST' if rests else 'US'},GR,{self.mass_g + ring:+09.1f} g"


class PracticeGauge:
    """A vacuum gauge on a system with a little water in it and a small leak."""

    def __init__(
        self,
        *,
        start_micron: float = 320.0,
        leak_micron_per_min: float = 0.5,
        water_micron: float = 260.0,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._clock = clock
        self._start, self._leak, self._water = start_micron, leak_micron_per_min, water_micron
        self._from = clock()

    def line(self) -> str:
        """What it sends now."""
        minutes = (self._clock() - self._from) / 60.0
        rise = self._leak * minutes + self._water * (1 - math.exp(-minutes / 6.0))
        return f"VAC {self._start + rise:6.0f} micron"
