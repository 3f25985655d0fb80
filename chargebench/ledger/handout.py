"""Writing a chain file: entries as they were signed, in the order recorded, a page at a time."""

from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO

import msgspec
from sqlalchemy import Connection, select

from chargebench.errors import ChainFileRefused, ExportRefused
from chargebench.ledger import backup, chainfile, schema
from chargebench.ledger.chainlines import Chain, End, EntryLine, Head
from chargebench.ledger.entry import GENESIS, canonical, now_text
from chargebench.words import say

_PAGE = 500
Progress = Callable[[int, int], None]


def heads(connection: Connection) -> dict[str, tuple[int, bytes]]:
    """Number and hash of the last entry of every bench, as kept beside the chains."""
    table = schema.head.c
    rows = connection.execute(select(table.bench, table.number, table.hash).order_by(table.bench))
    return {bench: (number, digest) for bench, number, digest in rows}


def hash_of(connection: Connection, bench: str, number: int) -> bytes | None:
    """Hash of an entry by its number, or None where it is not here."""
    if number == 0:
        return GENESIS
    table = schema.entry.c
    query = select(table.hash).where(table.bench == bench, table.number == number)
    return connection.execute(query).scalar()


def chains(connection: Connection, only: str | None, first: int) -> tuple[Chain, ...]:
    """What a chain file would hold: every chain whole, or one from a number on.

    Raises
    ------
    ChainFileRefused
        There is no such chain, or no such number in it.
    """
    known = {bench: end for bench, end in heads(connection).items() if end[0]}
    wanted = known if only is None else {only: known.get(only, (0, GENESIS))}
    made: list[Chain] = []
    for bench, (last, digest) in wanted.items():
        begins = first if only is not None else 1
        before = hash_of(connection, bench, begins - 1) if 0 < begins <= last else None
        if before is None:
            raise ChainFileRefused(
                say(
                    "Bench {bench} has entries 1 to {last} here; a number among them was expected.",
                    bench=bench,
                    last=last,
                )
                if last
                else say(
                    "Bench {bench} has no entries here; known are: {known}.",
                    bench=bench,
                    known=", ".join(known) or "none",
                )
            )
        made.append(Chain(bench, begins, last, before.hex(), digest.hex()))
    if not made:
        raise ChainFileRefused("Nothing is recorded here yet, so there is nothing to hand over.")
    return tuple(made)


def write(
    connection: Connection,
    stream: BinaryIO,
    head: Head,
    progress: Progress | None = None,
) -> None:
    """Write the file a head describes; `progress` may stop it by raising."""
    done = 0
    stream.write(chainfile.line(head))
    for page in _pages(connection, head.chains):
        stream.writelines(chainfile.line(each) for each in page)
        done += len(page)
        if progress is not None:
            progress(done, head.entries)
    assert done == head.entries, "an entry between two heads is not there"
    stream.write(chainfile.line(End(done)))


def write_file(
    connection: Connection, path: Path, head: Head, progress: Progress | None = None
) -> None:
    """Write a file under another name first: it stands whole under its own, or not at all.

    Raises
    ------
    ExportRefused
        Something stands there already, or it can not be written.
    """
    if path.exists():
        raise ExportRefused(say("{path} is there already. Choose another name.", path=path))
    half = path.with_name(path.name + ".new")
    try:
        with half.open("wb") as stream:
            write(connection, stream, head, progress)
        backup.settle(half)
        half.replace(path)
        backup.settle_folder(path.parent)
    except OSError as problem:
        raise ExportRefused(
            say("{path} can not be written: {strerror}.", path=path, strerror=problem.strerror)
        ) from problem
    finally:
        with suppress(OSError):
            half.unlink(missing_ok=True)


def head_of(shop: str, bench: str, held: tuple[Chain, ...], for_bench: str) -> Head:
    """The head of a file that is written now."""
    return Head(chainfile.VERSION, shop, bench, now_text(), held, for_bench)


def _pages(connection: Connection, held: tuple[Chain, ...]) -> Iterator[list[EntryLine]]:
    """Lines of the entries of some chains, by their place in the order recorded."""
    entry, transfer = schema.entry.c, schema.transfer.c
    numbers = {chain.bench: range(chain.first, chain.last + 1) for chain in held}
    query = select(*schema.HASHED, entry.hash, entry.position).order_by(entry.position)
    if len(numbers) == 1:
        (bench, among), *_ = numbers.items()
        query = query.where(entry.bench == bench, entry.number.between(among[0], among[-1]))
    after = 0
    while rows := connection.execute(query.where(entry.position > after).limit(_PAGE)).all():
        after = rows[-1][10]
        lines: dict[int, list[list[object]]] = {}
        among_rows = transfer.entry.between(rows[0][10], after)
        mass_lines = select(transfer.entry, *schema.MASS_LINE).where(among_rows)
        for position, *mass in connection.execute(
            mass_lines.order_by(transfer.entry, transfer.line)
        ):
            lines.setdefault(position, []).append(mass)
        yield [
            EntryLine(row[9].hex(), msgspec.Raw(canonical(row[:9], lines.get(row[10], []))))
            for row in rows
            if row[2] in numbers.get(row[1], ())
        ]
