"""Who works, by keys: chosen, unlocked once, locked by a key or by idleness, asked at signing."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLineEdit
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.desk.opened import now
from chargebench.ui import idle
from chargebench.ui.passphrase import SetDialog, UnlockDialog
from chargebench.ui.registerdialog import RegisterDialog
from tests.hands import ALT, CTRL, SHIFT, Hands, focused

PIN, WRONG = "73915", "00000"
SOON_MS = 20


def _dialog() -> QDialog | None:
    """The dialog that asks, while there is one."""
    shown = QApplication.activeModalWidget()
    return shown if isinstance(shown, UnlockDialog | SetDialog) else None


def _leave() -> None:
    """Nothing more is to be typed: a dialog that still waits would wait for ever."""
    if (dialog := _dialog()) is not None:
        dialog.reject()


def _ready(qtbot: QtBot) -> QDialog:
    """The dialog, once keys go into it."""
    qtbot.waitUntil(lambda: _has_focus(_dialog()))
    dialog = _dialog()
    assert dialog is not None
    return dialog


def _has_focus(dialog: QDialog | None) -> bool:
    focus = QApplication.focusWidget()
    return dialog is not None and focus is not None and dialog.isAncestorOf(focus)


class Answers:
    """Types into the dialog that a signature opens; the window waits in it meanwhile."""

    def __init__(self, *acts: Callable[[QDialog], None]) -> None:
        self.asked = 0
        self._acts = list(acts)
        QTimer.singleShot(SOON_MS, lambda: self._answer())  # holds this

    def _answer(self) -> None:
        dialog = _dialog()
        if dialog is None or not _has_focus(dialog):
            QTimer.singleShot(SOON_MS, lambda: self._answer())  # holds this
            return
        self.asked += 1
        try:
            self._acts.pop(0)(dialog)
        except BaseException:
            dialog.reject()  # else the window would wait in it for ever
            raise
        QTimer.singleShot(SOON_MS, lambda: self._answer() if self._acts else _leave())


def _type(*texts: str) -> Callable[[QDialog], None]:
    """Type into each field in turn, go on by Tab, press Enter at the last."""

    def act(dialog: QDialog) -> None:
        for number, text in enumerate(texts):
            if number:
                QTest.keyClick(focused(), Qt.Key.Key_Tab)
            assert isinstance(focused(), QLineEdit)
            QTest.keyClicks(focused(), text)
        QTest.keyClick(dialog, Qt.Key.Key_Return)

    return act


def _esc(dialog: QDialog) -> None:
    QTest.keyClick(dialog, Qt.Key.Key_Escape)


@pytest.fixture
def guarded(at_job: Hands, desk: Desk) -> Hands:
    """At a job; the technician's signature has a PIN and is locked."""
    desk.set_passphrase("P-01", PIN)
    desk.lock()
    at_job.window.notifier.changed.emit()
    return at_job


def _type_nameplate(hands: Hands) -> None:
    hands.page.pane.form().focus_first()
    hands.type("R290", then=Qt.Key.Key_Return)
    hands.type("85 g")


def _state(desk: Desk, job: str, step: str = "nameplate") -> str:
    return next(each.state for each in desk.job(job).steps if each.key == step)


def test_that_signing_asks_once_and_goes_on(
    qtbot: QtBot, guarded: Hands, desk: Desk, job: str
) -> None:
    _type_nameplate(guarded)
    answers = Answers(_type(PIN))
    guarded.sign()
    assert (answers.asked, _state(desk, job)) == (1, "signed")
    assert guarded.window.who.lock.text() == "Lock"
    qtbot.waitUntil(guarded.window.isActiveWindow)
    guarded.to_step("findings")
    guarded.fill(guarded.form, {"found": "condenser clogged with flour"})
    guarded.sign()
    assert (_state(desk, job, "findings"), answers.asked) == ("signed", 1)


def test_that_going_back_signs_nothing_and_keeps_what_is_typed(
    guarded: Hands, desk: Desk, job: str
) -> None:
    _type_nameplate(guarded)
    Answers(_esc)
    guarded.sign()
    assert _state(desk, job) == "open"
    assert desk.typed(job, "nameplate") == {"refrigerant": "R290", "charge": "85 g"}
    assert "takes a passphrase" in guarded.page.pane.strip.says.text()


