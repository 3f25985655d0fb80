"""The audit workbook, read back cell by cell."""

from collections import Counter
from datetime import datetime
from pathlib import Path
from zipfile import ZipFile

import pytest
from openpyxl import load_workbook

from chargebench.errors import ExportRefused
from chargebench.ledger import Transfer
from chargebench.reports import AuditContent, BalanceRecord
from chargebench.reports import workbook as writing
from chargebench.reports.movement import moved
from chargebench.reports.sheets import ORDER, tables
from chargebench.reports.table import HEAD_ROW, Form
from chargebench.reports.workbook import write_workbook
from tests.reports.books import CHARGED, RECEIVED, content_of, entry, sheet_rows

RISKY = ('=HYPERLINK("http://x","y")', "+1+1", "-1+1", "@SUM(A1)", "\t=1+1", "=", "#REF!", "00123")
# Heads of numbers that have no unit.
COUNTS = {
    "Entry", "Registered by entry", "Readings", "Transfers", "Cylinders", "Understood as", "Value",
    "± (k = 2)", "Limit", "GWP, 100 years",
}  # fmt: skip


def test_that_the_sample_shop_fills_every_sheet(workbook: Path, content: AuditContent) -> None:
    book = load_workbook(workbook)
    assert tuple(book.sheetnames) == ORDER
    empty = {table.name: table.empty for table in tables(content)}
    first = {sheet.title: sheet.cell(HEAD_ROW + 1, 1).value for sheet in book.worksheets}
    assert [name for name, value in first.items() if value in (None, empty[name])] == []


def test_that_numbers_have_their_unit_in_the_head(content: AuditContent) -> None:
    words = (Form.PLAIN, Form.LONG, Form.DATE, Form.WHEN, Form.MOMENT)
    bare = [
        f"{table.name}: {column.head}"
        for table in tables(content)
        for column in table.columns
        if column.form not in words and "[" not in column.head and column.head not in COUNTS
    ]
    assert bare == []


def test_that_numbers_are_numbers_and_dates_are_dates(workbook: Path) -> None:
    row = next(row for row in sheet_rows(workbook, "Transfers") if row["Counts as"] == "charged")
    assert isinstance(row["Mass [mg]"], int)
    assert isinstance(row["Mass [kg]"], float)
    assert isinstance(row["Happened at"], datetime)


def test_that_typed_text_and_exact_mass_stand_side_by_side(workbook: Path) -> None:
    rows = [row for row in sheet_rows(workbook, "Transfers") if row["Job"] == "B-0010"]
    charged = next(row for row in rows if row["Counts as"] == "charged")
    hose = next(row for row in rows if row["As typed"] == "left in the hose")
    assert charged["As typed"] == "10 012.2 g → 9 923.5 g"
    assert charged["Mass [mg]"] + hose["Mass [mg]"] == 88_700  # what left the cylinder, as typed


def test_that_a_nameplate_in_ounces_is_kept_as_typed(workbook: Path) -> None:
    (row,) = [
        row
        for row in sheet_rows(workbook, "As typed")
        if row["Job"] == "B-0010" and row["Field"] == "Nameplate charge"
    ]
    # NIST SP 811, B.8: 1 oz = 28.349 523 125 g.
    assert (row["As typed"], row["Unit"]) == ("3.0 oz", "g")
    assert row["Understood as"] == pytest.approx(3 * 28.349_523_125, rel=1e-12)


def test_that_pounds_stand_beside_kilograms(workbook: Path) -> None:
    # NIST SP 811, B.8: 1 lb = 0.453 592 37 kg.
    for row in sheet_rows(workbook, "Transfers"):
        assert row["Mass [lb]"] * 0.453_592_37 == pytest.approx(row["Mass [kg]"], rel=1e-12)


