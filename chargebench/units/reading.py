"""Typed text to readings and back; a reading keeps what was typed."""

import functools
import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Any

from chargebench.errors import ReadingRefused
from chargebench.units.number import SPACES, number_of, quoted
from chargebench.units.registry import EXACT_MG, Q, Quantity, mass_mg, ureg
from chargebench.units.tables import DIAL, LABELS, RULES, Kind, Unit, fold
from chargebench.words import Measured, say


@dataclass(frozen=True, slots=True)
class Reading:
    """One typed reading: what was typed and what it was understood as.

    `value` is the exact number in `unit` (the first unit of a compound such as 1 lb 2.5 oz).
    """

    kind: Kind
    value: Fraction
    unit: str
    text: str
    pint_unit: Any
    gauge: bool = False

    @property
    def quantity(self) -> Quantity:
        """The reading as a pint quantity; a gauge pressure is still above the air's."""
        return Q(float(self.value), self.pint_unit)

    @property
    def mass_mg(self) -> int:
        """Integer milligrams, rounded half to even from the exact factor."""
        assert self.kind in (Kind.MASS, Kind.SCALE), self.kind
        return mass_mg(self.value, self.unit)


_PART = re.compile(
    rf"(?P<number>[+\-\u2212]?\d+/\d+|[+\-\u2212]?[\d.,](?:[\d.,{SPACES}]*[\d.,])?)"
    rf"[{SPACES}]*(?P<unit>[^\d{SPACES}+\-\u2212.,][^\d+\-\u2212]*)?"
)
_POWER = re.compile(r"(?<=[A-Za-z])[23](?=\s|$)")  # the 2 of m2 belongs to the unit
_LONGEST_TEXT = 60


def read(kind: Kind, text: str, bare_unit: str | None = None) -> Reading:
    """Understand typed text as a reading of a kind.

    Parameters
    ----------
    kind : Kind
        What is measured.
    text : str
        As typed: `3.9 oz`, `1 lb 2.5 oz`, `0,11 kg`, `68 psig`, `-10 inHg`, `500 micron`, `9 F`.
    bare_unit : str, optional
        Unit of a number typed without one, where the place it is typed in has said it.

    Raises
    ------
    ReadingRefused
        Text that is not one unambiguous reading; says what was expected.
    """
    rule = RULES[kind]
    stripped = text.strip()
    if not stripped:
        raise ReadingRefused(
            say(
                "Expected {kind}, such as {example}; nothing was typed.",
                kind=kind.with_article,
                example=rule.example,
            )
        )
    if len(stripped) > _LONGEST_TEXT:
        raise ReadingRefused(
            say(
                "Expected one {kind}, such as {example}; this is too long.",
                kind=kind,
                example=rule.example,
            )
        )
    parts = _split(kind, _POWER.sub(lambda power: "²³"[int(power[0]) - 2], stripped))
    numbers = [
        (number_of(kind, number, stripped), _unit(kind, unit, bare_unit, stripped))
        for number, unit in parts
    ]
    reading = (
        _single(kind, numbers[0], stripped)
        if len(numbers) == 1
        else _compound(kind, numbers, stripped)
    )
    _fence(reading)
    return reading


def _split(kind: Kind, text: str) -> list[tuple[str, str]]:
    parts: list[tuple[str, str]] = []
    position = 0
    while position < len(text):
        match = _PART.match(text, position)
        if match is None or match.end() == position:
            raise ReadingRefused(
                say(
                    "Expected {kind}, such as {example}; got {text}.",
                    kind=kind.with_article,
                    example=RULES[kind].example,
                    text=quoted(text),
                )
            )
        parts.append((match["number"], (match["unit"] or "").strip(SPACES)))
        position = match.end()
    return parts


def _unit(kind: Kind, typed: str, bare_unit: str | None, text: str) -> Unit:
    rule = RULES[kind]
    if not typed and bare_unit is not None:
        typed = bare_unit
    unit = rule.units.get(fold(typed))
    if unit is not None:
        return unit
    if not typed:
        raise ReadingRefused(
            say(
                "Expected {kind} with its unit, such as {example}; got only {text}.",
                kind=kind.with_article,
                example=rule.example,
                text=quoted(text),
            )
        )
    if kind is Kind.PRESSURE and fold(typed) in ("psi", "bar", "kpa", "mpa"):
        raise ReadingRefused(
            say(
                "“{typed}” may be gauge or absolute; write {gauge} as read on a "
                "gauge, or {absolute}.",
                typed=typed,
                gauge=_gauge_word(typed),
                absolute=_absolute_word(typed),
            )
        )
    known = _kind_of(typed)
    but = (
        say("; “{typed}” is a unit of {known}", typed=typed, known=known)
        if known
        else say("; “{typed}” is not a unit known here", typed=typed)
    )
    raise ReadingRefused(
        say(
            "Expected {kind}, such as {example}{but}.",
            kind=kind.with_article,
            example=rule.example,
            but=but,
        )
    )


