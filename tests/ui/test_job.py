"""A job in the window: typed, kept, signed, set aside, reversed, closed, by keyboard."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.flags import Flag
from chargebench.ui.flagbar import FlagLine
from tests.hands import CTRL, SHIFT, Hands, focused


def test_that_a_step_typed_and_signed_by_keyboard_is_recorded(
    at_job: Hands, desk: Desk, job: str
) -> None:
    at_job.type("R290", then=Qt.Key.Key_Return)
    at_job.type("3.0 oz", then=Qt.Key.Key_Return)
    at_job.type("2 g")
    at_job.press(Qt.Key.Key_Return, CTRL)
    step = desk.job(job).steps[0]
    assert (step.key, step.state) == ("nameplate", "signed")
    assert desk.typed(job, "nameplate") == {
        "refrigerant": "R290",
        "charge": "3.0 oz",
        "tolerance": "2 g",
    }
    assert at_job.page.steps.current() == "as_found"
    assert str(step.number) in at_job.window.foot.toolTip()


def test_that_a_refused_step_keeps_its_text_and_goes_to_the_field(
    at_job: Hands, desk: Desk, job: str
) -> None:
    at_job.type("R290", then=Qt.Key.Key_Return)
    at_job.type("85 psig")
    at_job.press(Qt.Key.Key_Return, CTRL)
    form = at_job.page.pane.form()
    assert desk.job(job).steps[0].state == "open"
    assert form.typed() == {"refrigerant": "R290", "charge": "85 psig"}
    assert focused() is form.row("charge").editor
    assert not form.row("charge").refusal.isHidden()
    assert not at_job.page.pane.strip.says.isHidden()


def test_that_typed_text_is_kept_within_two_seconds(
    at_job: Hands, desk: Desk, job: str, qtbot: QtBot
) -> None:
    at_job.type("R290")
    qtbot.waitUntil(lambda: desk.typed(job, "nameplate") == {"refrigerant": "R290"}, timeout=2_000)


@pytest.mark.parametrize(
    "leave",
    [
        lambda hands: hands.press(Qt.Key.Key_Down, CTRL),
        lambda hands: hands.press(Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier),
        lambda hands: hands.window.close(),
    ],
    ids=["next step", "list", "close"],
)
def test_that_leaving_keeps_what_is_typed_at_once(
    at_job: Hands, desk: Desk, job: str, leave: Callable[[Hands], None]
) -> None:
    at_job.type("R29")
    leave(at_job)
    assert desk.typed(job, "nameplate") == {"refrigerant": "R29"}


def test_that_text_of_an_open_step_stands_there_again(at_job: Hands) -> None:
    at_job.type("R29")
    at_job.press(Qt.Key.Key_Down, CTRL)
    at_job.press(Qt.Key.Key_Up, CTRL)
    assert at_job.page.pane.form().typed() == {"refrigerant": "R29"}


def test_that_other_steps_read_what_is_typed_in_an_open_one(
    at_job: Hands, desk: Desk, job: str
) -> None:
    at_job.type("R290", then=Qt.Key.Key_Return)
    at_job.type("60 g")
    at_job.to_step("weigh_in")
    nameplate = desk.job(job).case.nameplate("charge")
    assert nameplate.text == "60 g"


def _weigh_in(hands: Hands, end: str) -> None:
    hands.to_step("weigh_in")
    form = hands.page.pane.form()
    line = form.lines("lines").line_rows(0)
    form.row("kind").editor.setFocus()
    hands.type("into")
    line["cylinder"].editor.setFocus()
    hands.type("C-014", then=Qt.Key.Key_Return)
    hands.type("S-2", then=Qt.Key.Key_Return)
    hands.type("cylinder", then=Qt.Key.Key_Return)
    hands.type("4312.5 g", then=Qt.Key.Key_Return)
    hands.type(end)
    line["hose_state"].editor.setFocus()
    hands.type("no hose")


def test_that_an_overcharge_shows_figure_doubt_and_flag_while_typing(at_job: Hands) -> None:
    _weigh_in(at_job, "4224.1 g")
    page = at_job.page
    worst = page.flag_bar.flags()[0]
    # 4312.5 g - 4224.1 g = 88.4 g; 3.0 oz = 85.05 g (NIST SP 811, B.8): over by 3.4 g
    assert worst.key == "over-nameplate"
    assert "3.4 g" in page.flag_bar.worst.text()
    assert "±" in page.flag_bar.worst.text()


def test_that_a_flag_goes_when_its_cause_is_typed_away(at_job: Hands) -> None:
    _weigh_in(at_job, "4224.1 g")
    end = at_job.page.pane.form().lines("lines").line_rows(0)["end"].editor
    end.setFocus()
    at_job.press(Qt.Key.Key_A, CTRL)
    at_job.type("4227.5 g")  # 85.0 g
    assert "over-nameplate" not in [flag.key for flag in at_job.page.flag_bar.flags()]


def test_that_f8_unfolds_the_other_flags(at_job: Hands) -> None:
    bar = at_job.page.flag_bar
    stop = Flag("stop", "one", "Over nameplate by 3.4 g.", "step:weigh_in", source="COMMON")
    note = Flag("note", "two", "The gauge is due for calibration.", "instrument:G-1")
    bar.show_flags([stop, note])
    assert bar.worst.text() == stop.says
    at_job.press(Qt.Key.Key_F8)
    shown = [line.text() for line in bar.findChildren(FlagLine) if line.isVisible()]
    assert shown == [stop.says, note.says]


def test_that_a_step_is_set_aside_with_a_reason(at_job: Hands, desk: Desk, job: str) -> None:
    at_job.to_step("support")
    at_job.press(Qt.Key.Key_N, CTRL | Qt.KeyboardModifier.ShiftModifier)
    at_job.press(Qt.Key.Key_Return)
    assert "reason" in at_job.page.pane.strip.says.text()
    at_job.type("maker not called", then=Qt.Key.Key_Return)
    step = next(each for each in desk.job(job).steps if each.key == "support")
    assert (step.state, step.reason) == ("not needed", "maker not called")


def test_that_a_signed_step_is_locked_and_reversed_with_a_reason(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g"})
    page = at_job.page
    page.open(job, "nameplate")
    strip = page.pane.strip
    assert not strip.sign_button.isVisible()
    assert "Signed by N. Okafor" in strip.will.text()
    strip.reverse_button.setFocus()
    at_job.press(Qt.Key.Key_Space)
    at_job.type("wrong plate read", then=Qt.Key.Key_Return)
    assert desk.job(job).steps[0].state == "open"
    assert page.pane.form().typed() == {"refrigerant": "R290", "charge": "85 g"}
    assert strip.sign_button.isVisible()


def test_that_closing_sets_untouched_steps_aside_with_one_reason(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.sign(job, "findings", {"found": "condenser clogged with flour"})
    page = at_job.page
    page.open(job)
    at_job.press(Qt.Key.Key_Return, CTRL | SHIFT)
    at_job.type("temperatures only", then=Qt.Key.Key_Return)
    assert desk.job(job).state == "closed"
    assert not page.pane.strip.sign_button.isVisible()
    at_job.press(Qt.Key.Key_Return, CTRL | SHIFT)
    at_job.type("owner called again", then=Qt.Key.Key_Return)
    assert desk.job(job).state == "open"


def test_that_closing_is_refused_while_a_typed_step_is_not_signed(
    at_job: Hands, desk: Desk, job: str
) -> None:
    at_job.type("R290")
    at_job.page.close_button.setFocus()
    at_job.press(Qt.Key.Key_Space)
    assert desk.job(job).state == "open"
    assert "Nameplate" in at_job.page.closing.says.text()


def test_that_the_bench_display_types_into_the_form(at_job: Hands, qtbot: QtBot) -> None:
    at_job.to_step("weigh_in")
    display = at_job.page.pane.weighing().display(at_job.page)
    qtbot.keyClicks(display, "4312.5g")
    qtbot.keyClick(display, Qt.Key.Key_Space)
    qtbot.keyClicks(display, "4227.2")
    qtbot.keyClick(display, Qt.Key.Key_Return)
    lines = at_job.page.pane.form().typed()["lines"]
    assert isinstance(lines[0], dict)
    assert (lines[0]["start"], lines[0]["end"]) == ("4312.5g", "4227.2 g")


def test_that_another_step_is_worked_out_from_its_top(
    at_job: Hands, desk: Desk, job: str, qtbot: QtBot
) -> None:
    found = {
        "suction_pressure": "5 psig",
        "suction_line": "20 F",
        "discharge_pressure": "120 psig",
        "liquid_line": "85 F",
        "frost": "only at the inlet",
    }
    decay = [{"at": f"{at} min", "reading": f"{360 + 4 * at} micron"} for at in range(0, 21, 2)]
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g"})
    desk.keep(job, "as_found", found)
    desk.keep(job, "evacuation", {"pulled_to": "350 micron", "decay": decay})
    at_job.page.open(job, "as_found")  # its table of evidence can have the focus
    at_job.page.side.table("evidence").setFocus()
    at_job.window.resize(1024, 700)
    at_job.page.open(job, "evacuation")
    qtbot.waitUntil(lambda: at_job.page.side.verticalScrollBar().maximum() > 0)
    assert at_job.page.side.verticalScrollBar().value() == 0
