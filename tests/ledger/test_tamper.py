"""Somebody with a database tool at the file: verify names the entry, whatever was changed."""

import hashlib
import sqlite3
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from chargebench.ledger import Checkpoint, Reader
from chargebench.ledger.entry import canonical, chained
from tests.ledger import books
from tests.ledger.books import BY

WEIGH_IN = 11  # the number of the weigh-in whose entry or mass lines are tampered with
ENTRY = "UPDATE entry SET {} WHERE number = 11"
TRANSFER = "UPDATE transfer SET {} WHERE entry = 11 AND line = 0"


def _changes() -> Iterator[Any]:
    """Every column of an entry and of a mass line, text and hashes at start, middle and end."""
    texts = {
        ENTRY: ("id", "bench", "kind", "job", "happened_at", "recorded_at", '"by"', "payload"),
        TRANSFER: ("source", "target", "refrigerant", "as_typed"),
    }
    for statement, columns in texts.items():
        table = "entry" if statement is ENTRY else "transfer"
        for column in columns:
            for place in ("1", f"(length({column}) + 1) / 2", f"length({column})"):
                change = (
                    f"{column} = substr({column}, 1, {place} - 1) || "
                    f"CASE substr({column}, {place}, 1) WHEN '~' THEN '!' ELSE '~' END || "
                    f"substr({column}, {place} + 1)"
                )
                yield pytest.param(statement.format(change), id=f"{table}.{column} at {place}")
    for column in ("previous_hash", "hash"):
        for at in (1, 16, 32):
            change = (
                f"{column} = CAST(substr({column}, 1, {at - 1}) || "
                f"CASE substr({column}, {at}, 1) WHEN x'7e' THEN x'21' ELSE x'7e' END || "
                f"substr({column}, {at + 1}) AS BLOB)"
            )
            yield pytest.param(ENTRY.format(change), id=f"entry.{column} byte {at}")
    for change in ("number = 900", "happened_us = happened_us + 1", "job = NULL", "job = 'null'"):
        yield pytest.param(ENTRY.format(change), id=f"entry.{change}")
    yield pytest.param(ENTRY.format("payload = payload || ' '"), id="a space in the payload")
    yield pytest.param(
        ENTRY.format("payload = CAST(x'7bff7d' AS TEXT)"), id="bytes that are no text"
    )
    yield pytest.param(
        ENTRY.format("\"by\" = CAST(x'4eff' AS TEXT)"), id="bytes that are no text in a name"
    )
    yield pytest.param("UPDATE entry SET position = 900 WHERE number = 11", id="entry.position")
    for change in ("mass_mg = mass_mg + 1", "mass_mg = 0", "line = 7", "entry = 5", "entry = 900"):
        yield pytest.param(TRANSFER.format(change), id=f"transfer.{change}")
    yield pytest.param(
        TRANSFER.format("as_typed = CAST(x'ff' AS TEXT)"), id="a mass line that is no text"
    )


@pytest.mark.parametrize("change", list(_changes()))
def test_that_a_changed_value_names_its_entry(path: Path, change: str) -> None:
    with books.database_tool(path) as tool:
        assert tool.execute(change).rowcount == 1
    assert WEIGH_IN in books.named(path)


@pytest.mark.parametrize(
    "change",
    [
        "DELETE FROM entry WHERE number = 11",
        "DELETE FROM transfer WHERE entry = 11 AND line = 1",
        "DELETE FROM transfer WHERE entry = 11",
        "INSERT INTO transfer VALUES (11, 2, 'supplier', 'outside', 'R290', 1, '1 mg')",
        "DELETE FROM reversed_entry",
    ],
)
def test_that_a_removed_or_added_row_names_its_entry(path: Path, change: str) -> None:
    with books.database_tool(path) as tool:
        assert tool.execute(change).rowcount > 0
    named = books.named(path)
    assert (10 if "reversed" in change else WEIGH_IN) in named


