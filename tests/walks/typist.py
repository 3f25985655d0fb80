"""A window in a process of its own: a scripted person types and signs, until killed.

Says each thing as a line of JSON: what stands in the open step after a key, and when; and the
entry of a step, once signing it has returned.

Usage: python -m tests.walks.typist SHOP JOB
"""

import json
import os
import sys
import time
from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from chargebench.desk import Desk
from chargebench.ui import theme
from chargebench.ui.window import MainWindow
from tests.hands import Hands, focused

KEY_EVERY_MS = 10
_LONG = "Stem of the process valve bubbles slowly; cap without its gasket, oil around the stub. "
# Texts of each step in the order of its fields; `>` goes on to the next field.
SCRIPT: dict[str, str] = {
    "nameplate": "R290>3.0 oz>2 g>150 psig>>TF-2D>21C-04417>24 m²>2.8 m>2025-09-12>" + _LONG,
    "as_found": "1013 hPa>R290>y>2.8 psig>27 F>151 psig>79 F>71 °C>33 °C>-37 °C>-14 °C>",
    "findings": _LONG * 4 + ">" + _LONG + ">" + _LONG * 2,
    "support": "suction p>box at -20 °C>2 to 5 psig>0.5 psi>service sheet>",
    "time_and_parts": ">>40 min>filter drier>032>1>replaced",
}


def _say(**said: object) -> None:
    os.write(1, json.dumps(said).encode() + b"\n")


class Typist:
    """Works through the script, a key at each tick of the clock."""

    def __init__(self, window: MainWindow, desk: Desk, job: str) -> None:
        self._hands = Hands(window)
        self._desk = desk
        self._job = job
        self._keys = self._script()
        page = self._hands.page
        page.pane.recorded.connect(lambda *_: self._signed())
        self._said: set[str] = set()
        self._clock = QTimer(window)
        self._clock.timeout.connect(self._tick)

    def start(self) -> None:
        """Begin to type."""
        self._clock.start(KEY_EVERY_MS)

    def _signed(self) -> None:
        for step in self._desk.job(self._job).steps:
            if step.entry and step.entry not in self._said:
                self._said.add(step.entry)
                _say(signed=step.entry, step=step.key)

    def _tick(self) -> None:
        next(self._keys)
        page = self._hands.page
        _say(step=page.steps.current(), typed=page.pane.form().typed(), at=time.monotonic())

    def _script(self) -> Iterator[None]:
        for step, text in SCRIPT.items():
            while self._hands.page.steps.current() != step:
                self._hands.press(Qt.Key.Key_Down, Qt.KeyboardModifier.ControlModifier)
                yield
            for key in text:
                self._press(key)
                yield
            self._hands.sign()
            yield
        self._hands.to_step("close")
        self._hands.fill(self._hands.form, {"remarks": ""})
        while True:
            for key in _LONG:
                self._press(key)
                yield

    def _press(self, key: str) -> None:
        if key == ">":
            self._hands.press(Qt.Key.Key_Tab)
        else:
            QTest.keyClicks(focused(), key)


def main(shop: Path, job: str) -> None:
    """Open the window on a shop at a job, and type."""
    app = QApplication([])
    theme.apply(app, dark=False, text=1.0)
    window = MainWindow()
    window.show()
    desk = Desk.open(shop)
    window.open_desk(desk)
    window.bench.open_job(job)
    window.activateWindow()
    typist = Typist(window, desk, job)
    QTimer.singleShot(0, typist.start)
    app.exec()


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2])