def _gauge_word(typed: str) -> str:
    return "psig" if fold(typed) == "psi" else f"{typed}(g)"


def _absolute_word(typed: str) -> str:
    return "psia" if fold(typed) == "psi" else f"{typed}(a)"


def _kind_of(typed: str) -> str:
    if fold(typed) in ("psi", "bar", "kpa", "mpa"):
        return Kind.PRESSURE
    return next((kind for kind, rule in RULES.items() if fold(typed) in rule.units), "")


def _single(kind: Kind, number: tuple[Fraction, Unit], text: str) -> Reading:
    value, unit = number
    if unit.label in ("inHg", "inHg vac") and unit.gauge:
        if unit.label == "inHg" and value > 0:
            raise ReadingRefused(
                say(
                    "{text} may be a vacuum or an absolute pressure; write -{value:g} inHg or "
                    "{value:g} inHg vac for a vacuum, {value:g} inHg(a) for absolute.",
                    text=quoted(text),
                    value=float(value),
                )
            )
        value = -abs(value)
        unit = DIAL[fold("inHg")]
    return Reading(kind, value, unit.label, text, unit.pint, unit.gauge)


def _compound(kind: Kind, numbers: list[tuple[Fraction, Unit]], text: str) -> Reading:
    order = RULES[kind].compound
    labels = [unit.label for _, unit in numbers]
    places = [order.index(label) for label in labels if label in order]
    rising = places == sorted(set(places)) and len(places) == len(labels)
    if not rising or any(value < 0 for value, _ in numbers[1:]):
        raise ReadingRefused(
            say(
                "Expected one {kind}, such as {example}; got {text}.",
                kind=kind,
                example=RULES[kind].example,
                text=quoted(text),
            )
        )
    (first, unit), *rest = numbers
    total = first
    for value, smaller in rest:
        factor = _exact_ratio(smaller.label, unit.label)
        if value * factor >= 1:
            raise ReadingRefused(
                say(
                    "Expected less than one {unit} in the {smaller} of {text}.",
                    unit=unit.label,
                    smaller=smaller.label,
                    text=quoted(text),
                )
            )
        total += (-1 if text.startswith(("-", "\u2212")) else 1) * value * factor
    return Reading(kind, total, unit.label, text, unit.pint)


def _exact_ratio(smaller: str, larger: str) -> Fraction:
    in_seconds = {"d": 86_400, "h": 3_600, "min": 60, "s": 1}
    in_inches = {"ft": 12, "in": 1}
    tables: tuple[Mapping[str, int | Fraction], ...] = (EXACT_MG, in_seconds, in_inches)
    table = next(each for each in tables if smaller in each and larger in each)
    return Fraction(table[smaller]) / Fraction(table[larger])


@functools.cache
def _to_base(unit: Any, base: str) -> tuple[float, float]:
    """Scale and offset from a unit to a base unit: taken from pint once, for every key is read."""
    zero, one = (float(Q(value, unit).m_as(base)) for value in (0.0, 1.0))
    return one - zero, zero


def _fence(reading: Reading) -> None:
    rule = RULES[reading.kind]
    scale, offset = _to_base(reading.pint_unit, rule.base)
    size = float(reading.value) * scale + offset
    negative_allowed = rule.lowest < 0 or reading.kind is Kind.TEMPERATURE
    if size < 0 and not negative_allowed:
        raise ReadingRefused(
            say(
                "Expected {kind} that is not negative; got {text}.",
                kind=reading.kind.with_article,
                text=quoted(reading.text),
            )
        )
    if reading.kind is Kind.PRESSURE and not reading.gauge and size < 0:
        raise ReadingRefused(
            say(
                "An absolute pressure can not be negative; got {text}.",
                text=quoted(reading.text),
            )
        )
    # A hair of slack: 0 K typed as -459.67 °F must not fall to rounding.
    base = LABELS.get(str(ureg.Unit(rule.base)), rule.base)
    slack = 1e-9 * (1 + abs(rule.lowest))
    if not rule.lowest - slack <= size <= rule.highest:
        raise ReadingRefused(
            say(
                "{text} is outside what {kind} here can be ({lowest:g} to "
                "{highest:g} {base}); check the unit and decimal mark.",
                text=quoted(reading.text),
                kind=reading.kind.with_article,
                lowest=rule.lowest,
                highest=rule.highest,
                base=base,
            )
        )


def write(value: Decimal, unit: str) -> str:
    """Text of an exact decimal in a unit, which `read` understands as the same reading."""
    return f"{value:f} {unit}".strip()


def show(quantity: Quantity, unit: str, places: int) -> Measured:
    """Text of a quantity in a unit with fixed decimal places, thousands parted by thin spaces."""
    number = f"{quantity.m_as(unit):,.{places}f}".replace(",", "\u202f").replace("-", "\u2212")
    if float(number.replace("\u202f", "").replace("\u2212", "-")) == 0:
        number = number.removeprefix("\u2212")
    return Measured(f"{number} {LABELS.get(str(ureg.Unit(unit)), unit)}".strip())
