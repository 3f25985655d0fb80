"""The shop the walks begin with, its window, and hands to type with."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui import theme
from chargebench.ui.window import MainWindow
from tests.hands import Hands
from tests.walks.prompt import Prompt
from tests.walks.shop import furnish


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[Desk]:
    """An invented shop with equipment, cylinders and instruments, and no job yet."""
    shop = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"}
    made = Desk.create(
        tmp_path / "shop.chargebench", shop, {"name": "N. Okafor", "role": "technician"}
    )
    furnish(made)
    yield made
    made.close()


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, desk: Desk) -> MainWindow:
    """The window on the shop."""
    theme.apply(qapp, dark=False, text=1.0)
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
    """A person at the keyboard of that window."""
    return Hands(window)


@pytest.fixture
def run(sample_shop: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Prompt:
    """Where commands are given, on a copy of the sample shop."""
    shop = tmp_path / "copy.chargebench"
    shutil.copy(sample_shop, shop)
    return Prompt(shop, capsys)
