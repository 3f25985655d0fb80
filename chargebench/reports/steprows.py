"""What the sheets of steps have in common: head columns, and how a record's parts are told."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent, JobRecord, StepRecord
from chargebench.reports.table import Column, Form, Row, clock
from chargebench.steps import Answers
from chargebench.units import Reading

HEAD = (
    Column("Job", 10),
    Column("Title", 30, Form.LONG),
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("At", 16, Form.WHEN),
    Column("By", 16),
)
COUNTS = Column("Counts", 26, Form.LONG)
SAYS = Column("What it came to", 70, Form.LONG)


def records(content: AuditContent, step: str) -> Iterator[tuple[JobRecord, StepRecord]]:
    """Every record of one step that was done, with its job."""
    for job in content.jobs:
        for record in job.of(step):
            yield job, record


def head(job: JobRecord, record: StepRecord) -> Row:
    """Job, title, bench, entry, when and by whom."""
    return (
        job.case.number,
        job.title,
        record.bench,
        record.number,
        clock(record.at),
        record.by,
    )


def counts(record: StepRecord) -> str:
    """Whether a record still counts."""
    return f"reversed: {record.reversed}" if record.reversed else "yes"


def said(record: StepRecord) -> str:
    """What a step came to, in sentences."""
    return " ".join(record.worked.sentences)


def typed_text(record: StepRecord, key: str) -> str:
    """What was typed in a field."""
    given = record.typed.get(key, "")
    return given if isinstance(given, str) else ""


def kind_of(job: JobRecord) -> str:
    """The refrigerant of a job."""
    return job.case.refrigerant.name if job.case.refrigerant else ""


def nameplate_mg(job: JobRecord) -> int | None:
    """The nameplate charge of a job, where it was read."""
    charge = job.case.nameplate("charge")
    return charge.mass_mg if isinstance(charge, Reading) else None


def number_in(answers: Answers, key: str, unit: str) -> float | None:
    """An answer as a number in a unit."""
    quantity = answers.quantity(key)
    return None if quantity is None else float(quantity.m_as(unit))
