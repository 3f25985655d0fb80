"""What can be read of a damaged shop comes into a new file by its chain; the old is only read."""

import shutil
import sqlite3
from pathlib import Path

import pytest

from chargebench.errors import ShopFileRefused
from chargebench.ledger import Ledger, Reader, Rescued, rescue
from tests.ledger import books
from tests.ledger.books import NOON

MANY = 400


@pytest.fixture
def large(tmp_path: Path) -> Path:
    """A shop of some hundred entries over many pages, closed; 3 entries newer than its backup."""
    file = tmp_path / "larkmoor.chargebench"
    with Ledger.create(file) as ledger:
        job = books.whole_job(ledger)
        ledger.keep_typed(job, "safety", {"wind": "none"})
        with ledger.together():
            for turn in range(MANY):
                books.receive(ledger, 1_000 + turn)
    with Ledger.open(file, backups=0) as ledger:
        for _ in range(3):
            books.receive(ledger, 7)
    return file


def _hashes(path: Path) -> dict[int, str]:
    with Reader.open_reading(path, guarded=False) as reader:
        return {e.number: e.hash for e in reader.entries() if e.kind != "rescued"}


def _pages_of(path: Path, table: str) -> tuple[int, list[int]]:
    """Size of a page, and the table's leaf pages in their order."""
    tool = sqlite3.connect(path)
    size = tool.execute("PRAGMA page_size").fetchone()[0]
    try:
        pages = tool.execute(
            "SELECT pageno FROM dbstat WHERE name = ? AND pagetype = 'leaf' ORDER BY path", (table,)
        ).fetchall()
    finally:
        tool.close()
    return size, [page for (page,) in pages]


def _scribble(path: Path, *pages: int, size: int = 4096) -> None:
    content = bytearray(path.read_bytes())
    for page in pages:
        content[(page - 1) * size : page * size] = b"\x55" * size
    path.write_bytes(content)


def _rescued(path: Path) -> tuple[Path, Rescued]:
    out = path.with_name("rescued.chargebench")
    before = path.read_bytes() if path.exists() else b""
    found = rescue(path, out, NOON)
    assert (path.read_bytes() if path.exists() else b"") == before
    assert not list(path.parent.glob(".rescue-*"))
    assert not list(path.parent.glob("*.new*"))
    return out, found


def test_that_a_sound_shop_is_brought_over_whole(large: Path) -> None:
    was = _hashes(large)
    out, found = _rescued(large)
    assert found.whole
    assert found.entries == len(was) == 12 + MANY + 3
    now = _hashes(out)
    assert now == was
    with Ledger.open(out, backups=0) as ledger, Reader.open_reading(large) as old:
        assert ledger.verify().ok
        assert ledger.shop_id == old.shop_id
        assert ledger.balances("") == old.balances("")
        assert ledger.rows("cylinder") == old.rows("cylinder")
        assert [job.number for job in ledger.jobs()] == ["B-0001"]
        job = ledger.jobs()[0].id
        assert ledger.typed(job, "safety") == {"wind": "none"}
        last = list(ledger.entries())[-1]
        assert (last.kind, last.number, last.payload["missing"]) == ("rescued", len(was) + 1, [])


def test_that_a_damaged_page_loses_only_its_entries_and_says_which(large: Path) -> None:
    was = _hashes(large)
    size, pages = _pages_of(large, "entry")
    assert len(pages) > 8
    _scribble(large, pages[5], size=size)
    with pytest.raises(ShopFileRefused, match="damaged"), Ledger.open(large, backups=0) as ledger:
        list(ledger.entries())
    out, found = _rescued(large)
    now = _hashes(out)
    assert all(was[number] == digest for number, digest in now.items())
    gone = sorted(was.keys() - now.keys())
    assert 0 < len(gone) < 30
    assert gone == list(range(gone[0], gone[-1] + 1))
    assert len(found.missing) == 1
    assert f"Entries {gone[0]} to {gone[-1]} of bench B can not be read" in found.missing[0]
    with Ledger.open(out, backups=0) as ledger:
        named = {p.entry for p in ledger.verify().problems}
        assert set(gone) == named  # the gap stays on record
        assert next(ledger.entries(kind="rescued")).payload["missing"] == list(found.missing)
        books.receive(ledger, 1)  # and work goes on
    assert any("the entries that were read give" in note for note in found.notes)


