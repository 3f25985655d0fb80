"""The maker's figures: which reading each is of, and what today's is held against."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from chargebench.errors import ChargebenchError, ReadingRefused
from chargebench.steps.case import Case
from chargebench.steps.form import Answers
from chargebench.steps.forms.paperwork import MAKERS_READINGS
from chargebench.units import Kind, Q, Quantity, Reading, absolute, read
from chargebench.words import say

_RANGE = re.compile(r"\s+(?:to|and)\s+|\s*\u2013\s*", re.IGNORECASE)
# A difference of pressures is the same above the air's as absolute: 3 psi needs no word for it.
_BARE = re.compile(r"(psi|bar|kpa|mpa)\s*$", re.IGNORECASE)
BASE = {
    Kind.DIFFERENCE: "kelvin",
    Kind.TEMPERATURE: "kelvin",
    Kind.PRESSURE: "Pa",
    Kind.CURRENT: "A",
}


@dataclass(frozen=True, slots=True)
class MakersFigure:
    """One figure as the maker gave it, understood where it is of one of the readings."""

    what: str
    expected: str  # as typed, with its tolerance
    given_by: str
    of: str = ""  # key of the reading or the difference it is of
    low: Reading | None = None
    high: Reading | None = None
    tolerance: Reading | None = None

    def held(self, case: Case, step: str) -> tuple[Quantity, Quantity | None] | None:
        """Its middle, pressures absolute at that step, and how far either side it allows."""
        if self.low is None or self.high is None:
            return None
        try:
            ends = [_absolute(each, case, step) for each in (self.low, self.high)]
        except ChargebenchError:
            return None
        kind = self.low.kind
        middle = Q(sum(ends) / 2, BASE[kind])
        around: Quantity | None = None
        if self.tolerance is not None:
            around = Q(self.tolerance.quantity.m_as(BASE[self.tolerance.kind]), BASE[kind])
        elif ends[0] != ends[1]:
            around = Q((ends[1] - ends[0]) / 2, BASE[kind])
        return (middle.to("degC") if kind is Kind.TEMPERATURE else middle), around


def _absolute(reading: Reading, case: Case, step: str) -> float:
    quantity = reading.quantity
    if reading.kind is Kind.PRESSURE:
        quantity = absolute(reading, case.air_pressure(step))
    return float(quantity.m_as(BASE[reading.kind]))


def figures(case: Case) -> Iterator[MakersFigure]:
    """The maker's figures in the order typed; one of no reading stands in the maker's words."""
    for line in case.step("support").lines("figures"):
        expected = line.text("expected")
        of = line.text("reading")
        what = ", ".join(word for word in (of, line.text("what")) if word)
        if not what or not expected:
            continue
        if tolerance := line.text("tolerance"):
            expected = say("{expected} ± {tolerance}", expected=expected, tolerance=tolerance)
        given_by = line.text("given_by") or "the maker"
        understood, refused = _understood(line)
        if not understood or refused:
            yield MakersFigure(what, expected, given_by)
            continue
        key, _ = MAKERS_READINGS[of]
        yield MakersFigure(what, expected, given_by, key, *understood)


def expected(case: Case) -> dict[str, MakersFigure]:
    """The first figure for each reading that one was given for."""
    found: dict[str, MakersFigure] = {}
    for each in figures(case):
        if each.of:
            found.setdefault(each.of, each)
    return found


def refusals(case: Case) -> dict[str, str]:
    """What a line is refused for: of no reading and no words, or not of its reading's kind."""
    fields: dict[str, str] = {}
    for number, line in enumerate(case.step("support").lines("figures")):
        here = f"figures[{number}]"
        if not line.text("reading") and not line.text("what"):
            fields[f"{here}.reading"] = "Expected the reading it is of, or what it is in words."
        _, refused = _understood(line)
        fields |= {f"{here}.{key}": says for key, says in refused.items()}
    return fields


def _understood(
    line: Answers,
) -> tuple[tuple[Reading, Reading, Reading | None] | None, dict[str, str]]:
    """Ends and tolerance of a line that is of a reading; what could not be understood, by field."""
    known = MAKERS_READINGS.get(line.text("reading"))
    if known is None or not line.text("expected"):
        return None, {}
    _, kind = known
    ends: tuple[Reading, Reading] | None = None
    tolerance: Reading | None = None
    refused: dict[str, str] = {}
    try:
        ends = _ends(kind, line.text("expected"))
    except ReadingRefused as refusal:
        refused["expected"] = str(refusal)
    if text := line.text("tolerance"):
        try:
            tolerance = _tolerance(kind, text)
        except ReadingRefused as refusal:
            refused["tolerance"] = str(refusal)
    return (None if ends is None else (*ends, tolerance)), refused


def _ends(kind: Kind, text: str) -> tuple[Reading, Reading]:
    """Both ends of 5 to 8 K; twice the same of 6 K."""
    first, *rest = _RANGE.split(text.strip())
    if len(rest) > 1:
        raise ReadingRefused(
            say(
                "Expected one {kind} or two, such as 5 to 8; got “{text}”.",
                kind=kind,
                text=text[:30],
            )
        )
    last = read(kind, rest[0] if rest else first)
    begin = read(kind, first, bare_unit=last.unit) if rest else last
    if begin.unit != last.unit or begin.value > last.value:
        raise ReadingRefused(
            say("Expected the lower {kind} first, in the same unit as the higher.", kind=kind)
        )
    return begin, last


def _tolerance(kind: Kind, text: str) -> Reading:
    if kind is Kind.PRESSURE:
        text = _BARE.sub(r"\1(g)", text)
    found = read(Kind.DIFFERENCE if kind is Kind.TEMPERATURE else kind, text)
    if found.value < 0:
        raise ReadingRefused("Expected how far either side is allowed, above zero.")
    return found
