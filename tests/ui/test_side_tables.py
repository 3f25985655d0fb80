"""Small tables beside the form: evidence with its reasons by key, readings side by side, doubt."""

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import Cell, Table
from chargebench.ui.evidence_table import EvidenceTable
from chargebench.ui.side_table import SideTable
from chargebench.units import Q
from tests.hands import Hands

READ = {
    "tapped": "no",
    "evaporator_inlet": "-26 °C",
    "suction_line": "-8 °C",
    "condenser_surface": "43 °C",
    "liquid_line": "41 °C",
    "ambient": "24 °C",
}


@pytest.fixture
def at_readings(at_job: Hands, desk: Desk, job: str) -> Hands:
    desk.keep(job, "as_found", READ)
    at_job.page.open(job, "as_found")
    return at_job


def evidence(hands: Hands) -> EvidenceTable:
    found = hands.page.side.table("evidence")
    assert isinstance(found, EvidenceTable)
    return found


def side_table(hands: Hands, key: str) -> SideTable:
    found = hands.page.side.table(key)
    assert isinstance(found, SideTable)
    return found


def test_that_arrow_keys_give_the_reason_of_each_cell(at_readings: Hands, qtbot: QtBot) -> None:
    shown = evidence(at_readings)
    assert shown.reason.isHidden()
    shown.matrix.setFocus(Qt.FocusReason.TabFocusReason)
    # Superheat -8 - (-26) = 18 K is high: it starves the evaporator, so it speaks for low charge.
    reasons = {shown.reason.text()}
    for key in (Qt.Key.Key_Down, Qt.Key.Key_Right, Qt.Key.Key_Up):
        qtbot.keyClick(shown.matrix, key)
        reasons.add(shown.reason.text())
    assert len(reasons) == 4
    for _ in range(9):
        qtbot.keyClick(shown.matrix, Qt.Key.Key_Left)
        qtbot.keyClick(shown.matrix, Qt.Key.Key_Up)
    assert "low charge: " in shown.reason.text()
    assert shown.matrix.accessibleDescription() == shown.reason.text()


def test_that_a_touch_gives_the_reason_too(at_readings: Hands, qtbot: QtBot) -> None:
    shown = evidence(at_readings)
    spot = shown.matrix._cell(4, 1).center().toPoint()
    qtbot.mouseClick(shown.matrix, Qt.MouseButton.LeftButton, pos=spot)
    assert shown.matrix.at == (4, 1)
    assert "overcharge: " in shown.reason.text()


def test_that_evidence_stands_in_its_table_and_not_in_the_list_of_figures(
    at_readings: Hands,
) -> None:
    labels = [line.label.text() for line in at_readings.page.side._figures if line.isVisible()]
    assert labels[:2] == ["Superheat, from surfaces", "Subcooling, from surfaces"]
    assert not any("low charge" in label for label in labels)
    assert "Judged by us-federal" in at_readings.page.side._judged.text()


def test_that_an_earlier_visit_is_marked_where_it_matters(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.sign(job, "as_found", READ)
    again = desk.open_job("E-203")
    desk.keep(again, "as_found", READ | {"suction_line": "-20 °C"})
    at_job.page.open(again, "as_found")
    lines = side_table(at_job, "beside").texts()
    assert lines[0][:2] == ["Reading", "today"]
    (superheat,) = (line for line in lines if line[0] == "Superheat")
    # 18 K then, 6 K now.
    assert superheat[1:] == ["6.0\u00a0K", "◆\u00a018.0\u00a0K"]
    (subcooling,) = (line for line in lines if line[0] == "Subcooling")
    assert not subcooling[2].startswith("◆")


def test_that_the_doubt_of_a_charge_is_read_line_by_line(
    at_job: Hands, desk: Desk, job: str
) -> None:
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g", "tolerance": "2 g"})
    line = {
        "cylinder": "C-014",
        "scale": "S-2",
        "arrangement": "cylinder on the scale",
        "start": "4312.5 g",
        "end": "4227.5 g",
        "hose_state": "no hose, closed at the equipment",
    }
    typed: Any = {"kind": "into an evacuated system", "lines": [line]}
    desk.keep(job, "weigh_in", typed)
    at_job.page.open(job, "weigh_in")
    lines = side_table(at_job, "budget").texts()
    # By hand, JCGM 100: 0.1 g / sqrt(6) = 0.041 g and 0.2 g x sqrt(2) = 0.283 g; 0.286 g together.
    assert ["resolution", "2 readings, each within half a step", "0.041\u00a0g"] in lines
    assert ["combined", "root of the sum of squares", "0.286\u00a0g"] in lines
    at_job.page.side.show_step("as_left")


def table(*rows: tuple[Cell, ...], key: str = "t") -> Table:
    return Table(key, "T", ("a", "b"), rows, "said")


def test_that_a_table_written_anew_hides_what_it_no_longer_has(
    qtbot: QtBot,
    themed: QApplication,  # noqa: ARG001
) -> None:
    shown = SideTable()
    qtbot.addWidget(shown)
    shown.show_table(table((Cell("x"), Cell(Q(1, "g"))), (Cell("y"), Cell("z"))), "SI")
    assert shown.texts() == [["a", "b"], ["x", "1.0\u00a0g"], ["y", "z"]]
    shown.show_table(table((Cell("x"), Cell("w", why="because"))), "IP")
    assert shown.texts() == [["a", "b"], ["x", "w"]]
    shown.show_table(table((Cell("x"), Cell("w", why="because")), key="searches"), "IP")
    assert shown.texts() == [["a", "b"], ["x", "w"], ["because"]]
    shown.show_table(table((Cell("x"), Cell(Q(1, "oz"), fine=True))), "IP")
    assert shown.texts()[1] == ["x", "1.0000\u00a0oz"]
