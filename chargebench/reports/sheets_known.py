"""Sheet of the refrigerants on record: composition, classes, warming potential, lower limit."""

from collections.abc import Iterator

from chargebench import fluids
from chargebench.errors import UnknownRefrigerant
from chargebench.reports.content import AuditContent
from chargebench.reports.table import Column, Form, Row, Table
from chargebench.sources import checked
from chargebench.steps import fill
from chargebench.units import Quantity

KNOWN = (
    Column("Refrigerant", 12),
    Column("Kind", 11),
    Column("Composition, by mass", 40, Form.LONG),
    Column("Source of the composition", 26, Form.LONG),
    Column("Safety class", 9),
    Column("Source of the class", 20, Form.LONG),
    Column("Ozone-depleting class", 11),
    Column("Pressure class", 11),
    Column("GWP, 100 years", 10, Form.TENTHS),
    Column("GWP set", 10),
    Column("Source of the GWP", 44, Form.LONG),
    Column("Checked", 11),
    Column("Lower flammable limit [kg/m³]", 12, Form.THOUSANDTHS),
    Column("Density of the liquid at 25 °C [kg/m³]", 12, Form.TENTHS),
)


def refrigerant_data(content: AuditContent) -> Table:
    """A row for each refrigerant of a cylinder or an equipment on record."""
    which, at = content.rule_set.gwp.set.value, content.rule_set.cylinder.fill_temperature.quantity
    rows = (
        row
        for register in ("equipment", "cylinder")
        for row in content.registers.get(register, {}).values()
    )
    names = sorted({row.get("refrigerant", "") for row in rows} - {""})
    return Table(
        "Refrigerant data",
        f"What each refrigerant on record is; warming potentials by the set {which}, which the "
        "rule set names.",
        KNOWN,
        (row for name in names for row in _known(name, which, at)),
        empty="No refrigerant is on record.",
    )


def _known(name: str, which: str, at: Quantity) -> Iterator[Row]:
    try:
        known = fluids.refrigerant(name)
    except UnknownRefrigerant:
        return
    gwp = known.gwp.get(which)
    density = fill.liquid_density(name, at)
    parts = ", ".join(f"{part.name} {part.mass_percent} %" for part in known.composition)
    yield (
        name,
        known.kind,
        parts,
        known.composition_source,
        known.safety_class,
        known.safety_class_source,
        known.ods_class or "none",
        known.pressure_class,
        None if gwp is None else float(gwp.value),
        which,
        "" if gwp is None else gwp.source,
        "" if gwp is None else checked(gwp.mark),
        None if known.lfl is None else float(known.lfl.value.m_as("kg/m**3")),
        None if density is None else float(density.m_as("kg/m**3")),
    )
