"""A case: one job with all that its working out needs, and what a step works out to."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any

from chargebench.fluids import Refrigerant
from chargebench.rules import RuleSet
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import (
    STANDARD_ATMOSPHERE,
    Quantity,
    System,
    absolute,
    air_pressure_at,
    shown,
)


@dataclass(frozen=True, slots=True)
class Figure:
    """One worked-out figure with what it is held against and how far it is to be trusted."""

    key: str
    label: str
    value: Quantity | str
    doubt: Quantity | None = None  # expanded uncertainty, k = 2
    limit: Quantity | str | None = None
    source: str = ""  # key of sources.py, with the place in it
    mark: str = ""  # SEEN, SEEN-2, CALC or MEMORY where a rule's figure decides


@dataclass(frozen=True, slots=True)
class Cell:
    """One cell of a small table; small quantities are shown with finer places."""

    value: Quantity | str
    marked: bool = False  # a difference that matters
    why: str = ""  # the reason, on demand
    fine: bool = False


@dataclass(frozen=True, slots=True)
class Table:
    """Figures that are read beside each other; the first cell of a row says what it is of.

    Figures whose keys begin with the table's are recorded with the step, and shown in it.
    """

    key: str
    title: str
    heads: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    says: str = ""


@dataclass(frozen=True, slots=True)
class Worked:
    """What a step's answers come to: figures, sentences a person reads, the step's own result."""

    figures: tuple[Figure, ...] = ()
    sentences: tuple[str, ...] = ()
    result: Any = None
    tables: tuple[Table, ...] = ()


NOT_WORKED = Worked()


@dataclass(frozen=True, slots=True)
class Signed:
    """A signed step as the ledger holds it."""

    entry: str
    number: int
    by: str
    happened_at: datetime
    needed: bool = True
    reason: str = ""
    rule_set: str = ""  # name and edition it was judged by


@dataclass(frozen=True, slots=True)
class Case:
    """One job: its equipment and surroundings, each step's answers, signed or still typed."""

    job: str
    number: str
    state: str
    today: date
    rule_set: RuleSet
    equipment_id: str
    equipment: Answers
    site: Answers = NOTHING
    refrigerant: Refrigerant | None = None
    answers: Mapping[str, Answers] = field(default_factory=dict)
    signed: Mapping[str, Signed] = field(default_factory=dict)
    cylinders: Mapping[str, Answers] = field(default_factory=dict)
    cylinder_content_mg: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    equipment_content_mg: int = 0
    equipment_seen: bool = False  # whether the ledger has ever had a content for it
    instruments: Mapping[str, Answers] = field(default_factory=dict)
    people: Mapping[str, str] = field(default_factory=dict)
    units: System = "SI"  # what its sentences speak in

    def shown(self, quantity: Quantity, *, like: Quantity | None = None, finer: int = 0) -> str:
        """Text of a quantity in the shop's units."""
        return shown(quantity, self.units, like=like, finer=finer)

    def step(self, key: str) -> Answers:
        """A step's answers; empty where it has none."""
        return self.answers.get(key, NOTHING)

    def nameplate(self, key: str) -> Any:
        """A nameplate answer as read today, else as the equipment's register row has it."""
        value = self.step("nameplate").values.get(key)
        return self.equipment.values.get(key) if value is None else value

    def is_signed(self, key: str) -> bool:
        """Whether a step is signed as done (not as not needed)."""
        return key in self.signed and self.signed[key].needed

    def air_pressure(self, key: str) -> Quantity:
        """Air pressure for a step: its barometer reading, else from the site's elevation."""
        typed = self.step(key).reading("air_pressure")
        if typed is not None:
            return absolute(typed, STANDARD_ATMOSPHERE)
        elevation = self.site.quantity("elevation")
        return STANDARD_ATMOSPHERE if elevation is None else air_pressure_at(elevation)

    def absolute(self, step: str, key: str) -> Quantity | None:
        """Absolute pressure of a step's reading."""
        reading = self.step(step).reading(key)
        return None if reading is None else absolute(reading, self.air_pressure(step))
