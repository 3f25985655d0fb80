"""Sheets of stock work: what was bought, what was handed over, what the scale said."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent
from chargebench.reports.records import StockRecord
from chargebench.reports.table import Cell, Column, Form, Row, Table, clock, kg
from chargebench.steps import REGISTERS, Answers, answer

HEAD = (
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
    Column("At", 16, Form.WHEN),
    Column("By", 16),
)
COUNTS = Column("Counts", 22, Form.LONG)
PURCHASES = (
    *HEAD,
    Column("Cylinder", 10),
    Column("Refrigerant", 12),
    Column("Net mass as invoiced", 12),
    Column("Net mass [kg]", 12, Form.EXACT),
    Column("Supplier", 22),
    Column("Invoice or delivery note", 16),
    Column("Origin", 10),
    Column("Batch", 14),
    Column("Reclaimed or recycled by", 34, Form.LONG),
    Column("Certificate of the facility", 14),
    Column("Remarks", 30, Form.LONG),
    COUNTS,
)
HANDED_OVER = (
    *HEAD,
    Column("Month", 9),
    Column("Cylinder", 10),
    Column("Refrigerant", 12),
    Column("Contents", 12),
    Column("To", 12),
    Column("Net mass as typed", 12),
    Column("Net mass [kg]", 12, Form.EXACT),
    Column("Receiver, name and address", 44, Form.LONG),
    Column("Document", 16),
    Column("Handed over by company", 20),
    Column("Its address", 26, Form.LONG),
    Column("Remarks", 30, Form.LONG),
    COUNTS,
)
WEIGHINGS = (
    *HEAD,
    Column("Act", 9),
    Column("Cylinder", 10),
    Column("Decanted into", 10),
    Column("Scale", 8),
    Column("On the scale", 9),
    Column("Gross before, as typed", 13),
    Column("Gross before [kg]", 12, Form.EXACT),
    Column("Gross after, as typed", 13),
    Column("Gross after [kg]", 12, Form.EXACT),
    Column("Net moved or booked [kg]", 12, Form.EXACT),
    Column("Reason or remarks", 36, Form.LONG),
    Column("What it came to", 50, Form.LONG),
    COUNTS,
)


def _head(record: StockRecord) -> tuple[Cell, ...]:
    return (record.bench, record.number, clock(record.at), record.by)


def _counts(record: StockRecord) -> str:
    return f"reversed: {record.reversed}" if record.reversed else "yes"


def _cylinder(content: AuditContent, record: StockRecord) -> Answers:
    row = content.row("cylinder", record.answers.text("cylinder"))
    return answer(REGISTERS["cylinder"], row)


def _typed(answers: Answers, key: str) -> str:
    reading = answers.reading(key)
    return "" if reading is None else reading.text


def purchases(content: AuditContent) -> Table:
    """A row for each cylinder that came in."""

    def rows() -> Iterator[Row]:
        for record in content.stock():
            if record.kind != "received":
                continue
            row = _cylinder(content, record)
            yield (
                *_head(record),
                record.answers.text("cylinder"),
                row.text("refrigerant"),
                _typed(record.answers, "mass"),
                kg(record.moved_mg),
                record.answers.text("supplier") or row.text("supplier"),
                record.answers.text("invoice"),
                *(row.text(key) for key in ("origin", "batch", "reclaimer")),
                row.text("reclaimer_certificate"),
                record.answers.text("remarks"),
                _counts(record),
            )

    return Table(
        "Purchases",
        "Refrigerant bought, with its origin. This shop's records hold no sale of refrigerant in "
        "cylinders; what a customer gets is charged into equipment and stands in “Weigh-ins”.",
        PURCHASES,
        rows(),
        empty="Nothing was received in this period.",
    )


def handed_over(content: AuditContent) -> Table:
    """A row for each cylinder whose content left the shop."""

    def rows() -> Iterator[Row]:
        for record in content.stock():
            if record.kind != "returned":
                continue
            row = _cylinder(content, record)
            yield (
                *_head(record),
                record.at.strftime("%Y-%m"),
                record.answers.text("cylinder"),
                row.text("refrigerant"),
                row.text("contents"),
                record.answers.text("to"),
                _typed(record.answers, "mass"),
                kg(record.moved_mg),
                record.answers.text("receiver"),
                record.answers.text("document"),
                content.shop.get("name", ""),
                content.shop.get("address", ""),
                record.answers.text("remarks"),
                _counts(record),
            )

    return Table(
        "Handed over",
        "Refrigerant handed to a reclaimer, to destruction or back to a supplier: how much of "
        "which, to whom, when.",
        HANDED_OVER,
        rows(),
        empty="Nothing was handed over in this period.",
    )


def weighings(content: AuditContent) -> Table:
    """A row for each cylinder that was put on a scale or decanted."""

    def rows() -> Iterator[Row]:
        for record in content.stock():
            if record.kind in ("weighed", "decanted"):
                yield _weighing(record)

    return Table(
        "Weighings",
        "Cylinders put on the scale and decanted; those of jobs stand in “Recovery” and "
        "“Weigh-ins”.",
        WEIGHINGS,
        rows(),
        empty="No cylinder was put on the scale in this period.",
    )


def _weighing(record: StockRecord) -> Row:
    given = record.answers
    decanted = record.kind == "decanted"
    before, after = ("before", "after") if decanted else ("gross", "")
    return (
        *_head(record),
        record.kind,
        given.text("source") if decanted else given.text("cylinder"),
        given.text("target"),
        given.text("scale"),
        given.text("weighed"),
        _typed(given, before),
        kg(given.mass_mg(before)),
        _typed(given, after) if after else "",
        kg(given.mass_mg(after)) if after else None,
        kg(record.moved_mg),
        given.text("reason") or given.text("remarks"),
        record.said,
        _counts(record),
    )
