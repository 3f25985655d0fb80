"""Forms on the page: every form there is, what is typed, understood, refused and undone."""

from typing import Any

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import REGISTERS, STEPS, STOCK, Asks, Form
from chargebench.ui import theme
from chargebench.ui.formview import mnemonics
from tests.hands import focused
from tests.ui.page import Page

pytestmark = pytest.mark.usefixtures("themed")
ALL_FORMS = [*STEPS.values(), *REGISTERS.values(), *STOCK.values()]


@pytest.fixture
def nameplate(qtbot: QtBot, desk: Desk) -> Page:
    return Page(qtbot, STEPS["nameplate"], desk)


@pytest.mark.parametrize("form", ALL_FORMS, ids=lambda form: form.key)
def test_that_every_form_shows_a_named_editor_for_each_field(
    qtbot: QtBot, desk: Desk, form: Form
) -> None:
    page = Page(qtbot, form, desk)
    for field in (each for each in form.fields if each.shown):
        editors = page.view.field(field.key).editors()
        assert editors, field.key
        assert all(editor.accessibleName() for editor in editors), field.key
        assert all(editor.height() >= theme.TARGET_PX_MIN for editor in editors), field.key


@pytest.mark.parametrize("form", ALL_FORMS, ids=lambda form: form.key)
def test_that_every_form_gives_back_what_was_put_in_it(
    qtbot: QtBot, desk: Desk, form: Form
) -> None:
    def texts(fields: Any) -> dict[str, Any]:
        filled: dict[str, Any] = {}
        for field in fields:
            match field.asks:
                case Asks.LINES:
                    filled[field.key] = [texts(field.fields), texts(field.fields)]
                case Asks.TICKS:
                    tick = {"line": "fan", "at": "2026-11-25T14:30:00+00:00", "by": "P-01"}
                    filled[field.key] = [tick]
                case Asks.YES_NO:
                    filled[field.key] = "no"
                case Asks.CHOICE:
                    filled[field.key] = field.choices[-1]
                case _:
                    filled[field.key] = f"not {field.key}"
        return filled

    page = Page(qtbot, form, desk)
    typed = texts(field for field in form.fields if field.shown)
    page.view.put(typed)
    assert page.view.typed() == typed


def test_that_tab_goes_through_the_fields_in_the_order_of_the_form(nameplate: Page) -> None:
    nameplate.view.focus_first()
    for field in STEPS["nameplate"].fields:
        assert focused() is nameplate.view.row(field.key).editors()[0]
        nameplate.bot.keyClick(focused(), Qt.Key.Key_Tab)


def test_that_enter_goes_on_to_the_next_field(nameplate: Page) -> None:
    nameplate.type("refrigerant", "R290")
    nameplate.bot.keyClick(focused(), Qt.Key.Key_Return)
    assert focused() is nameplate.view.row("charge").editor


# NIST SP 811, B.8: 1 oz = 28.349 523 g, so 3.0 oz are 85.0 g and 3.9 oz are 110.6 g.
@pytest.mark.parametrize(("typed", "understood"), [("3.0 oz", "= 85.0 g"), ("3.9oz", "= 110.6 g")])
def test_that_a_mass_shows_what_it_was_understood_as(
    nameplate: Page, typed: str, understood: str
) -> None:
    row = nameplate.type("charge", typed)
    assert nameplate.tail("charge") == understood
    assert row.refusal.isHidden()


def test_that_a_gauge_pressure_stays_a_gauge_pressure(nameplate: Page) -> None:
    # NIST SP 811, B.8: 1 psi = 6.894 757 kPa, so 150 psi are 10.34 bar.
    nameplate.type("low_side_design", "150 psig")
    assert nameplate.tail("low_side_design") == "= 10.34 bar(g)"


def test_that_a_wrong_unit_is_refused_under_the_field(nameplate: Page) -> None:
    row = nameplate.type("charge", "85 psig")
    assert not row.refusal.isHidden()
    assert "Expected a mass" in row.refusal.text()
    assert row.text() == "85 psig"
    assert row.refusal.text() in row.editor.accessibleDescription()


def test_that_an_empty_needed_field_says_so(nameplate: Page) -> None:
    assert nameplate.tail("charge") == "needed"
    nameplate.type("charge", "8")
    assert nameplate.tail("charge") == ""


def test_that_undo_takes_back_typing_field_by_field(nameplate: Page) -> None:
    nameplate.type("refrigerant", "R290")
    nameplate.type("charge", "85 g")
    nameplate.bot.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert nameplate.view.typed() == {"refrigerant": "R290"}
    nameplate.bot.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert nameplate.view.typed() == {}
    assert focused() is nameplate.view.row("refrigerant").editor
    nameplate.view.redo()
    nameplate.view.redo()
    assert nameplate.view.typed() == {"refrigerant": "R290", "charge": "85 g"}


def test_that_a_locked_form_takes_no_keys(nameplate: Page) -> None:
    nameplate.view.put({"charge": "85 g"})
    nameplate.view.lock(locked=True)
    nameplate.type("charge", "1")
    assert nameplate.view.typed() == {"charge": "85 g"}


def test_that_alt_letters_are_different_and_leave_the_acts_theirs() -> None:
    marked = mnemonics(["Suction pressure", "Serial number", "Box & lid"], taken="sn")
    letters = [text[text.replace("&&", "  ").index("&") + 1].casefold() for text in marked]
    assert len(set(letters)) == 3
    assert not {"s", "n"} & set(letters)
    assert marked[2].replace("&&", "+").replace("&", "").replace("+", "&") == "Box & lid"
