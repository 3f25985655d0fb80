"""Vacuum: the decay test judged, standards' pass rules beside it, and what evacuating leaves."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache

from chargebench.calc import evacuation
from chargebench.calc.evacuation import DecayLimits, DecayRule, DecayVerdict, RuleResult
from chargebench.errors import OutsideDomain
from chargebench.fluids import water
from chargebench.ledger import Transfer
from chargebench.rules import Cited, PassRule
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.steps.form import Answers
from chargebench.units import Q, Quantity, Reading
from chargebench.words import joined, say


@dataclass(frozen=True, slots=True)
class Evacuated:
    """A decay test: its readings, the verdict, the pass rules, and the water line."""

    minutes: tuple[float, ...]
    pascals: tuple[float, ...]
    verdict: DecayVerdict | None
    rules: tuple[RuleResult, ...]
    water: Quantity | None  # pressure at which water (or ice) boils at the coldest part
    pulled_to: Quantity | None


def work_out(case: Case) -> Worked:
    """Verdict on the decay readings typed so far."""
    answers = case.step("evacuation")
    readings = sorted(_readings(answers))
    typed = answers.reading("pulled_to")
    pulled = None if typed is None or typed.gauge else typed.quantity
    if not readings and pulled is None:
        return NOT_WORKED
    minutes = tuple(at for at, _, _ in readings)
    pascals = tuple(pressure for _, pressure, _ in readings)
    coldest = answers.quantity("coldest")
    boils = _boiling(coldest)
    verdict = None
    if readings:
        limits = _limits(case)
        try:
            verdict = evacuation.judge(
                minutes,
                pascals,
                limits,
                water_pa=None if boils is None else boils.m_as("Pa"),
                steps=[step for _, _, step in readings],
            )
        except OutsideDomain as refusal:
            return Worked(sentences=(str(refusal),))
    judged = evacuation.standard_rules(minutes, pascals, _pass_rules(case))
    result = Evacuated(minutes, pascals, verdict, judged, boils, pulled)
    return Worked(_figures(case, result), _sentences(case, result), result)


def _limits(case: Case) -> DecayLimits:
    """The decision rule's limits, with what the rule set lets a shop choose."""
    rule = case.rule_set.evacuation.decay
    return DecayLimits(
        slope_allowed=rule.leak_slope.quantity.m_as("micron_Hg/min"),
        rise_allowed=rule.rise_offset.quantity.m_as("micron_Hg"),
        slope_open=rule.slope_base.quantity.m_as("micron_Hg/min"),
        share=rule.leak_share.quantity.m_as(""),
        minutes_firm=rule.firm_after.quantity.m_as("min"),
    )


def _readings(answers: Answers) -> list[tuple[float, float, float]]:
    """Minutes, pascals and the step of the display in pascals, as far as they can be judged."""
    typed = ((line.reading("at"), line.reading("reading")) for line in answers.lines("decay"))
    return list(_judged(tuple((at, reading) for at, reading in typed if at and reading)))


@lru_cache(maxsize=16)
def _judged(typed: Sequence[tuple[Reading, Reading]]) -> tuple[tuple[float, float, float], ...]:
    """What of typed readings can be judged; kept, for most keys are typed in other fields."""
    found = [
        (float(at.quantity.m_as("min")), float(reading.quantity.m_as("Pa")), reading)
        for at, reading in typed
        if not reading.gauge
    ]
    kept = [each for each in found if each[1] > 0]
    steps = _display_steps([reading for _, _, reading in kept])
    return tuple((at, pa, step) for (at, pa, _), step in zip(kept, steps, strict=True))


def _display_steps(readings: Sequence[Reading]) -> list[float]:
    """Step of the display [Pa] at each reading: the last digit, of as many as any reading has.

    Zeros at the end are not believed: 1200 beside 340 is a display of two digits, and so is 300
    that never changes.
    """
    typed = [Decimal(one.value.numerator) / Decimal(one.value.denominator) for one in readings]
    first = [value.adjusted() for value in typed]
    last = [
        min(int(value.normalize().as_tuple().exponent), head - 1)
        for value, head in zip(typed, first, strict=True)
    ]
    steps: list[float] = []
    for reading, head in zip(readings, first, strict=True):
        alike = [place for place, one in enumerate(readings) if one.unit == reading.unit]
        digits = max(first[place] - last[place] for place in alike)
        step = max(head - digits, min(last[place] for place in alike))
        steps.append(float(Q(10.0**step, reading.pint_unit).m_as("Pa")))
    return steps


def _boiling(coldest: Quantity | None) -> Quantity | None:
    if coldest is None:
        return None
    try:
        return water.vapour_pressure(coldest)
    except OutsideDomain:
        return None


def _fluid_word(case: Case) -> str:
    if case.refrigerant is None:
        return ""
    parts = {part.name for part in case.refrigerant.composition}
    if parts == {"R717"}:
        return "ammonia"
    if parts == {"R744"}:
        return "carbon dioxide"
    return "hydrocarbon" if parts <= {"R290", "R600a", "R600", "R1270", "R170"} else "halocarbon"


def _pass_rules(case: Case) -> list[DecayRule]:
    """The rule set's pass rules that hold for this fluid and charge."""
    fluid = _fluid_word(case)
    charge = case.nameplate("charge")
    mass = None if charge is None else charge.quantity
    return [
        _as_decay_rule(rule)
        for rule in case.rule_set.evacuation.pass_rules
        if fluid in rule.fluids
        and (mass is None or rule.charge_from is None or mass >= rule.charge_from.quantity)
        and (mass is None or rule.charge_below is None or mass < rule.charge_below.quantity)
    ]


