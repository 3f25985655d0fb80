"""Flags of a whole job: what its steps raise, and what is missing between them."""

from collections.abc import Mapping
from datetime import date

from chargebench.flags.flag import Flag
from chargebench.flags.of_step import of_step
from chargebench.flags.words import class_words
from chargebench.steps import STEPS, Answers, Case, Worked, safety_list
from chargebench.steps.evacuation import Evacuated
from chargebench.words import say


def of_job(case: Case, worked: Mapping[str, Worked]) -> tuple[Flag, ...]:
    """Every flag of a job."""
    found = [flag for step in STEPS for flag in of_step(case, step, worked[step])]
    found += _missing_tests(case, worked)
    found += _safety(case)
    return tuple(found)


def of_step_in_job(case: Case, step: str, worked: Worked) -> tuple[Flag, ...]:
    """Flags of one step as it stands, with those the rest of the job raises about it."""
    between = _missing_tests(case, {step: worked}) + _safety(case)
    about = [flag for flag in between if flag.about == f"step:{step}"]
    return (*of_step(case, step, worked), *about)


def _charged_evacuated(case: Case) -> bool:
    kind = case.step("weigh_in").text("kind")
    return case.is_signed("weigh_in") and kind == "into an evacuated system"


def _missing_tests(case: Case, worked: Mapping[str, Worked]) -> list[Flag]:
    """A weigh-in into an opened circuit wants a pressure test and a tight decay test before it."""
    if not _charged_evacuated(case):
        return []
    found: list[Flag] = []
    result = worked["evacuation"].result if "evacuation" in worked else None
    decayed = isinstance(result, Evacuated) and result.verdict is not None
    if not case.is_signed("evacuation") or not decayed:
        found.append(
            Flag(
                "stop",
                "decay-test-missing",
                "Charged without a decay test on record. Recover, evacuate and prove it dry and "
                "tight.",
                "step:evacuation",
                source="COMMON",
            )
        )
    if not case.is_signed("pressure_test"):
        found.append(
            Flag(
                "check",
                "pressure-test-missing",
                "Charged without a pressure test on record. Test with dry nitrogen first.",
                "step:pressure_test",
                source="ANNEX-DD",
            )
        )
    return found


def _safety(case: Case) -> list[Flag]:
    """The safety list of a flammable class, before opening and at each signed step."""
    if case.refrigerant is None or not case.refrigerant.flammable:
        return []
    lines = safety_list.lines(case)
    opened = safety_list.opened(case)
    found: list[Flag] = []
    for step in dict.fromkeys(line.step for line in lines):
        due = opened if step == "safety" else case.is_signed(step)
        if not due:
            continue
        ticked = case.step(step).ticked("ticks")
        open_lines = [line for line in lines if line.step == step and line.key not in ticked]
        if not open_lines:
            continue
        words = class_words(case.refrigerant.safety_class)
        listed = sum(line.step == step for line in lines)
        found.append(
            Flag(
                "stop" if step == "safety" else "check",
                "safety-list-incomplete",
                say(
                    "{count} of {listed} lines of the safety list for {words} are open at "
                    "{title}. First: {line}",
                    count=len(open_lines),
                    listed=listed,
                    words=words,
                    title=STEPS[step].title,
                    line=open_lines[0].text,
                ),
                f"step:{step}",
                str(listed - len(open_lines)),
                str(listed),
                f"{open_lines[0].source}, {open_lines[0].place}",
                open_lines[0].mark,
            )
        )
    return found


def of_follow_up(answers: Answers, today: date) -> tuple[Flag, ...]:
    """A follow-up that is due and not done; it stays due after its job is closed."""
    due = answers.date("due")
    if due is None or answers.date("done_on") is not None or due > today:
        return ()
    says = say("Follow-up was due on {due}: {what}", due=due, what=answers.text("what"))
    return (Flag("note", "follow-up-due", says, "step:follow_up", str(due)),)
