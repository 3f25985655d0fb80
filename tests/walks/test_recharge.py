"""A whole recharge through the window, by key presses alone, in the units the trade mixes."""

from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path
from typing import Any

import openpyxl
import pypdf
import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.steps import STEPS as FORMS
from chargebench.ui.records import RecordsArea
from tests.hands import ALL, ALT, CTRL, SHIFT, Hands

pytestmark = pytest.mark.slow

# One avoirdupois ounce is 1/16 lb of 453.592 37 g exactly: NIST SP 811 (2008), appendix B.8.
OUNCE_MG = Fraction(45_359_237, 100) / 16
NAMEPLATE_MG = round(3 * OUNCE_MG)  # 3.0 oz = 85 049 mg
RECOVERED_MG = 61_400  # 7867.6 g - 7806.2 g
LOST_MG = NAMEPLATE_MG - RECOVERED_MG  # what the vacuum pump cannot bring back: presumed lost
CHARGED_MG = 88_700  # 4312.5 g - 4223.8 g, hose closed at the equipment
# Two readings of a 0.1 g display, s = 0.3 g: u² = 2 (0.1²/12 + 0.3²) g², U = 2 u = 0.85 g
# (JCGM 100:2008, 4.3.7 and 6.2.1).
OVER = "3.7 g"  # 88.700 g - 85.049 g = 3.651 g
DOUBT = "±0.9 g"

NAMEPLATE = {
    "refrigerant": "R290",
    "charge": "3.0 oz",
    "tolerance": "2 g",
    "low_side_design": "150 psig",
    "complaint": "=not holding temperature",
}
AS_FOUND = {
    "tapped": "yes",
    "suction_pressure": "2.8 psig",
    "suction_line": "27 F",
    "discharge_pressure": "151 psig",
    "liquid_line": "79 °F",
    "ambient": "75 F",
    "box": "12 F",
    "current": "1.9 A",
    "frost": "only at the inlet",
}
FINDINGS = {"found": "Bubbles at the process valve stem.", "cause": "Valve left on the stub."}
SAFETY = {"ticks": ALL, "place": "workshop", "ventilation": "door open, fan at floor level"}
LEAK_SEARCH = {
    "method": "bubbles",
    "system_pressure": "88 psig",
    "standing": "20 min",
    "low_first": "yes",
    "components": ALL,
    "all_accessible": "yes",
    "leaks": [{"where": "process valve core", "how": "bubbles", "repair": "valve taken off"}],
    "ticks": ALL,
}
PRESSURE_TEST = {
    "gas": "dry nitrogen",
    "regulated": "yes",
    "volume": "4.5 L",
    "gauge": "G-1",
    "gauge_resolution": "0.1 psig",
    "start_pressure": "150.0 psig",
    "start_temperature": "72.0 F",
    "hold": "30 min",
    "end_pressure": "149.7 psig",
    "end_temperature": "71.0 F",
    "bubbles": "yes",
    "ticks": ALL,
}
RECOVERY = {
    "how": "recovered",
    "machine": "R-1",
    "compressor_works": "yes",
    "opening": "opened for repair",
    "lines": [{"cylinder": "C-034", "scale": "S-2", "before": "7806.2 g", "after": "7867.6 g"}],
    "level": "-6 inHg",
    "ticks": ALL,
}
EVACUATION = {
    "pump": "VP-1",
    "gauge": "V-1",
    "pulled_to": "310 micron",
    "coldest": "19 °C",
    "decay": [
        {"at": f"{minute} min", "reading": f"{reading} micron"}
        for minute, reading in ((0, 308), (1, 316), (2, 320), (5, 327), (10, 330), (20, 331))
    ],
    "ticks": ALL,
}
WEIGH_IN: dict[str, Any] = {
    "kind": "into an evacuated system",
    "lines": [
        {
            "cylinder": "C-014",
            "scale": "S-2",
            "arrangement": "cylinder on the scale",
            "start": "4312.5 g",
            "end": "4223.8 g",
            "drawn_as": "liquid",
            "hose_state": "no hose, closed at the equipment",
        }
    ],
    "origin": "virgin",
    "ticks": ALL,
}
AS_LEFT = {"tapped": "no", "suction_line": "-12.5 °C", "ambient": "75 F", "box": "-4 F"}
TIME_AND_PARTS = {"travel": "40 min", "parts": [{"part": "filter drier", "count": "1"}]}
CLOSE = {
    "resealed": "yes",
    "leak_checked": "yes",
    "labels": "yes",
    "ends": "left running",
    "ticks": ALL,
}
STEPS: dict[str, dict[str, Any]] = {
    "nameplate": NAMEPLATE,
    "as_found": AS_FOUND,
    "findings": FINDINGS,
    "safety": SAFETY,
    "leak_search": LEAK_SEARCH,
    "pressure_test": PRESSURE_TEST,
    "recovery": RECOVERY,
    "evacuation": EVACUATION,
    "weigh_in": WEIGH_IN,
    "as_left": AS_LEFT,
    "support": {},
    "time_and_parts": TIME_AND_PARTS,
    "close": CLOSE,
}


