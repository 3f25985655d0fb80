"""What the desk hands out: plain frozen rows for screens and sheets."""

from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from typing import Literal

from chargebench.flags import Flag
from chargebench.steps import NOT_WORKED, NOTHING, Answers, Case, Worked

StepState = Literal["open", "signed", "not needed"]


@dataclass(frozen=True, slots=True)
class JobLine:
    """A job in a list."""

    id: str
    number: str
    title: str
    refrigerant: str
    charge: str
    now: str  # the step it stands at
    worst: Flag | None
    state: str
    opened_at: datetime
    key: int = 0  # of the page after this one


@dataclass(frozen=True, slots=True)
class StepView:
    """A step in a job's column."""

    key: str
    title: str
    state: StepState
    entry: str = ""
    number: int = 0
    by: str = ""
    at: datetime | None = None
    reason: str = ""


@dataclass(frozen=True, slots=True)
class TickLine:
    """A line of a tick list."""

    key: str
    text: str
    source: str = ""
    mark: str = ""


@dataclass(frozen=True, slots=True)
class JobView:
    """A job opened."""

    id: str
    number: str
    state: str
    equipment_id: str
    title: str
    headline: str
    steps: tuple[StepView, ...]
    flags: tuple[Flag, ...]
    case: Case


@dataclass(frozen=True, slots=True)
class Look:
    """What stands in a form, understood and worked out."""

    answers: Answers = NOTHING
    worked: Worked = NOT_WORKED
    flags: tuple[Flag, ...] = ()


@dataclass(frozen=True, slots=True)
class CylinderLine:
    """A cylinder in stock."""

    id: str
    refrigerant: str
    contents: str
    mass_mg: int
    limit_mg: int | None
    by: str  # which rule sets the limit
    gross_limit_mg: int | None
    refillable: bool | None
    due: date | None
    last_weighed: str
    flags: tuple[Flag, ...] = ()

    @property
    def share(self) -> float | None:
        """How full, as a share of the limit."""
        return self.mass_mg / self.limit_mg if self.limit_mg else None


@dataclass(frozen=True, slots=True)
class LeakRateLine:
    """An equipment's leak rate against its threshold."""

    equipment_id: str
    name: str
    refrigerant: str
    full_charge_mg: int
    annualizing_pct: float | None
    rolling_pct: float | None
    threshold_pct: float | None
    regulation: str
    over: bool
    added_on: date | None = None
    due: tuple[tuple[str, date], ...] = ()
    additions: tuple[tuple[date, int], ...] = ()


@dataclass(frozen=True, slots=True)
class UsageTotal:
    """A refrigerant's movements in a period, in milligrams."""

    refrigerant: str
    received_mg: int = 0
    charged_mg: int = 0
    recovered_mg: int = 0
    released_mg: int = 0  # to the atmosphere: hose losses, lawful releases, presumed lost
    returned_mg: int = 0
    difference_mg: int = 0


@dataclass(frozen=True, slots=True)
class Exported:
    """What an export left where."""

    folder: Path
    files: tuple[Path, ...] = field(default=())
