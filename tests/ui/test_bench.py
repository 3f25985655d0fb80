"""The Bench area: a job started, found, and what is made on the way to it, by keyboard."""

from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui import theme
from chargebench.ui.registerdialog import RegisterDialog
from tests.hands import CTRL, Hands


def test_that_a_job_is_started_by_keyboard_alone(hands: Hands, desk: Desk) -> None:
    hands.press(Qt.Key.Key_N, CTRL)
    hands.type("bakery fr", then=Qt.Key.Key_Return)
    hands.type("not holding temperature", then=Qt.Key.Key_Return)
    (line,) = desk.jobs(state="open")
    assert line.title.startswith("Bakery freezer")
    assert line.number in hands.page.title.text()
    assert hands.page.steps.current() == "nameplate"


def test_that_a_search_finds_a_job_and_enter_opens_it(hands: Hands, job: str, desk: Desk) -> None:
    hands.window.bench.show_list()
    hands.press(Qt.Key.Key_F, CTRL)
    hands.type("quay", then=Qt.Key.Key_Return)
    assert hands.window.bench.shown_job() == (job, "nameplate")
    assert desk.job(job).number in hands.page.title.text()


def test_that_an_empty_list_says_what_to_do(hands: Hands) -> None:
    bench = hands.window.bench
    assert bench.table.isHidden()
    assert "New job" in bench.empty.text()


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
    assert theme.text_size() > 1
    assert at_job.page.pane.form().typed() == {"refrigerant": "R29"}


def test_that_equipment_and_its_site_are_made_on_the_way_to_a_job(
    hands: Hands, desk: Desk, qtbot: QtBot
) -> None:
    hands.press(Qt.Key.Key_N, CTRL)
    new_job = hands.window.bench.new_job
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
