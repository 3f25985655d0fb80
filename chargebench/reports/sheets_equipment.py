"""Sheet of the equipment register: what an inspector asks of each circuit."""

from collections.abc import Iterator

from chargebench import fluids
from chargebench.calc.climate import tonnes_co2e
from chargebench.reports.content import AuditContent
from chargebench.reports.sheets_registers import REGISTERED, register_rows
from chargebench.reports.table import Column, Form, Row, Table, kg, lb
from chargebench.steps import Answers

EQUIPMENT = (
    Column("Equipment", 10),
    Column("Name", 24),
    Column("Site", 24, Form.LONG),
    Column("Owner or operator", 24, Form.LONG),
    Column("Address", 30, Form.LONG),
    Column("Category", 24),
    Column("Type", 26, Form.LONG),
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
    Column("Range, midpoint [kg]", 11, Form.MASS),
    Column("How the range was found", 26, Form.LONG),
    Column("Full charge revised on", 12, Form.DATE),
    Column("How it was revised", 26, Form.LONG),
    Column("GWP, 100 years", 10, Form.TENTHS),
    Column("Full charge [t CO2 equivalent]", 12, Form.THOUSANDTHS),
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
    REGISTERED,
)


def equipment(content: AuditContent) -> Table:
    """Every equipment with what an inspector asks of it."""

    def rows() -> Iterator[Row]:
        for key, row in register_rows(content, "equipment"):
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
                kg(_midpoint_mg(row)),
                row.text("range_basis"),
                row.date("charge_revised"),
                row.text("charge_revised_why"),
                *_warming(content, row),
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
                content.registered.get(f"equipment:{key}"),
            )

    return Table(
        "Equipment",
        "Every refrigerant circuit: where it stands, what it holds, how that is known.",
        EQUIPMENT,
        rows(),
        empty="No equipment is in the register.",
    )


def _midpoint_mg(row: Answers) -> int | None:
    """Middle of an established range, which is then the full charge (40 CFR 82.152)."""
    low, high = row.mass_mg("range_low"), row.mass_mg("range_high")
    return None if low is None or high is None else (low + high) // 2


def _warming(content: AuditContent, row: Answers) -> tuple[float | None, float | None]:
    """Warming potential by the rule set's own set, and what the full charge comes to."""
    charge, name = row.quantity("charge"), row.text("refrigerant")
    gwp = fluids.refrigerant(name).gwp.get(content.rule_set.gwp.set.value) if name else None
    if gwp is None:
        return None, None
    tonnes = None if charge is None else float(tonnes_co2e(charge, gwp.value).m_as("t"))
    return float(gwp.value), tonnes


def _as_typed(content: AuditContent, key: str, field: str) -> str:
    return content.row("equipment", key).get(field, "")
