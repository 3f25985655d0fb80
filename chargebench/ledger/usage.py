"""The usage log: every mass line of a period with its job, and its totals by month."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Connection, Select, case, func, or_, select, tuple_

from chargebench.ledger import dialect, sameness, schema
from chargebench.ledger.entry import microseconds

_entry, _transfer, _job = schema.entry, schema.transfer, schema.job
UsageKey = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Filters:
    """What the usage log is narrowed to; an empty field narrows nothing."""

    refrigerant: str | None = None
    by: str | None = None
    equipment: str | None = None
    place: str | None = None
    kind: str | None = None
    job: str | None = None


@dataclass(frozen=True, slots=True)
class UsageRow:
    """One mass line of the usage log."""

    key: UsageKey
    number: int
    bench: str
    entry: str
    happened_at: datetime
    kind: str
    by: str
    job: str | None
    job_number: str | None
    equipment: str | None
    source: str
    target: str
    refrigerant: str
    mass_mg: int
    as_typed: str
    reversed: bool


@dataclass(frozen=True, slots=True)
class UsageTotal:
    """Mass of one refrigerant that went from one kind of place to another in a month."""

    month: str
    refrigerant: str
    source: str
    target: str
    mass_mg: int
    lines: int


def _narrowed(
    connection: Connection,
    query: Select[Any],
    since: datetime | None,
    until: datetime | None,
    filters: Filters,
) -> Select[Any]:
    names = sameness.read(connection)
    joined = query.join(_entry, _entry.c.position == _transfer.c.entry).outerjoin(
        _job, _job.c.id == _entry.c.job
    )
    conditions: list[ColumnElement[bool]] = []
    if since is not None:
        conditions.append(_entry.c.happened_us >= microseconds(since))
    if until is not None:
        conditions.append(_entry.c.happened_us < microseconds(until))
    for column, value in (
        (_transfer.c.refrigerant, filters.refrigerant),
        (_job.c.equipment, filters.equipment),
        (_entry.c.kind, filters.kind),
        (_entry.c.job, filters.job),
    ):
        if value is not None:
            conditions.append(column == value)
    if filters.by is not None:
        ids = [each.partition(":")[2] for each in sameness.called(names, f"person:{filters.by}")]
        conditions.append(_entry.c.by.in_(ids))
    if filters.place is not None:
        places = sameness.called(names, filters.place)
        conditions.append(or_(_transfer.c.source.in_(places), _transfer.c.target.in_(places)))
    return joined.where(*conditions)


def _undone() -> ColumnElement[bool]:
    """Whether the line belongs to an entry that was reversed, or to its reversal."""
    table = schema.reversed_entry
    return or_(_entry.c.id.in_(select(table.c.id)), _entry.c.kind == "reversal")


def usage(
    connection: Connection,
    since: datetime | None,
    until: datetime | None,
    filters: Filters,
    *,
    before: UsageKey | None,
    limit: int | None,
) -> Sequence[UsageRow]:
    """Mass lines of a period, newest first, older than `before`."""
    key = (_entry.c.happened_us, _transfer.c.entry, _transfer.c.line)
    query: Select[Any] = select(
        *key, _entry.c.number, _entry.c.bench, _entry.c.id, _entry.c.happened_at, _entry.c.kind,
        _entry.c.by, _entry.c.job, _job.c.number, _job.c.equipment, *schema.MASS_LINE,
        _undone(),
    )  # fmt: skip
    query = _narrowed(connection, query, since, until, filters)
    if before is not None:
        query = query.where(tuple_(*key) < before)
    query = query.order_by(*(column.desc() for column in key)).limit(limit)
    return [_as_row(*row) for row in connection.execute(query)]


def _as_row(happened_us: int, entry: int, line: int, *rest: Any) -> UsageRow:
    number, bench, entry_id, happened_at, *others, undone = rest
    kind, by, job, job_number, equipment, source, target, refrigerant, mass_mg, as_typed = others
    return UsageRow(
        key=(happened_us, entry, line),
        number=number,
        bench=bench,
        entry=entry_id,
        happened_at=datetime.fromisoformat(happened_at),
        kind=kind,
        by=by,
        job=job,
        job_number=job_number,
        equipment=equipment,
        source=source,
        target=target,
        refrigerant=refrigerant,
        mass_mg=mass_mg,
        as_typed=as_typed,
        reversed=bool(undone),
    )


def _kind_of(place: ColumnElement[str]) -> ColumnElement[str]:
    return case(
        (dialect.starts_with(place, "cylinder:"), "cylinder"),
        (dialect.starts_with(place, "equipment:"), "equipment"),
        else_=place,
    )


def usage_totals(
    connection: Connection, since: datetime | None, until: datetime | None, filters: Filters
) -> list[UsageTotal]:
    """Totals of a period by month as dated at the bench; reversed entries count for nothing."""
    by = (
        func.substr(_entry.c.happened_at, 1, 7).label("month"),
        _transfer.c.refrigerant.label("of"),
        _kind_of(_transfer.c.source).label("source_kind"),
        _kind_of(_transfer.c.target).label("target_kind"),
    )
    query = select(*by, dialect.total(_transfer.c.mass_mg), func.count())
    query = _narrowed(connection, query, since, until, filters).where(~_undone())
    names = [each.name for each in by]  # by name: PostgreSQL takes two equal parameters for two
    rows = connection.execute(query.group_by(*names).order_by(*names))
    return [UsageTotal(*row) for row in rows]
