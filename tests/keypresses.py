"""Key presses and seconds of program time of common tasks, by driving the real window.

Usage: python -m tests.keypresses    prints a tab-separated table; typed text counts key by key
"""

import os
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from chargebench.desk import Desk, sample
from chargebench.ui import theme
from chargebench.ui.records import RecordsArea
from chargebench.ui.stock import StockArea
from chargebench.ui.window import MainWindow
from tests.hands import ALT, BARE, CTRL, SHIFT, Hands
from tests.tour import wait_until

Task = Callable[["Counting"], None]
Key = Qt.Key


class Counting(Hands):
    """Hands that count what they press."""

    def __init__(self, window: MainWindow, desk: Desk) -> None:
        super().__init__(window)
        self.desk = desk
        self.presses = 0

    def type(self, text: str, *, then: Qt.Key | None = None) -> None:
        self.presses += len(text)
        super().type(text, then=then)

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier = BARE) -> None:
        self.presses += 1
        super().press(key, held)


def _find(hands: Counting) -> None:
    hands.press(Key.Key_F, CTRL)
    hands.type("freezer", then=Key.Key_Return)
    assert hands.desk.job(hands.page.where()[0]).number == "B-0010"


def _new(hands: Counting) -> None:
    before = len(hands.desk.jobs())
    hands.press(Key.Key_N, CTRL)
    hands.press(Key.Key_Return)
    hands.press(Key.Key_Return)
    assert len(hands.desk.jobs()) == before + 1


def _sign(hands: Counting) -> None:
    hands.to_step("findings")
    hands.press(Key.Key_Tab)
    hands.type("Valve core leaks.")
    hands.sign()
    assert hands.page.steps.current() != "findings", hands.page.pane.strip.says.text()


def _aside(hands: Counting) -> None:
    step = hands.page.steps.current()
    hands.press(Key.Key_N, CTRL | SHIFT)
    hands.type("not opened", then=Key.Key_Return)
    assert hands.page.steps.current() != step


def _flags(hands: Counting) -> None:
    hands.press(Key.Key_F8)
    hands.press(Key.Key_F8)


def _jobs(hands: Counting) -> None:
    hands.press(Key.Key_Left, ALT)
    assert hands.window.bench.shown_job() is None


def _scan(hands: Counting) -> None:
    hands.press(Key.Key_2, ALT)
    hands.press(Key.Key_F, CTRL)
    hands.type("C-014", then=Key.Key_Return)
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    assert stock.page.cylinder == "C-014"


def _weigh(hands: Counting) -> None:
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    hands.press(Key.Key_W, ALT)
    wait_until(lambda: stock.currentIndex() > 1)
    assert stock.act("weigh").form.typed()["cylinder"] == "C-014"


def _verify(hands: Counting) -> None:
    hands.press(Key.Key_3, ALT)
    records = hands.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    hands.press(Key.Key_V, ALT)
    wait_until(lambda: "nothing disagrees" in records.verify_panel.says.text())


def _back(hands: Counting) -> None:
    hands.press(Key.Key_1, ALT)
    assert hands.window.stack.currentWidget() is hands.window.bench


TASKS: dict[str, Task] = {
    "find a job by a word and open it": _find,
    "go back to the list of jobs": _jobs,
    "new job on the equipment visited last": _new,
    "go to Findings, type what was found, sign it": _sign,
    "set a step aside with a reason": _aside,
    "see all flags of a job, and put them away": _flags,
    "go to Stock and open a cylinder by a scanned label": _scan,
    "begin to weigh that cylinder": _weigh,
    "go to Records and verify the whole chain": _verify,
    "go back to the bench": _back,
}


def main() -> None:
    """Do the tasks one after the other and print what each took."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = QApplication([])
    theme.apply(app, dark=False, text=1.0)
    with (
        tempfile.TemporaryDirectory() as away,
        sample.build(Path(away) / "sample.chargebench") as desk,
    ):
        window = MainWindow()
        window.resize(1280, 800)
        window.show()
        window.open_desk(desk)
        window.activateWindow()
        wait_until(window.isActiveWindow)
        window.bench.search.setFocus()
        print("task\tkey presses\tseconds")
        for name, task in TASKS.items():
            hands = Counting(window, desk)
            begun = time.perf_counter()
            task(hands)
            window.grab()
            print(f"{name}\t{hands.presses}\t{time.perf_counter() - begun:.3f}", flush=True)
        window.close()


if __name__ == "__main__":
    main()
