"""The maker's figures as typed, and those among them that today's readings are held against."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from chargebench.errors import ReadingRefused
from chargebench.steps.case import Case
from chargebench.units import Kind, Q, Quantity, read

# Words by which a figure is taken for one of the differences worked out from readings.
_WORDS = {
    "superheat": ("superheat",),
    "subcooling": ("subcooling", "sub-cooling"),
    "condensing_split": ("condensing split", "condensing over ambient", "split over ambient"),
    "evaporator_difference": ("evaporator difference", "air over evaporating", "box over evap"),
}
_RANGE = re.compile(r"\s+(?:to|and)\s+|\s*\u2013\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class MakersFigure:
    """One figure as the maker gave it."""

    what: str
    expected: str  # as typed
    given_by: str
    of: str = ""  # which difference of the readings it is, where it is one
    middle: Quantity | None = None  # K, of a range its middle


def figures(case: Case) -> Iterator[MakersFigure]:
    """The maker's figures in the order typed."""
    for line in case.step("support").lines("figures"):
        what, expected = line.text("what"), line.text("expected")
        if not what or not expected:
            continue
        of = _difference(what)
        middle = _middle(expected) if of else None
        given_by = line.text("given_by") or "the maker"
        yield MakersFigure(what, expected, given_by, of if middle is not None else "", middle)


def expected(case: Case) -> dict[str, MakersFigure]:
    """The first figure for each difference that one was given for."""
    found: dict[str, MakersFigure] = {}
    for each in figures(case):
        if each.of:
            found.setdefault(each.of, each)
    return found


def _difference(what: str) -> str:
    said = what.casefold()
    return next((name for name, words in _WORDS.items() if any(w in said for w in words)), "")


def _middle(text: str) -> Quantity | None:
    """Middle of a temperature difference such as 8 K or 5 to 8 K; None for what is none."""
    first, *rest = _RANGE.split(text.strip())
    if len(rest) > 1:
        return None
    try:
        last = read(Kind.DIFFERENCE, rest[0] if rest else first)
        begin = read(Kind.DIFFERENCE, first, bare_unit=last.unit)
    except ReadingRefused:
        return None
    return Q((begin.quantity.m_as("kelvin") + last.quantity.m_as("kelvin")) / 2, "kelvin")
