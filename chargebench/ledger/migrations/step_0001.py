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
_ROWS: dict[str, Any] = {"sqlite_strict": True}
_KEYED: dict[str, Any] = {"sqlite_strict": True, "sqlite_with_rowid": False}

Table(
    "about",
    _metadata,
    Column("key", Text, primary_key=True),
    Column("value", Text, nullable=False),
    **_KEYED,
)
Table(
    "head",
    _metadata,
    Column("bench", Text, primary_key=True),
    Column("number", _Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    **_KEYED,
)
_entry = Table(
    "entry",
    _metadata,
    Column("position", _Whole, primary_key=True),
    Column("id", Text, nullable=False, unique=True),
    Column("bench", Text, nullable=False),
    Column("number", _Whole, nullable=False),
    Column("kind", Text, nullable=False),
    Column("job", Text),
    Column("happened_at", Text, nullable=False),
    Column("recorded_at", Text, nullable=False),
    Column("by", Text, nullable=False),
    Column("payload", Text, nullable=False),
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
    Column("source", Text, nullable=False),
    Column("target", Text, nullable=False),
    Column("refrigerant", Text, nullable=False),
    Column("mass_mg", _Whole, nullable=False),
    Column("as_typed", Text, nullable=False),
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
    Column("place", Text, primary_key=True),
    Column("refrigerant", Text, primary_key=True),
    Column("mass_mg", _Whole, nullable=False),
    **_KEYED,
)
Table(
    "register_row",
    _metadata,
    Column("register", Text, primary_key=True),
    Column("id", Text, primary_key=True),
    Column("content", Text, nullable=False),
    Column("words", Text, nullable=False),
    **_KEYED,
)
_job = Table(
    "job",
    _metadata,
    Column("id", Text, primary_key=True),
    Column("number", Text, nullable=False, unique=True),
    Column("equipment", Text, nullable=False),
    Column("state", Text, nullable=False),
    Column("opened_at", Text, nullable=False),
    Column("closed_at", Text),
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
    Column("id", Text, primary_key=True),
    Column("reversal", Text, nullable=False),
    **_KEYED,
)
Table(
    "typed",
    _metadata,
    Column("job", Text, primary_key=True),
    Column("step", Text, primary_key=True),
    Column("content", Text, nullable=False),
    Column("kept_at", Text, nullable=False),
    **_KEYED,
)
Table(
    "checkpoint",
    _metadata,
    Column("id", _Whole, primary_key=True),
    Column("bench", Text, nullable=False),
    Column("number", _Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    Column("kept_at", Text, nullable=False),
    Column("why", Text, nullable=False),
    **_ROWS,
)

_GUARDS = {
    "sqlite": tuple(
        f"CREATE TRIGGER {table}_no_{act} BEFORE {act.upper()} ON {table} "
        f"BEGIN SELECT RAISE(ABORT, '{table} is append-only'); END"
        for table in ("entry", "transfer", "checkpoint")
        for act in ("update", "delete")
    )
}


def run(connection: Connection) -> None:
    """Create every table, index and append-only guard."""
    _metadata.create_all(connection, checkfirst=False)
    for guard in _GUARDS[connection.dialect.name]:
        connection.exec_driver_sql(guard)
