"""Transactions that record: all or none, and once, also when the server goes away in the middle.

A connection may break while the server confirms, and then nobody at the bench can know whether it
did. So it is asked again by the ids of the entries, behind the lock on the bench's chain: a
transaction that was left behind has ended by then, and its entries stand or never will.
"""

from collections.abc import Callable, Collection, Iterator, Mapping
from contextlib import contextmanager
from typing import TypeVar

from sqlalchemy import Connection, Engine

from chargebench.errors import AlreadyRecorded, ServerGone, StorageRefused
from chargebench.ledger import astray, dialect, posting, reading
from chargebench.ledger.entry import Entry, NewEntry
from chargebench.ledger.place import Place
from chargebench.ledger.reader import Reader
from chargebench.ledger.shopfile import MEANWHILE
from chargebench.words import say

_TRIES = 2  # a second at once, on a new connection; more would only keep a person waiting
Result = TypeVar("Result")


class Writing(Reader):
    """A shop open for recording, as far as transactions go."""

    _opened: astray.Identity | None = None  # which file stood at the path

    def __init__(self, place: Place, engine: Engine, connection: Connection) -> None:
        super().__init__(place, engine, connection)
        self._recorded: list[str] = []  # ids in the transaction that runs
        self._unsettled: tuple[str, ...] = ()  # ids of one that may or may not have ended well

    @contextmanager
    def together(self) -> Iterator[None]:
        """Record several entries, all or none; what is read meanwhile sees those before it."""
        self._settle_first(())
        with self._writing():
            yield

    @property
    def unsettled(self) -> bool:
        """Whether it is not known if what was recorded last is: the server went away meanwhile."""
        return bool(self._unsettled)

    def settle(self) -> Entry | None:
        """Ask whether what the server was to confirm when it went away is recorded, and as what.

        Raises
        ------
        ServerGone
            It still does not answer.
        """
        with self._writing() as connection:
            posting.hold_chain(connection, self.bench)
            found = (reading.one_entry(connection, each) for each in self._unsettled)
            entry = next((each for each in found if each is not None), None)
        self._unsettled = ()
        return entry

    def _settle_first(self, ids: Collection[str]) -> None:
        """Record nothing more before it is known what stands, unless it is the same once more."""
        if (
            not self._unsettled
            or self._connection.in_transaction()
            or set(self._unsettled) == {*ids}
        ):
            return
        entry = self.settle()
        if entry is not None:
            raise AlreadyRecorded(
                say(
                    "Recorded: what was signed when the server went away stands as entry "
                    "{entry_number} of bench {bench}. Nothing was recorded twice; look at "
                    "it before you go on.",
                    entry_number=entry.number,
                    bench=entry.bench,
                )
            )

    def _once(self, ids: Collection[str], work: Callable[[Connection], Result]) -> Result:
        """Do what records entries of these ids, once, through a connection that breaks."""
        self._settle_first(ids)
        for _ in range(_TRIES - 1):
            try:
                with self._writing() as connection:
                    return work(connection)
            except ServerGone:
                if self._connection.in_transaction():
                    raise
        with self._writing() as connection:
            return work(connection)

    def _record(
        self, connection: Connection, new: NewEntry, may_overdraw_mg: Mapping[str, int]
    ) -> Entry:
        self._recorded.append(new.id)
        return posting.record(connection, self.bench, new, may_overdraw_mg)

    @contextmanager
    def _writing(self) -> Iterator[Connection]:
        if self._connection.in_transaction():  # within `together`, which ends the transaction
            with self._connection.begin_nested():  # a refusal caught there still leaves no row
                yield self._connection
            return
        own, confirming = dialect.of(self._connection), False
        self._recorded = []
        try:
            own.freshen(self._connection)
            own.begin_writing(self._connection)
            with self._connection.begin():
                yield self._connection
                if self._opened is not None:
                    astray.check_there(self.path, self._opened)
                confirming = True
        except dialect.ERRORS as problem:
            refusal = self._refusal(problem, confirming=confirming)
            if refusal is None:
                raise
            raise refusal from problem
        self.server_gone = False
        if set(self._unsettled) <= set(self._recorded):
            self._unsettled = ()

    def _refusal(self, problem: Exception, *, confirming: bool) -> StorageRefused | None:
        """What to say of a transaction that failed; None if it is a bug."""
        own = dialect.at(self.place)
        said = own.says(problem)
        if said is None:
            return None
        self.server_gone = own.gone(problem)
        if self.server_gone and confirming:
            self._unsettled = self._unsettled or tuple(self._recorded)
        begins = say("Nothing was recorded in {place}", place=self.place)
        if self._unsettled or (self.server_gone and confirming):
            begins = say(
                "Whether this was recorded in {place} is not known yet; do it again "
                "when the server answers: it is asked first, and nothing is recorded "
                "twice",
                place=self.place,
            )
        if self.server_gone:
            return ServerGone(f"{begins}: {said}. {MEANWHILE}")
        return StorageRefused(f"{begins}: {said}.")
