"""Forms on the page: every form there is, what is typed, understood, refused and undone."""

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QWidget
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.desk.views import TickLine
from chargebench.steps import REGISTERS, STEPS, STOCK, Asks, Form, answer
from chargebench.ui import theme
from chargebench.ui.fieldrow import FieldRow
from chargebench.ui.fields import Choice, LineEdit, YesNo
from chargebench.ui.formview import FormView, mnemonics
from chargebench.ui.lines import LinesField
from chargebench.ui.pick import PickEdit
from chargebench.ui.ticks import TicksField

TICKS = [TickLine("fan", "Fan running at floor level", "COMMON"), TickLine("fire", "Extinguisher")]
pytestmark = pytest.mark.usefixtures("themed")
ALL_FORMS = [*STEPS.values(), *REGISTERS.values(), *STOCK.values()]


class Page:
    """A form that tells itself what its text is understood as, as its owners do."""

    def __init__(self, qtbot: QtBot, form: Form, desk: Desk) -> None:
        ticks = {each.key: TICKS for each in form.fields if each.asks is Asks.TICKS}
        self.bot = qtbot
        self.view = FormView(form, desk, ticks=ticks)
        self.view.edited.connect(lambda _: self.tell())
        self.tell()
        qtbot.addWidget(self.view)
        self.view.resize(900, 700)
        self.view.show()
        self.view.activateWindow()
        qtbot.waitUntil(self.view.isActiveWindow)

    def tell(self) -> None:
        self.view.tell(answer(self.view.form, self.view.typed()))

    def type(self, key: str, text: str) -> FieldRow:
        row = self.view.row(key)
        row.editor.setFocus()
        self.bot.keyClicks(row.editors()[0], text)
        return row

    def tail(self, key: str) -> str:
        editor = self.view.row(key).editor
        assert isinstance(editor, LineEdit)
        return editor.tail()


@pytest.fixture
def nameplate(qtbot: QtBot, desk: Desk) -> Page:
    return Page(qtbot, STEPS["nameplate"], desk)


@pytest.fixture
def weigh_in(qtbot: QtBot, desk: Desk) -> Page:
    return Page(qtbot, STEPS["weigh_in"], desk)


def focused() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


@pytest.mark.parametrize("form", ALL_FORMS, ids=lambda form: form.key)
def test_that_every_form_shows_a_named_editor_for_each_field(
    qtbot: QtBot, desk: Desk, form: Form
) -> None:
    page = Page(qtbot, form, desk)
    for field in form.fields:
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
    typed = texts(form.fields)
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


