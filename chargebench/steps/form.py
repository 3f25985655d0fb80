"""Forms as data: what a step or a register asks for, and typed text turned into answers."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from enum import StrEnum
from functools import lru_cache
from typing import Any

from chargebench import fluids
from chargebench.errors import ReadingRefused, UnknownRefrigerant
from chargebench.instruments import LineSettings
from chargebench.units import Kind, Quantity, Reading, read
from chargebench.words import joined, say

TypedLine = Mapping[str, str]
Typed = Mapping[str, str | Sequence[TypedLine]]  # what stands in a form, exactly as typed

YES_NO = ("yes", "no")
LINES_MOST = 500
# At each key a whole form is understood anew; all but one of its texts are as they were.
_read = lru_cache(maxsize=4_096)(read)
TEXT_LONGEST = 4_000


class Asks(StrEnum):
    """What a field asks for."""

    READING = "reading"  # a number with a unit of the field's kind
    TEXT = "text"
    LONG_TEXT = "long text"
    CHOICE = "choice"
    YES_NO = "yes or no"
    DATE = "date"
    WHEN = "date and time"
    REFRIGERANT = "refrigerant"
    SERIAL_LINE = "serial line"  # how an instrument speaks, as instruments.settings writes it
    ROW = "register row"  # the id of a row of the field's register
    TICKS = "ticks"  # lines of {line, at, by}; which lines there are depends on the job
    LINES = "lines"  # a repeated group of the field's own fields


@dataclass(frozen=True, slots=True)
class Field:
    """One field of a form."""

    key: str
    label: str
    asks: Asks = Asks.TEXT
    kind: Kind | None = None
    example: str = ""
    choices: tuple[str, ...] = ()
    register: str = ""
    only: str = ""  # of a register's rows, those of this kind (instruments: scale, ...)
    required: bool = False
    fields: tuple["Field", ...] = ()
    hint: str = ""
    shown: bool = True  # False: kept beside what is typed, not asked for


@dataclass(frozen=True, slots=True)
class Form:
    """The fields of one step or one register, in the order they are worked through."""

    key: str
    title: str
    purpose: str
    fields: tuple[Field, ...]

    def field(self, key: str) -> Field:
        """One field by key."""
        return next(each for each in self.fields if each.key == key)


@dataclass(frozen=True, slots=True)
class Answers:
    """A form's typed text as values; what could not be understood, by the field's path."""

    values: Mapping[str, Any] = field(default_factory=dict)
    refusals: Mapping[str, str] = field(default_factory=dict)
    missing: Mapping[str, str] = field(default_factory=dict)

    def reading(self, key: str) -> Reading | None:
        """A reading, or None where nothing usable is typed."""
        value = self.values.get(key)
        assert value is None or isinstance(value, Reading), key
        return value

    def quantity(self, key: str) -> Quantity | None:
        """A reading's quantity; gauge pressures are for `units.absolute`."""
        reading = self.reading(key)
        return None if reading is None else reading.quantity

    def quantity_or(self, key: str, otherwise: Quantity) -> Quantity:
        """A reading's quantity, or what serves where nothing usable is typed."""
        reading = self.reading(key)
        return otherwise if reading is None else reading.quantity

    def mass_mg(self, key: str) -> int | None:
        """A mass in integer milligrams."""
        reading = self.reading(key)
        return None if reading is None else reading.mass_mg

    def text(self, key: str) -> str:
        """A text, a choice or a row's id; empty where nothing is typed."""
        value = self.values.get(key, "")
        assert isinstance(value, str), key
        return value

    def yes(self, key: str) -> bool | None:
        """A yes or no, None where not said."""
        value = self.values.get(key)
        assert value is None or isinstance(value, bool), key
        return value

    def date(self, key: str) -> date | None:
        """A date."""
        value = self.values.get(key)
        assert value is None or isinstance(value, date), key
        return value

    def lines(self, key: str) -> tuple["Answers", ...]:
        """The lines of a repeated group, or the ticks of a list."""
        value = self.values.get(key, ())
        assert isinstance(value, tuple), key
        return value

    def ticked(self, key: str) -> frozenset[str]:
        """Keys of the lines ticked in a list."""
        return frozenset(line.text("line") for line in self.lines(key))


