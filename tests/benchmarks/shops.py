"""Shops of any size for measuring: the sample shop's own jobs, stamped out over ten years.

A small charge (recover, evacuate, weigh in) and a walk-in's top-up are copied with other jobs,
equipment, cylinders, dates and numbers; deliveries and returns come when a cylinder asks for them.
Rows are written straight into the tables, for speed; `Ledger.verify` finds nothing wrong with
them (`python -m tests.benchmarks.shops FILE TRANSFERS` makes one and verifies it).
"""

import json
import random
import sqlite3
import sys
import uuid
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from chargebench.desk import sample
from chargebench.ledger import Ledger, Reader, Transfer, tally
from chargebench.ledger.entry import canonical, chained, microseconds, moment_text, payload_text
from chargebench.ledger.projection import search_words

SEED = 20_260_101
FIRST_DAY = datetime(2016, 1, 4, 8, tzinfo=UTC)
YEARS = 10
BATCH = 5_000
DELIVERED_MG = 9_000_000
FULL_MG = 8_000_000
SMALL, WALK_IN = "B-0010", "B-0007"  # the sample's jobs that are stamped
STAMPED = {
    SMALL: ("nameplate", "recovery", "evacuation", "weigh_in"),
    WALK_IN: ("nameplate", "leak_search", "weigh_in"),
}
STOCK_WORK = ("received", "returned")
ENTRY = "INSERT INTO entry VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)"
TRANSFER = "INSERT INTO transfer VALUES (?,?,?,?,?,?,?)"


@dataclass(frozen=True, slots=True)
class Step:
    """One entry of the sample as it is stamped: its payload as stored, its mass lines."""

    kind: str
    payload: str
    transfers: tuple[Transfer, ...]


@dataclass(frozen=True, slots=True)
class Pattern:
    """One job of the sample, with the names that change from copy to copy."""

    equipment: str
    supply: str
    recovered: str
    refrigerant: str
    number: str
    steps: tuple[Step, ...]


class _Writer:
    """Entries one after another, in the chain, with balances, jobs and rows as posting has them."""

    def __init__(self, tool: sqlite3.Connection, at: tuple[int, int, bytes]) -> None:
        self._tool = tool
        self._position, self._number, self._hash = at
        self._entries: list[tuple[object, ...]] = []
        self._transfers: list[tuple[object, ...]] = []
        self.balance: dict[tuple[str, str], int] = {}
        self.days: tally.Days = {}
        self.places: list[tuple[str, str, int]] = []
        self.jobs: list[tuple[object, ...]] = []
        self.rows: dict[tuple[str, str], dict[str, str]] = {}
        self.moved = 0
        self.random = random.Random(SEED)

    def post(
        self,
        kind: str,
        payload: str,
        when: datetime,
        lines: tuple[Transfer, ...] = (),
        job: str | None = None,
    ) -> int:
        """Write one entry; gives its position back."""
        self._position, self._number = self._position + 1, self._number + 1
        entry_id = str(uuid.UUID(int=self.random.getrandbits(128), version=4))
        moment = moment_text(when)
        values = (entry_id, "B", self._number, kind, job, moment, moment, "P-01", payload)
        masses = [(t.source, t.target, t.refrigerant, t.mass_mg, t.as_typed) for t in lines]
        digest = chained(self._hash, canonical(values, masses))
        row = (self._position, *values, self._hash, digest, microseconds(when))
        self._entries.append(row)
        self._hash = digest
        for count, line in enumerate(lines):
            self._transfers.append((self._position, count, *masses[count]))
            for place, gain in ((line.source, -line.mass_mg), (line.target, line.mass_mg)):
                key = (place, line.refrigerant)
                self.balance[key] = self.balance.get(key, 0) + gain
        for day, mass_mg, moved in tally.of_lines(moment, "B", "P-01", masses, 1):
            tally.add(self.days, day, mass_mg, moved)
        if kind in STOCK_WORK:
            self.places += (
                (place, kind, self._position) for place in json.loads(payload)["places"]
            )
        self.moved += len(lines)
        if len(self._entries) >= BATCH:
            self.flush()
        return self._position

    def put_row(self, register: str, row_id: str, row: dict[str, str]) -> None:
        """Write a register row by an entry, as the ledger does."""
        payload = {"register": register, "id": row_id, "after": row, "before": None}
        self.rows[register, row_id] = row
        self.post("register", payload_text(payload), FIRST_DAY)

    def flush(self) -> None:
        """Hand what waits to the file."""
        self._tool.executemany(ENTRY, self._entries)
        self._tool.executemany(TRANSFER, self._transfers)
        self._entries.clear()
        self._transfers.clear()

    def finish(self) -> None:
        """Write what posting would have moved along: balances, rows, jobs, the head."""
        self.flush()
        self._tool.executemany(
            "INSERT INTO balance VALUES (?,?,?)", [(*key, mg) for key, mg in self.balance.items()]
        )
        self._tool.executemany(
            "INSERT INTO register_row VALUES (?,?,?,?)",
            [(*key, payload_text(row), search_words(row)) for key, row in self.rows.items()],
        )
        self._tool.executemany(
            "INSERT INTO day_total VALUES (?,?,?,?,?,?,?,?)",
            [(*key, *total) for key, total in self.days.items()],
        )
        self._tool.executemany("INSERT INTO place_entry VALUES (?,?,?)", self.places)
        self._tool.executemany("INSERT INTO job VALUES (?,?,?,?,?,?,?)", self.jobs)
        self._tool.execute(
            "UPDATE head SET number = ?, hash = ? WHERE bench = 'B'", (self._number, self._hash)
        )