def _as_decay_rule(rule: PassRule) -> DecayRule:
    return DecayRule(
        name=rule.title,
        pull_to=rule.pull_to.quantity,
        hold=rule.hold.quantity,
        source=f"{rule.pull_to.source}, {rule.pull_to.place}",
        allowed_rise=None if rule.rise_at_most is None else rule.rise_at_most.quantity,
        end_at_most=None if rule.end_at_most is None else rule.end_at_most.quantity,
        strictly_below=rule.strictly_below,
    )


def _verdict(case: Case, verdict: DecayVerdict) -> Figure:
    """The word, and whether a limit it rests on was never verified."""
    rule = case.rule_set.evacuation.decay
    limits = (rule.leak_slope, rule.rise_offset, rule.slope_base, rule.leak_share, rule.firm_after)
    return Figure(
        "verdict",
        "Decay test",
        str(verdict.word),
        source=say("{source}, limits of the verdict", source=rule.leak_slope.source),
        mark=_worst(limits),
    )


def _worst(cited: Iterable[Cited | None]) -> str:
    """Mark of figures that a verdict rests on together: unverified where one is."""
    marks = [each.mark for each in cited if each is not None]
    return "MEMORY" if "MEMORY" in marks else marks[0]


def _rule_mark(case: Case, title: str) -> str:
    rule = next(each for each in case.rule_set.evacuation.pass_rules if each.title == title)
    return _worst((rule.pull_to, rule.hold, rule.rise_at_most, rule.end_at_most))


def _figures(case: Case, result: Evacuated) -> tuple[Figure, ...]:
    figures: list[Figure] = []
    if result.pulled_to is not None:
        figures.append(Figure("pulled-to", "Pulled down to", result.pulled_to))
    verdict = result.verdict
    if verdict is not None:
        figures.append(_verdict(case, verdict))
        figures.append(Figure("minutes", "Watched for", Q(verdict.minutes, "min")))
        if verdict.slope_upper is not None:
            open_leak = Q(verdict.slope_upper, "Pa/min")
            figures.append(Figure("leak-open", "Leak that can not be excluded", open_leak))
        if verdict.minutes_more > 0:
            figures.append(Figure("minutes-more", "Watch on for", Q(verdict.minutes_more, "min")))
    figures += [
        Figure(
            f"rule-{row.rule.name}",
            row.rule.name,
            str(row.word),
            source=row.rule.source,
            mark=_rule_mark(case, row.rule.name),
        )
        for row in result.rules
    ]
    if result.water is not None:
        figures.append(
            Figure(
                "water",
                "Water boils at the coldest part below",
                result.water,
                source="IAPWS-SR1, IAPWS-R14",
            )
        )
    return tuple(figures)


def _sentences(case: Case, result: Evacuated) -> tuple[str, ...]:
    verdict = result.verdict
    if verdict is None:
        return ("Isolate the pump and read the gauge: a decay test needs at least three readings.",)
    firm = "" if verdict.firm or verdict.word == "not yet decided" else ", not yet firm"
    says = [
        say(
            "Decay test: {verdict}{firm}. {reason}",
            verdict=verdict.word,
            firm=firm,
            reason=verdict.reason,
        )
    ]
    parts = []
    if verdict.slope_upper is not None:
        leak = Q(verdict.slope_upper, "Pa/min")
        parts.append(say("A leak below {leak} can not be excluded", leak=case.shown(leak)))
    if verdict.minutes_more > 0:
        parts.append(
            say("{minutes:.0f} more minutes would help to decide", minutes=verdict.minutes_more)
        )
    if parts:
        says.append(
            say(
                "{known}. A vacuum test can not prove tightness of a few grams a year.",
                known=joined("; ", parts),
            )
        )
    return tuple(says)


def refusals(case: Case) -> dict[str, str]:
    """What a vacuum step is refused for, beside wrong and missing fields.

    A dial gauge can not see the last 3 mbar: vacuum is read in micron or pascals.
    """
    answers = case.step("evacuation")
    readings = {"pulled_to": answers.reading("pulled_to")} | {
        f"decay[{number}].reading": line.reading("reading")
        for number, line in enumerate(answers.lines("decay"))
    }
    return {
        path: "Expected an absolute pressure above zero, such as 420 micron or 56 Pa."
        for path, reading in readings.items()
        if reading is not None and (reading.gauge or not _sensible(reading.quantity))
    }


def _sensible(pressure: Quantity) -> bool:
    """Whether a pressure can belong to a decay test at all."""
    try:
        evacuation.judge((0.0,), (pressure.m_as("Pa"),))
    except OutsideDomain:
        return False
    return True


def presumed_lost(case: Case) -> tuple[Transfer, ...]:
    """What the ledger still shows in an equipment that is known to be empty: presumed lost.

    It left at an unknown time between the last known full date and now.
    """
    if case.equipment_content_mg <= 0 or case.refrigerant is None:
        return ()
    return (
        Transfer(
            f"equipment:{case.equipment_id}",
            "atmosphere",
            case.refrigerant.name,
            case.equipment_content_mg,
            "presumed lost",
        ),
    )


def movements(case: Case) -> tuple[Transfer, ...]:
    """Evacuating empties the equipment; what the ledger still has in it is presumed lost."""
    return presumed_lost(case)
