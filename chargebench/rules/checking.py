"""Tables of a rule file into frozen dataclasses, checked: the dataclass fields are the schema."""

import dataclasses
import types
from collections.abc import Mapping
from datetime import date
from decimal import Decimal
from typing import Annotated, Any, Union, get_args, get_origin, get_type_hints

import pint

from chargebench.rules.figure import MARKS, Day, Figure, Words, unit_of
from chargebench.rules.place import Place
from chargebench.sources import SOURCES, Mark
from chargebench.units import ureg
from chargebench.words import joined, say

_CITED = ("source", "place", "mark")
_CALENDAR = ("day", "month", "year")


def build(cls: type[Any], table: object, place: Place) -> Any:
    """An instance of a model dataclass from a table, or a refusal naming the key."""
    if not isinstance(table, dict):
        place.refuse("expected a table.")
    hints = get_type_hints(cls, include_extras=True)
    fields = dataclasses.fields(cls)
    for key in table:
        if key not in hints:
            (place / key).refuse(
                say("not a key here; expected one of {hints}.", hints=joined(", ", sorted(hints)))
            )
    made: dict[str, Any] = {}
    for field in fields:
        here = place / field.name
        if field.name in table:
            made[field.name] = _value(hints[field.name], table[field.name], here)
        elif field.default is dataclasses.MISSING:
            here.refuse("missing.")
    return cls(**made)


def _value(hint: Any, raw: object, place: Place) -> Any:
    extras: tuple[Any, ...] = ()
    if get_origin(hint) in (Union, types.UnionType):
        hint = next(part for part in get_args(hint) if part is not type(None))
    if get_origin(hint) is Annotated:
        hint, *rest = get_args(hint)
        extras = tuple(rest)
    if get_origin(hint) is tuple:
        return _several(get_args(hint)[0], raw, place)
    if get_origin(hint) is Mapping:
        if not isinstance(raw, dict) or not raw:
            place.refuse("expected a table of figures.")
        part = get_args(hint)[1]
        return types.MappingProxyType(
            {key: _value(part, value, place / key) for key, value in raw.items()}
        )
    if hint is Mark:
        hint = str
    if hint in (Figure, Words, Day):
        return _cited(hint, extras, raw, place)
    if isinstance(hint, type) and dataclasses.is_dataclass(hint):
        return build(hint, raw, place)
    return _plain(hint, raw, place)


def _plain(hint: Any, raw: object, place: Place) -> Any:
    names = {str: "text", bool: "true or false", date: "a date such as 2024-07-15"}
    if type(raw) is not hint or raw == "":
        place.refuse(say("expected {names}.", names=names[hint]))
    return raw


def _several(part: Any, raw: object, place: Place) -> tuple[Any, ...]:
    if not isinstance(raw, list):
        place.refuse("expected a list.")
    return tuple(_value(part, one, place / number) for number, one in enumerate(raw))


def _cited(cls: Any, extras: tuple[Any, ...], raw: object, place: Place) -> Any:
    if not isinstance(raw, dict):
        place.refuse("expected a table of value, source, place and mark.")
    known = {"value", *_CITED, "effective"} | ({"unit"} if cls is Figure else set())
    for key in raw:
        if key not in known:
            (place / key).refuse(
                say("not part of a figure; expected {known}.", known=joined(", ", sorted(known)))
            )
    for key in sorted(known):
        if key not in raw:
            (place / key).refuse("missing.")
    cited = _citation(raw, place)
    if cls is Figure:
        return _figure(cited, extras, raw, place)
    if cls is Words:
        return _words(cited, extras, raw, place)
    return Day(value=_plain(date, raw["value"], place / "value"), **cited)


def _citation(raw: dict[str, Any], place: Place) -> dict[str, Any]:
    for key in _CITED:
        if not isinstance(raw[key], str):
            (place / key).refuse("expected text.")
    if raw["source"] not in SOURCES:
        (place / "source").refuse(
            say("“{source}” is not a source in the bibliography.", source=raw["source"])
        )
    if raw["mark"] not in MARKS:
        (place / "mark").refuse(
            say("“{mark}” is not one of {marks}.", mark=raw["mark"], marks=joined(", ", MARKS))
        )
    _plain(date, raw["effective"], place / "effective")
    return {key: raw[key] for key in (*_CITED, "effective")} | {"key": place.dotted}


def _figure(
    cited: dict[str, Any], extras: tuple[Any, ...], raw: dict[str, Any], place: Place
) -> Figure:
    value, unit = raw["value"], raw["unit"]
    if isinstance(value, bool) or not isinstance(value, (int, Decimal)):
        (place / "value").refuse("expected a number.")
    value = Decimal(value)
    if not value.is_finite():
        (place / "value").refuse("expected a finite number.")
    dimension, *calendar = extras
    try:
        right = unit_of(unit).dimensionality == ureg.get_dimensionality(_dimension(dimension))
    except (pint.PintError, AttributeError, TypeError, ValueError):
        (place / "unit").refuse(say("“{unit}” is not a unit known here.", unit=unit))
    if not right:
        (place / "unit").refuse(
            say("“{unit}” is not a unit of {dimension}.", unit=unit, dimension=dimension)
        )
    if calendar and (unit not in _CALENDAR or value != int(value) or value < 0):
        place.refuse("expected a whole number of day, month or year.")
    return Figure(value=value, unit=unit, **cited)


def _dimension(text: str) -> Any:
    return ureg.UnitsContainer() if text == "[]" else text


def _words(
    cited: dict[str, Any], extras: tuple[Any, ...], raw: dict[str, Any], place: Place
) -> Words:
    value = _plain(str, raw["value"], place / "value")
    if "MM-DD" in extras:
        try:
            date.fromisoformat(f"2000-{value}")
        except ValueError:
            (place / "value").refuse(
                say("“{value}” is not a day of the year such as 03-01.", value=value)
            )
    return Words(value=value, **cited)
