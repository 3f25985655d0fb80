"""Calculations as calls with quantities by kind, for what holds of them all."""

import dataclasses
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from functools import partial
from typing import Any

import pint

from chargebench import rules
from chargebench.calc import (
    charge,
    climate,
    cylinder,
    flammability,
    hose,
    leak_flow,
    leak_rate,
    loss,
    pressure_test,
    readings,
    recovery,
    scale,
    tolerance,
)
from chargebench.units import Q, Quantity

# Of each kind the first unit is that in which values are drawn.
UNITS = {
    "mass": ("g", "kg", "mg", "lb", "oz", "t"),
    "pressure": ("Pa", "kPa", "bar", "psi", "inHg", "micron_Hg"),
    "temperature": ("kelvin", "degC", "degF"),
    "difference": ("delta_degC", "delta_degF"),
    "volume": ("L", "mL", "m**3", "ft**3"),
    "density": ("kg/m**3", "g/L", "lb/ft**3"),
    "length": ("m", "mm", "ft", "inch"),
    "area": ("m**2", "ft**2"),
    "time": ("s", "min", "hour", "day"),
    "flow": ("Pa * m**3 / s", "mbar * L / s"),
    "molar mass": ("g/mol", "kg/mol"),
    "share": ("percent", ""),
    "loss": ("g/year", "oz/day"),
}
RULES = rules.load("us-federal")


@dataclass(frozen=True)
class Call:
    """A calculation and the kind of each quantity it takes."""

    name: str
    function: Callable[..., Any] = field(repr=False)
    takes: Mapping[str, str]

    def __str__(self) -> str:
        return self.name

    def of(self, values: Mapping[str, float], units: Mapping[str, str]) -> Any:
        """What it gives for values in the first unit of their kind, typed in other units."""
        given: dict[str, Quantity] = {
            name: Q(values[name], UNITS[kind][0]).to(units[name])
            for name, kind in self.takes.items()
        }
        return self.function(**given)


def _state(pressure: Quantity, temperature: Quantity) -> pressure_test.State:
    return pressure_test.State(pressure, temperature)


def _drop(start: Quantity, begun: Quantity, end: Quantity, ended: Quantity, **more: Any) -> Any:
    return pressure_test.judge(start=_state(start, begun), end=_state(end, ended), **more)


def _other_gas(leak: Quantity, inside: Quantity, in_use: Quantity, molar: Quantity) -> Any:
    outside = Q(101_325, "Pa")
    nitrogen = leak_flow.Gas(Q(28, "g/mol"), inside, outside)
    refrigerant = leak_flow.Gas(molar, in_use, outside)
    return leak_flow.as_refrigerant(
        leak=leak, test_gas=nitrogen, refrigerant=refrigerant, temperature=Q(20, "degC")
    )


def _room(function: Callable[..., Any]) -> Callable[..., Any]:
    return partial(function, form=RULES.flammability.room_forms[0])


def _flammable(function: Callable[..., Any]) -> Callable[..., Any]:
    return partial(function, rule=RULES.flammability)


def _filled(function: Callable[..., Any]) -> Callable[..., Any]:
    return partial(function, rule=RULES.cylinder)


_ZEROED: Any = {"arrangement": charge.Arrangement.ZEROED}
_DAYS: Any = {"last_full": date(2024, 3, 1), "on": date(2026, 3, 1)}
_A3: Any = {"safety_class": "A3", "rule": RULES.charge}


def _call(name: str, function: Callable[..., Any], **takes: str) -> Call:
    return Call(name, function, takes)


