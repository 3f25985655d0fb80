"""Which module works out which step."""

from collections.abc import Callable, Mapping
from functools import partial

from chargebench.ledger import Transfer
from chargebench.steps import (
    closing,
    evacuation,
    losing,
    maker,
    nameplate,
    pressure_test,
    recovery,
    running,
    searching,
    weigh_in,
    weigh_line,
    weigh_moves,
)
from chargebench.steps.case import NOT_WORKED, Case, Worked

_WORK_OUT: Mapping[str, Callable[[Case], Worked]] = {
    "nameplate": nameplate.work_out,
    "as_found": partial(running.work_out, step="as_found"),
    "leak_search": searching.work_out,
    "pressure_test": pressure_test.work_out,
    "recovery": recovery.work_out,
    "evacuation": evacuation.work_out,
    "weigh_in": weigh_in.work_out,
    "as_left": partial(running.work_out, step="as_left"),
    "follow_up": losing.work_out,
}
_MOVEMENTS: Mapping[str, Callable[[Case], tuple[Transfer, ...]]] = {
    "nameplate": nameplate.movements,
    "recovery": recovery.movements,
    "evacuation": evacuation.movements,
    "weigh_in": weigh_moves.movements,
    "close": closing.movements,
}
_REFUSALS: Mapping[str, Callable[[Case], dict[str, str]]] = {
    "nameplate": nameplate.refusals,
    "pressure_test": pressure_test.refusals,
    "recovery": recovery.refusals,
    "evacuation": evacuation.refusals,
    "weigh_in": weigh_line.refusals,
    "support": maker.refusals,
}

components = searching.components


def work_out(case: Case, step: str) -> Worked:
    """What a step's answers come to; nothing for a step that only records words."""
    return _WORK_OUT[step](case) if step in _WORK_OUT else NOT_WORKED


def movements(case: Case, step: str) -> tuple[Transfer, ...]:
    """Mass lines that signing a step records."""
    return _MOVEMENTS[step](case) if step in _MOVEMENTS else ()


def refusals(case: Case, step: str) -> dict[str, str]:
    """What a step is refused for, by field path, beside wrong and missing fields."""
    return _REFUSALS[step](case) if step in _REFUSALS else {}


def overdraw_allowed_mg(case: Case, step: str) -> dict[str, int]:
    """How far below zero a step may take each cylinder."""
    return weigh_moves.overdraw_allowed_mg(case) if step == "weigh_in" else {}
