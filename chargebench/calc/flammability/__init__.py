"""Flammable refrigerant: charge limits, what a leak would do to a room, floor areas."""

from chargebench.calc.flammability.limits import (
    ChargeLimit,
    charge_limit,
    charge_steps,
    is_flammable,
)
from chargebench.calc.flammability.rooms import (
    alarm_concentration,
    concentration_if_leaked,
    marked_floor_area,
    max_charge_for_area,
    max_charge_for_volume,
    minimum_floor_area,
    share_of_lfl,
)

__all__ = [
    "ChargeLimit",
    "alarm_concentration",
    "charge_limit",
    "charge_steps",
    "concentration_if_leaked",
    "is_flammable",
    "marked_floor_area",
    "max_charge_for_area",
    "max_charge_for_volume",
    "minimum_floor_area",
    "share_of_lfl",
]
