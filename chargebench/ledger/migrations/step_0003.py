"""Schema 3: what moved on each day, and which stock work names a place. Frozen."""

import json
from collections import defaultdict
from typing import Any

from sqlalchemy import (
    BigInteger,
    Column,
    Connection,
    Integer,
    MetaData,
    Table,
    Text,
    select,
    text,
)

_metadata = MetaData()
_Whole = BigInteger().with_variant(Integer, "sqlite")
# Sorted and compared by code points, as SQLite does, whatever language a server speaks.
_Text = Text().with_variant(Text(collation="C"), "postgresql")
_KEYED: dict[str, Any] = {"sqlite_strict": True, "sqlite_with_rowid": False}

# The bench is in the key so that benches on a server never wait for each other's row.
_day_total = Table(
    "day_total",
    _metadata,
    Column("day", _Text, primary_key=True),
    Column("bench", _Text, primary_key=True),
    Column("person", _Text, primary_key=True),
    Column("refrigerant", _Text, primary_key=True),
    Column("source", _Text, primary_key=True),
    Column("target", _Text, primary_key=True),
    Column("mass_mg", _Whole, nullable=False),
    Column("lines", _Whole, nullable=False),
    **_KEYED,
)
_place_entry = Table(
    "place_entry",
    _metadata,
    Column("place", _Text, primary_key=True),
    Column("kind", _Text, primary_key=True),
    Column("entry", _Whole, primary_key=True),
    **_KEYED,
)
# The jobs that were closed with something to see are few among all that were closed.
_FLAGGED = (
    "CREATE INDEX entry_closed_with_flags ON entry (position) "
    "WHERE kind = 'job-closed' AND payload <> '{\"flags\":[]}'"
)

_entry = Table(
    "entry",
    MetaData(),
    Column("position", _Whole),
    Column("id", _Text),
    Column("bench", _Text),
    Column("kind", _Text),
    Column("job", _Text),
    Column("happened_at", _Text),
    Column("by", _Text),
    Column("payload", _Text),
)
_LINES = text(
    "SELECT e.happened_at, e.bench, e.by, t.refrigerant, t.source, t.target, t.mass_mg, 1 "
    "FROM transfer t JOIN entry e ON e.position = t.entry WHERE e.kind <> 'reversal'"
)
# A reversal takes back on the day of what it reverses, in the rows of the bench that recorded it.
_TAKEN_BACK = text(
    "SELECT o.happened_at, v.bench, o.by, t.refrigerant, t.source, t.target, -t.mass_mg, -1 "
    "FROM reversed_entry r JOIN entry o ON o.id = r.id JOIN entry v ON v.id = r.reversal "
    "JOIN transfer t ON t.entry = o.position"
)


def run(connection: Connection) -> None:
    """Create both tables and the index, and fill them from what was recorded before."""
    _metadata.create_all(connection, checkfirst=False)
    connection.exec_driver_sql(_FLAGGED)
    _fill_days(connection)
    _fill_places(connection)


def _fill_days(connection: Connection) -> None:
    sums: dict[tuple[str, ...], list[int]] = defaultdict(lambda: [0, 0])
    for query in (_LINES, _TAKEN_BACK):
        for happened_at, bench, person, refrigerant, *ends, mass_mg, count in connection.execute(
            query, execution_options={"stream_results": True}
        ):
            kinds = (end.partition(":")[0] for end in ends)
            total = sums[happened_at[:10], bench, person, refrigerant, *kinds]
            total[0] += mass_mg
            total[1] += count
    names = [column.name for column in _day_total.c]
    rows = [dict(zip(names, (*key, *total), strict=True)) for key, total in sums.items()]
    if rows:
        connection.execute(_day_total.insert(), rows)


def _fill_places(connection: Connection) -> None:
    table = _entry.c
    query = select(table.position, table.kind, table.payload).where(
        table.job.is_(None), table.kind.not_in(("register", "same-as"))
    )
    rows = []
    for position, kind, payload in connection.execute(query):
        places = json.loads(payload).get("places")
        if isinstance(places, list):
            named = sorted({place for place in places if isinstance(place, str)})
            rows += [{"place": place, "kind": kind, "entry": position} for place in named]
    if rows:
        connection.execute(_place_entry.insert(), rows)
