"""A new job on known equipment is three key presses."""

from PySide6.QtCore import Qt

from chargebench.desk import Desk
from tests.hands import CTRL, Hands


def test_that_a_job_on_the_last_equipment_is_three_key_presses(hands: Hands, desk: Desk) -> None:
    desk.save_row("equipment", "E-100", {**desk.row("equipment", "E-203"), "name": "Cooler"})
    desk.open_job("E-203", "not holding temperature")
    hands.press(Qt.Key.Key_N, CTRL)
    hands.press(Qt.Key.Key_Return)
    hands.press(Qt.Key.Key_Return)
    assert len(desk.jobs()) == 2
    shown = hands.window.bench.shown_job()
    assert shown is not None
    assert desk.job(shown[0]).equipment_id == "E-203"


def test_that_where_no_job_was_nothing_is_chosen_for_a_person(hands: Hands, desk: Desk) -> None:
    hands.press(Qt.Key.Key_N, CTRL)
    hands.press(Qt.Key.Key_Return)
    hands.press(Qt.Key.Key_Return)
    assert not desk.jobs()
