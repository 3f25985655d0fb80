"""Memory of the window while jobs are opened one after the other.

Usage: python -m tests.steady [JOBS] [EVERY]    prints a line for each EVERY jobs (500 and 100)
"""

import gc
import os
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from chargebench.desk import Desk, sample
from chargebench.steps import STEPS
from chargebench.ui import theme
from chargebench.ui.window import MainWindow

_STATUS = Path("/proc/self/status")
KEYS = ("nameplate", "as_found", "recovery", "evacuation", "weigh_in", "close")


def resident_mib() -> float:
    """Memory this process holds now [MiB]; Linux only."""
    line = next(each for each in _STATUS.read_text().splitlines() if each.startswith("VmRSS"))
    return int(line.split()[1]) / 1024


def opened(window: MainWindow, desk: Desk, jobs: int, every: int) -> Iterator[tuple[int, float]]:
    """Open jobs at steps in turn; how many were opened, and the memory held [MiB]."""
    ids = [line.id for line in desk.jobs()]
    assert set(KEYS) <= set(STEPS)
    for number in range(jobs + 1):
        if number % every == 0:
            gc.collect()
            yield number, resident_mib()
        window.bench.open_job(ids[number % len(ids)], KEYS[number % len(KEYS)])
        window.grab()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        QApplication.processEvents()
        window.bench.show_list()


def main() -> None:
    """Print what is held."""
    jobs, every = (int(each) for each in (*sys.argv[1:], *("500", "100")[len(sys.argv) - 1 :]))
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    app = QApplication([])
    theme.apply(app, dark=False, text=1.0)
    with (
        tempfile.TemporaryDirectory() as away,
        sample.build(Path(away) / "sample.chargebench") as desk,
    ):
        window = MainWindow()
        window.show()
        window.open_desk(desk)
        for number, held in opened(window, desk, jobs, every):
            print(f"{number:5d} jobs  {held:7.1f} MiB", flush=True)
        window.close()


if __name__ == "__main__":
    main()
