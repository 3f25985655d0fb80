"""An export narrowed to equipment, refrigerant or person, or to a period: balances still close."""

from datetime import date
from pathlib import Path

import pytest

from chargebench.__main__ import main
from chargebench.desk import Desk, Filters, sample
from chargebench.errors import ChargebenchError
from chargebench.reports import Selection
from chargebench.reports.workbook import write_workbook
from tests.reports.books import CHARGED, RECEIVED, entry, sheet_rows

CHOSEN = {
    "equipment": Filters(equipment="E-003"),
    "refrigerant": Filters(refrigerant="R290"),
    "person": Filters(by="P-02"),
    "all three": Filters(equipment="E-005", refrigerant="R404A", by="P-02"),
}


def narrowed(
    shop: Desk,
    folder: Path,
    filters: Filters,
    since: date | None = None,
    until: date | None = None,
) -> Path:
    """A workbook of the sample shop, narrowed."""
    path = folder / "audit.xlsx"
    write_workbook(shop.content(since, until, filters), path)
    return path


@pytest.mark.parametrize("filters", CHOSEN.values(), ids=CHOSEN)
def test_that_balances_close_though_other_entries_are_left_out(
    shop: Desk, tmp_path: Path, filters: Filters
) -> None:
    rows = sheet_rows(narrowed(shop, tmp_path, filters), "Balances")
    assert rows
    for row in rows:
        moved = row["In [kg]"] - row["Out [kg]"] + row["By entries not shown [kg]"]
        assert row["Opening [kg]"] + moved == pytest.approx(row["Closing [kg]"], abs=1e-9)
        assert row["Difference [kg]"] == 0
    held = {each.place: each.mass_mg for each in shop.reading.balances("cylinder:")}
    for row in rows:
        if row["Place"] in held:  # what the cylinder holds, whatever is shown
            assert round(row["Closing [kg]"] * 1_000_000) == held[row["Place"]]


def test_that_an_equipment_s_workbook_holds_its_jobs_and_nothing_of_others(
    shop: Desk, tmp_path: Path
) -> None:
    path = narrowed(shop, tmp_path, CHOSEN["equipment"])
    jobs = {row["Job"]: row["Equipment"] for row in sheet_rows(path, "Jobs")}
    assert set(jobs.values()) == {"E-003"}
    assert len(jobs) == 3
    assert {row["Job"] for row in sheet_rows(path, "Transfers")} == set(jobs)
    for sheet in ("Leak rates", "Equipment", "After repairs"):
        assert {row["Equipment"] for row in sheet_rows(path, sheet)} == {"E-003"}
    abouts = {row["About"] for row in sheet_rows(path, "Due dates")}
    assert "equipment:E-007" not in abouts
    assert "equipment:E-003" in abouts


def test_that_a_refrigerant_s_workbook_moves_that_refrigerant_only(
    shop: Desk, tmp_path: Path
) -> None:
    path = narrowed(shop, tmp_path, CHOSEN["refrigerant"])
    for sheet in ("Transfers", "Balances", "Refrigerants", "Cylinders", "Equipment"):
        assert {row["Refrigerant"] for row in sheet_rows(path, sheet)} == {"R290"}
    # The received cylinder and the freezer's job: the sample files hold these two.
    assert {row["Entry kind"] for row in sheet_rows(path, "Transfers")} >= {"received"}
    assert {row["Job"] for row in sheet_rows(path, "Jobs")} == {"B-0010"}


def test_that_a_person_s_workbook_holds_what_they_signed(shop: Desk, tmp_path: Path) -> None:
    path = narrowed(shop, tmp_path, CHOSEN["person"])
    for sheet in ("Entries", "Transfers", "As typed", "Recovery", "Weighings"):
        assert {row["By"] for row in sheet_rows(path, sheet)} == {"L. Brandvold"}
    signed = {e.number for e in shop.reading.entries() if e.by == "P-02"}
    assert {row["Entry"] for row in sheet_rows(path, "Entries")} == signed


def test_that_the_command_line_narrows_an_export(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "shop.chargebench"
    sample.build(file).close()
    out = ["--shop", str(file), "export", "--out", str(tmp_path / "out")]
    assert main([*out, "--refrigerant", "R290", "--person", "N. Okafor"]) == 0
    jobs = sheet_rows(tmp_path / "out" / "audit.xlsx", "Jobs")
    assert [(row["Equipment"], row["Refrigerant"]) for row in jobs] == [("E-001", "R290")]
    assert main([*out, "--equipment", "E-999"]) == 1
    assert "Expected an equipment on record (E-001" in capsys.readouterr().err


def test_that_a_person_may_be_named_by_name(shop: Desk) -> None:
    assert shop.selection(Filters(by="L. Brandvold")) == shop.selection(Filters(by="P-02"))


def test_that_the_summary_says_what_is_shown(shop: Desk, tmp_path: Path) -> None:
    path = narrowed(shop, tmp_path, CHOSEN["all three"])
    said = {row["What"]: row["Value"] for row in sheet_rows(path, "Summary")}
    shown = said["Records shown"]
    assert shown.startswith("equipment E-005, refrigerant R404A, person L. Brandvold.")
    assert "gaps" in shown


@pytest.mark.parametrize(
    ("filters", "says"),
    [
        (Filters(equipment="E-999"), "an equipment on record"),
        (Filters(refrigerant="R12"), "a refrigerant on record"),
        (Filters(by="nobody"), "a person on record"),
    ],
)
def test_that_what_is_not_on_record_is_refused_with_what_is(
    shop: Desk, filters: Filters, says: str
) -> None:
    with pytest.raises(ChargebenchError, match=says):
        shop.content(filters=filters)


def test_that_a_period_opens_with_what_the_one_before_closed_with(
    shop: Desk, tmp_path: Path
) -> None:
    spring = narrowed(shop, tmp_path, Filters(), date(2026, 1, 1), date(2026, 6, 30))
    closed = {
        (row["Place"], row["Refrigerant"]): row["Closing [kg]"]
        for row in sheet_rows(spring, "Balances")
    }
    autumn = narrowed(shop, tmp_path, Filters(), date(2026, 7, 1), date(2026, 12, 31))
    for row in sheet_rows(autumn, "Balances"):
        before = closed.get((row["Place"], row["Refrigerant"]), 0)
        assert row["Opening [kg]"] == pytest.approx(before, abs=1e-9)
        assert row["Difference [kg]"] == 0


def test_that_a_period_without_entries_makes_a_workbook_that_keeps_the_stock(
    shop: Desk, tmp_path: Path
) -> None:
    path = narrowed(shop, tmp_path, Filters(), date(2031, 1, 1), date(2031, 12, 31))
    assert sheet_rows(path, "Transfers") == [
        {"Bench": "Nothing was recorded in this period."}
        | dict.fromkeys(list(sheet_rows(path, "Transfers")[0])[1:])
    ]
    for row in sheet_rows(path, "Balances"):
        assert row["In [kg]"] == row["Out [kg]"] == row["Difference [kg]"] == 0
        assert row["Opening [kg]"] == row["Closing [kg]"]


# What an entry of one job moved of two refrigerants: of R290 only its own line is shown.
def test_that_of_an_entry_only_lines_of_the_refrigerant_are_shown() -> None:
    both = entry(1, CHARGED, RECEIVED.turned())
    other = Selection(refrigerant="R32")
    assert other.of(both) is None
    shown = Selection(refrigerant="R290").of(both)
    assert shown is not None
    assert shown.transfers == both.transfers
