"""A shop on a server as its owner sees it: made, brought up to a newer schema, opened to logins.

Each bench has a login of its own, which says as which bench it records; officers only read.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager

import psycopg
from sqlalchemy import Connection, select, text

from chargebench.errors import ShopFileRefused
from chargebench.ledger import dialect, postgres, schema, shopfile, walls
from chargebench.ledger.entry import GENESIS, new_id, now_text
from chargebench.ledger.migrations import STEPS
from chargebench.ledger.place import Address
from chargebench.ledger.walls import SCHEMA, quoted
from chargebench.words import say


def make(address: Address, bench: str) -> None:
    """Make a shop in a database, all of it or nothing; whoever makes it owns it.

    The owner's login records as `bench`; other benches get logins of their own.
    """
    shopfile.check_bench(bench)
    with _owning(address) as connection:
        if _schema_owner(connection) is not None:
            raise ShopFileRefused(
                say("There is a shop in {address} already. Open it.", address=address)
            )
        encoding = connection.execute(text("SHOW server_encoding")).scalar()
        if encoding != "UTF8":
            raise ShopFileRefused(
                f"The database {address.database} keeps text as {encoding}; UTF8 was expected. "
                "Have its administrator make one with: CREATE DATABASE … ENCODING 'UTF8'."
            )
        with _needing(f"GRANT CREATE ON DATABASE {address.database} TO (your login)"):
            connection.exec_driver_sql(f"CREATE SCHEMA {SCHEMA}")
        for role in _roles(address):
            _make_role(connection, role)
        for step in STEPS:
            step(connection)
        connection.execute(
            schema.about.insert(),
            [
                {"key": "shop", "value": new_id()},
                {"key": "made_at", "value": now_text()},
                {"key": postgres.FIRST, "value": bench},
            ],
        )
        postgres.set_version(connection, len(STEPS))
        _grant(connection, address)
        _add_bench(connection, postgres.login(connection), bench)


def upgrade(address: Address) -> bool:
    """Bring a shop up to this program's schema; whether there was anything to do."""
    with _owning(address) as connection:
        _refuse_others(connection, address)
        found = postgres.version(connection)
        if found > len(STEPS):
            raise ShopFileRefused(shopfile.newer(address, found))
        for step in STEPS[found:]:
            step(connection)
        postgres.set_version(connection, len(STEPS))
        _grant(connection, address)
        return found < len(STEPS)


def join(address: Address, login: str, bench: str | None, password: Callable[[], str]) -> bool:
    """Let a login into the shop: as a bench that records, or, without one, only to read.

    A login that is not there is made, and its password asked for; gives back whether it was.
    """
    if bench is not None:
        shopfile.check_bench(bench)
    with _owning(address) as connection:
        _refuse_others(connection, address)
        known = connection.execute(
            text("SELECT 1 FROM pg_roles WHERE rolname = :role"), {"role": login}
        ).first()
        if known is None:
            _make_login(connection, login, password())
        for_benches, for_officers = _roles(address)
        role = for_officers if bench is None else for_benches
        with _needing(f"GRANT {role} TO {login}"):
            connection.exec_driver_sql(
                f"GRANT {quoted(connection, role)} TO {quoted(connection, login)}"
            )
        if bench is not None:
            _add_bench(connection, login, bench)
        return known is None


@contextmanager
def _owning(address: Address) -> Iterator[Connection]:
    engine = postgres.engine(address, writing=True)
    try:
        with shopfile.refusing(address), engine.connect() as connection:
            postgres.begin_writing(connection)
            with connection.begin():
                yield connection
    finally:
        engine.dispose()


@contextmanager
def _needing(statement: str) -> Iterator[None]:
    """Say what an administrator has to run where the owner's login may not."""
    try:
        yield
    except dialect.ERRORS as problem:
        if getattr(problem, "orig", None) and problem.orig.sqlstate == "42501":  # type: ignore[union-attr]
            raise ShopFileRefused(
                say(
                    "Your login may not do that there. Have the server's administrator "
                    "run: {statement};",
                    statement=statement,
                )
            ) from problem
        raise


