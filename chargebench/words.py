"""Sentences that remember how they were made, so that a window can say them in another language.

What is recorded and exported stays English, as every layer but the window writes it. `say` gives
an ordinary text whose template and values are kept beside it; the window looks the template up.
"""

from collections.abc import Callable
from typing import Any, Self


class Measured(str):
    """A number with its unit, written with a decimal point."""

    __slots__ = ()


class Said(str):
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


def say(template: str, /, **values: Any) -> Said:
    """Text of a template such as `Over nameplate by {over}.`; each value is named in it."""
    return Said(template, values)


def translated(text: str, look_up: Callable[[str], str], decimal_mark: str = ".") -> str:
    """The text in another language: its template looked up, the values in it translated too."""
    if isinstance(text, Measured):
        return text.replace(".", decimal_mark)
    if not isinstance(text, Said):
        return look_up(text)
    values = {
        name: translated(value, look_up, decimal_mark) if isinstance(value, str) else value
        for name, value in text.values.items()
    }
    return look_up(text.template).format_map(values)
