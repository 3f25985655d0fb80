"""Chain files: signed entries verbatim with their hashes, for hand-over between benches.

UTF-8 text, a JSON value a line: a head that says which numbers of which chains are in it, the
entries in the order recorded, an end that says how many there were. An entry's line holds the very
bytes that were hashed, so anybody can check a chain with a SHA-256 tool: the hash of an entry is
that of the 32 bytes of the hash before it and of what stands behind `"entry":`. Every line must be,
byte for byte, as it is written here; that leaves no room for doubled keys, numbers with points,
unknown fields or another spelling of the same text.
"""

import hashlib
import re
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any, BinaryIO

import msgspec

from chargebench.errors import ChainFileRefused, PostingRefused
from chargebench.ledger.chainlines import Chain, End, EntryLine, Head
from chargebench.ledger.entry import (
    FORMAT,
    GENESIS,
    NewEntry,
    Transfer,
    canonical,
    chained,
    payload_text,
)
from chargebench.ledger.shopfile import BENCH
from chargebench.words import say

VERSION = 1
LINE_MOST = 2_000_000  # bytes; as much as a whole job file may have
PARTS_MOST = 200_000  # brackets in a line: what is parsed takes thirty times the room of its text
CHAINS_MOST = 1_000
NUMBER_MOST = 10**12
TEXT_MOST = 1_000  # characters of an id, a kind, a name
BEGINS = b'{"chargebench_chain":'
_HASH = re.compile(r"[0-9a-f]{64}")
_UNREADABLE = (msgspec.MsgspecError, ValueError, TypeError, RecursionError, PostingRefused)
_AT_MOST = say(
    "A line of a chain file has at most {line_most} bytes and {parts_most} brackets.",
    line_most=LINE_MOST,
    parts_most=PARTS_MOST,
)
_COPY = "Copy it again from where it came from, without opening it in an editor."
_Line = tuple[str, str, str, int, str]
_Stored = tuple[int, str, str, int, str, str | None, str, str, str, msgspec.Raw, list[_Line]]
_ENCODER = msgspec.json.Encoder()
_HEAD = msgspec.json.Decoder(Head)
_LINE = msgspec.json.Decoder(EntryLine)
_END = msgspec.json.Decoder(End)
_STORED = msgspec.json.Decoder(_Stored)
_PAYLOAD = msgspec.json.Decoder(dict[str, Any])


@dataclass(frozen=True, slots=True)
class Signed:
    """An entry as another bench signed it; `values` are those that were hashed, as stored."""

    bench: str
    number: int
    values: tuple[Any, ...]
    lines: list[_Line]
    new: NewEntry
    previous_hash: bytes
    hash: bytes

    @property
    def called(self) -> str:
        """How a refusal names it."""
        return say("entry {number} of bench {bench}", number=self.number, bench=self.bench)


def line(value: Head | EntryLine | End) -> bytes:
    """A line of a chain file; refused where it would be more than one may be."""
    written = _ENCODER.encode(value) + b"\n"
    if not _fits(written):
        raise ChainFileRefused(
            say("An entry is too large to be handed over. {at_most}", at_most=_AT_MOST)
        )
    return written


def _fits(content: bytes) -> bool:
    parts = content.count(b"[") + content.count(b"{")
    return len(content) <= LINE_MOST and parts <= PARTS_MOST


@contextmanager
def opened(source: Path | BinaryIO) -> Iterator["ChainFile"]:
    """A chain file open for reading; refused where there is none."""
    if not isinstance(source, Path):
        yield ChainFile(source)
        return
    if source.exists() and not source.is_file():  # a pipe would never answer
        raise ChainFileRefused(say("Expected a chain file; {source} is none.", source=source))
    try:
        stream = source.open("rb")
    except OSError as problem:
        reason = (problem.strerror or "it can not be read").lower()
        raise ChainFileRefused(
            say("Expected a chain file at {source}: {reason}.", source=source, reason=reason)
        ) from problem
    with stream:
        yield ChainFile(stream)


def is_chain_file(path: Path) -> bool:
    """Whether a file begins as a chain file does."""
    with suppress(OSError):
        if path.is_file():
            with path.open("rb") as stream:
                return stream.read(len(BEGINS)) == BEGINS
    return False


