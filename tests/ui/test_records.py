"""The Records area: usage with totals, flags, leak rates, entries; export, verify, take in."""

import re
import sqlite3
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from chargebench import jobfile
from chargebench.desk import Desk
from chargebench.resource import sample_jobs
from chargebench.ui.errand import Errand
from chargebench.ui.notifier import Notifier
from chargebench.ui.period import Period, named_period
from chargebench.ui.records import RecordsArea
from chargebench.ui.records_page import DUE, ENTRIES, FLAGS, LEAKS
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.rowtable import PAGE, Column, RowModel
from chargebench.ui.stock_words import moved_words


@pytest.fixture
def records(qtbot: QtBot, themed: QApplication, desk: Desk) -> RecordsArea:  # noqa: ARG001
    made = RecordsArea(desk, Notifier())
    qtbot.addWidget(made, before_close_func=lambda area: area.finish())
    made.resize(1180, 720)
    made.show()
    return made


def settled(qtbot: QtBot, records: RecordsArea) -> None:
    qtbot.waitUntil(lambda: not records.working, timeout=10_000)


def test_that_usage_and_totals_are_of_the_period_chosen(
    qtbot: QtBot, records: RecordsArea, desk: Desk
) -> None:
    assert [(row.kind, row.as_typed) for row in records.usage.rows] == [("received", "4 kg")]
    assert [(row.refrigerant, row.received_mg) for row in records.totals.rows] == [
        ("R290", 4_000_000)
    ]
    records.period.since.setFocus()
    records.period.since.selectAll()
    tomorrow = desk.today + timedelta(days=1)
    qtbot.keyClicks(records.period.since, tomorrow.isoformat())
    records.period.until.clear()
    qtbot.keyClick(records.period.until, Qt.Key.Key_Space)
    qtbot.waitUntil(lambda: records.usage.rowCount() == 0)
    assert records.period.named.currentText() == "own dates"
    assert records.totals.rowCount() == 0
    assert "No mass moved in this period" in records.empty.text()


def test_that_a_date_that_is_none_is_refused_and_the_list_stays(
    qtbot: QtBot, records: RecordsArea
) -> None:
    records.period.since.selectAll()
    qtbot.keyClicks(records.period.since, "yesterday")
    assert "Expected a date as year-month-day" in records.period.says.text()
    assert records.usage.rowCount() == 1


@pytest.mark.parametrize(
    ("ends", "as_typed", "says"),
    [
        (("cylinder:C-014", "equipment:E-203"), "88.4 g", "charged"),
        (("equipment:E-203", "cylinder:C-034"), "61.3 g", "recovered"),
        (("cylinder:C-014", "atmosphere"), "left in the hose", "left in the hose"),
        (("equipment:E-203", "atmosphere"), "released: 12 g", "released"),
        (("equipment:E-203", "atmosphere"), "presumed lost", "presumed lost"),
        (("outside", "equipment:E-203"), "assumed: 3.0 oz", "assumed"),
    ],
)
def test_that_a_mass_line_says_what_moved(ends: tuple[str, str], as_typed: str, says: str) -> None:
    assert moved_words("step-signed", *ends, as_typed) == says
    assert moved_words("reversal", *ends, as_typed) == "reversal"


def test_that_filters_narrow_usage(qtbot: QtBot, records: RecordsArea) -> None:
    box = records.period.equipment
    box.setCurrentIndex(box.findData("E-203"))
    box.activated.emit(box.currentIndex())
    qtbot.waitUntil(lambda: records.usage.rowCount() == 0)


def test_that_named_periods_are_whole_days_of_the_calendar() -> None:
    today = date(2024, 2, 10)
    assert named_period("this month", today) == Period(date(2024, 2, 1), date(2024, 2, 29))
    assert named_period("this year", today) == Period(date(2024, 1, 1), date(2024, 12, 31))
    assert named_period("last year", today) == Period(date(2023, 1, 1), date(2023, 12, 31))
    assert named_period("everything", today) == Period()


