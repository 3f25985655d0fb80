"""One line of an instrument understood: sign, number, unit, and whether it says that it rests."""

import re
from dataclasses import dataclass
from decimal import Decimal

from chargebench.errors import ReadingRefused
from chargebench.instruments.settings import LineSettings
from chargebench.units import RULES, Kind, read
from chargebench.units.tables import fold
from chargebench.words import say

_NUMBER = re.compile(
    r"(?<!\w)(?<!\d[.,])(?P<sign>[+\-\u2212]?)\s*"
    r"(?P<number>(?:\d+[.,]\d+|\d+[.,]?|[.,]\d+))(?P<power>[eE][+\-]?\d{1,2})?"
    r"(?!\d|[.,]\d)\s*[,;]?\s*(?P<unit>[A-Za-zµμ°\"%][A-Za-zµμ°\"()%]*)?"
)
_BETWEEN = re.compile(r"[\s,;:=]+")
_OUNCES = 16  # in a pound


@dataclass(frozen=True, slots=True)
class Heard:
    """What one line said."""

    line: str
    text: str  # the reading as a form takes it, such as 4312.5 g
    value: Decimal
    unit: str
    step: Decimal  # of the last digit sent
    steady: bool | None  # as the instrument's mark says; None where it has none


def printable(line: bytes) -> str:
    """A line as it can be shown: what is no character stands as a dot."""
    text = line.decode("latin-1")
    return "".join(c if c.isprintable() or c == "\t" else "·" for c in text).strip()


def seems_seven_bits(line: bytes) -> bool:
    """Whether a line is garbled as one of seven data bits is when eight are expected."""
    high = sum(byte > 127 for byte in line)
    stripped = bytes(byte & 0x7F for byte in line)
    return high >= 3 and any(48 <= byte <= 57 for byte in stripped) and stripped.isascii()


def understand(line: bytes, settings: LineSettings, kind: Kind) -> Heard:
    """Understand a line as a reading of a kind.

    Raises
    ------
    ReadingRefused
        A line that has not one unambiguous reading in it; says what is missing.
    """
    shown = printable(line)
    found = _candidates(shown, settings, kind)
    value, unit = found[0].value(settings), found[0].unit
    digits = f"{value:f} {unit}"
    start, end = found[0].start, found[-1].end
    if len(found) == 2:  # pounds and ounces
        ounces = found[1].value(settings)
        digits = f"{value:f} lb {ounces:f} oz"
        value, unit = value * _OUNCES + ounces, "oz"
    reading = read(kind, digits)
    step = Decimal(1).scaleb(int(found[-1].value(settings).as_tuple().exponent))
    rest = f"{shown[:start]} {shown[end:]}"
    return Heard(shown, reading.text, value, unit, step, _steady(rest, settings))


@dataclass(frozen=True, slots=True)
class _Candidate:
    number: str
    unit: str
    start: int
    end: int

    def value(self, settings: LineSettings) -> Decimal:
        if not settings.comma and re.search(r"(?<!\d)[+\-]?[1-9]\d{0,2},\d{3}(?!\d)", self.number):
            raise ReadingRefused(
                say(
                    "“{number}” may be {whole} or {decimal}; say in the settings that the "
                    "comma is the decimal mark.",
                    number=self.number,
                    whole=self.number.replace(",", ""),
                    decimal=self.number.replace(",", "."),
                )
            )
        value = Decimal(self.number.replace(",", ".").replace("\u2212", "-"))
        return abs(value) if value == 0 else value


def _candidates(shown: str, settings: LineSettings, kind: Kind) -> list[_Candidate]:
    """The number that is the reading: those with a unit of the kind before those with none."""
    with_unit: list[_Candidate] = []
    bare: list[_Candidate] = []
    for match in _NUMBER.finditer(shown):
        number = match["sign"] + match["number"].rstrip(".,") + (match["power"] or "")
        if len(match["number"]) > 12:
            continue  # no display has as many digits
        unit = _unit(match["unit"] or "", kind)
        start, end = match.start(), match.end("unit") if unit else match.end("number")
        (with_unit if unit else bare).append(_Candidate(number, unit, start, end))
    if [each.unit for each in with_unit] == ["lb", "oz"]:
        return with_unit
    if len(with_unit) == 1:
        return with_unit
    if not with_unit and len(bare) == 1 and settings.unit:
        one = bare[0]
        return [_Candidate(one.number, settings.unit, one.start, one.end)]
    if not with_unit and not bare:
        raise ReadingRefused("No number in this line.")
    if not with_unit and not settings.unit:
        raise ReadingRefused(
            "A number without a unit known here; say in the settings which unit it has."
        )
    raise ReadingRefused("More than one number in this line could be the reading.")


def _unit(typed: str, kind: Kind) -> str:
    known = typed and fold(typed) in RULES[kind].units
    return typed.replace("μ", "µ") if known else ""


def _steady(rest: str, settings: LineSettings) -> bool | None:
    if settings.moving and _marked(rest, settings.moving):
        return False
    if settings.stable:
        return _marked(rest, settings.stable)
    return True if settings.moving else None


def _marked(rest: str, mark: str) -> bool:
    if mark.isalnum():
        return mark in _BETWEEN.split(rest)
    return mark in rest
