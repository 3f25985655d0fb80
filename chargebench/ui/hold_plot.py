"""The plot of a standing pressure test: what temperature leaves of each reading, and its doubt."""

from typing import Any, ClassVar

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QWidget

from chargebench.calc.pressure_test import PressureWord
from chargebench.ui import theme
from chargebench.ui.decay_plot import POINT_PX, DecayPlot
from chargebench.ui.hold_view import HoldView
from chargebench.ui.ink import ink
from chargebench.ui.plotting import Chart
from chargebench.words import say

_ROOM = 0.25  # of the range shown, above and below
_LEAST_MIN = 30.0  # shown from the start on


class HoldPlot(DecayPlot):
    """The verdict, the plot, and under it what stays open."""

    NAME: ClassVar[str] = "Pressure test"
    EMPTY: ClassVar[str] = (
        "The pressure test is drawn here from the first reading with a temperature on."
    )
    SHAPES: ClassVar[dict[str, str]] = {
        PressureWord.HOLDS: "signed",
        PressureWord.LEAKS: "stop",
        PressureWord.ROSE: "check",
    }

    def make_chart(self) -> Chart:
        """The drawing; called once the library is there."""
        return _HoldChart()


class _HoldChart:
    """The plotting library's widget, drawn anew for each reading."""

    def __init__(self) -> None:
        import pyqtgraph  # loaded by now

        self._pg: Any = pyqtgraph
        self.plot: Any = pyqtgraph.PlotWidget()
        self.widget: QWidget = self.plot
        self.widget.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.widget.setMinimumHeight(13 * theme.em())
        self.widget.setMaximumHeight(22 * theme.em())
        self.plot.setMenuEnabled(False)
        self.plot.setMouseEnabled(x=False, y=False)
        self.plot.hideButtons()

    def draw(self, view: HoldView | None) -> None:
        """Draw it all again; a test has tens of readings."""
        colours = ink()
        self.plot.clear()
        self.plot.setBackground(colours.paper)
        words = {
            "left": say("pressure, {unit}", unit=view.unit if view else "kPa(a)"),
            "bottom": "min",
        }
        for side, said in words.items():
            axis = self.plot.getAxis(side)
            axis.setPen(colours.quiet)
            axis.setTextPen(colours.text)
            axis.setTickFont(self.widget.font())
            axis.setLabel(said, color=colours.text.name())
            axis.enableAutoSIPrefix(False)  # noqa: FBT003 - its signature
            axis.setGrid(40)
        if view is None:
            self.plot.setXRange(0, _LEAST_MIN, padding=0.01)
            self.plot.setYRange(0, 1, padding=0)
            return
        self._band(view, colours.note)
        for values, symbol, colour in (
            (view.measured, "x", colours.quiet),
            (view.corrected, "o", colours.text),
        ):
            self.plot.plot(
                view.minutes,
                values,
                pen=None,
                symbol=symbol,
                symbolSize=POINT_PX,
                symbolBrush=None,
                symbolPen=self._pg.mkPen(colour, width=1.5),
            )
        self._range(view)

    def _band(self, view: HoldView, colour: QColor) -> None:
        veil = QColor(colour)
        veil.setAlpha(80)
        edges = [
            self.plot.plot(view.minutes, view.edge(side), pen=self._pg.mkPen(colour, width=1))
            for side in (-1, 1)
        ]
        self.plot.addItem(self._pg.FillBetweenItem(*edges, brush=veil))
        first = view.corrected[0]
        dashed = self._pg.mkPen(colour, width=1.5, style=Qt.PenStyle.DashLine)
        self.plot.addItem(self._pg.InfiniteLine(pos=first, angle=0, pen=dashed))

    def _range(self, view: HoldView) -> None:
        shown = [*view.corrected, *view.measured, *view.edge(-1), *view.edge(1)]
        room = max(_ROOM * (max(shown) - min(shown)), 1e-3 * max(shown))
        self.plot.setYRange(min(shown) - room, max(shown) + room, padding=0)
        self.plot.setXRange(0, max(_LEAST_MIN, 1.03 * view.minutes[-1]), padding=0.01)
