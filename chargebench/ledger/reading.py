"""Questions to the ledger: entries, balances, histories, usage, registers, jobs, typed text."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, NamedTuple

import msgspec
from sqlalchemy import (
    ColumnElement,
    Connection,
    Select,
    bindparam,
    func,
    or_,
    select,
    tuple_,
    union_all,
)

from chargebench.ledger import dialect, sameness, schema
from chargebench.ledger.entry import Entry, Transfer, microseconds
from chargebench.ledger.prepared import Prepared
from chargebench.ledger.projection import Job, as_job

PAGE = 1_000
Key = tuple[int, int]

_entry, _transfer, _job = schema.entry, schema.transfer, schema.job
_ENTRY_COLUMNS = (*schema.HASHED, _entry.c.previous_hash, _entry.c.hash, _entry.c.position)
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


def one_entry(connection: Connection, entry_id: str) -> Entry | None:
    """The entry under an id, or None."""
    row = connection.execute(select(*_ENTRY_COLUMNS).where(_entry.c.id == entry_id)).first()
    return None if row is None else _entries(connection, [row])[0]


def _entries(connection: Connection, rows: Sequence[Sequence[Any]]) -> list[Entry]:
    """Entries of rows that hold `_ENTRY_COLUMNS`, their transfers read in one go."""
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
    query = select(*_ENTRY_COLUMNS).where(*conditions)
    if after is not None:
        query = query.where(place < after if newest_first else place > after)
    query = query.order_by(place.desc() if newest_first else place)
    rows = connection.execute(query.limit(size)).all()
    return _entries(connection, rows), rows[-1][11] if rows else after


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


def _lines_of(places: Sequence[str]) -> Select[Any]:
    """Every mass line of a place, under all its names, signed as the place sees it."""
    seen = (_transfer.c.entry, _transfer.c.line, _transfer.c.refrigerant, _transfer.c.as_typed)
    gained = select(
        *seen, _transfer.c.source.label("other"), _transfer.c.mass_mg.label("signed_mg")
    ).where(_transfer.c.target.in_(places))
    lost = select(
        *seen, _transfer.c.target.label("other"), (-_transfer.c.mass_mg).label("signed_mg")
    ).where(_transfer.c.source.in_(places))
    lines = union_all(gained, lost).subquery("line")
    return select(lines)


def history(connection: Connection, place: str, before: Key | None, limit: int) -> list[HistoryRow]:
    """Mass lines of a place, newest first, older than `before`, each with the balance after it."""
    names = sameness.read(connection)
    lines = _lines_of(sameness.called(names, place)).subquery("mass_line")
    place = names.get(place, place)
    key = tuple_(lines.c.entry, lines.c.line)
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
    running = {held.refrigerant: held.mass_mg for held in balances(connection, place)
               if held.place == place}  # fmt: skip
    if before is not None:
        query = query.where(key < before)
        newer = (
            select(lines.c.refrigerant, dialect.total(lines.c.signed_mg))
            .where(key >= before)
            .group_by(lines.c.refrigerant)
        )
        for refrigerant, signed_mg in connection.execute(newer):
            running[refrigerant] -= signed_mg
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


def rows(connection: Connection, register: str) -> dict[str, dict[str, str]]:
    """Every row of a register, by id."""
    table = schema.register_row
    query = select(table.c.id, table.c.content).where(table.c.register == register)
    return {
        row_id: msgspec.json.decode(content, type=dict[str, str])
        for row_id, content in connection.execute(query.order_by(table.c.id))
    }


def _found(connection: Connection, find: str) -> Any:
    """Condition on jobs: number, equipment, or words of the equipment's or its site's row."""
    table, words = schema.register_row, find.casefold()
    sites = select(table.c.id).where(
        table.c.register == "site", table.c.words.contains(words, autoescape=True)
    )
    at_site = [
        table.c.words.contains(f"\n{site.casefold()}\n", autoescape=True)
        for site in connection.execute(sites.limit(50)).scalars()
    ]
    equipment = select(table.c.id).where(
        table.c.register == "equipment",
        or_(table.c.words.contains(words, autoescape=True), *at_site),
    )
    return or_(
        func.lower(_job.c.number).contains(words, autoescape=True),
        func.lower(_job.c.equipment).contains(words, autoescape=True),
        _job.c.equipment.in_(equipment),
    )


def jobs(
    connection: Connection,
    *,
    state: str | None,
    find: str,
    equipment: str | None,
    before: int | None,
    limit: int | None,
) -> list[Job]:
    """Jobs, newest first, opened before the job whose `opened_by` is given."""
    conditions: list[ColumnElement[bool]] = []
    if state is not None:
        conditions.append(_job.c.state == state)
    if equipment is not None:
        conditions.append(_job.c.equipment == equipment)
    if before is not None:
        conditions.append(_job.c.opened_by < before)
    conditions += [_found(connection, word) for word in find.split()]
    query = select(_job).where(*conditions).order_by(_job.c.opened_by.desc())
    return [as_job(row) for row in connection.execute(query.limit(limit))]


def typed(connection: Connection, job: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """Open steps of a job with their text as typed."""
    query = select(schema.typed.c.step, schema.typed.c.content).where(schema.typed.c.job == job)
    for step, content in connection.execute(query.order_by(schema.typed.c.step)).all():
        yield step, msgspec.json.decode(content)