def test_that_control_totals_hold_the_sums_of_the_entries(
    workbook: Path, content: AuditContent
) -> None:
    sums: Counter[tuple[str, str, str]] = Counter()
    for each in moved(content.entries()):
        sums[each.month, each.transfer.refrigerant, each.movement] += each.counted_mg
    shown = {
        (row["Month"], row["Refrigerant"], row["Movement"]): round(row["Control total [kg]"] * 1e6)
        for row in sheet_rows(workbook, "Totals by month")
    }
    assert shown == dict(sums)


def test_that_a_control_total_is_a_live_formula_with_its_value(workbook: Path) -> None:
    live = sheet_rows(workbook, "Totals by month", values=False)
    assert all(row["Control total [kg]"].startswith("=SUMIFS(Transfers!") for row in live)
    still = sheet_rows(workbook, "Totals by month")
    assert [row["Control total [kg]"] for row in still] == [
        row["Program's total [kg]"] for row in still
    ]


def test_that_balances_follow_from_the_transfers(workbook: Path) -> None:
    rows = sheet_rows(workbook, "Balances")
    assert rows
    assert [row["Place"] for row in rows if row["Difference [kg]"] != 0] == []


def test_that_a_balance_that_does_not_follow_is_shown(tmp_path: Path) -> None:
    wrong = BalanceRecord("cylinder:C-014", "R290", opening_mg=0, closing_mg=4_400_001)
    path = tmp_path / "audit.xlsx"
    write_workbook(content_of(entry(1, RECEIVED), balances=(wrong,)), path)
    (row,) = sheet_rows(path, "Balances")
    assert row["Difference [kg]"] == pytest.approx(-1e-6)
    summary = {row["What"]: row["Value"] for row in sheet_rows(path, "Summary")}
    assert summary["Balances that differ from their control"] == 1


@pytest.mark.parametrize("text", RISKY)
def test_that_text_stays_text_whatever_it_begins_with(tmp_path: Path, text: str) -> None:
    path = tmp_path / "audit.xlsx"
    typed = Transfer("supplier", "cylinder:C-014", "R290", 1, text)
    write_workbook(content_of(entry(1, typed), shop={"name": text, "units": "SI"}), path)
    cell = load_workbook(path)["Transfers"].cell(HEAD_ROW + 1, 11)
    assert (cell.value, cell.data_type) == (text, "s")
    assert bool(cell.quotePrefix) == text.startswith(("=", "+", "-", "@", "\t"))
    assert load_workbook(path)["Summary"].cell(HEAD_ROW + 1, 2).value == text


