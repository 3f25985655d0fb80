"""The decay plot: pressure over minutes with the fitted shape, its limits and the pass rules."""

from collections.abc import Sequence
from itertools import pairwise
from math import ceil, floor, log10
from typing import Any, ClassVar

from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QColor, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from chargebench.ui import theme
from chargebench.ui.decay_view import DecayView
from chargebench.ui.ink import ink
from chargebench.ui.language import tr
from chargebench.ui.plotting import LIBRARY, Chart, Drawable
from chargebench.ui.plotting import load as load
from chargebench.ui.shapes import Shape
from chargebench.words import say

_POLL_MS = 25
POINT_PX = 10
LETTERS_SHARE = 0.24  # of the plot's width, right of every point
CLOSE = 0.09  # of the plot's height: letters of lines nearer than this stand beside each other


class DecayPlot(QWidget):
    """The verdict, the plot, and under it what stays open."""

    NAME: ClassVar[str] = "Decay test"
    EMPTY: ClassVar[str] = "The decay test is drawn here from the first reading on."
    SHAPES: ClassVar[dict[str, str]] = {
        "tight": "signed",
        "moisture": "check",
        "leak": "stop",
        "not yet decided": "open",
    }

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: Drawable | None = None
        self._chart: Chart | None = None
        self._poll = QTimer(self)
        self._poll.setInterval(_POLL_MS)
        self._poll.timeout.connect(self._make_chart)
        self._place = QVBoxLayout()
        self._shape = Shape()
        self.verdict = _sentence("head")
        self.left_open = _sentence("")
        self.key = _sentence("faint")
        says = QHBoxLayout()
        says.addWidget(self._shape, 0, Qt.AlignmentFlag.AlignTop)
        says.addWidget(self.verdict, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(says)
        layout.addLayout(self._place, 1)
        layout.addWidget(self.left_open)
        layout.addWidget(self.key)
        self.setAccessibleName(tr(self.NAME))
        self.show_decay(None)

    @property
    def view(self) -> Drawable | None:
        """What is drawn."""
        return self._view

    @property
    def chart(self) -> Chart | None:
        """The chart, once it has been shown."""
        return self._chart

    def show_decay(self, view: Drawable | None) -> None:
        """Draw a test; None before the first reading."""
        if view is not None and view == self._view:
            return  # a key in another field changed nothing here
        self._view = view
        self.verdict.setText(tr(view.verdict if view else self.EMPTY))
        self.left_open.setText(tr(view.left_open if view else ""))
        self.left_open.setVisible(bool(view and view.left_open))
        self.key.setText(tr(view.key_words if view else ""))
        self.key.setVisible(bool(view and view.key_words))
        self._shape.show_shape(self.SHAPES.get(view.word, "") if view else "")
        self._shape.setVisible(bool(view and view.word))
        self.setAccessibleDescription(tr(view.sentence if view else self.EMPTY))
        if self._chart is not None:
            self._chart.draw(view)

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Make the chart when it is first looked at: the plotting library is slow to load."""
        super().showEvent(event)
        if self._chart is None and not self._poll.isActive():
            LIBRARY.load()
            self._poll.start()
            self._make_chart()

    def _make_chart(self) -> None:
        """Make the chart as soon as the library is there."""
        if not LIBRARY.loaded:
            return
        self._poll.stop()
        self._chart = self.make_chart()
        self._place.addWidget(self._chart.widget)
        self._chart.draw(self._view)

    def make_chart(self) -> Chart:
        """The drawing; called once the library is there."""
        return _Chart()

    def changeEvent(self, event: QEvent) -> None:  # noqa: N802 - Qt's name
        """Follow light and dark, and the size of text."""
        if event.type() == QEvent.Type.PaletteChange and self._chart is not None:
            self._chart.draw(self._view)
        super().changeEvent(event)


def _sentence(weight: str) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setProperty("weight", weight)
    label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    label.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
    return label


def _letter_columns(sizes: Sequence[float], drawn: Sequence[float]) -> list[int]:
    """Column from the right of each line's letter, so that close lines keep theirs apart."""
    apart = CLOSE * max(log10(max(drawn) / min(drawn)), 0.1)
    columns = [0] * len(sizes)
    rising = sorted(range(len(sizes)), key=lambda number: sizes[number])
    for below, above in pairwise(rising):
        if log10(sizes[above] / sizes[below]) < apart:
            columns[above] = (columns[below] + 1) % 3
    return columns


class _Chart:
    """The plotting library's widget, drawn anew for each reading."""

    def __init__(self) -> None:
        import pyqtgraph  # loaded by now

        self._pg: Any = pyqtgraph
        self.plot: Any = pyqtgraph.PlotWidget()
        self.widget: QWidget = self.plot
        self.widget.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.widget.setMinimumHeight(15 * theme.em())
        self.widget.setMaximumHeight(24 * theme.em())
        self.plot.setMenuEnabled(False)
        self.plot.setMouseEnabled(x=False, y=False)
        self.plot.hideButtons()
        self.plot.setLogMode(x=False, y=True)

    def draw(self, view: DecayView | None) -> None:
        """Draw it all again; a test has tens of readings."""
        colours = ink()
        self.plot.clear()
        self.plot.setBackground(colours.paper)
        for side, words in (
            ("left", say("pressure, {unit}", unit=view.unit if view else "Pa")),
            ("bottom", "min"),
        ):
            axis = self.plot.getAxis(side)
            axis.setPen(colours.quiet)
            axis.setTextPen(colours.text)
            axis.setTickFont(self.widget.font())
            axis.setLabel(words, color=colours.text.name())
            axis.setGrid(40)
        if view is None or not view.minutes:
            self.plot.setXRange(0, 20, padding=0.01)
            self._scale(1.0, 1000.0)
            return
        self._fitted(view, colours.note)
        self.plot.plot(
            list(view.minutes),
            [view.size(each) for each in view.pascals],
            pen=None,
            symbol="o",
            symbolSize=POINT_PX,
            symbolBrush=None,  # hollow: the fitted line is seen through them
            symbolPen=self._pg.mkPen(colours.text, width=1.5),
        )
        dashes = (Qt.PenStyle.DashLine, Qt.PenStyle.DashDotLine, Qt.PenStyle.DotLine)
        sizes = [view.size(level.pascals) for _, level in view.key]
        columns = _letter_columns(sizes, (*sizes, *(view.size(each) for each in view.pascals)))
        for number, (letter, level) in enumerate(view.key):
            water = level is view.water
            self._level(
                view.size(level.pascals),
                letter,
                colours.check if water else colours.text,
                Qt.PenStyle.SolidLine if water else dashes[number % 3],
                0.95 - 0.085 * columns[number],
            )
        self._range(view)

    def _fitted(self, view: DecayView, colour: QColor) -> None:
        if not view.curve:
            return
        veil = QColor(colour)
        veil.setAlpha(80)
        times = list(view.curve_minutes)
        edges = [
            self.plot.plot(times, [view.size(each) for each in side], pen=None)
            for side in (view.low, view.high)
        ]
        self.plot.addItem(self._pg.FillBetweenItem(*edges, brush=veil))
        line = self._pg.mkPen(colour, width=1.5)
        self.plot.plot(times, [view.size(each) for each in view.curve], pen=line)

    def _level(
        self, size: float, letter: str, colour: QColor, style: Qt.PenStyle, place: float
    ) -> None:
        line = self._pg.InfiniteLine(
            pos=log10(size),
            angle=0,
            pen=self._pg.mkPen(colour, width=1.6, style=style),
            label=letter,
            labelOpts={
                "position": place,
                "color": colour,
                "fill": ink().paper,
                "border": self._pg.mkPen(colour),
                "anchors": [(0.5, 0.5), (0.5, 0.5)],
            },
        )
        line.label.setFont(self.widget.font())
        self.plot.addItem(line)

    def _range(self, view: DecayView) -> None:
        sizes = [view.size(each) for each in view.pascals]
        sizes += [view.size(each.pascals) for each in view.levels]
        self._scale(min(sizes), max(sizes))
        last = max(20.0, max(view.minutes) * 1.03)
        self.plot.setXRange(0, last / (1 - LETTERS_SHARE), padding=0.01)

    def _scale(self, least: float, most: float) -> None:
        """Pressure axis over a range, with figures as people write them: 1, 2, 5, 10, 20."""
        low, high = log10(least), log10(most)
        room = max(0.14 * (high - low), 0.12)
        self.plot.setYRange(low - room, high + room, padding=0)
        decades = range(floor(low - room), ceil(high + room) + 1)
        named = (1,) if len(decades) > 6 else (1, 2, 5)
        major = [
            (d + log10(n), f"{n * 10.0**d:,g}".replace(",", "\u202f"))
            for d in decades
            for n in named
        ]
        minor = [(d + log10(n), "") for d in decades for n in range(1, 10)]
        self.plot.getAxis("left").setTicks([major, minor])
