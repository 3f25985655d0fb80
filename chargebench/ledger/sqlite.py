"""Everything that is SQLite's own: connecting, locking, guards, errors, whole-file copies."""

import os
import shutil
import sqlite3
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event, select
from sqlalchemy.exc import DBAPIError
from sqlalchemy.pool import NullPool

from chargebench.errors import ShopFileRefused
from chargebench.ledger import schema
from chargebench.words import say

APPLICATION_ID = 0x63686267  # "chbg", in the file's header
BUSY_SECONDS = 5.0
LOCK_FILE = 1 << 16  # bytes that what SQLite keeps beside an open file may take at once
ERRORS = (DBAPIError, sqlite3.Error)
_MAGIC = b"SQLite format 3\x00"
_BEGIN = "chargebench.begin"

GUARDS: dict[str, str] = {
    f"{table}_no_{act}": (
        f"CREATE TRIGGER {table}_no_{act} BEFORE {act.upper()} ON {table} "
        f"BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END"
    )
    for table in ("entry", "transfer", "checkpoint", "picture")
    for act in ("update", "delete")
}


def check_header(path: Path) -> None:
    """Refuse what is not a shop file before SQLite touches it."""
    try:
        with path.open("rb") as file:
            header = file.read(100)
    except FileNotFoundError as problem:
        raise ShopFileRefused(
            say("There is no file {path}. Check the path, or make a new shop.", path=path)
        ) from problem
    except OSError as problem:
        raise ShopFileRefused(
            say(
                "{path} can not be read ({strerror}). Check the path and your rights to it.",
                path=path,
                strerror=problem.strerror,
            )
        ) from problem
    stamp = int.from_bytes(header[68:72], "big")
    if not header.startswith(_MAGIC) or stamp != APPLICATION_ID:
        raise ShopFileRefused(
            say(
                "{path} is not a shop file. Choose the file this program made, or a "
                "backup of it from the folder {name}.",
                path=path,
                name=backup_folder(path).name,
            )
        )


def backup_folder(path: Path) -> Path:
    """Folder beside a shop file in which its backups are kept."""
    return path.with_name(path.name + "-backups")


def _connect(path: Path, *, writing: bool, mode: str) -> sqlite3.Connection:
    connection = sqlite3.connect(
        f"{path.absolute().as_uri()}?mode={mode}",
        uri=True,
        timeout=BUSY_SECONDS,
        isolation_level=None,  # BEGIN is ours to choose
    )
    try:
        for pragma in ("foreign_keys=ON", "recursive_triggers=ON", "trusted_schema=OFF"):
            connection.execute(f"PRAGMA {pragma}")
        if writing:
            # In WAL mode NORMAL loses acknowledged entries when the power fails; FULL does not.
            connection.execute("PRAGMA synchronous=FULL")
            connection.execute("PRAGMA journal_size_limit=16777216")
        else:
            connection.execute("PRAGMA query_only=ON")
    except BaseException:
        connection.close()
        raise
    return connection


def _mode(path: Path, *, writing: bool) -> str:
    """How SQLite opens the file; to read where nothing can be written, without its lock file."""
    if writing:
        return "rw"
    room = shutil.disk_usage(path.parent).free > LOCK_FILE and os.access(path.parent, os.W_OK)
    return "rw" if room else untouched(path)


def engine(path: Path, *, writing: bool, mode: str = "") -> Engine:
    """Engine over one shop file; each connection it gives is really opened and really closed."""
    if mode != "rwc":
        check_header(path)
    mode = mode or _mode(path, writing=writing)
    made = create_engine(
        "sqlite+pysqlite://",
        creator=lambda: _connect(path, writing=writing, mode=mode),
        poolclass=NullPool,
    )

    @event.listens_for(made, "begin")
    def _begin(connection: Connection) -> None:
        connection.exec_driver_sql(connection.info.pop(_BEGIN, "BEGIN"))

    return made


def freshen(connection: Connection) -> None:
    """Nothing to do: a file does not hang up."""


def begin_writing(connection: Connection) -> None:
    """Let the next transaction take the write lock at once, so what it reads can not go stale."""
    connection.info[_BEGIN] = "BEGIN IMMEDIATE"


def hold(connection: Connection, names: Iterable[str]) -> None:
    """Nothing to do: whoever writes holds the whole file."""


def version(connection: Connection) -> int:
    """Schema of the file, which is kept in its header."""
    return int(pragma(connection, "user_version"))


def set_version(connection: Connection, number: int) -> None:
    """Note the schema in the file's header, and whose file it is."""
    pragma(connection, f"application_id={APPLICATION_ID}")
    pragma(connection, f"user_version={number}")


def about(connection: Connection) -> dict[str, str]:
    """What the file says of itself; one bench records in it, and it says which."""
    rows = connection.execute(select(schema.about.c.key, schema.about.c.value))
    return {row.key: row.value for row in rows}


