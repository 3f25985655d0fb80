"""Flags of nameplate, running readings and weigh-in."""

from chargebench.calc.compare import above
from chargebench.flags.flag import Flag
from chargebench.steps import Answers, Case, Worked, limits
from chargebench.steps.nameplate import charge_limit
from chargebench.steps.weigh_in import WeighedIn
from chargebench.units import Quantity
from chargebench.words import say


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
                say(
                    "Nameplate {nameplate} is over the charge limit of {limit} ({title}) by "
                    "{over}. Check nameplate and type; local codes decide.",
                    nameplate=case.shown(charge.quantity),
                    limit=case.shown(limit.mass),
                    title=limit.title,
                    over=case.shown(over),
                ),
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
                say(
                    "The nameplate says {read}, the register {registered}. Correct the one "
                    "that is wrong.",
                    read=read,
                    registered=registered,
                ),
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
        say(
            "{found} where the nameplate says {expected}. Do not charge; recover it as "
            "a mixture into a mixed-waste cylinder.",
            found=found,
            expected=expected,
        ),
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
                say(
                    "{total} in it is over the charge limit of {limit} ({title}). Recover down "
                    "to the nameplate.",
                    total=case.shown(total),
                    limit=case.shown(limit.mass),
                    title=limit.title,
                ),
                "step:weigh_in",
                case.shown(total),
                case.shown(limit.mass),
                f"{limit.by.source}, {limit.by.place}",
                "MEMORY" if limit.unverified else limit.by.mark,
            )
        )
    found += _banned(case)
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


def _banned(case: Case) -> list[Flag]:
    """Whether servicing with this refrigerant is banned where the job is."""
    ban = limits.service_ban(case)
    if ban is None:
        return []
    potential = float(limits.gwp(case) or 0)
    return [
        Flag(
            "stop",
            "service-ban",
            say(
                "Servicing with this refrigerant of GWP {potential:g} is banned from "
                "{gwp_from} on since {since}. Use what the rules still allow; the text of "
                "the law decides.",
                potential=potential,
                gwp_from=ban.gwp_from.text,
                since=ban.since.text,
            ),
            "step:weigh_in",
            say("GWP {potential:g}", potential=potential),
            ban.gwp_from.text,
            f"{ban.gwp_from.source}, {ban.gwp_from.place}",
            ban.gwp_from.mark,
        )
    ]


def _drawn_from(case: Case, line: Answers) -> list[Flag]:
    cylinder = line.text("cylinder")
    row = case.cylinders.get(cylinder)
    if row is None or case.refrigerant is None:
        return []
    held = row.text("refrigerant")
    found: list[Flag] = []
    if held != case.refrigerant.name or row.text("contents") == "mixed waste":
        what = (
            say("a mixture with {held}", held=held)
            if row.text("contents") == "mixed waste"
            else held
        )
        found.append(wrong_refrigerant(what, case.refrigerant.name, f"cylinder:{cylinder}"))
    return found


def _verdict(case: Case, result: WeighedIn) -> list[Flag]:
    verdict = result.verdict
    assert verdict is not None
    off: Quantity = verdict.difference * (-1 if verdict.difference.magnitude < 0 else 1)
    doubt = verdict.expanded_uncertainty
    size = say("{off} (±{doubt})", off=case.shown(off), doubt=case.shown(doubt, like=off))
    facts = (case.shown(result.charged), case.shown(result.nameplate), result.tolerance_source)
    about = "step:weigh_in"
    match str(verdict.word):
        case "over":
            says = say(
                "Over nameplate by {size}: {charged} in, nameplate {nameplate}, tolerance "
                "{tolerance}. Recover and weigh in again; do not leave overcharged.",
                size=size,
                charged=facts[0],
                nameplate=facts[1],
                tolerance=case.shown(result.tolerance),
            )
            return [Flag("stop", "over-nameplate", says, about, *facts, result.tolerance_mark)]
        case "under":
            says = say(
                "Under nameplate by {size}: {charged} of {nameplate}. Weigh in the rest.",
                size=size,
                charged=facts[0],
                nameplate=facts[1],
            )
            return [Flag("check", "under-nameplate", says, about, *facts, result.tolerance_mark)]
        case "scale too coarse to tell":
            enough = verdict.resolution_enough
            finer = (
                say(" {enough} would do.", enough=case.shown(enough)) if enough is not None else ""
            )
            says = say(
                "Scale too coarse to tell: {difference} (±{doubt}) against a tolerance of "
                "{tolerance}. Use a finer scale.{finer}",
                difference=case.shown(verdict.difference),
                doubt=case.shown(doubt),
                tolerance=case.shown(result.tolerance),
                finer=finer,
            )
            return [Flag("check", "scale-too-coarse", says, about, *facts, result.tolerance_mark)]
    return []
