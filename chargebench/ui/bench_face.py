"""How the bench display is drawn: everything in shares of the screen, figures as large as fit."""

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QWidget

from chargebench.ui import shapes
from chargebench.ui.bench_zone import Zone
from chargebench.ui.ink import Ink, ink
from chargebench.ui.language import tr
from chargebench.ui.large_text import fit, fit_figure, sized, slot
from chargebench.ui.mass_bar import MassBar, hatch, whole_range
from chargebench.ui.mass_view import MassView
from chargebench.words import say

_LEFT, _RIGHT = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignRight
_KEYS = "space: mark start     enter: end     del: clear     esc: back"
_CENTRE = Qt.AlignmentFlag.AlignHCenter


@dataclass(frozen=True, slots=True)
class Face:
    """Every word and figure that stands on the bench display."""

    head: str
    place: str
    stops: tuple[str, ...]  # stop flags, worst first; the display covers the flag bar
    figure: str
    zone: Zone
    stop: str
    present: str
    steady: bool
    start: str
    rate: str
    says: str
    view: MassView | None


def paint(widget: QWidget, face: Face) -> None:
    """Draw a face over a widget."""
    painter = QPainter(widget)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    colours = ink()
    whole = QRectF(widget.rect())
    painter.fillRect(whole, colours.ground)
    room = whole.adjusted(whole.width() * 0.025, 0, -whole.width() * 0.025, 0)
    _heads(painter, slot(room, 0.015, 0.075), face, colours)
    top = 0.09
    if face.stops:
        _stops(painter, slot(room, 0.085, 0.185), face.stops, colours)
        top = 0.20
    left, right = blocks(slot(room, top, 0.62))
    _to_go(painter, left, face, colours)
    _stop_at(painter, right, face, colours)
    if face.says:
        fit(painter, slot(room, 0.63, 0.68), face.says, colours.check, _LEFT)
    if face.view is not None:
        _bar(painter, room, face.view, colours)
    fit(painter, slot(room, 0.935, 0.985), _KEYS, colours.quiet, _CENTRE)


def blocks(band: QRectF) -> tuple[QRectF, QRectF]:
    """Rooms of the large figure and of what stands right of it."""
    gap = band.width() * 0.025
    left = QRectF(band.left(), band.top(), band.width() * 0.52, band.height())
    start = left.right() + gap
    return left, QRectF(start, band.top(), band.right() - start, band.height())


def _heads(painter: QPainter, top: QRectF, face: Face, colours: Ink) -> None:
    left = QRectF(top.left(), top.top(), top.width() * 0.6, top.height())
    right = QRectF(left.right(), top.top(), top.right() - left.right(), top.height())
    fit(painter, left, face.head, colours.text, _LEFT)
    fit(painter, right, face.place, colours.quiet, _RIGHT)


def _stops(painter: QPainter, band: QRectF, stops: tuple[str, ...], colours: Ink) -> None:
    """The stop flags: shape, word, sentence, as large as all of the sentence fits."""
    painter.fillRect(band, colours.paper)
    painter.setPen(QPen(colours.stop, 3))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(band)
    side = band.height() * 0.62
    mark = QRectF(band.left() + side * 0.2, band.center().y() - side / 2, side, side)
    shapes.draw(painter, mark, "stop")
    word = QRectF(mark.right() + side * 0.2, band.top(), side * 1.9, band.height())
    fit(
        painter,
        word.adjusted(0, side * 0.3, 0, -side * 0.3),
        "STOP",
        colours.stop,
        _LEFT,
        bold=True,
    )
    more = say("  (and {count} more)", count=len(stops) - 1) if len(stops) > 1 else ""
    says = stops[0] + more
    room = QRectF(word.right() + 8, band.top() + 3, band.right() - word.right() - 16, 0)
    room.setHeight(band.height() - 6)
    painter.setFont(_wrapped_font(painter.font(), room, says))
    painter.setPen(colours.text)
    painter.drawText(room, _WRAP, tr(says))


_WRAP = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap


def _wrapped_font(plain: QFont, room: QRectF, words: str) -> QFont:
    """The largest font in which words broken into lines fit a room."""
    size = room.height() * 0.6
    while True:
        font = sized(plain, size)
        needed = QFontMetricsF(font).boundingRect(room, _WRAP, words)
        if size <= 9 or (needed.height() <= room.height() and needed.width() <= room.width()):
            return font
        size *= 0.94


def _to_go(painter: QPainter, left: QRectF, face: Face, colours: Ink) -> None:
    back, front = _block(face.zone, colours)
    inner = left
    if face.zone is Zone.PAST:
        hatch(painter, left, colours.stop, colours.ground)
        inner = left.adjusted(18, 18, -18, -18)
        painter.fillRect(inner, back)
    else:
        painter.fillRect(left, back)
        painter.setPen(QPen(front, 6 if face.zone is Zone.AT else 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(left)
    inner = inner.adjusted(inner.width() * 0.03, 0, -inner.width() * 0.03, 0)
    like = face.view.text(face.view.nameplate) if face.view is not None else ""
    fit_figure(painter, slot(inner, 0.04, 0.74), face.figure, front, _CENTRE, like=like)
    fit(painter, slot(inner, 0.76, 0.95), str(face.zone), front, _CENTRE)


def _stop_at(painter: QPainter, right: QRectF, face: Face, colours: Ink) -> None:
    fit(painter, slot(right, 0.0, 0.13), "STOP AT", colours.quiet, _LEFT)
    fit_figure(painter, slot(right, 0.12, 0.47), face.stop, colours.text, _LEFT)
    present = slot(right, 0.50, 0.70)
    if face.steady:
        side = present.height() * 0.5
        mark = QRectF(present.left(), present.center().y() - side / 2, side, side)
        shapes.draw(painter, mark, "signed")
        present = present.adjusted(side * 1.3, 0, 0, 0)
    fit(painter, present, face.present, colours.text, _LEFT)
    fit(painter, slot(right, 0.71, 0.86), face.rate, colours.text, _LEFT)
    fit(painter, slot(right, 0.88, 1.0), face.start, colours.quiet, _LEFT)


def _bar(painter: QPainter, room: QRectF, view: MassView, colours: Ink) -> None:
    lowest, highest = whole_range(view)
    box = slot(room, 0.715, 0.835)
    bar = MassBar(view, box, lowest, highest)
    painter.setFont(sized(painter.font(), box.height() * 0.4))
    bar.draw(painter, colours)
    plate = bar.x(view.size(view.nameplate))
    ends = slot(room, 0.85, 0.915)
    fit(painter, ends, "0", colours.quiet, _LEFT)
    wide = room.width() * 0.34
    under = QRectF(min(plate - wide / 2, room.right() - wide), ends.top(), wide, ends.height())
    words = say(
        "{view} ±{view_2}", view=view.text(view.nameplate), view_2=view.text(view.tolerance)
    )
    fit(painter, under, words, colours.text, _CENTRE)


def _block(zone: Zone, colours: Ink) -> tuple[QColor, QColor]:
    """Ground and text of the large block."""
    if zone is Zone.AT:
        return colours.text, colours.ground
    if zone is Zone.PAST:
        return colours.paper, colours.stop
    return colours.paper, colours.text