class ChainFile:
    """A chain file read from its beginning to its end, once, a line at a time."""

    def __init__(self, stream: BinaryIO) -> None:
        self._stream = stream
        self._number = 0
        self._sha256 = hashlib.sha256()
        first = self._line()
        if not first.startswith(BEGINS):
            raise ChainFileRefused(
                say(
                    "Expected a chain file: its first line begins {decode}{version}.",
                    decode=BEGINS.decode(),
                    version=VERSION,
                )
            )
        self.head = self._head(first)

    @property
    def sha256(self) -> str:
        """Of the bytes read so far; of the whole file once its entries were all given."""
        return self._sha256.hexdigest()

    def entries(self) -> Iterator[Signed]:
        """Every entry in turn, each checked against its hash and the one before it."""
        last = {c.bench: (c.first - 1, bytes.fromhex(c.previous_hash)) for c in self.head.chains}
        for _ in range(self.head.entries):
            signed = self._entry(last)
            last[signed.bench] = (signed.number, signed.hash)
            yield signed
        for chain in self.head.chains:
            if last[chain.bench] != (chain.last, bytes.fromhex(chain.hash)):
                raise self._refusal(
                    "The chain of bench {bench} does not end as the head of the file says.",
                    bench=chain.bench,
                )
        end = self._exactly(_END, self._line(), "the end of the file")
        if end.end != self.head.entries:
            raise self._refusal("The end counts other entries than the head.")
        if self._stream.read(1):
            raise self._refusal("Something stands behind the end of the file.")

    def _line(self) -> bytes:
        self._number += 1
        try:
            content = self._stream.readline(LINE_MOST + 1)
        except OSError as problem:
            raise self._refusal(
                "The file can not be read on: {strerror}.", strerror=problem.strerror
            ) from problem
        if not _fits(content):
            raise self._refusal(_AT_MOST)
        if not content.endswith(b"\n"):
            raise ChainFileRefused(
                say("The file ends in the middle; it was cut short. {copy}", copy=_COPY)
                if content or self._number > 1
                else "Expected a chain file; this file is empty."
            )
        self._sha256.update(content)
        return content

    def _refusal(self, says: str, /, **values: object) -> ChainFileRefused:
        what = say(says, **values) if values else says
        return ChainFileRefused(say("line {number}: {what}", number=self._number, what=what))

    def _exactly(self, decoder: msgspec.json.Decoder[Any], content: bytes, what: str) -> Any:
        """A line understood, if it is as this program writes it."""
        try:
            value = decoder.decode(content)
            written = _ENCODER.encode(value) + b"\n"
        except _UNREADABLE:
            written = b""
        if written != content:
            raise self._refusal(
                "Expected {what}, as chargebench writes it. {copy}", what=what, copy=_COPY
            )
        return value

    def _head(self, first: bytes) -> Head:
        version = re.match(rb"\d{1,9}", first[len(BEGINS) :])
        if version and int(version[0]) > VERSION:
            raise ChainFileRefused(
                say(
                    "This chain file is of version {int}; this program reads up to version "
                    "{version}. Take it in with a newer chargebench.",
                    int=int(version[0]),
                    version=VERSION,
                )
            )
        head: Head = self._exactly(_HEAD, first, "the head of a chain file")
        benches = [chain.bench for chain in head.chains]
        named = (head.bench, *benches, *filter(None, [head.for_bench]))
        if not (
            head.chargebench_chain == VERSION
            and 0 < len(benches) <= CHAINS_MOST
            and len(set(benches)) == len(benches)
            and all(BENCH.fullmatch(bench) for bench in named)
            and 0 < len(head.shop) <= TEXT_MOST
            and all(_sound(chain) for chain in head.chains)
        ):
            raise self._refusal("The head does not say which numbers of which chains follow.")
        return head

    def _entry(self, last: dict[str, tuple[int, bytes]]) -> Signed:
        read: EntryLine = self._exactly(_LINE, self._line(), "an entry")
        content = bytes(read.entry)
        try:
            stored = _STORED.decode(content)
            signed = _signed(stored, last.get(stored[2], (0, b""))[1], read.hash)
            as_written = canonical(signed.values, signed.lines)
        except _UNREADABLE as problem:
            if content.startswith(b"[") and not content.startswith(b"[%d," % FORMAT):
                raise self._refusal(
                    "This entry is of a newer format. Take the file in with a newer chargebench."
                ) from problem
            why = f": {problem}" if isinstance(problem, PostingRefused) else f". {_COPY}"
            raise self._refusal("This is no entry that a bench signs{why}", why=why) from problem
        bench, number = signed.bench, signed.number
        if bench not in last:
            raise self._refusal(
                "The head of the file names no entries of bench {bench}.", bench=bench
            )
        if number != last[bench][0] + 1:
            raise self._refusal(
                "Expected entry {last} of bench {bench}; entry {number} stands here.",
                last=last[bench][0] + 1,
                bench=bench,
                number=number,
            )
        if as_written != content or chained(signed.previous_hash, content) != signed.hash:
            raise self._refusal(
                "Entry {number} of bench {bench} does not give its hash: it was "
                "changed after it was signed, or never was.",
                number=number,
                bench=bench,
            )
        return signed


def _sound(chain: Chain) -> bool:
    hashes = (chain.previous_hash, chain.hash)
    begins = (chain.first == 1) == (chain.previous_hash == GENESIS.hex())
    numbered = 0 < chain.first <= chain.last <= NUMBER_MOST
    return begins and numbered and all(_HASH.fullmatch(each) for each in hashes)


def _signed(stored: Any, previous: bytes, digest: str) -> Signed:
    """An entry of its hashed content; refuses what the ledger itself would never write."""
    form, *fields, payload, lines = stored
    entry_id, bench, number, kind, job, happened_at, recorded_at, by = fields
    content = _PAYLOAD.decode(payload)
    text = payload_text(content)
    texts = (entry_id, bench, kind, *([] if job is None else [job]))
    if form != FORMAT or not _HASH.fullmatch(digest) or not 0 < number <= NUMBER_MOST:
        raise ValueError(form)
    if text.encode() != bytes(payload) or len(by) > TEXT_MOST:
        raise ValueError(by)
    if not all(0 < len(each) <= TEXT_MOST and each.isprintable() for each in texts):
        raise ValueError(texts)
    when, recorded = datetime.fromisoformat(happened_at), datetime.fromisoformat(recorded_at)
    if None in (when.utcoffset(), recorded.utcoffset()) or not 1 < when.year < 9_999:
        raise ValueError(happened_at)
    new = NewEntry(kind, by, when, content, tuple(Transfer(*each) for each in lines), job, entry_id)
    values = (entry_id, bench, number, kind, job, happened_at, recorded_at, by, text)
    return Signed(bench, number, values, lines, new, previous, bytes.fromhex(digest))
