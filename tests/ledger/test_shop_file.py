"""What is refused at opening and in what words; failing storage; upgrades, backups, restoring."""

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from sqlalchemy import Connection

from chargebench.errors import ShopFileRefused, StorageRefused
from chargebench.ledger import (
    Ledger,
    NewEntry,
    Reader,
    backups,
    dialect,
    migrations,
    restore,
    shopfile,
)
from chargebench.ledger.backup import rotate
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A closed shop file with one whole job."""
    file = tmp_path / "larkmoor.chargebench"
    with Ledger.create(file) as ledger:
        books.whole_job(ledger)
    return file


def _foreign(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("CREATE TABLE entry (a)")
    tool.commit()
    tool.close()


def _newer(path: Path) -> None:
    tool = sqlite3.connect(path)
    tool.execute("PRAGMA user_version = 99")
    tool.close()


def test_that_no_file_is_refused_in_words(tmp_path: Path) -> None:
    with pytest.raises(ShopFileRefused, match=r"There is no file .*or make a new shop"):
        Ledger.open(tmp_path / "none.chargebench")
    assert list(tmp_path.iterdir()) == []


def test_that_a_folder_is_refused_in_words(tmp_path: Path) -> None:
    with pytest.raises(ShopFileRefused, match="can not be read"):
        Ledger.open(tmp_path)


@pytest.mark.parametrize("content", [b"", b"PK\x03\x04 a workbook", b"SQLite format 3\x00" * 9])
def test_that_another_file_is_refused_and_left_alone(tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "other.xlsx"
    file.write_bytes(content)
    with pytest.raises(ShopFileRefused, match="is not a shop file"):
        Ledger.open(file)
    assert file.read_bytes() == content
    assert list(tmp_path.iterdir()) == [file]


def test_that_another_database_is_refused(tmp_path: Path) -> None:
    _foreign(tmp_path / "other.db")
    with pytest.raises(ShopFileRefused, match="is not a shop file"):
        Ledger.open(tmp_path / "other.db")


def test_that_a_newer_file_is_refused_and_left_alone(path: Path) -> None:
    _newer(path)
    before = path.read_bytes()
    with pytest.raises(ShopFileRefused, match=r"newer chargebench \(schema 99"):
        Ledger.open(path)
    assert path.read_bytes() == before


@pytest.mark.parametrize("part", [0.3, 0.9])
def test_that_a_cut_off_file_is_refused(path: Path, part: float) -> None:
    content = path.read_bytes()
    path.write_bytes(content[: int(len(content) * part)])
    with pytest.raises(ShopFileRefused, match=r"damaged.*Restore the newest backup"):
        Ledger.open(path)


def test_that_a_file_scribbled_over_is_refused(path: Path) -> None:
    content = path.read_bytes()
    path.write_bytes(content[:100] + b"\xaa" * (len(content) - 100))
    with pytest.raises(ShopFileRefused, match="damaged"):
        Ledger.open(path)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ("DELETE FROM head", "names no bench"),
        ("UPDATE head SET number = 900", "does not end as it was left"),
        ("DELETE FROM about WHERE key = 'bench'", "does not say its bench"),
    ],
)
def test_that_a_file_that_lost_its_bearings_is_refused(path: Path, change: str, says: str) -> None:
    with books.database_tool(path) as tool:
        tool.execute(change)
    with pytest.raises(ShopFileRefused, match=says), Ledger.open(path, backups=0) as ledger:
        books.receive(ledger)


@pytest.mark.parametrize("table", ["typed", "about"])
def test_that_a_file_that_lost_a_table_is_refused(path: Path, table: str) -> None:
    tool = sqlite3.connect(path)
    tool.execute(f"DROP TABLE {table}")
    tool.close()
    with pytest.raises(ShopFileRefused, match=f"damaged: it has no {table}"):
        Ledger.open(path)
    if table == "about":
        with pytest.raises(ShopFileRefused, match="does not say whose it is"):
            Reader.open_reading(path, guarded=False)
    else:
        with Reader.open_reading(path, guarded=False) as reader:
            assert reader.verify().ok


def test_that_a_file_locked_by_another_program_is_refused(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dialect, "BUSY_SECONDS", 0.01)
    tool = sqlite3.connect(path, isolation_level=None)
    tool.execute("PRAGMA journal_mode=DELETE")
    tool.execute("BEGIN EXCLUSIVE")
    with pytest.raises(ShopFileRefused, match="another program"):
        Ledger.open(path)
    tool.close()


def test_that_a_file_read_by_an_old_tool_is_refused(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dialect, "BUSY_SECONDS", 0.01)
    tool = sqlite3.connect(path, isolation_level=None)
    tool.execute("PRAGMA journal_mode=DELETE")
    tool.execute("BEGIN")
    tool.execute("SELECT * FROM about").fetchall()
    with pytest.raises(ShopFileRefused, match="another program"):
        Ledger.open(path)
    tool.close()


def test_that_a_post_waits_and_is_refused_while_another_writes(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dialect, "BUSY_SECONDS", 0.01)
    with Ledger.open(path, backups=0) as ledger:
        tool = sqlite3.connect(path, isolation_level=None)
        tool.execute("BEGIN IMMEDIATE")
        with pytest.raises(StorageRefused, match=r"Nothing was recorded .* another program is"):
            books.receive(ledger)
        assert ledger.head()[0] == 12
        tool.execute("ROLLBACK")
        tool.close()
        books.receive(ledger)
        assert ledger.head()[0] == 13


@contextmanager
def _without_rights() -> Iterator[None]:
    """As a person with no rights to what others keep; a superuser has every right."""
    if os.geteuid() != 0:
        yield
        return
    os.seteuid(65534)
    try:
        yield
    finally:
        os.seteuid(0)


def test_that_a_read_only_folder_is_refused(path: Path) -> None:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shutil.copy(path, folder / "shop.chargebench")
        (folder / "shop.chargebench").chmod(0o444)
        folder.chmod(0o555)
        try:
            with _without_rights():
                with pytest.raises(ShopFileRefused, match=r"can not be written to\. Move it"):
                    Ledger.open(folder / "shop.chargebench")
                with pytest.raises(ShopFileRefused, match=r"can not be written to\. Move it"):
                    Ledger.create(folder / "new.chargebench")
            (folder / "shop.chargebench").chmod(0o000)
            with _without_rights(), pytest.raises(ShopFileRefused, match="can not be read"):
                Ledger.open(folder / "shop.chargebench")
        finally:
            folder.chmod(0o755)
        assert [file.name for file in folder.iterdir()] == ["shop.chargebench"]


@pytest.mark.parametrize("bench", ["", "b", "bench 1", "B-1", "ABCDEFGHI"])
def test_that_a_bench_has_a_short_name(tmp_path: Path, bench: str) -> None:
    with pytest.raises(ShopFileRefused, match="a capital letter and up to seven more"):
        Ledger.create(tmp_path / "shop.chargebench", bench)
    assert list(tmp_path.iterdir()) == []


def test_that_a_bench_name_heads_its_job_numbers(tmp_path: Path) -> None:
    with Ledger.create(tmp_path / "shop.chargebench", "VAN2") as ledger:
        books.open_job(ledger)
        assert [job.number for job in ledger.jobs()] == ["VAN2-0001"]
        assert ledger.bench == "VAN2"


def test_that_a_new_shop_overwrites_nothing_and_needs_a_folder(path: Path) -> None:
    with pytest.raises(ShopFileRefused, match="is there already"):
        Ledger.create(path)
    with pytest.raises(ShopFileRefused, match="There is no folder"):
        Ledger.create(path.parent / "none" / "shop.chargebench")


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


def _step_2(connection: Connection) -> None:
    connection.exec_driver_sql("ALTER TABLE job ADD COLUMN colour TEXT")


def _bad_step(connection: Connection) -> None:
    _step_2(connection)
    connection.exec_driver_sql("no statement at all")


def _next_schema(monkeypatch: pytest.MonkeyPatch, step: migrations.Step) -> None:
    monkeypatch.setattr(shopfile, "STEPS", (*migrations.STEPS, step))


def test_that_an_upgrade_keeps_a_copy_and_every_entry(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    _next_schema(monkeypatch, _step_2)
    with pytest.raises(ShopFileRefused, match="older chargebench"):
        Reader.open_reading(path)
    with Ledger.open(path, backups=0) as ledger:
        assert ledger.head()[0] == 12
    (copy,) = dialect.backup_folder(path).iterdir()
    assert copy.name.startswith("before-schema-2-")
    monkeypatch.undo()
    with Ledger.open(copy, backups=0) as ledger:
        assert ledger.verify().ok
    with pytest.raises(ShopFileRefused, match="schema 2, this one knows 1"):
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
    _foreign(copy)
    with pytest.raises(ShopFileRefused, match="not a shop file"):
        restore(path, copy)
    shutil.copy(path, copy)
    _newer(copy)
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
