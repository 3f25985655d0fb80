"""Schema 1: the first shop file. Frozen; a later schema is a later step."""

from typing import Any

from sqlalchemy import (
    BigInteger,
    CheckConstraint,
    Column,
    Connection,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)

_metadata = MetaData()
_Whole = BigInteger().with_variant(Integer, "sqlite")
# Sorted and compared by code points, as SQLite does, whatever language a server speaks.
_Text = Text().with_variant(Text(collation="C"), "postgresql")
_ROWS: dict[str, Any] = {"sqlite_strict": True}
_KEYED: dict[str, Any] = {"sqlite_strict": True, "sqlite_with_rowid": False}

Table(
    "about",
    _metadata,
    Column("key", _Text, primary_key=True),
    Column("value", _Text, nullable=False),
    **_KEYED,
)
Table(
    "head",
    _metadata,
    Column("bench", _Text, primary_key=True),
    Column("number", _Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    **_KEYED,
)
_entry = Table(
    "entry",
    _metadata,
    Column("position", _Whole, primary_key=True),
    Column("id", _Text, nullable=False, unique=True),
    Column("bench", _Text, nullable=False),
    Column("number", _Whole, nullable=False),
    Column("kind", _Text, nullable=False),
    Column("job", _Text),
    Column("happened_at", _Text, nullable=False),
    Column("recorded_at", _Text, nullable=False),
    Column("by", _Text, nullable=False),
    Column("payload", _Text, nullable=False),
    Column("previous_hash", LargeBinary, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    Column("happened_us", _Whole, nullable=False),
    UniqueConstraint("bench", "number"),
    **_ROWS,
)
Index("entry_by_job", _entry.c.job)
Index("entry_by_kind", _entry.c.kind)
Index("entry_by_time", _entry.c.happened_us)
_transfer = Table(
    "transfer",
    _metadata,
    Column("entry", _Whole, ForeignKey("entry.position"), primary_key=True),
    Column("line", _Whole, primary_key=True),
    Column("source", _Text, nullable=False),
    Column("target", _Text, nullable=False),
    Column("refrigerant", _Text, nullable=False),
    Column("mass_mg", _Whole, nullable=False),
    Column("as_typed", _Text, nullable=False),
    CheckConstraint("mass_mg >= 0"),
    CheckConstraint("source <> target"),
    **_KEYED,
)
# Without the mass in the index, sums over a place are slower than with no index at all.
for _end in ("source", "target"):
    Index(
        f"transfer_by_{_end}",
        _transfer.c[_end],
        _transfer.c.refrigerant,
        _transfer.c.entry,
        _transfer.c.mass_mg,
    )
Table(
    "balance",
    _metadata,
    Column("place", _Text, primary_key=True),
    Column("refrigerant", _Text, primary_key=True),
    Column("mass_mg", _Whole, nullable=False),
    **_KEYED,
)
Table(
    "register_row",
    _metadata,
    Column("register", _Text, primary_key=True),
    Column("id", _Text, primary_key=True),
    Column("content", _Text, nullable=False),
    Column("words", _Text, nullable=False),
    **_KEYED,
)
_job = Table(
    "job",
    _metadata,
    Column("id", _Text, primary_key=True),
    Column("number", _Text, nullable=False, unique=True),
    Column("equipment", _Text, nullable=False),
    Column("state", _Text, nullable=False),
    Column("opened_at", _Text, nullable=False),
    Column("closed_at", _Text),
    Column("opened_by", _Whole, ForeignKey("entry.position"), nullable=False),
    CheckConstraint("state IN ('open', 'closed')"),
    **_KEYED,
)
Index("job_by_state", _job.c.state, _job.c.opened_by)
Index("job_by_equipment", _job.c.equipment, _job.c.opened_by)
Index("job_by_opening", _job.c.opened_by)
Table(
    "reversed_entry",
    _metadata,
    Column("id", _Text, primary_key=True),
    Column("reversal", _Text, nullable=False),
    **_KEYED,
)
Table(
    "typed",
    _metadata,
    Column("job", _Text, primary_key=True),
    Column("step", _Text, primary_key=True),
    Column("content", _Text, nullable=False),
    Column("kept_at", _Text, nullable=False),
    **_KEYED,
)
Table(
    "checkpoint",
    _metadata,
    Column("id", _Whole, primary_key=True),
    Column("bench", _Text, nullable=False),
    Column("number", _Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    Column("kept_at", _Text, nullable=False),
    Column("why", _Text, nullable=False),
    **_ROWS,
)

_APPEND_ONLY = ("entry", "transfer", "checkpoint")
_GUARDS = {
    "sqlite": tuple(
        f"CREATE TRIGGER {table}_no_{act} BEFORE {act.upper()} ON {table} "
        f"BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END"
        for table in _APPEND_ONLY
        for act in ("update", "delete")
    ),
    "postgresql": (
        (
            "CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS "
            "'BEGIN RAISE EXCEPTION USING MESSAGE = TG_TABLE_NAME || '' is append-only''; END'"
        ),
        *(
            statement
            for table in _APPEND_ONLY
            for act in ("update", "delete", "truncate")
            for statement in (
                (
                    f"CREATE TRIGGER {table}_no_{act} BEFORE {act.upper()} ON {table} "
                    "FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()"
                ),
                # Always: also for a session that says it only replays another server's changes.
                f"ALTER TABLE {table} ENABLE ALWAYS TRIGGER {table}_no_{act}",
            )
        ),
    ),
}


def run(connection: Connection) -> None:
    """Create every table, index and append-only guard."""
    _metadata.create_all(connection, checkfirst=False)
    for guard in _GUARDS[connection.dialect.name]:
        connection.exec_driver_sql(guard)
