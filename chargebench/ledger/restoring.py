"""Put a backup in the place of a shop file; the present file is kept aside."""

from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from sqlalchemy import Connection, func, select

from chargebench.errors import ShopFileRefused
from chargebench.ledger import astray, backup, dialect, schema, sqlite
from chargebench.ledger.entry import now_text
from chargebench.ledger.migrations import STEPS
from chargebench.ledger.place import Place, place_of
from chargebench.ledger.shopfile import refusing
from chargebench.words import joined, say


@dataclass(frozen=True, slots=True)
class Kept:
    """A backup one can go back to."""

    path: Path
    made_at: datetime
    entries: int
    size: int


@dataclass(frozen=True, slots=True)
class GoingBack:
    """What going back to a copy takes away from the present file; None where it can not be told."""

    entries: int  # in the copy
    lost: int | None  # entries of the present file that the copy does not hold
    lost_typed: int | None  # open steps whose text was kept since
    last: str = ""  # when the last of the lost was recorded

    @property
    def sentence(self) -> str:
        """In words."""
        holds = say("The copy holds {entries} entries.", entries=self.entries)
        if self.lost is None:
            return say(
                "{holds} The present file can not be read, so what it holds beyond "
                "that can not be told; it is kept aside.",
                holds=holds,
            )
        gone = [
            say("{lost} entries, the last recorded {last}", lost=self.lost, last=self.last)
            if self.lost
            else "",
            say("the text of {lost_typed} open steps", lost_typed=self.lost_typed)
            if self.lost_typed
            else "",
        ]
        said = joined(" and ", (each for each in gone if each))
        if not said:
            return say("{holds} The present file holds nothing beyond that.", holds=holds)
        return say(
            "{holds} Going back leaves out {said}; the present file is kept aside with them.",
            holds=holds,
            said=said,
        )


def kept(path: Path | str) -> list[Kept]:
    """Rotated backups of a shop file, newest first."""
    return [
        Kept(copy, *backup.made(copy), copy.stat().st_size) for copy in backup.backups(Path(path))
    ]


def going_back(path: Path | str, copy: Path | str) -> GoingBack:
    """What would be left out; neither file is touched.

    Raises
    ------
    ShopFileRefused
        The copy is no shop file that can be read.
    """
    path, copy = Path(path), Path(copy)
    sqlite.check_header(copy)
    engine = sqlite.engine(copy, writing=False, mode=sqlite.untouched(copy))
    try:
        with refusing(copy), engine.connect() as connection, connection.begin():
            found = _Held.of(connection)
            try:
                return _left_out(path, found, connection)
            except ShopFileRefused:
                return GoingBack(found.entries, None, None)
    finally:
        engine.dispose()


@dataclass(frozen=True, slots=True)
class _Held:
    """What a file holds, as far as comparing takes it."""

    heads: Mapping[str, tuple[int, bytes]]
    entries: int
    typed_until: str

    @classmethod
    def of(cls, connection: Connection) -> "_Held":
        """Read it."""
        count = connection.execute(select(func.count()).select_from(schema.entry)).scalar_one()
        heads = connection.execute(select(schema.head))
        newest = connection.execute(select(func.max(schema.typed.c.kept_at))).scalar()
        return cls({row[0]: (row[1], row[2]) for row in heads}, count, newest or "")


def _left_out(path: Path, found: _Held, copy: Connection) -> GoingBack:
    sqlite.check_header(path)
    engine = sqlite.engine(path, writing=False)
    table = schema.entry
    try:
        with refusing(path), engine.connect() as present, present.begin():
            typed = select(func.count()).where(schema.typed.c.kept_at > found.typed_until)
            kept_since = present.execute(typed).scalar_one()
            if all(_has(present, bench, *head) for bench, head in found.heads.items()):
                lost = _Held.of(present).entries - found.entries
                last = present.execute(
                    select(table.c.recorded_at).order_by(table.c.position.desc()).limit(1)
                ).scalar()
                return GoingBack(found.entries, lost, kept_since, (last or "") if lost else "")
            there = set(copy.execute(select(table.c.id)).scalars())  # the two went apart
            alone = [
                at
                for entry, at in present.execute(select(table.c.id, table.c.recorded_at))
                if entry not in there
            ]
            return GoingBack(found.entries, len(alone), kept_since, max(alone, default=""))
    finally:
        engine.dispose()


def _has(connection: Connection, bench: str, number: int, digest: bytes) -> bool:
    """Whether a chain passes through an entry with this hash."""
    table = schema.entry
    stands = select(table.c.hash).where(table.c.bench == bench, table.c.number == number)
    return number == 0 or connection.execute(stands).scalar() == digest


def restore(place: Place | str, copy: Path | str) -> Path | None:
    """Restore a copy; gives back where the present file went, or None if there was none.

    Nobody may have the shop file open.
    """
    path, copy = place_of(place), Path(copy)
    if not isinstance(path, Path):
        raise ShopFileRefused(
            say(
                "{path} is kept on a server; a file is not put in its place. Whoever "
                "looks after the server restores its own backup.",
                path=path,
            )
        )
    sqlite.check_header(copy)
    half = path.with_name(path.name + ".new")
    try:
        backup.remove(half)
        _copy_sound(copy, half)
        if path.exists() and not sqlite.alone(path):
            raise ShopFileRefused(
                say(
                    "{path} is open in another window. Close it there, then restore again.",
                    path=path,
                )
            )
        aside = _set_aside(path)
        half.replace(path)
        backup.settle_folder(path.parent)
    except OSError as problem:
        raise ShopFileRefused(
            say(
                "{copy} could not be restored: {strerror}. The present file is kept as "
                "{path} or beside it under a name with “aside”.",
                copy=copy,
                strerror=problem.strerror,
                path=path,
            )
        ) from problem
    finally:
        with suppress(OSError):
            backup.remove(half)
    return aside


def _copy_sound(copy: Path, half: Path) -> None:
    """Copy a backup that this program can open and whose pages are sound."""
    engine = sqlite.engine(copy, writing=False)
    try:
        with refusing(copy), engine.connect() as connection:
            with connection.begin():
                version = sqlite.version(connection)
                damage = sqlite.damage(connection)
            if version > len(STEPS):
                raise ShopFileRefused(
                    say(
                        "{copy} was made by a newer chargebench. Install the newer program.",
                        copy=copy,
                    )
                )
            if damage:
                raise ShopFileRefused(
                    say(
                        "{copy} is damaged ({damage}). Choose another backup.",
                        copy=copy,
                        damage=damage[0],
                    )
                )
            sqlite.copy_into(connection, half)
    finally:
        engine.dispose()
    _say_restored(half)
    backup.settle(half)


def _say_restored(half: Path) -> None:
    """Say so in the file: that it holds less than backups made before is then no mishap."""
    engine = sqlite.engine(half, writing=True)
    try:
        with refusing(half), engine.connect() as connection, connection.begin():
            connection.execute(
                dialect.put(schema.about), {"key": astray.RESTORED, "value": now_text()}
            )
    finally:
        engine.dispose()


def _set_aside(path: Path) -> Path | None:
    if not path.exists():
        return None
    aside = path.with_name(f"{path.name}-aside-{backup.stamp()}")
    for ending in backup.BESIDE:
        part = path.with_name(path.name + ending)
        if part.exists():
            part.rename(aside.with_name(aside.name + ending))
    return aside