def _schema_owner(connection: Connection) -> str | None:
    query = "SELECT pg_get_userbyid(nspowner) FROM pg_namespace WHERE nspname = :schema"
    return connection.execute(text(query), {"schema": SCHEMA}).scalar()


def _refuse_others(connection: Connection, address: Address) -> None:
    """Refuse whoever is not the shop's owner, before the server does in its own words."""
    postgres.version(connection)
    owner, login = _schema_owner(connection), postgres.login(connection)
    if owner != login:
        raise ShopFileRefused(
            say(
                "Only its owner, {owner}, does that to the shop in {database}; this "
                "login is {login}.",
                owner=owner,
                database=address.database,
                login=login,
            )
        )


def _roles(address: Address) -> tuple[str, str]:
    """Roles of the shop's benches and officers; roles are the whole server's, so named by shop."""
    return f"{address.database}_benches", f"{address.database}_officers"


def _make_role(connection: Connection, role: str) -> None:
    query = text("SELECT 1 FROM pg_roles WHERE rolname = :role")
    if connection.execute(query, {"role": role}).first() is None:
        with _needing(f"CREATE ROLE {role} NOLOGIN"):
            connection.exec_driver_sql(f"CREATE ROLE {quoted(connection, role)} NOLOGIN")


def _make_login(connection: Connection, login: str, password: str) -> None:
    if not password:
        raise ShopFileRefused(
            say("A password for {login} was expected; nothing was done.", login=login)
        )
    raw = connection.connection.driver_connection
    assert isinstance(raw, psycopg.Connection)
    # Hashed here, so that neither the server's log nor whoever listens learns the password.
    hashed = raw.pgconn.encrypt_password(
        password.encode(), login.encode(), b"scram-sha-256"
    ).decode()
    with _needing(f"CREATE ROLE {login} LOGIN PASSWORD '…'"):
        connection.exec_driver_sql(
            f"CREATE ROLE {quoted(connection, login)} LOGIN PASSWORD '{hashed}'"
        )


def _add_bench(connection: Connection, login: str, bench: str) -> None:
    """Note as which bench a login records, and begin the bench's chain."""
    key = postgres.bench_key(login)
    said = select(schema.about.c.value).where(schema.about.c.key == key)
    already = connection.execute(said).scalar()
    if already is not None:
        raise ShopFileRefused(
            say(
                "The login {login} already records as bench {already}.",
                login=login,
                already=already,
            )
        )
    known = select(schema.head.c.bench).where(schema.head.c.bench == bench)
    if connection.execute(known).first() is not None:
        raise ShopFileRefused(
            say(
                "There is a chain of bench {bench} in this shop already, and two "
                "computers can not go on with one. Choose another name for the bench.",
                bench=bench,
            )
        )
    connection.execute(schema.about.insert(), {"key": key, "value": bench})
    connection.execute(schema.head.insert(), {"bench": bench, "number": 0, "hash": GENESIS})


def _grant(connection: Connection, address: Address) -> None:
    """Give benches and officers what they need and nothing beyond it."""
    benches, officers = (quoted(connection, role) for role in _roles(address))
    connection.exec_driver_sql(f"GRANT USAGE ON SCHEMA {SCHEMA} TO {benches}, {officers}")
    for table in schema.metadata.tables:
        more = walls.BENCH_MAY[table]
        connection.exec_driver_sql(f"REVOKE ALL ON {table} FROM {benches}, {officers}")
        connection.exec_driver_sql(
            f"GRANT SELECT{', ' if more else ''}{more} ON {table} TO {benches}"
        )
        seen = walls.OFFICERS_SEE.get(table, "")
        connection.exec_driver_sql(f"GRANT SELECT{seen} ON {table} TO {officers}")
    connection.exec_driver_sql(f"GRANT USAGE ON ALL SEQUENCES IN SCHEMA {SCHEMA} TO {benches}")
