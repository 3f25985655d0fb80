"""Pressure test: held against temperature with real nitrogen density, and what it could see."""

import math
from dataclasses import dataclass

from chargebench.calc import pressure_test
from chargebench.calc.leak_flow import FlowRange, Gas, as_refrigerant
from chargebench.calc.pressure_test import PressureVerdict, State, time_needed
from chargebench.errors import ChargebenchError, PressureTooHigh
from chargebench.fluids import gas_density, gas_density_ready, saturation
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.steps.form import NOTHING
from chargebench.units import YEARLY, Q, Quantity, Reading, System, absolute, brief, digits, gauge
from chargebench.words import say

# Where the instruments' rows and the form say nothing: coarse values, our own choice.
GAUGE = Q(0.1, "bar")
THERMOMETER = Q(1, "kelvin")
NITROGEN_MOLAR = Q(28.0134, "g/mol")
NITROGEN_VISCOSITY = Q(1.76e-5, "Pa * s")  # at 20 °C (from memory)


@dataclass(frozen=True, slots=True)
class PressureTested:
    """A pressure test judged."""

    verdict: PressureVerdict
    hold: Quantity | None
    volume: Quantity | None = None
    seen: FlowRange | None = None  # the smallest leak as refrigerant: an order of magnitude


def work_out(case: Case) -> Worked:
    """Verdict on the standing pressure test as typed so far."""
    start, end = state(case, "start"), state(case, "end")
    if start is None or end is None:
        return Worked(_beforehand(case)) if case.step("pressure_test").values else NOT_WORKED
    hold = case.step("pressure_test").quantity("hold")
    try:
        verdict = judged(case, start, end, hold)
    except ChargebenchError as refusal:
        return Worked(_beforehand(case), sentences=(str(refusal),))
    result = PressureTested(verdict, hold, _volume(case), _as_refrigerant(case, verdict, start))
    return Worked((*_figures(case, result), *_beforehand(case)), _sentences(case, result), result)


def _beforehand(case: Case) -> tuple[Figure, ...]:
    """What holds before pressure goes in: how high at most, and which gas may be traced."""
    figures: list[Figure] = []
    rule = case.rule_set.pressure_test
    sides = design_pressures(case)
    if sides:
        lowest = min(sides, key=lambda side: sides[side].m_as("Pa"))
        cited = rule.not_above
        unit = str(sides[lowest].units)
        figures.append(
            Figure(
                "not-above",
                say("Not above, design pressure of the {lowest}", lowest=lowest),
                gauge(sides[lowest], unit, 1),
                source=f"{cited.source}, {cited.place}",
                mark=cited.mark,
            )
        )
    tracer = rule.trace_gas
    figures.append(
        Figure(
            "trace-gas",
            "Trace gas",
            tracer.text,
            source=f"{tracer.source}, {tracer.place}",
            mark=tracer.mark,
        )
    )
    return tuple(figures)


def _as_refrigerant(case: Case, verdict: PressureVerdict, start: State) -> FlowRange | None:
    """The smallest leak of nitrogen as refrigerant a year."""
    if verdict.smallest_leak is None or case.refrigerant is None:
        return None
    air = case.air_pressure("pressure_test")
    try:
        inside = saturation(case.refrigerant.name).dew_pressure(start.temperature)
        return as_refrigerant(
            leak=verdict.smallest_leak,
            test_gas=Gas(NITROGEN_MOLAR, start.pressure, air, NITROGEN_VISCOSITY),
            refrigerant=Gas(case.refrigerant.molar_mass, inside, air),
            temperature=start.temperature,
        )
    except ChargebenchError:
        return None


def flow_text(flow: FlowRange, system: System) -> str:
    """A flow of which only the order of magnitude is known."""
    unit, label = YEARLY[system]
    low, high = (digits(each.m_as(unit), 2) for each in (flow.lower, flow.upper))
    return say("{low} to {high} {label}", low=low, high=high, label=label)


def state(case: Case, when: str) -> State | None:
    """The nitrogen at start or end, as typed so far."""
    answers = case.step("pressure_test")
    return state_of(
        case, answers.reading(f"{when}_pressure"), answers.quantity(f"{when}_temperature")
    )


def state_of(case: Case, reading: Reading | None, temperature: Quantity | None) -> State | None:
    """The nitrogen at one reading of gauge and thermometer."""
    if reading is None or temperature is None:
        return None
    try:
        pressure = absolute(reading, case.air_pressure("pressure_test"))
    except ChargebenchError:
        return None
    return State(pressure, temperature, _density(temperature, pressure))


def judged(case: Case, start: State, end: State, hold: Quantity | None) -> PressureVerdict:
    """One reading against the first, with the instruments of this step."""
    return pressure_test.judge(
        start=start,
        end=end,
        gauge_resolution=_gauge(case),
        thermometer=_thermometer(case),
        volume=_volume(case),
        time=hold if hold is not None and hold.m_as("s") > 0 else None,
    )


def _volume(case: Case) -> Quantity | None:
    typed = case.step("pressure_test").quantity("volume")
    return case.equipment.quantity("volume") if typed is None else typed


def _density(temperature: Quantity, pressure: Quantity) -> Quantity | None:
    """Real density of nitrogen; None where it is not at hand, and the ideal law serves."""
    if not gas_density_ready():
        return None
    try:
        return gas_density("nitrogen", temperature=temperature, pressure=pressure)
    except ChargebenchError:
        return None