def test_that_wrong_ones_are_refused_in_words_and_cleared(
    guarded: Hands, desk: Desk, job: str
) -> None:
    _type_nameplate(guarded)
    said: list[str] = []

    def look(dialog: QDialog) -> None:
        assert isinstance(dialog, UnlockDialog)
        assert dialog.typed.text() == ""
        said.append(dialog.says.text())
        said.append(str(dialog.act.isEnabled()))

    def third(dialog: QDialog) -> None:
        _type(WRONG)(dialog)
        look(dialog)
        _esc(dialog)

    def wrong(dialog: QDialog) -> None:
        _type(WRONG)(dialog)
        look(dialog)

    Answers(wrong, wrong, third)
    guarded.sign()
    assert said[:2] == ["That is not the passphrase.", "True"]
    assert "Try again in 5 seconds." in said[4]
    assert said[5] == "False"
    assert _state(desk, job) == "open"


def test_that_the_seconds_left_are_counted_down(
    qtbot: QtBot, guarded: Hands, desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("chargebench.ui.passphrase._SECOND_MS", 5)
    dialog = UnlockDialog(desk, guarded.window)
    qtbot.addWidget(dialog)
    dialog.open()
    for _ in range(3):
        _type(WRONG)(dialog)
    assert not dialog.act.isEnabled()
    qtbot.waitUntil(lambda: dialog.says.text() == "Try again now.", timeout=2_000)
    assert dialog.act.isEnabled()


def test_that_ctrl_l_locks_and_unlocks(qtbot: QtBot, guarded: Hands, desk: Desk) -> None:
    Answers(_type(PIN))
    guarded.press(Qt.Key.Key_L, CTRL)
    assert desk.unlocked
    qtbot.waitUntil(guarded.window.isActiveWindow)
    guarded.press(Qt.Key.Key_L, CTRL)
    assert desk.locked
    assert guarded.window.who.lock.text() == "Locked"
    assert "asks for the passphrase" in guarded.window.foot.toolTip()


def test_that_text_is_typed_and_kept_while_locked(guarded: Hands, desk: Desk, job: str) -> None:
    _type_nameplate(guarded)
    guarded.press(Qt.Key.Key_Left, ALT)
    assert desk.locked
    assert desk.typed(job, "nameplate") == {"refrigerant": "R290", "charge": "85 g"}


def test_that_idleness_locks_by_itself(
    qtbot: QtBot, at_job: Hands, desk: Desk, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(idle, "CHECK_MS", 5)
    desk.set_passphrase("P-01", PIN)
    at_job.window.who.watch._timer.setInterval(5)
    at_job.window.notifier.changed.emit()
    assert at_job.window.who.watch.watching
    past = now() + timedelta(minutes=29)
    monkeypatch.setattr(desk, "clock", lambda: past)
    keys_arrive_at = at_job.window.windowHandle()
    QTest.keyClick(keys_arrive_at, Qt.Key.Key_R)  # a key is work: half an hour begins anew
    later = past + timedelta(minutes=29)
    monkeypatch.setattr(desk, "clock", lambda: later)
    at_job.window.who.watch.check()
    assert desk.unlocked
    gone = past + timedelta(minutes=31)
    monkeypatch.setattr(desk, "clock", lambda: gone)
    qtbot.waitUntil(lambda: at_job.window.who.lock.text() == "Locked", timeout=2_000)
    assert not at_job.window.who.watch.watching
    assert "without a key" in at_job.window.foot.toolTip()


def test_that_nothing_is_watched_where_nothing_is_unlocked(at_job: Hands) -> None:
    assert not at_job.window.who.watch.watching
    assert at_job.window.who.lock.isHidden()


def test_that_a_passphrase_is_set_and_changed_by_keys(
    qtbot: QtBot, at_job: Hands, desk: Desk
) -> None:
    at_job.press(Qt.Key.Key_L, CTRL)
    assert "signs without a passphrase" in at_job.window.foot.toolTip()
    at_job.press(Qt.Key.Key_L, CTRL | SHIFT)
    _set = _ready(qtbot)
    _type(PIN, "73916")(_set)
    assert isinstance(_set, SetDialog)
    assert "same new one twice" in _set.says.text()
    assert not desk.has_passphrase
    _type(PIN, PIN)(_set)
    assert desk.unlocked
    desk.lock()
    qtbot.waitUntil(at_job.window.isActiveWindow)
    at_job.press(Qt.Key.Key_L, CTRL | SHIFT)
    change = _ready(qtbot)
    _type(PIN, "quay street", "quay street")(change)
    desk.lock()
    desk.unlock("quay street")
    assert desk.unlocked


def test_that_a_shop_that_wants_one_lets_it_be_set_at_the_first_signature(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.save_row("shop", "shop", {**desk.shop, "passphrases": "yes"})
    at_job.window.notifier.changed.emit()
    _type_nameplate(at_job)
    Answers(_type(PIN, PIN))
    at_job.sign()
    assert _state(desk, job) == "signed"
    assert desk.has_passphrase


def test_that_choosing_somebody_locks_who_worked_and_asks_only_at_signing(
    guarded: Hands, desk: Desk, job: str
) -> None:
    other = desk_person(desk, guarded, "T. Brandt", "technician")
    desk.unlock(PIN)
    guarded.press(Qt.Key.Key_F4)
    guarded.type("T")
    guarded.press(Qt.Key.Key_Return)
    assert (desk.person, desk.unlocked) == (other, False)
    guarded.page.pane.form().focus_first()
    _type_nameplate(guarded)
    guarded.sign()
    assert (_state(desk, job), desk.job(job).steps[0].by) == ("signed", "T. Brandt")


def desk_person(desk: Desk, hands: Hands, name: str, role: str) -> str:
    """Register somebody, as the shop would."""
    desk.unlock(PIN)
    person = desk.save_row("person", None, {"name": name, "role": role})
    desk.lock()
    hands.window.notifier.changed.emit()
    return person


def test_that_an_officer_reads_a_job_and_types_nothing(
    guarded: Hands, desk: Desk, job: str
) -> None:
    _type_nameplate(guarded)
    officer = desk_person(desk, guarded, "D. Maas", "officer")
    guarded.window.signs.setFocus()
    guarded.type("D")
    guarded.press(Qt.Key.Key_Return)
    assert desk.person == officer
    strip = guarded.page.pane.strip
    assert "D. Maas is an officer" in strip.will.text()
    assert strip.sign_button.isHidden()
    guarded.page.pane.form().focus_first()
    guarded.type("x")
    assert guarded.form.typed() == {"refrigerant": "R290", "charge": "85 g"}
    assert desk.typed(job, "nameplate") == {"refrigerant": "R290", "charge": "85 g"}
    assert guarded.window.who.lock.isHidden()


def test_that_a_technician_is_told_who_closes_before_anything_is_asked(
    guarded: Hands, desk: Desk
) -> None:
    desk_person(desk, guarded, "A. Lindqvist", "shop")
    guarded.page.pane.form().focus_first()
    guarded.press(Qt.Key.Key_Return, CTRL | SHIFT)
    closing = guarded.page.closing
    assert "Expected A. Lindqvist" in closing.says.text()
    assert closing.reason.isHidden()


def test_that_the_shop_sets_the_passphrase_of_another_from_their_row(
    qtbot: QtBot, guarded: Hands, desk: Desk
) -> None:
    other = desk_person(desk, guarded, "T. Brandt", "technician")
    desk.unlock(PIN)
    row = RegisterDialog(desk, "person", other, guarded.window)
    qtbot.addWidget(row)
    row.open()
    qtbot.waitUntil(row.isActiveWindow)
    row.form.focus_first()
    QTest.keyClick(focused(), Qt.Key.Key_P, ALT)
    dialog = _ready(qtbot)
    _type("84026", "84026")(dialog)
    assert other in desk.reading.passphrase_holders()
    assert "passphrase is set" in row.says.text()


def test_that_what_was_typed_into_a_dialog_is_gone_with_it(
    qtbot: QtBot, guarded: Hands, desk: Desk
) -> None:
    dialog = UnlockDialog(desk, guarded.window)
    qtbot.addWidget(dialog)
    dialog.open()
    QTest.keyClicks(dialog.typed, PIN)
    assert dialog.typed.displayText() != PIN
    _esc(dialog)
    assert dialog.typed.text() == ""
