"""The bench display with a scale that sends: zones, tones, rate, stop flags, size of figures.

Masses by hand: from 4312.5 g with 0.3 g kept by the hose, 85.0 g are in at 4227.2 g.
"""

import math
from collections.abc import Callable
from decimal import Decimal

import pytest
from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter
from pytestqt.qtbot import QtBot

from chargebench.instruments.listening import Live, State
from chargebench.instruments.speech import Heard
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.bench_face import blocks
from chargebench.ui.bench_zone import Seen, Warned, Zone
from chargebench.ui.ink import ink
from chargebench.ui.large_text import fit_figure, slot
from chargebench.ui.sound import Tone
from tests.ui.test_bench_display import masses

OVER = "Over nameplate by 3.4 g. Recover and weigh in again; do not leave overcharged."
PX_PER_MM = 96 / 25.4
# 20 minutes of arc at three metres (ISO 9241-303:2011, preferred character height; from memory):
# 3000 mm x tan(20/60 degree) = 17.5 mm; at least 16 minutes: 14.0 mm.
PREFERRED_MM = 3_000 * math.tan(math.radians(20 / 60))
LEAST_MM = 3_000 * math.tan(math.radians(16 / 60))


class Scale:
    """What a listener would know, set by the test."""

    def __init__(self) -> None:
        self.now = Live(State.LIVE, "Listening.")
        self.at = 0.0

    def shows(self, grams: str, *, steady: bool = True, after: float = 0.5) -> None:
        self.at += after
        heard = Heard(grams, f"{grams} g", Decimal(grams), "g", Decimal("0.1"), steady)
        self.now = Live(State.LIVE, "Listening.", heard, steady, self.at)

    def __call__(self) -> Live:
        return self.now


def look(start: str, live: str) -> Seen:
    view = masses(start, live)
    over = view.total is not None and view.size(view.total) > 87
    return Seen(view, (OVER,) if over else ())


@pytest.fixture
def scale() -> Scale:
    made = Scale()
    made.shows("4312.5")
    return made


@pytest.fixture
def tones() -> list[Tone]:
    return []


@pytest.fixture
def display(qtbot: QtBot, scale: Scale, tones: list[Tone]) -> BenchDisplay:
    made = BenchDisplay(
        look,
        head="R290 into Bakery freezer",
        place="C-014 on S-2, live",
        live=scale,
        source="S-2",
        sound=tones.append,
    )
    qtbot.addWidget(made)
    made.resize(1024, 700)
    made.show()
    return made


def pour_to(display: BenchDisplay, scale: Scale, *readings: str) -> None:
    for grams in readings:
        scale.shows(grams, steady=False)
        display.tick()


def test_that_start_and_end_are_taken_from_the_scale_at_rest(
    qtbot: QtBot, display: BenchDisplay, scale: Scale
) -> None:
    with qtbot.waitSignal(display.started) as start:
        qtbot.keyClick(display, Qt.Key.Key_Space)
    assert start.args == ["4312.5 g", "S-2"]
    pour_to(display, scale, "4227.2")
    qtbot.keyClick(display, Qt.Key.Key_Return)
    assert "still moves" in display.says
    assert display.isVisible()
    scale.shows("4227.1")
    display.tick()
    with qtbot.waitSignal(display.ended) as end:
        qtbot.keyClick(display, Qt.Key.Key_Return)
    assert end.args == ["4227.1 g", "S-2"]


def test_that_what_is_typed_counts_before_what_the_scale_sends(
    qtbot: QtBot, display: BenchDisplay, scale: Scale
) -> None:
    with qtbot.waitSignal(display.started) as start:
        qtbot.keyClicks(display, "4300")
        qtbot.keyClick(display, Qt.Key.Key_Space)
    assert start.args == ["4300 g", ""]
    pour_to(display, scale, "4250")
    assert display.figure == "35.3 g"  # 85.0 - (4300 - 4250 - 0.3)


def test_that_each_tone_is_heard_once_however_the_reading_flickers(
    qtbot: QtBot, display: BenchDisplay, scale: Scale, tones: list[Tone]
) -> None:
    qtbot.keyClick(display, Qt.Key.Key_Space)
    # Near from 8.5 g to go, which is at 4235.7 g; at the stop from 2 g, at 4229.2 g.
    pour_to(display, scale, "4236.0", "4235.6", "4235.8", "4235.5", "4229.1", "4229.3", "4229.0")
    assert tones == [Tone.NEAR, Tone.AT]
    pour_to(display, scale, "4225.1")  # 87.1 g: past 2 g over
    assert tones[-1] is Tone.PAST


def test_that_the_alarm_goes_on_while_more_goes_in_past_the_stop(
    qtbot: QtBot, display: BenchDisplay, scale: Scale, tones: list[Tone]
) -> None:
    qtbot.keyClick(display, Qt.Key.Key_Space)
    pour_to(display, scale, *(f"{4225 - n:.1f}" for n in range(8)))
    before = len(tones)
    display._still_past()
    assert tones[before:] == [Tone.PAST]
    pour_to(display, scale, *["4217.0"] * 16)
    display._still_past()
    assert len(tones) == before + 1


