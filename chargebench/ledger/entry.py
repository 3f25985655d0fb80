"""What is posted and what then stands: values, canonical bytes, and the chain of hashes."""

import hashlib
import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from decimal import Decimal
from typing import Any

import msgspec
import uuid6

from chargebench.errors import PostingRefused
from chargebench.words import say

FORMAT = 1  # of the canonical bytes; hashed with them
GENESIS = bytes(32)  # what the first entry of a bench follows
OPEN_TO_CLOSED = frozenset({"job-reopened", "follow-up"})
MASS_MG_MAX = 10**12  # a thousand tonnes: above any transfer, and far from where sums overflow
FIXED_PLACES = frozenset(
    {"supplier", "reclaimer", "destruction", "atmosphere", "outside", "difference"}
)
HELD_PLACE = re.compile(r"(cylinder|equipment):[^\x00-\x1f\x7f]{1,200}")

# What reaches it is checked to be plain; the hook is for texts that remember their template.
_ENCODER = msgspec.json.Encoder(order="deterministic", enc_hook=str.__str__)


def new_id() -> str:
    """Fresh id whose text sorts by time (UUIDv7)."""
    return str(uuid6.uuid7())


@dataclass(frozen=True, slots=True)
class Transfer:
    """A mass of one refrigerant from one place to another; both ends, so nothing can vanish."""

    source: str
    target: str
    refrigerant: str
    mass_mg: int
    as_typed: str

    def __post_init__(self) -> None:
        for place in (self.source, self.target):
            if place not in FIXED_PLACES and not HELD_PLACE.fullmatch(place):
                raise PostingRefused(
                    say(
                        "“{place}” is not a place: a cylinder, an equipment, or one of "
                        "{fixed_places} was expected.",
                        place=place,
                        fixed_places=", ".join(sorted(FIXED_PLACES)),
                    )
                )
        if self.source == self.target:
            raise PostingRefused(say("Both ends of the transfer are {source}.", source=self.source))
        if type(self.mass_mg) is not int or not 0 <= self.mass_mg <= MASS_MG_MAX:
            raise PostingRefused(
                say(
                    "{mass_mg!r} mg is not a mass that can be moved; whole milligrams from "
                    "zero to a thousand tonnes were expected.",
                    mass_mg=self.mass_mg,
                )
            )
        if not self.refrigerant:
            raise PostingRefused("The transfer names no refrigerant.")

    def turned(self) -> "Transfer":
        """The same mass the other way."""
        return Transfer(self.target, self.source, self.refrigerant, self.mass_mg, self.as_typed)


@dataclass(frozen=True, slots=True)
class NewEntry:
    """What is to be recorded; its id makes a second post of it harmless."""

    kind: str
    by: str
    happened_at: datetime
    payload: dict[str, Any]
    transfers: tuple[Transfer, ...] = ()
    job: str | None = None
    id: str = field(default_factory=new_id)

    def __post_init__(self) -> None:
        assert self.kind, "an entry has a kind"
        assert self.happened_at.utcoffset() is not None, "happened_at needs its zone"


@dataclass(frozen=True, slots=True)
class Entry:
    """What was recorded: immutable, numbered per bench, chained by hash."""

    id: str
    bench: str
    number: int
    kind: str
    job: str | None
    happened_at: datetime
    recorded_at: datetime
    by: str
    payload: dict[str, Any]
    transfers: tuple[Transfer, ...]
    previous_hash: str
    hash: str


def payload_text(payload: dict[str, Any]) -> str:
    """Canonical JSON of a payload: text, whole numbers, yes, no, nothing, lists and maps only."""
    try:
        _check_plain(payload, 0)
        return _ENCODER.encode(payload).decode()
    except UnicodeEncodeError as problem:
        raise PostingRefused(
            "The text contains half of a character that no file can store; type it again."
        ) from problem


def _check_plain(value: Any, depth: int) -> None:
    """Encoders disagree on some floats, so none may reach the hash."""
    if depth > 50:
        raise PostingRefused("The entry nests deeper than 50 levels.")
    if value is None or isinstance(value, str | bool):
        return
    if isinstance(value, int):
        if not -(2**63) <= value < 2**63:
            raise PostingRefused(say("{value} is too large a number for an entry.", value=value))
    elif isinstance(value, list | tuple):
        for each in value:
            _check_plain(each, depth + 1)
    elif isinstance(value, dict):
        for key, each in value.items():
            if not isinstance(key, str):
                raise TypeError(f"payload key {key!r} is not text")
            _check_plain(each, depth + 1)
    else:
        raise TypeError(f"{type(value).__name__} can not be hashed: use text or whole numbers")


def canonical(values: Sequence[Any], transfers: Sequence[Sequence[Any]]) -> bytes:
    """Bytes that are hashed: the stored values of an entry in fixed order, then its mass lines.

    `values` are id, bench, number, kind, job, happened_at, recorded_at, by and payload as stored;
    the payload goes in verbatim, so a change that means the same in JSON still shows.
    """
    return _ENCODER.encode((FORMAT, *values[:8], msgspec.Raw(values[8]), transfers))


def chained(previous_hash: bytes, content: bytes) -> bytes:
    """Hash of an entry: SHA-256 over the hash before it and its canonical bytes."""
    return hashlib.sha256(previous_hash + content).digest()


def moment_text(moment: datetime) -> str:
    """A moment as stored: ISO 8601 with its offset from UTC."""
    return moment.isoformat()


def now_text() -> str:
    """The present moment in UTC, as stored."""
    return datetime.now(UTC).isoformat(timespec="milliseconds")


_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)


def microseconds(moment: datetime) -> int:
    """Whole microseconds since 1970 in UTC, what moments are sorted and filtered by."""
    span = moment - _EPOCH
    return (span.days * 86_400 + span.seconds) * 1_000_000 + span.microseconds


def mass_words(mass_mg: int) -> str:
    """Exact mass for a refusal: grams below a kilogram, kilograms above."""
    grams = Decimal(mass_mg) / 1_000
    if abs(grams) < 1_000:
        return f"{grams.normalize():f} g"
    return f"{(grams / 1_000).normalize():f} kg"
