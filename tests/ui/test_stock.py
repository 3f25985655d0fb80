"""The Stock area: cylinders against their limits, histories, stock acts by key, instruments."""

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from chargebench.desk import CylinderLine, Desk
from chargebench.ui.cylinder_columns import FILL_COLUMN
from chargebench.ui.fillbar import FillBar, share_words
from chargebench.ui.ink import ink
from chargebench.ui.notifier import Notifier
from chargebench.ui.registerdialog import RegisterDialog
from chargebench.ui.stock import StockArea
from chargebench.ui.stock_words import due_shape, due_words


@pytest.fixture
def stock(qtbot: QtBot, themed: QApplication, desk: Desk) -> StockArea:  # noqa: ARG001
    desk.save_row(
        "cylinder",
        "C-020",
        {
            "refrigerant": "R449A",
            "contents": "recovered",
            "refillable": "yes",
            "tare": "12.3 kg",
            "water_capacity": "21.6 kg",
            "requalification_due": "2020-10-30",
        },
    )
    made = StockArea(desk, Notifier())
    qtbot.addWidget(made)
    made.resize(1180, 720)
    made.show()
    made.activateWindow()
    qtbot.waitUntil(made.isActiveWindow)
    return made


def shown(stock: StockArea, row: int) -> list[str]:
    model = stock.cylinders
    return [str(model.data(model.index(row, place))) for place in range(model.columnCount())]


def test_that_each_cylinder_is_a_row_with_what_it_holds_and_what_is_due(stock: StockArea) -> None:
    assert shown(stock, 0)[:4] == ["C-014", "R290", "new", "4.000 kg"]
    assert shown(stock, 0)[5] == "4.000 kg to use"
    recovery = shown(stock, 1)
    assert recovery[:4] == ["C-020", "R449A", "recovered", "0.0 g"]
    assert recovery[5].endswith("kg to fill")
    assert recovery[7].startswith("overdue by ")
    assert "requalification" in recovery[8]


def test_that_the_fill_column_says_in_words_what_it_draws(stock: StockArea) -> None:
    model = stock.cylinders
    index = model.index(1, FILL_COLUMN)
    said = model.data(index, Qt.ItemDataRole.AccessibleTextRole)
    assert said == "Fill against limit: 0 %"
    assert model.data(model.index(0, FILL_COLUMN)) == "limit not known"


def line(mass_mg: int, limit_mg: int | None) -> CylinderLine:
    return CylinderLine(
        id="C-1",
        refrigerant="R290",
        contents="recovered",
        mass_mg=mass_mg,
        limit_mg=limit_mg,
        by="",
        gross_limit_mg=None,
        refillable=True,
        due=None,
        last_weighed="",
    )


def test_that_a_cylinder_over_its_limit_is_hatched_and_said(
    qtbot: QtBot,
    themed: QApplication,  # noqa: ARG001
) -> None:
    bar = FillBar()
    qtbot.addWidget(bar)
    bar.resize(300, 30)

    def stop_seen(content: CylinderLine) -> bool:
        bar.show_cylinder(content)
        image = bar.grab().toImage()
        colours = {image.pixelColor(x, 15).name() for x in range(image.width())}
        return ink().stop.name() in colours

    assert not stop_seen(line(4_000_000, 5_000_000))
    assert stop_seen(line(6_000_000, 5_000_000))
    assert share_words(line(6_000_000, 5_000_000)) == "over limit, 120 %"
    assert share_words(line(1, None)) == "limit not known"


