"""The lines of the handling checklist that apply to a job, and which of them are ticked."""

from chargebench import rules
from chargebench.rules import ChecklistLine
from chargebench.steps.case import Case
from chargebench.steps.closing import OUT_OF_SERVICE
from chargebench.steps.recovery import RELEASED

GAUGES_AT = ("as_found", "as_left")  # a hose lets refrigerant out and may let air in
DECANTING = frozenset(
    (
        *("ventilated", "ventilated_toxic", "protection", "ignition"),
        *("recovery_cylinder", "no_mixing", "scale_ready", "left_hand_thread"),
    )
)
OPENED_BY = ("pressure_test", "recovery", "evacuation", "weigh_in")  # steps that open the circuit


def lines(case: Case, step: str = "") -> tuple[ChecklistLine, ...]:
    """Lines for the job's safety class, of one step or of all, that its circumstances ask for."""
    if case.refrigerant is None:
        return ()
    return tuple(
        line
        for line in rules.checklist(case.refrigerant.safety_class)
        if step in ("", line.step) and _applies(line.when, case)
    )


def cautions(case: Case, step: str) -> tuple[ChecklistLine, ...]:
    """What to mind at a step: its own lines; where gauges are connected, those before opening."""
    if step not in GAUGES_AT:
        return lines(case, step)
    if case.step(step).yes("tapped") is False:
        return ()
    return tuple(line for line in lines(case, "safety") if line.before_opening)


def at_stock(act: str, safety_class: str) -> tuple[ChecklistLine, ...]:
    """What to mind when refrigerant goes from one cylinder into another."""
    if act != "decant" or not safety_class:
        return ()
    return tuple(line for line in rules.checklist(safety_class) if line.key in DECANTING)


def opened(case: Case) -> bool:
    """Whether a step that opens the circuit is signed as done."""
    return any(case.is_signed(step) for step in OPENED_BY)


def _applies(when: str, case: Case) -> bool:
    how = case.step("recovery").text("how")
    match when:
        case "opened":
            return opened(case)
        case "recovered":
            return how in ("", "recovered")
        case "released":
            return how == RELEASED
        case "out of service":
            return case.step("close").text("ends") == OUT_OF_SERVICE
        case _:
            return True
