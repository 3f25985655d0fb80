"""Recompute the whole ledger from its entries and name what does not agree."""

import hashlib
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass

import msgspec
from sqlalchemy import Connection, select
from sqlalchemy.exc import DBAPIError, NoResultFound

from chargebench.ledger import dialect, schema
from chargebench.ledger.checked import checked
from chargebench.ledger.entry import GENESIS, mass_words
from chargebench.ledger.projection import search_words
from chargebench.ledger.scan import BenchScan, Checkpoint, Problem, Scan
from chargebench.words import say

LIMITS = (
    (
        "A chain of hashes shows that what is recorded was not changed afterwards; it can not "
        "show that what was typed was true."
    ),
    "It can not show who sat at the bench: names are as signed, not proven.",
    (
        "Whoever rewrites the file with all its hashes and kept heads, or cuts off its end and "
        "every head kept in it, leaves a chain that agrees with itself. Only a head kept "
        "elsewhere, as in the manifest of an export, shows that."
    ),
    "Text of open steps is not signed and not checked.",
)

_DAYS = select(schema.day_total)


@dataclass(frozen=True, slots=True)
class Verification:
    """What was checked, what was found, and what such a check can not prove, in sentences."""

    checked: tuple[str, ...]
    problems: tuple[Problem, ...]
    limits: tuple[str, ...] = LIMITS

    @property
    def ok(self) -> bool:
        """Whether nothing disagreed."""
        return not self.problems


def verify(
    connection: Connection,
    progress: Callable[[int, int], None] | None = None,
    checkpoints: Sequence[Checkpoint] = (),
) -> Verification:
    """Recompute chain, numbers, transfers, balances, registers and jobs, and compare.

    `checkpoints` are heads kept outside the file, as in the manifests of exports.
    """
    try:
        with connection.begin():
            return _verify(connection, progress, checkpoints)
    except DBAPIError as problem:
        own = dialect.of(connection)
        if own.gone(problem):
            raise
        said = own.says(problem) or "it does not hold the tables of a shop"
        return Verification(
            ("The file could not be read to its end, so little was checked.",),
            (
                Problem(
                    None,
                    say("The file can not be read: {said} ({orig}).", said=said, orig=problem.orig),
                ),
            ),
        )


def _verify(
    connection: Connection,
    progress: Callable[[int, int], None] | None,
    outside: Sequence[Checkpoint],
) -> Verification:
    table = schema.checkpoint
    inside = [
        Checkpoint(bench, number, digest.hex() if isinstance(digest, bytes) else "", kept_at)
        for bench, number, digest, kept_at in connection.execute(
            select(table.c.bench, table.c.number, table.c.hash, table.c.kept_at)
        )
    ]
    kept = [*inside, *outside]
    scan = Scan(connection, kept)
    for name in dialect.of(connection).missing_guards(connection):
        scan.says(
            None,
            "The guard {name}, which keeps records from being changed, is not there.",
            name=name,
        )
    for damage in dialect.of(connection).damage(connection):
        scan.says(None, "The file's pages are damaged: {damage}.", damage=damage)
    pictures = 0
    with _unreadable_told(scan):
        scan.run(progress)
    with _unreadable_told(scan):
        _compare_heads(scan, kept)
    for compare in (_compare_balances, _compare_projections, _compare_tallies):
        with _unreadable_told(scan):
            compare(scan)
    with _unreadable_told(scan):
        pictures = _compare_pictures(scan)
    return Verification(checked(scan, inside, outside, pictures), tuple(scan.problems))


@contextmanager
def _unreadable_told(scan: Scan) -> Iterator[None]:
    """Tell of values of a kind that is never written, for a damaged page may hold anything."""
    try:
        yield
    except (TypeError, ValueError, AttributeError, NoResultFound) as problem:
        scan.says(
            None,
            "A stored value is of a kind this program never writes, so not all could be "
            "checked: {problem}.",
            problem=problem,
        )


def _compare_heads(scan: Scan, kept: Sequence[Checkpoint]) -> None:
    """The chain ends where it was left, and holds every head kept earlier."""
    heads = {row[0]: (row[1], row[2]) for row in scan.connection.execute(select(schema.head))}
    for name in sorted(heads.keys() | scan.benches.keys()):
        bench, (number, digest) = scan.benches.get(name, BenchScan()), heads.get(name, (0, GENESIS))
        if bench.number < number:
            scan.says(
                bench.number + 1,
                "Entries {bench_number} to {number} of bench {name} are cut off: the "
                "head kept beside the chain is entry {number}.",
                bench_number=bench.number + 1,
                number=number,
                name=name,
            )
        elif bench.number > number:
            scan.says(
                number + 1,
                "Entries {number} to {bench_number} of bench {name} were added behind "
                "the head kept beside the chain.",
                number=number + 1,
                bench_number=bench.number,
                name=name,
            )
        elif bench.hash != digest:
            scan.says(
                number,
                "Entry {number} of bench {name} is not the one kept as its head.",
                number=number,
                name=name,
            )
    for checkpoint in kept:
        bench = scan.benches.get(checkpoint.bench, BenchScan())
        if checkpoint.number and checkpoint.number not in bench.hashes:
            first = min(bench.number + 1, checkpoint.number)
            scan.says(
                first,
                "Entry {checkpoint_number} of bench {bench} stood when a head was kept "
                "({kept_at}); entries {first} to {checkpoint_number} are gone.",
                checkpoint_number=checkpoint.number,
                bench=checkpoint.bench,
                kept_at=checkpoint.kept_at,
                first=first,
            )
        elif checkpoint.number and bench.hashes[checkpoint.number].hex() != checkpoint.hash:
            scan.says(
                checkpoint.number,
                "Entry {checkpoint_number} of bench {bench} is not the one that stood "
                "when a head was kept ({kept_at}).",
                checkpoint_number=checkpoint.number,
                bench=checkpoint.bench,
                kept_at=checkpoint.kept_at,
            )


