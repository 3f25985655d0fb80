"""Pages that keep working in a small window or with large text."""

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from chargebench.ui import theme
from chargebench.ui.language import tr

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
        self._turn()

    def event(self, event: QEvent) -> bool:
        """Turn also where a part comes, goes or wants another width."""
        if event.type() is QEvent.Type.LayoutRequest:
            self._turn()
        return super().event(event)

    def _turn(self) -> None:
        shown = [part for part in self._parts if not part.isHidden()]
        wanted = sum(part.sizeHint().width() for part in shown)
        wanted += self._box.spacing() * (len(shown) - 1)
        direction = _BESIDE if wanted <= self.width() else _BELOW
        if direction is not self._box.direction():
            self._box.setDirection(direction)
            self.updateGeometry()


class Folding(QWidget):
    """Buttons that bring back what a low page puts away; not there on a page with room."""

    def __init__(self, parts: Mapping[str, QWidget], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._parts = {QPushButton(tr(words)): part for words, part in parts.items()}
        self._low = False
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        for button in self._parts:
            button.setCheckable(True)
            button.toggled.connect(lambda _: self._show())
            line.addWidget(button)
        line.addStretch(1)
        self.hide()

    def set_low(self, *, low: bool) -> None:
        """Put the parts away, or show them all."""
        if low != self._low:
            self._low = low
            self.setVisible(low)
            self._show()

    def put_away(self) -> None:
        """Put all parts away again, where they are put away at all."""
        for button in self._parts:
            button.setChecked(False)

    def _show(self) -> None:
        for button, part in self._parts.items():
            part.setVisible(button.isChecked() or not self._low)


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
