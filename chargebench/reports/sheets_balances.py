"""Sheets of balances: opening + in - out = closing, for each place and for the stock as a whole.

Where the records are narrowed, what other entries moved stands in a column of its own, so that the
closing balance is still what the place held.
"""

from collections.abc import Iterator, Sequence

from chargebench.reports.content import AuditContent, BalanceRecord
from chargebench.reports.sheets_ledger import Totals
from chargebench.reports.table import (
    HEAD_ROW,
    MG_PER_KG,
    Column,
    Form,
    Formula,
    Row,
    Table,
    kg,
    letter_of,
)

_MASSES = (
    Column("Opening [kg]", 14, Form.EXACT),
    Column("In [kg]", 14, Form.EXACT),
    Column("Out [kg]", 14, Form.EXACT),
    Column("By entries not shown [kg]", 14, Form.EXACT),
    Column("Control closing [kg]", 14, Form.EXACT),
    Column("Closing [kg]", 14, Form.EXACT),
    Column("Difference [kg]", 13, Form.EXACT),
)
BALANCES = (Column("Place", 22), Column("Kind of place", 13), Column("Refrigerant", 12), *_MASSES)
STOCK = (Column("Refrigerant", 12), Column("Cylinders", 11, Form.WHOLE), *_MASSES)
CYLINDER = "cylinder"


def _ordered(content: AuditContent) -> list[BalanceRecord]:
    return sorted(content.balances, key=lambda each: (each.place, each.refrigerant))


def difference_mg(totals: Totals, each: BalanceRecord) -> int:
    """By how much a closing balance is not what came in and went out makes of the opening one."""
    net_mg = totals.net_mg(each.place, each.refrigerant)
    return each.opening_mg + net_mg + each.outside_mg - each.closing_mg


def _ends(columns: Sequence[Column], at: int, control_mg: int, off_mg: int) -> Iterator[Formula]:
    """Control balance and difference of a row, from its own cells."""
    opening, into, out, other, control, closing, _ = (
        letter_of(columns, each.head) for each in _MASSES
    )
    live = f"={opening}{at}+{into}{at}-{out}{at}+{other}{at}"
    yield Formula(live, kg(control_mg) or 0)
    yield Formula(f"=ROUND({control}{at}-{closing}{at},6)", kg(off_mg) or 0)


def balances(content: AuditContent, totals: Totals) -> Table:
    """Opening and closing balance of each place, the closing one recomputed from the transfers."""
    place, kind = (letter_of(BALANCES, head) for head in ("Place", "Refrigerant"))

    def moved(at: int, end: str) -> str:
        return (
            f"=SUMIFS({totals.range('Mass [mg]')},{totals.range(end)},${place}{at},"
            f"{totals.range('Refrigerant')},${kind}{at})/{MG_PER_KG}"
        )

    def rows() -> Iterator[Row]:
        for at, each in enumerate(_ordered(content), HEAD_ROW + 1):
            key = (each.place, each.refrigerant)
            off_mg = difference_mg(totals, each)
            control, off = _ends(BALANCES, at, each.closing_mg + off_mg, off_mg)
            yield (
                each.place,
                each.place.partition(":")[0],
                each.refrigerant,
                kg(each.opening_mg),
                Formula(moved(at, "Into"), kg(totals.into[key]) or 0),
                Formula(moved(at, "From"), kg(totals.out_of[key]) or 0),
                kg(each.outside_mg),
                control,
                kg(each.closing_mg),
                off,
            )

    return Table(
        "Balances",
        f"What each place held at the ends of the period, {content.period}. In and out are live "
        "sums over the transfers sheet; the control balance is opening + in - out.",
        BALANCES,
        rows(),
    )


def stock_balances(content: AuditContent, totals: Totals) -> Table:
    """What all cylinders together held of each refrigerant, as sums over the balances sheet."""
    held = [each for each in _ordered(content) if each.place.startswith(f"{CYLINDER}:")]
    last = HEAD_ROW + max(len(content.balances), 1)

    def column(head: str) -> str:
        letter = letter_of(BALANCES, head)
        return f"Balances!${letter}${HEAD_ROW + 1}:${letter}${last}"

    def live(at: int, head: str, mass_mg: int) -> Formula:
        tests = f'{column("Kind of place")},"{CYLINDER}",{column("Refrigerant")},$A{at}'
        return Formula(f"=SUMIFS({column(head)},{tests})", kg(mass_mg) or 0)

    def rows() -> Iterator[Row]:
        for at, kind in enumerate(sorted({each.refrigerant for each in held}), HEAD_ROW + 1):
            of = [each for each in held if each.refrigerant == kind]
            off_mg = sum(difference_mg(totals, each) for each in of)
            closing_mg = sum(each.closing_mg for each in of)
            control, off = _ends(STOCK, at, closing_mg + off_mg, off_mg)
            yield (
                kind,
                len(of),
                live(at, "Opening [kg]", sum(each.opening_mg for each in of)),
                live(at, "In [kg]", sum(totals.into[each.place, kind] for each in of)),
                live(at, "Out [kg]", sum(totals.out_of[each.place, kind] for each in of)),
                live(at, "By entries not shown [kg]", sum(each.outside_mg for each in of)),
                control,
                live(at, "Closing [kg]", closing_mg),
                off,
            )

    return Table(
        "Stock by refrigerant",
        f"What all cylinders together held of each refrigerant, {content.period}. Live sums over "
        "the balances sheet; what was decanted counts as in and as out.",
        STOCK,
        rows(),
        empty="No cylinder held anything in this period.",
    )
