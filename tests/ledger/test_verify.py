"""What verify says: of a sound file, of derived tables, of damage, and of missing guards."""

import sqlite3
from pathlib import Path

import pytest

from chargebench.errors import ShopFileRefused
from chargebench.ledger import Ledger, NewEntry, Reader
from tests.ledger import books
from tests.ledger.books import BY, NOON


def test_that_an_untouched_ledger_verifies_and_says_what_was_checked(path: Path) -> None:
    found = books.verified(path)
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
        ("UPDATE day_total SET mass_mg = mass_mg + 1 WHERE source = 'supplier'", None, "on 2026"),
        ("DELETE FROM day_total WHERE target = 'atmosphere'", None, "from cylinder to atmosphere"),
        ("INSERT INTO place_entry VALUES ('cylinder:C-1', 'weighed', 3)", None, "names cylinder"),
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
    found = books.verified(path).problems
    assert (entry in {problem.entry for problem in found}) == bool(says)
    assert says in " ".join(problem.what for problem in found)


def test_that_a_byte_changed_on_the_disk_is_named(path: Path) -> None:
    content = bytearray(path.read_bytes())
    at = content.find(b"4 212.977 g", content.find(b"4 212.977 g") + 1)
    content[at] ^= 1
    path.write_bytes(content)
    assert books.named(path) & {9, 11}


def test_that_damaged_pages_are_reported_not_raised(path: Path) -> None:
    tool = sqlite3.connect(path)
    page = tool.execute("SELECT rootpage FROM sqlite_schema WHERE name = 'entry'").fetchone()[0]
    size = tool.execute("PRAGMA page_size").fetchone()[0]
    tool.close()
    content = bytearray(path.read_bytes())
    content[(page - 1) * size : page * size] = b"\x55" * size
    path.write_bytes(content)
    found = books.verified(path)
    assert not found.ok
    assert "damaged" in found.problems[0].what


def test_that_a_file_with_a_wrong_count_of_pages_is_reported(path: Path) -> None:
    content = bytearray(path.read_bytes())
    content[36:40] = b"\x00\x00\x00\x05"
    path.write_bytes(content)
    found = books.verified(path)
    assert [problem.entry for problem in found.problems] == [None]
    assert "pages are damaged" in found.problems[0].what


def test_that_a_file_without_entries_is_reported_not_raised(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("ALTER TABLE entry RENAME TO gone")
    tool.close()
    found = books.verified(path)
    assert not found.ok
    assert "does not hold the tables of a shop" in found.problems[0].what


def test_that_an_entry_that_is_none_is_named(path: Path) -> None:
    with books.database_tool(path) as tool:
        tool.execute("""UPDATE entry SET payload = '{"a":1}' WHERE kind = 'register'""")
    found = {problem.entry: problem.what for problem in books.verified(path).problems}
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
    assert [problem.entry for problem in books.verified(path).problems] == [None]
    assert "entry_no_update" in books.verified(path).problems[0].what


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
    assert books.verified(path).ok
    with Ledger.open(path) as ledger:
        ledger.post(NewEntry("weighed", BY, NOON, {}))
    with books.database_tool(path) as tool:
        tool.execute("DELETE FROM entry WHERE number IN (4, 5, 6, 7)")
    named = books.named(path)
    assert {4, 5, 6, 7} <= named
    assert not {1, 2, 3, 9, 12, 13} & named
