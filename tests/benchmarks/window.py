"""A window in a process of its own, which says when it painted, when it was ready and how large.

Usage: python -m tests.benchmarks.window empty | libraries | SHOP [areas] [idle SECONDS]
"""

import json
import sys
import time
from pathlib import Path
from typing import Any

HEAVY = ("CoolProp", "pint", "sqlalchemy", "numpy", "pyqtgraph", "openpyxl", "psycopg", "fpdf")
SAID: dict[str, Any] = {}


def heavy() -> list[str]:
    """Which of the large packages are imported."""
    return [name for name in HEAVY if name in sys.modules]


def empty(*, libraries: bool) -> None:
    """An empty main window; with what every window of ours needs imported beside it."""
    from PySide6.QtCore import QTimer
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QApplication, QMainWindow

    app = QApplication([])

    class Window(QMainWindow):
        def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
            super().paintEvent(event)
            SAID.setdefault("painted", time.time())
            QTimer.singleShot(1500 if libraries else 0, app.quit)

    window = Window()
    window.resize(1180, 780)
    window.show()
    if libraries:
        import pint
        import sqlalchemy

        kept: list[Any] = [pint.UnitRegistry(cache_folder=":auto:"), sqlalchemy]
        kept[0].Quantity(1.0, "kg").to("lb")
    app.exec()


def ours(shop: Path, *, areas: bool, idle_s: float) -> None:
    """The real window on a shop, until it is ready for typing, or its areas are shown."""
    from PySide6.QtCore import QTimer
    from PySide6.QtWidgets import QApplication

    from chargebench.ui import app as desktop
    from chargebench.ui.window import MainWindow

    opened = MainWindow.open_desk

    def painted() -> None:
        SAID["painted"] = time.time()
        SAID["at_paint"] = heavy()

    def open_desk(self: MainWindow, desk: Any) -> None:
        opened(self, desk)
        QTimer.singleShot(0, lambda: ready(self))

    def ready(self: MainWindow) -> None:
        self.repaint()
        SAID["ready"] = time.time()
        SAID["at_ready"] = heavy()
        if areas:
            for place, name in ((1, "stock"), (2, "records")):
                self.show_area(place)
                QApplication.processEvents()
                self.repaint()
                SAID[name] = time.time()
        QTimer.singleShot(round(idle_s * 1000), QApplication.quit)

    began = MainWindow.__init__

    def init(self: MainWindow) -> None:
        began(self)
        self.painted.connect(painted)

    MainWindow.open_desk = open_desk  # type: ignore[method-assign]
    MainWindow.__init__ = init  # type: ignore[method-assign]
    desktop.run(shop)


def main(arguments: list[str]) -> None:
    """Show what was asked for, and say what was seen as one line of JSON."""
    from tests.benchmarks.measure import rss_mib

    what = arguments[0]
    if what in ("empty", "libraries"):
        empty(libraries=what == "libraries")
    else:
        idle = float(arguments[arguments.index("idle") + 1]) if "idle" in arguments else 0.0
        ours(Path(what), areas="areas" in arguments, idle_s=idle)
    SAID["rss"] = rss_mib()
    print(json.dumps(SAID))


if __name__ == "__main__":
    main(sys.argv[1:])
