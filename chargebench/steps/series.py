"""Columns of text, time and reading, as typed lines of a timed test: pasted or from a file.

A pressure test may have a third column, the temperature.
"""

import re
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path

from chargebench.errors import ReadingRefused, SeriesRefused
from chargebench.steps.form import LINES_MOST, TypedLine
from chargebench.units import RULES, Kind, Reading, read
from chargebench.units.tables import fold
from chargebench.words import say

BYTES_MOST = 1_000_000
_NUMBER_FIRST = re.compile(r"[+\-\u2212]?\s*[.,]?\d")
_BRACKETS = re.compile(r"[\[(](.+)[\])]\s*$")
_CLOCK = re.compile(r"(\d{1,3}):([0-5]\d):([0-5]\d)(?:[.,](\d{1,3}))?")
_TWO_PARTS = re.compile(r"\d{1,3}:\d{2}")
_DATED = re.compile(r"\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}")
_EXAMPLE = "such as “5 min; 420 micron”"


def lines_from_file(
    path: Path, kind: Kind = Kind.PRESSURE, third: Kind | None = None
) -> tuple[TypedLine, ...]:
    """Typed lines {at, reading} of a two-column text file; see `lines_from_text`.

    Raises
    ------
    SeriesRefused
        A file that is not such text; names the line and what was expected there.
    """
    try:
        size = path.stat().st_size
        if size > BYTES_MOST:
            raise SeriesRefused(
                say(
                    "{file} has {size:.1f} MB; expected a text file of two columns, at most "
                    "{bytes_most:g} MB.",
                    file=path.name,
                    size=size / 1e6,
                    bytes_most=BYTES_MOST / 1e6,
                )
            )
        raw = path.read_bytes()
    except OSError as trouble:
        raise SeriesRefused(
            say("{file} can not be read: {trouble}.", file=path.name, trouble=trouble.strerror)
        ) from None
    return lines_from_text(_decoded(raw, path.name), kind, third)


def lines_from_text(
    text: str, kind: Kind = Kind.PRESSURE, third: Kind | None = None
) -> tuple[TypedLine, ...]:
    """Typed lines {at, reading} of two-column text, each with its unit written out.

    Where a third kind is expected, a third column may be there: {at, reading, temperature}.

    Columns are parted by tab, semicolon or comma, whichever comes first in that order. Units stand
    in the cells or in the head of the column. Times are spans, or clock times from which the span
    since the first line is taken.

    Raises
    ------
    SeriesRefused
        Text that is not such a table; names the line and what was expected there.
    """
    mark = next((each for each in "\t;," if each in text), None)
    if mark is None:
        raise SeriesRefused(
            say(
                "Expected two columns, time and reading, parted by tab, semicolon or "
                "comma, {example}.",
                example=_EXAMPLE,
            )
        )
    kinds = (Kind.DURATION, kind) if third is None else (Kind.DURATION, kind, third)
    heads = [""] * len(kinds)
    wide = False
    rows: list[tuple[int, list[str]]] = []
    for number, line in enumerate(text.splitlines(), 1):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        # Three cells parted by comma may be two with a decimal comma, unless the head has three.
        sure = mark != "," or wide or not _NUMBER_FIRST.match(line.lstrip(' "'))
        cells = _cells(number, line, mark, most=len(kinds) if sure else 2)
        if not any(_NUMBER_FIRST.match(cell) for cell in cells):
            if rows:
                raise SeriesRefused(
                    say(
                        "Line {number}: expected a time and a reading; got “{line}”.",
                        number=number,
                        line=line.strip()[:40],
                    )
                )
            wide = len(cells) > 2
            for place, cell in enumerate(cells):
                heads[place] = _unit_in(cell, kinds[place]) or heads[place]
            continue
        rows.append((number, cells))
    return _typed(rows, heads, kinds)


def _typed(
    rows: list[tuple[int, list[str]]], heads: Sequence[str], kinds: Sequence[Kind]
) -> tuple[TypedLine, ...]:
    if len(rows) < 2:
        raise SeriesRefused(
            say(
                "Expected at least two readings, {example}; got {rows}.",
                example=_EXAMPLE,
                rows=len(rows),
            )
        )
    if len(rows) > LINES_MOST:
        raise SeriesRefused(
            say(
                "Expected at most {lines_most} readings; got {rows}. Keep each second or "
                "each fifth line.",
                lines_most=LINES_MOST,
                rows=len(rows),
            )
        )
    time_of = _times(rows[0][1][0])
    lines: list[TypedLine] = []
    last = -1.0
    for number, cells in rows:
        time = cells[0]
        at = _reading(number, Kind.DURATION, time_of(number, time), heads[0])
        reading = _reading(number, kinds[1], cells[1], heads[1])
        seconds = at.quantity.m_as("s")
        if seconds <= last:
            raise SeriesRefused(
                say(
                    "Line {number}: expected a later time than the line before; got “{time}”.",
                    number=number,
                    time=time,
                )
            )
        last = seconds
        line = {"at": at.text, "reading": reading.text}
        if len(cells) > 2 and cells[2]:
            line["temperature"] = _reading(number, kinds[2], cells[2], heads[2]).text
        lines.append(line)
    return tuple(lines)


