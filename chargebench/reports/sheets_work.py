"""Sheets of the work itself: each service with its parts and masses, and each disposal."""

from collections import Counter
from collections.abc import Iterator, Mapping
from datetime import datetime

from chargebench.reports.content import AuditContent, JobRecord, StepRecord
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.steprows import kind_of, nameplate_mg, typed_text
from chargebench.reports.table import Cell, Column, Form, Row, Table, clock, kg
from chargebench.steps import NOTHING, Answers

WORK = (
    Column("Job", 10),
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("Date", 12, Form.DATE),
    Column("Equipment", 10),
    Column("Name", 20),
    Column("Site", 24, Form.LONG),
    Column("Address", 26, Form.LONG),
    Column("Kind of work", 22),
    Column("Part", 24, Form.LONG),
    Column("Part number", 14),
    Column("Count", 7, Form.PLAIN),
    Column("Work done on the part", 26, Form.LONG),
    Column("Work done", 44, Form.LONG),
    Column("By", 16),
    Column("Certificate", 16),
    Column("Refrigerant", 12),
    Column("Full charge [kg]", 11, Form.MASS),
    Column("Added [kg]", 11, Form.EXACT),
    Column("Recovered [kg]", 11, Form.EXACT),
)
DISPOSALS = (
    Column("Job", 10),
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("Recovered on", 12, Form.DATE),
    Column("Month", 9),
    Column("Equipment", 10),
    Column("Name", 20),
    Column("Site", 24, Form.LONG),
    Column("Address", 26, Form.LONG),
    Column("Refrigerant", 12),
    Column("Full charge [kg]", 11, Form.MASS),
    Column("How", 24, Form.LONG),
    Column("Recovered [kg]", 11, Form.EXACT),
    Column("Of the nameplate charge [%]", 12, Form.TENTHS),
    Column("Level reached, as typed", 12),
    Column("Released or lost [kg]", 11, Form.EXACT),
    Column("Recovered by", 16),
    Column("Certificate", 16),
    Column("Company", 20),
    Column("Address of the company", 26, Form.LONG),
    Column("Company certificate", 16),
    Column("Recovery and disposal", 50, Form.LONG),
)


def _place(content: AuditContent, job: JobRecord) -> tuple[Cell, ...]:
    """Equipment, its name, its site and where that is."""
    site_id = job.case.equipment.text("site")
    site = content.row("site", site_id)
    return (
        job.case.equipment_id,
        job.case.equipment.text("name"),
        site.get("name", site_id),
        site.get("address", ""),
    )


def _certificate(content: AuditContent, name: str) -> str:
    people = content.registers.get("person", {}).values()
    return next((row.get("certificate", "") for row in people if row.get("name") == name), "")


def work_done(content: AuditContent, totals: Totals) -> Table:
    """A row for each part worked on; a job without one has a row of its own."""

    def rows() -> Iterator[Row]:
        for job in content.jobs:
            moved: Mapping[str, int] = totals.by_job.get(job.case.job, {})
            masses = [kg(moved.get(key, 0)) for key in ("charged", "recovered")]
            for at, row in enumerate(_parts(content, job)):
                yield (*row, *(masses if at == 0 else (None, None)))

    return Table(
        "Work done",
        "Each service, repair or disposal: where, when, which part, what was done, by whom, and "
        "how much was added and recovered (once for each job).",
        WORK,
        rows(),
        empty="No job was worked on in this period.",
    )


def _parts(content: AuditContent, job: JobRecord) -> Iterator[tuple[Cell, ...]]:
    findings, record = job.counts("findings"), job.counts("time_and_parts")
    told = findings.answers if findings else NOTHING
    lines = record.answers.lines("parts") if record else ()
    first = record or findings or next(iter(job.steps), None)
    by = first.by if first else job.by
    for line in lines or (Answers(),):
        count = line.quantity("count")
        yield (
            job.case.number,
            first.bench if first else "",
            first.number if first else None,
            _day(first.at if first else job.opened_at),
            *_place(content, job),
            told.text("work"),
            line.text("part"),
            line.text("number"),
            None if count is None else f"{float(count.m_as('')):g}",
            line.text("work"),
            told.text("done"),
            by,
            _certificate(content, by),
            kind_of(job),
            kg(nameplate_mg(job)),
        )


def _day(moment: datetime) -> Cell:
    here = clock(moment)
    assert here is not None
    return here.date()


def _disposed(content: AuditContent) -> Iterator[tuple[JobRecord, StepRecord]]:
    """Recoveries that stand, of equipment disposed of or taken out of service."""
    for job in content.jobs:
        record = job.counts("recovery")
        if record is None:
            continue
        ends = job.case.step("close").text("ends")
        if record.answers.text("opening") == "disposed of" or ends == "taken out of service":
            yield job, record


def disposed_mg(content: AuditContent, totals: Totals) -> dict[tuple[str, str], int]:
    """What was recovered from equipment disposed of, by month and refrigerant."""
    sums: Counter[tuple[str, str]] = Counter()
    for job, record in _disposed(content):
        taken = totals.of_entry(record.entry).get("recovered", 0)
        sums[record.at.strftime("%Y-%m"), kind_of(job)] += taken
    return dict(sums)


def disposals(content: AuditContent, totals: Totals) -> Table:
    """A row for each equipment whose refrigerant was recovered for good."""
    shop = content.shop

    def rows() -> Iterator[Row]:
        for job, record in _disposed(content):
            moved = totals.of_entry(record.entry)
            charge_mg, taken_mg = nameplate_mg(job), moved.get("recovered", 0)
            yield (
                job.case.number,
                record.bench,
                record.number,
                _day(record.at),
                record.at.strftime("%Y-%m"),
                *_place(content, job),
                kind_of(job),
                kg(charge_mg),
                record.answers.text("how"),
                kg(taken_mg),
                100 * taken_mg / charge_mg if charge_mg else None,
                typed_text(record, "level"),
                kg(moved.get("released or lost", 0)),
                record.by,
                _certificate(content, record.by),
                shop.get("name", ""),
                shop.get("address", ""),
                shop.get("certificate", ""),
                job.case.step("close").text("disposal"),
            )

    return Table(
        "Disposals",
        "Statement for equipment disposed of: its refrigerant was recovered on the day, by the "
        "person and the company named. A signature belongs on the printed sheet.",
        DISPOSALS,
        rows(),
        empty="No equipment was disposed of in this period.",
        foot=("Signed for the company: ________________________   Date: ____________",),
    )
