"""A cabinet taken out of service through the window: what comes out, what is refused on the way."""

from collections.abc import Callable

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from chargebench.desk import Desk
from chargebench.ledger import HistoryRow
from chargebench.steps import Typed
from chargebench.ui.rowtable import RowModel
from chargebench.ui.stock import StockArea
from tests.hands import ALL, ALT, CTRL, SHIFT, Hands, focused

pytestmark = pytest.mark.slow

NAMEPLATE_MG = 12_000_000
RECOVERED_MG = 9_600_000  # 17.450 kg - 7.850 kg
LOST_MG = NAMEPLATE_MG - RECOVERED_MG
WEIGHING = {"cylinder": "C-041", "scale": "S-3", "before": "7.850 kg", "after": "17.450 kg"}
RECOVERY: Typed = {
    "how": "recovered",
    "machine": "R-1",
    "opening": "disposed of",
    "lines": [WEIGHING],
    "level": "-10 inHg",
    "ticks": ALL,
}


def _to_recovery(hands: Hands, desk: Desk) -> str:
    """A job begun, its nameplate signed, the recovery in front."""
    hands.press(Qt.Key.Key_N, CTRL)
    hands.type("display", then=Qt.Key.Key_Return)
    hands.type("taken out of service", then=Qt.Key.Key_Return)
    hands.fill(hands.form, {"refrigerant": "R404A", "charge": "12.000 kg"})
    hands.sign()
    for _ in range(5):  # as found, findings, safety, leak search, pressure test
        _set_aside(hands)
    assert hands.page.steps.current() == "recovery"
    (line,) = desk.jobs(state="open")
    return line.id


def _set_aside(hands: Hands) -> None:
    hands.press(Qt.Key.Key_N, CTRL | SHIFT)
    hands.type("taken out of service", then=Qt.Key.Key_Return)


def _line(hands: Hands, key: str) -> QWidget:
    return hands.form.lines("lines").line_rows(0)[key].editors()[0]


def _amend(hands: Hands, key: str, text: str) -> None:
    """Go back to a field of the weighing and type it anew."""
    hands.to(_line(hands, key), Qt.Key.Key_Backtab)
    hands.press(Qt.Key.Key_A, CTRL)
    hands.type(text, then=Qt.Key.Key_Return)


def _refused_at(hands: Hands, desk: Desk, key: str) -> str:
    """Sign; it is refused beside the field, which has the focus, and nothing is recorded."""
    before = desk.ledger.head()
    hands.sign()
    assert desk.ledger.head() == before
    row = hands.form.lines("lines").line_rows(0)[key]
    assert row.refusal.isVisible()
    assert focused() in row.editors()
    assert hands.page.pane.strip.says.isVisible()
    for other, each in hands.form.lines("lines").line_rows(0).items():
        assert other == key or not each.refusal.isVisible()
    return row.refusal.text()


@pytest.mark.parametrize(
    ("key", "text", "says"),
    [
        ("before", "7.850 psig", ("Expected a scale reading", "psig")),
        # 18.500 kg - 7.850 kg; limit: 0.80 x 26.2 lb x relative density at 25 °C, some 1.05
        # (49 CFR 173.304a with the density of R404A), so about 10 kg.
        ("after", "18.500 kg", ("C-041 would hold 10.65", "over its limit", "80 % at 25 °C")),
        ("cylinder", "C-050", ("C-050 is non-refillable",)),
        ("after", "7.850 kg", ("Expected more after than before",)),
    ],
    ids=["wrong unit", "overfilled", "non-refillable", "nothing came out"],
)
def test_that_a_refused_recovery_says_why_beside_its_field_and_records_nothing(
    hands: Hands, desk: Desk, key: str, text: str, says: tuple[str, ...]
) -> None:
    job = _to_recovery(hands, desk)
    hands.fill(hands.form, RECOVERY)
    _amend(hands, key, text)
    refusal = _refused_at(hands, desk, key)
    for part in says:
        assert part in refusal
    assert desk.ledger.balance("cylinder:C-041", "R404A") == 0
    _amend(hands, key, WEIGHING[key])
    hands.sign()
    assert desk.ledger.balance("cylinder:C-041", "R404A") == RECOVERED_MG
    assert desk.job(job).steps[6].state == "signed"


def _cell(model: RowModel[HistoryRow], row: int, head: str) -> str:
    columns = [column.head for column in model.columns]
    return str(model.index(row, columns.index(head)).data())


def test_that_a_recovery_is_found_in_cylinder_and_equipment_on_screen_and_in_the_ledger(
    hands: Hands, desk: Desk
) -> None:
    job = _to_recovery(hands, desk)
    hands.fill(hands.form, RECOVERY)
    hands.sign()
    hands.to_step("close")
    hands.fill(hands.form, {"labels": "yes", "ends": "taken out of service", "ticks": ALL})
    hands.sign()
    hands.push(hands.page.close_button)
    hands.type("taken out of service", then=Qt.Key.Key_Return)
    assert desk.job(job).state == "closed"

    balance: Callable[[str], int] = lambda place: desk.ledger.balance(place, "R404A")  # noqa: E731
    assert balance("cylinder:C-041") == RECOVERED_MG
    assert balance("equipment:E-007") == 0
    assert balance("atmosphere") == LOST_MG
    assert balance("outside") == -NAMEPLATE_MG

    hands.press(Qt.Key.Key_2, ALT)
    stock = hands.window.stack.currentWidget()
    assert isinstance(stock, StockArea)
    hands.press(Qt.Key.Key_F, CTRL)
    hands.type("C-041", then=Qt.Key.Key_Return)
    page = stock.page
    assert page.isVisible()
    assert page.fill_words.text().startswith("holds 9.600 kg of ")
    assert page.model.rowCount() == 1
    assert _cell(page.model, 0, "Moved") == "+9.600 kg"
    assert _cell(page.model, 0, "Held after") == "9.600 kg"
    assert _cell(page.model, 0, "As typed") == "7.850 kg → 17.450 kg"
    assert _cell(page.model, 0, "Job") == desk.job(job).number
    moved = [(row.other, row.mass_mg, row.running_mg) for row in desk.history("equipment:E-007")]
    assert moved == [
        ("atmosphere", -LOST_MG, 0),
        ("cylinder:C-041", -RECOVERED_MG, LOST_MG),
        ("outside", NAMEPLATE_MG, NAMEPLATE_MG),
    ]
