"""One pass over every entry: the chain followed, each hash recomputed, the books built up anew."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from itertools import islice
from typing import Any

import msgspec
from sqlalchemy import Connection, func, select

from chargebench.ledger import dialect, schema, tally
from chargebench.ledger.entry import GENESIS, canonical, chained, microseconds
from chargebench.ledger.replay import Replay
from chargebench.words import say

CHUNK = 2_000
_ROW = select(
    *schema.HASHED,
    schema.entry.c.previous_hash,
    schema.entry.c.hash,
    schema.entry.c.happened_us,
    schema.entry.c.position,
).order_by(schema.entry.c.position)
_LINES = select(schema.transfer.c.entry, schema.transfer.c.line, *schema.MASS_LINE).order_by(
    schema.transfer.c.entry, schema.transfer.c.line
)

_POSITION = 12  # in a row
Rows = Sequence[Sequence[Any]]

MISSING_TOLD = 20  # numbers of one gap named one by one


def _fetched(connection: Connection, query: Any) -> Rows:
    """Rows as the driver gives them: ones that know their columns would double the time."""
    with connection.execute(query) as found:
        return found.cursor.fetchall()


@dataclass(frozen=True, slots=True)
class Problem:
    """Something that does not agree, with the number of the entry it lies in where there is one."""

    entry: int | None
    what: str


@dataclass(frozen=True, slots=True)
class Checkpoint:
    """A head of a chain kept earlier, in the file or outside it."""

    bench: str
    number: int
    hash: str
    kept_at: str = ""


@dataclass(slots=True)
class BenchScan:
    """How far the chain of one bench was followed."""

    number: int = 0  # the highest met
    last: int = 0
    loose: bool = False  # whether the last did not follow the one before it
    hash: bytes = GENESIS
    gaps: list[range] = field(default_factory=list)  # numbers passed over when they were due
    late: set[int] = field(default_factory=set)  # numbers of gaps that came after all
    hashes: dict[int, bytes] = field(default_factory=dict)


class Scan:
    """Follows every entry in the order recorded and builds up what the projections should say."""

    def __init__(self, connection: Connection, kept: Sequence[Checkpoint]) -> None:
        self.connection = connection
        self.problems: list[Problem] = []
        self.benches: dict[str, BenchScan] = {}
        self.balances: dict[tuple[str, str], int] = {}
        self.moved_by: dict[tuple[str, str], int] = {}
        self.replay = Replay(lambda entry: tally.signed_by(connection, entry))
        self.wanted = {(checkpoint.bench, checkpoint.number) for checkpoint in kept}
        self.entries = self.lines = 0

    def says(self, entry: int | None, what: str, /, **values: object) -> None:
        """Note a problem, as a text or a template with its values."""
        self.problems.append(Problem(entry, say(what, **values) if values else what))

    def run(self, progress: Callable[[int, int], None] | None) -> None:
        """Take every entry."""
        total = self.connection.execute(select(func.count()).select_from(schema.entry)).scalar_one()
        after = 0
        while True:
            chunk, rows = self._next(after)
            self._take_chunk(after, chunk, rows)
            if progress is not None:
                progress(self.entries, total)
            if len(chunk) < CHUNK:
                break
            after = chunk[-1]
        for name, bench in self.benches.items():
            self._end(name, bench)

    def due(self) -> tuple[dict[tuple[str, str], int], dict[tuple[str, str], int]]:
        """What each balance should say, and the entry that last moved it; after the run."""
        names = self.replay.names()
        balances: dict[tuple[str, str], int] = {}
        moved_by: dict[tuple[str, str], int] = {}
        for (place, refrigerant), mass_mg in self.balances.items():
            key = (names.get(place, place), refrigerant)
            balances[key] = balances.get(key, 0) + mass_mg
            moved_by[key] = self.moved_by[place, refrigerant]
        return balances, moved_by

    def _next(self, after: int) -> tuple[list[int], Rows]:
        """Places of the next entries, and their rows; fewer where some can not be read."""
        position = schema.entry.c.position
        try:
            rows = _fetched(self.connection, _ROW.where(position > after).limit(CHUNK))
        except dialect.ERRORS:
            places = select(position).where(position > after).order_by(position).limit(CHUNK)
            chunk = list(self.connection.execute(places).scalars())
            return chunk, self._one_by_one(_ROW, position, chunk)
        return [row[_POSITION] for row in rows], rows

    def _take_chunk(self, after: int, chunk: list[int], rows: Rows) -> None:
        """Entries of a chunk with their mass lines; the last one takes lines beyond every entry."""
        entry, upto = schema.transfer.c.entry, chunk[-1] if len(chunk) == CHUNK else None
        within = entry > after if upto is None else entry.between(after + 1, upto)
        try:
            found = _fetched(self.connection, _LINES.where(within))
        except dialect.ERRORS:
            found = self._one_by_one(_LINES, entry, chunk)
        lines: dict[int, list[Any]] = {}
        for line in found:
            lines.setdefault(line[0], []).append(line)
        for row in rows:
            self._take(row, lines.pop(row[_POSITION], ()))
        for at, orphans in lines.items():
            if at not in chunk:
                self.says(
                    at,
                    "{count} mass lines belong to place {at}, where no entry stands.",
                    count=len(orphans),
                    at=at,
                )

    def _one_by_one(self, query: Any, key: Any, chunk: list[int]) -> Rows:
        """Rows of a chunk of which not all can be read."""
        rows: list[Any] = []
        for at in chunk:
            try:
                rows += _fetched(self.connection, query.where(key == at))
            except dialect.ERRORS as problem:
                why = getattr(problem, "orig", problem)
                self.says(at, "The entry at place {at} can not be read: {why}.", at=at, why=why)
        return rows

    def _take(self, row: Sequence[Any], lines: Sequence[Sequence[Any]]) -> None:
        (
            entry_id, bench, number, kind, job, happened_at, recorded_at, by, payload,
            previous, digest, happened_us, position,
        ) = row  # fmt: skip
        self.entries += 1
        self._follow(bench, number, previous, digest)
        try:
            moved = [line[2:] for line in lines]
            if chained(previous, canonical(row, moved)) != digest:
                self.says(
                    number,
                    "Entry {number} or one of its mass lines was changed: what is "
                    "stored does not give its hash.",
                    number=number,
                )
            if microseconds(datetime.fromisoformat(happened_at)) != happened_us:
                self.says(
                    number, "The sorting time of entry {number} is not its own.", number=number
                )
            if lines:
                self._move(number, lines, moved)
            self.replay.take(
                kind=kind,
                job=job,
                entry_id=entry_id,
                payload=payload,
                at=happened_at,
                recorded_at=recorded_at,
                number=number,
                position=position,
            )
            if lines:
                self.replay.move(bench, (entry_id, kind, happened_at, by, payload), moved)
        except (TypeError, ValueError, KeyError, msgspec.MsgspecError) as problem:
            self.says(
                number,
                "Entry {number} can not be read as an entry: {problem}.",
                number=number,
                problem=problem,
            )

    def _move(
        self, number: int, lines: Sequence[Sequence[Any]], moved: Sequence[Sequence[Any]]
    ) -> None:
        """Move the balances by an entry's mass lines."""
        if [line[1] for line in lines] != list(range(len(lines))):
            self.says(
                number,
                "The mass lines of entry {number} are not numbered as written.",
                number=number,
            )
        balances, moved_by = self.balances, self.moved_by
        for source, target, refrigerant, mass_mg, _ in moved:
            taken, given = (source, refrigerant), (target, refrigerant)
            balances[taken] = balances.get(taken, 0) - mass_mg
            balances[given] = balances.get(given, 0) + mass_mg
            moved_by[taken] = moved_by[given] = number
        self.lines += len(moved)

    def _follow(self, name: str, number: int, previous: bytes, digest: bytes) -> None:
        """Numbers without a gap, each entry following the one before it.

        An entry with a break on both sides stands out of its place; a break with nothing loose
        is a gap, told of at the end, for its numbers may come later.
        """
        bench = self.benches.setdefault(name, BenchScan())
        follows = number == bench.last + 1
        if bench.loose and not follows:
            self._out_of_place(bench, name)
        if number > bench.number + 1:
            bench.gaps.append(range(bench.number + 1, number))
        elif number <= bench.number:
            bench.late.add(number)
        if follows and previous != bench.hash:
            self.says(number, "Entry {number} does not follow the entry before it.", number=number)
        bench.loose, bench.last, bench.hash = not follows, number, digest
        bench.number = max(number, bench.number)
        if (name, number) in self.wanted:
            bench.hashes[number] = digest

    def _out_of_place(self, bench: BenchScan, name: str) -> None:
        self.says(
            bench.last,
            "Entry {last} of bench {name} stands out of its place.",
            last=bench.last,
            name=name,
        )

    def _end(self, name: str, bench: BenchScan) -> None:
        """What only the end of a chain tells."""
        if bench.loose and bench.last < bench.number:
            self._out_of_place(bench, name)
        for gap in bench.gaps:
            missing = (number for number in gap if number not in bench.late)
            for number in islice(missing, MISSING_TOLD):
                self.says(
                    number, "Entry {number} of bench {name} is missing.", number=number, name=name
                )
            untold = len(gap) - sum(number in gap for number in bench.late) - MISSING_TOLD
            if untold > 0:
                self.says(
                    None,
                    "So are {untold} more up to entry {gap} of bench {name}.",
                    untold=untold,
                    gap=gap[-1],
                    name=name,
                )
