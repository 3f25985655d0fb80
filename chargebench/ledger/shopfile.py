"""A shop opened and checked, refused in words; a shop file made whole or not at all."""

import re
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection, Engine, inspect, select

from chargebench.errors import ServerGone, ShopFileRefused
from chargebench.ledger import backup, dialect, schema, sqlite
from chargebench.ledger.entry import GENESIS, new_id, now_text
from chargebench.ledger.migrations import STEPS, Step
from chargebench.ledger.place import Place
from chargebench.words import say

BENCH = re.compile(r"[A-Z][A-Z0-9]{0,7}")
MEANWHILE = (
    "Until it does, this bench can go on in a file of its own and hand over its entries later."
)


@contextmanager
def refusing(place: Place) -> Iterator[None]:
    """Turn what the database says about the shop into a refusal; a bug in our SQL stays a bug."""
    own = dialect.at(place)
    try:
        yield
    except dialect.ERRORS as problem:
        said = own.says(problem)
        if said is None:
            raise
        if own.gone(problem):
            raise ServerGone(
                say(
                    "{place} can not be used: {said}. {meanwhile}",
                    place=place,
                    said=said,
                    meanwhile=MEANWHILE,
                )
            ) from problem
        raise ShopFileRefused(
            say("{place} can not be used: {said}.", place=place, said=said)
        ) from problem
    except UnicodeDecodeError as problem:  # text that is none: what a damaged page holds
        raise ShopFileRefused(
            say("{place} is damaged: a text in it can not be read.", place=place)
        ) from problem


def check_bench(bench: str) -> None:
    """Refuse a name that can not head job numbers."""
    if not BENCH.fullmatch(bench):
        raise ShopFileRefused(
            say(
                "“{bench}” can not name a bench; a capital letter and up to seven more "
                "capitals or digits were expected, for example B. Job numbers begin with "
                "it.",
                bench=bench,
            )
        )


def create(path: Path, bench: str) -> None:
    """Make a shop file: under another name first, so that a kill leaves none that is half made."""
    check_bench(bench)
    if path.exists():
        raise ShopFileRefused(
            say("{path} is there already. Open it, or choose another name.", path=path)
        )
    if not path.parent.is_dir():
        raise ShopFileRefused(
            say("There is no folder {parent}. Make it, or choose another.", parent=path.parent)
        )
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
    engine = sqlite.engine(half, writing=True, mode="rwc")
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
            sqlite.set_version(connection, len(STEPS))
    finally:
        engine.dispose()


def connect(place: Place, *, writing: bool, guarded: bool = True) -> tuple[Engine, Connection]:
    """Open a shop, upgrading a file that is older; refuse what is none or lost its guards."""
    own = dialect.at(place)
    engine = own.engine(place, writing=writing)
    with refusing(place):
        connection = engine.connect()
        try:
            _check_version(place, connection, writing=writing)
            if writing:
                own.let_readers_in(connection)
            with connection.begin():
                if guarded:  # not for verify, which is to say what is wrong with such a shop
                    _check_tables(place, connection)
                    _check_guards(place, connection)
                    _check_end(place, connection)
        except BaseException:
            connection.close()
            engine.dispose()
            raise
    return engine, connection


def newer(place: Place, version: int) -> str:
    """Why a shop of a later schema is left alone."""
    return say(
        "{place} was made by a newer chargebench (schema {version}, this one "
        "knows {count}). Install the newer program, or open a backup from before "
        "the upgrade.",
        place=place,
        version=version,
        count=len(STEPS),
    )


def _check_version(place: Place, connection: Connection, *, writing: bool) -> None:
    with connection.begin():
        version = dialect.of(connection).version(connection)
    if version > len(STEPS):
        raise ShopFileRefused(newer(place, version))
    if version == len(STEPS):
        return
    if not isinstance(place, Path):
        raise ShopFileRefused(
            say(
                "{place} was made by an older chargebench. Its owner, after a backup of "
                "the server, brings it up for every bench with: chargebench upgrade-shop.",
                place=place,
            )
        )
    if not writing:
        raise ShopFileRefused(
            say(
                "{place} was made by an older chargebench. Open it once in the window; a "
                "copy is kept before it is upgraded.",
                place=place,
            )
        )
    backup.keep(connection, place, label=f"before-schema-{len(STEPS)}")
    upgrade(connection, STEPS)


def upgrade(connection: Connection, steps: Sequence[Step]) -> None:
    """Run the steps a file has not seen, all in one transaction or none."""
    own = dialect.of(connection)
    own.begin_writing(connection)
    with connection.begin():
        for step in steps[own.version(connection) :]:
            step(connection)
        own.set_version(connection, len(steps))


def _check_tables(place: Place, connection: Connection) -> None:
    missing = set(schema.metadata.tables) - set(inspect(connection).get_table_names())
    if missing:
        raise ShopFileRefused(
            say(
                "{place} is damaged: it has no {missing}. Restore the newest backup.",
                place=place,
                missing=", ".join(sorted(missing)),
            )
        )


def _check_guards(place: Place, connection: Connection) -> None:
    missing = dialect.of(connection).missing_guards(connection)
    if missing:
        raise ShopFileRefused(
            say(
                "{place} lost what keeps its records from being changed ({missing}): "
                "another tool was at it. Verify the file to see what was changed, then "
                "mend its guards, which is recorded, or restore a backup.",
                place=place,
                missing=", ".join(missing),
            )
        )


def _check_end(place: Place, connection: Connection) -> None:
    """The last entry is the one the head of its chain names; the rest is for verify."""
    ends = connection.execute(
        select(schema.head.c.bench, schema.head.c.number, schema.head.c.hash)
    ).all()
    if not ends:
        raise ShopFileRefused(
            say("{place} is damaged: it names no bench. Restore the newest backup.", place=place)
        )
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
                say(
                    "{place} does not end as it was left: entry {number} of bench {bench} "
                    "was the last, now it is {found} or its content differs. Verify the "
                    "file, then restore a backup.",
                    place=place,
                    number=number,
                    bench=bench,
                    found=found[0],
                )
            )