def test_that_what_is_damaged_is_taken_from_a_backup(large: Path) -> None:
    Ledger.open(large).close()  # keeps a backup
    was = _hashes(large)
    for table in ("entry", "transfer"):
        size, pages = _pages_of(large, table)
        _scribble(large, *pages[2:5], size=size)
    out, found = _rescued(large)
    assert found.whole
    assert found.from_backups > 10
    now = _hashes(out)
    assert now == was
    with Ledger.open(out, backups=0) as ledger:
        assert ledger.verify().ok


@pytest.mark.parametrize("part", [0.45, 0.7, 0.95])
def test_that_a_cut_off_file_gives_what_is_left_of_it(large: Path, part: float) -> None:
    was = _hashes(large)
    content = large.read_bytes()
    large.write_bytes(content[: int(len(content) * part)])
    with pytest.raises(ShopFileRefused, match="damaged"):
        Ledger.open(large, backups=0)
    out, found = _rescued(large)
    now = _hashes(out)
    assert now
    assert all(was[number] == digest for number, digest in now.items())
    assert len(now) == found.entries < len(was)
    assert not found.whole
    Ledger.open(out, backups=0).close()


def test_that_a_shop_that_lost_the_list_of_its_tables_gives_all_its_entries(large: Path) -> None:
    was = _hashes(large)
    size, pages = _pages_of(large, "sqlite_schema")
    assert len(pages) > 1
    _scribble(large, *pages, size=size)
    out, found = _rescued(large)
    assert found.whole
    assert _hashes(out) == was


@pytest.mark.parametrize("lost", [100, 4096], ids=["head", "first page"])
def test_that_a_lost_first_page_is_taken_from_a_backup(large: Path, lost: int) -> None:
    with Ledger.open(large) as ledger:
        books.receive(ledger, 3)  # newer than the backup
    was = _hashes(large)
    content = large.read_bytes()
    large.write_bytes(bytes(lost) + content[lost:])
    with pytest.raises(ShopFileRefused, match="is not a shop file"):
        Ledger.open(large)
    out, found = _rescued(large)
    assert found.whole
    assert found.entries == len(was)
    with Ledger.open(out, backups=0) as ledger:
        assert ledger.verify().ok


def test_that_a_shop_of_which_only_backups_are_left_comes_from_them(large: Path) -> None:
    Ledger.open(large).close()
    was = _hashes(large)
    large.unlink()
    out, found = _rescued(large)
    assert (found.whole, found.entries) == (True, len(was))
    assert _hashes(out) == was


def test_that_entries_still_waiting_in_the_wal_are_brought_over(large: Path) -> None:
    with Ledger.open(large, backups=0) as ledger:
        last = books.receive(ledger, 11)
        copied = large.with_name("copy") / large.name
        copied.parent.mkdir()
        for ending in ("", "-wal"):
            shutil.copy(f"{large}{ending}", f"{copied}{ending}")
    out = copied.with_name("rescued.chargebench")
    assert rescue(copied, out, NOON).whole
    assert _hashes(out)[last.number] == last.hash


def test_that_an_entry_somebody_changed_is_none_that_can_be_read(large: Path) -> None:
    with books.database_tool(large) as tool:
        tool.execute("UPDATE transfer SET mass_mg = mass_mg + 1 WHERE entry = 11 AND line = 0")
    _, found = _rescued(large)
    assert found.missing[0].startswith("Entry 11 of bench B can not be read, recorded after 20")


def test_that_what_is_no_shop_at_all_is_refused_and_leaves_nothing(tmp_path: Path) -> None:
    file = tmp_path / "letter.chargebench"
    file.write_bytes(b"Dear Sir or Madam " * 1_000)
    with pytest.raises(ShopFileRefused, match="Nothing of a shop can be read"):
        rescue(file, tmp_path / "out.chargebench", NOON)
    with pytest.raises(ShopFileRefused, match="no backup of it"):
        rescue(tmp_path / "none", tmp_path / "out.chargebench", NOON)
    with pytest.raises(ShopFileRefused, match="is there already"):
        rescue(file, file, NOON)
    with pytest.raises(ShopFileRefused, match="There is no folder"):
        rescue(file, tmp_path / "none" / "out", NOON)
    assert list(tmp_path.iterdir()) == [file]
