"""A label of one line that says less, and is cut at last, where there is no room."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLabel

from chargebench.ui.language import tr


class OneLine(QLabel):
    """One line of text that gives way where there is no room."""

    def __init__(self, text: str = "") -> None:
        super().__init__()
        self._ways: tuple[str, ...] = (tr(text),)
        self.setTextFormat(Qt.TextFormat.PlainText)

    def say(self, text: str, *shorter: str) -> None:
        """Write a text, or the first of the shorter ones that has room."""
        self._ways = tuple(tr(each) for each in (text, *shorter))
        self.setToolTip(self._ways[0])
        self._fit()

    def _fit(self) -> None:
        words, edges = self.fontMetrics(), self.contentsMargins()
        room = self.width() - edges.left() - edges.right()
        fitting = (way for way in self._ways if words.horizontalAdvance(way) <= room)
        shortest = words.elidedText(self._ways[-1], Qt.TextElideMode.ElideRight, room)
        self.setText(next(fitting, shortest))

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for the whole text."""
        hint, edges = super().sizeHint(), self.contentsMargins()
        wide = self.fontMetrics().horizontalAdvance(self._ways[0])
        return QSize(wide + edges.left() + edges.right(), hint.height())

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Nothing."""
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Fit again."""
        super().resizeEvent(event)
        self._fit()
