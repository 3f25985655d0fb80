"""Read-only questions to a shop, for a second connection in another thread or process."""

from collections.abc import Callable, Collection, Iterator, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import select

from chargebench.errors import PostingRefused
from chargebench.ledger import (
    backup,
    handout,
    histories,
    jobs,
    passphrases,
    pictures,
    projection,
    reading,
    sameness,
    schema,
    shopfile,
    standing,
)
from chargebench.ledger import usage as usage_log
from chargebench.ledger.chainlines import Head
from chargebench.ledger.connected import Connected
from chargebench.ledger.entry import GENESIS, Entry
from chargebench.ledger.histories import HistoryRow, Key
from chargebench.ledger.pictures import Picture
from chargebench.ledger.place import Place, place_of
from chargebench.ledger.projection import Job
from chargebench.ledger.reading import Balance
from chargebench.ledger.scan import Checkpoint
from chargebench.ledger.usage import Filters, UsageKey, UsageRow, UsageTotal
from chargebench.ledger.verify import Verification, verify
from chargebench.words import say

ALL = Filters()


class Reader(Connected):
    """A shop open for reading; belongs to the thread that opened it."""

    @classmethod
    def open_reading(cls, place: Place | str, *, guarded: bool = True) -> "Reader":
        """Open a shop for reading; without `guarded` also one that lost its guards."""
        place = place_of(place)
        return Reader(place, *shopfile.connect(place, writing=False, guarded=guarded))

    def reader(self) -> "Reader":
        """Second, read-only connection; call it in the thread that will use it."""
        return Reader.open_reading(self.place)

    def entry(self, entry_id: str) -> Entry:
        """The entry under an id."""
        with self._reading() as connection:
            found = reading.one_entry(connection, entry_id)
        if found is None:
            raise PostingRefused(
                say("There is no entry {entry_id} in this shop.", entry_id=entry_id)
            )
        return found

    def entries(
        self,
        *,
        job: str | None = None,
        kind: str | Sequence[str] | None = None,
        since: datetime | None = None,
        until: datetime | None = None,
        after: str | None = None,
        limit: int | None = None,
        newest_first: bool = False,
    ) -> Iterator[Entry]:
        """Entries in the order recorded, or against it, past the entry `after`; page by page."""
        conditions = reading.entry_conditions(job=job, kind=kind, since=since, until=until)
        position: int | None = None
        if after is not None:
            with self._reading() as connection:
                position = reading.position_of(connection, after)
        left = limit
        while left is None or left > 0:
            size = reading.PAGE if left is None else min(left, reading.PAGE)
            with self._reading() as connection:
                page, position = reading.entries_page(
                    connection, conditions, position, size, newest_first=newest_first
                )
            yield from page
            if len(page) < size:
                return
            if left is not None:
                left -= len(page)

    def last_naming(self, kind: str, prefix: str = "") -> dict[str, Entry]:
        """By each place whose name starts so, the last entry of a kind that names it and stands."""
        with self._reading() as connection:
            return standing.last_naming(connection, kind, prefix)

    def closed_with_flags(self) -> list[Entry]:
        """The closing of each closed job that was closed with a flag raised, oldest first."""
        with self._reading() as connection:
            return standing.closed_with_flags(connection)

    def last_without(self, kind: str, key: str) -> list[Entry]:
        """Of each job the last entry of a kind that stands, where its payload has no such key."""
        with self._reading() as connection:
            return standing.last_without(connection, kind, key)

    def is_reversed(self, entry_id: str) -> bool:
        """Whether a later entry reversed this one."""
        table = schema.reversed_entry
        with self._reading() as connection:
            query = select(table.c.reversal).where(table.c.id == entry_id)
            return connection.execute(query).first() is not None

    def reversals_of(self, entries: Collection[str]) -> dict[str, str]:
        """Of these entries, the reversed ones, each with the id of what reversed it."""
        table = schema.reversed_entry
        with self._reading() as connection:
            rows = connection.execute(select(table).where(table.c.id.in_(list(entries))))
            return {row.id: row.reversal for row in rows}

    def picture(self, name: str) -> Picture | None:
        """The picture kept under a hash, or None."""
        with self._reading() as connection:
            return pictures.find(connection, name)

    def passphrase_holders(self) -> frozenset[str]:
        """People whose signature a passphrase unlocks."""
        with self._reading() as connection:
            return passphrases.holders(connection)

    def reversals(self) -> dict[str, str]:
        """Id of every reversed entry and of what reversed it."""
        table = schema.reversed_entry
        with self._reading() as connection:
            rows = connection.execute(select(table.c.id, table.c.reversal))
            return {row.id: row.reversal for row in rows}

    def balance(self, place: str, refrigerant: str) -> int:
        """What a place holds of a refrigerant by the book, in milligrams."""
        with self._reading() as connection:
            return reading.balance(connection, place, refrigerant)

    def balances(self, prefix: str = "cylinder:") -> list[Balance]:
        """What every place whose name starts so holds; empty ones stand at zero."""
        with self._reading() as connection:
            return reading.balances(connection, prefix)

    def history(
        self, place: str, *, before: Key | None = None, limit: int = 200
    ) -> list[HistoryRow]:
        """Mass lines of a place with running balance, newest first; next page from the last key."""
        with self._reading() as connection:
            return histories.history(connection, place, before, limit)

    def usage(
        self,
        since: datetime | None = None,
        until: datetime | None = None,
        filters: Filters = ALL,
        *,
        before: UsageKey | None = None,
        limit: int | None = None,
    ) -> Sequence[UsageRow]:
        """The usage log of a period, newest first; next page from the last key."""
        with self._reading() as connection:
            return usage_log.usage(connection, since, until, filters, before=before, limit=limit)

    def usage_totals(
        self,
        since: datetime | None = None,
        until: datetime | None = None,
        filters: Filters = ALL,
    ) -> list[UsageTotal]:
        """Totals by month, refrigerant and kinds of places; what was reversed is left out."""
        with self._reading() as connection:
            return usage_log.usage_totals(connection, since, until, filters)

    def rows(self, register: str) -> dict[str, dict[str, str]]:
        """Every row of a register, by id."""
        with self._reading() as connection:
            return reading.rows(connection, register)

    def row(self, register: str, row_id: str) -> dict[str, str] | None:
        """A register row, or None."""
        with self._reading() as connection:
            return projection.row_content(connection, register, row_id)

    def job(self, job_id: str) -> Job | None:
        """A job, or None."""
        with self._reading() as connection:
            return projection.find_job(connection, job_id)

    def jobs(
        self,
        state: str | None = None,
        find: str = "",
        *,
        equipment: str | None = None,
        before: int | None = None,
        limit: int | None = None,
    ) -> list[Job]:
        """Jobs, newest first, whose number, equipment or site has every word of `find`."""
        with self._reading() as connection:
            return jobs.jobs(
                connection, state=state, find=find, equipment=equipment, before=before, limit=limit
            )

    def typed(self, job: str, step: str) -> dict[str, Any]:
        """Text of an open step as last kept; empty if none is."""
        return self.typed_steps(job).get(step, {})

    def typed_steps(self, job: str) -> dict[str, dict[str, Any]]:
        """Every open step of a job with its kept text."""
        with self._reading() as connection:
            return dict(reading.typed(connection, job))

    def head(self) -> tuple[int, str]:
        """Number and hash of this bench's last entry; for an officer, of what came last."""
        with self._reading() as connection:
            bench = self.bench if self.records else reading.last_bench(connection)
            number, digest = reading.head(connection, bench) if bench else (0, GENESIS)
        return number, digest.hex()

    def heads(self) -> dict[str, tuple[int, str]]:
        """Number and hash of the last entry of every bench known here."""
        with self._reading() as connection:
            return {b: (n, digest.hex()) for b, (n, digest) in handout.heads(connection).items()}

    def names(self) -> dict[str, str]:
        """For each id that others name too, written register:id, the one its thing goes by."""
        with self._reading() as connection:
            return sameness.read(connection)

    def hand_over(
        self,
        path: Path | str,
        *,
        only: str | None = None,
        first: int = 1,
        for_bench: str = "",
        progress: Callable[[int, int], None] | None = None,
    ) -> Head:
        """Write a chain file: every chain known here, or one bench's; see `handout`."""
        with self._reading() as connection:
            held = handout.chains(connection, only, first)
            head = handout.head_of(self.shop_id, self.bench, held, for_bench)
            handout.write_file(connection, Path(path), head, progress)
        return head

    def verify(
        self,
        progress: Callable[[int, int], None] | None = None,
        *,
        checkpoints: Sequence[Checkpoint] = (),
    ) -> Verification:
        """Recompute everything from the entries and compare; see `verify.verify`.

        `progress` is told how many of how many entries are done; what it raises stops the check.
        """
        with self._watching():
            return verify(self._connection, progress, checkpoints)

    def backup_to(self, path: Path | str) -> Path:
        """Copy the whole shop file to a path through SQLite's backup interface."""
        with shopfile.refusing(self.path):
            return backup.write(self._connection, Path(path))

    def backup(self, *, keep_newest: int = backup.KEEP) -> Path | None:
        """Keep a rotated copy beside the file if anything changed since the last one."""
        with shopfile.refusing(self.path):
            return backup.rotate(self._connection, self.path, keep_newest=keep_newest)
