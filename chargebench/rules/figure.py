"""A cited figure: a value with its unit, source, place in it, mark and the day it took effect."""

import functools
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Any, get_args

from chargebench.sources import Mark, cite
from chargebench.units import Q, Quantity, ureg
from chargebench.words import say

MARKS: tuple[str, ...] = get_args(Mark)


@functools.cache
def unit_of(text: str) -> Any:
    """The pint unit written in a rule file; pint's own errors pass through."""
    return ureg.Unit(text)


@dataclass(frozen=True, slots=True)
class Cited:
    """Where a rule's content comes from and how far it was checked."""

    source: str
    place: str
    mark: Mark
    effective: date
    key: str

    @property
    def unverified(self) -> bool:
        """Whether the figure is recalled and was not checked against its source."""
        return self.mark == "MEMORY"

    @property
    def reference(self) -> str:
        """Source, place and mark as a screen or sheet prints them."""
        place = say(", {place}", place=self.place) if self.place else ""
        mark = "unverified" if self.unverified else self.mark
        return say("{cite}{place} [{mark}]", cite=cite(self.source), place=place, mark=mark)


@dataclass(frozen=True, slots=True)
class Figure(Cited):
    """A number with its unit."""

    value: Decimal
    unit: str

    @property
    def quantity(self) -> Quantity:
        """The figure as a pint quantity."""
        return Q(float(self.value), unit_of(self.unit))

    @property
    def text(self) -> str:
        """The figure as written in its rule file."""
        unit = "" if self.unit == "dimensionless" else self.unit
        return f"{self.value} {unit}".strip()


@dataclass(frozen=True, slots=True)
class Words(Cited):
    """A rule that is a word or a sentence."""

    value: str

    @property
    def text(self) -> str:
        """The words themselves."""
        return self.value


@dataclass(frozen=True, slots=True)
class Day(Cited):
    """A date on which a rule turns."""

    value: date

    @property
    def text(self) -> str:
        """The day in ISO form."""
        return self.value.isoformat()
