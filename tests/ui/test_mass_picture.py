"""The mass picture: drawn to scale, over unmistakable, every figure in words too.

The weighing is the trade's balance of masses, by hand: 4312.5 g before, 4223.8 g after, 0.3 g left
in the hose make 88.4 g in, which is 3.4 g over a nameplate of 85.0 g.
"""

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QImage
from pytestqt.qtbot import QtBot

from chargebench.ui.ink import ink
from chargebench.ui.mass_bar import MassBar, close_range, whole_range
from chargebench.ui.mass_picture import MassPicture
from chargebench.ui.mass_view import MassView, scale_text
from chargebench.units import Q, Quantity


def grams(size: float) -> Quantity:
    return Q(size, "g")


def weighed(charged: float, word: str, **others: Quantity) -> MassView:
    return MassView(
        nameplate=grams(85),
        tolerance=grams(2),
        charged=grams(charged),
        total=grams(charged),
        hose=others.get("hose", grams(0.3)),
        uncertainty=others.get("uncertainty", grams(0.8)),
        word=word,
        difference=grams(charged - 85),
        stop_readings=(grams(4227.2),),
    )


def drawn(picture: MassPicture) -> QImage:
    return picture.grab().toImage()


def has(image: QImage, colour: QColor) -> bool:
    return any(
        image.pixelColor(x, y) == colour
        for x in range(image.width())
        for y in range(image.height())
    )


def test_that_masses_lie_to_scale_from_zero_past_the_nameplate() -> None:
    view = weighed(40, "under")
    lowest, highest = whole_range(view)
    bar = MassBar(view, QRectF(0, 0, 1000, 20), lowest, highest)
    assert lowest == 0
    assert highest > 87
    assert bar.x(0) == 0
    assert bar.x(80) == pytest.approx(2 * bar.x(40))
    assert bar.x(1e6) == 1000  # what is beyond the end stays inside the bar


def test_that_the_close_up_holds_tolerance_and_charge() -> None:
    for charged in (83.5, 85.0, 88.4):
        lowest, highest = close_range(weighed(charged, "within"))
        assert lowest < 83
        assert highest > 87
        assert lowest < charged < highest


def test_that_over_nameplate_has_a_colour_and_a_word_nothing_else_has(qtbot: QtBot) -> None:
    picture = MassPicture()
    qtbot.addWidget(picture)
    picture.resize(420, 420)
    picture.show_mass(weighed(84.6, "within"))
    assert not has(drawn(picture), ink().stop)
    picture.show_mass(weighed(88.4, "over"))
    assert has(drawn(picture), ink().stop)
    assert picture.accessibleDescription().startswith("Over nameplate by 3.4 g (±0.8 g).")


def test_that_the_picture_moves_with_each_mass(qtbot: QtBot) -> None:
    picture = MassPicture()
    qtbot.addWidget(picture)
    picture.resize(420, 420)
    images = []
    for charged in (20, 40, 60):
        picture.show_mass(weighed(charged, "under"))
        images.append(drawn(picture))
    assert images[0] != images[1] != images[2]


@pytest.mark.parametrize(
    ("view", "says"),
    [
        (weighed(60, "under"), "Under nameplate by 25.0 g (±0.8 g)"),
        (weighed(84.6, "within"), "Within ±2.0 g of the nameplate (±0.8 g)"),
        (
            weighed(86.5, "scale too coarse to tell", uncertainty=grams(4)),
            "Scale too coarse to tell: off by 1.5 g (±4.0 g)",
        ),
        (MassView(grams(85)), "Nothing weighed yet"),
        (
            MassView(grams(14_200), charged=grams(1_500), opening=None),
            "Charged 1.500 kg; what was in before was not weighed",
        ),
    ],
)
def test_that_each_verdict_is_said_with_its_figure(view: MassView, says: str) -> None:
    assert view.verdict == says


def test_that_every_figure_has_its_unit_and_a_stop_reading_the_scales() -> None:
    view = weighed(88.4, "over")
    assert dict(view.rows) == {
        "in it": "88.4 g",
        "nameplate": "85.0 g ±2.0 g",
        "in the hose": "0.3 g",
        "uncertainty": "±0.8 g (k = 2)",
        "stop reading": "4\u202f227.2 g",
    }
    assert scale_text(Q(9.5, "lb")) == "9.500 lb"
    assert scale_text(Q(152, "oz")) == "152.00 oz"


def test_that_without_a_nameplate_it_says_what_is_needed(qtbot: QtBot) -> None:
    picture = MassPicture()
    qtbot.addWidget(picture)
    picture.resize(300, 300)
    picture.show_mass(None)
    assert "nameplate charge is typed" in picture.accessibleDescription()
    drawn(picture)


def test_that_words_grow_the_room_they_ask_for(qtbot: QtBot) -> None:
    picture = MassPicture()
    qtbot.addWidget(picture)
    picture.show_mass(weighed(88.4, "over"))
    small = picture.sizeHint().height()
    font = picture.font()
    font.setPointSizeF(font.pointSizeF() * 2)
    picture.setFont(font)
    assert picture.sizeHint().height() > 1.7 * small
