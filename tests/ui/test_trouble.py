"""A shop that can not be opened, and going back to a backup: said in the window, done by key."""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.errors import StorageRefused
from chargebench.ledger import Ledger
from chargebench.ui import app
from chargebench.ui.records import RecordsArea
from chargebench.ui.trouble_page import TroublePage
from chargebench.ui.window import MainWindow
from tests.disks import small_disk
from tests.hands import Hands
from tests.ledger import books


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """A shop of 12 entries with a backup, and three entries since."""
    path = tmp_path / "larkmoor.chargebench"
    with Ledger.create(path) as ledger:
        books.whole_job(ledger)
    with Ledger.open(path) as ledger:
        for _ in range(3):
            books.receive(ledger, 7)
    return path


class Started:
    """The window as it is started on a shop file."""

    def __init__(self, qtbot: QtBot, shop: Path) -> None:
        self.window = MainWindow()
        qtbot.addWidget(self.window)
        self.window.resize(1180, 780)
        self.window.show()
        self.window.activateWindow()
        qtbot.waitUntil(self.window.isActiveWindow)
        self.start = app._Start(self.window, shop)
        self.hands = Hands(self.window)
        self.start.open()

    def page(self) -> TroublePage:
        """The page of trouble."""
        page = self.window.stack.currentWidget()
        assert isinstance(page, TroublePage)
        return page

    def desk(self) -> Desk:
        """The shop, open after all."""
        assert self.start.desk is not None
        assert self.window.stack.currentWidget() is self.window.bench
        return self.start.desk


Start = Callable[[Path], Started]


@pytest.fixture
def started(qtbot: QtBot, themed: QApplication) -> Iterator[Start]:  # noqa: ARG001
    made: list[Started] = []

    def start(shop: Path) -> Started:
        made.append(Started(qtbot, shop))
        return made[-1]

    yield start
    for each in made:
        each.start.finish()


def test_that_a_damaged_shop_offers_its_backups_with_what_they_leave_out(
    started: Start,
    file: Path,
) -> None:
    file.write_bytes(file.read_bytes()[:30_000])
    at = started(file)
    assert "damaged" in at.page().says.text()
    made, entries, size, name = (
        str(at.page().model.data(at.page().model.index(0, place))) for place in range(4)
    )
    assert (entries, name.partition("-")[2]) == ("12", "entry-12.chargebench")
    assert size.endswith(" MB")
    assert made
    assert "The copy holds 12 entries. The present file can not be read" in at.page().leaves.text()
    at.hands.push(at.page().go_back)
    assert at.desk().reading.head()[0] == 12
    assert "What was there before is kept as" in at.window.notice_says.text()
    (aside,) = file.parent.glob("*-aside-*")
    assert aside.stat().st_size == 30_000


def test_that_what_can_be_read_is_rescued_and_put_in_its_place(
    started: Start,
    file: Path,
    qtbot: QtBot,
) -> None:
    content = file.read_bytes()
    file.write_bytes(content[: len(content) - 4_096])
    at = started(file)
    page = at.page()
    page.rescue_into(file.with_name("rescued.chargebench"))
    qtbot.waitUntil(lambda: page.rescued is not None and not page.working, timeout=20_000)
    assert "entries were read" in page.found.text()
    at.hands.push(page.use)
    assert at.desk().reading.head()[0] >= 12
    assert file.with_name("rescued.chargebench").exists()


def test_that_it_is_tried_again_when_the_trouble_is_over(started: Start, file: Path) -> None:
    away = file.with_name("away")
    file.rename(away)
    at = started(file)
    assert "There is no file" in at.page().says.text()
    at.hands.push(at.page().first)
    assert "There is no file" in at.page().says.text()
    away.rename(file)
    at.hands.push(at.page().first)
    assert at.desk().reading.head()[0] == 15


def test_that_half_of_a_copy_says_what_belongs_beside_it(started: Start, file: Path) -> None:
    half = file.parent / "half" / file.name
    half.parent.mkdir()
    with Ledger.open(file, backups=0) as ledger:
        books.receive(ledger, 7)
        shutil.copy(file, half)
    at = started(half)
    assert "without larkmoor.chargebench-wal" in at.page().says.text()
    assert at.page().leaves.text() == "There is no backup beside this file."
    assert not at.page().go_back.isEnabled()


def test_that_a_read_only_disk_is_said_and_its_shop_rescued_elsewhere(
    started: Start,
    file: Path,
    tmp_path: Path,
    qtbot: QtBot,
) -> None:
    with small_disk(tmp_path / "disk", "4m") as disk:
        shop = Path(shutil.copy(file, disk.folder / "shop.chargebench"))
        disk.read_only()
        at = started(shop)
        page = at.page()
        assert "can not be written to. Move it to a folder you may write in" in page.says.text()
        page.rescue_into(disk.folder / "new.chargebench")
        qtbot.waitUntil(lambda: not page.working, timeout=20_000)
        assert page.refusal.isVisible()
        page.rescue_into(tmp_path / "new.chargebench")
        qtbot.waitUntil(lambda: page.rescued is not None and not page.working, timeout=20_000)
        assert page.rescued is not None
        assert page.rescued.whole


def test_that_a_conflicted_copy_beside_is_told_at_opening(started: Start, file: Path) -> None:
    copy = file.with_name("larkmoor (conflicted copy).chargebench")
    shutil.copy(file, copy)
    with Ledger.open(copy, backups=0) as ledger:
        books.receive(ledger, 7)
    at = started(file)
    assert at.desk().reading.head()[0] == 15
    assert "is a later copy of this shop" in at.window.notice_says.text()


def test_that_one_goes_back_from_records_and_the_shop_is_opened_again(
    started: Start,
    file: Path,
) -> None:
    at = started(file)
    at.window.show_area(2)
    records = at.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    at.hands.push(records.go_back)
    page = at.page()
    assert "nothing beyond that" in page.leaves.text()  # the backup made at opening
    at.hands.push(page.first)
    assert at.window.stack.currentWidget() is records
    at.hands.push(records.go_back)
    page = at.page()
    page.table.setFocus()
    at.hands.press(Qt.Key.Key_Down)
    assert "Going back leaves out 3 entries, the last recorded" in page.leaves.text()
    at.hands.push(page.go_back)
    assert at.desk().reading.head()[0] == 12
    assert at.desk().verify().ok


def test_that_a_drive_taken_away_is_said_while_one_types(
    started: Start, tmp_path: Path, file: Path
) -> None:
    with small_disk(tmp_path / "disk", "4m") as disk:
        shop = Path(shutil.copy(file, disk.folder / "shop.chargebench"))
        at = started(shop)
        desk = at.desk()
        disk.take_away()
        with pytest.raises(StorageRefused, match=r"is gone\. A drive was taken away"):
            desk.keep("stock", "receive", {"mass": "5 kg"})
