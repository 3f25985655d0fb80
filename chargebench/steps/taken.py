"""Which of a step's texts were read from an instrument or a file, kept beside what was typed.

A text that was changed afterwards is a typed one again: what was taken must still stand there.
"""

import re
from collections.abc import Iterable, Mapping

from chargebench.steps.form import Asks, Field, Typed, TypedLine
from chargebench.words import joined, say

AsTyped = dict[str, str | list[dict[str, str]]]
KEY = "taken"
TAKEN = Field(
    KEY,
    "Read, not typed",
    Asks.LINES,
    shown=False,
    fields=(
        Field("path", "Field", required=True, example="lines[0].start"),
        Field("source", "Read from", required=True, example="S-2"),
        Field("text", "As read", required=True, example="4312.5 g"),
    ),
)
_IN_LINE = re.compile(r"(\w+)\[(\d+)\]\.(\w+)")


def text_at(typed: Typed, path: str) -> str:
    """What stands at a path such as `level` or `lines[0].end`; empty where there is none."""
    inside = _IN_LINE.fullmatch(path)
    if inside is None:
        plain = typed.get(path, "")
        return plain if isinstance(plain, str) else ""
    lines = typed.get(inside[1], ())
    place = int(inside[2])
    if isinstance(lines, str) or place >= len(lines):
        return ""
    return lines[place].get(inside[3], "")


def standing(typed: Typed) -> list[dict[str, str]]:
    """What was taken and still stands as it was read, the newest of each path."""
    taken = typed.get(KEY, ())
    newest: dict[str, dict[str, str]] = {}
    for line in () if isinstance(taken, str) else taken:
        path, text = line.get("path", ""), line.get("text", "")
        if text and line.get("source") and text_at(typed, path).strip() == text.strip():
            newest[path] = dict(line)
    return list(newest.values())


def checked(typed: Typed) -> AsTyped:
    """The typed text with only what still stands as it was taken."""
    rest: AsTyped = {
        key: given if isinstance(given, str) else [dict(line) for line in given]
        for key, given in typed.items()
        if key != KEY
    }
    taken = standing(typed)
    return {**rest, KEY: taken} if taken else rest


def with_taken(typed: Typed, source: str, texts: Mapping[str, str]) -> AsTyped:
    """The typed text with more that was taken: texts by path, which stand in it already."""
    more = [{"path": path, "source": source, "text": text} for path, text in texts.items()]
    return checked({**typed, KEY: [*standing(typed), *more]})


def sources(typed: Typed) -> dict[str, str]:
    """What each path was read from; a path that is not in it was typed."""
    return {line["path"]: line["source"] for line in standing(typed)}


def words(typed: Typed) -> str:
    """What was read from where, as a person reads it; empty where all was typed."""
    found: dict[str, int] = {}
    for source in sources(typed).values():
        found[source] = found.get(source, 0) + 1
    return joined(
        ", ",
        (
            say("{count} read from {source}", count=count, source=source)
            for source, count in found.items()
        ),
    )


def of_series(key: str, lines: Iterable[TypedLine], start: int = 0) -> dict[str, str]:
    """Paths and texts of the readings of a series, but for their times."""
    return {
        f"{key}[{number}].{part}": text
        for number, line in enumerate(lines, start)
        for part, text in line.items()
        if part != "at"
    }
