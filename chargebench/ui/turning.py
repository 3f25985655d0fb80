"""Pages that keep working in a small window or with large text."""

from collections.abc import Sequence

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QFrame, QHBoxLayout, QScrollArea, QVBoxLayout, QWidget

from chargebench.ui import theme

_BESIDE = QBoxLayout.Direction.LeftToRight
_BELOW = QBoxLayout.Direction.TopToBottom


class Turning(QWidget):
    """Parts beside each other where they fit, below each other where they do not."""

    def __init__(
        self, parts: Sequence[QWidget], *, fill: int = 0, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._parts = tuple(parts)
        self._box = QBoxLayout(_BESIDE, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        for place, part in enumerate(parts):
            self._box.addWidget(part, 1 if place == fill else 0)

    @property
    def beside(self) -> bool:
        """Whether the parts stand beside each other."""
        return self._box.direction() is _BESIDE

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As narrow as the widest part."""
        wide = max(part.minimumSizeHint().width() for part in self._parts)
        return QSize(wide, self.sizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Turn where the width asks for it."""
        super().resizeEvent(event)
        wanted = sum(part.sizeHint().width() for part in self._parts)
        wanted += self._box.spacing() * (len(self._parts) - 1)
        direction = _BESIDE if wanted <= self.width() else _BELOW
        if direction is not self._box.direction():
            self._box.setDirection(direction)
            self.updateGeometry()


def row_of(*parts: QWidget, fill: QWidget | None = None) -> QWidget:
    """Parts in a row; `fill` takes the room that is left, or nothing does."""
    row = QWidget()
    layout = QHBoxLayout(row)
    layout.setContentsMargins(0, 0, 0, 0)
    for part in parts:
        layout.addWidget(part, 1 if part is fill else 0)
    if fill is None:
        layout.addStretch(1)
    return row


def scrolled(page: QWidget) -> QScrollArea:
    """A page that scrolls where the window is too small for it."""
    frame = QWidget()
    frame.setObjectName("page")
    layout = QVBoxLayout(frame)
    edge = theme.em() // 2
    layout.setContentsMargins(edge, edge, edge, edge // 2)
    layout.addWidget(page)
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setWidget(frame)
    return area
