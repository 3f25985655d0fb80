"""Tables of duties: recovery, leak repair, leak checks, release, records."""

from collections.abc import Mapping
from dataclasses import dataclass

from chargebench.rules.dims import CalendarSpan, DayOfYear, Mass, Pressure, Share, Span
from chargebench.rules.figure import Day, Words


@dataclass(frozen=True, slots=True)
class RecoveryLevel:
    """One row of the table of levels to recover to before opening or disposal."""

    pressure_class: str
    measure: str  # "vacuum" below the reference, or "absolute"
    older_machine: Pressure
    newer_machine: Pressure
    charge_from: Mass | None = None
    charge_below: Mass | None = None


@dataclass(frozen=True, slots=True)
class SmallAppliance:
    """Shares to recover from a small appliance, or the vacuum that serves in every case."""

    charge_up_to: Mass
    older_machine: Share
    newer_machine_compressor_works: Share
    newer_machine_compressor_dead: Share
    vacuum: Pressure


@dataclass(frozen=True, slots=True)
class Recovery:
    """Levels of recovery."""

    machine_date: Day
    vacuum_reference: Pressure
    levels: tuple[RecoveryLevel, ...]
    small_appliance: SmallAppliance
    oil_change: Pressure
    not_major_repair: Pressure
    system_dependent_up_to: Mass


@dataclass(frozen=True, slots=True)
class Inspection:
    """How often an appliance that went over its threshold is inspected for leaks."""

    categories: tuple[str, ...]
    charge_from: Mass
    every: CalendarSpan
    until: str
    ends_after: CalendarSpan | None = None  # so long without going over


@dataclass(frozen=True, slots=True)
class Regulation:
    """One leak repair regulation: who it binds, its thresholds and its clocks."""

    key: str
    title: str
    scope: str  # "ozone-depleting" or "HFC or GWP"
    applies_from: Day
    charge_from: Mass
    thresholds: Mapping[str, Share]  # by equipment category; "other" for the rest
    repair: CalendarSpan
    repair_shutdown: CalendarSpan
    follow_up: CalendarSpan
    extension_cap: CalendarSpan
    extension_cap_shutdown: CalendarSpan
    plan: CalendarSpan
    plan_finish: CalendarSpan
    inspections: tuple[Inspection, ...]
    chronic_share: Share
    chronic_report_by: DayOfYear
    gwp_above: Share | None = None
    excludes: Words | None = None
    first_days: CalendarSpan | None = None
    detection_from: Mass | None = None
    detection_check: CalendarSpan | None = None  # of a system that stands in for inspections
    extension_after_delivery: CalendarSpan | None = None  # of parts that were waited for
    presumed_repaired: CalendarSpan | None = None  # so long without an addition
    inspected_from: str = "exceedance"  # or "follow-up": from when inspections are counted


@dataclass(frozen=True, slots=True)
class LeakRate:
    """Leak repair regulations of a jurisdiction."""

    merge_window: CalendarSpan
    seasonal_within: CalendarSpan
    regulations: tuple[Regulation, ...]

    def regulation(self, key: str) -> Regulation:
        """The regulation of that key."""
        return next(one for one in self.regulations if one.key == key)


@dataclass(frozen=True, slots=True)
class LeakCheck:
    """From which content on equipment is checked for leaks, and how often."""

    counts: str  # "CO2e" or "HFO mass"
    reaching: Mass
    every: CalendarSpan
    every_with_detection: CalendarSpan
    detection_compulsory: bool = False


@dataclass(frozen=True, slots=True)
class ServiceBan:
    """Virgin refrigerant of high GWP that may not be used for service any more."""

    use: str  # "refrigeration" or "air conditioning"
    gwp_from: Share
    since: Day
    reclaimed_until: Day | None = None


@dataclass(frozen=True, slots=True)
class Climate:
    """Leak checks by tonnes of CO2 equivalent."""

    checks: tuple[LeakCheck, ...]
    hermetic_co2e: Mass
    recheck_latest: CalendarSpan
    hermetic_hfo: Mass | None = None
    hermetic_residential: Mass | None = None
    detection_check: CalendarSpan | None = None
    recheck_earliest: Span | None = None
    service_bans: tuple[ServiceBan, ...] = ()


@dataclass(frozen=True, slots=True)
class VentingExemption:
    """A refrigerant whose release is not prohibited in some equipment."""

    refrigerants: tuple[str, ...]
    cabinets: tuple[str, ...]  # empty: any use
    uses: Words
    since: Day | None = None


@dataclass(frozen=True, slots=True)
class Venting:
    """Release to the atmosphere."""

    rule: Words
    exemptions: tuple[VentingExemption, ...] = ()


@dataclass(frozen=True, slots=True)
class Retention:
    """How long one kind of record is kept."""

    what: str
    keep: CalendarSpan


@dataclass(frozen=True, slots=True)
class Records:
    """Retention of records."""

    keep: CalendarSpan
    rows: tuple[Retention, ...] = ()