CALLS = (
    _call("to_charge", charge.to_charge, nameplate="mass", opening_content="mass"),
    _call(
        "stop_reading",
        partial(charge.stop_reading, **_ZEROED),
        start="mass", target="mass", hose="mass", hose_at_start="mass",
    ),
    _call("hose_volume", hose.hose_volume, length="length", bore="length"),
    _call("hose_content", hose.hose_content, volume="volume", density="density"),
    _call("share_of_charge", hose.share_of_charge, hose="mass", nameplate="mass"),
    _call("net_uncertainty", scale.net_uncertainty, resolution="mass", repeatability="mass"),
    _call(
        "charge_budget",
        scale.charge_budget,
        resolution="mass", repeatability="mass", gain="share", net="mass", hose_half_width="mass",
    ),
    _call(
        "average_loss",
        partial(loss.average_loss, **_DAYS),
        nameplate="mass", recovered="mass", uncertainty="mass", left_behind="mass",
    ),
    _call("missing", recovery.missing, nameplate="mass", recovered="mass"),
    _call(
        "smallest_leak",
        leak_flow.smallest_leak,
        expanded_uncertainty="pressure", volume="volume", time="time",
    ),
    _call(
        "time_needed",
        leak_flow.time_needed,
        expanded_uncertainty="pressure", volume="volume", leak="flow",
    ),
    _call(
        "mass_rate",
        leak_flow.mass_rate,
        leak="flow", molar_mass="molar mass", temperature="temperature",
    ),
    _call(
        "as_refrigerant",
        _other_gas,
        leak="flow", inside="pressure", in_use="pressure", molar="molar mass",
    ),
    _call(
        "pressure_test",
        _drop,
        start="pressure", begun="temperature", end="pressure", ended="temperature",
        gauge_resolution="pressure", thermometer="difference", other_gauge="pressure",
        volume="volume", time="time",
    ),
    _call(
        "compression_ratio",
        readings.compression_ratio,
        suction_pressure="pressure", discharge_pressure="pressure",
    ),
    _call(
        "surface_differences",
        readings.surface_differences,
        evaporator_middle="temperature", suction_line="temperature", liquid_line="temperature",
        air_on_evaporator="temperature", condenser_middle="temperature", ambient="temperature",
    ),
    _call(
        "fill_limit",
        _filled(cylinder.fill_limit),
        water_capacity="volume", refrigerant_liquid_density_25C="density",
        liquid_density_hot="density",
    ),
    _call("tare_loss", _filled(cylinder.tare_loss), stamped="mass", found="mass"),
    _call("weighing_tolerance", _filled(cylinder.weighing_tolerance), gross="mass"),
    _call("charge_tolerance", partial(tolerance.charge_tolerance, **_A3), nameplate="mass"),
    _call("tonnes_co2e", partial(climate.tonnes_co2e, gwp=1430), mass="mass"),
    _call(
        "concentration_if_leaked",
        flammability.concentration_if_leaked,
        charge="mass", room_volume="volume",
    ),
    _call("share_of_lfl", flammability.share_of_lfl, concentration="density", lfl="density"),
    _call("alarm_concentration", _flammable(flammability.alarm_concentration), lfl="density"),
    _call(
        "max_charge_for_volume",
        _flammable(flammability.max_charge_for_volume),
        lfl="density", room_volume="volume",
    ),
    _call(
        "max_charge_for_area",
        _room(flammability.max_charge_for_area),
        lfl="density", floor_area="area", height="length",
    ),
    _call(
        "minimum_floor_area",
        _room(flammability.minimum_floor_area),
        charge="mass", lfl="density", height="length",
    ),
    _call(
        "marked_floor_area",
        _flammable(flammability.marked_floor_area),
        charge="mass", lfl="density",
    ),
    _call("charge_steps", _flammable(flammability.charge_steps), lfl="density"),
    _call("annualizing", partial(leak_rate.annualizing, days=30), added="mass", full_charge="mass"),
    _call(
        "beyond_seasonal_variance",
        leak_rate.beyond_seasonal_variance,
        removed="mass", added_back="mass",
    ),
)  # fmt: skip


def numbers(result: Any) -> Iterator[float]:
    """Every number of a result, in base units."""
    if isinstance(result, pint.Quantity):
        yield float(result.to_base_units().magnitude)
    elif isinstance(result, tuple):
        for one in result:
            yield from numbers(one)
    elif dataclasses.is_dataclass(result) and not isinstance(result, rules.Cited):
        for field in dataclasses.fields(result):
            yield from numbers(getattr(result, field.name))
    elif isinstance(result, float):
        yield result
