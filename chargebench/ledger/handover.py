"""Taking in a chain file: every entry verbatim, all of a file or nothing of it.

What can not be is refused: a hash that is not given, a number that stands here with another hash,
a reference to what this ledger has never seen. What merely should not have happened, because two
benches worked without seeing each other, is taken and told of as a conflict.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, select

from chargebench.errors import ChainFileRefused, ChainFileWaits, PostingRefused
from chargebench.ledger import dialect, handout, posting, projection, reading, schema
from chargebench.ledger.chainfile import ChainFile, Signed
from chargebench.ledger.chainlines import Chain
from chargebench.ledger.conflicts import Conflict, Conflicts
from chargebench.ledger.entry import GENESIS, Entry, NewEntry
from chargebench.words import say

HANDED_OVER = "handed-over"
_TOLD_EVERY = 200
_PUT_HEAD = dialect.put(schema.head)


@dataclass(frozen=True, slots=True)
class TakenOver:
    """What a chain file brought: new entries of which chains, how many were here, what clashed."""

    chains: tuple[Chain, ...]
    known: int
    conflicts: tuple[Conflict, ...]
    entry: Entry | None  # of this bench, that records it; none where nothing was new

    @property
    def taken(self) -> int:
        """How many entries were new."""
        return sum(chain.last - chain.first + 1 for chain in self.chains)


@dataclass(frozen=True, slots=True)
class Taker:
    """Who takes in, at which bench of which shop, from a file of which name."""

    shop: str
    bench: str
    by: str
    happened_at: datetime
    name: str


def take_over(
    connection: Connection,
    file: ChainFile,
    taker: Taker,
    check: Callable[[NewEntry], None],
    progress: handout.Progress | None = None,
) -> TakenOver:
    """Take in what is new in a file, inside a transaction that a refusal undoes.

    `check` refuses, by raising `PostingRefused`, an entry no bench of this program could have
    signed. `progress` may stop the work by raising.

    Raises
    ------
    ChainFileRefused
        A file that is not whole and sound, of another shop, that begins after what is known here,
        or that holds another entry than the one that stands here.
    """
    posting.hold_shop(connection)
    taking = _Taking(connection, file, taker, check)
    taking.begin()
    for count, signed in enumerate(file.entries(), 1):
        taking.take(signed)
        if progress is not None and count % _TOLD_EVERY == 0:
            progress(count, file.head.entries)
    return taking.end()


class _Taking:
    """One file being taken in."""

    def __init__(
        self,
        connection: Connection,
        file: ChainFile,
        taker: Taker,
        check: Callable[[NewEntry], None],
    ) -> None:
        self._connection = connection
        self._file = file
        self._taker = taker
        self._check = check
        self._heads = handout.heads(connection)
        self._began = dict(self._heads)
        self._known = 0
        self._conflicts = Conflicts(connection)

    def begin(self) -> None:
        """Refuse a file of another shop, and one that begins after what is known here."""
        head = self._file.head
        if head.shop != self._taker.shop:
            raise ChainFileRefused(
                "This chain file is of another shop. Take in files of benches that were begun "
                "from this shop's own."
            )
        for chain in head.chains:
            last = self._heads.get(chain.bench, (0, GENESIS))[0]
            if chain.first > last + 1:
                missing = (
                    "Entry {missing} of bench {bench} is missing: the file begins at {first}."
                    if chain.first == last + 2
                    else "Entries {missing} to {upto} of bench {bench} are missing: the file "
                    "begins at {first}."
                )
                raise ChainFileWaits(
                    say(
                        missing,
                        missing=last + 1,
                        upto=chain.first - 1,
                        bench=chain.bench,
                        first=chain.first,
                    )
                    + say(
                        " Take in the file with them first, or hand over again from entry "
                        "{missing}.",
                        missing=last + 1,
                    )
                )
            here = handout.hash_of(self._connection, chain.bench, chain.first - 1)
            if here is None or here.hex() != chain.previous_hash:
                raise self._forked(chain.bench, chain.first - 1)

    def take(self, signed: Signed) -> None:
        """Take one entry, or find that it is here."""
        last, digest = self._heads.get(signed.bench, (0, GENESIS))
        if signed.number <= last:
            here = handout.hash_of(self._connection, signed.bench, signed.number)
            if here != signed.hash:
                raise self._forked(signed.bench, signed.number)
            self._known += 1
            return
        assert signed.previous_hash == digest, "the file was held against what is known here"
        try:
            self._refuse_unsound(signed)
            stands = self._conflicts.before(signed)
        except PostingRefused as refusal:
            raise ChainFileRefused(
                f"{signed.called[0].upper()}{signed.called[1:]}: {refusal}"
            ) from refusal
        position = posting.write(
            self._connection,
            signed.values,
            signed.lines,
            signed.new.happened_at,
            (signed.previous_hash, signed.hash),
        )
        self._heads[signed.bench] = (signed.number, signed.hash)
        self._conflicts.moved(signed.new.transfers)
        if stands:
            projection.apply(
                self._connection,
                signed.new,
                position,
                bench=signed.bench,
                happened_at=signed.values[5],
                recorded_at=signed.values[6],
            )
        self._conflicts.after(signed)

    def end(self) -> TakenOver:
        """Keep the new heads, and record at this bench what was taken."""
        chains = tuple(self._taken())
        if not chains:
            return TakenOver((), self._known, (), None)
        for chain in chains:
            row = {"bench": chain.bench, "number": chain.last, "hash": bytes.fromhex(chain.hash)}
            self._connection.execute(_PUT_HEAD, row)
        found = self._conflicts.found()
        if any(chain.bench == self._taker.bench for chain in chains):
            found = (Conflict("own-entries", bench=self._taker.bench), *found)
        by = self._taker.by or self._first_person()
        payload = {
            "file": self._taker.name,
            "sha256": self._file.sha256,
            "from": self._file.head.bench,
            "chains": [_plain(chain) for chain in chains],
            "known": self._known,
            "conflicts": [_filled(asdict(conflict)) for conflict in found],
        }
        new = NewEntry(HANDED_OVER, by, self._taker.happened_at, payload)
        entry = posting.record(self._connection, self._taker.bench, new, {})
        return TakenOver(chains, self._known, found, entry)

    def _taken(self) -> Iterable[Chain]:
        for bench, (number, digest) in sorted(self._heads.items()):
            before, previous = self._began.get(bench, (0, GENESIS))
            if number > before:
                yield Chain(bench, before + 1, number, previous.hex(), digest.hex())

    def _first_person(self) -> str:
        table = schema.register_row.c
        query = select(table.id).where(table.register == "person").order_by(table.id)
        return self._connection.execute(query.limit(1)).scalar() or self._taker.bench

    def _forked(self, bench: str, number: int) -> ChainFileRefused:
        return ChainFileRefused(
            say(
                "Entry {number} of bench {bench} is another one here than in the file: "
                "one of the two chains is forged, or two computers record as bench "
                "{bench}. Nothing was taken in. Verify both, and keep this file.",
                number=number,
                bench=bench,
            )
        )

    def _refuse_unsound(self, signed: Signed) -> None:
        """Refuse what refers to nothing known here; no bench of this shop can have signed it."""
        new, payload = signed.new, signed.new.payload
        if reading.position_of(self._connection, new.id):
            raise PostingRefused("Another entry stands here under its id.")
        if new.kind == "job-opened":
            projection.check_opening(self._connection, signed.bench, new)
        elif new.job is None:
            if new.kind in projection.JOB_KINDS:
                raise PostingRefused("It names no job.")
        elif projection.find_job(self._connection, new.job) is None:
            raise PostingRefused("It belongs to a job that no entry before it opened.")
        if new.kind in projection.ROW_KINDS:
            projection.check_row(new.kind, payload)
        elif new.kind == HANDED_OVER:
            self._refuse_unseen(signed)
        self._check(new)

    def _refuse_unseen(self, signed: Signed) -> None:
        """Refuse an entry that rests on chains this ledger has not seen as far."""
        for seen in _chains_seen(signed.new.payload):
            bench, last, digest = seen["bench"], seen["last"], seen["hash"]
            here = handout.hash_of(self._connection, bench, last)
            if here is None:
                known = self._heads.get(bench, (0, GENESIS))[0]
                raise ChainFileWaits(
                    say(
                        "Bench {bench} had seen entries of bench {bench_2} up to {last}; "
                        "here they are known up to {known}. Take in the chain of bench "
                        "{bench_2} first, or have bench {bench} hand over every chain it "
                        "knows.",
                        bench=signed.bench,
                        bench_2=bench,
                        last=last,
                        known=known,
                    )
                )
            if here.hex() != digest:
                raise self._forked(bench, last)


def _chains_seen(payload: Mapping[str, Any]) -> list[dict[str, Any]]:
    chains = payload.get("chains")
    if not isinstance(chains, list) or not all(_is_seen(each) for each in chains):
        raise PostingRefused("It does not say which entries it took in.")
    return chains


def _is_seen(each: Any) -> bool:
    kinds = {"bench": str, "first": int, "last": int, "hash": str}
    return (
        isinstance(each, dict)
        and set(each) == set(kinds)
        and all(type(each[key]) is kind for key, kind in kinds.items())
    )


def _plain(chain: Chain) -> dict[str, Any]:
    return {
        "bench": chain.bench,
        "first": chain.first,
        "last": chain.last,
        "hash": chain.hash,
    }


def _filled(conflict: dict[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in conflict.items() if value not in ("", 0, None, {})}
