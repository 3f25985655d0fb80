"""Schema 2: pictures kept by their hash, and what unlocks a person's signature. Frozen."""

from typing import Any

from sqlalchemy import (
    BigInteger,
    Column,
    Connection,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    Text,
)

_metadata = MetaData()
_Whole = BigInteger().with_variant(Integer, "sqlite")
# Sorted and compared by code points, as SQLite does, whatever language a server speaks.
_Text = Text().with_variant(Text(collation="C"), "postgresql")
_ROWS: dict[str, Any] = {"sqlite_strict": True}
_KEYED: dict[str, Any] = {"sqlite_strict": True, "sqlite_with_rowid": False}

# Rows of half a megabyte: a table without row ids would keep them in its key's own pages.
Table(
    "picture",
    _metadata,
    Column("hash", _Text, primary_key=True),
    Column("media", _Text, nullable=False),
    Column("content", LargeBinary, nullable=False),
    Column("kept_at", _Text, nullable=False),
    **_ROWS,
)
# Not chained: a hash of four digits in every export could be guessed at leisure.
Table(
    "passphrase",
    _metadata,
    Column("person", _Text, primary_key=True),
    Column("hash", _Text, nullable=False),
    Column("set_at", _Text, nullable=False),
    Column("failures", _Whole, nullable=False),
    Column("failed_at", _Text),
    **_KEYED,
)

_GUARDS = {
    "sqlite": tuple(
        f"CREATE TRIGGER picture_no_{act} BEFORE {act.upper()} ON picture "
        "BEGIN SELECT RAISE(ABORT, 'picture is append-only'); END"
        for act in ("update", "delete")
    ),
    "postgresql": tuple(
        statement
        for act in ("update", "delete", "truncate")
        for statement in (
            (
                f"CREATE TRIGGER picture_no_{act} BEFORE {act.upper()} ON picture "
                "FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()"
            ),
            f"ALTER TABLE picture ENABLE ALWAYS TRIGGER picture_no_{act}",
        )
    ),
}


def run(connection: Connection) -> None:
    """Create the two tables and the guards of the pictures."""
    _metadata.create_all(connection, checkfirst=False)
    for guard in _GUARDS[connection.dialect.name]:
        connection.exec_driver_sql(guard)