def _gauge(case: Case) -> Quantity:
    answers = case.step("pressure_test")
    row = case.instruments.get(answers.text("gauge"), NOTHING)
    return answers.quantity_or("gauge_resolution", row.quantity_or("pressure_resolution", GAUGE))


def _thermometer(case: Case) -> Quantity:
    return case.step("pressure_test").quantity_or("temperature_uncertainty", THERMOMETER)


def _figures(case: Case, result: PressureTested) -> tuple[Figure, ...]:
    verdict = result.verdict
    figures = [
        Figure("verdict", "Pressure test", str(verdict.word), source="JCGM100, 6.3.3"),
        Figure("expected", "Expected at the end", verdict.expected, source="COOLPROP"),
        Figure(
            "drop",
            "Drop beyond temperature",
            verdict.drop.to("kPa"),
            verdict.expanded_uncertainty.to("kPa"),
            verdict.expanded_uncertainty.to("kPa"),
        ),
    ]
    if verdict.smallest_leak is not None:
        leak = verdict.smallest_leak.to("mbar * L / s")
        figures.append(
            Figure(
                "smallest-leak",
                "Smallest leak it could see",
                say("{leak:.2g} mbar L/s", leak=leak.m),
            )
        )
        figures += _seen(case, result)
    least = case.rule_set.pressure_test.hold_at_least
    if result.hold is not None:
        figures.append(
            Figure(
                "hold",
                "Held for",
                result.hold.to("min"),
                limit=least.quantity.to("min"),
                source=f"{least.source}, {least.place}",
                mark=least.mark,
            )
        )
    return tuple(figures)


def _seen(case: Case, result: PressureTested) -> list[Figure]:
    """The smallest leak as refrigerant, and how long to hold for the leak that is wanted."""
    if result.seen is None:
        return []
    assert case.refrigerant is not None
    label = say(
        "The same as {refrigerant}, an order of magnitude", refrigerant=case.refrigerant.name
    )
    figures = [
        Figure("smallest-loss", label, flow_text(result.seen, case.units), source="LEAKFLOW")
    ]
    wanted = case.step("pressure_test").quantity("leak_wanted")
    leak = result.verdict.smallest_leak
    if wanted is None or wanted.m_as("g/year") <= 0 or leak is None or result.volume is None:
        return figures
    # The hole may pass more or less refrigerant than nitrogen: the longer time is the safe one.
    share = (wanted / result.seen.upper).m_as("")
    hold = time_needed(
        expanded_uncertainty=result.verdict.expanded_uncertainty,
        volume=result.volume,
        leak=leak * share,
    )
    figures.append(
        Figure("time-needed", say("Hold to see {wanted}", wanted=case.shown(wanted)), hold)
    )
    assert result.hold is not None
    still = hold - result.hold
    if still.m_as("min") > 0:
        figures.append(Figure("time-still-needed", "Time still needed for it", still))
    return figures


def _sentences(case: Case, result: PressureTested) -> tuple[str, ...]:
    verdict = result.verdict
    drop, doubt = verdict.drop.to("kPa"), verdict.expanded_uncertainty.to("kPa")
    says = [
        (
            say(
                "Pressure test: {verdict}; {drop} beyond what temperature explains, ±{doubt}.",
                verdict=verdict.word,
                drop=case.shown(drop),
                doubt=case.shown(doubt),
            )
        )
    ]
    if verdict.smallest_leak is not None:
        leak = verdict.smallest_leak.to("mbar * L / s")
        says.append(
            say("A leak below {leak:.2g} mbar L/s of nitrogen can not be excluded.", leak=leak.m)
        )
    least = case.rule_set.pressure_test.hold_at_least.quantity
    if result.hold is not None and result.hold < least:
        more = math.ceil((least - result.hold).m_as("min") - 1e-9)
        says.append(
            say(
                "Hold {more} more minutes: the rule set wants {least}.",
                more=more,
                least=brief(least, case.units),
            )
        )
    if verdict.ideal:
        says.append("Worked out by the ideal gas law; its error is in the doubt.")
    return tuple(says)


def design_pressures(case: Case) -> dict[str, Quantity]:
    """Design pressures the nameplate gives, by side, above the air's."""
    found: dict[str, Quantity] = {}
    for side in ("low side", "high side"):
        reading = case.nameplate(f"{side.split()[0]}_side_design")
        if reading is None:
            continue
        # A nameplate may say psia: above the air's it is less by the air's pressure.
        air = Q(0, "Pa") if reading.gauge else case.air_pressure("pressure_test")
        found[side] = (reading.quantity - air).to(reading.pint_unit)
    return found


def refusals(case: Case) -> dict[str, str]:
    """A test above the lowest design pressure, or at none known, is refused."""
    reading = case.step("pressure_test").reading("start_pressure")
    fields: dict[str, str] = {}
    if reading is not None:
        if not reading.gauge:
            return {"start_pressure": "Expected a gauge pressure, such as 150 psig or 10 bar(g)."}
        try:
            sides = design_pressures(case)
            if sides and "low side" not in sides:
                fields["start_pressure"] = (
                    "Expected the low-side design pressure too: the low side is the weaker one, "
                    "and is under test unless it is shut off."
                )
            pressure_test.check_test_pressure(planned=reading.quantity, design_pressures=sides)
        except PressureTooHigh as refusal:
            fields["start_pressure"] = str(refusal)
    if case.step("pressure_test").yes("regulated") is False:
        fields["regulated"] = "Expected a regulator and a relief device before pressure goes in."
    return fields
