"""Entries that stand last: of a place, of a job; found by index, however much was recorded."""

from sqlalchemy import Connection, select, text

from chargebench.ledger import dialect, schema
from chargebench.ledger.entry import Entry
from chargebench.ledger.reading import ENTRY_COLUMNS, PAGE, as_entries

_entry = schema.entry
_FLAGGED = "entry_closed_with_flags"


def last_naming(connection: Connection, kind: str, prefix: str) -> dict[str, Entry]:
    """By each place whose name starts so, the last entry of a kind that names it and stands."""
    table, undone = schema.place_entry, schema.reversed_entry.c
    named = (
        select(table.c.place, _entry.c.position)
        .join(_entry, _entry.c.position == table.c.entry)
        .where(
            dialect.starts_with(table.c.place, prefix),
            table.c.kind == kind,
            _entry.c.id.not_in(select(undone.id)),
        )
        .order_by(table.c.place, table.c.entry)
    )
    last = {row.place: row.position for row in connection.execute(named)}
    found: dict[int, Entry] = {}
    wanted = sorted(set(last.values()))
    for start in range(0, len(wanted), PAGE):
        some = _entry.c.position.in_(wanted[start : start + PAGE])
        rows = connection.execute(select(*ENTRY_COLUMNS).where(some)).all()
        found |= {
            row[11]: entry for row, entry in zip(rows, as_entries(connection, rows), strict=True)
        }
    return {place: found[position] for place, position in last.items()}


def closed_with_flags(connection: Connection) -> list[Entry]:
    """The closing of each closed job that was closed with a flag raised, oldest first."""
    later = _entry.alias("later")
    reopened_or_closed = select(later.c.position).where(
        later.c.job == _entry.c.job,
        later.c.kind.in_(("job-closed", "job-reopened")),
        later.c.position > _entry.c.position,
    )
    # In the words of the index that holds these entries and no others.
    raised = text(
        f"SELECT position FROM {dialect.through(connection, 'entry', _FLAGGED)} "  # noqa: S608
        "WHERE kind = 'job-closed' AND payload <> '{\"flags\"\\:[]}'"
    ).columns(_entry.c.position)
    query = (
        select(*ENTRY_COLUMNS)
        .where(_entry.c.position.in_(raised), ~reopened_or_closed.exists())
        .order_by(_entry.c.position)
    )
    return as_entries(connection, connection.execute(query).all())


def last_without(connection: Connection, kind: str, key: str) -> list[Entry]:
    """Of each job the last entry of a kind that stands, where its payload has no such key."""
    later, undone = _entry.alias("later"), select(schema.reversed_entry.c.id)
    stands_later = select(later.c.position).where(
        later.c.job == _entry.c.job,
        later.c.kind == kind,
        later.c.position > _entry.c.position,
        later.c.id.not_in(undone),
    )
    query = (
        select(*ENTRY_COLUMNS)
        .where(
            _entry.c.kind == kind,
            _entry.c.id.not_in(undone),
            # A quote within what was typed stands behind a stroke, so it is no key.
            ~_entry.c.payload.contains(f'"{key}":', autoescape=True),
            ~stands_later.exists(),
        )
        .order_by(_entry.c.position)
    )
    return as_entries(connection, connection.execute(query).all())
