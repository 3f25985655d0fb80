"""Readings as found and as left: what they come to and what they are evidence of."""

from dataclasses import dataclass, fields

from chargebench.calc import readings
from chargebench.calc.evidence_rules import Measure
from chargebench.calc.readings import (
    CondenserState,
    Current,
    Differences,
    Evidence,
    FanState,
    Findings,
    Frost,
    Hypothesis,
    NextMeasurement,
    Says,
)
from chargebench.errors import ChargebenchError
from chargebench.fluids import saturation
from chargebench.steps import hose_cost, maker
from chargebench.steps.case import NOT_WORKED, Case, Cell, Figure, Table, Worked
from chargebench.steps.form import Answers
from chargebench.units import Q, Quantity
from chargebench.words import say

LABELS = {
    "superheat": "Superheat",
    "subcooling": "Subcooling",
    "condensing_split": "Condensing over ambient",
    "evaporator_difference": "Air over evaporating",
}
_EXPECTED = {
    "superheat": "expected_superheat",
    "subcooling": "expected_subcooling",
    "condensing_split": "expected_split",
    "evaporator_difference": "expected_evaporator_difference",
}
_SHORT = {
    Measure.CONDENSER: "condenser",
    Measure.FROST: "frost",
    Measure.BOX: "box",
    Measure.CURRENT: "current",
    Measure.DRIER: "drier drop",
    Measure.SPLIT: "over ambient",
    Measure.EVAPORATOR: "under box air",
}
_NO_VERDICT = "No row is a verdict: readings support a fault or speak against it, none proves it."


@dataclass(frozen=True, slots=True)
class Ran:
    """Differences of a running system and the table of evidence they give."""

    differences: Differences
    from_surfaces: bool
    evidence: tuple[Evidence, ...]
    next: NextMeasurement | None


def work_out(case: Case, step: str) -> Worked:
    """Differences, evidence, and the measurement that would decide next."""
    answers = case.step(step)
    if not answers.values or case.refrigerant is None:
        return NOT_WORKED
    refused: list[str] = []
    by_pressure = _by_pressure(case, step, refused)
    surfaces = _by_surface(answers)
    from_surfaces = by_pressure == NOTHING
    differences = surfaces if from_surfaces else by_pressure
    findings = _findings(case, step, differences, from_surfaces=from_surfaces)
    result = Ran(
        differences,
        from_surfaces,
        readings.evidence(findings),
        readings.next_measurement(findings),
    )
    figures = _figures(case, step, result)
    said = (*refused, *_sentences(case, step, result))
    return Worked(figures, said, result, _evidence_table(result))


NOTHING = Differences(None, None, None, None)


def _by_pressure(case: Case, step: str, refused: list[str]) -> Differences:
    assert case.refrigerant is not None
    answers = case.step(step)
    curve = saturation(case.refrigerant.name)
    suction, liquid = (
        _pressure(case, step, "suction_pressure", refused),
        _pressure(case, step, "discharge_pressure", refused),
    )
    suction_line, liquid_line = answers.quantity("suction_line"), answers.quantity("liquid_line")
    ambient, box = answers.quantity("ambient"), answers.quantity("box")
    superheat = subcooling = split = difference = None
    try:
        if suction is not None and suction_line is not None:
            superheat = readings.superheat(
                curve, suction_pressure=suction, line_temperature=suction_line
            )
        if suction is not None and box is not None:
            difference = readings.evaporator_difference(
                curve, suction_pressure=suction, air_temperature=box
            )
        if liquid is not None and liquid_line is not None:
            subcooling = readings.subcooling(
                curve, liquid_pressure=liquid, line_temperature=liquid_line
            )
        if liquid is not None and ambient is not None:
            split = readings.condensing_split(curve, discharge_pressure=liquid, ambient=ambient)
    except ChargebenchError as refusal:
        refused.append(str(refusal))
    return Differences(superheat, subcooling, split, difference)


def _pressure(case: Case, step: str, key: str, refused: list[str]) -> Quantity | None:
    try:
        return case.absolute(step, key)
    except ChargebenchError as refusal:
        refused.append(str(refusal))
        return None


def _by_surface(answers: Answers) -> Differences:
    inlet, outlet = answers.quantity("evaporator_inlet"), answers.quantity("evaporator_outlet")
    return readings.surface_differences(
        evaporator_middle=outlet if inlet is None else inlet,
        suction_line=answers.quantity("suction_line"),
        air_on_evaporator=answers.quantity("box"),
        condenser_middle=answers.quantity("condenser_surface"),
        liquid_line=answers.quantity("liquid_line"),
        ambient=answers.quantity("ambient"),
    )


