"""Sheets of totals and balances: the program's figures beside live ones over the transfers."""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent
from chargebench.reports.movement import MOVEMENTS
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.table import (
    HEAD_ROW,
    MG_PER_KG,
    Bars,
    Column,
    Form,
    Formula,
    Row,
    Table,
    kg,
    letter_of,
)

DRAWN = ("received", "charged", "recovered", "released or lost", "returned")
MONTHS_DRAWN = 36
BY_MONTH = (
    Column("Month", 9),
    Column("Refrigerant", 12),
    Column("Movement", 18),
    Column("Transfers", 10, Form.WHOLE),
    Column("Program's total [kg]", 14, Form.EXACT),
    Column("Control total [kg]", 14, Form.EXACT),
    Column("Difference [kg]", 13, Form.EXACT),
)
RECOVERED = (
    Column("Month", 9),
    Column("Refrigerant", 12),
    Column("Recovered [kg]", 14, Form.EXACT),
    Column("Of it, from equipment disposed of [kg]", 16, Form.EXACT),
    Column("Sent for reclaim [kg]", 14, Form.EXACT),
    Column("Sent for destruction [kg]", 14, Form.EXACT),
    Column("Program's recovered [kg]", 14, Form.EXACT),
    Column("Difference [kg]", 13, Form.EXACT),
)


def _sum(totals: Totals, *conditions: tuple[str, str]) -> str:
    """A live sum in kilograms over the transfers that count; conditions are head and criterion."""
    tests = ",".join(f"{totals.range(head)},{criterion}" for head, criterion in conditions)
    return f"SUMIFS({totals.range('Counted [mg]')},{tests})"


def totals_by_month(totals: Totals) -> Table:
    """The program's totals beside live ones over the transfers."""
    mine, control = (letter_of(BY_MONTH, head) for head in (BY_MONTH[4].head, BY_MONTH[5].head))

    def rows() -> Iterator[Row]:
        for at, (key, mass_mg) in enumerate(sorted(totals.by_month.items()), HEAD_ROW + 1):
            live = _sum(
                totals, ("Month", f"$A{at}"), ("Refrigerant", f"$B{at}"), ("Counts as", f"$C{at}")
            )
            yield (
                *key,
                totals.lines[key],
                kg(mass_mg),
                Formula(f"={live}/{MG_PER_KG}", kg(mass_mg) or 0),
                Formula(f"=ROUND({control}{at}-{mine}{at},6)", 0),
            )

    return Table(
        "Totals by month",
        "Refrigerant by month. The control total is worked out here from the transfers sheet.",
        BY_MONTH,
        rows(),
    )


def usage_by_month(totals: Totals) -> Table:
    """A row a month, all refrigerants together, drawn below."""
    columns = (
        Column("Month", 9),
        *(Column(f"{each.capitalize()} [kg]", 14, Form.EXACT) for each in MOVEMENTS),
    )
    months = sorted({month for month, _, _ in totals.by_month})
    sums = {
        (month, movement): sum(
            mass_mg
            for (of, _, counts_as), mass_mg in totals.by_month.items()
            if (of, counts_as) == (month, movement)
        )
        for month in months
        for movement in MOVEMENTS
    }

    def rows() -> Iterator[Row]:
        for at, month in enumerate(months, HEAD_ROW + 1):
            yield (month, *(live(at, movement, sums[month, movement]) for movement in MOVEMENTS))

    def live(at: int, movement: str, mass_mg: int) -> Formula:
        text = _sum(totals, ("Month", f"$A{at}"), ("Counts as", f'"{movement}"'))
        return Formula(f"={text}/{MG_PER_KG}", kg(mass_mg) or 0)

    drawn = months[:MONTHS_DRAWN]
    chart = Bars(
        "Refrigerant by month",
        names=1,
        columns=tuple(MOVEMENTS.index(each) + 2 for each in DRAWN),
        rows=len(drawn),
        y_title="kg",
        named=tuple(drawn),
        values=tuple(tuple(sums[month, of] / MG_PER_KG for month in drawn) for of in DRAWN),
    )
    return Table(
        "Usage by month",
        "What moved in each month, all refrigerants together. Live totals over the transfers.",
        columns,
        rows(),
        charts=(chart,) if drawn else (),
    )


def recovered_by_month(totals: Totals, disposed_mg: dict[tuple[str, str], int]) -> Table:
    """The monthly statement by type: what was recovered, and what was sent away of it."""
    keys = {(month, kind) for month, kind, of in totals.by_month if of == "recovered"}
    keys |= {(month, kind) for month, kind, _ in totals.sent} | set(disposed_mg)

    def sent(at: int, to: str) -> str:
        common = (("Month", f"$A{at}"), ("Refrigerant", f"$B{at}"), ("Counts as", '"returned"'))
        ends = (_sum(totals, *common, (end, f'"{to}"')) for end in ("Into", "From"))
        return f"=({'+'.join(ends)})/{MG_PER_KG}"

    def rows() -> Iterator[Row]:
        for at, (month, kind) in enumerate(sorted(keys), HEAD_ROW + 1):
            mass_mg = totals.by_month[month, kind, "recovered"]
            live = _sum(
                totals,
                ("Month", f"$A{at}"),
                ("Refrigerant", f"$B{at}"),
                ("Counts as", '"recovered"'),
            )
            yield (
                month,
                kind,
                Formula(f"={live}/{MG_PER_KG}", kg(mass_mg) or 0),
                kg(disposed_mg.get((month, kind), 0)),
                *(
                    Formula(sent(at, to), kg(totals.sent[month, kind, to]) or 0)
                    for to in ("reclaimer", "destruction")
                ),
                kg(mass_mg),
                Formula(f"=ROUND(C{at}-G{at},6)", 0),
            )

    return Table(
        "Recovered by month",
        "Recovered refrigerant by month and type, and what was sent for reclaim or destruction; "
        "to whom stands in the sheet “Handed over”.",
        RECOVERED,
        rows(),
        empty="Nothing was recovered and nothing was sent away in this period.",
    )


def totals_by_refrigerant(content: AuditContent, totals: Totals) -> Table:
    """A row for each refrigerant, a live total for each movement."""

    def rows() -> Iterator[Row]:
        for at, refrigerant in enumerate(totals.refrigerants(), HEAD_ROW + 1):
            yield (refrigerant, *(_total(totals, at, refrigerant, each) for each in MOVEMENTS))

    return Table(
        "Refrigerants",
        f"What moved of each refrigerant, {content.period}. Live totals over the transfers sheet.",
        (
            Column("Refrigerant", 12),
            *(Column(f"{each.capitalize()} [kg]", 14, Form.EXACT) for each in MOVEMENTS),
        ),
        rows(),
    )


def _total(totals: Totals, at: int, refrigerant: str, movement: str) -> Formula:
    mass_mg = sum(
        mass
        for (_, kind, counts_as), mass in totals.by_month.items()
        if (kind, counts_as) == (refrigerant, movement)
    )
    live = _sum(totals, ("Refrigerant", f"$A{at}"), ("Counts as", f'"{movement}"'))
    return Formula(f"={live}/{MG_PER_KG}", kg(mass_mg) or 0)
