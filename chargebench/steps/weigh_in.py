"""Weigh-in: what went in, what the hoses kept, and how it stands against the nameplate."""

import math
from dataclasses import dataclass

from chargebench.calc import charge
from chargebench.calc.charge import Arrangement, CylinderLine, Verdict
from chargebench.calc.scale import Budget, charge_budget
from chargebench.calc.tolerance import charge_tolerance
from chargebench.errors import ChargebenchError
from chargebench.fluids import gas_density, gas_density_ready, saturation
from chargebench.ledger import Transfer
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.steps.fill import COARSE_SCALE, ledger_tolerance_mg, tare_mg
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import Q, Quantity, absolute, mg, shown

EVACUATED = "into an evacuated system"
FULL = "brought to full charge"
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
    hose_known: bool = True


@dataclass(frozen=True, slots=True)
class WeighedIn:
    """A weigh-in against the nameplate."""

    nameplate: Quantity
    tolerance: Quantity
    tolerance_source: str
    tolerance_mark: str
    opening: Quantity | None  # None: not weighed, so the total is not known
    charged: Quantity
    hose: Quantity
    budget: Budget
    verdict: Verdict | None
    lines: tuple[Line, ...]
    resolution: Quantity

    @property
    def total(self) -> Quantity | None:
        """What is in the equipment, where the opening content is known."""
        if self.opening is None:
            return None
        total: Quantity = self.opening + self.charged
        return total


def tolerance(case: Case) -> tuple[Quantity, str, str]:
    """Charge tolerance with its source and mark: the nameplate's, else the rule set's default."""
    typed = case.nameplate("tolerance")
    if typed is not None:
        return typed.quantity.to("g"), "COMMON, the maker's tolerance as typed", ""
    nameplate = case.nameplate("charge").quantity
    default = charge_tolerance(
        nameplate=nameplate,
        safety_class=case.refrigerant.safety_class if case.refrigerant else "",
        rule=case.rule_set.charge,
    )
    assert default is not None, "a rule set's last tolerance fits every equipment"
    return default.mass.to("g"), f"{default.by.source}, {default.row.title}", default.by.mark


def work_out(case: Case) -> Worked:
    """Figures, verdict and stop readings of the weigh-in as typed so far."""
    nameplate = case.nameplate("charge")
    lines = case.step("weigh_in").lines("lines")
    if nameplate is None or case.refrigerant is None or not lines:
        return NOT_WORKED
    target = _target(case)
    worked: list[Line] = []
    for answers in lines:
        line = _line(case, answers, target)
        if line is not None:
            worked.append(line)
            target = None if target is None else target - line.reading.into_equipment
    if not worked:
        return NOT_WORKED
    result = _result(case, nameplate.quantity.to("g"), tuple(worked))
    return Worked(_figures(result), _sentences(case, result), result)


def _target(case: Case) -> Quantity | None:
    """What is to go in; None where the opening content is not known."""
    if case.step("weigh_in").text("kind") not in ("", EVACUATED):
        return None
    target: Quantity = case.nameplate("charge").quantity.to("g")
    return target


def _line(case: Case, answers: Answers, target: Quantity | None) -> Line | None:
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
    return Line(answers.text("cylinder"), reading, hose, doubt, stop, known)


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
    if volume is None or state in ("", "no hose, closed at the equipment"):
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
    temperature = answers.quantity("hose_temperature") or ROOM
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
    if state != "no hose, closed at the equipment" and hose_volume(answers) is None:
        found.append(
            ("hose_length", "Expected length and bore of the hose, or its volume; or no hose.")
        )
    if state == "vapour at suction pressure" and answers.reading("hose_pressure") is None:
        found.append(("hose_pressure", "Expected the pressure in the hose at disconnection."))
    line = _line(case, answers, None)
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
    return f"Expected {wanted} at the end than at the start; nothing was charged."


def _result(case: Case, nameplate: Quantity, lines: tuple[Line, ...]) -> WeighedIn:
    allowed, source, mark = tolerance(case)
    charged = charge.charged(line.reading for line in lines)
    half = Q(math.fsum(line.hose_doubt.m_as("g") for line in lines if _counts(line)), "g")
    scale = _coarsest(case)
    resolution = scale.quantity("resolution") or COARSE_SCALE
    budget = charge_budget(
        resolution=resolution,
        repeatability=scale.quantity("repeatability") or Q(0, "g"),
        gain=scale.quantity("gain") or Q(0, "percent"),
        net=charged,
        hose_half_width=half,
        lines=len(lines),
    )
    kind = case.step("weigh_in").text("kind")
    opening = Q(0, "g") if kind in ("", EVACUATED) else None
    verdict = None
    if opening is not None and charged.m_as("g") > 0:
        verdict = charge.verdict(
            charged=charged,
            nameplate=nameplate,
            tolerance=allowed,
            expanded_uncertainty=budget.expanded,
            resolution=resolution,
            lines=len(lines),
        )
    return WeighedIn(
        nameplate=nameplate,
        tolerance=allowed,
        tolerance_source=source,
        tolerance_mark=mark,
        opening=opening,
        charged=charged,
        hose=Q(math.fsum(line.reading.hose.m_as("g") for line in lines), "g"),
        budget=budget,
        verdict=verdict,
        lines=lines,
        resolution=resolution,
    )


def _counts(line: Line) -> bool:
    """Whether a line's hose content is part of the doubt: not with the equipment on the scale."""
    return line.reading.arrangement is not Arrangement.EQUIPMENT and line.reading.hose.m_as("g") > 0


