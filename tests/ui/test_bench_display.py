"""The bench display, worked by keys alone.

Masses by hand: from 4312.5 g with 0.3 g kept by the hose, 85.0 g are in at 4227.2 g.
"""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.bench_zone import Seen, Zone
from chargebench.ui.mass_view import MassView
from chargebench.ui.sound import Tone
from chargebench.units import Kind, Q, Quantity, read


def grams(size: float) -> Quantity:
    return Q(size, "g")


def masses(start: str, live: str) -> MassView:
    """A weigh-in of 85 g ± 2 g through a hose that keeps 0.3 g."""
    if not start:
        return MassView(grams(85), grams(2))
    begin = read(Kind.SCALE, start).quantity.to("g")
    stop = begin - grams(85.3)
    if not live:
        return MassView(grams(85), grams(2), stop_readings=(stop,))
    charged = begin - read(Kind.SCALE, live).quantity.to("g") - grams(0.3)
    return MassView(grams(85), grams(2), charged=charged, total=charged, stop_readings=(stop,))


def look(start: str, live: str) -> Seen:
    return Seen(masses(start, live))


class Heard:
    def __init__(self) -> None:
        self.tones: list[Tone] = []

    def __call__(self, tone: Tone) -> None:
        self.tones.append(tone)


@pytest.fixture
def heard() -> Heard:
    return Heard()


@pytest.fixture
def display(qtbot: QtBot, heard: Heard) -> BenchDisplay:
    made = BenchDisplay(
        look, head="R290 into Bakery freezer", place="C-014 on S-2, live", sound=heard
    )
    qtbot.addWidget(made)
    made.resize(1024, 600)
    made.show()
    return made


def test_that_a_whole_weigh_in_needs_only_keys(qtbot: QtBot, display: BenchDisplay) -> None:
    with qtbot.waitSignal(display.started) as start:
        qtbot.keyClicks(display, "4312.5g")
        qtbot.keyClick(display, Qt.Key.Key_Space)
    assert start.args == ["4312.5g", ""]
    assert display.stop == "4\u202f227.2 g"
    qtbot.keyClicks(display, "4250.6")
    qtbot.waitUntil(lambda: display.figure == "23.4 g")
    assert display.zone is Zone.FAR
    with qtbot.waitSignal(display.ended) as end:
        qtbot.keyClick(display, Qt.Key.Key_Delete)
        qtbot.keyClicks(display, "4227,2")
        qtbot.keyClick(display, Qt.Key.Key_Return)
    assert end.args == ["4227,2 g", ""]
    assert not display.isVisible()


def test_that_half_typed_figures_neither_move_the_picture_nor_sound(
    qtbot: QtBot, display: BenchDisplay, heard: Heard
) -> None:
    qtbot.keyClicks(display, "4312.5")
    qtbot.keyClick(display, Qt.Key.Key_Space)
    qtbot.keyClicks(display, "42")  # 42 g on the scale would be far over
    assert display.zone is Zone.FAR
    qtbot.keyClicks(display, "50.6")
    qtbot.waitUntil(lambda: display.figure == "23.4 g")
    assert heard.tones == []


@pytest.mark.parametrize(
    ("live", "zone", "tone", "figure"),
    [
        ("4235", Zone.NEAR, Tone.NEAR, "7.8 g"),
        ("4228", Zone.AT, Tone.AT, "0.8 g"),
        ("4223.8", Zone.PAST, Tone.PAST, "3.4 g"),
    ],
)
def test_that_near_at_and_past_the_stop_sound_and_read_differently(
    qtbot: QtBot,
    display: BenchDisplay,
    heard: Heard,
    live: str,
    zone: Zone,
    tone: Tone,
    figure: str,
) -> None:
    qtbot.keyClicks(display, "4312.5")
    qtbot.keyClick(display, Qt.Key.Key_Space)
    before = display.grab().toImage()
    qtbot.keyClicks(display, live)
    qtbot.waitUntil(lambda: heard.tones == [tone])
    assert display.zone is zone
    assert display.figure == figure
    assert str(zone) in display.accessibleDescription()
    assert display.grab().toImage() != before


def test_that_what_is_no_reading_is_refused_and_nothing_is_taken(
    qtbot: QtBot, display: BenchDisplay
) -> None:
    taken: list[str] = []
    display.started.connect(lambda text, _: taken.append(text))
    display.ended.connect(lambda text, _: taken.append(text))
    qtbot.keyClicks(display, "43x")
    qtbot.keyClick(display, Qt.Key.Key_Space)
    assert "not a unit" in display.says
    qtbot.keyClick(display, Qt.Key.Key_Return)
    assert display.isVisible()
    qtbot.keyClick(display, Qt.Key.Key_Delete)
    qtbot.keyClick(display, Qt.Key.Key_Space)
    assert "Type what the scale shows." in display.says
    qtbot.keyClicks(display, "4312.5")
    qtbot.keyClick(display, Qt.Key.Key_Return)
    assert "Mark the start first" in display.says
    assert taken == []


def test_that_escape_leaves_without_taking_anything(qtbot: QtBot, display: BenchDisplay) -> None:
    taken: list[str] = []
    display.ended.connect(lambda text, _: taken.append(text))
    qtbot.keyClicks(display, "4312.5")
    with qtbot.waitSignal(display.left):
        qtbot.keyClick(display, Qt.Key.Key_Escape)
    assert taken == []
    assert not display.isVisible()


def test_that_a_bare_figure_takes_the_unit_of_the_start(qtbot: QtBot) -> None:
    display = BenchDisplay(look, head="", place="", start="9.5 lb")
    qtbot.addWidget(display)
    qtbot.keyClicks(display, "9.4")
    with qtbot.waitSignal(display.ended) as end:
        qtbot.keyClick(display, Qt.Key.Key_Return)
    assert end.args == ["9.4 lb", ""]