def _cells(number: int, line: str, mark: str, *, most: int) -> list[str]:
    cells = [cell.strip().strip('"').strip() for cell in line.split(mark)]
    while len(cells) > 2 and not cells[-1]:
        cells.pop()
    spaced = mark == "," and any(re.search(r"\d\s+\d", cell) for cell in cells)
    numeric = bool(_NUMBER_FIRST.match(cells[0]))
    if spaced or (mark == "," and len(cells) > most and numeric):
        raise SeriesRefused(
            say(
                "Line {number}: expected two columns; the comma in “{line}” may be a "
                "decimal mark. Part the columns by semicolon or tab.",
                number=number,
                line=line.strip()[:40],
            )
        )
    if not 2 <= len(cells) <= most:
        wanted = "two columns, time and reading" if most == 2 else "two or three columns"
        raise SeriesRefused(
            say(
                "Line {number}: expected {wanted}; got {cells}.",
                number=number,
                wanted=wanted,
                cells=len(cells),
            )
        )
    return cells


def _unit_in(head: str, kind: Kind) -> str:
    """Unit named in a column's head: pressure [micron], p / Pa, time (min), or the unit alone."""
    bracketed = _BRACKETS.search(head)
    words = head.split()
    tries = [head, words[-1] if words else ""]
    if "/" in head:
        tries.append(head.rsplit("/", 1)[1])
    if bracketed:
        tries.append(bracketed[1])
    units = RULES[kind].units
    known = next((each.strip() for each in tries if each and fold(each.strip()) in units), "")
    return known or (bracketed[1].strip() if bracketed else "")


def _times(first: str) -> Callable[[int, str], str]:
    """How the time column is read, from its first cell: as spans, or as times of the clock."""
    if _TWO_PARTS.fullmatch(first):
        raise SeriesRefused(
            say(
                "“{first}” may be minutes and seconds or hours and minutes; write 0:05:30, "
                "or a unit, as in 5.5 min.",
                first=first,
            )
        )
    if _CLOCK.fullmatch(first) or _DATED.match(first):
        start = _clock_seconds(0, first)
        return lambda number, text: _span(_clock_seconds(number, text) - start)
    return lambda _number, text: text


def _clock_seconds(number: int, text: str) -> float:
    clock = _CLOCK.fullmatch(text)
    if clock:
        hours, minutes, seconds, part = clock.groups()
        return int(hours) * 3600 + int(minutes) * 60 + int(seconds) + float(f"0.{part or 0}")
    try:
        when = datetime.fromisoformat(text)
    except ValueError:
        raise SeriesRefused(
            say(
                "Line {number}: expected a time like the one in the first line; got “{text}”.",
                number=number,
                text=text[:40],
            )
        ) from None
    # Without a zone the wall clock of the logger is taken; only differences are used.
    zero = datetime(2000, 1, 1, tzinfo=when.tzinfo)
    return (when - zero).total_seconds()


def _span(seconds: float) -> str:
    if seconds < 0:
        return f"{seconds:g} s"
    minutes, rest = divmod(round(seconds, 3), 60)
    if not minutes:
        return f"{rest:g} s"
    return f"{minutes:g} min {rest:g} s" if rest else f"{minutes:g} min"


def _reading(number: int, kind: Kind, text: str, unit: str) -> Reading:
    bare = not re.search(r"[^\d\s.,+\-\u2212]", text)
    if bare and not unit and text:
        raise SeriesRefused(
            say(
                "Line {number}: expected {kind} with its unit, such as {example}; "
                "got “{text}”. Write the unit in the cell or in the head of the column, as "
                "in pressure [micron].",
                number=number,
                kind=kind.with_article,
                example=RULES[kind].example,
                text=text[:40],
            )
        )
    try:
        return read(kind, f"{text} {unit}" if bare else text)
    except ReadingRefused as refusal:
        raise SeriesRefused(
            say("Line {number}: {refusal}", number=number, refusal=str(refusal))
        ) from None


def _decoded(raw: bytes, name: str) -> str:
    for start, encoding in ((b"\xff\xfe", "utf-16"), (b"\xfe\xff", "utf-16"), (b"", "utf-8-sig")):
        if raw.startswith(start):
            try:
                text = raw.decode(encoding)
                break
            except UnicodeDecodeError:
                continue
    else:
        text = raw.decode("cp1252", errors="replace")
    if "\0" in text:
        raise SeriesRefused(
            say("{name} is not text; expected two columns, {example}.", name=name, example=_EXAMPLE)
        )
    return text