def test_that_rate_and_time_to_the_stop_are_said_while_it_pours(
    qtbot: QtBot, display: BenchDisplay, scale: Scale
) -> None:
    qtbot.keyClick(display, Qt.Key.Key_Space)
    assert display.rate == ""
    # 0.5 g each half second is 60 g/min; at 4307.2 g it is 80 g to 4227.2 g: 80 s.
    pour_to(display, scale, *(f"{4312.2 - 0.5 * n:.1f}" for n in range(11)))
    assert display.rate == "60 g/min, stop in 1:20"
    assert display.rate in display.accessibleDescription()


def test_that_a_lost_scale_is_said_and_nothing_is_taken(
    qtbot: QtBot, display: BenchDisplay, scale: Scale
) -> None:
    scale.now = Live(State.LOST, "The port can not be listened to; trying again.")
    display.tick()
    assert "S-2 lost" in display.present
    with qtbot.assertNotEmitted(display.started):
        qtbot.keyClick(display, Qt.Key.Key_Space)
    assert "trying again" in display.face.says


def test_that_a_stop_flag_is_on_the_display_for_as_long_as_it_stands(
    qtbot: QtBot, display: BenchDisplay, scale: Scale
) -> None:
    qtbot.keyClick(display, Qt.Key.Key_Space)
    without = display.grab().toImage()
    pour_to(display, scale, "4223.8")
    assert display.zone is Zone.PAST
    assert display.face.stops == (OVER,)
    assert OVER in display.accessibleDescription()
    assert _has_colour(display.grab().toImage(), QRectF(0, 60, 1024, 70))
    assert not _has_colour(without, QRectF(0, 60, 1024, 4))


def _has_colour(image: QImage, part: QRectF) -> bool:
    wanted = ink().stop.rgb()
    ratio = image.devicePixelRatio()
    return any(
        image.pixel(x, y) == wanted
        for y in range(int(part.top() * ratio), int(part.bottom() * ratio))
        for x in range(0, image.width(), 2)
    )


def test_that_a_foot_that_stays_on_the_pedal_presses_once(
    qtbot: QtBot, display: BenchDisplay
) -> None:
    from PySide6.QtCore import QEvent
    from PySide6.QtGui import QKeyEvent
    from PySide6.QtWidgets import QApplication

    held = QKeyEvent(
        QEvent.Type.KeyPress, Qt.Key.Key_Space, Qt.KeyboardModifier.NoModifier, " ", autorep=True
    )
    with qtbot.assertNotEmitted(display.started):
        QApplication.sendEvent(display, held)


def test_that_a_zone_left_for_good_and_entered_anew_is_heard_again() -> None:
    warned = Warned()
    # In through the hose that keeps 0.3 g: 8.3, 13.3, 8.3, 0.3, 4.3 and 0.3 g to go of 85 g.
    readings = ("4235.5 g", "4240.5 g", "4235.5 g", "4227.5 g", "4231.5 g", "4227.5 g")
    heard = [warned.enter(masses("4312.5 g", reading)) for reading in readings]
    assert heard == [Tone.NEAR, None, Tone.NEAR, Tone.AT, None, None]


def _digits_mm(size: QSize, figure: str, room: Callable[[QRectF, QRectF], QRectF]) -> float:
    image = QImage(size, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    whole = QRectF(0, 0, size.width(), size.height())
    inside = whole.adjusted(whole.width() * 0.025, 0, -whole.width() * 0.025, 0)
    left, right = blocks(slot(inside, 0.20, 0.62))  # with a stop flag above: the least room
    drawn = fit_figure(painter, room(left, right), figure, ink().text, Qt.AlignmentFlag.AlignLeft)
    painter.end()
    return drawn / PX_PER_MM


@pytest.mark.parametrize("size", [QSize(1024, 700), QSize(1920, 1080)], ids=["1024", "1920"])
@pytest.mark.parametrize("figure", ["23.4 g", "14.200 kg"])
def test_that_what_is_to_go_is_readable_from_three_metres(size: QSize, figure: str) -> None:
    def room(left: QRectF, _right: QRectF) -> QRectF:
        inner = left.adjusted(left.width() * 0.03, 0, -left.width() * 0.03, 0)
        return slot(inner, 0.04, 0.74)

    assert _digits_mm(size, figure, room) >= PREFERRED_MM


@pytest.mark.parametrize("size", [QSize(1024, 700), QSize(1920, 1080)], ids=["1024", "1920"])
@pytest.mark.parametrize("figure", ["4\u202f227.2 g", "24.227 kg"])
def test_that_where_to_stop_is_readable_from_three_metres(size: QSize, figure: str) -> None:
    assert _digits_mm(size, figure, lambda _left, right: slot(right, 0.12, 0.47)) >= LEAST_MM
