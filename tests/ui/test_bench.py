"""The Bench area in its window: a job found, typed, kept, signed, reversed, closed, by keyboard."""

import subprocess
import sys
from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.flags import Flag
from chargebench.ui.bench import BenchArea
from chargebench.ui.flagbar import FlagLine
from chargebench.ui.job import JobPage
from chargebench.ui.window import MainWindow

NO_KEY_HELD = Qt.KeyboardModifier(0)
CTRL = Qt.KeyboardModifier.ControlModifier


def focused() -> QWidget:
    widget = QApplication.focusWidget()
    assert widget is not None
    return widget


class Hands:
    """Types into whatever has the focus."""

    def __init__(self, bot: QtBot, window: MainWindow) -> None:
        self.bot = bot
        self.window = window

    def type(self, text: str, *, then: Qt.Key | None = None) -> None:
        self.bot.keyClicks(focused(), text)
        if then is not None:
            self.press(then)

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier = NO_KEY_HELD) -> None:
        self.bot.keyClick(focused(), key, held)

    @property
    def page(self) -> JobPage:
        return self.window.bench().job_page()

    def to_step(self, key: str) -> None:
        while self.page.steps.current() != key:
            before = self.page.steps.current()
            self.press(Qt.Key.Key_Down, CTRL)
            assert self.page.steps.current() != before, key


@pytest.fixture
def hands(qtbot: QtBot, window: MainWindow) -> Hands:
    return Hands(qtbot, window)


@pytest.fixture
def at_job(hands: Hands, job: str) -> Hands:
    hands.window.bench().open_job(job)
    return hands


def test_that_a_job_is_started_by_keyboard_alone(hands: Hands, desk: Desk) -> None:
    hands.press(Qt.Key.Key_N, CTRL)
    hands.type("bakery fr", then=Qt.Key.Key_Return)
    hands.type("not holding temperature", then=Qt.Key.Key_Return)
    (line,) = desk.jobs(state="open")
    assert line.title.startswith("Bakery freezer")
    assert line.number in hands.page.title.text()
    assert hands.page.steps.current() == "nameplate"


def test_that_a_search_finds_a_job_and_enter_opens_it(hands: Hands, job: str, desk: Desk) -> None:
    hands.window.bench().show_list()
    hands.press(Qt.Key.Key_F, CTRL)
    hands.type("quay", then=Qt.Key.Key_Return)
    assert hands.window.bench().shown_job() == (job, "nameplate")
    assert desk.job(job).number in hands.page.title.text()


def test_that_an_empty_list_says_what_to_do(hands: Hands) -> None:
    bench = hands.window.bench()
    assert bench.table.isHidden()
    assert "New job" in bench.empty.text()


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
    page.close_button.setFocus()
    at_job.press(Qt.Key.Key_Space)
    at_job.type("temperatures only", then=Qt.Key.Key_Return)
    assert desk.job(job).state == "closed"
    assert not page.pane.strip.sign_button.isVisible()
    page.reopen_button.setFocus()
    at_job.press(Qt.Key.Key_Space)
    at_job.type("owner called again", then=Qt.Key.Key_Return)
    assert desk.job(job).state == "open"


def test_that_closing_is_refused_while_a_typed_step_is_not_signed(
    at_job: Hands, desk: Desk, job: str
) -> None:
    at_job.type("R290")
    at_job.page.close_button.setFocus()
    at_job.press(Qt.Key.Key_Space)
    assert desk.job(job).state == "open"
    assert "Nameplate" in at_job.page.job_says.text()


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


def test_that_who_signs_is_who_is_chosen(at_job: Hands, desk: Desk, job: str) -> None:
    other = desk.save_row("person", None, {"name": "T. Brandt", "role": "technician"})
    at_job.window.notifier.changed.emit()
    at_job.window.signs.setFocus()
    at_job.type("T")
    at_job.press(Qt.Key.Key_Return)
    assert desk.person == other
    at_job.page.pane.form().focus_first()
    at_job.type("R290", then=Qt.Key.Key_Return)
    at_job.type("85 g")
    at_job.press(Qt.Key.Key_Return, CTRL)
    assert desk.job(job).steps[0].by == "T. Brandt"


def test_that_larger_text_keeps_the_job_and_what_is_typed(
    at_job: Hands,
) -> None:
    at_job.type("R29")
    at_job.press(Qt.Key.Key_Plus, CTRL)
    assert isinstance(at_job.window.bench(), BenchArea)
    assert at_job.page.pane.form().typed() == {"refrigerant": "R29"}


def test_that_equipment_and_its_site_are_made_on_the_way_to_a_job(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    from chargebench.ui.registerdialog import RegisterDialog

    hands.press(Qt.Key.Key_N, CTRL)
    new_job = hands.window.bench().new_job
    new_job.make.click()
    dialog = new_job.findChild(RegisterDialog)
    assert dialog is not None
    texts = {
        "name": "Walk-in",
        "category": "commercial",
        "cabinet": "walk-in",
        "refrigerant": "R449A",
        "charge": "14.2 kg",
    }
    for key, text in texts.items():
        dialog.form.row(key).editor.setFocus()
        qtbot.keyClicks(dialog.form.row(key).editor, text)
    dialog.save()
    assert not dialog.form.row("site").refusal.isHidden()
    dialog.form.row("site").wants_new.emit("site")
    site = dialog.form.findChild(RegisterDialog)
    assert site is not None
    qtbot.keyClicks(site.form.row("name").editor, "Harbour Kitchen")
    site.save()
    assert desk.label("site", dialog.form.row("site").text()) == "Harbour Kitchen"
    dialog.save()
    equipment = new_job.equipment.text()
    assert desk.row("equipment", equipment)["charge"] == "14.2 kg"


# What the shell may have imported when it is first painted: design, start of the window.
HEAVY = ("pint", "numpy", "sqlalchemy", "openpyxl", "pyqtgraph", "CoolProp")
FIRST_PAINT = f"""
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from chargebench.ui import app, window

def painted():
    print(sorted(set({HEAVY!r}) & set(sys.modules)))
    QTimer.singleShot(0, QApplication.quit)

app._Start.open = lambda self: painted()
sys.exit(app.run(None))
"""


def test_that_the_shell_is_painted_before_anything_heavy_is_imported() -> None:
    done = subprocess.run(
        [sys.executable, "-c", FIRST_PAINT], capture_output=True, text=True, check=False, timeout=60
    )
    assert (done.returncode, done.stdout.strip()) == (0, "[]"), done.stderr
