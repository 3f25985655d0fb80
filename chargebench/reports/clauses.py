"""Which field of a regulation stands where: resources/clauses.toml, read and told."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from chargebench.reports.table import Column, Form, Table
from chargebench.resource import resource
from chargebench.sources import name

CLAUSES = (
    Column("Clause", 44, Form.LONG),
    Column("Field asked for", 40, Form.LONG),
    Column("Typed in the form", 40, Form.LONG),
    Column("Sheet", 18),
    Column("Column", 34, Form.LONG),
    Column("Note", 60, Form.LONG),
)


@dataclass(frozen=True, slots=True)
class Clause:
    """One field of a regulation: who asks for it, where it is typed, where it is shown."""

    source: str  # key of sources.py
    place: str
    field: str
    form: str  # register.equipment.charge, step.weigh_in.lines.start, stock.return.to; or why none
    sheet: str
    column: str
    note: str = ""
    absent: str = ""  # why the sample shop has no value; empty where it has
    value: str = ""  # what the column says of this field, where it tells others too

    @property
    def clause(self) -> str:
        """Source and place, in words."""
        return name(f"{self.source}, {self.place}" if self.place else self.source)


@cache
def clauses() -> tuple[Clause, ...]:
    """Every row of the table."""
    with resource("clauses.toml").open("rb") as file:
        said: list[Mapping[str, Any]] = tomllib.load(file)["clause"]
    return tuple(Clause(**{"place": "", **row}) for row in said)


def clause_table() -> Table:
    """The table as a sheet."""
    return Table(
        "Clauses",
        "Where each field stands that a regulation asks for. It helps to find them; it is no claim "
        "that every duty is met.",
        CLAUSES,
        (
            (each.clause, each.field, each.form, each.sheet, each.column, each.note)
            for each in clauses()
        ),
    )
