"""What readings support and what they can not prove: a table of evidence, never one verdict.

No pressure is a reading here: a pressure alone tells nothing about the charge. What each state of
a reading says of each fault is in `evidence_rules`, as data.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from itertools import combinations

from chargebench.calc.evidence_rules import (
    BY_PRESSURE,
    EASE,
    SAYS,
    CondenserState,
    FanState,
    Frost,
    Hypothesis,
    Measure,
    Says,
)
from chargebench.units import Q, Quantity, System, brief, shown
from chargebench.words import Measured, say


@dataclass(frozen=True, slots=True)
class Current:
    """Compressor current, measured and rated."""

    measured: Quantity
    rated: Quantity


@dataclass(frozen=True, slots=True)
class Findings:
    """What was measured and seen; None where it was not.

    `expected_...` are the maker's figures, or those of a sister unit or an earlier visit: named
    in `expected_from`.
    """

    superheat: Quantity | None = None
    subcooling: Quantity | None = None
    condensing_split: Quantity | None = None
    evaporator_difference: Quantity | None = None
    drier_drop: Quantity | None = None
    box_temperature: Quantity | None = None
    set_point: Quantity | None = None
    frost: Frost | None = None
    condenser: CondenserState | None = None
    condenser_fan: FanState | None = None
    evaporator_fan: FanState | None = None
    current: Current | None = None
    expected_superheat: Quantity | None = None
    expected_subcooling: Quantity | None = None
    expected_split: Quantity | None = None
    expected_evaporator_difference: Quantity | None = None
    expected_from: str = "the maker"
    expected_within: Mapping[str, Quantity] = field(default_factory=dict)  # by name; else usual
    from_surfaces: bool = False
    told_in: System = "SI"  # units its readings are told in


@dataclass(frozen=True, slots=True)
class Bands:
    """Limits between low, usual and high, in kelvin and ratios: common practice, our own choice."""

    superheat: tuple[float, float] = (3.0, 12.0)
    subcooling: tuple[float, float] = (3.0, 12.0)
    condensing_split: tuple[float, float] = (5.0, 17.0)
    evaporator_difference: tuple[float, float] = (4.0, 12.0)
    around_expected: float = 3.0  # either side of a figure expected of this equipment
    surface_doubt: float = 2.0  # added either side where differences are taken from surfaces
    drier_drop: float = 1.5
    box: float = 2.0  # over the set point
    current: tuple[float, float] = (0.75, 1.1)  # of the rated current


@dataclass(frozen=True, slots=True)
class Evidence:
    """What one reading says of one fault, and why."""

    hypothesis: Hypothesis
    says: Says
    reading: str
    reason: str


@dataclass(frozen=True, slots=True)
class NextMeasurement:
    """What to measure next, and which faults it tells apart."""

    measure: str
    reason: str
    needs_hose: bool  # unless it is taken from surfaces


# A measurement that opens the circuit must tell twice as many faults apart to come first.
_HOSE_WEIGHT = 0.5
_BANDED = {
    Measure.SUPERHEAT: ("superheat", "expected_superheat"),
    Measure.SUBCOOLING: ("subcooling", "expected_subcooling"),
    Measure.SPLIT: ("condensing_split", "expected_split"),
    Measure.EVAPORATOR: ("evaporator_difference", "expected_evaporator_difference"),
}


def _state(value: float, low: float, high: float) -> str:
    return "low" if value < low else "high" if value > high else "usual"


def _between(low: float, high: float, system: System) -> str:
    """Two differences in kelvin as a band."""
    begin, end = (brief(Q(each, "kelvin"), system) for each in (low, high))
    return say("{begin} to {end}", begin=Measured(begin.partition(" ")[0]), end=end)


def _banded(findings: Findings, bands: Bands) -> Iterable[tuple[Measure, str, str]]:
    """The differences given, as (measure, state, how the reading is shown)."""
    doubt = bands.surface_doubt if findings.from_surfaces else 0.0
    for measure, (name, expected_name) in _BANDED.items():
        value: Quantity | None = getattr(findings, name)
        if value is None:
            continue
        expected: Quantity | None = getattr(findings, expected_name)
        low, high = getattr(bands, name)
        against = say("usual {band}", band=_between(low, high, findings.told_in))
        if expected is not None:
            middle = expected.m_as("delta_degC")
            told: str = shown(expected, findings.told_in)
            around = bands.around_expected
            if (within := findings.expected_within.get(name)) is not None:
                around = within.m_as("delta_degC")
                told = say("{told} ± {within}", told=told, within=shown(within, findings.told_in))
            low, high = middle - around, middle + around
            against = say(
                "{expected_from}: {told}", expected_from=findings.expected_from, told=told
            )
        state = _state(value.m_as("delta_degC"), low - doubt, high + doubt)
        surface = ", from surfaces" if doubt else ""
        told = shown(value, findings.told_in)
        yield (
            measure,
            state,
            say(
                "{measure} {told}, {state} ({against}{surface})",
                measure=measure,
                told=told,
                state=state,
                against=against,
                surface=surface,
            ),
        )


def _others(findings: Findings, bands: Bands) -> Iterable[tuple[Measure, str, str]]:
    """All else that was given, in the same form."""
    if findings.drier_drop is not None:
        state = "high" if findings.drier_drop.m_as("delta_degC") > bands.drier_drop else "usual"
        yield (
            Measure.DRIER,
            state,
            say(
                "{measure} {drop}, {state}",
                measure=Measure.DRIER,
                drop=shown(findings.drier_drop, findings.told_in),
                state=state,
            ),
        )
    if findings.box_temperature is not None and findings.set_point is not None:
        over = findings.box_temperature.m_as("kelvin") - findings.set_point.m_as("kelvin")
        state = "high" if over > bands.box else "usual"
        told = f"{'+' if over >= 0 else ''}{shown(Q(over, 'kelvin'), findings.told_in)}"
        over_set = "{box} {told} over the set point, {state}"
        yield Measure.BOX, state, say(over_set, box=Measure.BOX, told=told, state=state)
    if findings.current is not None and findings.current.rated.m_as("A") > 0:
        share = findings.current.measured.m_as("A") / findings.current.rated.m_as("A")
        state = _state(share, *bands.current)
        yield (
            Measure.CURRENT,
            state,
            say(
                "{measure} {share:.0f} % of rated, {state}",
                measure=Measure.CURRENT,
                share=100 * share,
                state=state,
            ),
        )
    for measure, seen in (
        (Measure.FROST, findings.frost),
        (Measure.CONDENSER, findings.condenser),
        (Measure.CONDENSER_FAN, findings.condenser_fan),
        (Measure.EVAPORATOR_FAN, findings.evaporator_fan),
    ):
        if seen is not None:
            yield measure, seen.value, say("{measure}: {seen}", measure=measure, seen=seen)


def _read(findings: Findings, bands: Bands) -> tuple[tuple[Measure, str, str], ...]:
    return (*_banded(findings, bands), *_others(findings, bands))


def evidence(findings: Findings, bands: Bands = Bands()) -> tuple[Evidence, ...]:
    """What every reading says of every fault.

    Parameters
    ----------
    findings : Findings [K, A]
        What was measured and seen.
    bands : Bands [K]
        Limits between low, usual and high.

    Returns
    -------
    tuple of Evidence [-]
        A row for each reading given and each fault, with a reason; no verdict is drawn from them.

    Source
    ------
    COMMON.
    """
    return tuple(
        Evidence(hypothesis, says, shown, reason)
        for measure, state, shown in _read(findings, bands)
        for hypothesis, (says, reason) in SAYS[measure, state].items()
    )


def _open(findings: Findings, bands: Bands) -> tuple[Hypothesis, ...]:
    """Faults that the readings leave open: none more than one reading behind the best supported."""
    balance = dict.fromkeys(Hypothesis, 0)
    for row in evidence(findings, bands):
        balance[row.hypothesis] += {Says.FOR: 1, Says.AGAINST: -1, Says.NOTHING: 0}[row.says]
    best = max(balance.values())
    return tuple(each for each in Hypothesis if balance[each] >= best - 1)


def _tells_apart(measure: Measure, pair: tuple[Hypothesis, Hypothesis]) -> bool:
    return any(
        {rows[pair[0]][0], rows[pair[1]][0]} == {Says.FOR, Says.AGAINST}
        for (of, _), rows in SAYS.items()
        if of is measure
    )


def _needs_hose(measure: Measure, findings: Findings) -> bool:
    return measure in BY_PRESSURE and not findings.from_surfaces


def next_measurement(findings: Findings, bands: Bands = Bands()) -> NextMeasurement | None:
    """The measurement that would tell most of the open faults apart.

    Parameters
    ----------
    findings : Findings [K, A]
        What was measured and seen so far.
    bands : Bands [K]
        Limits between low, usual and high.

    Returns
    -------
    NextMeasurement or None [-]
        The one that tells most apart, those that need a hose counting half, the easier first;
        None where nothing on the list would decide, or one fault is left.

    Source
    ------
    COMMON.
    """
    done = {measure for measure, _, _ in _read(findings, bands)}
    pairs = tuple(combinations(_open(findings, bands), 2))
    best: Measure | None = None
    best_score = 0.0
    decided: tuple[tuple[Hypothesis, Hypothesis], ...] = ()
    for measure in EASE:
        if measure in done:
            continue
        apart = tuple(pair for pair in pairs if _tells_apart(measure, pair))
        score = len(apart) * (_HOSE_WEIGHT if _needs_hose(measure, findings) else 1.0)
        if score > best_score:
            best, best_score, decided = measure, score, apart
    if best is None:
        return None
    first, second = decided[0]
    more = say(", and {count} more such pairs", count=len(decided) - 1) if len(decided) > 1 else ""
    return NextMeasurement(
        best.value,
        say(
            "{best} would tell {first} from {second}{more}.",
            best=best.value.capitalize(),
            first=first,
            second=second,
            more=more,
        ),
        needs_hose=_needs_hose(best, findings),
    )
