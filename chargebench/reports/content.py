"""What a report says, as plain frozen data that the desk fills and every kind of file prints."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime

from chargebench.flags import Flag
from chargebench.ledger import Entry
from chargebench.reports.dated import DueLine, LeakRateLine, RetentionLine
from chargebench.reports.records import ChangeRecord, StockRecord
from chargebench.reports.selection import ALL, Selection
from chargebench.reports.unaccounted import UnaccountedLine
from chargebench.rules import ChecklistLine, RuleSet
from chargebench.steps import NOT_WORKED, Answers, Case, Figure, Typed, Worked


@dataclass(frozen=True, slots=True)
class StepRecord:
    """One step of a job as the ledger has it: signed, set aside, or signed and later reversed."""

    step: str
    number: int  # of the entry
    by: str
    at: datetime
    answers: Answers
    typed: Typed = field(default_factory=dict)
    worked: Worked = NOT_WORKED
    not_needed: str = ""  # the reason
    reversed: str = ""  # why it no longer counts
    entry: str = ""  # its id
    bench: str = ""


@dataclass(frozen=True, slots=True)
class Tick:
    """A line of the handling checklist and who ticked it when; no one yet if `by` is empty."""

    line: ChecklistLine
    by: str = ""
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class JobRecord:
    """One job with all its steps."""

    case: Case
    title: str
    opened_at: datetime
    steps: tuple[StepRecord, ...]
    closed_at: datetime | None = None
    reason: str = ""
    by: str = ""
    flags: tuple[Flag, ...] = ()
    checklist: tuple[Tick, ...] = ()
    limits: tuple[Figure, ...] = ()  # charge, room and flammability limits for this job

    def set_aside(self, step: str) -> str:
        """Why a step was not needed; empty where it was, or is still to be done."""
        signed = self.case.signed.get(step)
        return signed.reason or "not needed" if signed is not None and not signed.needed else ""

    def of(self, step: str) -> Iterator[StepRecord]:
        """Records of one step that were done, reversed ones included."""
        return (each for each in self.steps if each.step == step and not each.not_needed)

    def counts(self, step: str) -> StepRecord | None:
        """The record of a step that stands, if it was done."""
        return next((each for each in self.of(step) if not each.reversed), None)


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
class BalanceRecord:
    """What a place held of a refrigerant at the period's two ends."""

    place: str
    refrigerant: str
    opening_mg: int
    closing_mg: int
    outside_mg: int = 0  # what moved in the period by entries that are not shown, net


def _no_stock() -> Iterator[StockRecord]:
    return iter(())


@dataclass(frozen=True, slots=True)
class AuditContent:
    """All that leaves in an audit workbook and its checklist.

    `entries` and `stock` are called afresh for each pass over the period, so a long ledger is never
    held in memory. `made_at` is for what stands beside the tables (manifest, calendar); the tables
    say `today`, the day that their states were worked out for, so that they come again the same.
    """

    program: str  # name and version
    made_at: datetime
    today: date
    since: date | None
    until: date | None  # the last day that belongs to the period
    rule_set: RuleSet
    entries: Callable[[], Iterator[Entry]]
    entry_count: int
    chain_head: tuple[int, str]  # of the bench that exports
    registers: Mapping[str, Mapping[str, Mapping[str, str]]]  # every register but shop, as typed
    chain_heads: Mapping[str, tuple[int, str]] = field(default_factory=dict)  # of every bench
    shop: Mapping[str, str] = field(default_factory=dict)
    jobs: tuple[JobRecord, ...] = ()
    job_numbers: Mapping[str, str] = field(default_factory=dict)  # job id -> B-0142
    balances: tuple[BalanceRecord, ...] = ()
    cylinders: tuple[CylinderLine, ...] = ()
    leak_rates: tuple[LeakRateLine, ...] = ()
    due: tuple[DueLine, ...] = ()
    retention: tuple[RetentionLine, ...] = ()
    unaccounted: tuple[UnaccountedLine, ...] = ()
    flags: tuple[Flag, ...] = ()  # all that stand, those of jobs among them
    selection: Selection = ALL
    names: Mapping[str, str] = field(default_factory=dict)  # place -> what its thing goes by
    stock: Callable[[], Iterator[StockRecord]] = _no_stock
    changes: tuple[ChangeRecord, ...] = ()
    registered: Mapping[str, int] = field(default_factory=dict)  # equipment:E-001 -> its entry
    judged_by: tuple[str, ...] = ()  # rule sets that steps of the jobs were judged by
    last_recorded: datetime | None = None  # when the chain's last entry was recorded
    verification: tuple[str, ...] = ()

    @property
    def period(self) -> str:
        """The period in words."""
        if self.since is None and self.until is None:
            return "all entries"
        since = self.since.isoformat() if self.since else "the first entry"
        until = self.until.isoformat() if self.until else "the last entry"
        return f"{since} to {until}"

    def person(self, key: str) -> str:
        """A person's name."""
        return self.registers.get("person", {}).get(key, {}).get("name", key)

    def row(self, register: str, key: str) -> Mapping[str, str]:
        """A register row as typed; empty where there is none."""
        return self.registers.get(register, {}).get(key, {})
