"""LibreOffice opens the workbook, works its formulas out anew, and comes to the program's totals.

The values the program wrote beside its formulas are taken out first, so that what is compared is
what LibreOffice worked out itself.
"""

import re
import shutil
import subprocess
from pathlib import Path
from zipfile import ZIP_DEFLATED, ZipFile

import pytest
from openpyxl import load_workbook

from chargebench.desk import Desk
from chargebench.ledger import Transfer
from chargebench.reports.table import HEAD_ROW
from chargebench.reports.workbook import write_workbook
from tests.reports.books import content_of, entry, sheet_rows

SOFFICE = shutil.which("soffice")
pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(
        SOFFICE is None,
        reason="LibreOffice (soffice) is not on this machine: recalculation was NOT checked",
    ),
]
FORMULA = re.compile(rb"(</f>)<v>[^<]*</v>")


def _without_values(path: Path, into: Path, change: tuple[bytes, bytes] | None = None) -> Path:
    """The workbook with no value beside any formula; optionally one text in a sheet changed."""
    taken_out = changed = 0
    with ZipFile(path) as source, ZipFile(into, "w", ZIP_DEFLATED) as target:
        for name in source.namelist():
            part = source.read(name)
            if name.startswith("xl/worksheets/sheet"):
                part, count = FORMULA.subn(rb"\1", part)
                taken_out += count
                if change is not None and change[0] in part:
                    part = part.replace(*change, 1)
                    changed += 1
            target.writestr(name, part)
    assert taken_out > 0
    assert change is None or changed == 1
    return into


def _recalculated(path: Path, folder: Path) -> Path:
    """The workbook as LibreOffice saves it again."""
    assert SOFFICE is not None
    out = folder / "again"
    subprocess.run(
        [
            SOFFICE,
            f"-env:UserInstallation={(folder / 'profile').as_uri()}",
            "--headless",
            "--convert-to",
            "xlsx:Calc MS Excel 2007 XML",
            "--outdir",
            str(out),
            str(path),
        ],
        check=True,
        capture_output=True,
        timeout=180,
    )
    return out / path.name


@pytest.fixture(scope="module")
def recalculated(workbook: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("office")
    return _recalculated(_without_values(workbook, folder / "audit.xlsx"), folder)


def test_that_libreoffice_comes_to_the_program_s_month_totals(
    workbook: Path, recalculated: Path
) -> None:
    ours = sheet_rows(workbook, "Totals by month")
    theirs = sheet_rows(recalculated, "Totals by month")
    assert len(theirs) == len(ours) > 20
    for our, their in zip(ours, theirs, strict=True):
        assert their["Control total [kg]"] == pytest.approx(our["Program's total [kg]"], abs=1e-9)
        assert their["Difference [kg]"] == 0


def test_that_libreoffice_comes_to_the_program_s_balances(
    workbook: Path, recalculated: Path
) -> None:
    ours, theirs = sheet_rows(workbook, "Balances"), sheet_rows(recalculated, "Balances")
    assert [row["Control closing [kg]"] for row in theirs] == pytest.approx(
        [row["Closing [kg]"] for row in ours], abs=1e-9
    )


def test_that_opening_in_and_out_come_to_the_closing_balance(recalculated: Path) -> None:
    for sheet in ("Balances", "Stock by refrigerant"):
        rows = sheet_rows(recalculated, sheet)
        assert rows
        for row in rows:
            came = row["Opening [kg]"] + row["In [kg]"] - row["Out [kg]"]
            assert came == pytest.approx(row["Closing [kg]"], abs=1e-9)
            assert row["Difference [kg]"] == 0


def test_that_libreoffice_finds_the_ledger_s_balances_to_the_milligram(
    shop: Desk, recalculated: Path
) -> None:
    held = {
        (each.place, each.refrigerant): each.mass_mg
        for each in shop.reading.balances("cylinder:")
        if each.mass_mg
    }
    shown = {
        (row["Place"], row["Refrigerant"]): round(row["Control closing [kg]"] * 1_000_000)
        for row in sheet_rows(recalculated, "Balances")
        if row["Kind of place"] == "cylinder" and row["Control closing [kg]"]
    }
    assert shown == held


@pytest.mark.parametrize("sheet", ["Usage by month", "Recovered by month", "Stock by refrigerant"])
def test_that_libreoffice_comes_to_the_values_written_beside_formulas(
    workbook: Path, recalculated: Path, sheet: str
) -> None:
    ours, theirs = sheet_rows(workbook, sheet), sheet_rows(recalculated, sheet)
    assert len(ours) == len(theirs) > 0
    for our, their in zip(ours, theirs, strict=True):
        assert their == {
            head: value if isinstance(value, str) else pytest.approx(value, abs=1e-9)
            for head, value in our.items()
        }


def test_that_libreoffice_comes_to_the_program_s_totals_of_each_refrigerant(
    workbook: Path, recalculated: Path
) -> None:
    ours, theirs = sheet_rows(workbook, "Refrigerants"), sheet_rows(recalculated, "Refrigerants")
    for our, their in zip(ours, theirs, strict=True):
        assert their == {
            head: value if isinstance(value, str) else pytest.approx(value, abs=1e-9)
            for head, value in our.items()
        }


def test_that_a_mass_changed_in_the_sheet_shows_in_its_control_total(
    workbook: Path, tmp_path: Path
) -> None:
    # The freezer's charge, 88 401 mg, made one gram more in the counted column.
    change = (b"<v>88401</v>", b"<v>89401</v>")
    again = _recalculated(_without_values(workbook, tmp_path / "audit.xlsx", change), tmp_path)
    off = [row for row in sheet_rows(again, "Totals by month") if row["Difference [kg]"] != 0]
    assert [(row["Refrigerant"], row["Movement"]) for row in off] == [("R290", "charged")]
    assert off[0]["Difference [kg]"] == pytest.approx(0.001)
    summary = {row["What"]: row["Value"] for row in sheet_rows(again, "Summary")}
    assert int(summary["Month totals that differ from their control"]) == 1


def test_that_text_like_a_formula_is_not_calculated(tmp_path: Path) -> None:
    risky = ("=1+1", "+1+1", "-1+1", "@SUM(1;1)", "_x0041_ & <b>", '=HYPERLINK("http://x";"y")')
    entries = [
        entry(number, Transfer("supplier", "cylinder:C-014", "R290", 1, text))
        for number, text in enumerate(risky, 1)
    ]
    path = tmp_path / "audit.xlsx"
    write_workbook(content_of(*entries), path)
    sheet = load_workbook(_recalculated(path, tmp_path))["Transfers"]
    cells = [sheet.cell(HEAD_ROW + at, 11) for at in range(1, len(risky) + 1)]
    assert [(cell.value, cell.data_type) for cell in cells] == [(text, "s") for text in risky]
