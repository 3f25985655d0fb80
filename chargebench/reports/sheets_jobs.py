"""Sheets of the jobs: one row a job, all that was typed, what it came to, flags, checklists."""

from collections.abc import Iterator, Mapping, Sequence

from chargebench.flags import LEVELS, Flag
from chargebench.reports.content import AuditContent, JobRecord, StepRecord, Tick
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.table import Column, Form, Row, Table, clock, kg
from chargebench.sources import checked
from chargebench.steps import STEPS, Figure
from chargebench.steps.form import Asks, Field
from chargebench.steps.taken import sources
from chargebench.units import Quantity, Reading, unit_for, ureg
from chargebench.units.tables import LABELS

JOBS = (
    Column("Job", 10),
    Column("Title", 32, Form.LONG),
    Column("Equipment", 10),
    Column("Refrigerant", 12),
    Column("Nameplate charge as typed", 13),
    Column("Nameplate charge [kg]", 12, Form.MASS),
    Column("Charged [kg]", 11, Form.MASS),
    Column("Recovered [kg]", 11, Form.MASS),
    Column("Released or lost [kg]", 11, Form.MASS),
    Column("Opened", 16, Form.WHEN),
    Column("Closed", 16, Form.WHEN),
    Column("State", 9),
    Column("Opened by", 16),
    Column("Why", 30, Form.LONG),
    Column("Complaint", 30, Form.LONG),
    Column("Found", 44, Form.LONG),
    Column("Cause", 36, Form.LONG),
    Column("Done", 44, Form.LONG),
    Column("Settings changed", 36, Form.LONG),
    Column("Left", 18),
    Column("Worst flag", 50, Form.LONG),
    Column("Follow-up", 44, Form.LONG),
)
AS_TYPED = (
    Column("Job", 10),
    Column("Entry", 8, Form.WHOLE),
    Column("Step", 14),
    Column("Signed at", 16, Form.WHEN),
    Column("By", 16),
    Column("Field", 34, Form.LONG),
    Column("As typed", 44, Form.LONG),
    Column("Typed or read", 16),
    Column("Understood as", 14, Form.MASS),
    Column("Unit", 10),
    Column("Counts", 28, Form.LONG),
)
FIGURES = (
    Column("Job", 10),
    Column("Entry", 8, Form.WHOLE),
    Column("Step", 14),
    Column("Figure", 40, Form.LONG),
    Column("Says", 60, Form.LONG),
    Column("Value", 14, Form.MASS),
    Column("Unit", 10),
    Column("± (k = 2)", 12, Form.MASS),
    Column("Limit", 14, Form.MASS),
    Column("Source", 34, Form.LONG),
    Column("Checked", 11),
)
FLAGS = (
    Column("Level", 8),
    Column("About", 28),
    Column("Says", 90, Form.LONG),
    Column("Figure", 18),
    Column("Limit", 18),
    Column("Source", 34, Form.LONG),
    Column("Checked", 11),
)
CHECKLISTS = (
    Column("Job", 10),
    Column("Equipment", 28, Form.LONG),
    Column("Refrigerant", 12),
    Column("Class", 8),
    Column("Step", 14),
    Column("Line", 80, Form.LONG),
    Column("Ticked by", 18),
    Column("Ticked at", 16, Form.WHEN),
    Column("State", 15),
    Column("Source", 16),
    Column("Place in it", 30, Form.LONG),
    Column("Checked", 11),
)


def jobs(content: AuditContent, totals: Totals) -> Table:
    """One row a job."""
    return Table(
        "Jobs",
        "One row for each visit or repair. Masses are those of the transfers sheet.",
        JOBS,
        (_job(job, totals.by_job.get(job.case.job, {})) for job in content.jobs),
    )


def _job(job: JobRecord, moved: Mapping[str, int]) -> Row:
    case = job.case
    charge = case.nameplate("charge")
    plate, findings, close = (case.step(key) for key in ("nameplate", "findings", "close"))
    return (
        case.number,
        job.title,
        case.equipment_id,
        case.refrigerant.name if case.refrigerant else "",
        charge.text if isinstance(charge, Reading) else "",
        kg(charge.mass_mg) if isinstance(charge, Reading) else None,
        *(kg(moved.get(key, 0)) for key in ("charged", "recovered", "released or lost")),
        clock(job.opened_at),
        clock(job.closed_at),
        case.state,
        job.by,
        job.reason,
        plate.text("complaint"),
        findings.text("found"),
        findings.text("cause"),
        findings.text("done"),
        "; ".join(
            f"{line.text('what')}: {line.text('before')} → {line.text('after')}"
            for line in findings.lines("settings")
        ),
        close.text("ends"),
        f"{job.flags[0].level}: {job.flags[0].says}" if job.flags else "",
        _follow_up(job),
    )


def _follow_up(job: JobRecord) -> str:
    answers = job.case.step("follow_up")
    parts = [answers.text("what")]
    for word, key in (("due", "due"), ("done", "done_on")):
        if (day := answers.date(key)) is not None:
            parts.append(f"{word} {day.isoformat()}")
    parts.append(answers.text("result"))
    return "; ".join(part for part in parts if part)


