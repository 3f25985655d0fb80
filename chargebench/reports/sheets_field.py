"""Sheets of what was read and searched: readings as found and as left, leak searches."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent, JobRecord, StepRecord
from chargebench.reports.table import Column, Form, Row, Table, clock
from chargebench.steps import STEPS
from chargebench.units import absolute

_TEMPERATURES = (
    ("suction_line", "Suction line [°C]"),
    ("liquid_line", "Liquid line [°C]"),
    ("discharge_line", "Discharge line [°C]"),
    ("condenser_surface", "Condenser [°C]"),
    ("evaporator_inlet", "Evaporator in [°C]"),
    ("evaporator_outlet", "Evaporator out [°C]"),
    ("ambient", "Air onto condenser [°C]"),
    ("box", "Box [°C]"),
    ("set_point", "Set point [°C]"),
)
_WORDS = (
    ("frost", "Frost", 24),
    ("condenser_state", "Condenser is", 12),
    ("condenser_fan", "Condenser fan", 14),
    ("evaporator_state", "Evaporator is", 12),
    ("evaporator_fan", "Evaporator fan", 14),
    ("running", "Compressor runs", 14),
)
READINGS = (
    Column("Job", 10),
    Column("Title", 30, Form.LONG),
    Column("Step", 10),
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("At", 16, Form.WHEN),
    Column("By", 16),
    Column("Gauges connected", 10),
    Column("Suction [kPa absolute]", 10, Form.TENTHS),
    Column("Condensing [kPa absolute]", 11, Form.TENTHS),
    *(Column(head, 10, Form.TENTHS) for _, head in _TEMPERATURES),
    Column("Current [A]", 9, Form.HUNDREDTHS),
    *(Column(head, width) for _, head, width in _WORDS),
    Column("What they say", 70, Form.LONG),
    Column("Remarks", 40, Form.LONG),
)
LEAK_SEARCHES = (
    Column("Job", 10),
    Column("Title", 30, Form.LONG),
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("At", 16, Form.WHEN),
    Column("By", 16),
    Column("Method", 20),
    Column("Detector", 10),
    Column("Checked before", 9),
    Column("Checked after", 9),
    Column("System pressure, as typed", 12),
    Column("Parts searched", 40, Form.LONG),
    Column("All accessible parts", 10),
    Column("Leak at", 30, Form.LONG),
    Column("Seen by", 18),
    Column("Repair", 34, Form.LONG),
    Column("Verified tight", 9),
    Column("What it came to", 60, Form.LONG),
)


def readings(content: AuditContent) -> Table:
    """Readings of running equipment, as found and as left."""
    return Table(
        "Readings",
        "Readings as found and as left; what they support and what they can not prove.",
        READINGS,
        (
            _reading(job, record)
            for job in content.jobs
            for step in ("as_found", "as_left")
            for record in job.of(step)
        ),
    )


def _reading(job: JobRecord, record: StepRecord) -> Row:
    answers = record.answers
    current = answers.quantity("current")
    return (
        job.case.number,
        job.title,
        STEPS[record.step].title,
        record.bench,
        record.number,
        clock(record.at),
        record.by,
        answers.yes("tapped"),
        *(_kpa(job, record, key) for key in ("suction_pressure", "discharge_pressure")),
        *(_celsius(record, key) for key, _ in _TEMPERATURES),
        None if current is None else float(current.m_as("A")),
        *(answers.text(key) for key, _, _ in _WORDS),
        " ".join(record.worked.sentences),
        answers.text("remarks"),
    )


def _kpa(job: JobRecord, record: StepRecord, key: str) -> float | None:
    reading = record.answers.reading(key)
    if reading is None:
        return None
    return float(absolute(reading, job.case.air_pressure(record.step)).m_as("kPa"))


def _celsius(record: StepRecord, key: str) -> float | None:
    quantity = record.answers.quantity(key)
    return None if quantity is None else float(quantity.m_as("degC"))


def leak_searches(content: AuditContent) -> Table:
    """One row a leak found, or a search that found none."""

    def rows() -> Iterator[Row]:
        for job in content.jobs:
            for record in job.of("leak_search"):
                yield from _search(job, record)

    return Table(
        "Leak searches",
        "How was searched, over which parts, what was found and whether the repair held.",
        LEAK_SEARCHES,
        rows(),
    )


def _search(job: JobRecord, record: StepRecord) -> Iterator[Row]:
    answers = record.answers
    pressure = answers.reading("system_pressure")
    head = (
        job.case.number,
        job.title,
        record.bench,
        record.number,
        clock(record.at),
        record.by,
        answers.text("method"),
        answers.text("detector"),
        answers.yes("checked_before"),
        answers.yes("checked_after"),
        "" if pressure is None else pressure.text,
        ", ".join(line.text("line") for line in answers.lines("components")),
        answers.yes("all_accessible"),
    )
    said = " ".join(record.worked.sentences)
    leaks = answers.lines("leaks")
    for leak in leaks:
        keys = ("where", "how", "repair")
        yield (*head, *(leak.text(key) for key in keys), leak.yes("verified"), said)
    if not leaks:
        yield (*head, "none found", "", "", None, said)
