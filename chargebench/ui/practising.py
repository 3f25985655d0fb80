"""Practice instruments inside the window, alive until the program ends: one scale, one gauge."""

from chargebench.instruments import LineSettings
from chargebench.instruments.practice import (
    GAUGE_SETTINGS,
    SCALE_SETTINGS,
    Practice,
    PracticeGauge,
    PracticeScale,
)
from chargebench.units import Kind

WAITS_S = 20.0  # time to mark the start before the practice scale pours
POURS_S = 120.0

_open: dict[Kind, Practice] = {}


class SelfPouring:
    """A practice scale whose valve opens and closes by itself: there is no hand on it here."""

    def __init__(self, scale: PracticeScale) -> None:
        self._scale = scale
        self._lines = 0

    def line(self) -> str:
        """What it sends now."""
        self._lines += 1
        seconds = self._lines * 0.2
        wanted = WAITS_S <= seconds < WAITS_S + POURS_S
        if wanted != self._scale.pouring:
            self._scale.turn_valve()
        return self._scale.line()


def practise(kind: Kind) -> tuple[str, LineSettings]:
    """Port of a practice instrument that begins anew now, and how it speaks."""
    if kind in _open:
        _open.pop(kind).close()
    line = SelfPouring(PracticeScale()).line if kind is Kind.SCALE else PracticeGauge().line
    _open[kind] = Practice(line)
    return _open[kind].port, SCALE_SETTINGS if kind is Kind.SCALE else GAUGE_SETTINGS
