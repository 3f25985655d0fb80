"""What a PostgreSQL server itself refuses: triggers against every change, rights beside them.

Triggers refuse a change of what is recorded to everybody, superusers included; rights leave a bench
nothing but to read and append, and an officer to read.
"""

from sqlalchemy import Connection, text

from chargebench.errors import ShopFileRefused

SCHEMA = "chargebench"
APPEND_ONLY = ("entry", "transfer", "checkpoint", "picture")
_REFUSES = "BEGIN RAISE EXCEPTION USING MESSAGE = TG_TABLE_NAME || ' is append-only'; END"
_TRIGGER_TYPES = {"update": 2 + 16, "delete": 2 + 8, "truncate": 2 + 32}  # before, and on what
_FUNCTION = "refuse_change"
_RIGHTS = "rights on "  # a guard of this name: nobody was granted a right to change a table

# What a bench may do beside reading. It moves what follows from the entries (balance, head, job,
# register_row, reversed_entry, day_total, place_entry), which verify works out anew, and keeps
# text that is not signed.
BENCH_MAY = {
    "about": "",
    "entry": "INSERT",
    "transfer": "INSERT",
    "checkpoint": "INSERT",
    "picture": "INSERT",
    "head": "INSERT, UPDATE (number, hash)",
    "balance": "INSERT, UPDATE (mass_mg)",
    "job": "INSERT, UPDATE (state, closed_at)",
    "register_row": "INSERT, UPDATE (content, words)",
    "reversed_entry": "INSERT",
    "day_total": "INSERT, UPDATE (mass_mg, lines)",
    "place_entry": "INSERT",
    "typed": "INSERT, UPDATE (content, kept_at), DELETE",
    "passphrase": "INSERT, UPDATE (hash, set_at, failures, failed_at), DELETE",
}
# Officers read every table; of this one who has a passphrase, and not its hash.
OFFICERS_SEE = {"passphrase": " (person, set_at)"}


GUARDS = {
    _FUNCTION: (
        (
            f"CREATE OR REPLACE FUNCTION {_FUNCTION}() RETURNS trigger LANGUAGE plpgsql AS "
            f"$refuse${_REFUSES}$refuse$"
        ),
    ),
    **{
        f"{table}_no_{act}": (
            f"DROP TRIGGER IF EXISTS {table}_no_{act} ON {table}",
            (
                f"CREATE TRIGGER {table}_no_{act} BEFORE {act.upper()} ON {table} "
                f"FOR EACH STATEMENT EXECUTE FUNCTION {_FUNCTION}()"
            ),
            f"ALTER TABLE {table} ENABLE ALWAYS TRIGGER {table}_no_{act}",
        )
        for table in APPEND_ONLY
        for act in _TRIGGER_TYPES
    },
}

_TRIGGERS = text(
    """
    SELECT t.tgname, c.relname, t.tgtype, p.prosrc
    FROM pg_trigger t
    JOIN pg_class c ON c.oid = t.tgrelid
    JOIN pg_proc p ON p.oid = t.tgfoid AND p.pronamespace = c.relnamespace
    JOIN pg_language l ON l.oid = p.prolang AND l.lanname = 'plpgsql'
    WHERE c.relnamespace = CAST(:schema AS regnamespace) AND p.proname = :function
    AND t.tgenabled = 'A' AND t.tgqual IS NULL AND t.tgnargs = 0 AND CAST(t.tgattr AS text) = ''
    """
)
_FUNCTION_SOURCE = text(
    "SELECT prosrc FROM pg_proc WHERE proname = :function "
    "AND pronamespace = CAST(:schema AS regnamespace) AND pronargs = 0 AND proconfig IS NULL"
)
_GRANTED = text(
    """
    SELECT DISTINCT c.relname, coalesce(r.rolname, 'public') AS grantee
    FROM pg_class c
    CROSS JOIN LATERAL (
        SELECT acl FROM unnest(c.relacl) AS acl
        UNION ALL
        SELECT acl FROM pg_attribute a CROSS JOIN unnest(a.attacl) AS acl WHERE a.attrelid = c.oid
    ) AS given
    CROSS JOIN LATERAL aclexplode(ARRAY[given.acl]) AS granted
    LEFT JOIN pg_roles r ON r.oid = granted.grantee
    WHERE c.relnamespace = CAST(:schema AS regnamespace) AND c.relname = ANY(:tables)
    AND granted.grantee <> c.relowner
    AND granted.privilege_type IN ('UPDATE', 'DELETE', 'TRUNCATE', 'TRIGGER')
    """
)


def missing_guards(connection: Connection) -> list[str]:
    """Guards that are not there as they were made: triggers, their function, rights withheld."""
    named = {"schema": SCHEMA, "function": _FUNCTION}
    source = connection.execute(_FUNCTION_SOURCE, named).scalar()
    there = {
        name
        for name, table, kind, _ in connection.execute(_TRIGGERS, named)
        for act, wanted in _TRIGGER_TYPES.items()
        if name == f"{table}_no_{act}" and kind == wanted
    }
    if source == _REFUSES:
        there.add(_FUNCTION)
    granted = {f"{_RIGHTS}{table}" for table, _ in _granted(connection)}
    return [*(name for name in GUARDS if name not in there), *sorted(granted)]


def _granted(connection: Connection) -> list[tuple[str, str]]:
    """Tables that only grow, with whom somebody granted a right to change them."""
    rows = connection.execute(_GRANTED, {"schema": SCHEMA, "tables": list(APPEND_ONLY)})
    return [(table, grantee) for table, grantee in rows]


def put_back_guards(connection: Connection, names: list[str]) -> None:
    """Make guards anew that are missing or not as they were made; takes the shop's owner."""
    for name in names:
        for statement in GUARDS.get(name, ()):
            connection.exec_driver_sql(statement)
    for table, grantee in _granted(connection):
        whom = grantee if grantee == "public" else quoted(connection, grantee)
        connection.exec_driver_sql(
            f"REVOKE UPDATE, DELETE, TRUNCATE, TRIGGER ON {table} FROM {whom}"
        )
    if _granted(connection):  # the server only warns whoever has no right to take one away
        raise ShopFileRefused(
            "Nothing was put back: this login has no right to that. Ask the shop's owner."
        )


def quoted(connection: Connection, name: str) -> str:
    """A name of a role as a statement takes it."""
    return connection.dialect.identifier_preparer.quote_identifier(name)
