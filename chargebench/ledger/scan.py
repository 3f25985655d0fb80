"""One pass over every entry: the chain followed, each hash recomputed, the books built up anew."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from itertools import islice
from typing import Any

import msgspec
from sqlalchemy import Connection, func, select
from sqlalchemy.exc import DBAPIError

from chargebench.ledger import schema
from chargebench.ledger.entry import GENESIS, canonical, chained, microseconds
from chargebench.ledger.replay import Replay

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

MISSING_TOLD = 20  # numbers of one gap named one by one


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
        self.replay = Replay()
        self.wanted = {(checkpoint.bench, checkpoint.number) for checkpoint in kept}
        self.entries = self.lines = 0

    def says(self, entry: int | None, what: str) -> None:
        """Note a problem."""
        self.problems.append(Problem(entry, what))

    def run(self, progress: Callable[[int, int], None] | None) -> None:
        """Take every entry."""
        position = schema.entry.c.position
        total = self.connection.execute(select(func.count()).select_from(schema.entry)).scalar_one()
        after = 0
        while True:
            places = self.connection.execute(
                select(position).where(position > after).order_by(position).limit(CHUNK)
            )
            chunk = list(places.scalars())
            self._take_chunk(after, chunk)
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

    def _take_chunk(self, after: int, chunk: list[int]) -> None:
        """Entries of a chunk with their mass lines; the last one takes lines beyond every entry."""
        entry, upto = schema.transfer.c.entry, chunk[-1] if len(chunk) == CHUNK else None
        within = entry > after if upto is None else entry.between(after + 1, upto)
        lines: dict[int, list[Any]] = {}
        for at, line, *rest in self._read(_LINES.where(within), entry, chunk):
            lines.setdefault(at, []).append((line, rest))
        position = schema.entry.c.position
        if chunk:
            rows = self._read(_ROW.where(position.between(chunk[0], chunk[-1])), position, chunk)
            for row in rows:
                self._take(row, lines.pop(row[12], []))
        for at, orphans in lines.items():
            if at not in chunk:
                self.says(
                    at, f"{len(orphans)} mass lines belong to place {at}, where no entry stands."
                )

    def _read(self, query: Any, key: Any, chunk: list[int]) -> list[Any]:
        """Rows of a chunk; if one can not be read, the others one by one."""
        try:
            return list(self.connection.execute(query))
        except DBAPIError:
            rows: list[Any] = []
            for at in chunk:
                try:
                    rows += self.connection.execute(query.where(key == at)).all()
                except DBAPIError as problem:
                    self.says(at, f"The entry at place {at} can not be read: {problem.orig}.")
            return rows

    def _take(self, row: Any, lines: list[Any]) -> None:
        self.entries += 1
        bench = self.benches.setdefault(row[1], BenchScan())
        number = row[2]
        self._follow(bench, number, row)
        try:
            moved = [rest for _, rest in lines]
            if chained(row[9], canonical(row[:9], moved)) != row[10]:
                self.says(
                    number,
                    f"Entry {number} or one of its mass lines was changed: what is stored does "
                    "not give its hash.",
                )
            if [line for line, _ in lines] != list(range(len(lines))):
                self.says(number, f"The mass lines of entry {number} are not numbered as written.")
            if microseconds(datetime.fromisoformat(row[5])) != row[11]:
                self.says(number, f"The sorting time of entry {number} is not its own.")
            for source, target, refrigerant, mass_mg, _ in moved:
                self._move(source, refrigerant, -mass_mg, number)
                self._move(target, refrigerant, mass_mg, number)
            self.lines += len(moved)
            self.replay.take(
                kind=row[3],
                job=row[4],
                entry_id=row[0],
                payload=row[8],
                at=row[5],
                recorded_at=row[6],
                number=number,
                position=row[12],
            )
        except (TypeError, ValueError, KeyError, msgspec.MsgspecError) as problem:
            self.says(number, f"Entry {number} can not be read as an entry: {problem}.")

    def _follow(self, bench: BenchScan, number: int, row: Any) -> None:
        """Numbers without a gap, each entry following the one before it.

        An entry with a break on both sides stands out of its place; a break with nothing loose
        is a gap, told of at the end, for its numbers may come later.
        """
        follows = number == bench.last + 1
        if bench.loose and not follows:
            self._out_of_place(bench, row[1])
        if number > bench.number + 1:
            bench.gaps.append(range(bench.number + 1, number))
        elif number <= bench.number:
            bench.late.add(number)
        if follows and row[9] != bench.hash:
            self.says(number, f"Entry {number} does not follow the entry before it.")
        bench.loose, bench.last, bench.hash = not follows, number, row[10]
        bench.number = max(number, bench.number)
        if (row[1], number) in self.wanted:
            bench.hashes[number] = row[10]

    def _out_of_place(self, bench: BenchScan, name: str) -> None:
        self.says(bench.last, f"Entry {bench.last} of bench {name} stands out of its place.")

    def _end(self, name: str, bench: BenchScan) -> None:
        """What only the end of a chain tells."""
        if bench.loose and bench.last < bench.number:
            self._out_of_place(bench, name)
        for gap in bench.gaps:
            missing = (number for number in gap if number not in bench.late)
            for number in islice(missing, MISSING_TOLD):
                self.says(number, f"Entry {number} of bench {name} is missing.")
            untold = len(gap) - sum(number in gap for number in bench.late) - MISSING_TOLD
            if untold > 0:
                self.says(None, f"So are {untold} more up to entry {gap[-1]} of bench {name}.")

    def _move(self, place: str, refrigerant: str, gain_mg: int, number: int) -> None:
        key = (place, refrigerant)
        self.balances[key] = self.balances.get(key, 0) + gain_mg
        self.moved_by[key] = number
