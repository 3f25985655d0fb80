"""A small invented shop for the window's tests, and its window."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui import theme
from chargebench.ui.window import MainWindow
from tests.hands import Hands


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[Desk]:
    """A shop with a freezer, a full cylinder and two scales."""
    shop = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"}
    made = Desk.create(tmp_path / "shop", shop, {"name": "N. Okafor", "role": "technician"})
    site = made.save_row("site", None, {"name": "Bakery, Quay Street"})
    freezer = {
        "name": "Bakery freezer",
        "site": site,
        "category": "commercial refrigeration",
        "cabinet": "self-contained with doors or drawers",
        "refrigerant": "R290",
        "charge": "3.0 oz",
        "tolerance": "2 g",
    }
    made.save_row("equipment", "E-203", freezer)
    cylinder = {"refrigerant": "R290", "contents": "new", "refillable": "yes"}
    made.save_row("cylinder", "C-014", cylinder)
    made.save_row("instrument", "S-2", _scale("Bench scale", "0.1 g"))
    made.save_row("instrument", "S-3", _scale("Floor scale", "10 g"))
    made.act("receive", {"cylinder": "C-014", "mass": "4 kg"})
    yield made
    made.close()


def _scale(name: str, resolution: str) -> dict[str, str]:
    return {"kind": "scale", "name": name, "resolution": resolution, "repeatability": "0.2 g"}


@pytest.fixture
def job(desk: Desk) -> str:
    """A job on the freezer."""
    return desk.open_job("E-203", "not holding temperature")


@pytest.fixture
def themed(qapp: QApplication) -> QApplication:
    """The program's own colours and sizes, light."""
    theme.apply(qapp, dark=False, text=1.0)
    return qapp


@pytest.fixture
def window(qtbot: QtBot, themed: QApplication, desk: Desk) -> MainWindow:  # noqa: ARG001
    """The window on the shop."""
    made = MainWindow()
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    made.open_desk(desk)
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


@pytest.fixture
def hands(window: MainWindow) -> Hands:
    return Hands(window)


@pytest.fixture
def at_job(hands: Hands, job: str) -> Hands:
    hands.window.bench.open_job(job)
    return hands
