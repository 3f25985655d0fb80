"""What the plots of tests stand on: the plotting library, brought in aside, and what is said."""

import importlib
import threading
from typing import Any, Protocol

from PySide6.QtWidgets import QWidget


class Drawable(Protocol):
    """What the plot of any test says beside its drawing."""

    @property
    def verdict(self) -> str:
        """The verdict as a sentence."""

    @property
    def left_open(self) -> str:
        """What can not be excluded."""

    @property
    def word(self) -> str:
        """The verdict's word."""

    @property
    def key_words(self) -> str:
        """What the marks in the drawing mean."""

    @property
    def sentence(self) -> str:
        """All of it in words."""


class Chart(Protocol):
    """A drawing that is made once and drawn anew for each reading."""

    widget: QWidget

    def draw(self, view: Any) -> None:
        """Draw it all again."""


class _Library:
    """The plotting library, brought in on a thread so that the window stays free meanwhile."""

    def __init__(self) -> None:
        self._thread: threading.Thread | None = None

    def load(self) -> None:
        """Begin to bring it in, once."""
        if self._thread is None:
            self._thread = threading.Thread(target=self._bring_in)
            self._thread.start()

    @staticmethod
    def _bring_in() -> None:
        importlib.import_module("pyqtgraph")

    @property
    def loaded(self) -> bool:
        """Whether it is there."""
        return self._thread is not None and not self._thread.is_alive()


LIBRARY = _Library()


def load() -> None:
    """Begin to bring the plotting library in, for a window that has nothing else to do."""
    LIBRARY.load()
