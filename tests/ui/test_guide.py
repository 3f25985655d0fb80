"""The guide: every page is there with its pictures, and F1 opens the one that fits."""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from chargebench.resource import resource
from chargebench.steps import STEPS
from chargebench.ui.guide import OF_STEP, PAGES, GuideDialog, page_for

_KEY = re.compile(r"\*\*((?:Ctrl|Alt|Shift)\+[^*]+|F\d+)\*\*")


@pytest.mark.parametrize("page", PAGES)
def test_that_a_page_shows_its_text_and_pictures(qtbot: QtBot, page: str) -> None:
    dialog = GuideDialog(page)
    qtbot.addWidget(dialog)
    dialog.show()
    assert len(dialog.text.toPlainText()) > 150
    if page == "keys":
        return
    text = resource("guide", f"{page}.md").read_text("utf-8")
    for picture in re.findall(r"!\[[^]]+\]\(([^)]+)\)", text):
        assert not QImage(str(resource("guide", picture))).isNull()


def test_that_every_page_of_the_folder_is_in_the_list() -> None:
    there = {path.stem for path in resource("guide").glob("*.md")}
    assert there == set(PAGES) - {"keys"}


def test_that_a_page_fits_what_is_on_the_screen() -> None:
    assert page_for("stock") == "stock"
    assert page_for("records") == "records"
    assert page_for("bench") == "start"
    assert page_for("bench", "weigh_in") == "weigh-in"
    assert page_for("bench", "findings") == "job"
    assert page_for("") == "start"
    assert set(OF_STEP) <= set(STEPS)


def test_that_keys_named_in_the_guide_are_keys_of_the_window() -> None:
    from chargebench.ui import keys

    known = {part.split(" ")[0] for part in str(keys.ALL).split(" · ")}
    known |= {"Alt+1", "Alt+3", "Ctrl+Up", "Ctrl+Down"}  # named there with their arrows
    named = {
        key
        for path in resource("guide").glob("*.md")
        for key in _KEY.findall(path.read_text("utf-8"))
    }
    assert named <= known, named - known


def test_that_the_pages_are_turned_by_keys(qtbot: QtBot) -> None:
    dialog = GuideDialog("start")
    qtbot.addWidget(dialog)
    dialog.show()
    qtbot.keyClick(dialog.pages, Qt.Key.Key_Down)
    assert dialog.text.toPlainText().strip().startswith("A job")
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert dialog.isHidden()
