"""The history of a place: its mass lines, newest first, each with what the place held after it."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, Select, Subquery, select, tuple_, union_all

from chargebench.ledger import dialect, sameness, schema

Key = tuple[int, int]
_entry, _transfer, _job = schema.entry, schema.transfer, schema.job


@dataclass(frozen=True, slots=True)
class HistoryRow:
    """One mass line as seen from a place, with what the place held after it."""

    key: Key
    number: int
    bench: str
    entry: str
    happened_at: datetime
    kind: str
    job: str | None
    job_number: str | None
    other: str
    refrigerant: str
    mass_mg: int
    running_mg: int
    as_typed: str


def _ends(place: str) -> Iterator[Select[Any]]:
    """Mass lines that came to a place, and those that left it, signed as the place sees them."""
    for end, other, sign in (("target", "source", 1), ("source", "target", -1)):
        yield select(
            _transfer.c.entry,
            _transfer.c.line,
            _transfer.c.refrigerant,
            _transfer.c.as_typed,
            _transfer.c[other].label("other"),
            (sign * _transfer.c.mass_mg).label("signed_mg"),
        ).where(_transfer.c[end] == place)


def _newest(
    places: Sequence[str], refrigerants: Iterable[str], before: Key | None, limit: int
) -> Subquery:
    """The newest mass lines of a place under all its names, and some more.

    Each end of each refrigerant is a range of an index in the order recorded, of which only the
    last rows are read, however long the history.
    """
    entry, line = _transfer.c.entry, _transfer.c.line
    parts = []
    for refrigerant in refrigerants:
        for lines in (each for place in places for each in _ends(place)):
            query = lines.where(_transfer.c.refrigerant == refrigerant)
            if before is not None:
                query = query.where(entry <= before[0], tuple_(entry, line) < before)
            query = query.order_by(entry.desc(), line.desc()).limit(limit)
            parts.append(select(query.subquery()))
    return union_all(*parts).subquery("mass_line")


def _held(connection: Connection, place: str) -> dict[str, int]:
    """What a place holds of each refrigerant it ever held."""
    table = schema.balance.c
    held = select(table.refrigerant, table.mass_mg).where(table.place == place)
    return {row.refrigerant: row.mass_mg for row in connection.execute(held)}


def _since(
    connection: Connection, places: Sequence[str], refrigerants: Iterable[str], key: Key
) -> dict[str, int]:
    """What a place gained of each refrigerant from a mass line on; served by the index alone."""
    line = _transfer.c
    gains = [
        select(line.refrigerant, (sign * line.mass_mg).label("gain_mg")).where(
            end == place,
            line.refrigerant == refrigerant,
            line.entry >= key[0],
            tuple_(line.entry, line.line) >= key,
        )
        for refrigerant in refrigerants
        for place in places
        for end, sign in ((line.target, 1), (line.source, -1))
    ]
    gained = union_all(*gains).subquery("gained").c
    gain = dialect.total(gained.gain_mg).label("gain_mg")
    sums = select(gained.refrigerant, gain).group_by(gained.refrigerant)
    return {row.refrigerant: row.gain_mg for row in connection.execute(sums)}


def history(connection: Connection, place: str, before: Key | None, limit: int) -> list[HistoryRow]:
    """Mass lines of a place, newest first, older than `before`, each with the balance after it."""
    names = sameness.read(connection)
    places = sameness.called(names, place)
    running = _held(connection, names.get(place, place))
    if not running:
        return []
    if before is not None:
        newer = _since(connection, places, running, before)
        for refrigerant, gained_mg in newer.items():
            running[refrigerant] -= gained_mg
    lines = _newest(places, running, before, limit)
    query = (
        select(
            lines, _entry.c.number, _entry.c.bench, _entry.c.id, _entry.c.happened_at,
            _entry.c.kind, _entry.c.job, _job.c.number.label("job_number"),
        )
        .join(_entry, _entry.c.position == lines.c.entry)
        .outerjoin(_job, _job.c.id == _entry.c.job)
        .order_by(lines.c.entry.desc(), lines.c.line.desc())
        .limit(limit)
    )  # fmt: skip
    rows = []
    for line in connection.execute(query):
        after = running[line.refrigerant]
        running[line.refrigerant] = after - line.signed_mg
        rows.append(
            HistoryRow(
                key=(line.entry, line.line),
                number=line.number,
                bench=line.bench,
                entry=line.id,
                happened_at=datetime.fromisoformat(line.happened_at),
                kind=line.kind,
                job=line.job,
                job_number=line.job_number,
                other=line.other,
                refrigerant=line.refrigerant,
                mass_mg=line.signed_mg,
                running_mg=after,
                as_typed=line.as_typed,
            )
        )
    return rows
