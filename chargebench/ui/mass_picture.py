"""The mass picture: a weigh-in drawn to scale against its nameplate; moves as one types."""

from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from chargebench.calc.charge import ChargeWord
from chargebench.ui import theme
from chargebench.ui.ink import Ink, ink
from chargebench.ui.language import tr
from chargebench.ui.mass_bar import MassBar, close_range, draw_shape, whole_range
from chargebench.ui.mass_view import MassView
from chargebench.words import say

WEIGHT = {
    ChargeWord.OVER.value: "stop",
    ChargeWord.UNDER.value: "check",
    ChargeWord.TOO_COARSE.value: "check",
}
_MARGIN, _EDGE = 10, 6
_WRAPPED = Qt.AlignmentFlag.AlignTop | Qt.TextFlag.TextWordWrap
_BARS, _CLOSE_UP = 5.6, 4.3  # lines of text that the bar takes with its words, and the close-up
_ROW = 1.25  # lines of text a row of figures takes
_NO_NAMEPLATE = (
    "The charge is drawn here against the nameplate, once the nameplate charge is typed."
)


class MassPicture(QWidget):
    """Bar from zero past the nameplate, a close-up around it, the verdict and every figure."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: MassView | None = None
        self.setAccessibleName(tr("Mass"))
        self.setAccessibleDescription(tr(_NO_NAMEPLATE))
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    @property
    def view(self) -> MassView | None:
        """What is drawn."""
        return self._view

    def show_mass(self, view: MassView | None) -> None:
        """Draw a weigh-in; None while there is no nameplate to draw against."""
        if view == self._view:
            return
        self._view = view
        self.setAccessibleDescription(tr(view.sentence if view else _NO_NAMEPLATE))
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Room for the words, both bars and every figure."""
        return QSize(20 * theme.em(), self.heightForWidth(20 * theme.em()))

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As small as it stays readable."""
        wide = max(15 * theme.em(), self.width())
        return QSize(15 * theme.em(), self.heightForWidth(wide))

    def hasHeightForWidth(self) -> bool:  # noqa: N802 - Qt's name
        """The verdict breaks into more lines where there is less width."""
        return True

    def heightForWidth(self, wide: int) -> int:  # noqa: N802 - Qt's name
        """Height of the words, both bars and every figure."""
        line = QFontMetricsF(self.font()).lineSpacing()
        room = QRectF(0, 0, wide - 2 * _MARGIN, 1e6)
        if self._view is None:
            words = QFontMetricsF(self.font()).boundingRect(room, _WRAPPED, tr(_NO_NAMEPLATE))
            return ceil(words.height() + 2 * _EDGE)
        lines = _BARS + _ROW * len(self._view.rows)
        lines += _CLOSE_UP if self._view.opening is not None else 0
        return ceil(2 * _EDGE + _verdict_height(self.font(), room, self._view) + lines * line)

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw it all, from the verdict down."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = ink()
        room = QRectF(self.rect()).adjusted(_MARGIN, _EDGE, -_MARGIN, -_EDGE)
        if self._view is None:
            painter.setPen(colours.quiet)
            painter.drawText(room, _WRAPPED, tr(_NO_NAMEPLATE))
            return
        below = _verdict(painter, room, self._view, colours)
        below = _bars(painter, room, below, self._view, colours)
        _rows(painter, room, below, self._view, colours)


def _large(plain: QFont) -> QFont:
    font = QFont(plain)
    font.setPointSizeF(plain.pointSizeF() * 1.15)
    font.setBold(True)
    return font


def _is_judged(view: MassView) -> bool:
    return view.difference is not None and bool(view.word)


def _verdict_height(plain: QFont, room: QRectF, view: MassView) -> float:
    metrics = QFontMetricsF(_large(plain))
    space = room.adjusted(metrics.lineSpacing() + 8 if _is_judged(view) else 0, 0, 0, 0)
    words = metrics.boundingRect(space, _WRAPPED, tr(view.verdict))
    return max(words.height(), metrics.lineSpacing())


def _verdict(painter: QPainter, room: QRectF, view: MassView, colours: Ink) -> float:
    """Write the verdict beside its shape; how far down it reached."""
    judged = _is_judged(view)
    colour = colours.of_level(WEIGHT.get(view.word, "")) if judged else colours.text
    plain = painter.font()
    painter.setFont(_large(plain))
    size = QFontMetricsF(painter.font()).lineSpacing()
    space = room.adjusted(size + 8 if judged else 0, 0, 0, 0)
    if judged:
        box = QRectF(room.left(), room.top(), size, size)
        draw_shape(painter, box, view.word, colour, colours.ground)
    painter.setPen(colour)
    painter.drawText(space, _WRAPPED, tr(view.verdict))
    painter.setFont(plain)
    return room.top() + _verdict_height(plain, room, view)


def _bars(painter: QPainter, room: QRectF, top: float, view: MassView, colours: Ink) -> float:
    """Draw the whole bar, and under it the close-up around the nameplate."""
    line = QFontMetricsF(painter.font()).lineSpacing()
    words = say("nameplate {view}", view=view.text(view.nameplate))
    if view.tolerance.magnitude:
        words += say(" ±{view}", view=view.text(view.tolerance))
    box = QRectF(room.left(), top + 2.0 * line, room.width(), 1.7 * line)
    lowest, highest = whole_range(view)
    whole = MassBar(view, box, lowest, highest)
    plate = whole.x(view.size(view.nameplate))
    _text_at(painter, room, plate, box.top() - 0.8 * line, words, colours.text)
    whole.draw(painter, colours)
    ends = box.bottom() + 1.1 * line
    _text_at(painter, room, room.left(), ends, "0", colours.quiet)
    _text_at(painter, room, room.right(), ends, _round(view, highest), colours.quiet)

    if view.opening is None:
        return ends + 0.8 * line
    return _close_up(painter, room, whole, view, colours)


def _close_up(
    painter: QPainter, room: QRectF, whole: MassBar, view: MassView, colours: Ink
) -> float:
    """Draw the stretch around the nameplate again, larger."""
    line = QFontMetricsF(painter.font()).lineSpacing()
    box = whole.box
    lowest, highest = close_range(view)
    close = QRectF(room.left(), box.bottom() + 2.3 * line, room.width(), 2.2 * line)
    fan = QColor(colours.line)
    painter.setPen(QPen(fan, 1, Qt.PenStyle.DotLine))
    for mass, corner in ((lowest, close.topLeft()), (highest, close.topRight())):
        painter.drawLine(QPointF(whole.x(mass), box.bottom() + 2), corner)
    bar = MassBar(view, close, lowest, highest)
    bar.draw(painter, colours)
    ends = close.bottom() + 1.1 * line
    _text_at(painter, room, room.left(), ends, _round(view, lowest), colours.quiet)
    _text_at(painter, room, room.right(), ends, _round(view, highest), colours.quiet)
    middle = bar.x(view.size(view.nameplate))
    stop = "▲ stop here" if view.stop_readings else "▲ nameplate"
    _text_at(painter, room, middle, ends, stop, colours.text)
    return close.bottom() + 1.7 * line


def _text_at(
    painter: QPainter, room: QRectF, x: float, baseline: float, words: str, colour: QColor
) -> None:
    """Write words centred on a place, kept inside the room."""
    words = tr(words)
    wide = QFontMetricsF(painter.font()).horizontalAdvance(words)
    left = min(max(x - wide / 2, room.left()), room.right() - wide)
    painter.setPen(colour)
    painter.drawText(QPointF(left, baseline), words)


def _round(view: MassView, size: float) -> str:
    unit = view.text(view.nameplate).split()[-1]
    return f"{size:.3g} {unit}"


def _rows(painter: QPainter, room: QRectF, top: float, view: MassView, colours: Ink) -> None:
    """Write every figure; label and value share a row where they fit."""
    metrics = QFontMetricsF(painter.font())
    line = metrics.lineSpacing() * _ROW
    label_wide = (
        max(metrics.horizontalAdvance(tr(label)) for label, _ in view.rows) + metrics.height()
    )
    for label, value in ((tr(label), tr(value)) for label, value in view.rows):
        painter.setPen(colours.quiet)
        painter.drawText(QPointF(room.left(), top + line * 0.8), label)
        painter.setPen(colours.text)
        painter.drawText(QPointF(room.left() + label_wide, top + line * 0.8), value)
        top += line
