"""Sheets of what was taken out and what was weighed in."""

from collections.abc import Iterator
from datetime import date

from chargebench.reports.content import AuditContent
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.steprows import (
    COUNTS,
    HEAD,
    SAYS,
    counts,
    head,
    kind_of,
    nameplate_mg,
    records,
    said,
    typed_text,
)
from chargebench.reports.table import Column, Form, Row, Table, kg
from chargebench.steps import REGISTERS, Answers, answer
from chargebench.steps.taken import words


def recovery(content: AuditContent, totals: Totals) -> Table:
    """One row a weighing of a recovery; a release has one of its own."""

    def rows() -> Iterator[Row]:
        for job, record in records(content, "recovery"):
            answers = record.answers
            moved = totals.of_entry(record.entry)
            charge_mg, refrigerant = nameplate_mg(job), kind_of(job)
            common = (
                answers.text("how"),
                answers.text("opening"),
                answers.text("machine"),
                _made(content, answers.text("machine")),
                answers.yes("compressor_works"),
                typed_text(record, "level"),
            )
            lines = answers.lines("lines") or (Answers(),)
            for at, line in enumerate(lines):
                before, after = line.mass_mg("before"), line.mass_mg("after")
                taken_mg = moved.get("recovered", 0)
                yield (
                    *head(job, record),
                    refrigerant,
                    *common,
                    line.text("cylinder"),
                    line.text("scale"),
                    kg(before),
                    kg(after),
                    None if before is None or after is None else kg(after - before),
                    kg(taken_mg) if at == 0 else None,
                    100 * taken_mg / charge_mg if at == 0 and charge_mg else None,
                    kg(moved.get("released or lost", 0)) if at == 0 else None,
                    answers.text("ground"),
                    said(record),
                    counts(record),
                )

    return Table("Recovery", "What was taken out, into which cylinder.", RECOVERY, rows())


RECOVERY = (
    *HEAD,
    Column("Refrigerant", 12),
    Column("How", 22, Form.LONG),
    Column("The circuit is", 18),
    Column("Machine", 10),
    Column("Machine made", 12, Form.DATE),
    Column("Compressor works", 10),
    Column("Level reached, as typed", 12),
    Column("Cylinder", 10),
    Column("Scale", 8),
    Column("Cylinder before [kg]", 11, Form.MASS),
    Column("Cylinder after [kg]", 11, Form.MASS),
    Column("Into this cylinder [kg]", 11, Form.MASS),
    Column("Recovered in all [kg]", 11, Form.EXACT),
    Column("Of the nameplate charge [%]", 12, Form.TENTHS),
    Column("Released or lost [kg]", 11, Form.EXACT),
    Column("Why release is lawful", 40, Form.LONG),
    SAYS,
    COUNTS,
)


_BATCH = ("batch", "reclaimer", "reclaimer_certificate")  # of a cylinder's row


def weigh_ins(content: AuditContent, totals: Totals) -> Table:
    """One row a cylinder weighed into an equipment."""

    def rows() -> Iterator[Row]:
        for job, record in records(content, "weigh_in"):
            moved = totals.of_entry(record.entry)
            for at, line in enumerate(record.answers.lines("lines")):
                batch = content.row("cylinder", line.text("cylinder"))
                yield (
                    *head(job, record),
                    kind_of(job),
                    record.answers.text("kind"),
                    kg(nameplate_mg(job)),
                    line.text("cylinder"),
                    line.text("scale"),
                    line.text("arrangement"),
                    _text(line, "start"),
                    _text(line, "end"),
                    kg(line.mass_mg("start")),
                    kg(line.mass_mg("end")),
                    line.text("hose_state"),
                    kg(moved.get("charged", 0)) if at == 0 else None,
                    kg(moved.get("released or lost", 0)) if at == 0 else None,
                    record.answers.text("origin") or batch.get("origin", ""),
                    *(batch.get(key, "") for key in _BATCH),
                    record.answers.text("not_counted"),
                    said(record),
                    words(record.typed) or "all typed",
                    counts(record),
                )

    return Table("Weigh-ins", "What was weighed in, from which cylinder.", WEIGH_INS, rows())


WEIGH_INS = (
    *HEAD,
    Column("Refrigerant", 12),
    Column("Charge", 24, Form.LONG),
    Column("Nameplate [kg]", 10, Form.MASS),
    Column("Cylinder", 10),
    Column("Scale", 8),
    Column("On the scale", 20),
    Column("Start, as typed", 13),
    Column("End, as typed", 13),
    Column("Start [kg]", 11, Form.MASS),
    Column("End [kg]", 11, Form.MASS),
    Column("Hose at the end", 24, Form.LONG),
    Column("Charged in all [kg]", 11, Form.EXACT),
    Column("Hose content lost [kg]", 11, Form.EXACT),
    Column("Origin", 10),
    Column("Batch", 14),
    Column("Reclaimed or recycled by", 34, Form.LONG),
    Column("Certificate of the facility", 14),
    Column("Not for a leak", 16),
    SAYS,
    Column("Typed or read", 20),
    COUNTS,
)


def _made(content: AuditContent, machine: str) -> date | None:
    """When a recovery machine was made, which decides the level it must reach."""
    return answer(REGISTERS["instrument"], content.row("instrument", machine)).date("made")


def _text(answers: Answers, key: str) -> str:
    reading = answers.reading(key)
    return "" if reading is None else reading.text
