"""Recovery: what came out, against the nameplate and against what had to come out."""

from dataclasses import dataclass

from chargebench.calc import recovery
from chargebench.errors import ReadingRefused
from chargebench.ledger import Transfer
from chargebench.steps.case import Case, Figure, Worked
from chargebench.steps.evacuation import presumed_lost
from chargebench.steps.fill import net_uncertainty_mg, overfull, unfillable
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import Quantity, from_mg
from chargebench.words import say

RECOVERED = "recovered"
RELEASED = "released where the law allows"
NOTHING_LEFT = "nothing left in the system"


@dataclass(frozen=True, slots=True)
class Recovered:
    """A recovery against nameplate and requirement; masses in milligrams."""

    taken_mg: int
    doubt_mg: int
    released_mg: int
    nameplate_mg: int | None
    requirement: recovery.Requirement | None
    level: Quantity | None  # absolute pressure reached
    outcome: recovery.Result | None
    exemption: bool | None  # whether a release falls under an exemption of the rule set

    @property
    def missing_mg(self) -> int | None:
        """Nameplate less what came out."""
        if self.nameplate_mg is None:
            return None
        return self.nameplate_mg - self.taken_mg - self.released_mg


def line_mg(answers: Answers) -> int | None:
    """Net mass of one weighing line."""
    before, after = answers.mass_mg("before"), answers.mass_mg("after")
    return None if before is None or after is None else after - before


def work_out(case: Case) -> Worked:
    """Recovered and missing mass, and whether the required level is reached."""
    answers = case.step("recovery")
    if not answers.text("how"):
        return Worked()
    result = _result(case)
    figures = [
        Figure("taken", "Recovered", from_mg(result.taken_mg), from_mg(result.doubt_mg)),
    ]
    if result.released_mg:
        figures.append(Figure("released", "Released", from_mg(result.released_mg)))
    if result.missing_mg is not None:
        assert result.nameplate_mg is not None
        figures.append(
            Figure(
                "missing",
                "Short of the nameplate",
                from_mg(result.missing_mg),
                from_mg(result.doubt_mg),
                from_mg(result.nameplate_mg),
            )
        )
    figures += _required(result)
    return Worked(tuple(figures), _sentences(case, result), result)


def _result(case: Case) -> Recovered:
    answers = case.step("recovery")
    nets = [
        (net, net_uncertainty_mg(case.instruments.get(line.text("scale"))))
        for line in answers.lines("lines")
        if (net := line_mg(line)) is not None
    ]
    taken = sum(net for net, _ in nets)
    nameplate = case.nameplate("charge")
    nameplate_mg = None if nameplate is None else nameplate.mass_mg
    requirement = _requirement(case)
    level, _ = _level(case)
    released = (answers.mass_mg("released") or 0) if answers.text("how") == RELEASED else 0
    outcome = None
    if requirement is not None:
        outcome = recovery.result(
            requirement,
            charge=None if nameplate_mg is None else from_mg(nameplate_mg),
            recovered=from_mg(taken) if nets else None,
            absolute_pressure=level,
        )
    return Recovered(
        taken_mg=taken,
        doubt_mg=round(sum(doubt**2 for _, doubt in nets) ** 0.5),
        released_mg=released,
        nameplate_mg=nameplate_mg,
        requirement=requirement,
        level=level,
        outcome=outcome,
        exemption=_exempt(case) if answers.text("how") == RELEASED else None,
    )


def _level(case: Case) -> tuple[Quantity | None, str]:
    """Absolute pressure reached, or why what is typed can not be one."""
    try:
        return case.absolute("recovery", "level"), ""
    except ReadingRefused as refusal:
        return None, str(refusal)


def _requirement(case: Case) -> recovery.Requirement | None:
    rule, charge = case.rule_set.recovery, case.nameplate("charge")
    if rule is None or charge is None or case.refrigerant is None:
        return None
    answers = case.step("recovery")
    if answers.text("opening") == "not opened" or answers.text("how") == RELEASED:
        return None  # a release is judged by its exemption, not by a level
    machine = case.instruments.get(answers.text("machine"), NOTHING)
    return recovery.required(
        pressure_class=case.refrigerant.pressure_class,
        full_charge=charge.quantity,
        small_appliance=recovery.is_small_appliance(
            charge=charge.quantity,
            factory_sealed=bool(case.equipment.yes("factory_sealed")),
            rule=rule,
        ),
        machine_made_on=machine.date("made"),
        compressor_works=bool(answers.yes("compressor_works")),
        rule=rule,
    )


