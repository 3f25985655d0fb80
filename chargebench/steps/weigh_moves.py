"""What signing a weigh-in moves, to the milligram."""

from chargebench.calc.charge import Arrangement
from chargebench.ledger import Transfer
from chargebench.steps.case import Case
from chargebench.steps.fill import ledger_tolerance_mg, tare_mg
from chargebench.steps.form import NOTHING, Answers
from chargebench.steps.weigh_line import Line, line_of
from chargebench.units import mg

FULL = "brought to full charge"


def movements(case: Case) -> tuple[Transfer, ...]:
    """Mass lines: cylinder to equipment, hose content to the atmosphere, what was short before."""
    transfers: list[Transfer] = []
    equipment = f"equipment:{case.equipment_id}"
    charged_mg = 0
    for answers in case.step("weigh_in").lines("lines"):
        line = line_of(case, answers, None)
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
