"""Flags of one step as it stands typed or signed."""

from collections.abc import Callable, Mapping

from chargebench.flags.charging import of_nameplate, of_readings, of_weigh_in
from chargebench.flags.circuit import (
    of_evacuation,
    of_leak_search,
    of_pressure_test,
    of_recovery,
)
from chargebench.flags.flag import Flag
from chargebench.steps import Case, Worked

_OF: Mapping[str, Callable[[Case, Worked], list[Flag]]] = {
    "nameplate": of_nameplate,
    "as_found": lambda case, _: of_readings(case, "as_found"),
    "leak_search": of_leak_search,
    "pressure_test": of_pressure_test,
    "recovery": of_recovery,
    "evacuation": of_evacuation,
    "weigh_in": of_weigh_in,
    "as_left": lambda case, _: of_readings(case, "as_left"),
}


def of_step(case: Case, step: str, worked: Worked) -> tuple[Flag, ...]:
    """Flags a step raises by itself."""
    return tuple(_OF[step](case, worked)) if step in _OF else ()