def make(path: Path, transfers: int) -> None:
    """Make a shop file with about so many transfers; the same number gives the same shop."""
    with sample.open_or_build(path.with_name("pattern.chargebench")) as desk:
        reading = desk.reading
        patterns = {number: _pattern(reading, number) for number in STAMPED}
        rows = {
            (register, row_id): row
            for register in ("person", "shop", "site", "instrument", "equipment", "cylinder")
            for row_id, row in reading.rows(register).items()
        }
    Ledger.create(path).close()
    tool = sqlite3.connect(path, isolation_level=None)
    tool.execute("PRAGMA synchronous=OFF")
    tool.execute("PRAGMA cache_size=-262144")
    tool.execute("BEGIN IMMEDIATE")
    writer = _Writer(tool, (0, 0, bytes(32)))
    for (register, row_id), row in rows.items():
        if register not in ("equipment", "cylinder"):
            writer.put_row(register, row_id, row)
    _stamp(writer, patterns, rows, transfers)
    writer.finish()
    tool.execute("COMMIT")
    tool.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    tool.close()


def _pattern(reading: Reader, number: str) -> Pattern:
    job = next(job for job in reading.jobs(find="") if job.number == number)
    entries = [
        entry for entry in reading.entries(job=job.id)
        if entry.payload.get("step") in STAMPED[number]
    ]  # fmt: skip
    places = [line for entry in entries for line in entry.transfers]
    supply = next(t.source for t in places if t.source.startswith("cylinder:"))
    recovered = next((t.target for t in places if t.target.startswith("cylinder:")), "")
    return Pattern(
        equipment=job.equipment,
        supply=supply.removeprefix("cylinder:"),
        recovered=recovered.removeprefix("cylinder:"),
        refrigerant=places[0].refrigerant,
        number=number,
        steps=tuple(Step(e.kind, payload_text(e.payload), e.transfers) for e in entries),
    )


