"""One cylinder of a weigh-in: its readings, its hose, its stop reading."""

import math
from dataclasses import dataclass

from chargebench.calc import charge
from chargebench.calc.charge import Arrangement, CylinderLine
from chargebench.errors import ChargebenchError
from chargebench.fluids import gas_density, gas_density_ready, saturation
from chargebench.steps.case import Case
from chargebench.steps.fill import COARSE_SCALE
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import Q, Quantity, absolute, show
from chargebench.words import say

NO_HOSE = "no hose, closed at the equipment"
ROOM = Q(20, "degC")  # hose temperature where none is typed; said in the figures
# Half-width of a hose's content as a share of it: our own choice, not a standard. The bore of a
# 1/4 in hose is not uniform (4.8 to 6.35 mm met); a volume given by its maker is better known.
BORE_DOUBT = 0.20
VOLUME_DOUBT = 0.05


@dataclass(frozen=True, slots=True)
class Line:
    """One cylinder of a weigh-in, worked out."""

    cylinder: str
    reading: CylinderLine
    hose: Quantity
    hose_doubt: Quantity
    stop_reading: Quantity | None
    stop_shown: str = ""  # as the scale's display will show it
    hose_known: bool = True


def line_of(case: Case, answers: Answers, target: Quantity | None) -> Line | None:
    """A line worked out; None until start reading and arrangement are typed."""
    start, end = answers.quantity("start"), answers.quantity("end")
    arrangement = answers.text("arrangement")
    if start is None or not arrangement:
        return None
    hose, doubt, known = _hose(case, answers)
    stop = None
    if target is not None:
        stop = charge.stop_reading(
            start=start, target=target, hose=hose, arrangement=Arrangement(arrangement)
        )
    # Until the end is typed nothing has gone in; the stop reading is what is wanted then.
    reading = CylinderLine(
        Arrangement(arrangement),
        start=start.to("g"),
        end=(start if end is None else end).to("g"),
        hose=hose if end is not None else Q(0, "g"),
    )
    return Line(
        cylinder=answers.text("cylinder"),
        reading=reading,
        hose=hose,
        hose_doubt=doubt,
        stop_reading=stop,
        stop_shown="" if stop is None else _as_displayed(stop, case, answers),
        hose_known=known,
    )


def _as_displayed(stop: Quantity, case: Case, answers: Answers) -> str:
    """A reading as the scale shows it: in the unit it was read in, to its resolution."""
    start = answers.reading("start")
    assert start is not None
    row = case.instruments.get(answers.text("scale"), NOTHING)
    step = row.quantity_or("resolution", COARSE_SCALE).m_as(start.pint_unit)
    places = max(0, math.ceil(-math.log10(step) - 1e-9)) if step > 0 else 1
    return show(stop, str(start.pint_unit), places)


def hose_volume(answers: Answers) -> tuple[Quantity, float] | None:
    """Volume of a line's hose and the share it may be off by; None where it is not given."""
    volume = answers.quantity("hose_volume")
    if volume is not None:
        return volume, VOLUME_DOUBT
    length, bore = answers.quantity("hose_length"), answers.quantity("hose_bore")
    if length is None or bore is None:
        return None
    return charge.hose_volume(length=length, bore=bore), BORE_DOUBT


def _hose(case: Case, answers: Answers) -> tuple[Quantity, Quantity, bool]:
    """Hose content at disconnection, its half-width, and whether it could be worked out."""
    nothing = Q(0, "g")
    state = answers.text("hose_state")
    volume = hose_volume(answers)
    if volume is None or state in ("", NO_HOSE):
        return nothing, nothing, True
    try:
        density = _hose_density(case, answers, state)
    except ChargebenchError:
        density = None
    if density is None:
        return nothing, nothing, False
    content = charge.hose_content(volume=volume[0], density=density)
    return content, content * volume[1], True


def _hose_density(case: Case, answers: Answers, state: str) -> Quantity | None:
    assert case.refrigerant is not None
    name = case.refrigerant.name
    temperature = answers.quantity_or("hose_temperature", ROOM)
    if state == "liquid":
        return saturation(name).liquid_density(temperature)
    if state == "saturated vapour":
        return saturation(name).vapour_density(temperature)
    pressure = answers.reading("hose_pressure")
    if pressure is None or not gas_density_ready():
        return None
    return gas_density(
        name, temperature=temperature, pressure=absolute(pressure, case.air_pressure("weigh_in"))
    )


def refusals(case: Case) -> dict[str, str]:
    """What a weigh-in is refused for, beside wrong and missing fields."""
    if case.refrigerant is None or case.nameplate("charge") is None:
        return {"kind": "Expected refrigerant and charge at the nameplate first."}
    fields: dict[str, str] = {}
    for number, answers in enumerate(case.step("weigh_in").lines("lines")):
        fields |= {f"lines[{number}].{key}": says for key, says in _line_refusals(case, answers)}
    return fields


def _line_refusals(case: Case, answers: Answers) -> list[tuple[str, str]]:
    found: list[tuple[str, str]] = []
    if answers.text("cylinder") not in case.cylinders:
        found.append(("cylinder", "Expected a cylinder of the register."))
    if answers.text("scale") not in case.instruments:
        found.append(("scale", "Expected a scale of the register."))
    state = answers.text("hose_state")
    if state != NO_HOSE and hose_volume(answers) is None:
        found.append(
            ("hose_length", "Expected length and bore of the hose, or its volume; or no hose.")
        )
    if state == "vapour at suction pressure" and answers.reading("hose_pressure") is None:
        found.append(("hose_pressure", "Expected the pressure in the hose at disconnection."))
    line = line_of(case, answers, None)
    if line is None:
        return found
    if line.reading.left_cylinder.m_as("g") <= 0:
        found.append(("end", _nothing_charged(line)))
    elif line.reading.into_equipment.m_as("g") < 0:
        found.append(("hose_state", "The hose would hold more than left the cylinder."))
    if not line.hose_known:
        found.append(
            ("hose_state", "The hose's content can not be worked out from these readings.")
        )
    return found


def _nothing_charged(line: Line) -> str:
    wanted = "more" if line.reading.arrangement is Arrangement.EQUIPMENT else "less"
    return say(
        "Expected {wanted} at the end than at the start; nothing was charged.", wanted=wanted
    )
