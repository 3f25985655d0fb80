"""Everything that is PostgreSQL's own: connecting, locking, what a shop says of itself, errors."""

import select as readiness
from collections.abc import Iterable
from typing import Any

import psycopg
from psycopg.conninfo import conninfo_to_dict
from sqlalchemy import Connection, Engine, create_engine, event, select, text
from sqlalchemy.exc import DBAPIError, OperationalError
from sqlalchemy.pool import NullPool

from chargebench.errors import ShopFileRefused
from chargebench.ledger import schema
from chargebench.ledger.place import Address
from chargebench.ledger.walls import SCHEMA
from chargebench.ledger.walls import missing_guards as missing_guards
from chargebench.ledger.walls import put_back_guards as put_back_guards
from chargebench.words import say

# A cable that was pulled says nothing: these bound how long a bench waits before it is told.
_PATIENCE = {
    "connect_timeout": 4,
    "keepalives_idle": 5,
    "keepalives_interval": 2,
    "keepalives_count": 3,
    "tcp_user_timeout": 8_000,
    "client_encoding": "UTF8",
    "application_name": "chargebench",
}
_OPTIONS = (
    f"-c search_path={SCHEMA},pg_temp -c lock_timeout=5s "
    "-c idle_in_transaction_session_timeout=20s"  # a bench cut off must not hold a cylinder
)
_WRITING = "chargebench.writing"
_READ_COMMITTED = psycopg.IsolationLevel.READ_COMMITTED
_SNAPSHOT = psycopg.IsolationLevel.REPEATABLE_READ


def _connect(address: Address) -> psycopg.Connection[Any]:
    try:
        given = conninfo_to_dict(address.full)
    except psycopg.ProgrammingError:
        raise ShopFileRefused(
            say(
                "{address} can not be read as an address; one such as "
                "postgresql://login@server/database was expected.",
                address=address,
            )
        ) from None  # its words hold the address, and so a password
    settings: dict[str, Any] = {**_PATIENCE, **given}
    settings["options"] = f"{given.get('options') or ''} {_OPTIONS}".strip()
    try:
        raw = psycopg.connect(**settings)
    except psycopg.OperationalError as problem:
        raise OperationalError("connect", None, problem) from problem
    row = raw.execute(
        "SELECT current_setting('fsync'), current_setting('synchronous_commit')"
    ).fetchone()
    assert row is not None
    if row[0] == "off":
        raw.close()
        raise ShopFileRefused(
            say(
                "The server of {address} forgets what it confirmed when the power fails "
                "(its setting fsync is off). Have its administrator turn fsync on.",
                address=address,
            )
        )
    if row[1] == "off":
        raw.execute("SET synchronous_commit TO on")
    raw.commit()
    return raw


def engine(address: Address, /, *, writing: bool) -> Engine:  # noqa: ARG001  rights decide
    """Engine over one shop; each connection it gives is really opened and really closed."""
    made = create_engine(
        "postgresql+psycopg://",
        creator=lambda: _connect(address),
        poolclass=NullPool,
        paramstyle="format",
        use_native_hstore=False,
    )

    @event.listens_for(made, "begin")
    def _begin(connection: Connection) -> None:
        """Posts read what was just recorded and lock it; readers see one moment and change none."""
        raw, writes = _raw(connection), connection.info.pop(_WRITING, False)
        level = _READ_COMMITTED if writes else _SNAPSHOT
        if raw.isolation_level != level:
            raw.isolation_level = level
            raw.read_only = not writes

    return made


def _raw(connection: Connection) -> psycopg.Connection[Any]:
    raw = connection.connection.driver_connection
    assert isinstance(raw, psycopg.Connection)
    return raw


def freshen(connection: Connection) -> None:
    """Let go of a connection the server closed while nothing was asked; the next use makes one.

    Costs no round trip: a server says nothing to an idle bench but that it hangs up.
    """
    if connection.closed or connection.invalidated:
        return
    raw = _raw(connection)
    if raw.closed or readiness.select([raw.fileno()], [], [], 0)[0]:
        connection.invalidate()


def begin_writing(connection: Connection) -> None:
    """Let the next transaction write, and read what others have recorded just before."""
    connection.info[_WRITING] = True


def let_readers_in(connection: Connection) -> None:
    """Nothing to do: readers and writers always work side by side."""


_HOLD = text(
    "SELECT pg_advisory_xact_lock(hashtextextended(name, 0)) "
    "FROM unnest(CAST(:names AS text[])) AS name"
)


def hold(connection: Connection, names: Iterable[str]) -> None:
    """Keep other benches from what is named until the transaction ends."""
    connection.execute(_HOLD, {"names": sorted(names)})


