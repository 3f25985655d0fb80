"""A shop connected to: where it is, whose it is, and transactions that say what goes wrong."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import Self

from sqlalchemy import Connection, Engine
from sqlalchemy.exc import DBAPIError

from chargebench.errors import ServerGone, ShopFileRefused
from chargebench.ledger import dialect, shopfile
from chargebench.ledger.place import Place
from chargebench.words import say


class Connected:
    """A connection to a shop; belongs to the thread that opened it."""

    server_gone = False  # whether the server did not answer when last asked

    def __init__(self, place: Place, engine: Engine, connection: Connection) -> None:
        self.place = place
        self._engine = engine
        self._connection = connection
        try:
            with connection.begin():
                self._about = dialect.of(connection).about(connection)
        except (DBAPIError, UnicodeDecodeError) as problem:
            self.close()
            raise ShopFileRefused(
                say(
                    "{place} is damaged: it does not say whose it is. Restore the newest backup.",
                    place=place,
                )
            ) from problem

    def close(self) -> None:
        """Close the shop; a second time does nothing."""
        self._connection.close()
        self._engine.dispose()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        problem: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    @property
    def path(self) -> Path:
        """The shop's file, for what only a file has: backups beside it.

        Raises
        ------
        ShopFileRefused
            The shop is kept on a server.
        """
        if isinstance(self.place, Path):
            return self.place
        raise ShopFileRefused(
            say(
                "{place} is kept on a server, and so are its backups: whoever looks "
                "after the server makes and restores them. What an export writes here is "
                "kept beside them.",
                place=self.place,
            )
        )

    @property
    def bench(self) -> str:
        """The bench that records from here."""
        return self._said("bench")

    @property
    def records(self) -> bool:
        """Whether a bench records from here; an officer's login only reads."""
        return "bench" in self._about

    @property
    def shop_id(self) -> str:
        """The id this shop was given when it was made."""
        return self._said("shop")

    @property
    def begun_from(self) -> str:
        """The bench whose chain file began this one; empty at the shop's first."""
        return self._about.get("begun_from", "")

    def _said(self, key: str) -> str:
        if key not in self._about:
            raise ShopFileRefused(f"{self.place} {dialect.at(self.place).lacks(key)}")
        return self._about[key]

    @contextmanager
    def _reading(self) -> Iterator[Connection]:
        if self._connection.in_transaction():  # within `Ledger.together`: sees what it recorded
            yield self._connection
            return
        with self._watching(), self._connection.begin():
            yield self._connection

    @contextmanager
    def _watching(self) -> Iterator[None]:
        """Say in words what goes wrong, and note whether the server answers."""
        try:
            with shopfile.refusing(self.place):
                dialect.of(self._connection).freshen(self._connection)
                yield
        except ServerGone:
            self.server_gone = True
            raise
        self.server_gone = False
