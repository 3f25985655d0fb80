"""The shape of a job file's values: objects, lists, text, times; a form's typed text."""

import difflib
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from chargebench.jobfile.text import odd_character, twice
from chargebench.steps.form import (
    LINES_MOST,
    TEXT_LONGEST,
    TICK_FIELDS,
    Asks,
    Field,
    Form,
    Typed,
    answer,
)
from chargebench.words import say

ID_LONGEST = 40


@dataclass(slots=True)
class Place:
    """Where in the file the reader is, and the problems found so far."""

    path: str = ""
    problems: list[str] = field(default_factory=list)

    def at(self, key: str | int) -> "Place":
        """A place inside this one."""
        inside = f"[{key}]" if isinstance(key, int) else f".{key}" if self.path else key
        return Place(self.path + inside, self.problems)

    def refuse(self, sentence: str, /, **values: object) -> None:
        """Note a problem here, as a text or a template with its values."""
        what = say(sentence, **values) if values else sentence
        self.problems.append(say("{place}: {what}", place=self.path or "file", what=what))


def typed_text(value: Any, form: Form, place: Place) -> Typed | None:
    """Typed text of a form: shape first, then each field as the form reads it."""
    before = len(place.problems)
    shaped = _shape(value, form.fields, place)
    if shaped is None or len(place.problems) > before:
        return None
    answers = answer(form, shaped)
    for path, sentence in answers.refusals.items():
        place.at(path).refuse(sentence)
    for path, label in answers.missing.items():
        place.at(path).refuse("Expected {label}; nothing is there.", label=label)
    return shaped


def _shape(value: Any, fields: Sequence[Field], place: Place) -> dict[str, Any] | None:
    by_key = {each.key: each for each in fields}
    if not known_keys(value, tuple(by_key), (), place):
        return None
    return {key: _given(given, by_key[key], place.at(key)) for key, given in value.items()}


def _given(value: Any, each: Field, place: Place) -> Any:
    if each.asks not in (Asks.LINES, Asks.TICKS):
        return a_text(value, place, TEXT_LONGEST, such_as=each.example)
    inner = TICK_FIELDS if each.asks is Asks.TICKS else each.fields
    lines = a_list(value, place, LINES_MOST)
    return [_shape(line, inner, place.at(at)) or {} for at, line in enumerate(lines)]


def known_keys(value: Any, known: Sequence[str], needed: Sequence[str], place: Place) -> bool:
    """Whether a value is an object of known keys with the needed ones; notes what is not."""
    if not isinstance(value, dict):
        place.refuse("Expected an object {{...}}; got {named}.", named=named(value))
        return False
    if twice(value):
        place.refuse("“{twice}” stands twice.", twice=twice(value)[:ID_LONGEST])
        return False
    unknown = [key for key in value if key not in known]
    for key in unknown:
        near = difflib.get_close_matches(key, known, n=1)
        hint = (
            say("; did you mean “{near}”?", near=near[0])
            if near
            else say("; known are: {known}.", known=", ".join(known))
        )
        place.refuse("Unknown field “{key}”{hint}", key=key[:ID_LONGEST], hint=hint)
    missing = [key for key in needed if key not in value]
    for key in missing:
        place.at(key).refuse("Expected this field; it is missing.")
    return not unknown and not missing


def an_object(value: Any, place: Place) -> dict[str, Any]:
    """An object with keys of its own choice; empty with the problem noted."""
    return (
        value
        if known_keys(value, tuple(value) if isinstance(value, dict) else (), (), place)
        else {}
    )


def a_list(value: Any, place: Place, most: int) -> list[Any]:
    """A list of at most so many items; empty with the problem noted."""
    if not isinstance(value, list):
        place.refuse("Expected a list [...]; got {named}.", named=named(value))
        return []
    if len(value) > most:
        place.refuse("Expected at most {most} lines; got {count}.", most=most, count=len(value))
        return []
    return value


def a_text(value: Any, place: Place, longest: int, *, such_as: str = "") -> str:
    """Text that can be seen; empty with the problem noted."""
    if not isinstance(value, str):
        example = say(", such as “{such_as}”", such_as=such_as) if such_as else ""
        place.refuse(
            "Expected text in quotes{example}; got {named}.", example=example, named=named(value)
        )
        return ""
    if len(value) > longest:
        place.refuse(
            "Expected at most {longest} characters; got {count}.", longest=longest, count=len(value)
        )
        return ""
    odd = odd_character(value)
    if odd:
        place.refuse("Expected text that can be seen; it holds the character {odd}.", odd=odd)
        return ""
    return value


def named(value: Any) -> str:
    """What a JSON value is, as a refusal names it."""
    match value:
        case None:
            return "null"
        case bool():
            return "true" if value else "false"
        case int() | float():
            return say("the number {value:g}", value=value)
        case str():
            return "text"
        case list():
            return "a list"
        case _:
            return "an object"


def a_time(value: Any, place: Place) -> datetime | None:
    """A time with its zone; None with the problem noted."""
    try:
        when = datetime.fromisoformat(value)
    except (TypeError, ValueError):
        when = None
    if when is None or when.tzinfo is None:
        got = f"“{value[:ID_LONGEST]}”" if isinstance(value, str) else named(value)
        place.refuse(
            "Expected a date and time with its zone, such as 2026-03-04T08:10-05:00; got {got}.",
            got=got,
        )
        return None
    return when
