"""The stock-take by keys alone: scan, Enter, reading, Enter; signed, left, and taken up again."""

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.stock import StockArea
from chargebench.ui.stocktake import StockTakePage
from tests.hands import ALT, CTRL, SHIFT, Hands, focused

ENTER = Qt.Key.Key_Return


@pytest.fixture
def at_stock(hands: Hands, desk: Desk) -> Hands:
    row = {"refrigerant": "R290", "contents": "new", "refillable": "yes", "tare": "5 kg"}
    desk.save_row("cylinder", "C-014", row)  # holds 4 kg
    desk.save_row("cylinder", "C-015", row | {"contents": "recovered"})
    hands.press(Qt.Key.Key_2, ALT)
    return hands


def begin(hands: Hands) -> StockTakePage:
    area = hands.window.stack.currentWidget()
    assert isinstance(area, StockArea)
    hands.push(area.counting)
    assert area.stocktake is not None
    return area.stocktake


def cells(page: StockTakePage, row: int = 0) -> dict[str, str]:
    model = page.model
    return {column.head: column.text(model.row(row)) for column in model.columns}


def test_that_cylinders_are_counted_by_scanner_and_scale_with_keys_only(
    at_stock: Hands, desk: Desk, qtbot: QtBot
) -> None:
    page = begin(at_stock)
    assert focused() is page.scale.editor
    at_stock.type("S-3", then=Qt.Key.Key_Tab)
    at_stock.to(page.cylinder)
    for cylinder, gross in (("C-014", "8.5 kg"), ("C-015", "5000 g"), ("X-1", "3 kg")):
        at_stock.type(cylinder, then=ENTER)
        assert focused() is page.gross
        at_stock.type(gross, then=ENTER)
        assert focused() is page.cylinder
    assert [cells(page, row)["Stands"] for row in range(3)] == [
        "not in the register", "agrees", "differs",
    ]  # fmt: skip
    row = cells(page, 2)
    assert (row["Expected"], row["Found"], row["Difference"]) == (
        "4.000 kg", "3.500 kg", "\u2212500.0 g",
    )  # fmt: skip
    assert page.stands.text() == "1 agrees, 1 differs, 1 not in the register."
    at_stock.sign()
    assert focused() is page.reason.reason  # beyond tolerance: asked why, before anything
    assert "500.0 g less than the ledger says" in page.reason.asks.text()
    at_stock.type("left open on the van", then=ENTER)
    at_stock.sign()
    qtbot.waitUntil(lambda: not page.isVisible())
    assert desk.reading.balance("cylinder:C-014", "R290") == 3_500_000
    kinds = [entry.kind for entry in desk.entries()][-3:]
    assert kinds == ["weighed", "weighed", "stock-take"]
    assert "Not in the register: X-1." in at_stock.window.foot.toolTip() + (
        at_stock.window.foot.text()
    )


def test_that_a_difference_without_a_reason_is_left_and_can_be_taken_up_again(
    at_stock: Hands, desk: Desk
) -> None:
    page = begin(at_stock)
    at_stock.type("S-3")
    at_stock.to(page.cylinder)
    at_stock.type("C-014", then=ENTER)
    at_stock.type("8.5 kg", then=ENTER)
    at_stock.to(page.table)
    at_stock.press(ENTER)
    at_stock.press(ENTER)  # no reason
    assert cells(page)[""] == "left to be found out"
    at_stock.press(Qt.Key.Key_Delete, CTRL | SHIFT)
    assert cells(page)["Stands"] == "not counted yet"
    assert desk.stocktake_typed().lines == ()


def test_that_what_was_counted_is_there_after_a_crash(
    at_stock: Hands, desk: Desk, qtbot: QtBot
) -> None:
    page = begin(at_stock)
    at_stock.type("S-3")
    at_stock.to(page.cylinder)
    at_stock.type("C-015", then=ENTER)
    at_stock.type("5 kg", then=ENTER)
    with Desk.open(desk.path) as after:  # the first never closed it
        again = StockTakePage(after)
        qtbot.addWidget(again)
        assert cells(again)["Cylinder"] == "C-015"
        assert cells(again)["Stands"] == "agrees"
        assert again.scale.editor.text() == "S-3"


def test_that_nothing_is_signed_without_a_scale_and_esc_goes_back(
    at_stock: Hands, desk: Desk
) -> None:
    page = begin(at_stock)
    at_stock.to(page.cylinder)
    at_stock.type("C-015", then=ENTER)
    at_stock.type("5 kg", then=ENTER)
    before = desk.reading.head()
    at_stock.sign()
    assert "Expected a scale of the register" in page.says.text()
    assert focused() is page.scale.editor
    assert desk.reading.head() == before
    at_stock.press(Qt.Key.Key_Escape)
    at_stock.press(Qt.Key.Key_Escape)
    assert not page.isVisible()
