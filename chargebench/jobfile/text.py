"""Bytes of a job file to a JSON tree, with what JSON lets through and a record must not."""

import json
import re
import unicodedata
from typing import Any

from chargebench.errors import JobFileRefused
from chargebench.words import say

SIZE_MOST = 2_000_000  # bytes; a long job with a hundred readings is under 50 000
DEEPEST = 8  # job > steps > step > typed > lines > line, and the file itself, with one to spare
_STRING_OR_BRACKET = re.compile(rb'"(?:[^"\\]++|\\.)*+"?|[\[\]{}]', re.DOTALL)
_STANDS_TWICE = "\0twice"  # a key no file can hold: control characters are refused


def tree(content: bytes) -> Any:
    """The JSON value of a file's bytes.

    Raises
    ------
    JobFileRefused
        Too large, not UTF-8, too deep, cut short, or not JSON; names the line.
    """
    if len(content) > SIZE_MOST:
        raise too_large(len(content))
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as refusal:
        raise JobFileRefused(
            say(
                "{at}: Expected text in UTF-8; this byte is not. Save the file again as UTF-8.",
                at=_at(content, refusal.start),
            )
        ) from None
    _refuse_deep(content)
    try:
        # NaN and Infinity come through as numbers; no field of a job file is one, so each is
        # refused with its place.
        return json.loads(text, object_pairs_hook=_pairs, parse_int=_integer)
    except json.JSONDecodeError as refusal:
        raise _not_json(text, refusal) from None


def too_large(size: int) -> JobFileRefused:
    """The refusal of a file that is larger than any job."""
    return JobFileRefused(
        say(
            "Expected a job file of at most {size_most:_} bytes; this one has {size:_}.",
            size_most=SIZE_MOST,
            size=size,
        ).replace("_", " ")
    )


def twice(value: dict[str, Any]) -> str:
    """The first key that stands twice in an object; empty where none does."""
    return str(value.get(_STANDS_TWICE, ""))


def odd_character(text: str) -> str:
    """Name of the first character that can not be seen and is no line break; empty if none."""
    for each in text:
        if each in "\n\t":
            continue
        kind = unicodedata.category(each)
        if kind in ("Cc", "Cs") or each in "\u200e\u200f" or _turns_text(each):
            return f"U+{ord(each):04X}"
    return ""


def _turns_text(character: str) -> bool:
    return "\u202a" <= character <= "\u202e" or "\u2066" <= character <= "\u2069"


def _refuse_deep(content: bytes) -> None:
    depth = 0
    for match in _STRING_OR_BRACKET.finditer(content):
        if match[0] in (b"{", b"["):
            depth += 1
        elif match[0] in (b"}", b"]"):
            depth -= 1
        if depth > DEEPEST:
            raise JobFileRefused(
                say(
                    "{at}: Nested more than {deepest} levels deep; no job file needs that.",
                    at=_at(content, match.start()),
                    deepest=DEEPEST,
                )
            )


def _at(content: bytes, place: int) -> str:
    line = content.count(b"\n", 0, place) + 1
    return f"line {line}"


def _pairs(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    held: dict[str, Any] = {}
    for key, value in pairs:
        if key in held:
            held[_STANDS_TWICE] = key
        held[key] = value
    return held


def _integer(digits: str) -> int:
    # Python refuses to read more digits than this with an error of its own.
    return int(digits) if len(digits) < 20 else 10**20


def _not_json(text: str, refusal: json.JSONDecodeError) -> JobFileRefused:
    if refusal.pos >= len(text.rstrip()) or refusal.msg.startswith("Unterminated string"):
        return JobFileRefused(
            say(
                "line {lineno}: The file ends in the middle; it was cut short. Copy it "
                "again from where it came from.",
                lineno=refusal.lineno,
            )
            if text.strip()
            else "Expected a job file; this file is empty."
        )
    return JobFileRefused(
        say(
            "line {lineno}, character {colno}: This is not JSON; look for a missing "
            "comma, quote or bracket.",
            lineno=refusal.lineno,
            colno=refusal.colno,
        )
    )
