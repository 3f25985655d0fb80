"""The decay plot: what is drawn is what was read, and the two sentences stand by it."""

from dataclasses import replace
from math import log10
from typing import Any, cast

import pyqtgraph
from pytestqt.qtbot import QtBot

from chargebench.ui.decay_plot import DecayPlot
from chargebench.ui.decay_view import DecayView, Level


def view() -> DecayView:
    return DecayView(
        minutes=(0.0, 5.0, 10.0),
        pascals=(50.0, 80.0, 90.0),
        word="moisture",
        verdict="Decay test: moisture.",
        left_open="10 more minutes would help to decide.",
        curve_minutes=(0.0, 10.0),
        curve=(50.0, 90.0),
        low=(45.0, -1.0),
        high=(55.0, 99.0),
        rules=(Level("pass rule, end at most", 100.0),),
        # Vapour pressure of water at 20 °C: 2339 Pa (IAPWS-SR1, as commonly tabulated).
        water=Level("water boils at 20 °C", 2339.0),
    )


def drawn(plot: DecayPlot) -> Any:
    """What pyqtgraph draws, once it is there; it ships no types."""
    assert plot.chart is not None
    return cast("Any", plot.chart).plot


def test_that_the_plotting_library_waits_until_the_plot_is_seen(qtbot: QtBot) -> None:
    plot = DecayPlot()
    qtbot.addWidget(plot)
    plot.show_decay(view())
    assert plot.chart is None
    plot.resize(600, 400)
    plot.show()
    qtbot.waitUntil(lambda: plot.chart is not None)


def test_that_readings_are_points_at_their_place_on_a_log_axis(qtbot: QtBot) -> None:
    plot = DecayPlot()
    qtbot.addWidget(plot)
    plot.resize(600, 400)
    plot.show()
    plot.show_decay(view())
    qtbot.waitUntil(lambda: plot.chart is not None)
    items = drawn(plot).listDataItems()
    points = next(item for item in items if item.opts["symbol"] == "o")
    assert list(points.getOriginalDataset()[0]) == [0, 5, 10]
    assert list(points.getOriginalDataset()[1]) == [50, 80, 90]
    low, high = drawn(plot).getViewBox().viewRange()[1]
    assert low < log10(50)
    assert log10(2339) < high


def test_that_letters_of_close_lines_stand_apart_and_right_of_every_reading(qtbot: QtBot) -> None:
    plot = DecayPlot()
    qtbot.addWidget(plot)
    plot.resize(600, 400)
    plot.show()
    close = tuple(Level(name, size) for name, size in (("one", 90.0), ("two", 94.0)))
    plot.show_decay(replace(view(), rules=close))
    qtbot.waitUntil(lambda: plot.chart is not None)
    box = drawn(plot).getViewBox()
    lines = [each for each in box.addedItems if isinstance(each, pyqtgraph.InfiniteLine)]
    places = [line.label.orthoPos for line in lines]
    first, last = box.viewRange()[0]
    assert len(places) == 3
    assert abs(places[0] - places[1]) > 0.05
    assert all(first + place * (last - first) > view().minutes[-1] for place in places)


def test_that_the_verdict_stands_above_the_plot_and_what_stays_open_under_it(qtbot: QtBot) -> None:
    plot = DecayPlot()
    qtbot.addWidget(plot)
    plot.resize(600, 700)
    plot.show()
    plot.show_decay(view())
    qtbot.waitUntil(lambda: plot.chart is not None and plot.chart.widget.y() > 0)
    assert plot.chart is not None
    assert plot.verdict.y() < plot.chart.widget.y() < plot.left_open.y()
    assert plot.verdict.text() == "Decay test: moisture."
    assert plot.left_open.text() == "10 more minutes would help to decide."
    said = plot.accessibleDescription()
    assert "3 readings, last 90.0 Pa after 10 min" in said
    assert "water boils at 20 °C 2\u202f339.0 Pa" in said


def test_that_an_empty_test_is_an_invitation(qtbot: QtBot) -> None:
    plot = DecayPlot()
    qtbot.addWidget(plot)
    plot.resize(500, 300)
    plot.show()
    plot.show_decay(None)
    qtbot.waitUntil(lambda: plot.chart is not None)
    assert "from the first reading on" in plot.verdict.text()
