"""Weigh-in: what went in, what the hoses kept, and how it stands against the nameplate."""

import math
from dataclasses import dataclass

from chargebench.calc import charge
from chargebench.calc.charge import Arrangement, Verdict
from chargebench.calc.scale import Budget, charge_budget
from chargebench.calc.tolerance import charge_tolerance
from chargebench.steps.case import NOT_WORKED, Case, Cell, Figure, Table, Worked
from chargebench.steps.fill import COARSE_SCALE
from chargebench.steps.form import NOTHING, Answers
from chargebench.steps.weigh_line import Line, line_of
from chargebench.units import Q, Quantity
from chargebench.words import say

EVACUATED = "into an evacuated system"


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
        line = line_of(case, answers, target)
        if line is not None:
            worked.append(line)
            target = None if target is None else target - line.reading.into_equipment
    if not worked:
        return NOT_WORKED
    result = _result(case, nameplate.quantity.to("g"), tuple(worked))
    tables = (_budget_table(case, result.budget, result.verdict),)
    return Worked(_figures(case, result), _sentences(case, result), result, tables)


def _target(case: Case) -> Quantity | None:
    """What is to go in; None where the opening content is not known."""
    if case.step("weigh_in").text("kind") not in ("", EVACUATED):
        return None
    target: Quantity = case.nameplate("charge").quantity.to("g")
    return target


def _result(case: Case, nameplate: Quantity, lines: tuple[Line, ...]) -> WeighedIn:
    allowed, source, mark = tolerance(case)
    charged = charge.charged(line.reading for line in lines)
    half = Q(math.fsum(line.hose_doubt.m_as("g") for line in lines if _counts(line)), "g")
    scale = _coarsest(case)
    resolution = scale.quantity_or("resolution", COARSE_SCALE)
    budget = charge_budget(
        resolution=resolution,
        repeatability=scale.quantity_or("repeatability", Q(0, "g")),
        gain=scale.quantity_or("gain", Q(0, "percent")),
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
    return max(rows, key=lambda row: row.quantity_or("resolution", COARSE_SCALE).m_as("g"))


def _figures(case: Case, result: WeighedIn) -> tuple[Figure, ...]:
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
        Figure(
            "stop-reading", say("Stop reading, {cylinder}", cylinder=line.cylinder), line.stop_shown
        )
        for line in result.lines
        if line.stop_reading is not None
    ]
    if result.hose.m_as("g") > 0:
        figures.append(Figure("hose", "Left in the hose", result.hose))
        if result.nameplate.m_as("g") > 0:
            share = charge.share_of_charge(hose=result.hose, nameplate=result.nameplate)
            figures.append(Figure("hose-share", "Hose, share of the charge", share))
    figures += [
        Figure(
            f"budget-{part.name}",
            say("Doubt from {part} (k = 1)", part=part.name),
            case.shown(part.standard_uncertainty, finer=1),
            source="JCGM100",
        )
        for part in result.budget.lines
    ]
    return tuple(figures)


def _budget_table(case: Case, budget: Budget, verdict: Verdict | None) -> Table:
    """The doubt line by line, in the order of the guide: sources, combined, expanded."""
    rows = [(part.name, part.how, part.standard_uncertainty) for part in budget.lines]
    rows.append(("combined", "root of the sum of squares", budget.combined))
    rows.append(("expanded", "k = 2, about 95 %", budget.expanded))
    return Table(
        "budget",
        "Doubt, line by line",
        ("From", "How", "Standard uncertainty"),
        tuple((Cell(name), Cell(how), Cell(size, fine=True)) for name, how, size in rows),
        "" if verdict is None else _enough(case, verdict),
    )


def _enough(case: Case, verdict: Verdict) -> str:
    """Whether the scale decides, and the coarsest that would."""
    if verdict.resolution_enough is None:
        return _finer(case, verdict)
    if verdict.word == "scale too coarse to tell":
        return say("This scale can not decide. {finer}", finer=_finer(case, verdict))
    return say(
        "This scale decides; one of up to {enough} resolution would, "
        "with all other doubt as it is.",
        enough=case.shown(verdict.resolution_enough, finer=1),
    )


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
            say(
                "In {charged} of {nameplate}: {verdict} (±{expanded}, k = 2).",
                charged=case.shown(result.charged),
                nameplate=case.shown(result.nameplate),
                verdict=result.verdict.word,
                expanded=case.shown(result.budget.expanded),
            )
        )
        if result.verdict.word == "scale too coarse to tell":
            says.append(_finer(case, result.verdict))
    assert case.refrigerant is not None
    way = charge.withdraw_as(case.refrigerant.kind)
    drawn = {line.text("drawn_as") for line in case.step("weigh_in").lines("lines")}
    if way.phase == "liquid" and "vapour" in drawn:
        says.append(
            say(
                "Draw {refrigerant} as liquid. {reason}",
                refrigerant=case.refrigerant.name,
                reason=way.reason,
            )
        )
    return tuple(says)


def _finer(case: Case, verdict: Verdict) -> str:
    if verdict.resolution_enough is None:
        return "No finer scale alone would decide: repeatability, gain or hose doubt are too large."
    return say(
        "A scale of {enough} resolution would decide.",
        enough=case.shown(verdict.resolution_enough),
    )