def test_that_undo_brings_a_removed_line_back(weigh_in: Page) -> None:
    typed = {"lines": [{"cylinder": "C-014"}, {"cylinder": "C-015"}]}
    weigh_in.view.put(typed)
    first = weigh_in.view.lines("lines").line_rows(0)["start"].editor
    first.setFocus()
    held = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    weigh_in.bot.keyClick(first, Qt.Key.Key_Delete, held)
    assert weigh_in.view.typed() == {"lines": [{"cylinder": "C-015"} | _rest(weigh_in)]}
    weigh_in.bot.keyClick(focused(), Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    lines = weigh_in.view.typed()["lines"]
    assert [line["cylinder"] for line in lines if isinstance(line, dict)] == ["C-014", "C-015"]


def _rest(page: Page) -> dict[str, str]:
    keys = page.view.lines("lines").line_rows(0)
    return {key: "" for key in keys if key != "cylinder"}


def test_that_a_scanned_id_and_enter_pick_the_row_and_go_on(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)
    row["cylinder"].editor.setFocus()
    weigh_in.bot.keyClicks(focused(), "c-014")
    weigh_in.bot.keyClick(focused(), Qt.Key.Key_Return)
    assert row["cylinder"].text() == "C-014"
    assert focused() is row["scale"].editor
    assert isinstance(row["cylinder"].editor, PickEdit)
    assert row["cylinder"].editor.tail() == "= R290"


def test_that_part_of_a_name_picks_the_only_row_that_has_it(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["scale"]
    row.editor.setFocus()
    weigh_in.bot.keyClicks(row.editor, "floor")
    weigh_in.bot.keyClick(row.editor, Qt.Key.Key_Tab)
    assert row.text() == "S-3"


def test_that_down_lists_the_rows_and_enter_takes_one(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["scale"]
    row.editor.setFocus()
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Down, Qt.Key.Key_Return):
        weigh_in.bot.keyClick(row.editor, key)
    assert row.text() == "S-3"


def test_that_an_id_no_row_has_is_refused_and_kept(weigh_in: Page) -> None:
    row = weigh_in.view.lines("lines").line_rows(0)["cylinder"]
    row.editor.setFocus()
    weigh_in.bot.keyClicks(row.editor, "C-999")
    weigh_in.view.row("remarks").editor.setFocus()
    weigh_in.tell()
    assert row.text() == "C-999"
    assert "Expected the id of a cylinder" in row.refusal.text()


def test_that_a_line_shows_its_own_values_and_refusals(weigh_in: Page) -> None:
    weigh_in.view.put({"lines": [{"start": "9 lb 8.1 oz"}, {"start": "warm"}]})
    weigh_in.tell()
    first, second = (weigh_in.view.lines("lines").line_rows(n)["start"] for n in (0, 1))
    # 9 lb 8.1 oz = 152.1 oz x 28.349 523 125 g (NIST SP 811, B.8) = 4311.96 g
    assert isinstance(first.editor, LineEdit)
    assert first.editor.tail() == "= 4.3120 kg"
    assert first.refusal.isHidden()
    assert "scale reading" in second.refusal.text()


def test_that_a_decay_table_grows_as_one_types_and_drops_blank_lines(
    qtbot: QtBot, desk: Desk
) -> None:
    page = Page(qtbot, STEPS["evacuation"], desk)
    table = page.view.field("decay")
    assert isinstance(table, LinesField)
    at = table.line_rows(0)["at"].editor
    at.setFocus()
    for text in ("5 min", "420 micron", "10 min", "440 micron"):
        qtbot.keyClicks(focused(), text)
        qtbot.keyClick(focused(), Qt.Key.Key_Return)
    assert page.view.typed()["decay"] == [
        {"at": "5 min", "reading": "420 micron"},
        {"at": "10 min", "reading": "440 micron"},
    ]


def test_that_space_ticks_a_line_with_who_and_when(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["safety"], desk)
    page.view.focus_first()
    qtbot.keyClick(focused(), Qt.Key.Key_Space)
    ticks = page.view.typed()["ticks"]
    assert isinstance(ticks, list)
    (tick,) = ticks
    assert (tick["line"], tick["by"]) == ("fan", desk.person)
    assert answer(STEPS["safety"], page.view.typed()).ticked("ticks") == {"fan"}
    qtbot.keyClick(focused(), Qt.Key.Key_Space)
    assert "ticks" not in page.view.typed()


def test_that_a_tick_of_a_line_no_longer_asked_is_not_lost(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["safety"], desk)
    tick = {"line": "gone", "at": "2026-11-25T14:30:00+00:00", "by": "P-01"}
    page.view.put({"ticks": [tick]})
    assert isinstance(page.view.field("ticks"), TicksField)
    assert page.view.typed() == {"ticks": [tick]}


def test_that_keys_say_yes_and_no_and_take_it_back(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["close"], desk)
    row = page.view.row("resealed")
    assert isinstance(row.editor, YesNo)
    row.editor.setFocus()
    said = []
    for key in (Qt.Key.Key_Y, Qt.Key.Key_N, Qt.Key.Key_Delete):
        qtbot.keyClick(focused(), key)
        said.append(row.text())
    assert said == ["yes", "no", ""]


def test_that_letters_choose_and_the_wheel_does_not(qtbot: QtBot, desk: Desk) -> None:
    page = Page(qtbot, STEPS["recovery"], desk)
    row = page.type("how", "rel")
    assert isinstance(row.editor, Choice)
    assert row.text() == "released where the law allows"
    qtbot.keyClick(row.editor, Qt.Key.Key_Delete)
    assert row.text() == ""


def test_that_a_choice_that_is_not_offered_any_more_is_shown_as_it_was(
    qtbot: QtBot, desk: Desk
) -> None:
    page = Page(qtbot, STEPS["close"], desk)
    page.view.put({"ends": "left standing"})
    page.tell()
    assert page.view.typed() == {"ends": "left standing"}
    assert "Expected one of" in page.view.row("ends").refusal.text()


def test_that_a_locked_form_takes_no_keys(nameplate: Page) -> None:
    nameplate.view.put({"charge": "85 g"})
    nameplate.view.lock(locked=True)
    nameplate.type("charge", "1")
    assert nameplate.view.typed() == {"charge": "85 g"}
    assert isinstance(nameplate.view.row("charge").editor, QLineEdit)


def test_that_alt_letters_are_different_and_leave_the_acts_theirs() -> None:
    marked = mnemonics(["Suction pressure", "Serial number", "Box & lid"], taken="sn")
    letters = [text[text.replace("&&", "  ").index("&") + 1].casefold() for text in marked]
    assert len(set(letters)) == 3
    assert not {"s", "n"} & set(letters)
    assert marked[2].replace("&&", "+").replace("&", "").replace("+", "&") == "Box & lid"
