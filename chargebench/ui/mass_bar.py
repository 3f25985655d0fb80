"""A bar of mass drawn to scale over a range: what is in, the hose, the doubt, the nameplate."""

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen, QPolygonF

from chargebench.calc.charge import ChargeWord
from chargebench.ui.ink import Ink
from chargebench.ui.language import tr
from chargebench.ui.mass_view import MassView

HEADROOM = 1.18  # always shown past the nameplate, so that there is room to be over
_LIFT = 7.0  # how far the nameplate's marks stand above the bar


class MassBar:
    """One bar from a lowest to a highest mass, inside a box."""

    def __init__(self, view: MassView, box: QRectF, lowest: float, highest: float) -> None:
        self._view = view
        self.box = box
        self._lowest = lowest
        self._highest = max(highest, lowest + 1e-9)

    def x(self, mass: float) -> float:
        """Where a mass lies, to scale; the ends hold what is beyond them."""
        share = (mass - self._lowest) / (self._highest - self._lowest)
        return self.box.left() + min(max(share, 0.0), 1.0) * self.box.width()

    def draw(self, painter: QPainter, colours: Ink) -> None:
        """Draw all of it, what lies behind first."""
        painter.fillRect(self.box, colours.paper)
        self._band(painter, colours)
        self._contents(painter, colours)
        self._hose(painter, colours)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(colours.line, 1.2))
        painter.drawRect(self.box)
        self._marks(painter, colours)
        self._doubt(painter, colours)

    def _part(self, start: float, end: float) -> QRectF:
        left, right = self.x(start), self.x(end)
        return QRectF(left, self.box.top(), right - left, self.box.height())

    @property
    def _limits(self) -> tuple[float, float]:
        plate, allowed = (
            self._view.size(self._view.nameplate),
            self._view.size(self._view.tolerance),
        )
        return plate - allowed, plate + allowed

    def _band(self, painter: QPainter, colours: Ink) -> None:
        low, high = self._limits
        veil = QColor(colours.text)
        veil.setAlpha(36)
        painter.fillRect(self._part(low, high), veil)

    def _contents(self, painter: QPainter, colours: Ink) -> None:
        view = self._view
        opening, in_it = view.size(view.opening), view.size(view.in_it)
        before = self._part(0, opening)
        if before.width() > 0:
            painter.fillRect(before, colours.before)
            _word(painter, before, "before", colours.text)
        if view.charged is None:
            return
        highest = self._limits[1]
        inside = self._part(opening, min(in_it, highest))
        if inside.width() > 0:
            painter.fillRect(inside, colours.mass)
            clear = self._part(opening, min(in_it, self._limits[0]))  # of the tolerance's marks
            _word(painter, clear, "in", colours.on_mass)
        over = self._part(highest, in_it)
        if over.width() > 0:
            hatch(painter, over, colours.stop, colours.paper)

    def _hose(self, painter: QPainter, colours: Ink) -> None:
        view = self._view
        hose, in_it = view.size(view.hose), view.size(view.in_it)
        beyond = not self._lowest <= in_it < self._highest
        if hose <= 0 or view.charged is None or beyond:
            return
        box = self._part(in_it, in_it + hose)
        box.setWidth(max(box.width(), 4.0))
        box.adjust(0, box.height() * 0.22, 0, -box.height() * 0.22)
        painter.setPen(QPen(colours.text, 1.2, Qt.PenStyle.DashLine))
        painter.setBrush(colours.paper)
        painter.drawRect(box)
        _word(painter, box, "hose", colours.text)

    def _marks(self, painter: QPainter, colours: Ink) -> None:
        plate = self._view.size(self._view.nameplate)
        low, high = self._limits
        top, bottom = self.box.top(), self.box.bottom()
        middle = self.x(plate)
        for colour, width in ((colours.paper, 5.0), (colours.text, 2.4)):
            painter.setPen(QPen(colour, width))
            painter.drawLine(QPointF(middle, top - _LIFT), QPointF(middle, bottom))
        if self.x(high) - self.x(low) < 8:
            return
        for side, turn in ((self.x(low), 5), (self.x(high), -5)):
            for colour, width in ((colours.paper, 4.0), (colours.text, 1.8)):
                painter.setPen(QPen(colour, width))
                painter.drawPolyline(
                    [
                        QPointF(side + turn, top - _LIFT + 2),
                        QPointF(side, top - _LIFT + 2),
                        QPointF(side, bottom + 2),
                        QPointF(side + turn, bottom + 2),
                    ]
                )

    def _doubt(self, painter: QPainter, colours: Ink) -> None:
        view = self._view
        if view.in_it is None or view.uncertainty is None:
            return
        end, doubt = view.size(view.in_it), view.size(view.uncertainty)
        left, right = self.x(end - doubt), self.x(end + doubt)
        if right <= self.box.left() or left >= self.box.right():
            return
        middle, tall = self.box.center().y(), min(self.box.height() * 0.3, 12.0)
        veil = QColor(colours.paper)
        veil.setAlpha(170)
        painter.fillRect(QRectF(left, middle - tall, max(right - left, 2), 2 * tall), veil)
        painter.setPen(QPen(colours.text, 2.0))
        painter.drawLine(QPointF(left, middle), QPointF(right, middle))
        for side in (left, right):
            painter.drawLine(QPointF(side, middle - tall), QPointF(side, middle + tall))