def _findings(case: Case, step: str, differences: Differences, *, from_surfaces: bool) -> Findings:
    answers = case.step(step)
    current, rated = answers.quantity("current"), answers.quantity("rated_current")
    into, out = answers.quantity("drier_in"), answers.quantity("drier_out")
    drop = None
    if into is not None and out is not None:
        drop = Q(into.m_as("kelvin") - out.m_as("kelvin"), "kelvin")
    frost, condenser = answers.text("frost"), answers.text("condenser_state")
    condenser_fan, evaporator_fan = answers.text("condenser_fan"), answers.text("evaporator_fan")
    given = {
        of: (each, held)
        for of, each in maker.expected(case).items()
        if of in _EXPECTED and (held := each.held(case, step)) is not None
    }
    givers = {each.given_by: None for each, _ in given.values()}
    expected = {_EXPECTED[of]: middle for of, (_, (middle, _)) in given.items()}
    within = {of: around for of, (_, (_, around)) in given.items() if around is not None}
    return Findings(
        **expected,
        expected_within=within,
        expected_from=", ".join(givers) or "the maker",
        superheat=differences.superheat,
        subcooling=differences.subcooling,
        condensing_split=differences.condensing_split,
        evaporator_difference=differences.evaporator_difference,
        drier_drop=drop,
        box_temperature=answers.quantity("box"),
        set_point=answers.quantity("set_point"),
        frost=Frost(frost) if frost else None,
        condenser=CondenserState(condenser) if condenser else None,
        condenser_fan=FanState(condenser_fan) if condenser_fan else None,
        evaporator_fan=FanState(evaporator_fan) if evaporator_fan else None,
        current=None if current is None or rated is None else Current(current, rated),
        from_surfaces=from_surfaces,
        told_in=case.units,
    )


def _figures(case: Case, step: str, result: Ran) -> tuple[Figure, ...]:
    assert case.refrigerant is not None
    how = ", from surfaces" if result.from_surfaces else ""
    source = "COMMON" if result.from_surfaces else "COOLPROP"
    figures = [
        Figure(each.name, f"{LABELS[each.name]}{how}", value, source=source)
        for each in fields(result.differences)
        if (value := getattr(result.differences, each.name)) is not None
    ]
    suction = _pressure(case, step, "suction_pressure", [])
    liquid = _pressure(case, step, "discharge_pressure", [])
    if suction is not None and liquid is not None and suction.m_as("Pa") > 0:
        ratio = readings.compression_ratio(suction_pressure=suction, discharge_pressure=liquid)
        figures.append(Figure("compression-ratio", "Compression ratio", Q(ratio, "")))
    figures += [
        Figure(
            f"evidence-{number}",
            say("{hypothesis}: {says}", hypothesis=each.hypothesis, says=each.says),
            say("{reading}. {reason}", reading=each.reading, reason=each.reason),
        )
        for number, each in enumerate(result.evidence)
        if each.says is not Says.NOTHING
    ]
    return tuple(figures)


def _evidence_table(result: Ran) -> tuple[Table, ...]:
    """Fault by reading: for, against, nothing, with the reason behind each."""
    readings_told = tuple(dict.fromkeys(each.reading for each in result.evidence))
    if not readings_told:
        return ()
    found = {(each.hypothesis, each.reading): each for each in result.evidence}
    rows = tuple(
        (
            Cell(str(fault)),
            *(
                Cell(
                    str(each.says),
                    why=say("{reading}. {reason}", reading=each.reading, reason=each.reason),
                )
                for told in readings_told
                if (each := found[fault, told])
            ),
        )
        for fault in Hypothesis
    )
    heads = ("Fault", *(_short(told) for told in readings_told))
    return (Table("evidence", "What speaks for which fault", heads, rows, _NO_VERDICT),)


def _short(told: str) -> str:
    """A reading as the head of a narrow column: what was read, and how it stands."""
    bare = told.partition(" (")[0]
    measure = max((each for each in Measure if bare.startswith(each)), key=len)
    state = bare.removeprefix(measure).rpartition(", ")[2].removeprefix(":").strip()
    return say("{measure}: {state}", measure=_SHORT.get(measure, str(measure)), state=state)


def _sentences(case: Case, step: str, result: Ran) -> tuple[str, ...]:
    says: list[str] = []
    if result.next is not None:
        hose = " It needs a hose." if result.next.needs_hose else ""
        says.append(
            say(
                "Next: {measure}. {reason}{hose}",
                measure=result.next.measure,
                reason=result.next.reason,
                hose=hose,
            )
        )
    if case.equipment.yes("factory_sealed"):
        says.append(
            "Readings can not settle the charge of a critically charged sealed system; recovering "
            "and weighing in does."
        )
    says += hose_cost.sentences(case, step)
    return tuple(says)
