"""Disks that are full, read-only or gone; files that something else copied or replaced."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.errors import ShopFileRefused, StorageRefused
from chargebench.ledger import Ledger, Reader, backups, going_back, kept, rescue, restore
from tests.disks import Disk, small_disk
from tests.ledger import books
from tests.ledger.books import CYLINDER, NOON


@pytest.fixture
def disk(tmp_path: Path) -> Iterator[Disk]:
    with small_disk(tmp_path / "disk") as made:
        yield made


@pytest.fixture
def on_disk(disk: Disk) -> Path:
    """The usual shop on the small disk, closed."""
    file = disk.folder / "larkmoor.chargebench"
    with Ledger.create(file) as ledger:
        books.whole_job(ledger)
    return file


def test_that_a_full_disk_loses_nothing_acknowledged(disk: Disk, on_disk: Path) -> None:
    with Ledger.open(on_disk) as ledger:
        rest = disk.fill()
        before, posted = ledger.head()[0], 0
        try:
            for posted in range(10_000):  # noqa: B007  how many were acknowledged counts
                books.receive(ledger, 1)
        except StorageRefused as refusal:
            refused = str(refusal)
        assert "the disk is full. Free some space" in refused
        assert ledger.head()[0] == before + posted
        assert ledger.verify().ok
        rest.unlink()
        books.receive(ledger, 1)
    with Ledger.open(on_disk) as ledger:
        assert ledger.head()[0] == before + posted + 1
        assert ledger.verify().ok


def test_that_a_shop_on_a_full_disk_can_be_read_and_brought_elsewhere(
    disk: Disk, on_disk: Path, tmp_path: Path
) -> None:
    rest = disk.fill()
    try:
        with Ledger.open(on_disk) as ledger:
            says = str(ledger.backup_refused)
    except ShopFileRefused as refusal:
        says = str(refusal)
    assert "the disk is full" in says
    with Reader.open_reading(on_disk) as reader:
        assert reader.verify().ok
    found = rescue(on_disk, tmp_path / "elsewhere.chargebench", NOON)
    assert (found.whole, found.entries) == (True, 12)
    with pytest.raises(ShopFileRefused, match="the disk is full"):
        rescue(on_disk, disk.folder / "here.chargebench", NOON)
    assert not (disk.folder / "here.chargebench").exists()
    rest.unlink()
    Ledger.open(on_disk).close()


def test_that_a_read_only_disk_is_refused_for_work_and_read_for_all_else(
    disk: Disk, on_disk: Path, tmp_path: Path
) -> None:
    disk.read_only()
    with pytest.raises(ShopFileRefused, match=r"can not be written to\. Move it"):
        Ledger.open(on_disk)
    with Reader.open_reading(on_disk) as reader:
        assert reader.verify().ok
        assert reader.head()[0] == 12
    assert rescue(on_disk, tmp_path / "elsewhere.chargebench", NOON).whole
    with pytest.raises(ShopFileRefused, match="could not be restored: Read-only file system"):
        restore(on_disk, tmp_path / "elsewhere.chargebench")


def test_that_a_drive_taken_away_is_said_and_nothing_is_acknowledged(
    disk: Disk, on_disk: Path
) -> None:
    with Ledger.open(on_disk) as ledger:
        disk.take_away()
        with pytest.raises(StorageRefused, match=r"larkmoor\.chargebench is gone\. A drive was"):
            books.receive(ledger)
        with pytest.raises(StorageRefused, match="Leave what is typed on the screen"):
            ledger.keep_typed("job", "safety", {"wind": "none"})
    with pytest.raises(ShopFileRefused, match="There is no file"):
        Ledger.open(on_disk)


def test_that_a_file_moved_or_replaced_while_open_takes_no_entry(path: Path) -> None:
    aside = path.with_name("aside")
    with Ledger.open(path, backups=0) as ledger:
        path.rename(aside)
        with pytest.raises(StorageRefused, match="is gone"):
            books.receive(ledger)
        shutil.copy(aside, path)
        with pytest.raises(StorageRefused, match="is another file now"):
            books.receive(ledger)
        aside.replace(path)
        books.receive(ledger)  # put back, it goes on
        assert ledger.head()[0] == 13


def _copied(path: Path, name: str, *endings: str) -> Path:
    """A copy elsewhere, with only some of what SQLite keeps beside it."""
    target = path.parent / name / path.name
    target.parent.mkdir()
    for ending in ("", *endings):
        shutil.copy(f"{path}{ending}", f"{target}{ending}")
    return target


def test_that_half_of_a_copy_is_refused_until_its_other_half_is_there(path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        books.receive(ledger)
        half = _copied(path, "half")
        shutil.copy(f"{path}-wal", half.with_name("kept-wal"))
    for _ in range(2):
        with pytest.raises(ShopFileRefused, match=r"without larkmoor\.chargebench-wal, which bel"):
            Ledger.open(half)
    assert rescue(half, half.with_name("new.chargebench"), NOON).entries == 12
    half.with_name("kept-wal").rename(f"{half}-wal")
    with Ledger.open(half) as ledger:
        assert ledger.head()[0] == 13
        assert ledger.verify().ok


def test_that_a_shop_of_a_bench_that_was_killed_is_no_half_copy(path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        books.receive(ledger)
        killed = _copied(path, "killed", "-wal")
    with Ledger.open(killed) as ledger:
        assert ledger.head()[0] == 13
    Ledger.open(killed).close()


def test_that_backups_and_restored_files_are_no_half_copies(path: Path) -> None:
    with Ledger.open(path) as ledger:
        copy = ledger.backup_to(path.with_name("copy.chargebench"))
    Ledger.open(copy).close()
    restore(path, backups(path)[0])
    with Ledger.open(path) as ledger:
        assert ledger.verify().ok


def test_that_an_older_file_in_its_place_is_refused_unless_it_was_restored(path: Path) -> None:
    Ledger.open(path).close()
    old = _copied(path, "old")
    with Ledger.open(path) as ledger:
        books.receive(ledger)
    Ledger.open(path).close()
    shutil.copy(old, path)
    with pytest.raises(ShopFileRefused, match=r"holds 12 entries, its backup .* holds 13"):
        Ledger.open(path)
    found = rescue(path, path.with_name("both.chargebench"), NOON)
    assert found.entries == 13
    restore(path, old)
    with Ledger.open(path) as ledger:
        assert ledger.head()[0] == 12


def test_that_a_copy_beside_in_which_work_went_on_is_told_of(path: Path) -> None:
    conflicted = path.with_name("larkmoor (conflicted copy).chargebench")
    shutil.copy(path, conflicted)
    with Ledger.open(path, backups=0) as ledger:
        assert ledger.copies_beside == ()  # the same, or behind, is no trouble
    with Ledger.open(conflicted, backups=0) as ledger:
        books.receive(ledger)
    with Ledger.open(path, backups=0) as ledger:
        assert (
            "later copy of this shop, with 1 further entries of bench B"
            in (ledger.copies_beside[0])
        )
        books.receive(ledger, 1)
    with Ledger.open(path, backups=0) as ledger:
        (said,) = ledger.copies_beside
        assert said.startswith("larkmoor (conflicted copy).chargebench beside this file is a copy")
        assert "work went on by itself (bench B)" in said


def test_that_files_of_others_beside_are_left_alone(path: Path) -> None:
    path.with_name("larkmoor notes.txt").write_text("no shop")
    Ledger.create(path.with_name("larkmoor 2.chargebench")).close()
    before = sorted(file.name for file in path.parent.iterdir())
    with Ledger.open(path, backups=0) as ledger:
        assert ledger.copies_beside == ()
    assert sorted(file.name for file in path.parent.iterdir()) == before


def test_that_going_back_says_in_figures_what_is_left_out(path: Path) -> None:
    Ledger.open(path).close()
    (copy,) = kept(path)
    assert (copy.entries, copy.size) == (12, copy.path.stat().st_size)
    assert going_back(path, copy.path).sentence.endswith("holds nothing beyond that.")
    with Ledger.open(path, backups=0) as ledger:
        job = ledger.jobs()[0].id
        last = [books.receive(ledger, 1) for _ in range(3)][-1]
        ledger.keep_typed(job, "safety", {"wind": "none"})
        found = going_back(path, copy.path)
    assert (found.entries, found.lost, found.lost_typed) == (12, 3, 1)
    assert found.last == last.recorded_at.isoformat(timespec="milliseconds")
    assert "leaves out 3 entries, the last recorded" in found.sentence
    path.write_bytes(path.read_bytes()[:9_000])
    assert going_back(path, copy.path).lost is None
    assert "can not be told" in going_back(path, copy.path).sentence
    before = path.read_bytes()
    restore(path, copy.path)
    (aside,) = path.parent.glob("*-aside-*")
    assert aside.read_bytes() == before
    with Ledger.open(path, backups=0) as ledger:
        assert ledger.balance(CYLINDER, "R290") == 4_650_000 - 99_523
