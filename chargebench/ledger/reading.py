"""Questions to the ledger: entries, balances, registers, typed text."""

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from typing import Any, NamedTuple

import msgspec
from sqlalchemy import (
    Connection,
    bindparam,
    select,
)

from chargebench.ledger import dialect, sameness, schema
from chargebench.ledger.entry import Entry, Transfer, microseconds
from chargebench.ledger.prepared import Prepared

PAGE = 1_000
Key = tuple[int, int]

_entry, _transfer, _job = schema.entry, schema.transfer, schema.job
ENTRY_COLUMNS = (*schema.HASHED, _entry.c.previous_hash, _entry.c.hash, _entry.c.position)
_HEAD = Prepared(
    select(schema.head.c.number, schema.head.c.hash).where(
        schema.head.c.bench == bindparam("bench_is")
    )
)


class Balance(NamedTuple):
    """What a place holds of one refrigerant by the book; an empty place keeps its row at zero.

    A tuple, for a shop with thousands of cylinders asks for all of them after each signature.
    """

    place: str
    refrigerant: str
    mass_mg: int


def one_entry(connection: Connection, entry_id: str) -> Entry | None:
    """The entry under an id, or None."""
    row = connection.execute(select(*ENTRY_COLUMNS).where(_entry.c.id == entry_id)).first()
    return None if row is None else as_entries(connection, [row])[0]


def as_entries(connection: Connection, rows: Sequence[Sequence[Any]]) -> list[Entry]:
    """Entries of rows that hold `ENTRY_COLUMNS`, their transfers read in one go."""
    lines: dict[int, list[Transfer]] = {}
    if rows:
        found = connection.execute(
            select(_transfer.c.entry, *schema.MASS_LINE)
            .where(_transfer.c.entry.in_([row[11] for row in rows]))
            .order_by(_transfer.c.entry, _transfer.c.line)
        )
        for position, *line in found:
            lines.setdefault(position, []).append(Transfer(*line))
    return [
        Entry(
            id=row[0],
            bench=row[1],
            number=row[2],
            kind=row[3],
            job=row[4],
            happened_at=datetime.fromisoformat(row[5]),
            recorded_at=datetime.fromisoformat(row[6]),
            by=row[7],
            payload=msgspec.json.decode(row[8]),
            transfers=tuple(lines.get(row[11], ())),
            previous_hash=row[9].hex(),
            hash=row[10].hex(),
        )
        for row in rows
    ]


def holds_checkpoint(connection: Connection, head: Mapping[str, Any]) -> bool:
    """Whether a head of a chain is kept already, for the same reason."""
    table = schema.checkpoint
    query = select(table.c.id).where(*(table.c[key] == value for key, value in head.items()))
    return connection.execute(query.limit(1)).first() is not None


def entries_page(
    connection: Connection,
    conditions: Sequence[Any],
    after: int | None,
    size: int,
    *,
    newest_first: bool = False,
) -> tuple[list[Entry], int | None]:
    """Next entries past a position, in or against the order recorded, and the position reached."""
    place = _entry.c.position
    query = select(*ENTRY_COLUMNS).where(*conditions)
    if after is not None:
        query = query.where(place < after if newest_first else place > after)
    query = query.order_by(place.desc() if newest_first else place)
    rows = connection.execute(query.limit(size)).all()
    return as_entries(connection, rows), rows[-1][11] if rows else after


def entry_conditions(
    *,
    job: str | None,
    kind: str | Sequence[str] | None,
    since: datetime | None,
    until: datetime | None,
) -> list[Any]:
    """Conditions on entries; `until` itself is no longer in the period."""
    conditions: list[Any] = []
    if job is not None:
        conditions.append(_entry.c.job == job)
    if kind is not None:
        kinds = [kind] if isinstance(kind, str) else list(kind)
        conditions.append(_entry.c.kind.in_(kinds))
    if since is not None:
        conditions.append(_entry.c.happened_us >= microseconds(since))
    if until is not None:
        conditions.append(_entry.c.happened_us < microseconds(until))
    return conditions


def position_of(connection: Connection, entry_id: str) -> int:
    """Where an entry stands in the order recorded; 0 if there is none."""
    query = select(_entry.c.position).where(_entry.c.id == entry_id)
    return connection.execute(query).scalar() or 0


def head(connection: Connection, bench: str) -> tuple[int, bytes]:
    """Number and hash of a bench's last entry, as kept beside the chain."""
    number, digest = _HEAD.run(connection, {"bench_is": bench}).one()
    return number, digest


def last_bench(connection: Connection) -> str:
    """The bench that recorded last; empty where none has."""
    query = select(_entry.c.bench).order_by(_entry.c.position.desc()).limit(1)
    return connection.execute(query).scalar() or ""


def balance(connection: Connection, place: str, refrigerant: str) -> int:
    """What a place holds of a refrigerant, in milligrams; zero if it never held any."""
    name = sameness.read(connection).get(place, place)
    query = select(schema.balance.c.mass_mg).where(
        schema.balance.c.place == name, schema.balance.c.refrigerant == refrigerant
    )
    return connection.execute(query).scalar() or 0


def balances(connection: Connection, prefix: str) -> list[Balance]:
    """What every place whose name starts so holds, by place and refrigerant."""
    query = select(schema.balance).where(dialect.starts_with(schema.balance.c.place, prefix))
    ordered = query.order_by(schema.balance.c.place, schema.balance.c.refrigerant)
    with connection.execute(ordered) as found:
        # Straight from the driver: rows that know their columns would double the time.
        return list(map(Balance._make, found.cursor.fetchall()))


def rows(connection: Connection, register: str) -> dict[str, dict[str, str]]:
    """Every row of a register, by id."""
    table = schema.register_row
    query = select(table.c.id, table.c.content).where(table.c.register == register)
    return {
        row_id: msgspec.json.decode(content, type=dict[str, str])
        for row_id, content in connection.execute(query.order_by(table.c.id))
    }


def typed(connection: Connection, job: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """Open steps of a job with their text as typed."""
    query = select(schema.typed.c.step, schema.typed.c.content).where(schema.typed.c.job == job)
    for step, content in connection.execute(query.order_by(schema.typed.c.step)).all():
        yield step, msgspec.json.decode(content)