def test_that_a_scanner_that_types_an_id_and_enter_opens_the_cylinder(
    qtbot: QtBot, stock: StockArea
) -> None:
    qtbot.keyClick(stock, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(stock.search, "C-020")
    qtbot.keyClick(stock.search, Qt.Key.Key_Return)
    assert stock.page.isVisible()
    assert stock.page.title.text().startswith("C-020  R449A, recovered")
    assert "Nothing has moved" in stock.page.empty.text()
    qtbot.keyClick(stock.page, Qt.Key.Key_Escape)
    assert stock.search.isVisible()


def test_that_searching_narrows_the_list_and_says_when_nothing_fits(
    qtbot: QtBot, stock: StockArea
) -> None:
    qtbot.keyClicks(stock.search, "r449")
    qtbot.waitUntil(lambda: stock.cylinders.rowCount() == 1)
    stock.search.clear()
    qtbot.keyClicks(stock.search, "nowhere")
    qtbot.waitUntil(lambda: stock.empty.isVisible())
    assert "Nothing here fits" in stock.empty.text()


def test_that_weighing_by_keys_alone_is_recorded_and_its_history_runs(
    qtbot: QtBot, stock: StockArea, desk: Desk
) -> None:
    stock.open_cylinder("C-014")
    desk.save_row("cylinder", "C-014", {**desk.row("cylinder", "C-014"), "tare": "3.2 kg"})
    stock.begin("weigh", "C-014")
    act = stock.act("weigh")
    for key, text in (
        ("scale", "S-3"),
        ("gross", "7.150 kg"),
        ("reason", "purged a hose"),
    ):
        act.form.focus_path(key)
        qtbot.keyClicks(act.form.row(key).editors()[0], text)
    assert "3.950 kg" in act.comes.text()  # 7.150 kg less the tare
    act.form.row("accept").put("yes")
    with qtbot.waitSignal(stock.said) as said:
        qtbot.keyClick(act, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert said.args is not None
    assert str(said.args[0]).startswith("Weigh: C-014, entry ")
    rows = stock.page.model.rows
    assert [(row.kind, row.mass_mg, row.running_mg) for row in rows] == [
        ("weighed", -50_000, 3_950_000),
        ("received", 4_000_000, 4_000_000),
    ]
    assert desk.typed("stock", "weigh") == {}


def test_that_a_refused_act_says_why_by_the_field_and_records_nothing(
    qtbot: QtBot, stock: StockArea, desk: Desk
) -> None:
    before = len(list(desk.entries()))
    stock.begin("receive", "C-014")
    act = stock.act("receive")
    act.form.focus_path("mass")
    qtbot.keyClicks(act.form.row("mass").editors()[0], "five")
    qtbot.keyClick(act, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert act.says.isVisible()
    assert act.isVisible()
    assert len(list(desk.entries())) == before


def test_that_what_is_typed_in_an_act_outlives_the_area(
    qtbot: QtBot, stock: StockArea, desk: Desk
) -> None:
    stock.begin("receive", "C-014")
    act = stock.act("receive")
    act.form.focus_path("mass")
    qtbot.keyClicks(act.form.row("mass").editors()[0], "5 kg")
    qtbot.keyClick(act, Qt.Key.Key_Escape)
    again = StockArea(desk, Notifier())
    qtbot.addWidget(again)
    again.begin("receive")
    assert again.act("receive").form.typed() == {"cylinder": "C-014", "mass": "5 kg"}


def test_that_a_history_row_leads_back_to_its_job(
    qtbot: QtBot, stock: StockArea, desk: Desk, job: str
) -> None:
    desk.save_row("cylinder", "C-030", {"refrigerant": "R290", "contents": "recovered",
                                        "refillable": "yes"})  # fmt: skip
    desk.sign(job, "nameplate", {"refrigerant": "R290", "charge": "85 g"})
    desk.sign(
        job,
        "recovery",
        {
            "how": "recovered",
            "lines": [
                {"cylinder": "C-030", "scale": "S-2", "before": "7.000 kg", "after": "7.060 kg"}
            ],
        },
    )
    stock.open_cylinder("C-030")
    assert stock.page.model.row(0).mass_mg == 60_000
    with qtbot.waitSignal(stock.job_wanted) as wanted:
        qtbot.keyClick(stock.page.table, Qt.Key.Key_Return)
    assert wanted.args == [job]


def test_that_instruments_are_listed_with_resolution_and_opened_by_enter(
    qtbot: QtBot, stock: StockArea
) -> None:
    qtbot.keyClick(stock, Qt.Key.Key_I, Qt.KeyboardModifier.AltModifier)
    qtbot.waitUntil(lambda: stock.instrument_table.isVisible())
    rows = stock.instruments.rows
    assert [(row.id, row.resolves) for row in rows] == [
        ("S-2", "0.1 g, s 0.2 g"),
        ("S-3", "10 g, s 0.2 g"),
    ]
    assert stock.new.text() == "&New instrument"
    qtbot.keyClick(stock.instrument_table, Qt.Key.Key_Return)
    dialog = stock.findChild(QDialog)
    assert isinstance(dialog, RegisterDialog)
    assert "S-2" in dialog.id_field.text()
    dialog.reject()


def test_that_due_dates_are_said_in_words() -> None:
    today = date(2026, 11, 25)
    assert due_words(date(2026, 11, 25), today) == "due today"
    assert due_words(date(2026, 11, 24), today) == "overdue by 1 day"
    assert due_words(date(2026, 12, 10), today) == "in 15 days, 10 Dec 2026"
    assert due_words(None, today) == "not known"
    assert due_shape(date(2026, 11, 24), today) == "check"
    assert due_shape(date(2026, 12, 10), today) == "note"
    assert due_shape(date(2027, 12, 10), today) == ""
