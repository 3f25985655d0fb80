"""The tables as SQLAlchemy Core sees them; the frozen steps in migrations/ create them."""

from sqlalchemy import (
    BigInteger,
    Column,
    ForeignKey,
    Integer,
    LargeBinary,
    MetaData,
    Table,
    Text,
)

metadata = MetaData()
Whole = BigInteger().with_variant(Integer, "sqlite")

about = Table(
    "about",
    metadata,
    Column("key", Text, primary_key=True),
    Column("value", Text, nullable=False),
)
head = Table(
    "head",
    metadata,
    Column("bench", Text, primary_key=True),
    Column("number", Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
)
entry = Table(
    "entry",
    metadata,
    Column("position", Whole, primary_key=True),
    Column("id", Text, nullable=False),
    Column("bench", Text, nullable=False),
    Column("number", Whole, nullable=False),
    Column("kind", Text, nullable=False),
    Column("job", Text),
    Column("happened_at", Text, nullable=False),
    Column("recorded_at", Text, nullable=False),
    Column("by", Text, nullable=False),
    Column("payload", Text, nullable=False),
    Column("previous_hash", LargeBinary, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    Column("happened_us", Whole, nullable=False),
)
transfer = Table(
    "transfer",
    metadata,
    Column("entry", Whole, ForeignKey("entry.position"), primary_key=True),
    Column("line", Whole, primary_key=True),
    Column("source", Text, nullable=False),
    Column("target", Text, nullable=False),
    Column("refrigerant", Text, nullable=False),
    Column("mass_mg", Whole, nullable=False),
    Column("as_typed", Text, nullable=False),
)
balance = Table(
    "balance",
    metadata,
    Column("place", Text, primary_key=True),
    Column("refrigerant", Text, primary_key=True),
    Column("mass_mg", Whole, nullable=False),
)
register_row = Table(
    "register_row",
    metadata,
    Column("register", Text, primary_key=True),
    Column("id", Text, primary_key=True),
    Column("content", Text, nullable=False),
    Column("words", Text, nullable=False),
)
job = Table(
    "job",
    metadata,
    Column("id", Text, primary_key=True),
    Column("number", Text, nullable=False),
    Column("equipment", Text, nullable=False),
    Column("state", Text, nullable=False),
    Column("opened_at", Text, nullable=False),
    Column("closed_at", Text),
    Column("opened_by", Whole, ForeignKey("entry.position"), nullable=False),
)
reversed_entry = Table(
    "reversed_entry",
    metadata,
    Column("id", Text, primary_key=True),
    Column("reversal", Text, nullable=False),
)
typed = Table(
    "typed",
    metadata,
    Column("job", Text, primary_key=True),
    Column("step", Text, primary_key=True),
    Column("content", Text, nullable=False),
    Column("kept_at", Text, nullable=False),
)
checkpoint = Table(
    "checkpoint",
    metadata,
    Column("id", Whole, primary_key=True),
    Column("bench", Text, nullable=False),
    Column("number", Whole, nullable=False),
    Column("hash", LargeBinary, nullable=False),
    Column("kept_at", Text, nullable=False),
    Column("why", Text, nullable=False),
)
picture = Table(
    "picture",
    metadata,
    Column("hash", Text, primary_key=True),
    Column("media", Text, nullable=False),
    Column("content", LargeBinary, nullable=False),
    Column("kept_at", Text, nullable=False),
)
passphrase = Table(
    "passphrase",
    metadata,
    Column("person", Text, primary_key=True),
    Column("hash", Text, nullable=False),
    Column("set_at", Text, nullable=False),
    Column("failures", Whole, nullable=False),
    Column("failed_at", Text),
)
day_total = Table(
    "day_total",
    metadata,
    Column("day", Text, primary_key=True),
    Column("bench", Text, primary_key=True),
    Column("person", Text, primary_key=True),
    Column("refrigerant", Text, primary_key=True),
    Column("source", Text, primary_key=True),
    Column("target", Text, primary_key=True),
    Column("mass_mg", Whole, nullable=False),
    Column("lines", Whole, nullable=False),
)
place_entry = Table(
    "place_entry",
    metadata,
    Column("place", Text, primary_key=True),
    Column("kind", Text, primary_key=True),
    Column("entry", Whole, primary_key=True),
)

# What is hashed of an entry, in this order; `canonical` takes the first nine as stored.
HASHED = (
    entry.c.id,
    entry.c.bench,
    entry.c.number,
    entry.c.kind,
    entry.c.job,
    entry.c.happened_at,
    entry.c.recorded_at,
    entry.c.by,
    entry.c.payload,
)
MASS_LINE = (
    transfer.c.source,
    transfer.c.target,
    transfer.c.refrigerant,
    transfer.c.mass_mg,
    transfer.c.as_typed,
)
