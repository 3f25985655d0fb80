"""Labels of cylinders: what stands on the cylinder, and its id as a QR code for a scanner."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import segno

from chargebench.flags import class_words
from chargebench.fluids import refrigerant
from chargebench.reports.content import CylinderLine
from chargebench.reports.drawn import Box, Drawn, Mark, Stroke, Words
from chargebench.reports.letterhead import Letterhead, joined
from chargebench.reports.letters import lines, step, width
from chargebench.reports.page import GREY, PAPERS, RULE
from chargebench.steps import Answers
from chargebench.units import from_mg, shown

LABEL = (95.0, 50.0)  # mm: two beside each other and five below, on A4 and on Letter
SHEET = (2, 5)
_EDGE = 4.0  # mm inside the label
_QR = 30.0  # mm, the quiet zone of four modules with it
_QUIET = 4  # modules: ISO/IEC 18004


@dataclass(frozen=True, slots=True)
class Labelled:
    """A cylinder with its row."""

    line: CylinderLine
    row: Answers


def draw_label(letterhead: Letterhead, one: Labelled) -> Drawn:
    """One label on a page of its own size."""
    wide, high = LABEL
    page = tuple(_label(letterhead, one, 0, 0))
    title = f"Label of cylinder {one.line.id}"
    return Drawn(title, wide, high, (page,), letterhead.made_at, letterhead.program)


def draw_sheet(letterhead: Letterhead, labels: Sequence[Labelled]) -> Drawn:
    """Labels on sheets of paper, with lines to cut along."""
    across, down = SHEET
    wide, high = PAPERS[letterhead.paper]
    left, top = (wide - across * LABEL[0]) / 2, (high - down * LABEL[1]) / 2
    pages = []
    for first in range(0, max(len(labels), 1), across * down):
        marks: list[Mark] = []
        for place, one in enumerate(labels[first : first + across * down]):
            x = left + place % across * LABEL[0]
            y = top + place // across * LABEL[1]
            marks += [*_outline(x, y), *_label(letterhead, one, x, y)]
        pages.append(tuple(marks))
    title = f"Labels of cylinders, {letterhead.name}"
    return Drawn(title, wide, high, tuple(pages), letterhead.made_at, letterhead.program)


def _outline(x: float, y: float) -> Iterator[Mark]:
    wide, high = LABEL
    corners = ((x, y), (x + wide, y), (x + wide, y + high), (x, y + high), (x, y))
    yield Stroke(corners, 0.1, RULE, 1.0)


def _label(letterhead: Letterhead, one: Labelled, x: float, y: float) -> Iterator[Mark]:
    line = one.line
    left, room = x + _EDGE, LABEL[0] - 2 * _EDGE
    beside = room - _QR + 2  # the code brings its own quiet zone
    yield from _qr(line.id, x + LABEL[0] - _EDGE - _QR + 2, y + _EDGE - 2)
    size = _fitting(line.id, beside, 22)
    yield Words(left, y + _EDGE + 6, line.id, size, bold=True)
    name = line.refrigerant
    size = _fitting(name, beside, 16)
    yield Words(left, y + _EDGE + 13, name, size, bold=True)
    below = y + _EDGE + 14.5
    class_said = class_words(refrigerant(name).safety_class) if name else ""
    for words in (joined(line.contents, class_said), *_once(line)):
        for text in lines(words, beside, 8)[:2]:
            below += step(8)
            yield Words(left, below, text, 8)
    low = y + LABEL[1] - _EDGE
    rows = [row for row in _facts(letterhead, one) if row[1]]
    for place, (label, value) in enumerate(reversed(rows)):
        at = low - place * step(7)
        yield Words(left, at, label, 7, grey=GREY)
        yield Words(left + 21, at, lines(value, room - 21, 7)[0], 7)


def _once(line: CylinderLine) -> tuple[str, ...]:
    return ("not refillable",) if line.refillable is False else ()


def _facts(letterhead: Letterhead, one: Labelled) -> Iterator[tuple[str, str]]:
    line, row, units = one.line, one.row, letterhead.units
    tares = [
        f"{said} {reading.text}"
        for said, key in (("stamped", "tare"), ("weighed empty", "tare_found"))
        if (reading := row.reading(key)) is not None
    ]
    yield "Tare", joined(*tares)
    limit = "" if line.limit_mg is None else f"net {shown(from_mg(line.limit_mg), units)}"
    gross = ""
    if line.gross_limit_mg is not None:
        gross = f"gross {shown(from_mg(line.gross_limit_mg), units)}"
    by = f"({line.by})" if line.by else ""
    yield "Fill at most", joined(joined(limit, gross), by, by=" ") or "not known: do not fill"
    yield "Requalify by", f"{line.due}" if line.due else ""
    yield "Serial, owner", joined(*(row.text(key) for key in ("serial", "spec", "owner")))
    yield "Kept by", letterhead.name


def _fitting(text: str, room: float, size: float) -> float:
    """The size in which a word fits, a given one at most."""
    return min(size, size * room / max(width(text, size, bold=True), 0.1))


def _qr(text: str, x: float, y: float) -> Iterator[Mark]:
    """The code, dark runs of each row as one box."""
    code = segno.make_qr(text, error="q")
    rows = [tuple(row) for row in code.matrix_iter(border=_QUIET)]
    side = _QR / len(rows)
    for down, row in enumerate(rows):
        start = 0
        while start < len(row):
            end = start
            while end < len(row) and row[end]:
                end += 1
            if end > start:
                yield Box(x + start * side, y + down * side, (end - start) * side, side)
            start = end + 1
