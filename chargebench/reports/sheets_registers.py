"""Sheets of the registers: cylinders, people, instruments."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent, CylinderLine
from chargebench.reports.table import MG_PER_KG, Bars, Column, Form, Row, Table, kg
from chargebench.steps import REGISTERS, Answers, answer

CYLINDERS_DRAWN = 40
REGISTERED = Column("Registered by entry", 11, Form.WHOLE)
CYLINDERS = (
    Column("Cylinder", 10),
    Column("Refrigerant", 12),
    Column("Contents", 12),
    Column("Specification", 14),
    Column("Serial number", 14),
    Column("Refillable", 10),
    Column("Tare stamped [kg]", 11, Form.MASS),
    Column("Tare found [kg]", 11, Form.MASS),
    Column("Water capacity [kg]", 11, Form.MASS),
    Column("Holds [kg]", 12, Form.MASS),
    Column("Fill limit [kg]", 12, Form.MASS),
    Column("Share of limit [%]", 10, Form.PERCENT),
    Column("Limit set by", 24),
    Column("Gross limit [kg]", 12, Form.MASS),
    Column("Last requalified", 14, Form.DATE),
    Column("Requalification due", 14, Form.DATE),
    Column("Valve thread", 22),
    Column("Last weighed", 24),
    Column("Owner", 16),
    Column("Supplier", 18),
    Column("Batch", 14),
    Column("Origin", 10),
    Column("Reclaimed or recycled by", 34, Form.LONG),
    Column("Certificate of the facility", 14),
    REGISTERED,
)
PEOPLE = (
    Column("Person", 10),
    Column("Name", 24),
    Column("Role", 14),
    Column("Certificate number", 24),
    Column("Certificate type", 24),
    Column("Certified by", 30, Form.LONG),
    Column("Valid until", 12, Form.DATE),
    Column("Employer", 30, Form.LONG),
    Column("Certificate of the employer", 16),
    REGISTERED,
)
INSTRUMENTS = (
    Column("Instrument", 11),
    Column("Name", 26),
    Column("Kind", 18),
    Column("Serial number", 16),
    Column("Resolution, as typed", 13),
    Column("Repeatability, as typed", 13),
    Column("Accuracy of reading, as typed", 14),
    Column("Uncertainty, as typed", 13),
    Column("Sensitivity, as typed", 13),
    Column("Suitable for flammable", 12),
    Column("Made", 12, Form.DATE),
    Column("Calibrated", 12, Form.DATE),
    Column("Calibration due", 12, Form.DATE),
    Column("Serial line", 20),
    REGISTERED,
)


def register_rows(content: AuditContent, register: str) -> Iterator[tuple[str, Answers]]:
    """Rows of a register understood, by id."""
    for key, row in sorted(content.registers.get(register, {}).items()):
        yield key, answer(REGISTERS[register], row)


def cylinders(content: AuditContent) -> Table:
    """Every cylinder, what it holds and how far it may be filled."""
    by_id = {each.id: each for each in content.cylinders}

    def rows() -> Iterator[Row]:
        for key, row in register_rows(content, "cylinder"):
            record = by_id.get(key)
            mass_mg = record.mass_mg if record else 0
            limit_mg = record.limit_mg if record else None
            yield (
                key,
                row.text("refrigerant"),
                row.text("contents"),
                row.text("spec"),
                row.text("serial"),
                row.yes("refillable"),
                kg(row.mass_mg("tare")),
                kg(row.mass_mg("tare_found")),
                kg(row.mass_mg("water_capacity")),
                kg(mass_mg),
                kg(limit_mg),
                100 * mass_mg / limit_mg if limit_mg else None,
                record.by if record else "",
                kg(record.gross_limit_mg) if record else None,
                row.date("requalified"),
                row.date("requalification_due"),
                row.text("thread"),
                record.last_weighed if record else "",
                row.text("owner"),
                row.text("supplier"),
                row.text("batch"),
                row.text("origin"),
                row.text("reclaimer"),
                row.text("reclaimer_certificate"),
                content.registered.get(f"cylinder:{key}"),
            )

    return Table(
        "Cylinders",
        "Every cylinder with what it holds by the book and how far it may be filled.",
        CYLINDERS,
        rows(),
        empty="No cylinder is in the register.",
        charts=_fill(content, by_id),
    )


def _fill(content: AuditContent, by_id: dict[str, CylinderLine]) -> tuple[Bars, ...]:
    """The first cylinders' content beside their limits."""
    drawn = [key for key, _ in register_rows(content, "cylinder")][:CYLINDERS_DRAWN]
    if not drawn:
        return ()
    columns = [column.head for column in CYLINDERS]
    held = [by_id[key].mass_mg if key in by_id else 0 for key in drawn]
    limits = [by_id[key].limit_mg or 0 if key in by_id else 0 for key in drawn]
    chart = Bars(
        "Cylinders: content and limit",
        names=1,
        columns=tuple(columns.index(head) + 1 for head in ("Holds [kg]", "Fill limit [kg]")),
        rows=len(drawn),
        y_title="kg",
        named=tuple(drawn),
        values=tuple(tuple(mg / MG_PER_KG for mg in masses) for masses in (held, limits)),
    )
    return (chart,)


def _employer(content: AuditContent, row: Answers) -> tuple[str, str]:
    """Whom a person works for, and that undertaking's certificate: the shop unless said."""
    if row.text("employer"):
        return row.text("employer"), row.text("employer_certificate")
    return content.shop.get("name", ""), content.shop.get("certificate", "")


def people(content: AuditContent) -> Table:
    """Who signs, and by which certificate."""
    return Table(
        "People",
        "Who signs, and by which certificate.",
        PEOPLE,
        (
            (
                key,
                row.text("name"),
                row.text("role"),
                row.text("certificate"),
                row.text("certificate_type"),
                row.text("certificate_body"),
                row.date("certificate_until"),
                *_employer(content, row),
                content.registered.get(f"person:{key}"),
            )
            for key, row in register_rows(content, "person")
        ),
        empty="Nobody is in the register.",
    )


def instruments(content: AuditContent) -> Table:
    """Scales, gauges, detectors and machines, and when they were last checked."""

    def rows() -> Iterator[Row]:
        for key, row in register_rows(content, "instrument"):
            typed = content.row("instrument", key)
            yield (
                key,
                row.text("name"),
                row.text("kind"),
                row.text("serial"),
                typed.get("resolution", "") or typed.get("pressure_resolution", ""),
                typed.get("repeatability", ""),
                typed.get("gain", ""),
                typed.get("temperature_uncertainty", ""),
                typed.get("sensitivity", ""),
                row.yes("flammable_suitable"),
                row.date("made"),
                row.date("calibrated"),
                row.date("calibration_due"),
                typed.get("serial_line", ""),
                content.registered.get(f"instrument:{key}"),
            )

    return Table(
        "Instruments",
        "Scales, gauges, detectors and machines: what they resolve, when they were last checked.",
        INSTRUMENTS,
        rows(),
        empty="No instrument is in the register.",
    )
