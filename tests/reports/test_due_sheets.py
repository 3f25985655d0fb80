"""An auditor's exercise: from the workbook alone every leak rate and every day due comes again."""

import calendar
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest

from tests.reports.books import sheet_rows


@pytest.fixture(scope="module")
def rates(workbook: Path) -> list[dict[str, Any]]:
    """Rows of the leak rate sheet that stand on an addition."""
    rows = sheet_rows(workbook, "Leak rates")
    return [row for row in rows if row["Added on"] is not None]


@pytest.fixture(scope="module")
def due(workbook: Path) -> list[dict[str, Any]]:
    return sheet_rows(workbook, "Due dates")


def numbers(text: str | None) -> list[int]:
    return [int(number) for number in str(text or "").split(", ") if number]


# 40 CFR 82.152, leak rate: the annualizing and the rolling average formula, from the cells.
def test_that_every_leak_rate_comes_again_from_its_own_row(rates: list[dict[str, Any]]) -> None:
    for row in rates:
        charge = row["Full charge [kg]"]
        share = 100 * row["Added [kg]"] / charge
        days = min(row["Since last addition [d]"], 365)
        assert row["Annualizing [%]"] == pytest.approx(share * 365 / days, abs=1e-9)
        rolling = 100 * row["Added since [kg]"] / charge
        assert row["Rolling average [%]"] == pytest.approx(rolling, abs=1e-9)
        counts = row["Annualizing [%]"] if "annual" in row["Method"] else rolling
        assert row["Rate that counts [%]"] == pytest.approx(counts)
        assert row["State"] == ("over" if counts > row["Threshold [%]"] else "not over")
    assert {row["Equipment"] for row in rates} == {"E-003", "E-007", "E-008"}


def test_that_every_addition_comes_again_from_its_transfers(
    rates: list[dict[str, Any]], workbook: Path
) -> None:
    moved: dict[int, float] = {}
    for row in sheet_rows(workbook, "Transfers"):
        if "E-0" in row["Into"]:
            moved[row["Entry"]] = moved.get(row["Entry"], 0.0) + row["Mass [kg]"]
    for row in rates:
        added = sum(moved[number] for number in numbers(row["Entries of the addition"]))
        assert added == pytest.approx(row["Added [kg]"], abs=1e-6)
        since = sum(moved[number] for number in numbers(row["Entries since"]))
        assert since == pytest.approx(row["Added since [kg]"], abs=1e-6)


def later(start: date, span: str) -> date:
    """So many days, months or years later, by the calendar of the standard library."""
    count, unit = span.split()
    if unit == "day":
        return start + timedelta(days=int(count))
    month = start.month - 1 + int(count) * (12 if unit == "year" else 1)
    year, month = start.year + month // 12, month % 12 + 1
    return date(year, month, min(start.day, calendar.monthrange(year, month)[1]))


def day(cell: datetime | None) -> date | None:
    return None if cell is None else cell.date()


def test_that_every_day_due_is_its_start_and_its_span(due: list[dict[str, Any]]) -> None:
    spanned = 0
    for row in due:
        start, span = day(row["Runs from"]), row["Span of the rule"]
        if start is None or not span:
            continue
        put_off = day(row["Put off to"])
        if span.count("-") == 1:  # a day of the next year, such as 03-01
            expected = date.fromisoformat(f"{start.year + 1}-{span}")
        else:
            expected = put_off or later(start, span)
        assert day(row["Due"]) == expected, row
        spanned += 1
    assert spanned > 10


def test_that_rows_name_their_entries_and_what_ended_them(
    due: list[dict[str, Any]], workbook: Path
) -> None:
    last = max(row["Entry"] for row in sheet_rows(workbook, "Entries"))
    assert [row["Due"] for row in due] == sorted(row["Due"] for row in due)
    for row in due:
        named = numbers(row["Worked out from entries"]) + numbers(row["Ended by entries"])
        assert all(1 <= number <= last for number in named)
        assert (row["State"] == "done") is (row["Done on"] is not None) or "records" in row["About"]
    leaks = [row for row in due if row["Regulation"] == "84.106"]
    assert all(numbers(row["Worked out from entries"]) for row in leaks)
    ended = [row for row in leaks if row["State"] == "done"]
    assert ended
    assert all(numbers(row["Ended by entries"]) for row in ended)
    assert {"done", "open"} <= {row["State"] for row in leaks}


def test_that_retention_says_until_when_each_job_is_kept(workbook: Path) -> None:
    rows = sheet_rows(workbook, "Retention")
    closed = [row for row in rows if row["Closed or retired"] is not None]
    assert len(closed) > 5
    for row in closed:
        ended, until = day(row["Closed or retired"]), day(row["Kept until"])
        assert ended is not None
        assert until == later(ended, row["Kept for"])
    going_on = [row for row in rows if row["Closed or retired"] is None]
    assert going_on
    assert {(row["Kept until"], row["May be archived"]) for row in going_on} == {(None, "no")}


# 82.157(l)(5): dates, locations of the repaired leaks tested, type and result of each test.
def test_that_tests_of_repaired_leaks_stand_with_what_an_inspector_asks(workbook: Path) -> None:
    rows = sheet_rows(workbook, "After repairs")
    walk_in = [row for row in rows if row["Equipment"] == "E-003"]
    assert len(walk_in) == 4
    assert {row["What"] for row in walk_in} == {
        "initial verification test",
        "follow-up verification test",
    }
    assert all(row["On"] and row["Repaired leak, ground or reference"] for row in walk_in)
    assert {row["Result, or until"] for row in walk_in} == {"tight"}
    (more,) = (row for row in rows if row["What"] == "more time for the repair")
    assert (more["Equipment"], more["Result, or until"]) == ("E-007", "2027-01-31")
    assert more["By"] == "R. Quill"
