"""One posting inside one transaction: checks, entry, transfers, balances, head of the chain."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import datetime
from functools import cache
from typing import Any

import msgspec
from sqlalchemy import Connection, bindparam, null, select, text, update

from chargebench.errors import AlreadyRecorded, NotReversible
from chargebench.ledger import balancing, dialect, projection, sameness, schema
from chargebench.ledger.entry import (
    Entry,
    NewEntry,
    canonical,
    chained,
    microseconds,
    moment_text,
    now_text,
    payload_text,
)
from chargebench.ledger.prepared import Prepared
from chargebench.ledger.reading import one_entry
from chargebench.words import say

# Whether the entry stands already, and which ids name one thing: one question, asked at each post.
_LOOK = Prepared(
    select(schema.entry.c.id, null().label("decision"))
    .where(schema.entry.c.id == bindparam("id_is"))
    .union_all(
        select(null(), schema.register_row.c.content).where(
            schema.register_row.c.register == bindparam("register_is")
        )
    )
)
_CHAIN = Prepared(
    select(schema.head.c.number, schema.head.c.hash)
    .where(schema.head.c.bench == bindparam("bench_is"))
    .with_for_update()
)
_SET_HEAD = Prepared(
    update(schema.head)
    .where(schema.head.c.bench == bindparam("bench_is"))
    .values(number=bindparam("number_is"), hash=bindparam("hash_is"))
)
_PUT_ENTRY = Prepared(
    schema.entry.insert().returning(schema.entry.c.position),
    [column.name for column in schema.entry.c if column.name != "position"],
)
_LINE = [column.name for column in schema.transfer.c]


@cache
def _put_transfers(count: int) -> tuple[Prepared, list[str]]:
    values, names = dialect.rows_of(_LINE, count)
    written = f"INSERT INTO transfer ({', '.join(_LINE)}) VALUES {values}"  # noqa: S608
    return Prepared(text(written)), names


# What only the ledger knows, by kind.
_FILLED_IN = {"job-opened": "number", **dict.fromkeys(projection.ROW_KINDS, "before")}


def record(
    connection: Connection, bench: str, new: NewEntry, may_overdraw_mg: Mapping[str, int]
) -> Entry:
    """Record an entry, or give back the one that already stands under its id."""
    if new.kind == "job-opened" and new.job is None:
        new = replace(new, job=new.id)
    if new.kind == sameness.SAME:  # moves balances that any bench may be moving
        hold_shop(connection)
    last, previous = hold_chain(connection, bench)
    found = _LOOK.run(connection, {"id_is": new.id, "register_is": sameness.SAME}).all()
    if any(row[0] is not None for row in found):
        standing = one_entry(connection, new.id)
        assert standing is not None
        return _same(standing, new)
    new = _completed(connection, bench, new)
    projection.check_job(connection, new)
    if new.kind == "reversal":
        projection.check_reversal(connection, new)
    elif new.kind in projection.ROW_KINDS:
        projection.check_row(new.kind, new.payload)
    entry, position = _append(connection, bench, new, number=last + 1, previous=previous)
    if new.transfers:
        names = sameness.names_of(row[1] for row in found)
        balancing.move_checked(connection, new.transfers, names, may_overdraw_mg)
    projection.apply(
        connection,
        new,
        position,
        bench=bench,
        happened_at=moment_text(new.happened_at),
        recorded_at=entry.recorded_at.isoformat(timespec="milliseconds"),
    )
    return entry


def hold_chain(connection: Connection, bench: str) -> tuple[int, bytes]:
    """Number and hash of a bench's last entry; nobody adds to its chain until this has ended.

    It comes before anything is looked at: whoever else posts for this bench has ended by then.
    """
    number, digest = _CHAIN.run(connection, {"bench_is": bench}).one()
    return number, digest


def hold_shop(connection: Connection) -> None:
    """Let no other bench post until this has ended, for what is about the whole shop."""
    table = schema.head
    connection.execute(select(table.c.bench).order_by(table.c.bench).with_for_update()).all()


def reversal(
    connection: Connection, entry_id: str, by: str, happened_at: datetime, reason: str, new: str
) -> NewEntry:
    """The entry that reverses another: same job, transfers turned round, with a reason."""
    original = one_entry(connection, entry_id)
    if original is None:
        raise NotReversible("There is no such entry to reverse.")
    if not reason.strip():
        raise NotReversible("A reversal needs a reason.")
    return NewEntry(
        kind="reversal",
        by=by,
        happened_at=happened_at,
        payload={"reverses": entry_id, "reason": reason},
        transfers=tuple(line.turned() for line in original.transfers),
        job=original.job,
        id=new,
    )


def _same(standing: Entry, new: NewEntry) -> Entry:
    """Refuse another entry under an id that stands; what the ledger filled in may differ."""
    filled_in = _FILLED_IN.get(new.kind)
    was = {key: value for key, value in standing.payload.items() if key != filled_in}
    wanted = msgspec.json.decode(payload_text(new.payload))
    wanted = {key: value for key, value in wanted.items() if key != filled_in}
    if (standing.kind, standing.job, standing.transfers, was) != (
        new.kind, new.job, new.transfers, wanted
    ):  # fmt: skip
        raise AlreadyRecorded(
            say(
                "Entry {standing_number} already stands under this id with other "
                "content; nothing was recorded. Record a correction instead.",
                standing_number=standing.number,
            )
        )
    return standing


def _completed(connection: Connection, bench: str, new: NewEntry) -> NewEntry:
    """Fill in what only the ledger knows: the job's number, the row's state before."""
    if new.kind == "job-opened":
        number = projection.next_job_number(connection, bench)
        return replace(new, payload={**new.payload, "number": number})
    if new.kind in projection.ROW_KINDS:
        register, row_id = str(new.payload.get("register")), str(new.payload.get("id"))
        dialect.of(connection).hold(connection, [f"{register}:{row_id}"])
        before = projection.row_content(connection, register, row_id)
        return replace(new, payload={**new.payload, "before": before})
    return new


def _append(
    connection: Connection, bench: str, new: NewEntry, *, number: int, previous: bytes
) -> tuple[Entry, int]:
    recorded_at, happened_at = now_text(), moment_text(new.happened_at)
    payload = payload_text(new.payload)
    values = (
        new.id, bench, number, new.kind, new.job, happened_at, recorded_at, new.by, payload
    )  # fmt: skip
    lines = [(t.source, t.target, t.refrigerant, t.mass_mg, t.as_typed) for t in new.transfers]
    digest = chained(previous, canonical(values, lines))
    position = write(connection, values, lines, new.happened_at, (previous, digest))
    _SET_HEAD.run(connection, {"bench_is": bench, "number_is": number, "hash_is": digest})
    return _recorded(values, new, previous, digest), position


def write(
    connection: Connection,
    values: Sequence[Any],
    lines: Sequence[Sequence[Any]],
    happened_at: datetime,
    hashes: tuple[bytes, bytes],
) -> int:
    """Write an entry's row and its mass lines as they are hashed; its place in the order."""
    row: dict[str, Any] = dict(zip((column.name for column in schema.HASHED), values, strict=True))
    row["previous_hash"], row["hash"] = hashes
    row["happened_us"] = microseconds(happened_at)
    position: int = _PUT_ENTRY.run(connection, row).scalar_one()
    if lines:
        statement, names = _put_transfers(len(lines))
        given = [value for count, line in enumerate(lines) for value in (position, count, *line)]
        statement.run(connection, dict(zip(names, given, strict=True)))
    return position


def _recorded(values: tuple[Any, ...], new: NewEntry, previous: bytes, digest: bytes) -> Entry:
    return Entry(
        id=new.id,
        bench=values[1],
        number=values[2],
        kind=new.kind,
        job=new.job,
        happened_at=new.happened_at,
        recorded_at=datetime.fromisoformat(values[6]),
        by=new.by,
        payload=msgspec.json.decode(values[8]),
        transfers=new.transfers,
        previous_hash=previous.hex(),
        hash=digest.hex(),
    )