def _work_through(hands: Hands, desk: Desk) -> str:
    """From New job to Close; the job's id."""
    hands.press(Qt.Key.Key_N, CTRL)
    hands.type("bakery fr", then=Qt.Key.Key_Return)
    hands.type("not holding temperature", then=Qt.Key.Key_Return)
    (line,) = desk.jobs(state="open")
    for key, typed in STEPS.items():
        assert hands.page.steps.current() == key
        if not typed:
            hands.press(Qt.Key.Key_N, CTRL | SHIFT)
            hands.type("maker not called", then=Qt.Key.Key_Return)
            continue
        hands.fill(hands.form, typed)
        if key == "weigh_in":
            _sees_it_is_over(hands)
        hands.sign()
        step = next(each for each in desk.job(line.id).steps if each.key == key)
        assert step.state == "signed", (key, hands.page.pane.strip.says.text())
    _sees_it_is_over(hands)
    hands.push(hands.page.close_button)
    assert desk.job(line.id).state == "closed"
    return line.id


def _sees_it_is_over(hands: Hands) -> None:
    bar = hands.page.flag_bar
    flag = next(each for each in bar.flags() if each.key == "over-nameplate")
    assert bar.worst.isVisible()
    assert bar.worst.text() == flag.says
    assert flag.level == "stop"
    assert OVER in bar.worst.text()
    assert DOUBT in bar.worst.text()


def _export(hands: Hands, folder: Path, qtbot: QtBot) -> None:
    """From the Records area, by keyboard, into a folder typed."""
    hands.press(Qt.Key.Key_3, ALT)
    records = hands.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    hands.press(Qt.Key.Key_X, ALT)
    panel = records.export_panel
    qtbot.waitUntil(panel.main.hasFocus)
    hands.to(panel.folder, Qt.Key.Key_Backtab)
    hands.press(Qt.Key.Key_A, CTRL)
    hands.type(str(folder))
    hands.push(panel.main)
    qtbot.waitUntil(lambda: panel.says.text().startswith("Written into"), timeout=60_000)
    assert not panel.refusal.isVisible()


def _texts(typed: Any) -> list[str]:
    """Every text of a form that was typed by hand."""
    if isinstance(typed, str):
        return [] if typed == ALL else [typed]
    parts = typed.values() if isinstance(typed, Mapping) else typed
    return [text for part in parts for text in _texts(part)]


def _sheet(book: openpyxl.Workbook, name: str) -> list[dict[str, Any]]:
    """A sheet's rows by the words in its head."""
    rows = [list(row) for row in book[name].iter_rows(values_only=True)]
    head = next(i for i, row in enumerate(rows) if sum(cell is not None for cell in row) > 3)
    return [dict(zip(map(str, rows[head]), row, strict=True)) for row in rows[head + 1 :]]


def _bare(text: str) -> str:
    return "".join(text.split())


def _check_typed(book: openpyxl.Workbook) -> None:
    """Every text stands in the workbook as it was typed, under its step."""
    there = {(row["Step"], row["As typed"]) for row in _sheet(book, "As typed")}
    for key, typed in STEPS.items():
        title = FORMS[key].title
        for text in _texts(typed):
            assert (title, text) in there, (title, text)
    complaint = NAMEPLATE["complaint"]  # begins like a formula
    kinds = {cell.data_type for row in book["As typed"] for cell in row if cell.value == complaint}
    assert kinds == {"s"}