def lacks(key: str) -> str:
    """What it means when the file does not say that of itself."""
    return say("is damaged: it does not say its {key}. Restore the newest backup.", key=key)


def pragma(connection: Connection, name: str) -> Any:
    """Value of a pragma, or what setting it answered."""
    answer = connection.exec_driver_sql(f"PRAGMA {name}")
    return answer.scalar() if answer.returns_rows else None


def let_readers_in(connection: Connection) -> None:
    """Let readers and the writer work side by side; a pragma that no transaction may hold."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    try:
        raw.execute("PRAGMA journal_mode=WAL").close()
    except sqlite3.Error as problem:
        raise DBAPIError("PRAGMA journal_mode=WAL", None, problem) from problem


def checkpoint(connection: Connection) -> None:
    """Write what waits in the WAL into the file, as far as nobody has to be waited for."""
    raw = connection.connection.driver_connection
    assert isinstance(raw, sqlite3.Connection)
    with suppress(sqlite3.Error):  # it is safe in the WAL; a disk that fails says so at a commit
        raw.execute("PRAGMA wal_checkpoint(PASSIVE)").close()


def untouched(path: Path) -> str:
    """How to open a file so that nothing is made beside it: not even by looking at it.

    Without a WAL that waits to be read, SQLite may take the file for one that nobody changes.
    """
    waiting = path.with_name(f"{path.name}-wal")
    return "ro" if waiting.exists() and waiting.stat().st_size else "ro&immutable=1"


def missing_guards(connection: Connection) -> list[str]:
    """Append-only guards that are not there as they were made."""
    rows = connection.exec_driver_sql("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")
    there = {name: " ".join(str(sql).split()) for name, sql in rows}
    return [name for name, sql in GUARDS.items() if there.get(name) != sql]


def put_back_guards(connection: Connection, names: list[str]) -> None:
    """Make guards anew that are missing or not as they were made."""
    for name in names:
        connection.exec_driver_sql(f"DROP TRIGGER IF EXISTS {name}")
        connection.exec_driver_sql(GUARDS[name])


def damage(connection: Connection) -> list[str]:
    """What SQLite itself finds wrong with the file's pages."""
    rows = connection.exec_driver_sql("PRAGMA quick_check(20)").scalars().all()
    return [] if rows == ["ok"] else [" ".join(str(row).split()) for row in rows]


def copy_into(connection: Connection, target: Path) -> None:
    """Copy the whole file through SQLite's backup interface; the copy stands alone."""
    source = connection.connection.driver_connection
    assert isinstance(source, sqlite3.Connection)
    copy = sqlite3.connect(target, isolation_level=None)
    try:
        source.backup(copy)
        copy.execute("PRAGMA journal_mode=DELETE")
        with suppress(sqlite3.OperationalError):  # a file of another program has no such table
            copy.execute("DELETE FROM about WHERE key = 'open_since'")  # the copy is not
    finally:
        copy.close()


def error_name(problem: BaseException) -> str:
    """SQLite's own name of an error, for example SQLITE_FULL."""
    inner = problem.orig if isinstance(problem, DBAPIError) else problem
    return str(getattr(inner, "sqlite_errorname", "") or "")


_READ_ONLY = (
    "it or its folder can not be written to. Move it to a folder you may write in, "
    "or change its rights"
)
_DAMAGED = (
    "it is damaged. Restore the newest backup, the present file is kept aside; or bring what can "
    "be read of both into a new file: chargebench rescue --shop OLD --out NEW"
)
_FULL = "the disk is full. Free some space and do it again"
_SAYS = {
    "SQLITE_FULL": _FULL,
    "SQLITE_IOERR_SHMSIZE": _FULL,  # no room for what stands beside an open file
    "SQLITE_BUSY": "another program is writing to it. Close that window or tool and do it again",
    "SQLITE_LOCKED": "another program holds it locked. Close that program and do it again",
    "SQLITE_READONLY": _READ_ONLY,
    "SQLITE_CANTOPEN": _READ_ONLY,
    "SQLITE_CORRUPT": _DAMAGED,
    "SQLITE_NOTADB": _DAMAGED,
    "SQLITE_IOERR": "the disk does not answer as it should. Check the disk and its cable",
}


def says(problem: BaseException) -> str | None:
    """What went wrong with the file and what can be done; None if it is no fault of the file."""
    name = error_name(problem)
    return next((text for start, text in _SAYS.items() if name.startswith(start)), None)


def gone(problem: BaseException) -> bool:  # noqa: ARG001
    """A file does not hang up; a drive that is not there is told of in other words."""
    return False


def alone(path: Path) -> bool:
    """Whether nobody else has the file open; folds what waits in the WAL into the file."""
    connection = sqlite3.connect(path, timeout=0.2, isolation_level=None)
    try:
        connection.execute("PRAGMA journal_mode=DELETE")
    except sqlite3.Error as problem:
        return not error_name(problem).startswith(("SQLITE_BUSY", "SQLITE_LOCKED"))
    finally:
        connection.close()
    return True
