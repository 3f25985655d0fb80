"""Cautions beside the forms: by class and step, the first in sight, all one key away."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench import rules, sources
from chargebench.desk import Desk
from chargebench.steps import safety_list
from chargebench.ui.cautions import Cautions
from chargebench.ui.stock_act import StockAct
from tests.hands import Hands

HURTS = ("safety", "leak_search", "pressure_test", "recovery", "evacuation", "weigh_in", "close")


def cautions(hands: Hands) -> Cautions:
    found: Cautions = hands.page.side.cautions
    return found


@pytest.mark.parametrize("step", [*HURTS, "as_found"])
def test_that_each_step_that_can_hurt_shows_what_to_mind(at_job: Hands, step: str) -> None:
    at_job.to_step(step)
    shown = cautions(at_job)
    assert shown.isVisible()
    fits = ("", "recovered")  # nothing is opened, released or taken out of service yet
    of_class = rules.checklist("A3")
    asked = [line for line in of_class if line.step == step and line.when in fits] or [
        line for line in of_class if line.before_opening
    ]
    assert shown.first.toolTip() == f"Mind: {asked[0].text}"
    assert shown.all.isHidden()


def test_that_a_key_shows_all_with_their_sources_and_folds_them_again(at_job: Hands) -> None:
    at_job.to_step("weigh_in")
    shown = cautions(at_job)
    at_job.press(Qt.Key.Key_F8, Qt.KeyboardModifier.ShiftModifier)
    lines = [line for line in rules.checklist("A3") if line.step == "weigh_in"]
    assert shown.all.isVisible()
    for line, said in zip(lines, shown.all.text().split("\n"), strict=True):
        source = sources.said(f"{line.source}, {line.place}", line.mark)
        assert said == f"{line.text} · {source}"
    at_job.press(Qt.Key.Key_F8, Qt.KeyboardModifier.ShiftModifier)
    assert shown.all.isHidden()


def test_that_what_is_ticked_needs_no_further_minding(at_job: Hands, desk: Desk, job: str) -> None:
    lines = [line for line in rules.checklist("A3") if line.step == "evacuation"]
    tick = {"line": lines[0].key, "at": "2026-03-02T09:00:00+00:00", "by": desk.person}
    desk.keep(job, "evacuation", {"ticks": [tick]})
    at_job.page.open(job, "evacuation")
    assert lines[0].text not in cautions(at_job).first.toolTip()
    assert cautions(at_job).isHidden() is (len(lines) == 1)


def test_that_temperatures_without_a_hose_need_no_caution(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.keep(job, "as_found", {"tapped": "no"})
    at_job.page.open(job, "as_found")
    assert cautions(at_job).isHidden()


@pytest.mark.parametrize(("act", "minds"), [("decant", True), ("receive", False)])
def test_that_decanting_a_flammable_gas_is_minded(
    qtbot: QtBot, themed: QApplication, desk: Desk, act: str, *, minds: bool
) -> None:
    assert themed
    shown = StockAct(desk, act)
    qtbot.addWidget(shown)
    shown.put({"source": "C-014", "cylinder": "C-014"})
    assert shown.cautions.isHidden() is not minds
    if minds:
        said = shown.cautions.all.text()
        minded = [line for line in rules.checklist("A3") if line.key in safety_list.DECANTING]
        assert all(line.text in said for line in minded)
        assert said.count("\n") == len(minded) - 1
