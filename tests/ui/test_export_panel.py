"""The export panel narrows an export to what is chosen on top, says so, and follows the choice."""

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.notifier import Notifier
from chargebench.ui.records import RecordsArea
from tests.reports.books import sheet_rows


@pytest.fixture
def records(qtbot: QtBot, themed: QApplication, desk: Desk) -> RecordsArea:  # noqa: ARG001
    made = RecordsArea(desk, Notifier())
    qtbot.addWidget(made, before_close_func=lambda area: area.finish())
    made.resize(1180, 720)
    made.show()
    return made


def test_that_an_export_is_narrowed_to_what_is_chosen_on_top(
    qtbot: QtBot, records: RecordsArea, tmp_path: Path
) -> None:
    panel = records.export_panel
    records.show_export()
    assert "only" not in panel.says.text()
    qtbot.keyClick(records.period.refrigerant, Qt.Key.Key_Down)  # the panel stands open meanwhile
    chosen = records.period.refrigerant.currentText()
    assert f", only refrigerant {chosen}: audit.xlsx" in panel.says.text()
    qtbot.keyClick(records.period.person, Qt.Key.Key_Down)
    who = records.period.person.currentText()
    assert f", only refrigerant {chosen}, person {who}: audit.xlsx" in panel.says.text()
    panel.folder.setText(str(tmp_path / "out"))
    qtbot.keyClick(panel.main, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: not panel.working, timeout=60_000)
    assert panel.refusal.isHidden(), panel.refusal.text()
    rows = sheet_rows(tmp_path / "out" / "audit.xlsx", "Summary")
    said = {row["What"]: row["Value"] for row in rows}
    assert said["Records shown"].startswith(f"refrigerant {chosen}, person {who}.")


def test_that_the_panel_follows_another_period_while_it_stands_open(
    qtbot: QtBot, records: RecordsArea
) -> None:
    records.show_export()
    before = records.export_panel.says.text()
    qtbot.keyClick(records.period.named, Qt.Key.Key_Down)
    after = records.export_panel.says.text()
    assert after != before
    assert records.period.period.words in after
