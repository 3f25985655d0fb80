"""Photos attached by file, paste and drop, seen large, taken back; all by keys but the drop."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, Qt, QUrl
from PySide6.QtGui import QColor, QImage
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.photos import PhotosDialog


@pytest.fixture
def desk(sample_shop: Path, tmp_path: Path) -> Iterator[Desk]:
    with Desk.open(Path(shutil.copy(sample_shop, tmp_path / "shop.chargebench"))) as opened:
        yield opened


@pytest.fixture
def dialog(desk: Desk, qtbot: QtBot) -> PhotosDialog:
    made = PhotosDialog(desk, desk.jobs(state="open")[0].id, "leak_search")
    qtbot.addWidget(made)
    made.show()
    return made


def _image() -> QImage:
    made = QImage(640, 480, QImage.Format.Format_RGB32)
    made.fill(QColor("teal"))
    return made


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "IMG_0001.png"
    assert _image().save(str(path))
    return path


def test_that_a_photo_waits_for_what_it_shows_and_is_then_attached_by_return(
    qtbot: QtBot, dialog: PhotosDialog, desk: Desk, file: Path
) -> None:
    dialog.take(file)
    assert "what the photo shows" in dialog.says.text()
    assert dialog.focusWidget() is dialog.caption
    qtbot.keyClicks(dialog.caption, "Process valve")
    qtbot.keyClick(dialog.caption, Qt.Key.Key_Return)
    (line,) = desk.photos(desk.jobs(state="open")[0].id)
    assert (line.caption, line.step) == ("Process valve", "leak_search")
    assert [dialog.list.item(0).text()] == ["Process valve"]
    assert not dialog.list.item(0).icon().isNull()


def test_that_a_copied_picture_is_pasted(qtbot: QtBot, dialog: PhotosDialog, desk: Desk) -> None:
    QApplication.clipboard().setImage(_image())
    qtbot.keyClicks(dialog.caption, "Label")
    qtbot.keyClick(dialog.paste, Qt.Key.Key_Space)
    assert [line.caption for line in desk.photos(desk.jobs(state="open")[0].id)] == ["Label"]
    QApplication.clipboard().clear()
    qtbot.keyClick(dialog.paste, Qt.Key.Key_Space)
    assert "no picture to paste" in dialog.says.text()


def test_that_a_dropped_file_is_attached(
    qtbot: QtBot, dialog: PhotosDialog, desk: Desk, file: Path
) -> None:
    given = QMimeData()
    given.setUrls([QUrl.fromLocalFile(str(file))])
    qtbot.keyClicks(dialog.caption, "Nameplate")
    assert dialog.take_from(given)
    assert [line.caption for line in desk.photos(desk.jobs(state="open")[0].id)] == ["Nameplate"]


def test_that_what_is_no_photo_is_refused_beside_the_caption(
    qtbot: QtBot, dialog: PhotosDialog, desk: Desk, tmp_path: Path
) -> None:
    paper = tmp_path / "list.txt"
    paper.write_text("no picture", encoding="utf-8")
    qtbot.keyClicks(dialog.caption, "Nameplate")
    dialog.take(paper)
    assert "Expected a photo" in dialog.says.text()
    assert desk.photos(desk.jobs(state="open")[0].id) == []


def test_that_a_photo_is_shown_large_and_taken_back_with_a_reason(
    qtbot: QtBot, dialog: PhotosDialog, desk: Desk, file: Path
) -> None:
    qtbot.keyClicks(dialog.caption, "Wrong cabinet")
    dialog.take(file)
    qtbot.keyClick(dialog.list, Qt.Key.Key_Return)
    large = [each for each in dialog.findChildren(QDialog) if each.isVisible()]
    assert [each.windowTitle() for each in large] == ["Wrong cabinet"]
    qtbot.keyClick(large[0], Qt.Key.Key_Escape)
    qtbot.keyClick(dialog.back, Qt.Key.Key_Space)
    qtbot.keyClick(dialog.reason, Qt.Key.Key_Return)
    assert "reason" in dialog.says.text()
    qtbot.keyClicks(dialog.reason, "Of another cabinet")
    qtbot.keyClick(dialog.reason, Qt.Key.Key_Return)
    assert desk.photos(desk.jobs(state="open")[0].id) == []
    assert dialog.list.count() == 0
