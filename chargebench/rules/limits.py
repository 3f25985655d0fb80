"""Tables of limits: flammability, cylinders, charge, vacuum and pressure tests."""

from dataclasses import dataclass

from chargebench.rules.dims import (
    CalendarSpan,
    Density,
    Length,
    Mass,
    Pressure,
    PressureRate,
    Share,
    Span,
    Temperature,
    Volume,
)
from chargebench.rules.figure import Day, Words


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
    strictly_below: bool = False  # the vacuum must be below `pull_to`, not at it


@dataclass(frozen=True, slots=True)
class Decay:
    """Working limits of the verdict on a decay test."""

    rise_offset: Pressure
    slope_base: PressureRate
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
