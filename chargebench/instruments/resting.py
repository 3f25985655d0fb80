"""Whether readings rest, where the instrument itself does not say so."""

from decimal import Decimal

STEPS = 1  # of the resolution the readings may differ by; our own choice, as is the next
SECONDS = 2.0
READINGS_LEAST = 3
GAP_S = 1.5  # a longer pause between two readings says nothing of what was between


class Resting:
    """Readings that stay within some steps of the resolution for some seconds.

    Keeps the range since it last had to begin again, so its memory does not grow.
    """

    def __init__(self, *, steps: int = STEPS, seconds: float = SECONDS) -> None:
        self._steps = steps
        self._seconds = seconds
        self._low = self._high = Decimal(0)
        self._unit = ""
        self._since = self._last = 0.0
        self._count = 0

    def add(self, value: Decimal, unit: str, resolution: Decimal, at: float) -> bool:
        """Take a reading; whether it rests now."""
        low, high = min(self._low, value), max(self._high, value)
        moved = high - low > self._steps * resolution
        if not self._count or moved or unit != self._unit or at - self._last > GAP_S:
            self._low = self._high = value
            self._unit, self._since, self._count = unit, at, 0
        else:
            self._low, self._high = low, high
        self._count += 1
        self._last = at
        return self._count >= READINGS_LEAST and at - self._since >= self._seconds
