"""Sheets of the registers: cylinders, equipment, people, instruments."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent
from chargebench.reports.table import Column, Form, Row, Table, kg, lb
from chargebench.steps import REGISTERS, Answers, answer

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
    Column("Requalification due", 14, Form.DATE),
    Column("Last weighed", 24),
    Column("Owner", 16),
    Column("Supplier", 18),
    Column("Batch", 14),
    Column("Origin", 10),
)
EQUIPMENT = (
    Column("Equipment", 10),
    Column("Name", 24),
    Column("Site", 24),
    Column("Owner or operator", 22),
    Column("Address", 30),
    Column("Category", 22),
    Column("Type", 26),
    Column("Make", 14),
    Column("Model", 14),
    Column("Serial number", 16),
    Column("Circuit", 9),
    Column("Refrigerant", 12),
    Column("Full charge as typed", 14),
    Column("Full charge [kg]", 11, Form.MASS),
    Column("Full charge [lb]", 11, Form.MASS),
    Column("How it is known", 26),
    Column("Range, low [kg]", 11, Form.MASS),
    Column("Range, high [kg]", 11, Form.MASS),
    Column("Factory sealed", 10),
    Column("Labelled hermetic", 10),
    Column("Leak detection", 10),
    Column("Detection checked", 12, Form.DATE),
    Column("Residential building", 11),
    Column("Leak rate method", 16),
    Column("Excluded subsector", 10),
    Column("Installed", 12, Form.DATE),
    Column("Mothballed since", 12, Form.DATE),
    Column("Mothballed until", 12, Form.DATE),
    Column("Retired", 12, Form.DATE),
)
PEOPLE = (
    Column("Person", 10),
    Column("Name", 24),
    Column("Role", 14),
    Column("Certificate number", 24),
    Column("Certificate type", 24),
    Column("Certified by", 30),
    Column("Valid until", 12, Form.DATE),
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
)


def _answers(content: AuditContent, register: str) -> Iterator[tuple[str, Answers]]:
    for key, row in sorted(content.registers.get(register, {}).items()):
        yield key, answer(REGISTERS[register], row)


def cylinders(content: AuditContent) -> Table:
    """Every cylinder, what it holds and how far it may be filled."""
    by_id = {each.id: each for each in content.cylinders}

    def rows() -> Iterator[Row]:
        for key, row in _answers(content, "cylinder"):
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
                row.date("requalification_due"),
                record.last_weighed if record else "",
                row.text("owner"),
                row.text("supplier"),
                row.text("batch"),
                row.text("origin"),
            )

    return Table(
        "Cylinders",
        "Every cylinder with what it holds by the book and how far it may be filled.",
        CYLINDERS,
        rows(),
        empty="No cylinder is in the register.",
    )


def equipment(content: AuditContent) -> Table:
    """Every equipment with what an inspector asks of it."""

    def rows() -> Iterator[Row]:
        for key, row in _answers(content, "equipment"):
            site = content.row("site", row.text("site"))
            yield (
                key,
                row.text("name"),
                site.get("name", row.text("site")),
                site.get("owner_operator", ""),
                site.get("address", ""),
                row.text("category"),
                row.text("cabinet"),
                row.text("make"),
                row.text("model"),
                row.text("serial"),
                row.text("circuit"),
                row.text("refrigerant"),
                _as_typed(content, key, "charge"),
                kg(row.mass_mg("charge")),
                lb(row.mass_mg("charge")),
                row.text("charge_method"),
                kg(row.mass_mg("range_low")),
                kg(row.mass_mg("range_high")),
                row.yes("factory_sealed"),
                row.yes("hermetic_labelled"),
                row.yes("leak_detection"),
                row.date("detection_checked"),
                row.yes("residential"),
                site.get("leak_method", ""),
                row.yes("subsector_excluded"),
                row.date("installed"),
                row.date("mothballed"),
                row.date("mothball_ended"),
                row.date("retired"),
            )

    return Table(
        "Equipment",
        "Every refrigerant circuit: where it stands, what it holds, how that is known.",
        EQUIPMENT,
        rows(),
        empty="No equipment is in the register.",
    )


def _as_typed(content: AuditContent, key: str, field: str) -> str:
    return content.row("equipment", key).get(field, "")


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
            )
            for key, row in _answers(content, "person")
        ),
        empty="Nobody is in the register.",
    )


def instruments(content: AuditContent) -> Table:
    """Scales, gauges, detectors and machines, and when they were last checked."""

    def rows() -> Iterator[Row]:
        for key, row in _answers(content, "instrument"):
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
            )

    return Table(
        "Instruments",
        "Scales, gauges, detectors and machines: what they resolve, when they were last checked.",
        INSTRUMENTS,
        rows(),
        empty="No instrument is in the register.",
    )