def test_that_an_entry_removed_with_all_that_hangs_on_it_is_missed(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM transfer WHERE entry = 11")
        tool.execute("DELETE FROM entry WHERE number = 11")
        tool.execute(
            "UPDATE balance SET mass_mg = mass_mg + CASE place WHEN 'cylinder:C-014' THEN 99523 "
            "WHEN 'atmosphere' THEN -300 ELSE -99223 END WHERE place <> 'supplier'"
        )
        tool.execute("UPDATE day_total SET mass_mg = 0, lines = 0 WHERE source = 'cylinder'")
    found = books.verified(path)
    assert [problem.entry for problem in found.problems] == [11]
    assert "11 of bench B is missing" in found.problems[0].what


def test_that_of_two_entries_swapped_far_apart_only_they_are_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        last = tool.execute("SELECT max(number) FROM entry").fetchone()[0]
        for was, becomes in ((3, -1), (last - 1, 3), (-1, last - 1)):
            tool.execute("UPDATE entry SET number = ? WHERE number = ?", (becomes, was))
    out = [p.entry for p in books.verified(path).problems if "out of its place" in p.what]
    assert (len(out), set(out)) == (2, {3, last - 1})
    assert not [p for p in books.verified(path).problems if "missing" in p.what]


def test_that_a_number_far_beyond_the_rest_is_told_briefly(path: Path) -> None:
    with books.database_tool(path) as tool:
        last = tool.execute("SELECT max(number) FROM entry").fetchone()[0]
        tool.execute("UPDATE entry SET number = ? WHERE number = ?", (10**12, last))
    missing = [p for p in books.verified(path).problems if "missing" in p.what]
    assert [p.entry for p in missing] == list(range(last, last + 20))
    assert f"So are {10**12 - last - 20} more" in " ".join(
        p.what for p in books.verified(path).problems
    )


COLUMNS = 'id, kind, job, happened_at, recorded_at, "by", payload, happened_us'


@pytest.mark.parametrize(
    "columns",
    ["payload", "number", "previous_hash, hash", COLUMNS, f"{COLUMNS}, previous_hash, hash"],
)
def test_that_two_swapped_entries_are_both_named(path: Path, columns: str) -> None:
    names = columns.split(", ")
    with books.database_tool(path) as tool:
        rows = tool.execute(
            f"SELECT {columns} FROM entry WHERE position IN (9, 11) ORDER BY position"  # noqa: S608
        ).fetchall()
        blank = ", ".join(f"{name} = ?" for name in names)
        if "number" in names or "id" in names:
            aside = "number = 900" if "number" in names else "id = 'aside'"
            tool.execute(f"UPDATE entry SET {aside} WHERE position = 9")  # noqa: S608
        tool.execute(f"UPDATE entry SET {blank} WHERE position = 11", rows[0])  # noqa: S608
        tool.execute(f"UPDATE entry SET {blank} WHERE position = 9", rows[1])  # noqa: S608
    assert {9, 11} <= books.named(path)


def test_that_swapped_mass_lines_name_their_entry(path: Path) -> None:
    with books.database_tool(path) as tool:
        for line, turned in ((0, 7), (1, 0), (7, 1)):
            tool.execute(f"UPDATE transfer SET line = {turned} WHERE entry = 11 AND line = {line}")  # noqa: S608
    assert WEIGH_IN in books.named(path)


def test_that_mass_lines_swapped_between_entries_name_both(path: Path) -> None:
    with books.database_tool(path) as tool:
        for was, becomes in ((9, 900), (11, 9), (900, 11)):
            tool.execute(f"UPDATE transfer SET entry = {becomes} WHERE entry = {was}")  # noqa: S608
    assert {9, 11} <= books.named(path)


def _forge(tool: sqlite3.Connection, number: int, *, previous: bytes) -> bytes:
    """Add an entry whose hash is as it should be behind `previous`."""
    values = ["forged", "B", number, "weighed", None, "2026-03-02T12:00:00+01:00", "t", BY, "{}"]
    digest = chained(previous, canonical(values, []))
    tool.execute(
        "INSERT INTO entry VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)",
        [number, *values, previous, digest, 1772449200000000],
    )
    return digest


def _head(tool: sqlite3.Connection) -> bytes:
    digest = tool.execute("SELECT hash FROM head").fetchone()[0]
    assert isinstance(digest, bytes)
    return digest


def test_that_an_entry_added_behind_the_head_is_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        _forge(tool, 13, previous=_head(tool))
    assert books.named(path) == {13}


def test_that_an_entry_added_with_another_chain_is_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        digest = _forge(tool, 13, previous=hashlib.sha256(b"other").digest())
        tool.execute("UPDATE head SET number = 13, hash = ?", (digest,))
    assert books.named(path) == {13}


def _cut_off_last(tool: sqlite3.Connection) -> None:
    """Take the job's end away, and everything in the file that still speaks of it but exports."""
    tool.execute("DELETE FROM entry WHERE number = 12")
    last = tool.execute("SELECT number, hash FROM entry WHERE number = 11").fetchone()
    tool.execute("UPDATE head SET number = ?, hash = ?", last)
    tool.execute("UPDATE job SET state = 'open', closed_at = NULL")


def test_that_a_cut_off_end_is_named_by_the_kept_head(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM entry WHERE number = 12")
    assert 12 in books.named(path)


def test_that_a_cut_off_end_is_named_by_the_head_kept_at_an_export(path: Path) -> None:
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
    found = books.verified(path)
    assert [problem.entry for problem in found.problems] == [12]
    assert "entries 12 to 12 are gone" in found.problems[0].what


def test_that_a_cut_off_end_is_named_by_a_head_kept_elsewhere(path: Path) -> None:
    with Reader.open_reading(path) as reader:
        kept = Checkpoint("B", *reader.head(), "manifest of March")
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
        tool.execute("DELETE FROM checkpoint")
    assert books.verified(path).ok  # what a chain can not prove, as the limits say
    assert [problem.entry for problem in books.verified(path, kept).problems] == [12]


def test_that_a_rewritten_end_is_named_by_a_head_kept_at_an_export(path: Path) -> None:
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
        tool.execute("DELETE FROM head")
        last = tool.execute("SELECT hash FROM entry WHERE number = 11").fetchone()[0]
        digest = _forge(tool, 12, previous=last)
        tool.execute("INSERT INTO head VALUES ('B', 12, ?)", (digest,))
    found = books.verified(path)
    assert [problem.entry for problem in found.problems] == [12]
    assert "is not the one that stood when a head was kept" in found.problems[0].what
