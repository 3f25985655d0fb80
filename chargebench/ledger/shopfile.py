"""A shop file on disk: made whole or not at all, refused in words, upgraded after a copy."""

import os
import re
import shutil
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, select

from chargebench.errors import ShopFileRefused
from chargebench.ledger import backup, dialect, schema
from chargebench.ledger.entry import GENESIS, new_id, now_text
from chargebench.ledger.migrations import STEPS, Step

LOCK_FILE = 1 << 16  # bytes that what SQLite keeps beside an open file may take at once
BENCH = re.compile(r"[A-Z][A-Z0-9]{0,7}")


@contextmanager
def refusing(path: Path) -> Iterator[None]:
    """Turn what SQLite says about the file into a refusal; a bug in our SQL stays a bug."""
    try:
        yield
    except dialect.ERRORS as problem:
        said = dialect.says(problem)
        if said is None:
            raise
        raise ShopFileRefused(f"{path} can not be used: {said}.") from problem


def create(path: Path, bench: str) -> None:
    """Make a shop file: under another name first, so that a kill leaves none that is half made."""
    if not BENCH.fullmatch(bench):
        raise ShopFileRefused(
            f"“{bench}” can not name a bench; a capital letter and up to seven more capitals or "
            "digits were expected, for example B. Job numbers begin with it."
        )
    if path.exists():
        raise ShopFileRefused(f"{path} is there already. Open it, or choose another name.")
    if not path.parent.is_dir():
        raise ShopFileRefused(f"There is no folder {path.parent}. Make it, or choose another.")
    half = path.with_name(path.name + ".new")
    with refusing(path):
        backup.remove(half)
        try:
            _fill(half, bench)
            backup.settle(half)
            half.replace(path)
            backup.settle_folder(path.parent)
        finally:
            backup.remove(half)


def _fill(half: Path, bench: str) -> None:
    engine = dialect.engine(half, writing=True, mode="rwc")
    try:
        with engine.connect() as connection, connection.begin():
            for step in STEPS:
                step(connection)
            connection.execute(
                schema.about.insert(),
                [
                    {"key": "bench", "value": bench},
                    {"key": "shop", "value": new_id()},
                    {"key": "made_at", "value": now_text()},
                ],
            )
            connection.execute(schema.head.insert(), {"bench": bench, "number": 0, "hash": GENESIS})
            dialect.pragma(connection, f"application_id={dialect.APPLICATION_ID}")
            dialect.pragma(connection, f"user_version={len(STEPS)}")
    finally:
        engine.dispose()


def connect(path: Path, *, writing: bool, guarded: bool = True) -> tuple[Engine, Connection]:
    """Open a shop file, upgrading it if it is older; refuse what is not one or lost its guards."""
    dialect.check_header(path)
    engine = dialect.engine(path, writing=writing, mode=_mode(path, writing=writing))
    with refusing(path):
        connection = engine.connect()
        try:
            _check_version(path, connection, writing=writing)
            if writing:
                dialect.use_wal(connection)
            with connection.begin():
                if guarded:  # not for verify, which is to say what is wrong with such a file
                    _check_tables(path, connection)
                    _check_guards(path, connection)
                    _check_end(path, connection)
        except BaseException:
            connection.close()
            engine.dispose()
            raise
    return engine, connection


def _mode(path: Path, *, writing: bool) -> str:
    """How SQLite opens the file; to read where nothing can be written, without its lock file."""
    if writing:
        return "rw"
    room = shutil.disk_usage(path.parent).free > LOCK_FILE and os.access(path.parent, os.W_OK)
    return "rw" if room else dialect.untouched(path)


def _check_version(path: Path, connection: Connection, *, writing: bool) -> None:
    with connection.begin():
        version = dialect.pragma(connection, "user_version")
    if version > len(STEPS):
        raise ShopFileRefused(
            f"{path} was made by a newer chargebench (schema {version}, this one knows "
            f"{len(STEPS)}). Install the newer program, or open a backup from before the upgrade."
        )
    if version < len(STEPS):
        if not writing:
            raise ShopFileRefused(
                f"{path} was made by an older chargebench. Open it once in the window; "
                "a copy is kept before it is upgraded."
            )
        backup.keep(connection, path, label=f"before-schema-{len(STEPS)}")
        upgrade(connection, STEPS)


def upgrade(connection: Connection, steps: Sequence[Step]) -> None:
    """Run the steps a file has not seen, all in one transaction or none."""
    dialect.begin_writing(connection)
    with connection.begin():
        for step in steps[dialect.pragma(connection, "user_version") :]:
            step(connection)
        dialect.pragma(connection, f"user_version={len(steps)}")


def _check_tables(path: Path, connection: Connection) -> None:
    missing = set(schema.metadata.tables) - set(inspect(connection).get_table_names())
    if missing:
        raise ShopFileRefused(
            f"{path} is damaged: it has no {', '.join(sorted(missing))}. Restore the newest backup."
        )


def _check_guards(path: Path, connection: Connection) -> None:
    missing = dialect.missing_guards(connection)
    if missing:
        raise ShopFileRefused(
            f"{path} lost what keeps its records from being changed ({', '.join(missing)}): "
            "another tool was at it. Verify the file to see what was changed, then mend its "
            "guards, which is recorded, or restore a backup."
        )


def _check_end(path: Path, connection: Connection) -> None:
    """The last entry is the one the head of its chain names; the rest is for verify."""
    ends = connection.execute(
        select(schema.head.c.bench, schema.head.c.number, schema.head.c.hash)
    ).all()
    if not ends:
        raise ShopFileRefused(f"{path} is damaged: it names no bench. Restore the newest backup.")
    for bench, number, digest in ends:
        last = connection.execute(
            select(schema.entry.c.number, schema.entry.c.hash)
            .where(schema.entry.c.bench == bench)
            .order_by(schema.entry.c.number.desc())
            .limit(1)
        ).first()
        found = (0, GENESIS) if last is None else (last[0], last[1])
        if found != (number, digest):
            raise ShopFileRefused(
                f"{path} does not end as it was left: entry {number} of bench {bench} was the "
                f"last, now it is {found[0]} or its content differs. Verify the file, then "
                "restore a backup."
            )
