"""Storage that fails, upgrades of the schema, backups and restoring them."""

import shutil
from pathlib import Path

import pytest
from sqlalchemy import Connection

from chargebench.errors import ShopFileRefused, StorageRefused
from chargebench.ledger import (
    Ledger,
    NewEntry,
    Reader,
    backups,
    migrations,
    restore,
    shopfile,
)
from chargebench.ledger import (
    sqlite as dialect,
)
from chargebench.ledger.backup import rotate
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON


def _limit_pages(ledger: Ledger, more: int) -> None:
    """Let the file grow by so many pages only, as a disk with little room would."""
    with ledger._connection.begin():
        pages = dialect.pragma(ledger._connection, "page_count")
        dialect.pragma(ledger._connection, f"max_page_count={pages + more}")


def _receive_many(ledger: Ledger) -> None:
    for _ in range(1_000):
        books.receive(ledger, 1)


def test_that_a_full_disk_refuses_and_loses_nothing(path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        ledger.keep_typed("job", "safety", {"wind": "none"})
        before = ledger.balance(CYLINDER, "R290")
        _limit_pages(ledger, 3)
        with pytest.raises(StorageRefused, match=r"the disk is full\. Free some space"):
            _receive_many(ledger)
        posted = ledger.balance(CYLINDER, "R290") - before
        with pytest.raises(StorageRefused, match="the disk is full"):
            ledger.keep_typed("job", "safety", {"wind": "x" * 50_000})
        assert posted > 0
        assert ledger.head()[0] == 12 + posted
        assert ledger.typed("job", "safety") == {"wind": "none"}
        assert ledger.verify().ok
        _limit_pages(ledger, 1_000)
        books.receive(ledger, 1)
    with Ledger.open(path) as ledger:
        assert ledger.head()[0] == 13 + posted
        assert ledger.verify().ok


def test_that_a_full_disk_undoes_all_that_was_recorded_together(path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        before = ledger.head()
        _limit_pages(ledger, 3)
        with (
            pytest.raises(StorageRefused, match="the disk is full"),
            ledger.together(),
        ):
            _receive_many(ledger)
        assert ledger.head() == before
        assert ledger.verify().ok


def test_that_a_bug_in_our_statements_stays_a_bug(path: Path) -> None:
    with (
        Ledger.open(path, backups=0) as ledger,
        pytest.raises(Exception, match="no such table") as bug,
        ledger._writing() as connection,
    ):
        connection.exec_driver_sql("SELECT * FROM nowhere")
    assert not isinstance(bug.value, StorageRefused)


def _further_step(connection: Connection) -> None:
    connection.exec_driver_sql("ALTER TABLE job ADD COLUMN colour TEXT")


def _bad_step(connection: Connection) -> None:
    _further_step(connection)
    connection.exec_driver_sql("no statement at all")


def _next_schema(monkeypatch: pytest.MonkeyPatch, step: migrations.Step) -> None:
    monkeypatch.setattr(shopfile, "STEPS", (*migrations.STEPS, step))


def test_that_an_upgrade_keeps_a_copy_and_every_entry(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    _next_schema(monkeypatch, _further_step)
    with pytest.raises(ShopFileRefused, match="older chargebench"):
        Reader.open_reading(path)
    with Ledger.open(path, backups=0) as ledger:
        assert ledger.head()[0] == 12
    (copy,) = dialect.backup_folder(path).iterdir()
    assert copy.name.startswith(f"before-schema-{len(migrations.STEPS) + 1}-")
    monkeypatch.undo()
    with Ledger.open(copy, backups=0) as ledger:
        assert ledger.verify().ok
    known = len(migrations.STEPS)
    with pytest.raises(ShopFileRefused, match=f"schema {known + 1}, this one knows {known}"):
        Ledger.open(path)


def test_that_a_failed_upgrade_changes_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _next_schema(monkeypatch, _bad_step)
    with pytest.raises(Exception, match="syntax error"):
        Ledger.open(path)
    monkeypatch.undo()
    with Ledger.open(path) as ledger:
        assert ledger.verify().ok


def test_that_opening_keeps_a_backup_only_of_what_changed(path: Path) -> None:
    for _ in range(3):
        Ledger.open(path).close()
    assert len(backups(path)) == 1
    with Ledger.open(path) as ledger:
        ledger.keep_typed("job", "safety", {"wind": "none"})
    with Ledger.open(path) as ledger:
        assert len(backups(path)) == 2
        books.receive(ledger)
    Ledger.open(path).close()
    assert len(backups(path)) == 3
    with Reader.open_reading(backups(path)[0]) as newest:
        assert newest.verify().ok
        assert newest.head()[0] == 13


def test_that_backups_are_rotated(path: Path) -> None:
    made = []
    with Ledger.open(path, backups=0) as ledger:
        for _ in range(5):
            books.receive(ledger)
            made.append(ledger.backup(keep_newest=3))
        assert rotate(ledger._connection, path, keep_newest=3) is None
    assert backups(path) == made[:1:-1]


def test_that_a_backup_that_can_not_be_written_lets_the_shop_open(path: Path) -> None:
    dialect.backup_folder(path).write_text("a file where the folder should be")
    with Ledger.open(path) as ledger:
        assert ledger.backup_refused is not None
        assert "for backups can not be made" in ledger.backup_refused
        books.receive(ledger)


def test_that_a_backup_is_made_on_demand_from_a_reader_too(path: Path, tmp_path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        books.receive(ledger)
        with ledger.reader() as reader:
            copy = reader.backup_to(tmp_path / "copy.chargebench")
        with pytest.raises(ShopFileRefused, match="can not be written"):
            ledger.backup_to(tmp_path / "none" / "copy.chargebench")
    with Ledger.open(copy, backups=0) as restored:
        assert restored.head()[0] == 13
        assert restored.verify().ok
    assert not list(tmp_path.glob("*.new"))


def test_that_restoring_keeps_the_present_file_aside(path: Path, tmp_path: Path) -> None:
    copy = tmp_path / "copy.chargebench"
    with Ledger.open(path, backups=0) as ledger:
        ledger.backup_to(copy)
        books.receive(ledger, 1)
    aside = restore(path, copy)
    assert aside is not None
    with Ledger.open(path, backups=0) as ledger, Ledger.open(aside, backups=0) as old:
        assert ledger.head()[0] == 12
        assert old.head()[0] == 13
        assert old.balance(CYLINDER, "R290") - ledger.balance(CYLINDER, "R290") == 1


def test_that_a_damaged_or_lost_file_is_restored(path: Path, tmp_path: Path) -> None:
    copy = tmp_path / "copy.chargebench"
    with Ledger.open(path, backups=0) as ledger:
        ledger.backup_to(copy)
    path.write_bytes(path.read_bytes()[:5_000])
    aside = restore(path, copy)
    assert aside is not None
    assert aside.stat().st_size == 5_000
    path.unlink()
    assert restore(path, copy) is None
    with Ledger.open(path) as ledger:
        assert ledger.verify().ok


def test_that_nothing_is_restored_over_a_shop_in_use(path: Path, tmp_path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        copy = ledger.backup_to(tmp_path / "copy.chargebench")
        with pytest.raises(ShopFileRefused, match="open in another window"):
            restore(path, copy)
        ledger.post(NewEntry("weighed", BY, NOON, {}))
        assert ledger.verify().ok


def test_that_only_a_sound_backup_of_a_known_schema_is_restored(path: Path, tmp_path: Path) -> None:
    before = path.read_bytes()
    copy = tmp_path / "copy.chargebench"
    books.foreign(copy)
    with pytest.raises(ShopFileRefused, match="not a shop file"):
        restore(path, copy)
    shutil.copy(path, copy)
    books.newer(copy)
    with pytest.raises(ShopFileRefused, match="newer"):
        restore(path, copy)
    content = path.read_bytes()
    copy.write_bytes(content[:8_192] + b"\x55" * 4_096 + content[12_288:])
    with pytest.raises(ShopFileRefused, match="damaged"):
        restore(path, copy)
    copy.write_bytes(content[:36] + b"\x00\x00\x00\x05" + content[40:])  # a wrong count of pages
    with pytest.raises(ShopFileRefused, match=r"Choose another backup"):
        restore(path, copy)
    assert path.read_bytes() == before
    assert not list(tmp_path.glob("*aside*"))


def test_that_the_file_is_settled_where_a_folder_can_not_be(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def settle(path: Path) -> None:
        if path.is_dir():
            raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("chargebench.ledger.backup.settle", settle)
    with Ledger.create(tmp_path / "shop.chargebench") as ledger:
        assert ledger.verify().ok


def test_that_a_restore_that_fails_leaves_the_present_file(
    path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    copy = tmp_path / "copy.chargebench"
    with Ledger.open(path, backups=0) as ledger:
        ledger.backup_to(copy)

    def refuse(_path: Path) -> Path:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("chargebench.ledger.restoring._set_aside", refuse)
    with pytest.raises(ShopFileRefused, match="could not be restored: Permission denied"):
        restore(path, copy)
    with Ledger.open(path) as ledger:
        assert ledger.verify().ok
