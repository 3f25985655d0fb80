"""What entries do to the shop's registers, jobs and reversals; `replay` does it once more."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import msgspec
from sqlalchemy import Connection, bindparam, or_, select, update

from chargebench.errors import JobClosed, NotReversible, PostingRefused, UnknownJob
from chargebench.ledger import dialect, sameness, schema, tally
from chargebench.ledger.entry import OPEN_TO_CLOSED, NewEntry, payload_text
from chargebench.ledger.prepared import Prepared
from chargebench.words import say

REGISTERS = ("shop", "site", "equipment", "cylinder", "person", "instrument")
JOB_KINDS = ("job-opened", "job-closed", "job-reopened")
ROW_KINDS = ("register", sameness.SAME)
CORRECTED_OTHERWISE = frozenset({*ROW_KINDS, "reversal", *JOB_KINDS})
_FIRST_JOB_WIDTH = 4

_PUT_ROW = dialect.put(schema.register_row)
_ROW = Prepared(
    select(schema.register_row.c.content).where(
        schema.register_row.c.register == bindparam("register_is"),
        schema.register_row.c.id == bindparam("id_is"),
    )
)
_JOB = Prepared(select(schema.job).where(schema.job.c.id == bindparam("id_is")))
# As it stays until the entry is recorded, whatever other benches do.
_JOB_HELD = Prepared(
    select(schema.job).where(schema.job.c.id == bindparam("id_is")).with_for_update(key_share=True)
)


@dataclass(frozen=True, slots=True)
class Job:
    """One visit or repair on one equipment."""

    id: str
    number: str
    equipment: str
    state: str
    opened_at: datetime
    closed_at: datetime | None
    opened_by: int  # place of the opening entry in the order recorded; pages of jobs go by it


def row_content(connection: Connection, register: str, row_id: str) -> dict[str, str] | None:
    """A register row as it stands, or None."""
    content = _ROW.run(connection, {"register_is": register, "id_is": row_id}).scalar()
    return None if content is None else msgspec.json.decode(content, type=dict[str, str])


def as_job(row: Sequence[Any]) -> Job:
    """A job of a row of the job table."""
    job_id, number, equipment, state, opened_at, closed_at, opened_by = row
    closed = None if closed_at is None else datetime.fromisoformat(closed_at)
    opened = datetime.fromisoformat(opened_at)
    return Job(job_id, number, equipment, state, opened, closed, opened_by)


def search_words(content: dict[str, str]) -> str:
    """Values of a row, a line each, folded for searching."""
    return "\n" + "\n".join(content[key].casefold() for key in sorted(content)) + "\n"


def find_job(connection: Connection, job_id: str) -> Job | None:
    """A job as it stands, or None."""
    row = _JOB.run(connection, {"id_is": job_id}).first()
    return None if row is None else as_job(row)


def next_job_number(connection: Connection, bench: str) -> str:
    """Number of the bench's next job: its last one plus one."""
    numbers = select(schema.job.c.number).where(
        dialect.starts_with(schema.job.c.number, f"{bench}-")
    )
    last = connection.execute(numbers.order_by(schema.job.c.opened_by.desc()).limit(1)).scalar()
    count = 1 if last is None else int(re.sub(r".*-", "", last)) + 1
    return f"{bench}-{count:0{_FIRST_JOB_WIDTH}d}"


def check_opening(connection: Connection, bench: str, new: NewEntry) -> None:
    """Refuse the opening of a job, taken from another bench, that no bench could have numbered."""
    number, equipment = new.payload.get("number"), new.payload.get("equipment")
    if not isinstance(number, str) or not re.fullmatch(rf"{bench}-[0-9]{{1,12}}", number):
        raise UnknownJob(say("A job number that begins with {bench}- was expected.", bench=bench))
    if not isinstance(equipment, str) or new.job is None:
        raise UnknownJob("A job is opened on an equipment.")
    table = schema.job.c
    same = select(table.id).where(or_(table.id == new.job, table.number == number))
    if connection.execute(same).first() is not None:
        raise UnknownJob(say("Another job stands here as {number}.", number=number))


def check_job(connection: Connection, new: NewEntry) -> None:
    """Refuse an entry that does not fit the state of its job."""
    if new.kind == "job-opened":
        assert new.job is not None
        if find_job(connection, new.job) is not None:
            raise UnknownJob("This job is already open under another entry.")
        if not isinstance(new.payload.get("equipment"), str):
            raise UnknownJob("A job is opened on an equipment; choose one.")
        return
    if new.job is None:
        if new.kind in JOB_KINDS:
            raise UnknownJob(say("An entry “{kind}” names its job.", kind=new.kind))
        return
    row = _JOB_HELD.run(connection, {"id_is": new.job}).first()
    if row is None:
        raise UnknownJob("There is no such job in this shop; open the job first.")
    job = as_job(row)
    if job.state == "closed" and new.kind not in OPEN_TO_CLOSED:
        raise JobClosed(
            say(
                "Job {job_number} is closed. Reopen it with a reason, or record a follow-up.",
                job_number=job.number,
            )
        )
    if job.state == "open" and new.kind == "job-reopened":
        raise UnknownJob(say("Job {job_number} is open already.", job_number=job.number))


def reversal_of(connection: Connection, entry_id: str) -> str | None:
    """Id of what reversed an entry, or None."""
    table = schema.reversed_entry.c
    return connection.execute(select(table.reversal).where(table.id == entry_id)).scalar()


