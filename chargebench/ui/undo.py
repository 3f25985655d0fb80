"""Undo of what is typed in a form, whatever it is typed in."""

import time
from collections.abc import Callable
from copy import deepcopy

from chargebench.steps import Typed

STEPS_MOST = 500
ONE_GO_SECONDS = 1.5  # typing in one field without a longer pause is undone in one go


class TypedUndo:
    """What stood in the form before each change; whole forms are a few kilobytes."""

    def __init__(self, clock: Callable[[], float] = time.monotonic) -> None:
        self._clock = clock
        self._now: Typed = {}
        self._back: list[tuple[str, Typed]] = []
        self._forward: list[tuple[str, Typed]] = []
        self._last = ("", 0.0)

    def start(self, typed: Typed) -> None:
        """Begin with a form put up afresh."""
        self._now = deepcopy(typed)
        self._back.clear()
        self._forward.clear()
        self._last = ("", 0.0)

    def changed(self, path: str, typed: Typed) -> None:
        """A person changed the field at a path."""
        if typed == self._now:
            return
        same_go = self._last[0] == path and self._clock() - self._last[1] < ONE_GO_SECONDS
        if not same_go:
            self._back.append((path, self._now))
            del self._back[:-STEPS_MOST]
        self._forward.clear()
        self._now = deepcopy(typed)
        self._last = (path, self._clock())

    def undo(self) -> tuple[str, Typed] | None:
        """Path changed and the form before it; None where there is nothing to undo."""
        return self._move(self._back, self._forward)

    def redo(self) -> tuple[str, Typed] | None:
        """Path changed and the form after it."""
        return self._move(self._forward, self._back)

    def _move(
        self, source: list[tuple[str, Typed]], target: list[tuple[str, Typed]]
    ) -> tuple[str, Typed] | None:
        if not source:
            return None
        path, typed = source.pop()
        target.append((path, self._now))
        self._now = typed
        self._last = ("", 0.0)
        return path, deepcopy(typed)
