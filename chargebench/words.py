"""Sentences that remember how they were made, so that a window can say them in another language.

What is recorded and exported stays English, as every layer but the window writes it. `say` gives
an ordinary text whose template and values are kept beside it; the window looks the template up.
"""

from collections.abc import Callable, Iterable
from decimal import Decimal
from typing import Any, Self


class _Kept(str):
    """A text that forgets nothing by `str` and `+`."""

    __slots__ = ()

    def __str__(self) -> str:
        return self

    def __add__(self, more: str) -> str:
        return Joined("", (self, more))

    def __radd__(self, before: str) -> str:
        return Joined("", (before, self))


class Measured(_Kept):
    """A number with its unit, written with a decimal point."""

    __slots__ = ()


class Said(_Kept):
    """A text made of a template and values; equal to, and stored as, its English wording."""

    __slots__ = ("template", "values")
    template: str
    values: dict[str, Any]

    def __new__(cls, template: str, values: dict[str, Any]) -> Self:
        """Fill the template in."""
        made = super().__new__(cls, template.format_map(values))
        made.template = template
        made.values = values
        return made

    def __reduce__(self) -> tuple[type[Self], tuple[str, dict[str, Any]]]:
        return type(self), (self.template, self.values)


class Joined(_Kept):
    """Several texts in a row, each of which is translated for itself."""

    __slots__ = ("parts", "separator")
    separator: str
    parts: tuple[str, ...]

    def __new__(cls, separator: str, parts: tuple[str, ...]) -> Self:
        """Join the parts."""
        made = super().__new__(cls, separator.join(parts))
        made.separator = separator
        made.parts = parts
        return made

    def __reduce__(self) -> tuple[type[Self], tuple[str, tuple[str, ...]]]:
        return type(self), (self.separator, self.parts)


class _Marked:
    """A number that is written with the decimal mark of a language."""

    def __init__(self, value: float | Decimal, decimal_mark: str) -> None:
        self._value = value
        self._mark = decimal_mark

    def __format__(self, spec: str) -> str:
        return format(self._value, spec).replace(".", self._mark)


def say(template: str, /, **values: Any) -> str:
    """Text of a template such as `Over nameplate by {over}.`; each value is named in it."""
    return Said(template, values)


def joined(separator: str, parts: Iterable[str]) -> str:
    """Texts in a row; unlike `str.join` it keeps what each needs to be translated."""
    return Joined(separator, tuple(parts))


def translated(text: str, look_up: Callable[[str], str], decimal_mark: str = ".") -> str:
    """The text in another language: its template looked up, the values in it translated too."""
    if isinstance(text, Measured):
        return text.replace(".", decimal_mark)
    if isinstance(text, Joined):
        between = look_up(text.separator)
        return between.join(translated(each, look_up, decimal_mark) for each in text.parts)
    if not isinstance(text, Said):
        return look_up(text)
    values = {name: _value(value, look_up, decimal_mark) for name, value in text.values.items()}
    return look_up(text.template).format_map(values)


def _value(value: Any, look_up: Callable[[str], str], decimal_mark: str) -> Any:
    if isinstance(value, str):
        return translated(value, look_up, decimal_mark)
    if isinstance(value, float | Decimal):
        return _Marked(value, decimal_mark)
    return value