def _coarsest(case: Case) -> Answers:
    """Row of the coarsest scale used: it decides the doubt of the whole charge."""
    rows = [
        case.instruments.get(line.text("scale"), NOTHING)
        for line in case.step("weigh_in").lines("lines")
    ]
    return max(rows, key=lambda row: (row.quantity("resolution") or COARSE_SCALE).m_as("g"))


def _figures(result: WeighedIn) -> tuple[Figure, ...]:
    doubt = result.budget.expanded
    figures = [Figure("charged", "Charged", result.charged, doubt, result.nameplate, "JCGM100")]
    if result.verdict is not None:
        figures.append(
            Figure(
                "difference",
                "Against the nameplate",
                result.verdict.difference,
                doubt,
                result.tolerance,
                result.tolerance_source,
                result.tolerance_mark,
            )
        )
    figures += [
        Figure("stop-reading", f"Stop reading, {line.cylinder}", line.stop_reading)
        for line in result.lines
        if line.stop_reading is not None
    ]
    if result.hose.m_as("g") > 0:
        figures.append(Figure("hose", "Left in the hose", result.hose))
        share = charge.share_of_charge(hose=result.hose, nameplate=result.nameplate)
        figures.append(Figure("hose-share", "Hose, share of the charge", share))
    figures += [
        Figure(f"budget-{part.name}", f"Doubt from {part.name} (k = 1)", part.standard_uncertainty)
        for part in result.budget.lines
    ]
    return tuple(figures)


def _sentences(case: Case, result: WeighedIn) -> tuple[str, ...]:
    says: list[str] = []
    if result.verdict is None:
        if result.opening is None:
            says.append(
                "What was in the equipment before was not weighed, so the mass alone can not tell "
                "whether the charge is right."
            )
    else:
        says.append(
            f"In {shown(result.charged, 'SI')} of {shown(result.nameplate, 'SI')}: "
            f"{result.verdict.word} (±{shown(result.budget.expanded, 'SI')}, k = 2)."
        )
        if result.verdict.word == "scale too coarse to tell":
            says.append(_finer(result.verdict))
    assert case.refrigerant is not None
    way = charge.withdraw_as(case.refrigerant.kind)
    drawn = {line.text("drawn_as") for line in case.step("weigh_in").lines("lines")}
    if way.phase == "liquid" and "vapour" in drawn:
        says.append(f"Draw {case.refrigerant.name} as liquid. {way.reason}")
    return tuple(says)


def _finer(verdict: Verdict) -> str:
    if verdict.resolution_enough is None:
        return "No finer scale alone would decide: repeatability, gain or hose doubt are too large."
    return f"A scale of {shown(verdict.resolution_enough, 'SI')} resolution would decide."


def movements(case: Case) -> tuple[Transfer, ...]:
    """Mass lines: cylinder to equipment, hose content to the atmosphere, what was short before."""
    transfers: list[Transfer] = []
    equipment = f"equipment:{case.equipment_id}"
    charged_mg = 0
    for answers in case.step("weigh_in").lines("lines"):
        line = _line(case, answers, None)
        assert line is not None
        into, hose = _exact_mg(line, answers)
        start, end = answers.reading("start"), answers.reading("end")
        assert start is not None
        assert end is not None
        typed = f"{start.text} → {end.text}"
        cylinder = f"cylinder:{line.cylinder}"
        name = case.cylinders[line.cylinder].text("refrigerant")
        if into:
            transfers.append(Transfer(cylinder, equipment, name, into, typed))
        if hose:
            transfers.append(Transfer(cylinder, "atmosphere", name, hose, "left in the hose"))
        charged_mg += into
    if case.step("weigh_in").text("kind") == FULL:
        transfers += _short_before(case, charged_mg)
    return tuple(transfers)


def _exact_mg(line: Line, answers: Answers) -> tuple[int, int]:
    """Milligrams into the equipment and left in the hose, from the exact readings."""
    start, end = answers.mass_mg("start"), answers.mass_mg("end")
    assert start is not None
    assert end is not None
    hose = mg(line.reading.hose)
    if line.reading.arrangement is Arrangement.EQUIPMENT:
        return end - start, hose
    return start - end - hose, hose


def _short_before(case: Case, charged_mg: int) -> list[Transfer]:
    """Brought to full charge: what the ledger has above the nameplate had gone before."""
    assert case.refrigerant is not None
    full = case.nameplate("charge").mass_mg
    excess = case.equipment_content_mg + charged_mg - full
    if excess <= 0:
        return []
    lost = min(excess, case.equipment_content_mg)
    place = f"equipment:{case.equipment_id}"
    name = case.refrigerant.name
    return [Transfer(place, "atmosphere", name, lost, "presumed lost")] if lost > 0 else []


def overdraw_allowed_mg(case: Case) -> dict[str, int]:
    """How far below zero a cylinder may go, for what scale and ledger can not tell."""
    allowed: dict[str, int] = {}
    for answers in case.step("weigh_in").lines("lines"):
        cylinder = answers.text("cylinder")
        held = sum(case.cylinder_content_mg.get(cylinder, {}).values())
        gross = held + (tare_mg(case.cylinders.get(cylinder, NOTHING)) or 0)
        scale = case.instruments.get(answers.text("scale"))
        allowed[f"cylinder:{cylinder}"] = ledger_tolerance_mg(gross, scale, case.rule_set)
    return allowed
