"""What benches that did not see each other did to the same things, told while a file is taken in.

A conflict never stops an entry from being taken; it is kept for a person to look at.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

import msgspec
from sqlalchemy import Connection, select

from chargebench.errors import WrongRefrigerant
from chargebench.ledger import balancing, projection, sameness, schema
from chargebench.ledger.chainfile import Signed
from chargebench.ledger.entry import OPEN_TO_CLOSED, Transfer

_STEPS = ("step-signed", "step-not-needed")


@dataclass(frozen=True, slots=True)
class Conflict:
    """One conflict: what, about which thing, by which entry; fields that do not apply are empty.

    `what` is one of: overdrawn, mixed, closed-job, signed-twice, reversed-twice, row, own-entries.
    """

    what: str
    bench: str = ""
    number: int = 0  # of the entry that was taken in
    place: str = ""
    refrigerant: str = ""
    mass_mg: int = 0
    job: str = ""
    step: str = ""
    register: str = ""
    row: str = ""
    here: dict[str, str] = field(default_factory=dict)  # words that differ, as they stood here
    there: dict[str, str] = field(default_factory=dict)
    stands: str = ""  # whose words stand now: here or there


class Conflicts:
    """Gathers conflicts of one file."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self._found: list[Conflict] = []
        self._began_mg: dict[tuple[str, str], int] = {}
        self._filled: dict[tuple[str, str], None] = {}
        self._signed: dict[tuple[str, str], Signed] = {}
        self._rows: dict[tuple[str, str], Conflict] = {}
        self._names = sameness.read(connection)

    def before(self, signed: Signed) -> bool:
        """Look at an entry that is about to be written; whether it moves what it speaks of."""
        new = signed.new
        if new.job is not None and new.kind != "job-opened":
            job = projection.find_job(self._connection, new.job)
            assert job is not None
            if job.state == "closed" and new.kind not in OPEN_TO_CLOSED:
                self._found.append(Conflict("closed-job", signed.bench, signed.number, job=job.id))
            if new.kind in _STEPS:
                self._signed[job.id, str(new.payload.get("step"))] = signed
        if new.kind == "register":
            self._row(signed)
        if new.kind != "reversal":
            return True
        original = str(new.payload.get("reverses"))
        if projection.reversal_of(self._connection, original) is None:
            projection.check_reversal(self._connection, new)
            return True
        self._found.append(
            Conflict("reversed-twice", signed.bench, signed.number, job=new.job or "")
        )
        return False

    def after(self, signed: Signed) -> None:
        """Look at what an entry left that was just written."""
        if signed.new.kind == sameness.SAME:
            self._names = sameness.read(self._connection)
        key = (str(signed.new.payload.get("register")), str(signed.new.payload.get("id")))
        if signed.new.kind == "register" and key in self._rows:
            found = self._rows[key]
            stands = projection.row_content(self._connection, *key)
            theirs = stands == signed.new.payload["after"]
            self._rows[key] = Conflict(
                **{each: getattr(found, each) for each in ("what", "bench", "register", "row")},
                number=signed.number,
                here=found.here,
                there=found.there,
                stands="there" if theirs else "here",
            )

    def moved(self, transfers: Iterable[Transfer]) -> None:
        """Move balances by an entry's mass lines, refusing nothing."""
        gains, filled = balancing.turnover(tuple(transfers), self._names)
        for place, refrigerant, gain_mg, left_mg in balancing.move(self._connection, gains):
            if place.startswith("cylinder:"):
                self._began_mg.setdefault((place, refrigerant), left_mg - gain_mg)
        self._filled |= dict.fromkeys(filled)

    def found(self) -> tuple[Conflict, ...]:
        """Every conflict, once all entries are in; what an entry of the file mended is none."""
        twice = (self._signed_twice(*key, signed) for key, signed in self._signed.items())
        return (
            *self._found,
            *(conflict for conflict in twice if conflict),
            *self._rows.values(),
            *self._overdrawn(),
            *self._mixed(),
        )

    def _row(self, signed: Signed) -> None:
        """Words of a row that were written without the words that stand here in sight."""
        payload = signed.new.payload
        register, row_id, after = payload["register"], payload["id"], payload["after"]
        stands = projection.row_content(self._connection, register, row_id)
        if stands is None or stands in (payload.get("before"), after):
            return
        keys = sorted(stands.keys() | after.keys())
        differ = [key for key in keys if stands.get(key, "") != after.get(key, "")]
        earlier = self._rows.get((register, row_id))
        self._rows[register, row_id] = Conflict(
            "row",
            signed.bench,
            signed.number,
            register=register,
            row=row_id,
            here=earlier.here if earlier else {key: stands.get(key, "") for key in differ},
            there={key: after.get(key, "") for key in differ},
        )

    def _overdrawn(self) -> Iterable[Conflict]:
        held = {key: self._balance(*key) for key in self._began_mg}
        for (place, refrigerant), mass_mg in sorted(held.items()):
            if mass_mg < min(0, self._began_mg[place, refrigerant]):
                yield Conflict("overdrawn", place=place, refrigerant=refrigerant, mass_mg=mass_mg)

    def _balance(self, place: str, refrigerant: str) -> int:
        table = schema.balance.c
        query = select(table.mass_mg).where(
            table.place == self._names.get(place, place), table.refrigerant == refrigerant
        )
        return self._connection.execute(query).scalar() or 0

    def _mixed(self) -> Iterable[Conflict]:
        for place, refrigerant in sorted(self._filled):
            name = self._names.get(place, place)
            if self._balance(name, refrigerant) <= 0:
                continue
            try:
                balancing.check_content(self._connection, name, refrigerant)
            except WrongRefrigerant:
                yield Conflict("mixed", place=name, refrigerant=refrigerant)

    def _signed_twice(self, job: str, step: str, signed: Signed) -> Conflict | None:
        """The same step of a job signed at two benches, neither taken back."""
        table = schema.entry.c
        undone = select(schema.reversed_entry.c.id)
        query = select(table.bench, table.payload).where(
            table.job == job, table.kind.in_(_STEPS), table.id.not_in(undone)
        )
        benches = {
            bench
            for bench, payload in self._connection.execute(query)
            if msgspec.json.decode(payload).get("step") == step
        }
        if len(benches) < 2:
            return None
        return Conflict("signed-twice", signed.bench, signed.number, job=job, step=step)
