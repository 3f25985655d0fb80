"""Pressure over temperature, drawn: bubble full, dew dashed; on the screen and on paper."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from chargebench.steps.reference import Tabled
from chargebench.ui import theme
from chargebench.ui.ink import ink
from chargebench.ui.language import tr
from chargebench.words import say

_TICKS = 7


@dataclass(frozen=True, slots=True)
class ChartInk:
    """What a chart is drawn with."""

    text: QColor
    line: QColor
    curve: QColor
    font: QFont


def paper_ink(font: QFont) -> ChartInk:
    """Black on white."""
    black = QColor("#000000")
    return ChartInk(black, QColor("#9a9a9a"), black, font)


@dataclass(frozen=True, slots=True)
class Axis:
    """Numbers along an edge; of pressures that are all above zero, by powers."""

    low: float
    high: float
    powers: bool = False

    def share(self, value: float) -> float:
        """Where a value lies, 0 at the low end."""
        low, high, at = (self._scaled(each) for each in (self.low, self.high, value))
        return (at - low) / (high - low)

    def _scaled(self, value: float) -> float:
        return math.log10(value) if self.powers else value

    def ticks(self) -> list[float]:
        """Round numbers between the ends."""
        if self.powers:
            first, last = math.floor(math.log10(self.low)), math.ceil(math.log10(self.high))
            found = [m * 10.0**e for e in range(first, last + 1) for m in (1, 2, 5)]
        else:
            step = _round_up((self.high - self.low) / _TICKS)
            first, last = math.ceil(self.low / step - 1e-9), math.floor(self.high / step + 1e-9)
            found = [place * step for place in range(first, last + 1)]
        return [each for each in found if self.low <= each <= self.high]


def _round_up(step: float) -> float:
    power: float = 10.0 ** math.floor(math.log10(step))
    return next(power * m for m in (1, 2, 5, 10) if power * m >= step * 0.999)


def axes(table: Tabled) -> tuple[Axis, Axis] | None:
    """Temperature and pressure axes around a table's curve; None where it has no length."""
    if len(table.chart) < 2:
        return None
    temperatures = [each[0] for each in table.chart]
    pressures = [value for each in table.chart for value in each[1:]]
    low, high = min(pressures), max(pressures)
    if temperatures[0] >= temperatures[-1] or low >= high:
        return None
    powers = not table.pressure.gauge and low > 0
    spare = 0 if powers else (high - low) * 0.03
    return Axis(temperatures[0], temperatures[-1]), Axis(low - spare, high + spare, powers)


def draw_chart(painter: QPainter, room: QRectF, table: Tabled, with_ink: ChartInk) -> None:
    """Draw both curves with their axes."""
    found = axes(table)
    if found is None:
        return
    across, up = found
    painter.setFont(with_ink.font)
    metrics = QFontMetricsF(with_ink.font)
    line = metrics.lineSpacing()
    wide = max(metrics.horizontalAdvance(f"{tick:g}") for tick in up.ticks() or [0.0])
    plot = room.adjusted(wide + line * 0.6, line * 1.3, -line * 1.2, -line * 2.4)
    _grid(painter, plot, (across, up), with_ink)
    painter.setPen(with_ink.text)
    painter.drawText(QPointF(room.left(), room.top() + metrics.ascent()), tr(table.pressure.label))
    under = QRectF(plot.left(), plot.bottom() + line * 1.2, plot.width(), line * 1.2)
    painter.drawText(
        under,
        Qt.AlignmentFlag.AlignRight,
        tr(say("temperature, {label}", label=table.temperature.label)),
    )
    curves = (1, 2) if table.glides else (1,)
    for which in curves:
        points = [
            QPointF(
                plot.left() + plot.width() * across.share(each[0]),
                plot.bottom() - plot.height() * up.share(each[which]),
            )
            for each in table.chart
        ]
        style = Qt.PenStyle.SolidLine if which == 1 else Qt.PenStyle.DashLine
        painter.setPen(QPen(with_ink.curve, max(line / 8, 1.5), style))
        painter.drawPolyline(QPolygonF(points))
    _key(painter, plot, with_ink, glides=table.glides)


def _grid(painter: QPainter, plot: QRectF, both: Sequence[Axis], with_ink: ChartInk) -> None:
    across, up = both
    metrics = QFontMetricsF(with_ink.font)
    line, last = metrics.lineSpacing(), -math.inf
    for tick in across.ticks():
        x = plot.left() + plot.width() * across.share(tick)
        painter.setPen(QPen(with_ink.line, 1))
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))
        text = f"{tick:g}".replace("-", "\u2212")
        half = metrics.horizontalAdvance(text) / 2
        if x - half > last:
            painter.setPen(with_ink.text)
            painter.drawText(QPointF(x - half, plot.bottom() + metrics.ascent()), text)
            last = x + half + line / 3
    last = math.inf
    for tick in up.ticks():
        y = plot.bottom() - plot.height() * up.share(tick)
        painter.setPen(QPen(with_ink.line, 1))
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y))
        if y + line / 2 < last:
            painter.setPen(with_ink.text)
            text = f"{tick:g}".replace("-", "\u2212")
            left = plot.left() - line / 3 - metrics.horizontalAdvance(text)
            painter.drawText(QPointF(left, y + metrics.ascent() / 2 - 1), text)
            last = y - line / 2


def _key(painter: QPainter, plot: QRectF, with_ink: ChartInk, *, glides: bool) -> None:
    metrics = QFontMetricsF(with_ink.font)
    line = metrics.lineSpacing()
    rows = (
        (("bubble", Qt.PenStyle.SolidLine), ("dew", Qt.PenStyle.DashLine))
        if glides
        else (("bubble and dew are one", Qt.PenStyle.SolidLine),)
    )
    for place, (word, style) in enumerate(rows):
        y = plot.top() + line * (place + 0.8)
        painter.setPen(QPen(with_ink.curve, max(line / 8, 1.5), style))
        painter.drawLine(QPointF(plot.left() + line / 2, y), QPointF(plot.left() + line * 2.5, y))
        painter.setPen(with_ink.text)
        at = QPointF(plot.left() + line * 3, y + metrics.ascent() / 2 - 1)
        painter.drawText(at, word)


class ReferenceChart(QWidget):
    """The chart on the screen."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table: Tabled | None = None
        self.setAccessibleName(tr("Pressure-temperature chart"))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_table(self, table: Tabled | None) -> None:
        """Draw a table's curves."""
        self._table = table
        said = "" if table is None or not table.rows else self._sentence(table)
        self.setAccessibleDescription(tr(said))
        self.setToolTip(tr(said))
        self.update()

    @staticmethod
    def _sentence(table: Tabled) -> str:
        first, last = table.chart[0], table.chart[-1]
        return say(
            "{refrigerant}: from {first:.4g} at {first_2:g} {label} to {last:.4g} "
            "{label_2} at {last_2:g} {label}.",
            refrigerant=table.refrigerant,
            first=first[1],
            first_2=first[0],
            label=table.temperature.label,
            last=last[1],
            label_2=table.pressure.label,
            last_2=last[0],
        )

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As small as it can be read."""
        return QSize(theme.em() * 14, theme.em() * 12)

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = ink()
        painter.fillRect(self.rect(), colours.paper)
        if self._table is not None:
            room = QRectF(self.rect()).adjusted(8, 6, -8, -4)
            with_ink = ChartInk(colours.text, colours.line, colours.mass, self.font())
            draw_chart(painter, room, self._table, with_ink)
        painter.end()
