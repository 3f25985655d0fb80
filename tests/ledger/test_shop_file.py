"""What is refused at opening and at making a shop file, and in what words."""

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from chargebench.errors import ShopFileRefused, StorageRefused
from chargebench.ledger import (
    Ledger,
    Reader,
)
from chargebench.ledger import (
    sqlite as dialect,
)
from tests.ledger import books


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
    books.foreign(tmp_path / "other.db")
    with pytest.raises(ShopFileRefused, match="is not a shop file"):
        Ledger.open(tmp_path / "other.db")


def test_that_a_newer_file_is_refused_and_left_alone(path: Path) -> None:
    books.newer(path)
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