def test_that_flags_lead_to_what_they_are_about(
    qtbot: QtBot, records: RecordsArea, desk: Desk
) -> None:
    desk.save_row("cylinder", "C-099", {"refrigerant": "R290", "contents": "recovered",
                                        "refillable": "yes",
                                        "requalification_due": "2020-01-01"})  # fmt: skip
    records.show_view(FLAGS)
    settled(qtbot, records)
    places = [flag.about for flag in records.flags.rows]
    assert "cylinder:C-099" in places
    assert records.tables[FLAGS].isVisible()
    records.tables[FLAGS].selectRow(places.index("cylinder:C-099"))
    with qtbot.waitSignal(records.cylinder_wanted) as wanted:
        qtbot.keyClick(records.tables[FLAGS], Qt.Key.Key_Return)
    assert wanted.args == ["C-099"]


def test_that_every_equipment_has_its_leak_rate_row(
    qtbot: QtBot, records: RecordsArea, desk: Desk
) -> None:
    records.show_view(LEAKS)
    settled(qtbot, records)
    assert [row.equipment_id for row in records.leaks.rows] == ["E-203"]
    assert records.detail.text() == (
        "E-203 Bakery freezer. No leak repair regulation binds it. "
        f"Judged by {desk.rule_set.called}."
    )


def test_that_what_is_due_stands_by_day_and_leads_to_what_it_is_about(
    qtbot: QtBot, records: RecordsArea, desk: Desk
) -> None:
    for person, until in (("P-07", "2020-02-29"), ("P-08", "2099-01-01"), ("P-09", "2098-01-01")):
        desk.save_row("person", person, {"name": f"Person {person}", "role": "technician",
                                         "certificate_until": until})  # fmt: skip
    records.show_view(DUE)
    settled(qtbot, records)
    assert [row.about for row in records.due.rows] == ["person:P-07", "person:P-09", "person:P-08"]
    assert [row.state for row in records.due.rows] == ["overdue", "open", "open"]
    table = records.tables[DUE]
    assert table.isVisible()
    assert "by 29 Feb 2020" in records.detail.text()
    assert "Worked out from entries" in records.detail.text()
    qtbot.keyClick(table, Qt.Key.Key_Return)
    dialog = records.findChild(RegisterDialog)
    assert dialog is not None
    assert dialog.isVisible()
    dialog.reject()


def test_that_entries_say_what_they_are_about(records: RecordsArea) -> None:
    records.show_view(ENTRIES)
    model = records.entries
    about = [str(model.data(model.index(row, 2))) for row in range(model.rowCount())]
    assert "equipment E-203" in about
    assert "C-014" in about
    numbers = [entry.number for entry in records.entries.rows]
    assert numbers == sorted(numbers, reverse=True)  # newest first, as in every list


def test_that_verify_says_what_was_checked_and_what_it_can_not_prove(
    qtbot: QtBot, records: RecordsArea
) -> None:
    with qtbot.waitSignal(records.verify_panel.done, timeout=10_000):
        qtbot.mouseClick(records.verify, Qt.MouseButton.LeftButton)
    says = records.verify_panel.says.text()
    assert "nothing disagrees" in says
    assert "hash" in says
    assert "can not prove" in says
    qtbot.waitUntil(lambda: not records.verify_panel.working)


def test_that_verify_names_what_disagrees(qtbot: QtBot, records: RecordsArea, desk: Desk) -> None:
    with sqlite3.connect(desk.path) as tool:
        for (name,) in tool.execute("SELECT name FROM sqlite_master WHERE type = 'trigger'"):
            tool.execute(f'DROP TRIGGER "{name}"')
        tool.execute("UPDATE transfer SET mass_mg = mass_mg + 1")
    tool.close()
    records.show_verify()
    panel = records.verify_panel
    qtbot.waitUntil(lambda: not panel.working, timeout=10_000)
    assert "disagree" in panel.says.text() or panel.refusal.isVisible()
    assert "nothing disagrees" not in panel.says.text()


def test_that_an_export_says_what_it_writes_and_writes_it_while_the_window_lives(
    qtbot: QtBot, records: RecordsArea, tmp_path: Path
) -> None:
    records.show_export()
    panel = records.export_panel
    assert "audit.xlsx" in panel.says.text()
    folder = tmp_path / "for the inspector"
    panel.folder.selectAll()
    qtbot.keyClicks(panel.folder, str(folder))
    alive: list[int] = []
    beat = QTimer()
    beat.timeout.connect(lambda: alive.append(1))
    beat.start(10)
    qtbot.keyClick(panel.main, Qt.Key.Key_Space)
    assert panel.working
    qtbot.waitUntil(lambda: not panel.working, timeout=60_000)
    assert panel.refusal.isHidden(), panel.refusal.text()
    assert panel.says.text().startswith(f"Written into {folder}: audit.xlsx")
    assert {"audit.xlsx", "checklist.pdf", "due.ics"} <= {file.name for file in folder.iterdir()}
    assert len(alive) > 3  # timers went on firing: the window was not frozen
    records.show_export()
    assert "Already there and replaced" in panel.says.text()


