"""A shop too large to be copied before it is shown: its backup is kept on a thread, and told of."""

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ledger import Ledger
from chargebench.ledger.backup import backups
from chargebench.ui import app
from chargebench.ui.window import MainWindow
from tests.ledger import books


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """A shop file with a job in it, of which no backup was kept yet."""
    path = tmp_path / "larkmoor.chargebench"
    with Ledger.create(path) as ledger:
        books.whole_job(ledger)
    return path


def test_that_a_large_file_is_opened_first_and_copied_then(shop: Path) -> None:
    with Desk.open(shop, at_once=0) as desk:
        assert desk.backup_waits
        assert backups(shop) == []
        assert desk.backup() == backups(shop)[0]
    with Desk.open(shop, at_once=10**9) as desk:
        assert not desk.backup_waits


def test_that_the_window_keeps_the_backup_that_waits(
    qtbot: QtBot, qapp: QApplication, shop: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    del qapp
    monkeypatch.setattr(app, "BACKUP_AT_ONCE", 0)
    window = MainWindow()
    qtbot.addWidget(window)
    start = app._Start(window, shop)
    start.open()
    qtbot.waitUntil(lambda: len(backups(shop)) == 1)
    qtbot.waitUntil(lambda: window.foot.text().startswith("Backed up"))
    start.finish()
