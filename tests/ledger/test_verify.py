"""Somebody with a database tool at the file: verify names the entry, whatever was changed."""

import hashlib
import sqlite3
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from chargebench.errors import ShopFileRefused
from chargebench.ledger import Checkpoint, Ledger, NewEntry, Reader, Verification
from chargebench.ledger.entry import canonical, chained
from tests.ledger import books
from tests.ledger.books import BY, NOON

WEIGH_IN = 11  # the number of the weigh-in whose entry or mass lines are tampered with
ENTRY = "UPDATE entry SET {} WHERE number = 11"
TRANSFER = "UPDATE transfer SET {} WHERE entry = 11 AND line = 0"


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A shop file with one whole job, closed."""
    file = tmp_path / "larkmoor.chargebench"
    with Ledger.create(file) as ledger:
        books.whole_job(ledger)
        weigh_in = list(ledger.entries(kind="step-signed"))[-1]
        assert weigh_in.number == WEIGH_IN
        assert len(weigh_in.transfers) == 2
        ledger.keep_checkpoint("export")
    return file


def _verified(path: Path, *outside: Checkpoint) -> Verification:
    with Reader.open_reading(path, guarded=False) as reader:
        return reader.verify(checkpoints=outside)


def _named(path: Path) -> set[int | None]:
    return {problem.entry for problem in _verified(path).problems}


def test_that_an_untouched_ledger_verifies_and_says_what_was_checked(path: Path) -> None:
    found = _verified(path)
    assert found.ok
    assert found.problems == ()
    assert found.checked[0].startswith("12 entries were read (bench B: 12 entries)")
    assert "7 mass lines" in found.checked[1]
    assert any("can not" in sentence for sentence in found.limits)


def test_that_progress_is_told_and_can_stop_the_check(path: Path) -> None:
    told: list[tuple[int, int]] = []
    with Reader.open_reading(path) as reader:
        reader.verify(lambda done, total: told.append((done, total)))
        assert told[-1] == (12, 12)

        def stop(_done: int, _total: int) -> None:
            raise InterruptedError

        with pytest.raises(InterruptedError):
            reader.verify(stop)
        assert reader.verify().ok


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
    assert WEIGH_IN in _named(path)


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
    named = _named(path)
    assert (10 if "reversed" in change else WEIGH_IN) in named


def test_that_an_entry_removed_with_all_that_hangs_on_it_is_missed(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM transfer WHERE entry = 11")
        tool.execute("DELETE FROM entry WHERE number = 11")
        tool.execute(
            "UPDATE balance SET mass_mg = mass_mg + CASE place WHEN 'cylinder:C-014' THEN 99523 "
            "WHEN 'atmosphere' THEN -300 ELSE -99223 END WHERE place <> 'supplier'"
        )
    found = _verified(path)
    assert [problem.entry for problem in found.problems] == [11]
    assert "11 of bench B is missing" in found.problems[0].what


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
    assert {9, 11} <= _named(path)


def test_that_swapped_mass_lines_name_their_entry(path: Path) -> None:
    with books.database_tool(path) as tool:
        for line, turned in ((0, 7), (1, 0), (7, 1)):
            tool.execute(f"UPDATE transfer SET line = {turned} WHERE entry = 11 AND line = {line}")  # noqa: S608
    assert WEIGH_IN in _named(path)


def test_that_mass_lines_swapped_between_entries_name_both(path: Path) -> None:
    with books.database_tool(path) as tool:
        for was, becomes in ((9, 900), (11, 9), (900, 11)):
            tool.execute(f"UPDATE transfer SET entry = {becomes} WHERE entry = {was}")  # noqa: S608
    assert {9, 11} <= _named(path)


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
    assert _named(path) == {13}


def test_that_an_entry_added_with_another_chain_is_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        digest = _forge(tool, 13, previous=hashlib.sha256(b"other").digest())
        tool.execute("UPDATE head SET number = 13, hash = ?", (digest,))
    assert _named(path) == {13}


def _cut_off_last(tool: sqlite3.Connection) -> None:
    """Take the job's end away, and everything in the file that still speaks of it but exports."""
    tool.execute("DELETE FROM entry WHERE number = 12")
    last = tool.execute("SELECT number, hash FROM entry WHERE number = 11").fetchone()
    tool.execute("UPDATE head SET number = ?, hash = ?", last)
    tool.execute("UPDATE job SET state = 'open', closed_at = NULL")


