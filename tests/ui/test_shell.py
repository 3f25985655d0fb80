"""The shell: colours that can be read, the first start, registers, refusals and bugs."""

import logging
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk, sample
from chargebench.errors import ChargebenchError, Overdrawn
from chargebench.steps import REGISTERS
from chargebench.ui import app, keys, theme, trouble
from chargebench.ui.firststart import FirstStart
from chargebench.ui.guide import GuideDialog
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import LEAKS, USAGE
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.registers import RegistersDialog
from chargebench.ui.stock import StockArea
from chargebench.ui.undo import TypedUndo
from chargebench.ui.window import MainWindow

TEXTS = ("ink", "faint", "accent", "stop", "check", "note")
GROUNDS = ("ground", "panel")


def _contrast(one: str, other: str) -> float:
    """Contrast ratio as W3C, WCAG 2.1, definitions of contrast ratio and relative luminance."""

    def luminance(colour: str) -> float:
        parts = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
        linear = [p / 12.92 if p <= 0.03928 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("colours", [theme.LIGHT, theme.DARK], ids=["light", "dark"])
def test_that_every_text_colour_can_be_read(colours: theme.Colours) -> None:
    pairs = [(getattr(colours, text), getattr(colours, g)) for text in TEXTS for g in GROUNDS]
    pairs += [(colours.on_accent, colours.accent), (colours.ink, colours.chosen)]
    # WCAG 2.1, 1.4.3: at least 4.5 : 1 for text
    assert [pair for pair in pairs if _contrast(*pair) < 4.5] == []


@pytest.mark.parametrize("colours", [theme.LIGHT, theme.DARK], ids=["light", "dark"])
def test_that_focus_can_be_seen(colours: theme.Colours) -> None:
    # WCAG 2.1, 1.4.11: at least 3 : 1 for what shows where the focus is
    assert all(_contrast(colours.focus, getattr(colours, ground)) >= 3 for ground in GROUNDS)


def test_that_text_grows_to_twice_its_size(themed: QApplication) -> None:
    small = theme.em()
    theme.apply(themed, dark=False, text=2.0)
    large = theme.em()
    theme.apply(themed, dark=False, text=1.0)
    assert 1.9 < large / small < 2.1


@pytest.fixture
def first(qtbot: QtBot, themed: QApplication, tmp_path: Path) -> FirstStart:  # noqa: ARG001
    made = FirstStart(tmp_path / "new" / "shop.chargebench")
    qtbot.addWidget(made)
    made.resize(900, 700)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def test_that_a_shop_is_made_on_one_page(first: FirstStart, qtbot: QtBot, tmp_path: Path) -> None:
    qtbot.mouseClick(first.make, Qt.MouseButton.LeftButton)
    for key, text in (("name", "Larkmoor Cold"), ("person_name", "N. Okafor")):
        first.form.row(key).editor.setFocus()
        qtbot.keyClicks(first.form.row(key).editor, text)
    first.form.row("units").editor.setFocus()
    qtbot.keyClicks(first.form.row("units").editor, "IP")
    with qtbot.waitSignal(first.made) as made:
        first.keep.click()
    assert made.args is not None
    desk = made.args[0]
    assert isinstance(desk, Desk)
    assert (desk.shop["name"], desk.units) == ("Larkmoor Cold", "IP")
    assert desk.label("person", desk.person) == "N. Okafor"
    assert desk.path == tmp_path / "new" / "shop.chargebench"
    desk.close()


def test_that_a_shop_without_a_name_is_not_made(first: FirstStart, tmp_path: Path) -> None:
    first.begin()
    first.make_shop()
    assert not first.form.row("name").refusal.isHidden()
    assert not (tmp_path / "new" / "shop.chargebench").exists()


def test_that_registers_list_find_and_change_rows(
    window: MainWindow, desk: Desk, qtbot: QtBot
) -> None:
    window.bench.registers.click()
    registers = window.bench.findChild(RegistersDialog)
    assert registers is not None
    titles = [registers.register.itemText(n) for n in range(registers.register.count())]
    registers.register.setCurrentIndex(titles.index(REGISTERS["instrument"].title))
    qtbot.keyClicks(registers.search, "floor")
    assert [registers.list.item(n).text() for n in range(registers.list.count())] == [
        "S-3  Floor scale"
    ]
    registers.change.click()
    dialog = registers.findChild(RegisterDialog)
    assert dialog is not None
    serial = dialog.form.row("serial").editor
    serial.setFocus()
    qtbot.keyClicks(serial, "FS-77")
    dialog.save()
    assert desk.row("instrument", "S-3")["serial"] == "FS-77"


def test_that_an_id_in_use_is_refused_for_a_new_row(
    window: MainWindow, desk: Desk, qtbot: QtBot
) -> None:
    dialog = RegisterDialog(desk, "site", None, window)
    qtbot.addWidget(dialog)
    dialog.form.put({"name": "Mill Lane"})
    taken = next(iter(desk.rows("site")))
    dialog.id_field.setText(taken)
    dialog.save()
    assert "already" in dialog.says.text()
    assert desk.row("site", taken)["name"] == "Bakery, Quay Street"


def test_that_a_half_typed_row_is_not_thrown_away_at_once(
    window: MainWindow, desk: Desk, qtbot: QtBot
) -> None:
    dialog = RegisterDialog(desk, "site", None, window)
    qtbot.addWidget(dialog)
    dialog.open()
    qtbot.keyClicks(dialog.form.row("name").editor, "Mill Lane")
    dialog.reject()
    assert dialog.isVisible()
    dialog.reject()
    assert not dialog.isVisible()
    assert len(desk.rows("site")) == 1


@pytest.fixture
def told() -> list[str]:
    return []


@pytest.fixture
def met(told: list[str], tmp_path: Path) -> Callable[[BaseException], None]:
    hook = trouble.hook(told.append, lambda: tmp_path / "log" / "bugs.log")

    def meet(problem: BaseException) -> None:
        hook(type(problem), problem, None)
        for handler in logging.getLogger("chargebench.bugs").handlers:
            handler.flush()

    return meet


def test_that_a_refusal_nobody_caught_is_said_in_its_own_words(
    met: Callable[[BaseException], None], told: list[str], tmp_path: Path
) -> None:
    met(Overdrawn("C-014 holds 80 g; 100 g were taken."))
    assert told == ["C-014 holds 80 g; 100 g were taken."]
    assert not (tmp_path / "log").exists()


def test_that_a_bug_is_logged_and_said_plainly(
    met: Callable[[BaseException], None], told: list[str], tmp_path: Path
) -> None:
    logger = logging.getLogger("chargebench.bugs")
    try:
        met(AssertionError("lines[0]"))
        log = tmp_path / "log" / "bugs.log"
        assert "AssertionError: lines[0]" in log.read_text(encoding="utf-8")
        assert str(log) in told[0]
        assert "fault of this program" in told[0]
    finally:
        for handler in list(logger.handlers):
            handler.close()
            logger.removeHandler(handler)


def test_that_a_pause_or_another_field_begins_a_new_undo_step() -> None:
    now = [0.0]
    undo = TypedUndo(lambda: now[0])
    undo.start({})
    undo.changed("charge", {"charge": "8"})
    undo.changed("charge", {"charge": "85"})
    now[0] = 10.0
    undo.changed("charge", {"charge": "85 g"})
    undo.changed("model", {"charge": "85 g", "model": "F"})
    back = []
    while (found := undo.undo()) is not None:
        back.append(found[1])
    assert back == [{"charge": "85 g"}, {"charge": "85"}, {}]


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


def test_that_the_foot_names_keys_of_the_page_whole_and_the_guide_all(
    window: MainWindow, job: str
) -> None:
    named = set(keys.ALL.split(" · "))
    pages: dict[str, Callable[[], None]] = {
        "Ctrl+N new job": lambda: window.show_area(0),
        "Ctrl+F find": lambda: window.show_area(1),
        "Ctrl+Return sign": lambda: window.open_job(job),
    }
    for wide in (640, 1024, 1600):
        window.resize(wide, 700)
        for own, go in pages.items():
            go()
            first, *others = window.foot.text().split(" · ")
            assert first == "F1 guide"
            assert own in others
            assert set(others) <= named  # none is cut
        window.bench.show_list()
    window.open_job(job)
    QTest.keyClick(window, Qt.Key.Key_F1)
    (guide,) = window.findChildren(GuideDialog)
    guide.choose("keys")
    assert "close job" in guide.text.toPlainText()


def test_that_the_window_says_that_the_sample_is_made_before_it_is(
    qtbot: QtBot,
    themed: QApplication,  # noqa: ARG001
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    shown: list[str] = []

    def build(_path: Path) -> Desk:
        shown.append(window.waiting.text() if window.waiting.isVisible() else "")
        raise ChargebenchError("Enough seen.")

    monkeypatch.setattr(sample, "open_or_build", build)
    window = MainWindow()
    qtbot.addWidget(window)
    window.show()
    monkeypatch.setattr(app._Start, "open", lambda _: None)  # there is nothing to open yet
    start = app._Start(window, tmp_path / "none")
    start._first_start(tmp_path / "none")
    first = window.findChild(FirstStart)
    assert first is not None
    first.sample.click()
    qtbot.waitUntil(lambda: bool(shown))
    assert shown == [app.SAMPLE]


def test_that_the_focus_line_stays_with_what_is_shown(window: MainWindow, qtbot: QtBot) -> None:
    window.show_area(1)
    stock = window._areas[1]
    assert isinstance(stock, StockArea)
    stock.table.setFocus()
    stock.show_instruments.click()
    assert stock.instrument_table.hasFocus()
    window.show_area(2)
    records = window._areas[2]
    assert isinstance(records, RecordsArea)
    records._views.button(USAGE).setFocus()
    records.show_view(LEAKS)
    qtbot.waitUntil(lambda: not records.working, timeout=10_000)
    assert records._views.button(LEAKS).hasFocus()
    records.finish()
