"""How fast a mass pours, and when it will be where it should stop."""

from collections import deque
from dataclasses import dataclass

EVERY_S = 0.2  # readings nearer than this say nothing more
OVER_S = 6.0  # the rate is taken over so many seconds: long enough to be calm, short enough to turn
LEAST_S = 2.0


@dataclass(frozen=True, slots=True)
class _Point:
    at: float
    value: float


class Pouring:
    """Rate of the newest readings by a straight line through them."""

    def __init__(self) -> None:
        self._points: deque[_Point] = deque(maxlen=round(OVER_S / EVERY_S) + 1)

    def clear(self) -> None:
        """Begin again, as after another unit or a lost port."""
        self._points.clear()

    def add(self, value: float, at: float) -> None:
        """Take a reading, in one unit throughout."""
        if self._points and at - self._points[-1].at < EVERY_S:
            return
        self._points.append(_Point(at, value))
        while at - self._points[0].at > OVER_S:
            self._points.popleft()

    @property
    def per_minute(self) -> float | None:
        """Slope in the readings' unit per minute; None before it can be told."""
        if len(self._points) < 3 or self._points[-1].at - self._points[0].at < LEAST_S:
            return None
        count = len(self._points)
        middle = sum(p.at for p in self._points) / count
        mean = sum(p.value for p in self._points) / count
        spread = sum((p.at - middle) ** 2 for p in self._points)
        return 60.0 * sum((p.at - middle) * (p.value - mean) for p in self._points) / spread


def seconds_to(to_go: float, per_minute: float | None, least: float) -> float | None:
    """Seconds until `to_go` has poured; None where it does not pour, slower than `least`."""
    if per_minute is None or per_minute < least or to_go <= 0:
        return None
    return 60.0 * to_go / per_minute
