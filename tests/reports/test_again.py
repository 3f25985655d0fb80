"""The same records make the same workbook, protected against slips, and it says which they are."""

import json
from collections import Counter
from dataclasses import replace
from datetime import datetime
from pathlib import Path
from typing import Any
from zipfile import ZipFile

from openpyxl import load_workbook

from chargebench.desk import sample
from chargebench.reports import AuditContent
from chargebench.reports.sheets import ORDER
from chargebench.reports.workbook import write_workbook
from tests.reports.books import sheet_rows


def test_that_exporting_again_gives_the_same_workbook_byte_for_byte(tmp_path: Path) -> None:
    with sample.build(tmp_path / "shop.chargebench") as desk:
        desk.export(tmp_path / "one")
        desk.export(tmp_path / "two")
    one, two = (tmp_path / folder / "audit.xlsx" for folder in ("one", "two"))
    assert one.read_bytes() == two.read_bytes()
    said = json.loads((tmp_path / "one" / "manifest.json").read_text("utf-8"))
    assert datetime.fromisoformat(said["made_at"]).utcoffset() is not None
    with ZipFile(one) as archive:
        assert {info.date_time for info in archive.infolist()} == {(1980, 1, 1, 0, 0, 0)}


def test_that_every_sheet_is_protected_without_a_password(workbook: Path) -> None:
    for sheet in load_workbook(workbook).worksheets:
        assert sheet.protection.sheet
        assert sheet.protection.password is None
        assert not sheet.protection.autoFilter  # false: not kept from it
    book = load_workbook(workbook)["Summary"]
    said = " ".join(str(cell.value) for column in book.iter_cols() for cell in column)
    assert "protected against slips, without a password" in said
    assert "stands in the manifest" in said


def test_that_properties_carry_program_rule_sets_and_chain_head(
    workbook: Path, content: AuditContent
) -> None:
    book: Any = load_workbook(workbook)
    said = {each.name: each.value for each in book.custom_doc_props.props}
    number, digest = content.chain_head
    assert said["Program"] == content.program
    assert said["Chain head, entry"] == str(number)
    assert said["Chain head, SHA-256"] == digest
    assert content.rule_set.name in said["Rule set"]
    assert said["Rule sets steps were judged by"] == "us-federal 2026-09-25"
    assert book.properties.created == book.properties.modified


def test_that_every_sheet_prints_wide_with_its_head_on_each_page(workbook: Path) -> None:
    book: Any = load_workbook(workbook)
    for sheet in book.worksheets:
        assert sheet.page_setup.orientation == "landscape"
        assert sheet.page_setup.fitToHeight == 0
        assert sheet.page_setup.fitToWidth >= 1
        assert sheet.print_title_rows == "$4:$4"
        assert (sheet.print_title_cols is not None) == (sheet.page_setup.fitToWidth > 1)
        assert "Larkmoor Cold" in sheet.oddHeader.left.text
        assert sheet.oddFooter.right.text == "page &P of &N"


def test_that_figures_lead_to_entries_that_are_in_the_workbook(workbook: Path) -> None:
    known = {(row["Bench"], row["Entry"]) for row in sheet_rows(workbook, "Entries")}
    followed = set()
    for sheet in ORDER:
        for row in sheet_rows(workbook, sheet):
            if {"Bench", "Entry"} <= row.keys() and row["Entry"] is not None:
                assert (row["Bench"], row["Entry"]) in known, (sheet, row)
                followed.add(sheet)
    assert followed >= {
        "Transfers", "Work done", "Disposals", "Purchases", "Handed over", "Readings",
        "Leak searches", "Pressure tests", "Recovery", "Decay tests", "Weigh-ins", "Weighings",
        "Changes",
    }  # fmt: skip


def test_that_a_thing_met_under_two_ids_stands_under_the_one_it_goes_by(
    tmp_path: Path, content: AuditContent
) -> None:
    path = tmp_path / "audit.xlsx"
    write_workbook(replace(content, names={"cylinder:C-014": "cylinder:C-1"}), path)
    ends = {row["From"] for row in sheet_rows(path, "Transfers")}
    assert "cylinder:C-1" in ends
    assert "cylinder:C-014" not in ends


def test_that_totals_and_balances_come_again_from_the_transfers_alone(workbook: Path) -> None:
    moved = sheet_rows(workbook, "Transfers")
    for row in sheet_rows(workbook, "Balances"):
        at = row["Place"]
        came, went = (
            sum(
                line["Mass [mg]"]
                for line in moved
                if (line[end], line["Refrigerant"]) == (at, row["Refrigerant"])
            )
            for end in ("Into", "From")
        )
        opening, closing = (round(row[f"{end} [kg]"] * 1_000_000) for end in ("Opening", "Closing"))
        assert opening + came - went == closing
    for row in sheet_rows(workbook, "Totals by month"):
        counted = sum(
            line["Counted [mg]"]
            for line in moved
            if (line["Month"], line["Refrigerant"], line["Counts as"])
            == (row["Month"], row["Refrigerant"], row["Movement"])
        )
        assert counted == round(row["Program's total [kg]"] * 1_000_000)


# 40 CFR 82.156(a)(3)(ii), (iii): monthly total recovered by type, quantity sent away by type.
def test_that_the_monthly_statement_comes_again_from_recoveries_and_hand_overs(
    workbook: Path,
) -> None:
    statement = sheet_rows(workbook, "Recovered by month")
    for sheet, column, told in (
        ("Recovery", "Recovered in all [kg]", "Recovered [kg]"),
        ("Handed over", "Net mass [kg]", "Sent for reclaim [kg]"),
        ("Disposals", "Recovered [kg]", "Of it, from equipment disposed of [kg]"),
    ):
        sums: Counter[tuple[str, str]] = Counter()
        for row in sheet_rows(workbook, sheet):
            on = row["At"] if "At" in row else row["Recovered on"]
            sums[f"{on:%Y-%m}", row["Refrigerant"]] += round((row[column] or 0) * 1_000_000)
        shown = {
            (row["Month"], row["Refrigerant"]): round(row[told] * 1_000_000) for row in statement
        }
        assert +sums == +Counter(shown), sheet