NOTHING = Answers()
TICK_FIELDS = (
    Field("line", "Line", required=True),
    Field("at", "At", Asks.WHEN, required=True),
    Field("by", "By", required=True),
)


def answer(form: Form, typed: Typed) -> Answers:
    """Understand what is typed in a form; never raises for what a person can type."""
    return _answer_fields(form.fields, typed, "")


def _answer_fields(fields: Sequence[Field], typed: Typed, path: str) -> Answers:
    values: dict[str, Any] = {}
    refusals: dict[str, str] = {}
    missing: dict[str, str] = {}
    for each in fields:
        given = typed.get(each.key, "")
        where = f"{path}{each.key}"
        if each.asks in (Asks.LINES, Asks.TICKS):
            lines = _answer_lines(each, given, where)
            values[each.key] = tuple(lines)
            for line in lines:
                refusals |= line.refusals
                missing |= line.missing
            if each.required and not lines:
                missing[where] = each.label
            continue
        text = given.strip() if isinstance(given, str) else ""
        if not text:
            if each.required:
                missing[where] = each.label
            continue
        try:
            values[each.key] = _value(each, text)
        except ReadingRefused as refusal:
            refusals[where] = str(refusal)
    return Answers(values, refusals, missing)


def _answer_lines(each: Field, given: str | Sequence[TypedLine], where: str) -> list[Answers]:
    fields = TICK_FIELDS if each.asks is Asks.TICKS else each.fields
    lines = [] if isinstance(given, str) else given
    return [
        _answer_fields(fields, line, f"{where}[{number}].")
        for number, line in enumerate(lines[:LINES_MOST])
        if any(text.strip() for text in line.values())
    ]


def _value(each: Field, text: str) -> Any:
    if len(text) > TEXT_LONGEST:
        raise ReadingRefused(
            say(
                "Expected at most {most} characters; got {text}.",
                most=TEXT_LONGEST,
                text=len(text),
            )
        )
    match each.asks:
        case Asks.READING:
            assert each.kind is not None, each.key
            return _read(each.kind, text)
        case Asks.CHOICE:
            return _choice(each.choices, text)
        case Asks.YES_NO:
            return _choice(YES_NO, text) == "yes"
        case Asks.DATE:
            return _date(text)
        case Asks.WHEN:
            return _when(text)
        case Asks.SERIAL_LINE:
            return LineSettings.read(text)
        case Asks.REFRIGERANT:
            return _refrigerant(text)
        case _:
            return text


def _choice(choices: Sequence[str], text: str) -> str:
    if text in choices:
        return text
    raise ReadingRefused(
        say(
            "Expected one of: {choices}; got “{text}”.",
            choices=joined(", ", choices),
            text=text[:40],
        )
    )


def _date(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise ReadingRefused(
            say(
                "Expected a date as year-month-day, such as 2026-11-25; got “{text}”.",
                text=text[:40],
            )
        ) from None


def _when(text: str) -> datetime:
    try:
        when = datetime.fromisoformat(text)
        here = when.astimezone()  # the first and last years have no wall clock in every zone
    except (ValueError, OverflowError):
        raise ReadingRefused(
            say("Expected a date and time, such as 2026-11-25 14:30; got “{text}”.", text=text[:40])
        ) from None
    # Typed without a zone it is the wall clock of the bench.
    return when if when.tzinfo else here


def _refrigerant(text: str) -> str:
    try:
        return fluids.refrigerant(text).name
    except UnknownRefrigerant as refusal:
        raise ReadingRefused(str(refusal)) from None
