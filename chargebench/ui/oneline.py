"""A label of one line that is cut where there is no room."""

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QLabel


class OneLine(QLabel):
    """One line of text that gives way where there is no room."""

    def __init__(self, text: str = "") -> None:
        super().__init__()
        self._whole = text
        self.setTextFormat(Qt.TextFormat.PlainText)

    def say(self, text: str) -> None:
        """Write."""
        self._whole = text
        self.setToolTip(text)
        self._elide()

    def _elide(self) -> None:
        self.setText(
            self.fontMetrics().elidedText(self._whole, Qt.TextElideMode.ElideRight, self.width())
        )

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Nothing."""
        return QSize(0, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Cut again."""
        super().resizeEvent(event)
        self._elide()
