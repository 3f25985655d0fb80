"""Copies of a shop file: kept at opening and on demand, and rotated."""

import os
import re
from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

from sqlalchemy import Connection, func, select

from chargebench.errors import ShopFileRefused
from chargebench.ledger import schema, sqlite
from chargebench.words import say

KEEP = 10
ROTATED = re.compile(r"\d{8}T\d{12}Z-entry-(\d+)\.chargebench")
BESIDE = ("", "-wal", "-shm", "-journal")


def settle(path: Path) -> None:
    """Wait until a file is on the disk."""
    handle = os.open(path, os.O_RDONLY if path.is_dir() else os.O_RDWR)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def settle_folder(path: Path) -> None:
    """Wait until the names in a folder are on the disk, where a folder can be opened for that."""
    with suppress(PermissionError):  # Windows has no such thing and needs none
        settle(path)


def remove(path: Path) -> None:
    """Remove a database file with what SQLite keeps beside it."""
    for ending in BESIDE:
        path.with_name(path.name + ending).unlink(missing_ok=True)


def stamp() -> str:
    """The present moment for a file name; names sort by time."""
    return datetime.now(UTC).strftime("%Y%m%dT%H%M%S%fZ")


def write(connection: Connection, target: Path) -> Path:
    """Copy the whole shop file to a path: complete under its name, or not there at all."""
    half = target.with_name(target.name + ".new")
    try:
        remove(half)
        sqlite.copy_into(connection, half)
        settle(half)
        half.replace(target)
        settle_folder(target.parent)
    except (OSError, *sqlite.ERRORS) as problem:
        reason = getattr(problem, "strerror", None) or sqlite.says(problem) or str(problem)
        raise ShopFileRefused(
            say("The backup {target} can not be written: {reason}.", target=target, reason=reason)
        ) from problem
    finally:
        with suppress(OSError):
            remove(half)
    return target


def _folder(path: Path) -> Path:
    folder = sqlite.backup_folder(path)
    try:
        folder.mkdir(exist_ok=True)
    except OSError as problem:
        raise ShopFileRefused(
            say(
                "The folder {folder} for backups can not be made: {strerror}. Move the "
                "shop file to a folder you may write in.",
                folder=folder,
                strerror=problem.strerror,
            )
        ) from problem
    return folder


def keep(connection: Connection, path: Path, *, label: str) -> Path:
    """Copy into the backup folder under a label that rotation leaves alone."""
    return write(connection, _folder(path) / f"{label}-{stamp()}.chargebench")


def rotate(connection: Connection, path: Path, *, keep_newest: int) -> Path | None:
    """Keep a copy if anything changed since the last one; drop the oldest beyond `keep_newest`."""
    kept = backups(path)
    with connection.begin():
        count = connection.execute(select(func.count()).select_from(schema.entry)).scalar_one()
        last_typed = connection.execute(select(func.max(schema.typed.c.kept_at))).scalar()
    if kept and _covers(kept[0], count, last_typed):
        return None
    made = write(connection, _folder(path) / f"{stamp()}-entry-{count}.chargebench")
    for old in backups(path)[keep_newest:]:
        old.unlink(missing_ok=True)
    return made


def _covers(newest: Path, count: int, last_typed: str | None) -> bool:
    made_at, entries = made(newest)
    if entries != count:
        return False
    return last_typed is None or datetime.fromisoformat(last_typed) < made_at


def made(rotated: Path) -> tuple[datetime, int]:
    """When a rotated backup was made, and how many entries it holds, by its name."""
    match = ROTATED.fullmatch(rotated.name)
    assert match is not None, rotated
    made_at = datetime.strptime(rotated.name[:22], "%Y%m%dT%H%M%S%fZ").replace(tzinfo=UTC)
    return made_at, int(match[1])


def backups(path: Path) -> list[Path]:
    """Rotated backups of a shop file, newest first."""
    folder = sqlite.backup_folder(path)
    if not folder.is_dir():
        return []
    return sorted((f for f in folder.iterdir() if ROTATED.fullmatch(f.name)), reverse=True)
