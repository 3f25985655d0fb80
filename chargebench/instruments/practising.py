"""The practice instruments from the command line: open until interrupted."""

import sys
import threading
from collections.abc import Callable, Iterator

from chargebench.instruments.practice import (
    GAUGE_SETTINGS,
    SCALE_SETTINGS,
    Practice,
    PracticeGauge,
    PracticeScale,
)

Says = Callable[[str], object]


def run(what: str, say: Says) -> None:
    """Open the scale or the gauge and name its port; Enter turns the scale's valve."""
    scale = PracticeScale() if what == "scale" else None
    line, settings = (PracticeGauge().line, GAUGE_SETTINGS)
    if scale is not None:
        line, settings = (scale.line, SCALE_SETTINGS)
    with Practice(line) as practice:
        say(f"Practice {what} at {practice.port}, which speaks {settings}.")
        say(f"{'Enter opens and closes the valve; ' if scale else ''}Ctrl+C ends it.")
        for _ in _enters():
            if scale is not None:
                scale.turn_valve()
                say(f"Valve {'open' if scale.pouring else 'closed'}.")


def _enters() -> Iterator[None]:
    """Each press of Enter, until interrupted; where nobody can press, until interrupted."""
    try:
        for _ in sys.stdin:
            yield
        threading.Event().wait()
    except KeyboardInterrupt:
        return