def _exempt(case: Case) -> bool:
    if case.refrigerant is None:
        return False
    return (
        recovery.release_allowed(
            case.refrigerant.name,
            cabinet=case.equipment.text("cabinet"),
            on=case.today,
            rule_set=case.rule_set,
        )
        is not None
    )


def _required(result: Recovered) -> list[Figure]:
    wanted, outcome = result.requirement, result.outcome
    if wanted is None or outcome is None:
        return []
    rule = wanted.share or wanted.level
    assert rule is not None
    source = f"{rule.source}, {rule.place}"
    figures: list[Figure] = []
    if wanted.share is not None and outcome.share is not None:
        needed = wanted.share.quantity.to("percent")
        figures.append(
            Figure("share", "Share recovered", outcome.share, None, needed, source, rule.mark)
        )
    if result.level is not None:
        figures.append(
            Figure(
                "level",
                "Level reached",
                result.level,
                limit=wanted.absolute_pressure.to("bar"),
                source=source,
                mark=rule.mark,
            )
        )
    figures.append(
        Figure("required", "Required recovery", outcome.word, source=source, mark=rule.mark)
    )
    return figures


def _sentences(case: Case, result: Recovered) -> tuple[str, ...]:
    says = (
        [say("Recovered {mass}.", mass=case.shown(from_mg(result.taken_mg)))]
        if result.taken_mg
        else []
    )
    missing = result.missing_mg
    if missing is not None and missing > result.doubt_mg:
        says.append(
            say(
                "{missing} short of the nameplate: it had leaked, was never charged right, "
                "or is still in oil and hoses.",
                missing=case.shown(from_mg(missing)),
            )
        )
    return tuple(says)


def refusals(case: Case) -> dict[str, str]:
    """What a recovery is refused for, beside wrong and missing fields."""
    answers = case.step("recovery")
    how = answers.text("how")
    fields: dict[str, str] = {}
    if case.refrigerant is None:
        fields["how"] = "Expected the refrigerant at the nameplate first."
    if how == RECOVERED and not answers.lines("lines"):
        fields["lines"] = "Expected a cylinder with its weight before and after."
    if how != RECOVERED and answers.lines("lines"):
        fields["how"] = "Expected “recovered”, for there are weighings of a cylinder."
    if how == RELEASED:
        if answers.mass_mg("released") is None:
            fields["released"] = "Expected the mass released; the nameplate's where not known."
        if not answers.text("ground"):
            fields["ground"] = "Expected the rule that allows this release."
    _, impossible = _level(case)
    if impossible:
        fields["level"] = impossible
    for number, line in enumerate(answers.lines("lines")):
        fields |= {f"lines[{number}].{key}": says for key, says in _line_refusals(case, line)}
    return fields


def _line_refusals(case: Case, line: Answers) -> list[tuple[str, str]]:
    cylinder = line.text("cylinder")
    row = case.cylinders.get(cylinder)
    if row is None:
        return [("cylinder", "Expected a cylinder of the register.")]
    found: list[tuple[str, str]] = []
    if line.text("scale") not in case.instruments:
        found.append(("scale", "Expected a scale of the register."))
    if reason := unfillable(cylinder, row):
        return [*found, ("cylinder", reason)]
    net = line_mg(line)
    if net is not None and net <= 0:
        found.append(("after", "Expected more after than before; nothing was recovered."))
    held = sum(case.cylinder_content_mg.get(cylinder, {}).values())
    over = overfull(cylinder, row, held, net or 0, case.rule_set, case.units)
    if over and not line.text("override"):
        found.append(("after", over))
    return found


def movements(case: Case) -> tuple[Transfer, ...]:
    """Mass lines: equipment to cylinder or atmosphere; what was above the assumed content."""
    assert case.refrigerant is not None
    answers = case.step("recovery")
    name = case.refrigerant.name
    equipment = f"equipment:{case.equipment_id}"
    lines = [
        Transfer(equipment, f"cylinder:{line.text('cylinder')}", name, net, _typed(line))
        for line in answers.lines("lines")
        if (net := line_mg(line))
    ]
    released = answers.reading("released")
    if answers.text("how") == RELEASED and released is not None and released.mass_mg:
        lines.append(
            Transfer(equipment, "atmosphere", name, released.mass_mg, f"released: {released.text}")
        )
    above = sum(line.mass_mg for line in lines) - case.equipment_content_mg
    if above > 0:
        lines.insert(0, Transfer("outside", equipment, name, above, "found above the assumed"))
    if answers.text("how") == NOTHING_LEFT:
        lines += presumed_lost(case)
    return tuple(lines)


def _typed(line: Answers) -> str:
    before, after = line.reading("before"), line.reading("after")
    assert before is not None
    assert after is not None
    return f"{before.text} → {after.text}"
