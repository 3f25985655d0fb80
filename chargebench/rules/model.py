"""What a rule set holds: frozen dataclasses whose fields are the keys of the rule files."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Annotated

from chargebench.rules.figure import Day, Figure, Words

Mass = Annotated[Figure, "[mass]"]
Pressure = Annotated[Figure, "[pressure]"]
Share = Annotated[Figure, "[]"]
Span = Annotated[Figure, "[time]"]
CalendarSpan = Annotated[Figure, "[time]", "calendar"]  # whole days, months or years
Temperature = Annotated[Figure, "[temperature]"]
Length = Annotated[Figure, "[length]"]
Volume = Annotated[Figure, "[volume]"]
Density = Annotated[Figure, "[density]"]
PressureRate = Annotated[Figure, "[pressure] / [time]"]


@dataclass(frozen=True, slots=True)
class Gwp:
    """Which set of global warming potentials counts."""

    set: Words


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
    chronic_report_by: Annotated[Words, "MM-DD"]
    gwp_above: Share | None = None
    excludes: Words | None = None
    first_days: CalendarSpan | None = None
    detection_from: Mass | None = None


@dataclass(frozen=True, slots=True)
class LeakRate:
    """Leak repair regulations of a jurisdiction."""

    merge_window: CalendarSpan
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
class ChargeLimitRule:
    """One charge limit: a mass, or a multiple of the lower flammable limit, perhaps capped."""

    title: str
    cabinets: tuple[str, ...]
    classes: tuple[str, ...]
    refrigerants: tuple[str, ...] = ()  # empty: every refrigerant of these classes
    mass: Mass | None = None
    times_lfl: Volume | None = None
    cap: Mass | None = None
    made_from: Day | None = None
    made_until: Day | None = None


@dataclass(frozen=True, slots=True)
class RoomForm:
    """Constants of one edition of the charge limit by floor area."""

    key: str
    coefficient: Share
    exponent: Share
    sealed_factor: Share | None = None


@dataclass(frozen=True, slots=True)
class Heights:
    """Release heights by where the appliance stands."""

    floor: Length
    window: Length
    wall: Length
    ceiling: Length


@dataclass(frozen=True, slots=True)
class RoomMarking:
    """Minimum room size marked on an appliance above a charge."""

    charge_above: Mass
    share_of_lfl: Share
    height: Length


@dataclass(frozen=True, slots=True)
class Flammability:
    """Limits for flammable refrigerants."""

    flammable_classes: Words
    alarm_share: Share
    concentration_share: Share
    steps: tuple[Volume, ...]
    heights: Heights
    room_forms: tuple[RoomForm, ...]
    marking: RoomMarking
    limits: tuple[ChargeLimitRule, ...]

    def room_form(self, key: str) -> RoomForm:
        """The room form of that edition."""
        return next(form for form in self.room_forms if form.key == key)


@dataclass(frozen=True, slots=True)
class FillingRatio:
    """A filling density printed for a refrigerant: mass over the mass of water held."""

    refrigerant: str
    ratio: Share


@dataclass(frozen=True, slots=True)
class Requalification:
    """One interval of requalification."""

    specs: tuple[str, ...]
    method: str
    every: CalendarSpan


@dataclass(frozen=True, slots=True)
class Cylinders:
    """How far a cylinder is filled, and when not at all."""

    fill_share: Share
    fill_temperature: Temperature
    water_density: Density
    hot_temperature: Temperature
    hot_share: Share
    tare_loss: Share
    non_refillable: Words
    overdue: Words
    weighing_share: Share
    weighing_floor: Mass
    requalifications: tuple[Requalification, ...]
    filling_ratios: tuple[FillingRatio, ...] = ()


@dataclass(frozen=True, slots=True)
class ChargeTolerance:
    """Default tolerance of a charge: the larger of a mass and a share of it."""

    title: str
    classes: tuple[str, ...]  # empty: every class
    share: Share
    mass: Mass | None = None
    charge_up_to: Mass | None = None


@dataclass(frozen=True, slots=True)
class Charge:
    """Charge tolerances; the first that fits an equipment is its default."""

    tolerances: tuple[ChargeTolerance, ...]


@dataclass(frozen=True, slots=True)
class PassRule:
    """One printed rule for passing a vacuum hold."""

    key: str
    title: str
    pull_to: Pressure
    hold: Span
    fluids: tuple[str, ...]  # "halocarbon", "hydrocarbon", "ammonia", "carbon dioxide"
    rise_at_most: Pressure | None = None
    end_at_most: Pressure | None = None
    wet_up_to: Pressure | None = None
    charge_from: Mass | None = None
    charge_below: Mass | None = None


@dataclass(frozen=True, slots=True)
class Decay:
    """Working limits of the verdict on a decay test."""

    rise_rate: PressureRate
    rise_offset: Pressure
    slope_base: PressureRate
    slope_rise: Pressure
    leak_slope: PressureRate
    leak_share: Share
    firm_after: Span


@dataclass(frozen=True, slots=True)
class Evacuation:
    """Vacuum targets and pass rules."""

    target: Pressure
    not_a_tightness_test: Words
    decay: Decay
    pass_rules: tuple[PassRule, ...]


@dataclass(frozen=True, slots=True)
class PressureTest:
    """Pressure test with nitrogen."""

    hold_at_least: Span
    strength_factor: Share
    first_stage: Pressure
    half_stage: Share
    step: Share
    gas: Words
    trace_gas: Words
    not_above: Words


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