def _check_masses(book: openpyxl.Workbook) -> None:
    """Exactly these masses moved, in milligrams and in kilograms."""
    moved = [
        (row["From"], row["Into"], row["As typed"], row["Mass [mg]"], row["Mass [kg]"])
        for row in _sheet(book, "Transfers")
        if row["Job"] == "B-0001"
    ]
    freezer = "equipment:E-203"
    assert moved == [
        ("outside", freezer, "assumed: 3.0 oz", NAMEPLATE_MG, 0.085049),
        (freezer, "cylinder:C-034", "7806.2 g → 7867.6 g", RECOVERED_MG, 0.0614),
        (freezer, "atmosphere", "presumed lost", LOST_MG, 0.023649),
        ("cylinder:C-014", freezer, "4312.5 g → 4223.8 g", CHARGED_MG, 0.0887),
    ]
    closing = {row["Place"]: row["Closing [kg]"] for row in _sheet(book, "Balances")}
    assert closing[freezer] == 0.0887
    assert closing["cylinder:C-014"] == 3.9113
    assert closing["cylinder:C-034"] == 0.0614


def _ticked(desk: Desk, job: str) -> list[str]:
    """Text of every safety line that was ticked, in the order of the steps."""
    lines: list[str] = []
    for key, typed in STEPS.items():
        if "ticks" in typed:
            given = desk.typed(job, key)["ticks"]
            keys = {each["line"] for each in given if isinstance(each, Mapping)}
            lines += [line.text for line in desk.ticks(job, key, "ticks") if line.key in keys]
    return lines


def _check_lists(book: openpyxl.Workbook, printed: str, ticked: list[str]) -> None:
    """Every line ticked stands ticked in the workbook and on paper."""
    rows = [row for row in _sheet(book, "Checklists") if row["State"] == "ticked"]
    assert [row["Line"] for row in rows] == ticked
    assert printed.count("☑") == len(ticked) + 1  # and the line that says all are
    for line in ticked:
        assert f"☑{_bare(line)}" in printed, line


def test_that_a_recharge_is_typed_flagged_recorded_and_exported(
    hands: Hands, desk: Desk, tmp_path: Path, qtbot: QtBot
) -> None:
    job = _work_through(hands, desk)
    assert desk.ledger.balance("cylinder:C-014", "R290") == 4_000_000 - CHARGED_MG
    assert desk.ledger.balance("cylinder:C-034", "R290") == RECOVERED_MG
    assert desk.ledger.balance("equipment:E-203", "R290") == CHARGED_MG
    assert desk.ledger.balance("atmosphere", "R290") == LOST_MG
    assert "over-nameplate" in [flag.key for flag in desk.job(job).flags]

    out = tmp_path / "out"
    _export(hands, out, qtbot)
    book = openpyxl.load_workbook(out / "audit.xlsx")
    _check_typed(book)
    _check_masses(book)
    (flag,) = (row for row in _sheet(book, "Flags") if row["Level"] == "stop")
    assert OVER in flag["Says"]
    assert DOUBT in flag["Says"]
    pages = pypdf.PdfReader(out / "checklist.pdf").pages
    ticked = _ticked(desk, job)
    assert len(ticked) > 20
    _check_lists(book, _bare("".join(page.extract_text() for page in pages)), ticked)
    _verify(hands, qtbot)


def _verify(hands: Hands, qtbot: QtBot) -> None:
    """By keyboard: nothing disagrees."""
    records = hands.window.stack.currentWidget()
    assert isinstance(records, RecordsArea)
    hands.press(Qt.Key.Key_V, ALT)
    panel = records.verify_panel
    with qtbot.waitSignal(panel.done, timeout=30_000) as verified:
        pass
    assert verified.args is not None
    assert verified.args[0].ok
    qtbot.waitUntil(lambda: not panel.working)
    assert "nothing disagrees" in panel.says.text()
