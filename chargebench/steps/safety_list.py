"""The lines of the handling checklist that apply to a job, and which of them are ticked."""

from chargebench import rules
from chargebench.rules import ChecklistLine
from chargebench.steps.case import Case
from chargebench.steps.closing import OUT_OF_SERVICE
from chargebench.steps.recovery import RELEASED

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
