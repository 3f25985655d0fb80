"""What differs between the databases, behind one interface, and the statements both read alike.

A shop file is SQLite's, a shop on a server PostgreSQL's; which one is chosen here, by the place of
the shop or by the connection, and nowhere else.
"""

from collections.abc import Iterable
from typing import Any, Protocol

from sqlalchemy import (
    ColumnElement,
    Connection,
    Engine,
    Table,
    TextClause,
    and_,
    cast,
    func,
    text,
)

from chargebench.ledger import schema, sqlite
from chargebench.ledger.place import Address, Place

ERRORS = sqlite.ERRORS  # SQLAlchemy's own around every driver's, and SQLite's bare ones


class Dialect(Protocol):
    """What each database does in its own way."""

    def engine(self, place: Any, /, *, writing: bool) -> Engine:
        """Engine over one shop; refuses in words what is none."""

    def freshen(self, connection: Connection, /) -> None:
        """Let go of a connection that broke while nothing was asked of it."""

    def begin_writing(self, connection: Connection, /) -> None:
        """Let the next transaction write, and read what others have recorded just before."""

    def let_readers_in(self, connection: Connection, /) -> None:
        """Let readers and the writer work side by side from now on."""

    def hold(self, connection: Connection, names: Iterable[str], /) -> None:
        """Keep other benches from what is named until the transaction ends."""

    def version(self, connection: Connection, /) -> int:
        """Schema of the shop."""

    def set_version(self, connection: Connection, number: int, /) -> None:
        """Note the schema of the shop."""

    def about(self, connection: Connection, /) -> dict[str, str]:
        """What the shop says of itself, and under `bench` which bench records from here."""

    def lacks(self, key: str, /) -> str:
        """What it means, and what to do, when the shop does not say that of itself."""

    def missing_guards(self, connection: Connection, /) -> list[str]:
        """Append-only guards that are not there as they were made."""

    def put_back_guards(self, connection: Connection, names: list[str], /) -> None:
        """Make guards anew that are missing or not as they were made."""

    def damage(self, connection: Connection, /) -> list[str]:
        """What the database itself finds wrong with its pages."""

    def says(self, problem: BaseException, /) -> str | None:
        """What went wrong and what can be done; None if neither storage nor server is at fault."""

    def gone(self, problem: BaseException, /) -> bool:
        """Whether a connection to a server was lost or could not be made."""


def at(place: Place) -> Dialect:
    """The dialect of a shop by where it is."""
    return _postgres() if isinstance(place, Address) else sqlite


def of(connection: Connection) -> Dialect:
    """The dialect of an open shop."""
    return _postgres() if connection.dialect.name == "postgresql" else sqlite


def _postgres() -> Dialect:
    from chargebench.ledger import postgres  # its driver costs a bench with a file 100 ms

    return postgres


def put(table: Table) -> TextClause:
    """Statement that writes a row whether or not its key is there."""
    names = [column.name for column in table.columns]
    keys = [column.name for column in table.primary_key]
    rest = ", ".join(f"{name} = excluded.{name}" for name in names if name not in keys)
    return text(
        f"INSERT INTO {table.name} ({', '.join(names)}) "  # noqa: S608  names of our own tables
        f"VALUES ({', '.join(f':{name}' for name in names)}) "
        f"ON CONFLICT ({', '.join(keys)}) DO UPDATE SET {rest}"
    )


def rows_of(columns: Iterable[str], count: int) -> tuple[str, list[str]]:
    """The values of so many rows as a statement takes them, and the names of the parameters."""
    rows = [[f"{column}_{row}" for column in columns] for row in range(count)]
    written = ", ".join(f"({', '.join(f':{name}' for name in row)})" for row in rows)
    return written, [name for row in rows for name in row]


def put_new(table: Table) -> TextClause:
    """Statement that writes a row where none of its keys is there yet."""
    names = [column.name for column in table.columns]
    return text(
        f"INSERT INTO {table.name} ({', '.join(names)}) "  # noqa: S608
        f"VALUES ({', '.join(f':{name}' for name in names)}) ON CONFLICT DO NOTHING"
    )


def through(connection: Connection, table: str, index: str) -> str:
    """A table to be read through one index; a server counts its rows and finds that out itself."""
    return f"{table} INDEXED BY {index}" if of(connection) is sqlite else table


def starts_with(column: ColumnElement[str], prefix: str) -> ColumnElement[bool]:
    """Condition that an index can serve, unlike LIKE under SQLite's case rules."""
    if not prefix:
        return column >= ""
    return and_(column >= prefix, column < prefix[:-1] + chr(ord(prefix[-1]) + 1))


def total(mass_mg: ColumnElement[int]) -> ColumnElement[int]:
    """Sum of masses as a whole number; PostgreSQL would widen it to a decimal."""
    return cast(func.sum(mass_mg), schema.Whole)
