"""An editor of several lines of text."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QPlainTextEdit, QWidget

from chargebench.ui import theme
from chargebench.ui.language import tr
from chargebench.words import say

LINES_LEAST, LINES_MOST = 2, 8  # shown without scrolling
_BAR, _NO_BAR = Qt.ScrollBarPolicy.ScrollBarAlwaysOn, Qt.ScrollBarPolicy.ScrollBarAlwaysOff


class LongText(QPlainTextEdit):
    """Several lines of text, as high as they are many; Tab goes on to the next field."""

    edited = Signal()

    def __init__(self, example: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._fitting = False
        self.setTabChangesFocus(True)
        if example:
            self.setPlaceholderText(tr(say("e.g. {example}", example=example)))
        self.setHorizontalScrollBarPolicy(_NO_BAR)
        self._fit()
        self.textChanged.connect(self._fit)
        self.textChanged.connect(self.edited.emit)

    def _fit(self) -> None:
        if self._fitting:  # a scroll bar that comes or goes is a resize of its own
            return
        self._fitting = True
        written = round(self.document().size().height())  # in lines of text, as they break
        self.setVerticalScrollBarPolicy(_BAR if written > LINES_MOST else _NO_BAR)
        shown = min(max(written, LINES_LEAST), LINES_MOST)
        self.setFixedHeight(theme.em() * (shown + 1))
        self._fitting = False

    def text(self) -> str:
        """The text."""
        return self.toPlainText()

    def put(self, text: str) -> None:
        """Show a text as if it had been typed earlier."""
        if text != self.toPlainText():
            self.blockSignals(True)  # noqa: FBT003 - Qt's signature
            self.setPlainText(text)
            self.blockSignals(False)  # noqa: FBT003 - Qt's signature
            self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Lines break elsewhere."""
        super().resizeEvent(event)
        self._fit()

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self.setReadOnly(locked)
