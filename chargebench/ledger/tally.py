"""What entries come to by the day, and which stock work names a place; moved with each entry.

Both are read in a few index pages where every entry of ten years would have to be read instead.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache
from typing import Any

from sqlalchemy import Connection, bindparam, select, text

from chargebench.ledger import dialect, schema
from chargebench.ledger.entry import NewEntry, Transfer
from chargebench.ledger.prepared import Prepared

_KEY = ["day", "bench", "person", "refrigerant", "source", "target"]
_TOTAL = [*_KEY, "mass_mg", "lines"]
DayKey = tuple[str, str, str, str, str, str]
Days = dict[DayKey, tuple[int, int]]  # milligrams, and lines

_SIGNED = Prepared(
    select(schema.entry.c.happened_at, schema.entry.c.by).where(
        schema.entry.c.id == bindparam("id_is")
    )
)
_PUT_PLACE = Prepared(schema.place_entry.insert())


@cache
def _add_to_days(count: int) -> tuple[Prepared, list[str]]:
    values, names = dialect.rows_of(_TOTAL, count)
    written = (
        f"INSERT INTO day_total ({', '.join(_TOTAL)}) VALUES {values} "  # noqa: S608
        f"ON CONFLICT ({', '.join(_KEY)}) DO UPDATE SET "
        "mass_mg = day_total.mass_mg + excluded.mass_mg, lines = day_total.lines + excluded.lines"
    )
    return Prepared(text(written)), names


def kind_of(place: str) -> str:
    """Kind of a place: cylinder, equipment, or the fixed place it is."""
    return place.partition(":")[0]


def places_named(job: str | None, payload: Mapping[str, Any]) -> list[str]:
    """Places that stock work names; work on a job is found by its job."""
    named = payload.get("places")
    if job is not None or not isinstance(named, list):
        return []
    return sorted({place for place in named if isinstance(place, str)})


def add(days: Days, key: DayKey, mass_mg: int, lines: int) -> None:
    """Add a mass line to its day, or take it back."""
    had_mg, had = days.get(key, (0, 0))
    days[key] = (had_mg + mass_mg, had + lines)


def signed_by(connection: Connection, entry_id: str) -> tuple[str, str]:
    """When an entry happened, as dated at its bench, and who signed it; KeyError for none."""
    row = _SIGNED.run(connection, {"id_is": entry_id}).first()
    if row is None:
        raise KeyError(entry_id)
    happened_at, by = row
    return happened_at, by


def of_lines(
    happened_at: str, bench: str, person: str, lines: Iterable[Sequence[Any]], sign: int
) -> Iterator[tuple[DayKey, int, int]]:
    """What mass lines add to their day; with -1 what they take back."""
    day = happened_at[:10]
    for source, target, refrigerant, mass_mg, *_ in lines:
        key = (day, bench, person, refrigerant, kind_of(source), kind_of(target))
        yield key, sign * mass_mg, sign


def take(connection: Connection, bench: str, new: NewEntry, position: int, at: str) -> None:
    """Move both by an entry that was just written."""
    if new.transfers:
        _move_days(connection, bench, new, at)
    for place in places_named(new.job, new.payload):
        row = {"place": place, "kind": new.kind, "entry": position}
        _PUT_PLACE.run(connection, row)


def _move_days(connection: Connection, bench: str, new: NewEntry, at: str) -> None:
    """A reversal takes back on the day of what it reverses, from that person's total."""
    person, sign, moved = new.by, 1, new.transfers
    if new.kind == "reversal":
        at, person = signed_by(connection, new.payload["reverses"])
        sign, moved = -1, tuple(line.turned() for line in moved)
    days: Days = {}
    for key, mass_mg, lines in of_lines(at, bench, person, map(_ends, moved), sign):
        add(days, key, mass_mg, lines)
    statement, names = _add_to_days(len(days))
    given = [value for key, total in sorted(days.items()) for value in (*key, *total)]
    statement.run(connection, dict(zip(names, given, strict=True)))


def _ends(line: Transfer) -> tuple[str, str, str, int]:
    return line.source, line.target, line.refrigerant, line.mass_mg
