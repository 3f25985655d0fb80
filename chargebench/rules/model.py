"""A rule set: frozen dataclasses whose fields are the keys of the rule files."""

from dataclasses import dataclass
from datetime import date

from chargebench.rules.duties import Climate, LeakRate, Records, Recovery, Venting
from chargebench.rules.figure import Words
from chargebench.rules.limits import (
    Charge,
    Cylinders,
    Evacuation,
    Flammability,
    PressureTest,
)


@dataclass(frozen=True, slots=True)
class Gwp:
    """Which set of global warming potentials counts."""

    set: Words


@dataclass(frozen=True, slots=True)
class RuleSet:
    """A dated table of limits and duties of one jurisdiction, as data with sources."""

    name: str
    title: str
    jurisdiction: str
    edition: str
    effective: date
    gwp: Gwp
    flammability: Flammability
    cylinder: Cylinders
    charge: Charge
    evacuation: Evacuation
    pressure_test: PressureTest
    venting: Venting
    records: Records
    recovery: Recovery | None = None
    leak_rate: LeakRate | None = None
    climate: Climate | None = None

    @property
    def called(self) -> str:
        """Name and edition, as a verdict says by which rules it was reached."""
        return f"{self.name} {self.edition}"
