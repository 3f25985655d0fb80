"""A figure that was never checked at its source says so wherever it decides something."""

import pytest
from pytestqt.qtbot import QtBot

from chargebench import rules, sources, steps
from chargebench.flags import Flag
from chargebench.steps import Case, Figure
from chargebench.ui.flagbar import FlagLine
from chargebench.ui.side import FigureLine
from chargebench.units import Q
from tests.steps.cases import case

NOT_CHECKED = sources.MARKS_SAID["MEMORY"]


@pytest.mark.parametrize(("mark", "said"), [("MEMORY", True), ("SEEN", False), ("", False)])
def test_that_a_flag_and_a_figure_say_in_sight_that_they_are_unverified(
    qtbot: QtBot, mark: str, *, said: bool
) -> None:
    line = FlagLine(Flag("check", "k", "Too much.", "step:weigh_in", source="COMMON", mark=mark))
    figure = FigureLine()
    for each in (line, figure):
        qtbot.addWidget(each)
    figure.show_figure(Figure("k", "Tolerance", Q(2, "g"), source="COMMON", mark=mark), "SI")
    assert (NOT_CHECKED in line.text()) is said
    assert (NOT_CHECKED in line.accessibleName()) is said
    assert (NOT_CHECKED in figure.against.text()) is said


def decayed() -> Case:
    readings = [{"at": f"{at} min", "reading": f"{300 + at} micron"} for at in range(26)]
    return case({"evacuation": {"decay": readings, "pulled_to": "300 micron"}}, rule_set="generic")


def test_that_verdict_and_pass_rules_of_a_decay_test_carry_the_marks_of_their_limits() -> None:
    found = {each.key: each for each in steps.work_out(decayed(), "evacuation").figures}
    assert found["verdict"].mark == "MEMORY"  # our own limits: checked against no source
    by_title = {each.title: each for each in rules.load("generic").evacuation.pass_rules}
    shown = [each for each in found.values() if each.key.startswith("rule-")]
    assert len(shown) > 1
    for each in shown:
        rule = by_title[each.label]
        limits = (rule.pull_to, rule.hold, rule.rise_at_most, rule.end_at_most)
        unverified = any(limit is not None and limit.unverified for limit in limits)
        assert (each.mark == "MEMORY") is unverified