def as_typed(content: AuditContent) -> Table:
    """Every field of every step as it was typed, beside what it was understood as."""
    return Table(
        "As typed",
        "Every field of every step as it was typed, with what the program understood.",
        AS_TYPED,
        (row for job in content.jobs for step in job.steps for row in _step(job, step)),
    )


def _step(job: JobRecord, step: StepRecord) -> Iterator[Row]:
    form = STEPS[step.step]
    counts = f"reversed: {step.reversed}" if step.reversed else "yes"
    head = (job.case.number, step.number, form.title, clock(step.at), step.by)
    if step.not_needed:
        yield (*head, "Not needed", step.not_needed, "", None, "", counts)
        return
    taken = sources(step.typed)
    for path, label, typed, value in _fields(form.fields, step.typed, step.answers.values):
        number, unit = _understood(value)
        read = f"read: {taken[path]}" if path in taken else "typed"
        yield (*head, label, typed, read, number, unit, counts)


def _fields(
    fields: Sequence[Field], typed: Mapping[str, object], values: Mapping[str, object]
) -> Iterator[tuple[str, str, str, object]]:
    """Path, label, text and value of each field typed, those of repeated lines numbered."""
    for each in fields:
        given = typed.get(each.key, "")
        if each.asks is Asks.TICKS or not each.shown:
            continue  # the checklists sheet has the ticks
        if isinstance(given, str):
            if given.strip():
                yield each.key, each.label, given, values.get(each.key)
            continue
        assert isinstance(given, Sequence)
        answers = values.get(each.key, ())
        assert isinstance(answers, tuple)
        for at, line in enumerate(given):
            understood = answers[at].values if at < len(answers) else {}
            for key, label, text, value in _fields(each.fields, line, understood):
                path = f"{each.key}[{at}].{key}"
                yield path, f"{each.label} {at + 1}: {label.lower()}", text, value


def _understood(value: object) -> tuple[float | None, str]:
    if not isinstance(value, Reading):
        return None, ""
    number, unit = _number(value.quantity)
    return number, f"{unit.removesuffix('(a)')} gauge" if value.gauge else unit


def _number(quantity: Quantity) -> tuple[float, str]:
    """Number and unit in SI, as near to what people say as the unit tables have it."""
    unit, _ = unit_for(quantity, "SI")
    number = float(
        f"{quantity.m_as(unit):.12g}"
    )  # twelve digits: what was typed, not its conversion
    return number, LABELS.get(str(ureg.Unit(unit)), unit)


def figures(content: AuditContent) -> Table:
    """What each step was worked out to."""
    return Table(
        "Worked figures",
        "What each signed step came to, with its uncertainty and what it was held against.",
        FIGURES,
        (
            _figure(job, step, each)
            for job in content.jobs
            for step in job.steps
            for each in step.worked.figures
        ),
    )


def _figure(job: JobRecord, step: StepRecord, each: Figure) -> Row:
    head = (job.case.number, step.number, STEPS[step.step].title, each.label)
    limit = each.limit
    if isinstance(each.value, str):
        said = limit if isinstance(limit, str) else ""
        return (*head, each.value, None, "", None, said, each.source, checked(each.mark))
    number, unit = _number(each.value)
    like = unit_for(each.value, "SI")[0]
    doubt = None if each.doubt is None else float(each.doubt.m_as(_difference(like)))
    held = limit if limit is None or isinstance(limit, str) else float(limit.m_as(like))
    return (*head, "", number, unit, doubt, held, each.source, checked(each.mark))


def _difference(unit: str) -> str:
    return "kelvin" if unit == "degC" else unit


def flags(content: AuditContent) -> Table:
    """Everything a person must see, worst first."""
    return Table(
        "Flags",
        "What a person must see: stop, check or note, with the figure, the limit and the source.",
        FLAGS,
        (
            (
                each.level,
                each.about,
                each.says,
                each.figure,
                each.limit,
                each.source,
                checked(each.mark),
            )
            for each in sorted(content.flags, key=_worst)
        ),
        empty="No flag stands.",
    )


def _worst(flag: Flag) -> int:
    return LEVELS.index(flag.level)


def _tick_state(job: JobRecord, tick: Tick) -> str:
    if tick.by:
        return "ticked"
    return "step set aside" if job.set_aside(tick.line.step) else "NOT TICKED"


def checklists(content: AuditContent) -> Table:
    """The handling checklist of each job, ticked and not."""

    def rows() -> Iterator[Row]:
        for job in content.jobs:
            kind = job.case.refrigerant
            for tick in job.checklist:
                line = tick.line
                yield (
                    job.case.number,
                    job.title,
                    kind.name if kind else "",
                    kind.safety_class if kind else "",
                    STEPS[line.step].title,
                    line.text,
                    tick.by,
                    clock(tick.at),
                    _tick_state(job, tick),
                    line.source,
                    line.place,
                    checked(line.mark),
                )

    return Table(
        "Checklists",
        "Handling checklist of each job: who ticked which line when, and which nobody ticked.",
        CHECKLISTS,
        rows(),
    )