def _compare_balances(scan: Scan) -> None:
    """Running balances against the sums of the transfers, and every sum over all places zero."""
    sums: dict[str, int] = {}
    stored: dict[tuple[str, str], int] = {}
    for place, refrigerant, mass_mg in scan.connection.execute(select(schema.balance)):
        stored[place, refrigerant] = mass_mg
        sums[refrigerant] = sums.get(refrigerant, 0) + mass_mg
    wanted, moved_by = scan.due()
    for key in sorted(stored.keys() | wanted.keys()):
        is_mg, should_mg = stored.get(key, 0), wanted.get(key, 0)
        if is_mg != should_mg:
            scan.says(
                moved_by.get(key),
                "The balance of {key} says {mass_words} of {key_2}; its transfers give "
                "{mass_words_2}.",
                key=key[0],
                mass_words=mass_words(is_mg),
                key_2=key[1],
                mass_words_2=mass_words(should_mg),
            )
    for refrigerant, sum_mg in sorted(sums.items()):
        if sum_mg:
            scan.says(
                None,
                "The balances of {refrigerant} over all places sum to {mass_words}.",
                refrigerant=refrigerant,
                mass_words=mass_words(sum_mg),
            )


def _compare_projections(scan: Scan) -> None:
    """Registers, jobs and reversals against what the entries say of them."""
    run, replay = scan.connection.execute, scan.replay
    rows = {(r[0], r[1]): (r[2], r[3]) for r in run(select(schema.register_row))}
    should = {
        key: (content, search_words(msgspec.json.decode(content)))
        for key, content in replay.rows.items()
    }
    for key in sorted(rows.keys() | should.keys()):
        if rows.get(key) != should.get(key):
            scan.says(
                replay.moved_by.get(("row", *key)),
                "The {key} row {key_2} is not what the last entry about it says.",
                key=key[0],
                key_2=key[1],
            )
    jobs = {row[0]: tuple(row) for row in run(select(schema.job))}
    for job in sorted(jobs.keys() | replay.jobs.keys()):
        if jobs.get(job) != replay.jobs.get(job):
            scan.says(
                replay.moved_by.get(("job", job)),
                "Job {job} is not what its entries say of it.",
                job=job,
            )
    reversals = {row[0]: row[1] for row in run(select(schema.reversed_entry))}
    for entry in sorted(reversals.keys() | replay.reversals.keys()):
        if reversals.get(entry) != replay.reversals.get(entry):
            scan.says(
                replay.moved_by.get(("reversal", entry)),
                "Whether entry {entry} is reversed is not what the entries say.",
                entry=entry,
            )


def _compare_tallies(scan: Scan) -> None:
    """Totals by the day, and which stock work names a place, against what the entries say."""
    days = {tuple(row[:6]): (row[6], row[7]) for row in scan.connection.execute(_DAYS)}
    should = scan.replay.days
    for key in sorted(days.keys() | should.keys()):
        if days.get(key) != should.get(key):
            day, bench, _, refrigerant, source, target = key
            scan.says(
                None,
                "The total of {refrigerant} from {source} to {target} on {day} at bench "
                "{bench} is not what the entries of the day give.",
                refrigerant=refrigerant,
                source=source,
                target=target,
                day=day,
                bench=bench,
            )
    named = {tuple(row) for row in scan.connection.execute(select(schema.place_entry))}
    for place, kind, position in sorted(named ^ scan.replay.places):
        scan.says(
            None,
            "Whether the entry at place {position} ({kind}) names {place} is not what it says.",
            position=position,
            kind=kind,
            place=place,
        )


def _compare_pictures(scan: Scan) -> int:
    """Every picture against the hash it is kept under; how many there are."""
    table, count = schema.picture, 0
    for name in scan.connection.execute(select(table.c.hash).order_by(table.c.hash)).scalars():
        count += 1
        content = scan.connection.execute(
            select(table.c.content).where(table.c.hash == name)
        ).scalar_one()  # one at a time: each may be half a megabyte
        if hashlib.sha256(content).hexdigest() != name:
            scan.says(
                None,
                "The picture {name}… was changed: its content has another hash.",
                name=name[:12],
            )
    return count
