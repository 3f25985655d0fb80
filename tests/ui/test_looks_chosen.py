"""Light or dark and text size: from the system, or as this bench chose."""

from collections.abc import Iterator
from typing import TypeVar

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QComboBox, QWidget
from pytestqt.qtbot import QtBot

from chargebench.ui import language, theme
from chargebench.ui.kept import kept
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.this_bench import ThisBench
from tests.hands import CTRL, Hands

Kind = TypeVar("Kind", bound=QWidget)


@pytest.fixture(autouse=True)
def nothing_kept(themed: QApplication) -> Iterator[None]:
    yield
    for key in ("look", "text", "language"):
        kept().remove(key)
    theme.apply(themed, dark=False, text=1.0)
    language.speak("en")


def _shop_page(hands: Hands, qtbot: QtBot) -> RegisterDialog:
    hands.press(Qt.Key.Key_Comma, CTRL)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), RegisterDialog))
    page = QApplication.activeModalWidget()
    assert isinstance(page, RegisterDialog)
    qtbot.waitUntil(page.isActiveWindow)
    return page


def _choose(hands: Hands, page: RegisterDialog, name: str, letters: str) -> None:
    part = page.findChild(ThisBench)
    assert part is not None
    box = next(each for each in part.findChildren(QComboBox) if each.accessibleName() == name)
    hands.to(box)
    hands.type(letters)


def test_that_dark_is_chosen_by_keys_and_kept(hands: Hands, qtbot: QtBot) -> None:
    page = _shop_page(hands, qtbot)
    _choose(hands, page, "Light or dark", "da")
    hands.press(Qt.Key.Key_Escape)
    qtbot.waitUntil(hands.window.isActiveWindow)
    assert theme.colours() is theme.DARK
    assert theme.look() == "dark"
    ground = hands.window.grab().toImage().pixelColor(hands.window.width() // 2, 5)
    assert ground.name() == theme.DARK.ground


def test_that_the_look_chosen_holds_at_the_next_start(themed: QApplication) -> None:
    theme.keep_look("dark")
    theme.keep_text_size(1.5)
    theme.apply_chosen(themed)
    assert theme.colours() is theme.DARK
    assert theme.text_size() == 1.5


def test_that_where_nothing_is_chosen_the_system_decides(themed: QApplication) -> None:
    theme.apply_chosen(themed)
    is_dark = themed.styleHints().colorScheme() is Qt.ColorScheme.Dark
    assert (theme.colours() is theme.DARK) == is_dark


@pytest.mark.parametrize(("chosen", "follows"), [("", True), ("light", False)])
def test_that_the_system_is_followed_unless_one_was_chosen(
    themed: QApplication, chosen: str, follows: bool
) -> None:
    told: list[str] = []
    theme.keep_look(chosen)
    theme.follow_system(themed, lambda: told.append("drawn anew"))
    themed.styleHints().colorSchemeChanged.emit(Qt.ColorScheme.Dark)
    assert bool(told) == follows


def test_that_text_made_larger_by_a_key_stays_so(at_job: Hands) -> None:
    at_job.type("R290")
    at_job.press(Qt.Key.Key_Plus, CTRL)
    assert theme.kept_text_size() == 1.25
    assert at_job.page.pane.form().typed()["refrigerant"] == "R290"
    assert at_job.window.bench.shown_job() is not None


def test_that_a_size_nobody_can_have_chosen_counts_as_plain(themed: QApplication) -> None:
    kept().setValue("text", "enormous")
    kept().setValue("look", "purple")
    theme.apply_chosen(themed)
    assert theme.text_size() == 1.0
    assert theme.look() == theme.SYSTEM
