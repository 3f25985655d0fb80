"""Flags of work on the circuit: leak search, pressure test, recovery, vacuum."""

from chargebench.calc.compare import above
from chargebench.calc.cylinder import requalification_state
from chargebench.flags.charging import wrong_refrigerant
from chargebench.flags.flag import Flag
from chargebench.steps import Answers, Case, Worked
from chargebench.steps.evacuation import Evacuated
from chargebench.steps.fill import overfull, unfillable
from chargebench.steps.pressure_test import PressureTested
from chargebench.steps.recovery import RELEASED, Recovered, line_mg
from chargebench.steps.searching import Searched
from chargebench.units import Quantity, show
from chargebench.words import say


def of_leak_search(_case: Case, worked: Worked) -> list[Flag]:
    """Leaks not verified tight, and a search that does not count."""
    result = worked.result
    if not isinstance(result, Searched):
        return []
    found: list[Flag] = []
    if result.unverified:
        found.append(
            Flag(
                "check",
                "leak-not-verified",
                say(
                    "{unverified} of {leaks} leaks found are not verified tight. Test them "
                    "before refrigerant goes back in.",
                    unverified=result.unverified,
                    leaks=result.leaks,
                ),
                "step:leak_search",
                source="40CFR82F, 82.152",
            )
        )
    if not result.leaks and str(result.check.word) != "counts":
        found.append(
            Flag(
                "note",
                "search-not-proven",
                say(
                    "Nothing was found, but it {check}: {reason}",
                    check=result.check.word,
                    reason=result.check.reason,
                ),
                "step:leak_search",
                source="COMMON",
            )
        )
    return found


def of_pressure_test(case: Case, worked: Worked) -> list[Flag]:
    """A pressure that fell or rose more than temperature explains."""
    result = worked.result
    if not isinstance(result, PressureTested) or str(result.verdict.word) == "no leak seen":
        return []
    verdict = result.verdict
    word = "leak" if str(verdict.word) == "leak" else "rise"
    doubt = say(
        "±{doubt}",
        doubt=case.shown(verdict.expanded_uncertainty.to("kPa")),
    )
    off: Quantity = verdict.drop.to("kPa") * (-1 if verdict.drop.magnitude < 0 else 1)
    size = say("{off} ({doubt})", off=case.shown(off), doubt=doubt)
    return [
        Flag(
            "stop" if word == "leak" else "check",
            f"pressure-{word}",
            say(
                "Pressure {moved} by {size} beyond what temperature explains. {advice} "
                "before going on.",
                moved="fell" if word == "leak" else "rose",
                size=size,
                advice="Find the leak" if word == "leak" else "Read again",
            ),
            "step:pressure_test",
            size,
            doubt,
            "JCGM100, 6.3.3",
        )
    ]


def of_recovery(case: Case, worked: Worked) -> list[Flag]:
    """What filling raises, the level not reached, a release without exemption."""
    result = worked.result
    if not isinstance(result, Recovered):
        return []
    found = [flag for line in case.step("recovery").lines("lines") for flag in _filled(case, line)]
    outcome = result.outcome
    if outcome is not None and outcome.word != "met":
        figure = next((f for f in worked.figures if f.key == "required"), None)
        found.append(
            Flag(
                "stop" if outcome.word == "not met" else "check",
                "recovery-level",
                say(
                    "The required recovery is {outcome}. Go on recovering, or record the level "
                    "reached.",
                    outcome=outcome.word,
                ),
                "step:recovery",
                source=figure.source if figure else "",
                mark=figure.mark if figure else "",
            )
        )
    if case.step("recovery").text("how") == RELEASED and not result.exemption:
        rule = case.rule_set.venting.rule
        found.append(
            Flag(
                "stop",
                "release-not-exempt",
                "No exemption of this rule set covers this release. Recover instead; ask the "
                "authority where in doubt.",
                "step:recovery",
                source=f"{rule.source}, {rule.place}",
                mark=rule.mark,
            )
        )
    return found


def _filled(case: Case, line: Answers) -> list[Flag]:
    """What filling a cylinder from the equipment raises."""
    cylinder = line.text("cylinder")
    row = case.cylinders.get(cylinder)
    if row is None:
        return []
    about = f"cylinder:{cylinder}"
    found: list[Flag] = []
    if reason := unfillable(cylinder, row):
        found.append(
            Flag("stop", "non-refillable-refilled", reason, about, source="49CFR173, 178.65")
        )
    net = line_mg(line) or 0
    held = sum(case.cylinder_content_mg.get(cylinder, {}).values())
    before = held - net if case.is_signed("recovery") else held
    if over := overfull(cylinder, row, before, net, case.rule_set, case.units):
        reason = line.text("override")
        filled = say(" Filled all the same: {reason}", reason=reason) if reason else ""
        found.append(Flag("stop", "cylinder-overfilled", over + filled, about, source="AHRI-K"))
    if case.refrigerant is not None and row.text("contents") != "mixed waste":
        other = row.text("refrigerant")
        if other and other != case.refrigerant.name:
            found.append(wrong_refrigerant(case.refrigerant.name, other, about))
    state = requalification_state(row.date("requalification_due"), case.today)
    if not state.may_be_filled and row.yes("refillable"):
        found.append(requalification_flag(cylinder, row, state.word))
    return found


def requalification_flag(cylinder: str, row: Answers, word: str) -> Flag:
    """A cylinder that is past its requalification, or whose date nobody entered."""
    due = row.date("requalification_due")
    when = (
        say("was due for requalification on {due}", due=due)
        if due
        else "has no requalification date"
    )
    return Flag(
        "check",
        "requalification-due",
        say(
            "{cylinder} {when} ({word}). Do not fill it; what is in it may be used.",
            cylinder=cylinder,
            when=when,
            word=word,
        ),
        f"cylinder:{cylinder}",
        str(due or ""),
        source="49CFR173, 180.205",
    )


def of_evacuation(case: Case, worked: Worked) -> list[Flag]:
    """A vacuum not deep enough, a decay test not tight."""
    result = worked.result
    if not isinstance(result, Evacuated):
        return []
    target = case.rule_set.evacuation.target
    found: list[Flag] = []
    pulled = case.step("evacuation").reading("pulled_to")
    if pulled is not None and not pulled.gauge and above(pulled.quantity, target.quantity):
        # In the unit that was typed, so that the two can be compared at sight.
        wanted = show(target.quantity, str(pulled.pint_unit), 0)
        found.append(
            Flag(
                "check",
                "vacuum-not-deep",
                say(
                    "Pulled down to {pulled}, short of {wanted}. Pull on.",
                    pulled=pulled.text,
                    wanted=wanted,
                ),
                "step:evacuation",
                limit=wanted,
                source=f"{target.source}, {target.place}",
                mark=target.mark,
            )
        )
    verdict = result.verdict
    if verdict is not None and verdict.word != "tight":
        found.append(
            Flag(
                "check" if verdict.word == "not yet decided" else "stop",
                "decay-not-tight",
                say(
                    "Decay test: {verdict}. {reason} {after}",
                    verdict=verdict.word,
                    reason=verdict.reason,
                    after=_AFTER[str(verdict.word)],
                ),
                "step:evacuation",
                str(verdict.word),
                "tight",
                "COMMON",
            )
        )
    return found


_AFTER = {
    "leak": "Find the leak; do not charge.",
    "moisture": "Dry on: break with nitrogen and pull again.",
    "not yet decided": "Watch on before charging.",
}