def whole_range(view: MassView) -> tuple[float, float]:
    """From zero past the nameplate and past what is in."""
    end = view.size(view.in_it) + view.size(view.uncertainty)
    plate = view.size(view.nameplate) + view.size(view.tolerance)
    return 0.0, max(plate * HEADROOM, end * 1.06)


def close_range(view: MassView) -> tuple[float, float]:
    """Around the nameplate, wide enough for the tolerance and for what is in, if it is near."""
    plate, doubt = view.size(view.nameplate), view.size(view.uncertainty)
    half = max(2.5 * view.size(view.tolerance), 2.5 * doubt, 0.01 * plate)
    if view.in_it is not None:
        off = abs(view.size(view.in_it) - plate) + 1.6 * doubt
        half = max(half, min(1.15 * off, 0.2 * plate))
    return max(plate - half, 0.0), plate + half


def hatch(
    painter: QPainter,
    part: QRectF,
    colour: QColor,
    ground: QColor,
    *,
    width: float = 3.0,
    step: float = 9.0,
) -> None:
    """Fill with slanted lines inside a thick edge: a shape no other part of the bar has."""
    painter.save()
    painter.setClipRect(part)
    painter.fillRect(part, ground)
    painter.setPen(QPen(colour, width))
    x = part.left() - part.height()
    while x < part.right():
        painter.drawLine(QPointF(x, part.bottom()), QPointF(x + part.height(), part.top()))
        x += step
    painter.restore()
    painter.setPen(QPen(colour, width))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(part)


def _word(painter: QPainter, part: QRectF, word: str, colour: QColor) -> None:
    word, metrics = tr(word), QFontMetricsF(painter.font())
    if part.width() > metrics.horizontalAdvance(word) + 12 and part.height() > metrics.ascent():
        painter.setPen(colour)
        painter.drawText(part, Qt.AlignmentFlag.AlignCenter, word)


def draw_shape(painter: QPainter, box: QRectF, word: str, colour: QColor, ground: QColor) -> None:
    """The verdict's own shape: filled triangle, open triangle, ring with tick, diamond."""
    painter.setPen(QPen(colour, 2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    box = box.adjusted(1, 1, -1, -1)
    middle = box.center()
    top, bottom = QPointF(middle.x(), box.top()), QPointF(middle.x(), box.bottom())
    if word == ChargeWord.OVER:
        painter.setBrush(colour)
        painter.drawPolygon(QPolygonF([top, box.bottomRight(), box.bottomLeft()]))
        painter.setPen(ground)
        lower = box.adjusted(0, box.height() * 0.18, 0, 0)
        painter.drawText(lower, Qt.AlignmentFlag.AlignCenter, "!")
    elif word == ChargeWord.UNDER:
        painter.drawPolygon(QPolygonF([box.topLeft(), box.topRight(), bottom]))
    elif word == ChargeWord.WITHIN:
        painter.drawEllipse(box)
        third = box.width() / 3.4
        painter.drawPolyline(
            [
                middle + QPointF(-third, 0),
                middle + QPointF(-0.2 * third, 0.8 * third),
                middle + QPointF(third, -0.8 * third),
            ]
        )
    else:
        left, right = QPointF(box.left(), middle.y()), QPointF(box.right(), middle.y())
        painter.drawPolygon(QPolygonF([top, right, bottom, left]))
        painter.setPen(colour)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, "?")
