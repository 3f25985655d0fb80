"""Sheet of what nobody can account for."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent
from chargebench.reports.table import Column, Form, Row, Table, kg

UNACCOUNTED = (
    Column("Refrigerant", 14),
    Column("Charged [kg]", 14, Form.EXACT),
    Column("Found missing [kg]", 14, Form.EXACT),
    Column("Found over [kg]", 14, Form.EXACT),
    Column("Presumed lost [kg]", 14, Form.EXACT),
    Column("Unaccounted [kg]", 14, Form.EXACT),
    Column("Of what was charged [%]", 14, Form.TENTHS),
    Column("Released where allowed [kg]", 14, Form.EXACT),
    Column("Left in hoses [kg]", 14, Form.EXACT),
    Column("Worked out from entries", 40, Form.LONG),
)


def unaccounted(content: AuditContent) -> Table:
    """One row a refrigerant."""

    def rows() -> Iterator[Row]:
        for line in content.unaccounted:
            yield (
                line.refrigerant,
                kg(line.used_mg),
                kg(line.missing_mg),
                kg(line.over_mg),
                kg(line.lost_mg),
                kg(line.unaccounted_mg),
                None if line.share is None else 100 * line.share,
                kg(line.released_mg),
                kg(line.hoses_mg),
                ", ".join(dict.fromkeys(line.entries)),
            )

    return Table(
        "Unaccounted",
        "Unaccounted: found missing less found over by weighing, and presumed lost. Released and "
        "left in hoses are accounted for. What was reversed counts for nothing.",
        UNACCOUNTED,
        rows(),
        empty="Nothing was used, and nothing was missed.",
    )