def test_that_a_cut_off_end_is_named_by_the_kept_head(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM entry WHERE number = 12")
    assert 12 in _named(path)


def test_that_a_cut_off_end_is_named_by_the_head_kept_at_an_export(path: Path) -> None:
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
    found = _verified(path)
    assert [problem.entry for problem in found.problems] == [12]
    assert "entries 12 to 12 are gone" in found.problems[0].what


def test_that_a_cut_off_end_is_named_by_a_head_kept_elsewhere(path: Path) -> None:
    with Reader.open_reading(path) as reader:
        kept = Checkpoint("B", *reader.head(), "manifest of March")
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
        tool.execute("DELETE FROM checkpoint")
    assert _verified(path).ok  # what a chain can not prove, as the limits say
    assert [problem.entry for problem in _verified(path, kept).problems] == [12]


def test_that_a_rewritten_end_is_named_by_a_head_kept_at_an_export(path: Path) -> None:
    with books.database_tool(path) as tool:
        _cut_off_last(tool)
        tool.execute("DELETE FROM head")
        last = tool.execute("SELECT hash FROM entry WHERE number = 11").fetchone()[0]
        digest = _forge(tool, 12, previous=last)
        tool.execute("INSERT INTO head VALUES ('B', 12, ?)", (digest,))
    found = _verified(path)
    assert [problem.entry for problem in found.problems] == [12]
    assert "is not the one that stood when a head was kept" in found.problems[0].what


@pytest.mark.parametrize(
    ("change", "entry", "says"),
    [
        ("UPDATE balance SET mass_mg = mass_mg + 5 WHERE place = 'atmosphere'", 11, "atmosphere"),
        ("DELETE FROM balance WHERE place = 'supplier'", 7, "supplier says 0 g"),
        ("INSERT INTO balance VALUES ('cylinder:C-1', 'R22', 0)", None, ""),
        ("INSERT INTO balance VALUES ('cylinder:C-1', 'R22', 9)", None, "R22 over all places"),
        ("UPDATE register_row SET content = '{}' WHERE id = 'C-014'", 5, "row C-014"),
        ("UPDATE register_row SET words = 'x' WHERE id = 'C-014'", 5, "row C-014"),
        ("INSERT INTO register_row VALUES ('site', 'S-9', '{}', '')", None, "row S-9"),
        ("DELETE FROM register_row WHERE id = 'S-1'", 1, "row S-1"),
        ("UPDATE job SET state = 'open'", 12, "is not what its entries say"),
        ("UPDATE job SET number = 'B-0009'", 12, "is not what its entries say"),
        ("UPDATE head SET hash = x'00'", 12, "not the one kept as its head"),
        ("DELETE FROM head", 1, "were added behind the head"),
    ],
)
def test_that_what_is_derived_is_compared_with_the_entries(
    path: Path, change: str, entry: int | None, says: str
) -> None:
    with books.database_tool(path) as tool:
        assert tool.execute(change).rowcount > 0
    found = _verified(path).problems
    assert (entry in {problem.entry for problem in found}) == bool(says)
    assert says in " ".join(problem.what for problem in found)


def test_that_a_byte_changed_on_the_disk_is_named(path: Path) -> None:
    content = bytearray(path.read_bytes())
    at = content.find(b"4 212.977 g", content.find(b"4 212.977 g") + 1)
    content[at] ^= 1
    path.write_bytes(content)
    assert _named(path) & {9, 11}


def test_that_damaged_pages_are_reported_not_raised(path: Path) -> None:
    tool = sqlite3.connect(path)
    page = tool.execute("SELECT rootpage FROM sqlite_schema WHERE name = 'entry'").fetchone()[0]
    size = tool.execute("PRAGMA page_size").fetchone()[0]
    tool.close()
    content = bytearray(path.read_bytes())
    content[(page - 1) * size : page * size] = b"\x55" * size
    path.write_bytes(content)
    found = _verified(path)
    assert not found.ok
    assert "damaged" in found.problems[0].what


def test_that_a_file_with_a_wrong_count_of_pages_is_reported(path: Path) -> None:
    content = bytearray(path.read_bytes())
    content[36:40] = b"\x00\x00\x00\x05"
    path.write_bytes(content)
    found = _verified(path)
    assert [problem.entry for problem in found.problems] == [None]
    assert "pages are damaged" in found.problems[0].what


def test_that_a_file_without_entries_is_reported_not_raised(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("ALTER TABLE entry RENAME TO gone")
    tool.close()
    found = _verified(path)
    assert not found.ok
    assert "does not hold the tables of a shop" in found.problems[0].what


def test_that_an_entry_that_is_none_is_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("""UPDATE entry SET payload = '{"a":1}' WHERE kind = 'register'""")
    found = {problem.entry: problem.what for problem in _verified(path).problems}
    assert "can not be read as an entry" in " ".join(found.values())
    assert {1, 2, 3} <= set(found)


@pytest.mark.parametrize("table", ["entry", "transfer", "checkpoint"])
@pytest.mark.parametrize(
    "change", ["UPDATE {} SET rowid = rowid + 100", "DELETE FROM {}", "UPDATE {} SET hash = x'00'"]
)
def test_that_the_guards_refuse_any_tool(path: Path, table: str, change: str) -> None:
    if table == "transfer":
        change = change.replace("rowid", "line").replace("hash = x'00'", "mass_mg = 0")
    tool = sqlite3.connect(path)
    with pytest.raises(sqlite3.IntegrityError, match=f"{table} is append-only"):
        tool.execute(change.format(table))
    tool.close()


def test_that_a_dropped_guard_is_refused_at_opening_and_named_by_verify(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("DROP TRIGGER entry_no_update")
    tool.close()
    with pytest.raises(ShopFileRefused, match=r"lost what keeps .* \(entry_no_update\)"):
        Ledger.open(path)
    assert [problem.entry for problem in _verified(path).problems] == [None]
    assert "entry_no_update" in _verified(path).problems[0].what


def test_that_a_toothless_guard_is_a_missing_one(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("DROP TRIGGER entry_no_update")
    tool.execute("CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry BEGIN SELECT 1; END")
    tool.close()
    with pytest.raises(ShopFileRefused, match="entry_no_update"):
        Ledger.open(path)


def test_that_mended_guards_are_back_and_on_record(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("DROP TRIGGER entry_no_update")
    tool.execute("DROP TRIGGER transfer_no_delete")
    tool.close()
    entry = Ledger.mend_guards(path, BY, NOON)
    assert entry.payload == {"missing": ["entry_no_update", "transfer_no_delete"]}
    with Ledger.open(path) as ledger:
        assert ledger.verify().ok
        assert [e.number for e in ledger.entries(kind="guards-mended")] == [13]
    with pytest.raises(ShopFileRefused, match="nothing to mend"):
        Ledger.mend_guards(path, BY, NOON)


def test_that_an_end_that_differs_from_the_kept_head_is_refused_at_opening(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM entry WHERE number = 12")
    with pytest.raises(ShopFileRefused, match="entry 12 of bench B was the last, now it is 11"):
        Ledger.open(path)


def test_that_many_entries_are_followed_across_chunks(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("chargebench.ledger.scan.CHUNK", 3)
    assert _verified(path).ok
    with Ledger.open(path) as ledger:
        ledger.post(NewEntry("weighed", BY, NOON, {}))
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM entry WHERE number IN (4, 5, 6, 7)")
    named = _named(path)
    assert {4, 5, 6, 7} <= named
    assert not {1, 2, 3, 9, 12, 13} & named
