"""Leak search: how much was searched, whether it counts, and could it have seen the loss."""

from dataclasses import dataclass

from chargebench.calc import leak_search
from chargebench.calc.leak_search import Coverage, DetectorCheck, EquipmentKind
from chargebench.errors import ChargebenchError
from chargebench.steps import losing
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.words import say

_KINDS = {
    "split system": EquipmentKind.SPLIT,
    "walk-in or remote condensing": EquipmentKind.RACK,
    "rack or chiller": EquipmentKind.RACK,
}


@dataclass(frozen=True, slots=True)
class Searched:
    """A leak search judged."""

    coverage: Coverage
    check: DetectorCheck
    leaks: int
    unverified: int  # leaks whose repair is not verified tight


def kind(case: Case) -> EquipmentKind:
    """Which list of places this equipment has."""
    return _KINDS.get(case.equipment.text("cabinet"), EquipmentKind.CABINET)


def work_out(case: Case) -> Worked:
    """Coverage, the detector's checks, advice, and what a missing mass says."""
    answers = case.step("leak_search")
    if not answers.values.get("method"):
        return NOT_WORKED
    coverage = leak_search.coverage(kind(case), answers.ticked("components"))
    check = leak_search.detector_check(
        before=answers.yes("checked_before"), after=answers.yes("checked_after")
    )
    leaks = answers.lines("leaks")
    result = Searched(
        coverage, check, len(leaks), sum(line.yes("verified") is not True for line in leaks)
    )
    done, listed = len(coverage.done), len(coverage.done) + len(coverage.left)
    figures = (
        Figure("coverage", "Places searched", say("{done} of {listed}", done=done, listed=listed)),
        Figure("detector", "A search without a find", str(check.word)),
        Figure("leaks", "Leaks found", str(len(leaks))),
    )
    lost = losing.work_out(case)
    return Worked(
        (*figures, *lost.figures),
        (coverage.sentence, *_advice(case), *lost.sentences),
        result,
        lost.tables,
    )


def _advice(case: Case) -> tuple[str, ...]:
    if case.refrigerant is None:
        return ()
    answers = case.step("leak_search")
    try:
        pressure = case.absolute("leak_search", "system_pressure")
    except ChargebenchError as refusal:
        return (str(refusal),)
    found = leak_search.advice(
        molar_mass=case.refrigerant.molar_mass,
        system_pressure=pressure,
        air_pressure=case.air_pressure("leak_search"),
        wind=answers.text("wind") in ("draught", "windy"),
        system=case.units,
    )
    return tuple(say("{advice} {reason}", advice=each.advice, reason=each.reason) for each in found)


def components(case: Case) -> tuple[tuple[str, str], ...]:
    """Key and name of the places to search, with what to mind at each."""
    return tuple(
        (each.key, say("{label} ({hint})", label=each.label, hint=each.hint))
        for each in leak_search.components(kind(case))
    )