def test_that_characters_xml_can_not_hold_are_shown_as_missing(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    odd = Transfer("supplier", "cylinder:C-014", "R290", 1, "a\x00b\x1bc\ud800d\ufffee")
    write_workbook(content_of(entry(1, odd)), path)
    (row,) = sheet_rows(path, "Transfers")
    assert row["As typed"] == "a\ufffdb\ufffdc\ufffdd\ufffde"


def test_that_text_longer_than_a_cell_is_cut_and_says_so(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    long = Transfer("supplier", "cylinder:C-014", "R290", 1, "x" * 40_000)
    write_workbook(content_of(entry(1, long)), path)
    (row,) = sheet_rows(path, "Transfers")
    assert len(row["As typed"]) == 32_767
    assert row["As typed"].endswith("the ledger has the whole text)")


def test_that_spaces_and_lines_in_text_are_kept(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    write_workbook(content_of(entry(1), verification=("  two\nlines ",)), path)
    assert sheet_rows(path, "Verification")[0]["Statement"] == "  two\nlines "


@pytest.mark.parametrize("mass_mg", [1, 99_223, 453_592_370, 123_456_789_012])
def test_that_kilograms_are_exact_to_the_milligram(tmp_path: Path, mass_mg: int) -> None:
    path = tmp_path / "audit.xlsx"
    write_workbook(
        content_of(entry(1, Transfer("supplier", "cylinder:C", "R290", mass_mg, ""))), path
    )
    (row,) = sheet_rows(path, "Transfers")
    assert round(row["Mass [kg]"] * 1_000_000) == row["Mass [mg]"] == mass_mg


def test_that_a_reversal_counts_against_what_it_takes_back(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    entries = (entry(1, RECEIVED), entry(2, RECEIVED.turned(), kind="reversal"))
    write_workbook(content_of(*entries), path)
    (total,) = sheet_rows(path, "Totals by month")
    assert (total["Movement"], total["Transfers"], total["Control total [kg]"]) == (
        "received",
        2,
        0,
    )


def test_that_an_empty_shop_makes_a_workbook_that_says_so(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    write_workbook(content_of(), path)
    book = load_workbook(path)
    assert book["Transfers"].cell(HEAD_ROW + 1, 1).value == "Nothing was recorded in this period."
    assert book["Cylinders"].cell(HEAD_ROW + 1, 1).value == "No cylinder is in the register."


def test_that_progress_is_told_sheet_by_sheet(tmp_path: Path) -> None:
    told: list[tuple[str, int, int]] = []
    entries = [entry(number, CHARGED) for number in range(1, 1_200)]
    write_workbook(content_of(*entries), tmp_path / "audit.xlsx", lambda *words: told.append(words))
    assert {name for name, _, _ in told} == set(ORDER)
    assert [done for _, done, _ in told] == sorted(done for _, done, _ in told)
    assert all(done <= expected for _, done, expected in told)


def test_that_a_cancelled_export_leaves_the_file_before_it(tmp_path: Path) -> None:
    path = tmp_path / "audit.xlsx"
    path.write_bytes(b"the one before")
    answers = iter([False] * 4)
    with pytest.raises(ExportRefused, match="cancelled; nothing was written"):
        write_workbook(content_of(entry(1, CHARGED)), path, None, lambda: next(answers, True))
    assert [each.name for each in tmp_path.iterdir()] == ["audit.xlsx"]
    assert path.read_bytes() == b"the one before"


def test_that_an_export_into_no_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ExportRefused, match=r"could not be written to .*audit\.xlsx"):
        write_workbook(content_of(), tmp_path / "missing" / "audit.xlsx")


def test_that_more_rows_than_a_sheet_holds_are_refused(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(writing, "ROWS_MOST", 2)
    entries = [entry(number) for number in range(1, 4)]
    with pytest.raises(ExportRefused, match="Entries would have more rows"):
        write_workbook(content_of(*entries), tmp_path / "audit.xlsx")
    assert list(tmp_path.iterdir()) == []


def test_that_every_decay_test_has_its_curve(workbook: Path) -> None:
    tests = sheet_rows(workbook, "Decay tests")
    with ZipFile(workbook) as archive:
        charts = [name for name in archive.namelist() if name.startswith("xl/charts/chart")]
        drawn = [archive.read(name).decode() for name in charts]
    assert len(tests) == 4
    assert len(charts) == len(tests) + 2  # and usage by month, and what cylinders hold
    # The wet test's readings stand beside the references, for viewers that do not look them up.
    readings = [row for row in sheet_rows(workbook, "Decay readings") if row["Job"] == "B-0003"]
    value = f"<v>{readings[0]['Pressure [Pa]']!r}</v>"
    assert sum(value in chart.replace("c:v", "v") for chart in drawn) == 1


def test_that_a_test_done_again_is_shown_with_why_the_first_does_not_count(workbook: Path) -> None:
    tests = [row for row in sheet_rows(workbook, "Decay tests") if row["Job"] == "B-0003"]
    assert [row["Verdict"] for row in tests] == ["moisture", "tight"]
    assert tests[0]["Counts"].startswith("reversed: First decay test levelled off: wet")
    assert tests[1]["Counts"] == "yes"


def test_that_a_line_nobody_ticked_is_told_from_a_step_set_aside(workbook: Path) -> None:
    rows = sheet_rows(workbook, "Checklists")
    states = {(row["Job"], row["Step"]): set() for row in rows}  # type: ignore[var-annotated]
    for row in rows:
        states[row["Job"], row["Step"]].add(row["State"])
    assert states["B-0001", "Safety"] == {"step set aside"}
    assert states["B-0010", "Weigh-in"] == {"ticked", "NOT TICKED"}
