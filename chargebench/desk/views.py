"""What the desk hands out: plain frozen rows for screens and sheets."""

from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Literal

from chargebench.flags import Flag
from chargebench.ledger import Entry
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
    rule_set: str = ""  # name and edition it was judged by


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
class Correction:
    """Entries that an entry corrects, and those that correct it."""

    reverses: Entry | None = None
    reversed_by: Entry | None = None
    replaces: Entry | None = None
    replaced_by: Entry | None = None


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
