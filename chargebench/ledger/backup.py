"""Copies of a shop file: kept at opening and on demand, rotated; restored, the old kept aside."""

import os
import re
import sys
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, func, select

from chargebench.errors import ShopFileRefused
from chargebench.ledger import dialect, schema

KEEP = 10
ROTATED = re.compile(r"\d{8}T\d{12}Z-entry-(\d+)\.chargebench")
_BESIDE = ("", "-wal", "-shm", "-journal")


def settle(path: Path) -> None:
    """Wait until a file or folder is on the disk."""
    if path.is_dir() and sys.platform == "win32":
        return  # a folder can not be flushed there
    handle = os.open(path, os.O_RDONLY if path.is_dir() else os.O_RDWR)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def remove(path: Path) -> None:
    """Remove a database file with what SQLite keeps beside it."""
    for ending in _BESIDE:
        path.with_name(path.name + ending).unlink(missing_ok=True)


def _stamp() -> str:
    return datetime.now(UTC).strftime("%Y%m%dT%H%M%S%fZ")


def write(connection: Connection, target: Path) -> Path:
    """Copy the whole shop file to a path: complete under its name, or not there at all."""
    half = target.with_name(target.name + ".new")
    remove(half)
    try:
        dialect.copy_into(connection, half)
        settle(half)
        half.replace(target)
        settle(target.parent)
    except OSError as problem:
        raise ShopFileRefused(
            f"The backup {target} can not be written: {problem.strerror}. Choose another folder."
        ) from problem
    finally:
        with suppress(OSError):
            remove(half)
    return target


def keep(connection: Connection, path: Path, *, label: str) -> Path:
    """Copy into the backup folder under a label that rotation leaves alone."""
    folder = dialect.backup_folder(path)
    try:
        folder.mkdir(exist_ok=True)
    except OSError as problem:
        raise ShopFileRefused(
            f"The folder {folder} can not be made: {problem.strerror}. "
            "Move the shop file to a folder you may write in."
        ) from problem
    return write(connection, folder / f"{label}-{_stamp()}.chargebench")


def rotate(connection: Connection, path: Path, *, keep_newest: int) -> Path | None:
    """Keep a copy if anything changed since the last one; drop the oldest beyond `keep_newest`."""
    kept = backups(path)
    with connection.begin():
        count = connection.execute(select(func.count()).select_from(schema.entry)).scalar_one()
        last_typed = connection.execute(select(func.max(schema.typed.c.kept_at))).scalar()
    if kept and _covers(kept[0], count, last_typed):
        return None
    folder = dialect.backup_folder(path)
    folder.mkdir(exist_ok=True)
    made = write(connection, folder / f"{_stamp()}-entry-{count}.chargebench")
    for old in backups(path)[keep_newest:]:
        old.unlink(missing_ok=True)
    return made


def _covers(newest: Path, count: int, last_typed: str | None) -> bool:
    match = ROTATED.fullmatch(newest.name)
    if match is None or int(match[1]) != count:
        return False
    made_at = datetime.strptime(newest.name[:22], "%Y%m%dT%H%M%S%fZ").replace(tzinfo=UTC)
    return last_typed is None or datetime.fromisoformat(last_typed) < made_at


def backups(path: Path) -> list[Path]:
    """Rotated backups of a shop file, newest first."""
    folder = dialect.backup_folder(path)
    if not folder.is_dir():
        return []
    return sorted((f for f in folder.iterdir() if ROTATED.fullmatch(f.name)), reverse=True)


def restore(path: Path, copy: Path) -> Path | None:
    """Put a backup in the place of a shop file; the present file is kept aside and its path given.

    Nobody may have the shop file open.
    """
    dialect.check_header(copy)
    aside = None
    if path.exists():
        if not dialect.alone(path):
            raise ShopFileRefused(
                f"{path} is open in another window. Close it there, then restore again."
            )
        aside = path.with_name(f"{path.name}-aside-{_stamp()}")
    half = path.with_name(path.name + ".new")
    try:
        remove(half)
        half.write_bytes(copy.read_bytes())
        settle(half)
        if aside is not None:
            for ending in _BESIDE:
                part = path.with_name(path.name + ending)
                if part.exists():
                    part.rename(aside.with_name(aside.name + ending))
        half.replace(path)
        settle(path.parent)
    except OSError as problem:
        raise ShopFileRefused(
            f"{copy} could not be restored: {problem.strerror}. "
            f"{'The present file was not lost: ' + str(aside) if aside else ''}"
        ) from problem
    return aside