def _stamp(
    writer: _Writer,
    patterns: dict[str, Pattern],
    rows: dict[tuple[str, str], dict[str, str]],
    transfers: int,
) -> None:
    jobs = max(1, transfers // 5)
    equipment = max(8, jobs // 12)
    minutes = YEARS * 365 * 24 * 60 // jobs or 1
    supplies: dict[str, str] = {}
    for count in range(jobs):
        walk_in = count % 4 == 3
        pattern = patterns[WALK_IN if walk_in else SMALL]
        # Equipment is visited again and again, each some dozen times in ten years.
        which = writer.random.randrange(equipment) // 4 * 4 + (3 if walk_in else count % 3)
        place = f"E-{which:06d}"
        if ("equipment", place) not in writer.rows:
            row = dict(rows["equipment", pattern.equipment])
            row["serial"] = f"SN-{which:08d}"
            writer.put_row("equipment", place, row)
        when = FIRST_DAY + timedelta(minutes=minutes * count)
        names = {
            pattern.equipment: place,
            pattern.supply: _cylinder(writer, pattern, rows, supplies, when, supply=True),
        }
        if pattern.recovered:
            names[pattern.recovered] = _cylinder(
                writer, pattern, rows, supplies, when, supply=False
            )
        _job(writer, pattern, names, when, count + 1)
        if writer.moved >= transfers:
            return


def _cylinder(
    writer: _Writer,
    pattern: Pattern,
    rows: dict[tuple[str, str], dict[str, str]],
    at_hand: dict[str, str],
    when: datetime,
    *,
    supply: bool,
) -> str:
    """Cylinder to draw from or to recover into: delivered when empty, returned when full."""
    kind, original = ("S", pattern.supply) if supply else ("R", pattern.recovered)
    key = kind + pattern.refrigerant
    name = at_hand.get(key)
    held = writer.balance.get((f"cylinder:{name}", pattern.refrigerant), 0)
    if name is not None and (held > 2_000_000 if supply else held < FULL_MG):
        return name
    if name is not None and not supply:
        line = Transfer(f"cylinder:{name}", "reclaimer", pattern.refrigerant, held, f"{held} mg")
        writer.post("returned", _typed(name, held), when, (line,))
    # A bank of cylinders that come back full, so that each has a history of its own.
    bank = 40 if supply else 20
    nth = int(name.rsplit("-", 1)[1]) + 1 if name else 0
    name = f"C-{pattern.refrigerant}{kind}-{nth % (bank * 50):04d}"
    at_hand[key] = name
    if ("cylinder", name) not in writer.rows:
        row = dict(rows["cylinder", original])
        row["serial"] = name
        writer.put_row("cylinder", name, row)
    if supply:
        line = Transfer("supplier", f"cylinder:{name}", pattern.refrigerant, DELIVERED_MG, "9 kg")
        writer.post("received", _typed(name, DELIVERED_MG), when, (line,))
    return name


def _typed(cylinder: str, mass_mg: int) -> str:
    typed = {"cylinder": cylinder, "mass": f"{mass_mg / 1_000_000} kg"}
    return payload_text({"typed": typed, "places": [f"cylinder:{cylinder}"], "said": []})


def _job(
    writer: _Writer, pattern: Pattern, names: dict[str, str], when: datetime, count: int
) -> None:
    job = str(uuid.UUID(int=writer.random.getrandbits(128), version=4))
    place = names[pattern.equipment]
    number = f"B-{count:04d}"
    opened = {"equipment": place, "number": number, "reason": "Not holding temperature"}
    at = writer.post("job-opened", payload_text(opened), when, job=job)
    for nth, step in enumerate(pattern.steps):
        payload = step.payload
        for was, now in names.items():
            payload = payload.replace(f'"{was}"', f'"{now}"')
        lines = tuple(_lines(writer, pattern, names, step))
        moment = when + timedelta(minutes=10 * (nth + 1))
        writer.post(step.kind, payload, moment, lines, job)
    closed = when + timedelta(hours=2)
    writer.post("job-closed", '{"flags":[]}', closed, job=job)
    state = (job, number, place, "closed", moment_text(when), moment_text(closed), at)
    writer.jobs.append(state)


def _lines(
    writer: _Writer, pattern: Pattern, names: dict[str, str], step: Step
) -> Iterator[Transfer]:
    """The step's mass lines between this copy's places; what is lost is what the book has left."""
    held = writer.balance.get((f"equipment:{names[pattern.equipment]}", pattern.refrigerant))
    for line in step.transfers:
        source, target = (_named(end, names) for end in (line.source, line.target))
        mass = line.mass_mg
        if source == "outside" and held is not None:
            continue  # seen before: its content is known
        if line.as_typed == "presumed lost" and pattern.number == SMALL:
            mass = held or 0
        yield replace(line, source=source, target=target, mass_mg=mass)


def _named(place: str, names: dict[str, str]) -> str:
    kind, _, was = place.partition(":")
    return f"{kind}:{names[was]}" if was in names else place


def main(arguments: list[str]) -> int:
    """Make a shop and verify it; 1 if anything is wrong with it."""
    path = Path(arguments[0])
    make(path, int(arguments[1]))
    with Reader.open_reading(path) as reading:
        found = reading.verify()
    for problem in found.problems[:20]:
        print(problem, file=sys.stderr)
    print(f"{path}: {path.stat().st_size / 2**20:.0f} MiB; {found.checked[0]}")
    return 0 if found.ok else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
