"""One keystroke in the heaviest form: a blend of five, 60 decay readings, 200 equipment listed.

Usage: python -m tests.benchmarks.keystroke FOLDER KEYS
"""

import json
import math
import statistics
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QWidget

from chargebench.desk import Desk
from chargebench.ui import theme
from chargebench.ui.window import MainWindow
from tests.benchmarks.measure import Row, child

BLEND, EQUIPMENT, READINGS = "R448A", 200, 60  # R448A: five components


def shop(folder: Path) -> tuple[Desk, str]:
    """An invented shop with 200 equipment, and a job with 60 decay readings typed."""
    about = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"}
    desk = Desk.create(
        folder / "keys.chargebench", about, {"name": "N. Okafor", "role": "technician"}
    )
    site = desk.save_row("site", None, {"name": "Harbour Kitchen"})
    for number in range(EQUIPMENT):
        row = {
            "name": f"Walk-in {number}",
            "site": site,
            "category": "commercial refrigeration",
            "cabinet": "walk-in or remote condensing",
            "refrigerant": BLEND,
            "charge": "12 kg",
        }
        desk.save_row("equipment", f"E-{number:03d}", row)
    desk.save_row("instrument", "I-001", {"kind": "vacuum gauge", "name": "Gauge"})
    job = desk.open_job("E-007", "lost its charge")
    # A leak of a steady rise over moisture that levels off, in pascals.
    decay = [
        {"at": f"{at / 2:g} min", "reading": f"{70 + 0.8 * at - 30 * math.exp(-at / 12):.2f} Pa"}
        for at in range(READINGS)
    ]
    typed: dict[str, Any] = {
        "gauge": "I-001",
        "coldest": "18 °C",
        "volume": "4.5 L",
        "decay": decay,
    }
    desk.keep(job, "evacuation", typed)
    return desk, job


def press(folder: Path, keys: int) -> list[float]:
    """Milliseconds from each key to the repainted window."""
    app = QApplication.instance() or QApplication([])
    assert isinstance(app, QApplication)
    theme.apply(app)
    desk, job = shop(folder)
    window = MainWindow()
    window.resize(1180, 780)
    window.show()
    window.open_desk(desk)
    window.bench.open_job(job)
    page = window.bench.job_page()
    page.steps.choose("evacuation")
    page.pane.form().row("volume").editors()[0].setFocus()
    _settle(app)
    found = []
    for number in range(keys):
        at: QWidget | None = QApplication.focusWidget()
        assert at is not None
        if number % 10 == 9:
            at.selectAll()  # type: ignore[attr-defined]
        began = time.perf_counter()
        QTest.keyClicks(at, "4.5 L 4.5 "[number % 10])
        app.processEvents()
        found.append((time.perf_counter() - began) * 1000)
    window.close()
    desk.close()
    return found


def labels_only(keys: int) -> list[float]:
    """The floor: a key that sets 24 labels of a window, and nothing worked out."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    page = QWidget()
    labels = [QLabel(page) for _ in range(24)]
    for number, label in enumerate(labels):
        label.setGeometry(10, 20 * number, 300, 20)
    page.show()
    _settle(app)
    found = []
    for number in range(keys):
        began = time.perf_counter()
        for label in labels:
            label.setText(f"{number} g")
        app.processEvents()
        found.append((time.perf_counter() - began) * 1000)
    return found


def _settle(app: QApplication) -> None:
    until = time.monotonic() + 1.5
    while time.monotonic() < until:
        app.processEvents()


def rows(folder: Path, keys: int = 1000) -> Iterator[Row]:
    """Median and worst of so many keys, in a process of its own."""
    said = child("tests.benchmarks.keystroke", str(folder), str(keys))
    ours = said["ours"]
    floor = statistics.median(said["floor"])
    yield Row(
        "keystroke to repainted form, median", statistics.median(ours), "ms", "24 labels only",
        floor, most=3, runs=keys,
    )  # fmt: skip
    yield Row(
        f"keystroke to repainted form, worst of {keys}", max(ours), "ms", "24 labels only",
        max(said["floor"]), most=8, runs=keys,
    )  # fmt: skip


if __name__ == "__main__":
    pressed = press(Path(sys.argv[1]), int(sys.argv[2]))
    print(json.dumps({"ours": pressed, "floor": labels_only(int(sys.argv[2]))}))