def check_reversal(connection: Connection, new: NewEntry) -> None:
    """Refuse a reversal that is not exactly the turned transfers of one unreversed entry."""
    original = new.payload.get("reverses")
    dialect.of(connection).hold(connection, [f"reversal:{original}"])
    row = connection.execute(
        select(schema.entry.c.position, schema.entry.c.kind, schema.entry.c.number).where(
            schema.entry.c.id == original
        )
    ).first()
    if row is None:
        raise NotReversible("There is no such entry to reverse.")
    position, kind, number = row
    if kind in CORRECTED_OTHERWISE:
        raise NotReversible(
            say(
                "Entry {number} ({kind}) is not reversed; record the right state as a new entry.",
                number=number,
                kind=kind,
            )
        )
    if reversal_of(connection, str(original)) is not None:
        raise NotReversible(say("Entry {number} is already reversed.", number=number))
    lines = connection.execute(
        select(*schema.MASS_LINE)
        .where(schema.transfer.c.entry == position)
        .order_by(schema.transfer.c.line)
    )
    wanted = [(target, source, *rest) for source, target, *rest in lines]
    given = [(t.source, t.target, t.refrigerant, t.mass_mg, t.as_typed) for t in new.transfers]
    if wanted != given:
        raise NotReversible(
            say(
                "A reversal of entry {number} turns its transfers round, all of them.",
                number=number,
            )
        )


def check_row(kind: str, payload: dict[str, Any]) -> None:
    """Refuse an entry that is not a row of text in one of the registers, or a decision on two."""
    register, row_id, after = (payload.get(key) for key in ("register", "id", "after"))
    registers = (sameness.SAME,) if kind == sameness.SAME else REGISTERS
    if register not in registers or not row_id or not isinstance(row_id, str):
        raise PostingRefused(
            say(
                "A row of one of {registers} with an id was expected.",
                registers=", ".join(registers),
            )
        )
    if not isinstance(after, dict) or not all(isinstance(v, str) for v in after.values()):
        raise PostingRefused("A register row holds text only.")
    if kind == sameness.SAME:
        sameness.check(row_id, after)


def takes_over(standing: str | None, standing_at: str, payload: dict[str, Any], at: str) -> bool:
    """Whether a row's new words take the place of those that stand.

    They do if they were written with these in sight, which they always are where all was recorded
    at one bench; if not, because two benches wrote at once, the words recorded later stand.
    """
    if standing is None:
        return True
    before = payload.get("before")
    return (before is not None and payload_text(before) == standing) or at > standing_at


def row_recorded_at(connection: Connection, register: str, row_id: str, until: int) -> str:
    """When the words of a row that stand were recorded, told from the entries before one."""
    table = schema.entry
    query = select(table.c.payload, table.c.recorded_at).where(
        table.c.kind.in_(ROW_KINDS), table.c.position < until
    )
    text, standing_at = None, ""
    for payload, at in connection.execute(query.order_by(table.c.position)):
        content = msgspec.json.decode(payload)
        if (content.get("register"), content.get("id")) == (register, row_id) and takes_over(
            text, standing_at, content, at
        ):
            text, standing_at = payload_text(content["after"]), at
    return standing_at


def _put_row(connection: Connection, new: NewEntry, position: int, recorded_at: str) -> None:
    register, row_id, after = (new.payload[key] for key in ("register", "id", "after"))
    stands = row_content(connection, register, row_id)
    text = None if stands is None else payload_text(stands)
    if not takes_over(text, recorded_at, new.payload, recorded_at):
        standing_at = row_recorded_at(connection, register, row_id, position)
        if not takes_over(text, standing_at, new.payload, recorded_at):
            return
    known = sameness.read(connection) if new.kind == sameness.SAME else {}
    connection.execute(
        _PUT_ROW,
        {
            "register": register,
            "id": row_id,
            "content": payload_text(after),
            "words": search_words(after),
        },
    )
    if new.kind == sameness.SAME:
        _join_balances(connection, known, after)


def _join_balances(connection: Connection, known: sameness.Names, decided: dict[str, str]) -> None:
    """Sum anew what the things hold that a decision joins, or parts again."""
    now = sameness.read(connection)
    ends = [f"{decided['register']}:{decided[end]}" for end in ("one", "other")]
    places = {
        each for names in (known, now) for end in ends for each in sameness.called(names, end)
    }
    sameness.rebalance(connection, now, places)


def apply(
    connection: Connection,
    new: NewEntry,
    position: int,
    *,
    bench: str,
    happened_at: str,
    recorded_at: str,
) -> None:
    """Move all that follows from the entries, by one that was just written; balances apart."""
    payload = new.payload
    tally.take(connection, bench, new, position, happened_at)
    if new.kind in ROW_KINDS:
        _put_row(connection, new, position, recorded_at)
    elif new.kind == "reversal":
        connection.execute(
            schema.reversed_entry.insert(), {"id": payload["reverses"], "reversal": new.id}
        )
    elif new.kind == "job-opened":
        connection.execute(
            schema.job.insert(),
            {
                "id": new.job,
                "number": payload["number"],
                "equipment": payload["equipment"],
                "state": "open",
                "opened_at": happened_at,
                "opened_by": position,
            },
        )
    elif new.kind in JOB_KINDS:
        state = "closed" if new.kind == "job-closed" else "open"
        connection.execute(
            update(schema.job)
            .where(schema.job.c.id == new.job)
            .values(state=state, closed_at=happened_at if state == "closed" else None)
        )