def version(connection: Connection) -> int:
    """Schema of the shop; refuses a database that holds none, or keeps this login out."""
    may = connection.execute(
        text("SELECT has_schema_privilege(oid, 'USAGE') FROM pg_namespace WHERE nspname = :schema"),
        {"schema": SCHEMA},
    ).scalar()
    info = _raw(connection).info
    if may is None:
        raise ShopFileRefused(
            say(
                "There is no shop in the database {dbname} of {host}. Whoever is to own "
                "it makes one with: chargebench make-shop.",
                dbname=info.dbname,
                host=info.host,
            )
        )
    if not may:
        raise ShopFileRefused(
            say(
                "The login {user} is not let into the shop in {dbname}. The shop's owner "
                "lets it in with: chargebench join-shop --login {user}.",
                user=info.user,
                dbname=info.dbname,
            )
        )
    return int(connection.execute(_ABOUT, {"key_is": "schema"}).scalar_one())


_ABOUT = text("SELECT value FROM about WHERE key = :key_is")


def set_version(connection: Connection, number: int) -> None:
    """Note the schema of the shop."""
    row = {"key": "schema", "value": str(number)}
    connection.execute(
        text(
            "INSERT INTO about (key, value) VALUES (:key, :value) "
            "ON CONFLICT (key) DO UPDATE SET value = excluded.value"
        ),
        row,
    )


FIRST = "first_bench"  # what the shop says of itself: as which its owner records


def bench_key(login: str) -> str:
    """Under what the shop says which bench a login records as."""
    return f"bench:{login}"


def login(connection: Connection) -> str:
    """Who is connected."""
    return str(connection.execute(text("SELECT session_user")).scalar_one())


def about(connection: Connection) -> dict[str, str]:
    """What the shop says of itself; each login records as a bench of its own, or as none."""
    rows = connection.execute(select(schema.about.c.key, schema.about.c.value))
    said = {row.key: row.value for row in rows}
    mine, first = said.get(bench_key(login(connection))), said.get(FIRST, "")
    if mine is None:
        return said
    # A further bench marks the ids it makes, so that no two benches make the same.
    return {**said, "bench": mine, "begun_from": "" if mine == first else first}


def lacks(key: str) -> str:
    """What it means when the shop does not say that of itself."""
    if key == "bench":
        return (
            "can only be read by this login: it records for no bench. The shop's owner lets a "
            "bench in with: chargebench join-shop."
        )
    return say(
        "is damaged: it does not say its {key}. Have its administrator restore a backup.", key=key
    )


def damage(connection: Connection) -> list[str]:
    """What the server itself counted as damaged; it looks at a page only when it reads it."""
    failures = connection.execute(
        text("SELECT checksum_failures FROM pg_stat_database WHERE datname = current_database()")
    ).scalar()
    return (
        [say("the server counted {failures} pages with a wrong checksum", failures=failures)]
        if failures
        else []
    )


def _inner(problem: BaseException) -> BaseException | None:
    return problem.orig if isinstance(problem, DBAPIError) else problem


def gone(problem: BaseException) -> bool:
    """Whether the connection to the server was lost or could not be made."""
    inner = _inner(problem)
    if isinstance(problem, DBAPIError) and problem.connection_invalidated:
        return True
    if not isinstance(inner, psycopg.OperationalError):
        return False
    state = inner.sqlstate or ""
    if state:
        return state.startswith("08") or state in ("57P01", "57P02", "57P03", "25P03")
    refused = "FATAL:" in str(inner) or "no password supplied" in str(inner)
    return not refused or any(each in str(inner) for each in ("starting up", "shutting down"))


_SAYS = {
    "53100": "the disk of its server is full. Free some space there and do it again",
    "53": "its server is at the end of its means. Close what else uses it, or try later",
    "55P03": "another bench is recording about the same thing. Do it again in a moment",
    "40": "another bench recorded about the same thing at the same moment. Do it again",
    "57014": "its server cut the work short. Do it again, or ask its administrator",
    "25006": "its server only lets read at present. Ask its administrator",
    "42501": "this login has no right to that. Ask the shop's owner",
    "58": "the disk of its server does not answer as it should. Tell its administrator",
    "XX001": "it is damaged on its server. Tell its administrator, who can restore a backup",
    "XX002": "it is damaged on its server. Tell its administrator, who can rebuild its indexes",
}


def says(problem: BaseException) -> str | None:
    """What went wrong and what can be done; None if neither storage nor server is at fault."""
    inner = _inner(problem)
    if gone(problem):
        return "its server does not answer. Check the network, or ask who looks after the server"
    if not isinstance(inner, psycopg.Error):
        return None
    state = inner.sqlstate or ""
    if not state:
        return _refused(inner)
    return next((said for start, said in _SAYS.items() if state.startswith(start)), None)


def _refused(problem: psycopg.Error) -> str | None:
    """Why the server did not let the login in, or the driver the text through."""
    if "no password supplied" in str(problem):
        return (
            "its server asks for a password. Keep it in this computer's password file for "
            "PostgreSQL (.pgpass), or write it into the address"
        )
    if isinstance(problem, psycopg.DataError):
        return "a text holds a character that can not be stored (NUL). Type it again"
    lines = [line for line in str(problem).splitlines() if "FATAL:" in line]
    said = lines[-1].partition("FATAL:")[2].strip() if lines else ""
    return say("its server refuses: {said}. Ask who looks after it", said=said) if said else None
