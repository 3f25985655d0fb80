"""Draws a laid-out paper with Qt, mark by mark, for preview and printer."""

from collections.abc import Iterable
from functools import cache, singledispatch

from PySide6.QtCore import QMarginsF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontDatabase,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPen,
    QPolygonF,
)
from PySide6.QtPrintSupport import QPrinter

from chargebench.reports.drawn import POINT_MM, Box, Drawn, Image, Mark, Ring, Stroke, Words
from chargebench.reports.letters import FACES
from chargebench.resource import resource

_FINE = 100  # marks are painted in hundredths of a millimetre: sizes of letters are whole numbers


def layout_of(drawn: Drawn) -> QPageLayout:
    """The page a paper is drawn for; its margins are its own."""
    size = QPageSize(QSizeF(drawn.width, drawn.height), QPageSize.Unit.Millimeter)
    return QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF())


def paint(drawn: Drawn, printer: QPrinter) -> None:
    """Paint every page."""
    printer.setFullPage(True)
    painter = QPainter(printer)
    for place, marks in enumerate(drawn.pages):
        if place:
            printer.newPage()
        paint_page(marks, painter, printer.resolution() / 25.4)
    painter.end()


def paint_page(marks: Iterable[Mark], painter: QPainter, dots: float) -> None:
    """Paint one page, at so many dots a millimetre."""
    painter.save()
    painter.scale(dots / _FINE, dots / _FINE)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
    for mark in marks:
        _paint(mark, painter)
    painter.restore()


@cache
def _family() -> str:
    """The embedded font, so that lines are as wide here as in the PDF."""
    places = [
        QFontDatabase.addApplicationFont(str(resource("fonts", file))) for file in FACES.values()
    ]
    return QFontDatabase.applicationFontFamilies(places[0])[0]


def _grey(level: int) -> QColor:
    return QColor(level, level, level)


@singledispatch
def _paint(mark: object, _: QPainter) -> None:
    raise TypeError(mark)


@_paint.register
def _(mark: Words, painter: QPainter) -> None:
    font = QFont(_family())
    font.setPixelSize(round(mark.size * POINT_MM * _FINE))
    font.setBold(mark.bold)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    painter.setFont(font)
    painter.setPen(_grey(mark.grey))
    painter.drawText(QPointF(mark.x * _FINE, mark.y * _FINE), mark.text)


@_paint.register
def _(mark: Stroke, painter: QPainter) -> None:
    pen = QPen(_grey(mark.grey), mark.width * _FINE)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    if mark.dash:
        pen.setDashPattern([mark.dash / mark.width] * 2)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(QPolygonF([QPointF(x * _FINE, y * _FINE) for x, y in mark.points]))


@_paint.register
def _(mark: Box, painter: QPainter) -> None:
    sides = (mark.x, mark.y, mark.width, mark.height)
    painter.fillRect(QRectF(*(side * _FINE for side in sides)), _grey(mark.grey))


@_paint.register
def _(mark: Ring, painter: QPainter) -> None:
    painter.setPen(QPen(_grey(mark.grey), 0.25 * _FINE))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    radius = mark.radius * _FINE
    painter.drawEllipse(QPointF(mark.x * _FINE, mark.y * _FINE), radius, radius)


@_paint.register
def _(mark: Image, painter: QPainter) -> None:
    sides = (mark.x, mark.y, mark.width, mark.height)
    painter.drawImage(QRectF(*(side * _FINE for side in sides)), QImage.fromData(mark.jpeg))
