"""Pressure test: held against temperature with real nitrogen density, and what it could see."""

from dataclasses import dataclass

from chargebench.calc import pressure_test
from chargebench.calc.pressure_test import PressureVerdict, State
from chargebench.errors import ChargebenchError, PressureTooHigh
from chargebench.fluids import gas_density, gas_density_ready
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.steps.form import NOTHING
from chargebench.units import Q, Quantity

# Where the instruments' rows and the form say nothing: coarse values, our own choice.
GAUGE = Q(0.1, "bar")
THERMOMETER = Q(1, "kelvin")


@dataclass(frozen=True, slots=True)
class PressureTested:
    """A pressure test judged."""

    verdict: PressureVerdict
    hold: Quantity | None


def work_out(case: Case) -> Worked:
    """Verdict on the standing pressure test as typed so far."""
    start, end = state(case, "start"), state(case, "end")
    if start is None or end is None:
        return NOT_WORKED
    answers = case.step("pressure_test")
    volume = answers.quantity("volume")
    if volume is None:
        volume = case.equipment.quantity("volume")
    hold = answers.quantity("hold")
    try:
        verdict = pressure_test.judge(
            start=start,
            end=end,
            gauge_resolution=_gauge(case),
            thermometer=_thermometer(case),
            volume=volume,
            time=hold if hold is not None and hold.m_as("s") > 0 else None,
        )
    except ChargebenchError as refusal:
        return Worked(sentences=(str(refusal),))
    result = PressureTested(verdict, hold)
    return Worked(_figures(case, result), _sentences(case, result), result)


def state(case: Case, when: str) -> State | None:
    """The nitrogen at start or end, as typed so far."""
    answers = case.step("pressure_test")
    temperature = answers.quantity(f"{when}_temperature")
    try:
        pressure = case.absolute("pressure_test", f"{when}_pressure")
    except ChargebenchError:
        return None
    if pressure is None or temperature is None:
        return None
    return State(pressure, temperature, _density(temperature, pressure))


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
            Figure("smallest-leak", "Smallest leak it could see", f"{leak.m:.2g} mbar L/s")
        )
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


def _sentences(case: Case, result: PressureTested) -> tuple[str, ...]:
    verdict = result.verdict
    drop, doubt = verdict.drop.to("kPa"), verdict.expanded_uncertainty.to("kPa")
    says = [
        (
            f"Pressure test: {verdict.word}; {case.shown(drop)} beyond what temperature "
            f"explains, ±{case.shown(doubt)}."
        )
    ]
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
            pressure_test.check_test_pressure(
                planned=reading.quantity, design_pressures=design_pressures(case)
            )
        except PressureTooHigh as refusal:
            fields["start_pressure"] = str(refusal)
    if case.step("pressure_test").yes("regulated") is False:
        fields["regulated"] = "Expected a regulator and a relief device before pressure goes in."
    return fields
