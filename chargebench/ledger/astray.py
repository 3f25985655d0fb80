"""A shop file that something else copied, replaced or took away; seen before work goes on in it.

While a bench has its file open the file itself says so. It stops saying so when it is closed,
before SQLite folds its WAL in and removes it; a crash leaves both. So a file that says it is open
and has no WAL beside it is half of a copy.
"""

from contextlib import suppress
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, delete, func, select
from sqlalchemy.exc import DBAPIError

from chargebench.errors import ShopFileRefused, StorageRefused
from chargebench.ledger import backup, dialect, schema, sqlite
from chargebench.ledger.entry import now_text
from chargebench.words import joined, say

OPEN, RESTORED = "open_since", "restored_at"  # keys of what a file says of itself
Identity = tuple[int, int]
_SAY = dialect.put(schema.about)
_OURS = ("-wal", "-shm", "-journal", "-backups", "-aside-", ".new")  # what we keep beside a file


def identity(path: Path) -> Identity:
    """Which file stands at a path, whatever was there before or comes after."""
    found = path.stat()
    return found.st_dev, found.st_ino


def check_there(path: Path, opened: Identity) -> None:
    """Refuse to record in a file that is no longer the one at its path: nobody would find it."""
    try:
        now: Identity | None = identity(path)
    except OSError:
        now = None
    if now == opened:
        return
    what = "is gone" if now is None else "is another file now"
    raise StorageRefused(
        say(
            "Nothing was recorded: {path} {what}. A drive was taken away, or a tool "
            "that keeps folders the same replaced it. Leave what is typed on the "
            "screen, put the file back, and open the shop again.",
            path=path,
            what=what,
        )
    )


def has_wal(path: Path) -> bool:
    """Whether a WAL stands beside a file; asked before SQLite opens it, which makes one."""
    return path.with_name(f"{path.name}-wal").exists()


def check_whole(path: Path, connection: Connection, *, had_wal: bool) -> None:
    """Refuse a file that is half of a copy, or an older one than its newest backup."""
    said = _about(connection)
    if OPEN in said and not had_wal:
        raise ShopFileRefused(
            say(
                "{path} was copied while it was open, without {path_2}-wal, which "
                "belongs beside it and may hold what was recorded last. Put that file "
                "beside it; or restore the newest backup; or go on with what is here and "
                "in the backups, in a new file: chargebench rescue --shop OLD --out NEW",
                path=path,
                path_2=path.name,
            )
        )
    newest = next(iter(backup.backups(path)), None)
    if newest is None:
        return
    made_at, entries = backup.made(newest)
    restored = said.get(RESTORED)
    if restored and datetime.fromisoformat(restored) > made_at:
        return
    here = connection.execute(select(func.coalesce(func.sum(schema.head.c.number), 0))).scalar_one()
    if here < entries:
        raise ShopFileRefused(
            say(
                "{path} holds {here} entries, its backup {newest} holds {entries}: an "
                "older copy was put in its place. Restore that backup; or bring what is "
                "in both into a new file: chargebench rescue --shop OLD --out NEW",
                path=path,
                here=here,
                newest=newest.name,
                entries=entries,
            )
        )


def say_open(connection: Connection) -> None:
    """Write into the file itself, not its WAL alone, that it is open from now on."""
    with suppress(DBAPIError):  # a full disk must not keep the bench from its book
        sqlite.begin_writing(connection)
        with connection.begin():
            connection.execute(_SAY, {"key": OPEN, "value": now_text()})
        sqlite.checkpoint(connection)


def say_closed(connection: Connection) -> None:
    """Take that back; what was recorded is in the file before it is closed."""
    with suppress(DBAPIError):
        sqlite.begin_writing(connection)
        with connection.begin():
            connection.execute(delete(schema.about).where(schema.about.c.key == OPEN))
        sqlite.checkpoint(connection)


def copies_beside(path: Path, connection: Connection) -> list[str]:
    """What further files of this shop stand in its folder, such as a sync tool leaves."""
    said: list[str] = []
    with suppress(OSError):
        for file in sorted(path.parent.iterdir()):
            if (
                file.name != path.name
                and file.name.startswith(path.stem)
                and not any(ours in file.name for ours in _OURS)
                and file.is_file()
            ):
                said += _compared(file, connection)
    return said


def _compared(other: Path, connection: Connection) -> list[str]:
    """How another file stands to this one; nothing if it is not of this shop, or is behind it."""
    try:
        sqlite.check_header(other)
        engine = sqlite.engine(other, writing=False, mode=sqlite.untouched(other))
        try:
            with engine.connect() as copy, copy.begin():
                if _about(copy).get("shop") != _about(connection).get("shop"):
                    return []
                return _apart(other, connection, copy)
        finally:
            engine.dispose()
    except (ShopFileRefused, DBAPIError):
        return []  # no shop, or one that can not be read: nothing to go on with


def _apart(other: Path, connection: Connection, copy: Connection) -> list[str]:
    here, there = _heads(connection), _heads(copy)
    parted = [
        bench
        for bench in sorted(here.keys() & there.keys())
        if (both := min(here[bench], there[bench]))
        and _hash_at(connection, bench, both) != _hash_at(copy, bench, both)
    ]
    if parted:
        said = say(
            "{other} beside this file is a copy of this shop in which work went on "
            "by itself (bench {parted}). Nothing recorded there since is here. Keep "
            "it, look it through, and record here what is missing.",
            other=other.name,
            parted=", ".join(parted),
        )
        return [said]
    more = [
        say(
            "{number} further entries of bench {bench}",
            number=number - here.get(bench, 0),
            bench=bench,
        )
        for bench, number in sorted(there.items())
        if number > here.get(bench, 0)
    ]
    if more:
        said = say(
            "{other} beside this file is a later copy of this shop, with {more}. "
            "Before anything is recorded here, go back to that file as to a backup.",
            other=other.name,
            more=joined(" and ", more),
        )
        return [said]
    return []


def _about(connection: Connection) -> dict[str, str]:
    rows = connection.execute(select(schema.about.c.key, schema.about.c.value))
    return {row[0]: row[1] for row in rows}


def _heads(connection: Connection) -> dict[str, int]:
    rows = connection.execute(select(schema.head.c.bench, schema.head.c.number))
    return {row[0]: row[1] for row in rows}


def _hash_at(connection: Connection, bench: str, number: int) -> bytes | None:
    found: bytes | None = connection.execute(
        select(schema.entry.c.hash).where(
            schema.entry.c.bench == bench, schema.entry.c.number == number
        )
    ).scalar()
    return found
