"""The usage log: every mass line of a period with its job, and its totals by month."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Connection,
    Select,
    and_,
    case,
    func,
    literal_column,
    or_,
    select,
    tuple_,
    union_all,
)

from chargebench.ledger import dialect, sameness, schema
from chargebench.ledger.entry import FIXED_PLACES, microseconds

_entry, _transfer, _job, _day = schema.entry, schema.transfer, schema.job, schema.day_total
_ZONE_MOST = timedelta(days=1)  # between the day at a bench and the same day in UTC
_FIRST = datetime.min.replace(tzinfo=UTC) + 4 * _ZONE_MOST  # the calendar ends at both ends
_LAST = datetime.max.replace(tzinfo=UTC) - 4 * _ZONE_MOST
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
    if filters.refrigerant is not None:
        # Not by an index of its own: there are few refrigerants, and the page goes by time.
        conditions.append(_transfer.c.refrigerant.concat("") == filters.refrigerant)
    for column, value in (
        (_job.c.equipment, filters.equipment),
        (_entry.c.kind, filters.kind),
        (_entry.c.job, filters.job),
    ):
        if value is not None:
            conditions.append(column == value)
    if filters.by is not None:
        conditions.append(_entry.c.by.in_(_people(names, filters.by)))
    if filters.place is not None:
        places = sameness.called(names, filters.place)
        ends: list[ColumnElement[str]] = [_transfer.c.source, _transfer.c.target]
        if filters.place in FIXED_PLACES:  # so much goes there that a page goes by time as well
            ends = [end.concat("") for end in ends]
        conditions.append(or_(*(end.in_(places) for end in ends)))
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
    """Mass lines of a period, newest first, older than `before`.

    Sorted by the entry's own columns, so that the index by time gives a page without sorting.
    """
    key = (_entry.c.happened_us, _entry.c.position, _transfer.c.line)
    query: Select[Any] = select(
        *key, _entry.c.number, _entry.c.bench, _entry.c.id, _entry.c.happened_at, _entry.c.kind,
        _entry.c.by, _entry.c.job, _job.c.number, _job.c.equipment, *schema.MASS_LINE,
        _undone(),
    )  # fmt: skip
    query = _narrowed(connection, query, since, until, filters)
    if before is not None:
        query = query.where(_entry.c.happened_us <= before[0], tuple_(*key) < before)
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


def _people(names: sameness.Names, person: str) -> list[str]:
    """Every id of a person, also where they were met twice."""
    return [each.partition(":")[2] for each in sameness.called(names, f"person:{person}")]


def usage_totals(
    connection: Connection, since: datetime | None, until: datetime | None, filters: Filters
) -> list[UsageTotal]:
    """Totals of a period by month as dated at the bench; reversed entries count for nothing.

    Whole days come from their totals, and the days at the ends of the period from their lines;
    where something is asked that no total of a day knows, all comes from the lines.
    """
    first, last = _whole_days(since, until)
    narrow = (filters.equipment, filters.kind, filters.job, filters.place)
    if narrow != (None, None, None, None) or first > last:
        return _summed(connection, [_of_lines(connection, since, until, filters)])
    parts = [_of_days(connection, first, last, filters)]
    if since is not None:
        ends = _start(first) + _ZONE_MOST
        before = _of_lines(connection, since, ends, filters)
        parts.append(before.where(_entry.c.happened_at < first.isoformat()))
    if until is not None:
        after = _of_lines(connection, _start(last), until, filters)
        following = (last + timedelta(days=1)).isoformat()
        parts.append(after.where(_entry.c.happened_at >= following))
    return _summed(connection, parts)


def _start(day: date) -> datetime:
    return datetime.combine(day, time(), UTC)


def _whole_days(since: datetime | None, until: datetime | None) -> tuple[date, date]:
    """First and last day that lie within a period whatever the zone they were dated in."""
    first, last = date.min, date.max
    if since is not None:
        first = (min(since.astimezone(UTC), _LAST) + 2 * _ZONE_MOST).date()
    if until is not None:
        last = (max(until.astimezone(UTC), _FIRST) - 2 * _ZONE_MOST).date()
    return first, last


def _of_days(connection: Connection, first: date, last: date, filters: Filters) -> Select[Any]:
    month = func.substr(_day.c.day, 1, 7).label("month")
    within = _day.c.day.between(first.isoformat(), last.isoformat())
    conditions: list[ColumnElement[bool]] = [within]
    if filters.refrigerant is not None:
        conditions.append(_day.c.refrigerant == filters.refrigerant)
    if filters.by is not None:
        people = _people(sameness.read(connection), filters.by)
        conditions.append(_day.c.person.in_(people))
    return select(
        month,
        _day.c.refrigerant.label("of"),
        _day.c.source.label("source_kind"),
        _day.c.target.label("target_kind"),
        _day.c.mass_mg.label("moved_mg"),
        _day.c.lines.label("lines"),
    ).where(and_(*conditions))


def _of_lines(
    connection: Connection, since: datetime | None, until: datetime | None, filters: Filters
) -> Select[Any]:
    query: Select[Any] = select(
        func.substr(_entry.c.happened_at, 1, 7).label("month"),
        _transfer.c.refrigerant.label("of"),
        _kind_of(_transfer.c.source).label("source_kind"),
        _kind_of(_transfer.c.target).label("target_kind"),
        _transfer.c.mass_mg.label("moved_mg"),
        literal_column("1").label("lines"),
    )
    return _narrowed(connection, query, since, until, filters).where(~_undone())


def _summed(connection: Connection, parts: Sequence[Select[Any]]) -> list[UsageTotal]:
    moved = union_all(*parts).subquery("moved").c
    by = (moved.month, moved.of, moved.source_kind, moved.target_kind)
    lines = dialect.total(moved.lines)
    query = select(*by, dialect.total(moved.moved_mg), lines).group_by(*by).order_by(*by)
    # What was taken back whole leaves a total of no lines.
    rows = connection.execute(query.having(func.sum(moved.lines) != 0))
    return [UsageTotal(*row) for row in rows]
