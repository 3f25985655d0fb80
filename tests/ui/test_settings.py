"""The shop's settings by key: units, rule set, rule file; which rules a verdict says it used."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench import rules, sources
from chargebench.desk import Desk
from chargebench.steps.case import Figure
from chargebench.ui.flagbar import source_words
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.side import FigureLine
from chargebench.ui.window import MainWindow
from tests.desk.test_ruling import OWN
from tests.hands import CTRL, Hands, focused


def opened(hands: Hands, qtbot: QtBot) -> RegisterDialog:
    hands.press(Qt.Key.Key_Comma, CTRL)
    dialog = hands.window.findChild(RegisterDialog)
    assert dialog is not None
    qtbot.waitUntil(dialog.isActiveWindow)
    return dialog


def test_that_the_rule_set_is_changed_by_keyboard_and_recorded(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    dialog = opened(hands, qtbot)
    assert dialog.rules is not None
    assert "Jurisdiction: United States" in dialog.rules.says.text()
    dialog.form.row("rule_set").editor.setFocus()
    hands.type("gb")
    gb = rules.load("gb")
    for word in (gb.title, gb.jurisdiction, gb.edition, str(gb.effective)):
        assert word in dialog.rules.says.text()
    hands.press(Qt.Key.Key_Return, CTRL)
    qtbot.waitUntil(lambda: desk.rule_set.name == "gb")
    assert gb.called in hands.window.shop.toolTip()
    *_, last = desk.entries()
    assert (last.payload["before"]["rule_set"], last.payload["after"]["rule_set"]) == (
        "us-federal",
        "gb",
    )


def test_that_a_bad_rule_file_is_refused_at_its_field(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    (desk.path.parent / "own.toml").write_text(OWN + "nonsense = 1\n", encoding="utf-8")
    dialog = opened(hands, qtbot)
    row = dialog.form.row("rule_file")
    row.editor.setFocus()
    hands.type("own.tom")
    assert row.refusal.isHidden()  # still being typed
    hands.type("l")
    assert "own.toml, line 11" in row.refusal.text()
    hands.press(Qt.Key.Key_Return, CTRL)
    qtbot.waitUntil(dialog.says.isVisible)
    assert dialog.isVisible()
    assert focused() is row.editor
    assert "rule_file" not in desk.shop
    dialog.reject()
    dialog.reject()


def test_that_units_changed_in_settings_change_the_window(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    dialog = opened(hands, qtbot)
    dialog.form.row("units").editor.setFocus()
    hands.type("IP")
    hands.press(Qt.Key.Key_Return, CTRL)
    qtbot.waitUntil(lambda: desk.units == "IP")
    qtbot.waitUntil(lambda: "oz | °F" in hands.window.shop.toolTip())


def test_that_a_rule_file_that_went_is_said_once(window: MainWindow, desk: Desk) -> None:
    path = desk.path.parent / "own.toml"
    path.write_text(OWN, encoding="utf-8")
    desk.save_row("shop", "shop", desk.shop | {"rule_file": "own.toml"})
    path.unlink()
    desk._ruled = None
    window.notifier.changed.emit()
    assert "own.toml: can not be read" in window.notice_says.text()
    window.notice_close.click()
    window.notifier.changed.emit()
    assert window.notice.isHidden()


def test_that_a_signed_step_says_the_rules_it_was_judged_by(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g"})
    at_job.window.bench.open_job(job, "nameplate")
    assert f"Judged by {rules.load('us-federal').called}." in at_job.page.pane.strip.will.text()


@pytest.mark.parametrize(
    ("source", "mark", "says"),
    [
        ("COMMON", "", "common practice"),
        ("EN378, 6.2", "SEEN", "EN 378, 6.2"),
        ("EN378, 6.2", "MEMORY", "EN 378, 6.2 (not checked at its source)"),
        ("CHARGEBENCH, by the wind", "SEEN", "this program's own working figure, by the wind"),
    ],
)
def test_that_a_figure_names_its_source_in_words(
    qtbot: QtBot, source: str, mark: str, says: str
) -> None:
    line = FigureLine()
    qtbot.addWidget(line)
    line.show_figure(Figure("a", "A", "b", source=source, mark=mark), "SI")
    assert line.against.text() == says
    key = source.partition(",")[0]
    assert sources.cite(key) in line.toolTip()


def test_that_no_source_is_shown_by_a_code_of_ours() -> None:
    ours = {"COMMON", "CHARGEBENCH", "LEAKFLOW", "A3-MANUALS", "ANNEX-DD", "COOLPROP"}
    assert {sources.name(key) for key in sources.SOURCES} & ours == set()
    assert source_words("the customer's own list") == "the customer's own list"
