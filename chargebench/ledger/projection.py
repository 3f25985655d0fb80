"""What entries do to the shop's registers, jobs and reversals: once for posting, once for verify.

A `Change` is worked out from an entry alone, so `verify` can replay it without a database.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

import msgspec
from sqlalchemy import Connection, bindparam, select, update

from chargebench.errors import JobClosed, NotReversible, PostingRefused, UnknownJob
from chargebench.ledger import dialect, schema
from chargebench.ledger.entry import OPEN_TO_CLOSED, NewEntry, payload_text
from chargebench.ledger.prepared import Prepared

REGISTERS = ("shop", "site", "equipment", "cylinder", "person", "instrument")
JOB_KINDS = ("job-opened", "job-closed", "job-reopened")
CORRECTED_OTHERWISE = frozenset({"register", "reversal", *JOB_KINDS})
_FIRST_JOB_WIDTH = 4

_PUT_ROW = dialect.put(schema.register_row)
_ROW = Prepared(
    select(schema.register_row.c.content).where(
        schema.register_row.c.register == bindparam("register_is"),
        schema.register_row.c.id == bindparam("id_is"),
    )
)
_JOB = Prepared(select(schema.job).where(schema.job.c.id == bindparam("id_is")))


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
            raise UnknownJob(f"An entry “{new.kind}” names its job.")
        return
    job = find_job(connection, new.job)
    if job is None:
        raise UnknownJob("There is no such job in this shop; open the job first.")
    if job.state == "closed" and new.kind not in OPEN_TO_CLOSED:
        raise JobClosed(
            f"Job {job.number} is closed. Reopen it with a reason, or record a follow-up."
        )
    if job.state == "open" and new.kind == "job-reopened":
        raise UnknownJob(f"Job {job.number} is open already.")


def check_reversal(connection: Connection, new: NewEntry) -> None:
    """Refuse a reversal that is not exactly the turned transfers of one unreversed entry."""
    original = new.payload.get("reverses")
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
            f"Entry {number} ({kind}) is not reversed; record the right state as a new entry."
        )
    already = select(schema.reversed_entry).where(schema.reversed_entry.c.id == original)
    if connection.execute(already).first() is not None:
        raise NotReversible(f"Entry {number} is already reversed.")
    lines = connection.execute(
        select(*schema.MASS_LINE)
        .where(schema.transfer.c.entry == position)
        .order_by(schema.transfer.c.line)
    )
    wanted = [(target, source, *rest) for source, target, *rest in lines]
    given = [(t.source, t.target, t.refrigerant, t.mass_mg, t.as_typed) for t in new.transfers]
    if wanted != given:
        raise NotReversible(f"A reversal of entry {number} turns its transfers round, all of them.")


def check_register(payload: dict[str, Any]) -> None:
    """Refuse a register entry that is not a row of text in one of the registers."""
    after = payload.get("after")
    if payload.get("register") not in REGISTERS or not payload.get("id"):
        raise PostingRefused(f"A row of one of {', '.join(REGISTERS)} with an id was expected.")
    if not isinstance(after, dict) or not all(isinstance(v, str) for v in after.values()):
        raise PostingRefused("A register row holds text only.")


def apply(connection: Connection, new: NewEntry, position: int, happened_at: str) -> None:
    """Move the registers, jobs and reversals by an entry that was just written."""
    payload = new.payload
    if new.kind == "register":
        connection.execute(
            _PUT_ROW,
            {
                "register": payload["register"],
                "id": payload["id"],
                "content": payload_text(payload["after"]),
                "words": search_words(payload["after"]),
            },
        )
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


class Replay:
    """The registers, jobs and reversals as the entries alone give them."""

    def __init__(self) -> None:
        self.rows: dict[tuple[str, str], str] = {}
        self.jobs: dict[str, tuple[Any, ...]] = {}
        self.reversals: dict[str, str] = {}
        self.moved_by: dict[tuple[str, ...], int] = {}

    def take(
        self,
        *,
        kind: str,
        job: str | None,
        entry_id: str,
        payload: str,
        at: str,
        number: int,
        position: int,
    ) -> None:
        """Move by one stored entry; raises KeyError or TypeError if the entry can not be one."""
        if kind not in CORRECTED_OTHERWISE:
            return
        content = msgspec.json.decode(payload)
        if kind == "register":
            key = (content["register"], content["id"])
            self.rows[key] = payload_text(content["after"])
            self.moved_by["row", *key] = number
        elif kind == "reversal":
            self.reversals[content["reverses"]] = entry_id
            self.moved_by["reversal", content["reverses"]] = number
        else:
            job_id = str(job)
            self.moved_by["job", job_id] = number
            if kind == "job-opened":
                number, equipment = content["number"], content["equipment"]
                self.jobs[job_id] = (job_id, number, equipment, "open", at, None, position)
            else:
                closed = kind == "job-closed"
                kept = self.jobs[job_id]
                self.jobs[job_id] = (
                    *kept[:3], "closed" if closed else "open", kept[4], at if closed else None,
                    kept[6],
                )  # fmt: skip
