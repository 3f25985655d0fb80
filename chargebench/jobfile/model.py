"""What a job file holds: everything as typed, times with their zone."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from chargebench.steps.form import Typed

VERSION = 1
REGISTERS_HELD = ("site", "equipment", "cylinder", "person", "instrument")


@dataclass(frozen=True, slots=True)
class StockAct:
    """One act of stock work that comes before the job: receive, weigh, decant, return."""

    act: str
    typed: Typed
    by: str
    happened_at: datetime


@dataclass(frozen=True, slots=True)
class StepTyped:
    """One step of the job, signed as typed, or said to be not needed.

    A step that stands a second time was done again; `again` says why, and it replaces the first.
    """

    step: str
    by: str
    happened_at: datetime
    typed: Typed = field(default_factory=dict)
    not_needed: str = ""
    again: str = ""


@dataclass(frozen=True, slots=True)
class Job:
    """One visit or repair on one equipment."""

    equipment: str
    opened_at: datetime
    by: str
    reason: str = ""
    steps: tuple[StepTyped, ...] = ()
    closed_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class JobFile:
    """One job as typed with the register rows it needs; a shop's first file has no job."""

    about: str = ""
    shop: Typed | None = None
    register: Mapping[str, Mapping[str, Typed]] = field(default_factory=dict)
    stock: tuple[StockAct, ...] = ()
    job: Job | None = None
    sha256: str = ""  # of the file's bytes as read; empty where it was not read from a file
