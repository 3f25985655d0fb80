"""Flags of nameplate, running readings and weigh-in."""

from chargebench.calc.compare import above
from chargebench.flags.flag import Flag
from chargebench.steps import Answers, Case, Worked, limits
from chargebench.steps.nameplate import charge_limit
from chargebench.steps.weigh_in import WeighedIn
from chargebench.units import Quantity


def of_nameplate(case: Case, _worked: Worked) -> list[Flag]:
    """A charge over its limit, and a nameplate that says otherwise than the register."""
    found: list[Flag] = []
    charge, limit = case.nameplate("charge"), charge_limit(case)
    if charge is not None and limit is not None and above(charge.quantity, limit.mass):
        over = charge.quantity.to("g") - limit.mass.to("g")
        found.append(
            Flag(
                "stop",
                "over-charge-limit",
                f"Nameplate {case.shown(charge.quantity)} is over the charge limit of "
                f"{case.shown(limit.mass)} ({limit.title}) by {case.shown(over)}. Check nameplate "
                "and type; local codes decide.",
                "step:nameplate",
                case.shown(charge.quantity),
                case.shown(limit.mass),
                f"{limit.by.source}, {limit.by.place}",
                "MEMORY" if limit.unverified else limit.by.mark,
            )
        )
    registered = case.equipment.text("refrigerant")
    read = case.step("nameplate").text("refrigerant")
    if read and registered and read != registered:
        found.append(
            Flag(
                "check",
                "nameplate-differs",
                f"The nameplate says {read}, the register {registered}. Correct the one that is "
                "wrong.",
                "step:nameplate",
                read,
                registered,
            )
        )
    return found


def of_readings(case: Case, step: str) -> list[Flag]:
    """Another refrigerant in the system than on its nameplate."""
    found = case.step(step).text("refrigerant_found")
    if not found or case.refrigerant is None or found == case.refrigerant.name:
        return []
    return [wrong_refrigerant(found, case.refrigerant.name, f"step:{step}")]


def wrong_refrigerant(found: str, expected: str, about: str) -> Flag:
    """A refrigerant where another is expected."""
    return Flag(
        "stop",
        "wrong-refrigerant",
        f"{found} where the nameplate says {expected}. Do not charge; recover it as a mixture "
        "into a mixed-waste cylinder.",
        about,
        found,
        expected,
        "40CFR82F",
    )


def of_weigh_in(case: Case, worked: Worked) -> list[Flag]:
    """How the charge stands against nameplate and limit, and what it was drawn from."""
    result = worked.result
    if not isinstance(result, WeighedIn):
        return []
    found = [
        flag for line in case.step("weigh_in").lines("lines") for flag in _drawn_from(case, line)
    ]
    if result.verdict is not None:
        found += _verdict(case, result)
    limit, total = charge_limit(case), result.total
    if limit is not None and total is not None and above(total, limit.mass):
        found.append(
            Flag(
                "stop",
                "charge-over-limit",
                f"{case.shown(total)} in it is over the charge limit of {case.shown(limit.mass)} "
                f"({limit.title}). Recover down to the nameplate.",
                "step:weigh_in",
                case.shown(total),
                case.shown(limit.mass),
                f"{limit.by.source}, {limit.by.place}",
                "MEMORY" if limit.unverified else limit.by.mark,
            )
        )
    if (ban := limits.service_ban(case)) is not None:
        potential = float(limits.gwp(case) or 0)
        found.append(
            Flag(
                "stop",
                "service-ban",
                f"Servicing with this refrigerant of GWP {potential:g} is banned from "
                f"{ban.gwp_from.text} on since {ban.since.text}. Use what the rules still allow; "
                "the text of the law decides.",
                "step:weigh_in",
                f"GWP {potential:g}",
                ban.gwp_from.text,
                f"{ban.gwp_from.source}, {ban.gwp_from.place}",
                ban.gwp_from.mark,
            )
        )
    if result.opening is None and case.equipment.yes("factory_sealed"):
        found.append(
            Flag(
                "check",
                "topped-up-sealed",
                "A sealed system was topped up without weighing what was in it. Recover and weigh "
                "in the nameplate charge.",
                "step:weigh_in",
                source="COMMON",
            )
        )
    return found


def _drawn_from(case: Case, line: Answers) -> list[Flag]:
    cylinder = line.text("cylinder")
    row = case.cylinders.get(cylinder)
    if row is None or case.refrigerant is None:
        return []
    held = row.text("refrigerant")
    found: list[Flag] = []
    if held != case.refrigerant.name or row.text("contents") == "mixed waste":
        what = f"a mixture with {held}" if row.text("contents") == "mixed waste" else held
        found.append(wrong_refrigerant(what, case.refrigerant.name, f"cylinder:{cylinder}"))
    return found


def _verdict(case: Case, result: WeighedIn) -> list[Flag]:
    verdict = result.verdict
    assert verdict is not None
    off: Quantity = verdict.difference * (-1 if verdict.difference.magnitude < 0 else 1)
    doubt = verdict.expanded_uncertainty
    size = f"{case.shown(off)} (±{case.shown(doubt, like=off)})"
    facts = (case.shown(result.charged), case.shown(result.nameplate), result.tolerance_source)
    about = "step:weigh_in"
    match str(verdict.word):
        case "over":
            says = (
                f"Over nameplate by {size}: {facts[0]} in, nameplate {facts[1]}, "
                f"tolerance {case.shown(result.tolerance)}. Recover and weigh in again; do not "
                "leave overcharged."
            )
            return [Flag("stop", "over-nameplate", says, about, *facts, result.tolerance_mark)]
        case "under":
            says = f"Under nameplate by {size}: {facts[0]} of {facts[1]}. Weigh in the rest."
            return [Flag("check", "under-nameplate", says, about, *facts, result.tolerance_mark)]
        case "scale too coarse to tell":
            enough = verdict.resolution_enough
            finer = f" {case.shown(enough)} would do." if enough is not None else ""
            says = (
                f"Scale too coarse to tell: {case.shown(verdict.difference)} "
                f"(±{case.shown(doubt)}) against a tolerance of {case.shown(result.tolerance)}. "
                f"Use a finer scale.{finer}"
            )
            return [Flag("check", "scale-too-coarse", says, about, *facts, result.tolerance_mark)]
    return []
