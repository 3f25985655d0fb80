"""Usage by month: what was charged, recovered and lost, drawn beside each other."""

from collections.abc import Mapping

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from chargebench.desk import UsageTotal
from chargebench.ui import theme
from chargebench.ui.ink import Ink, ink
from chargebench.ui.language import month_letter, tr
from chargebench.ui.mass_bar import hatch
from chargebench.ui.stock_words import mass
from chargebench.units import System
from chargebench.words import joined, say

MONTHS_MOST = 12
_KINDS = ("charged", "recovered", "released")


class MonthChart(QWidget):
    """Three bars a month: filled what was charged, open what was recovered, hatched what left."""

    def __init__(self, system: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._system = system
        self._months: dict[str, tuple[int, int, int]] = {}
        self.setAccessibleName(tr("Usage by month"))
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)

    def show_months(self, months: Mapping[str, UsageTotal]) -> None:
        """Draw the last twelve months of a period."""
        nothing = UsageTotal("all")
        self._months = {}
        for month in _without_gaps(months)[-MONTHS_MOST:]:
            total = months.get(month, nothing)
            self._months[month] = (total.charged_mg, total.recovered_mg, total.released_mg)
        self.setAccessibleDescription(tr(self.sentence))
        self.setToolTip(tr(self.sentence))
        self.update()

    @property
    def sentence(self) -> str:
        """The picture in words."""
        lines = []
        for month, sizes in self._months.items():
            said = joined(
                ", ",
                (
                    say("{kind} {size}", kind=kind, size=mass(size, self._system))
                    for kind, size in zip(_KINDS, sizes, strict=True)
                    if size
                ),
            )
            lines.append(
                say(
                    "{month}: {said}",
                    month=month,
                    said=said or "nothing charged, recovered or released",
                )
            )
        return joined("; ", lines) or "Nothing moved in this period."

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Beside the totals."""
        return QSize(theme.em() * 17, theme.em() * 8)

    def minimumSizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """As small as it can be read."""
        return QSize(theme.em() * 16, theme.em() * 7)

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw the key, the bars, the months' letters."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, line = ink(), QFontMetricsF(self.font()).lineSpacing()
        room = QRectF(self.rect()).adjusted(6, 2, -6, -2)
        self._draw_key(painter, room, line, colours)
        bars = room.adjusted(0, line * 2.4, 0, -line * 1.2)
        painter.setPen(QPen(colours.line, 1))
        painter.drawLine(bars.bottomLeft(), bars.bottomRight())
        most = max((max(sizes) for sizes in self._months.values()), default=0)
        painter.setPen(colours.quiet)
        tallest = QPointF(room.left(), room.top() + line * 2)
        painter.drawText(
            tallest, tr(say("tallest bar {most}", most=mass(most, self._system))) if most else ""
        )
        wide = bars.width() / MONTHS_MOST
        for place, (month, sizes) in enumerate(self._months.items()):
            left = bars.left() + place * wide
            for number, size in enumerate(sizes):
                if size > 0:
                    high = max(bars.height() * size / most, 2.0)
                    thick = wide * 0.27
                    x = left + wide * 0.08 + number * thick
                    bar = QRectF(x, bars.bottom() - high, thick * 0.9, high)
                    _draw_bar(painter, bar, number, colours)
            painter.setPen(colours.quiet)
            below = QRectF(left, bars.bottom(), wide, line * 1.2)
            letter = month_letter(int(month[5:7]))
            painter.drawText(below, Qt.AlignmentFlag.AlignCenter, letter)

    def _draw_key(self, painter: QPainter, room: QRectF, line: float, colours: Ink) -> None:
        metrics = QFontMetricsF(self.font())
        x = room.left()
        for number, kind in enumerate(map(tr, _KINDS)):
            box = QRectF(x, room.top() + line * 0.2, line * 0.6, line * 0.6)
            _draw_bar(painter, box, number, colours)
            painter.setPen(colours.text)
            painter.drawText(QPointF(box.right() + 4, room.top() + metrics.ascent()), kind)
            x = box.right() + metrics.horizontalAdvance(kind) + line * 0.8


def _without_gaps(months: Mapping[str, UsageTotal]) -> list[str]:
    """Every month from the first to the last: one in which nothing moved is told as such."""
    if not months:
        return []
    first, last = (
        int(month[:4]) * 12 + int(month[5:7]) - 1 for month in (min(months), max(months))
    )
    return [f"{at // 12:04d}-{at % 12 + 1:02d}" for at in range(first, last + 1)]


def _draw_bar(painter: QPainter, bar: QRectF, number: int, colours: Ink) -> None:
    if number == 0:
        painter.fillRect(bar, colours.mass)
    elif number == 1:
        painter.setPen(QPen(colours.text, 1.5))
        painter.setBrush(colours.paper)
        painter.drawRect(bar.adjusted(0.75, 0.75, -0.75, -0.75))
    else:
        hatch(painter, bar, colours.check, colours.paper, width=1.5, step=5.0)
