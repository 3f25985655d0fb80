"""Hands at the window: what is typed goes wherever the focus is."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from chargebench.ui.job import JobPage
from chargebench.ui.window import MainWindow

NO_KEY_HELD = Qt.KeyboardModifier(0)
CTRL = Qt.KeyboardModifier.ControlModifier


def focused() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


class Hands:
    """Types into whatever has the focus."""

    def __init__(self, bot: QtBot, window: MainWindow) -> None:
        self.bot = bot
        self.window = window

    def type(self, text: str, *, then: Qt.Key | None = None) -> None:
        self.bot.keyClicks(focused(), text)
        if then is not None:
            self.press(then)

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier = NO_KEY_HELD) -> None:
        self.bot.keyClick(focused(), key, held)

    @property
    def page(self) -> JobPage:
        return self.window.bench().job_page()

    def to_step(self, key: str) -> None:
        while self.page.steps.current() != key:
            before = self.page.steps.current()
            self.press(Qt.Key.Key_Down, CTRL)
            assert self.page.steps.current() != before, key