def test_that_a_cancelled_export_is_refused_in_words(
    qtbot: QtBot, records: RecordsArea, tmp_path: Path
) -> None:
    records.show_export()
    panel = records.export_panel
    panel.folder.setText(str(tmp_path / "out"))
    panel.begin()
    qtbot.keyClick(panel, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not panel.working, timeout=60_000)
    assert not panel.refusal.isHidden()
    assert "ancel" in panel.refusal.text()


def test_that_an_export_into_a_file_is_refused(
    qtbot: QtBot, records: RecordsArea, tmp_path: Path
) -> None:
    blocked = tmp_path / "a file"
    blocked.write_text("x", encoding="utf-8")
    records.show_export()
    records.export_panel.folder.setText(str(blocked))
    records.export_panel.begin()
    qtbot.waitUntil(lambda: not records.export_panel.working, timeout=60_000)
    assert "folder" in records.export_panel.refusal.text()


@pytest.fixture
def empty_shop(tmp_path: Path) -> Iterator[Desk]:
    """A shop that is the sample shop before anything was taken in."""
    content = jobfile.read(min(sample_jobs().glob("*.json")))
    person_id, person = next(iter(content.register["person"].items()))
    assert content.shop is not None
    made = Desk.create(tmp_path / "empty", content.shop, person, person_id=person_id)
    yield made
    made.close()


def test_that_taking_in_a_job_file_fills_the_views_and_twice_is_refused(
    qtbot: QtBot,
    themed: QApplication,  # noqa: ARG001
    empty_shop: Desk,
) -> None:
    area = RecordsArea(empty_shop, Notifier())
    qtbot.addWidget(area, before_close_func=lambda gone: gone.finish())
    area.show()
    area.period.named.setCurrentText("everything")
    area.period.named.activated.emit(0)
    qtbot.waitUntil(lambda: "No mass moved" in area.empty.text())
    first = min(sample_jobs().glob("*.json"))
    with qtbot.waitSignal(area.said) as said:
        area.take(first)
    assert said.args is not None
    assert re.fullmatch(rf"{first.name}: \d+ entries recorded\.", str(said.args[0]))
    qtbot.waitUntil(lambda: area.usage.rowCount() > 0)
    rows = area.usage.rowCount()
    area.take(first)
    assert "taken in before" in area.says.text()
    assert area.usage.rowCount() == rows


def test_that_a_backup_says_where_it_is(records: RecordsArea, desk: Desk) -> None:
    records.make_backup()
    assert records.says.text().startswith("Backed up: ")
    assert any(desk.path.parent.rglob("*")), "the copy lies beside the shop file"
    records.make_backup()
    assert "still the same" in records.says.text()


def test_that_a_fault_on_the_thread_reaches_the_window(qtbot: QtBot, desk: Desk) -> None:
    def fails(_desk: Desk, _errand: Errand) -> None:
        raise ZeroDivisionError

    errand = Errand(desk, fails)
    with qtbot.captureExceptions() as faults:
        errand.begin()
        qtbot.waitUntil(errand.isFinished)
        qtbot.waitUntil(lambda: bool(faults))
    assert faults[0][0] is ZeroDivisionError


def test_that_long_lists_are_read_page_by_page(themed: QApplication) -> None:  # noqa: ARG001
    asked: list[int | None] = []

    def page(after: int | None) -> range:
        asked.append(after)
        start = 0 if after is None else after + 1
        return range(start, min(start + PAGE, 2 * PAGE + 50))

    model: RowModel[int] = RowModel((Column("n", str),))
    model.read(page)
    assert model.rowCount() == PAGE
    while model.canFetchMore(model.index(-1, -1)):
        model.fetchMore(model.index(-1, -1))
    assert model.rowCount() == 2 * PAGE + 50
    assert asked == [None, PAGE - 1, 2 * PAGE - 1]
    assert list(model.rows) == list(range(2 * PAGE + 50))
