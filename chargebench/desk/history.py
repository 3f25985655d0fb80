"""What a shop recorded of one equipment that its leak rate and its duties rest on."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from chargebench.calc.climate import Recheck
from chargebench.calc.duty import Done
from chargebench.calc.leak_rate import Addition, Extension, Paper, Removal, VerificationTest
from chargebench.desk.cases import fold_steps
from chargebench.ledger import Entry
from chargebench.steps import STEPS, Answers, Signed, answer
from chargebench.steps.forms.verifying import TIGHT
from chargebench.units import from_mg

# Of each step only what is asked here is understood: readings cost time, and there are many jobs.
_ASKED = {
    step: replace(
        STEPS[step], fields=tuple(field for field in STEPS[step].fields if field.key in keys)
    )
    for step, keys in {
        "leak_search": ("all_accessible", "leaks", "tests", "shutdown"),
        "recovery": ("seasonal",),
        "weigh_in": ("not_counted",),
        "follow_up": ("normal_running", "tests", "extensions", "papers"),
    }.items()
}


@dataclass(slots=True)
class History:
    """Additions to an equipment, and what was done about its leaks, each with its entry."""

    additions: list[Addition] = field(default_factory=list)
    removals: list[Removal] = field(default_factory=list)
    tests: list[VerificationTest] = field(default_factory=list)
    rechecks: list[Recheck] = field(default_factory=list)
    searches: list[Done] = field(default_factory=list)  # of all accessible parts
    repairs: list[Done] = field(default_factory=list)
    shutdowns: list[date] = field(default_factory=list)
    extensions: list[Extension] = field(default_factory=list)
    papers: list[Paper] = field(default_factory=list)
    normal_running: list[date] = field(default_factory=list)
    first: Done | None = None  # the job from which the shop knows the equipment


def history(equipment: str, jobs: Iterable[Sequence[Entry]]) -> History:
    """Fold the entries of an equipment's jobs, oldest job first."""
    found = History()
    for entries in jobs:
        if found.first is None and entries:
            found.first = Done(entries[0].happened_at.date(), entries[0].number)
        signed, typed = fold_steps(entries)
        answers = {key: answer(form, typed[key]) for key, form in _ASKED.items() if key in typed}
        _added(found, equipment, entries, answers)
        if "leak_search" in answers:
            _searched(found, answers["leak_search"], signed["leak_search"])
        if "follow_up" in answers:
            _followed_up(found, answers["follow_up"], signed["follow_up"])
    return found


def _added(
    found: History, equipment: str, entries: Sequence[Entry], answers: Mapping[str, Answers]
) -> None:
    """What a job put into its equipment beyond what it took out of it.

    Recovering or lawfully releasing and putting the same back is no leak; what goes in beyond
    that brings the equipment back to full charge (40 CFR 82.152).
    """
    place = f"equipment:{equipment}"
    undone = {each.payload["reverses"] for each in entries if each.kind == "reversal"}
    net_mg, removed_mg, numbers, removals = 0, 0, [], []
    on: date | None = None
    for entry in entries:
        if entry.kind != "step-signed" or entry.id in undone:
            continue
        step = entry.payload["step"]
        for line in entry.transfers:
            if line.target == place and line.source.startswith("cylinder:"):
                net_mg += line.mass_mg
                day = entry.happened_at.date()
                on = day if on is None else max(on, day)
                numbers.append(entry.number)
            elif line.source == place and (
                line.target.startswith("cylinder:") or step == "recovery"
            ):
                net_mg -= line.mass_mg
                numbers.append(entry.number)
                if line.target != "atmosphere":
                    removed_mg += line.mass_mg
                    removals.append(Done(entry.happened_at.date(), entry.number))
    why = answers["weigh_in"].text("not_counted") if "weigh_in" in answers else ""
    if on is not None and net_mg > 0:
        found.additions.append(Addition(on, from_mg(net_mg), why, tuple(sorted(set(numbers)))))
    if removals and on is None and answers.get("recovery", Answers()).yes("seasonal"):
        found.removals.append(Removal(removals[-1].on, from_mg(removed_mg), removals[-1].entry))


def _searched(found: History, answers: Answers, signed: Signed) -> None:
    on, number = signed.happened_at.date(), signed.number
    leaks = answers.lines("leaks")
    if answers.yes("all_accessible"):
        found.searches.append(Done(on, number))
        if not leaks:
            found.rechecks.append(Recheck(on, tight=True, entry=number))
    if any(leak.text("repair") for leak in leaks):
        found.repairs.append(Done(on, number))
    if answers.yes("shutdown"):
        found.shutdowns.append(on)
    _tested(found, answers, number)


def _followed_up(found: History, answers: Answers, signed: Signed) -> None:
    number = signed.number
    _tested(found, answers, number)
    if running := answers.date("normal_running"):
        found.normal_running.append(running)
    for line in answers.lines("extensions"):
        asked, until = line.date("asked"), line.date("until")
        if asked is not None and until is not None:
            found.extensions.append(
                Extension(asked, until, line.text("ground"), line.date("delivered"), number)
            )
    for line in answers.lines("papers"):
        if dated := line.date("on"):
            found.papers.append(Paper(line.text("what"), dated, number))


def _tested(found: History, answers: Answers, number: int) -> None:
    for line in answers.lines("tests"):
        on = line.date("on")
        if on is None:
            continue
        tight = line.text("result") == TIGHT
        found.tests.append(VerificationTest(on, line.text("kind"), tight, number))
        if line.text("kind") == "follow-up":
            found.rechecks.append(Recheck(on, tight, line.quantity("ran"), number))
