"""Sheets of the ledger itself: entries, transfers, balances and totals, with control totals."""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from chargebench.ledger.entry import payload_text
from chargebench.reports.content import AuditContent
from chargebench.reports.movement import MOVEMENTS, moved
from chargebench.reports.table import (
    HEAD_ROW,
    MG_PER_KG,
    Column,
    Form,
    Formula,
    Row,
    Table,
    clock,
    kg,
    lb,
    zone,
)

# Columns of the transfers sheet that the control totals look up.
MONTH, REFRIGERANT, COUNTS_AS, COUNTED, FROM, INTO, MASS = "E", "I", "L", "M", "G", "H", "N"


ENTRIES = (
    Column("Entry", 8, Form.WHOLE),
    Column("Bench", 8),
    Column("Kind", 16),
    Column("Job", 10),
    Column("Happened at", 17, Form.WHEN),
    Column("UTC offset", 9),
    Column("Recorded at [UTC]", 19, Form.MOMENT),
    Column("By", 16),
    Column("Recorded content", 60),
    Column("Previous hash", 24),
    Column("Hash", 24),
    Column("Id", 24),
)
TRANSFERS = (
    Column("Entry", 8, Form.WHOLE),
    Column("Job", 10),
    Column("Happened at", 17, Form.WHEN),
    Column("UTC offset", 9),
    Column("Month", 9),
    Column("Entry kind", 14),
    Column("From", 18),
    Column("Into", 18),
    Column("Refrigerant", 12),
    Column("As typed", 22),
    Column("By", 16),
    Column("Counts as", 17),
    Column("Counted [mg]", 14, Form.WHOLE),
    Column("Mass [mg]", 14, Form.WHOLE),
    Column("Mass [kg]", 13, Form.EXACT),
    Column("Mass [lb]", 12, Form.MASS),
)


@dataclass(slots=True)
class Totals:
    """What the transfers of the period come to, summed while their sheet is written."""

    transfers: int = 0
    entries: int = 0
    by_month: Counter[tuple[str, str, str]] = field(default_factory=Counter)
    lines: Counter[tuple[str, str, str]] = field(default_factory=Counter)
    by_entry: dict[int, Counter[str]] = field(default_factory=dict)
    by_job: dict[str, Counter[str]] = field(default_factory=dict)
    by_place: Counter[tuple[str, str]] = field(default_factory=Counter)

    def range(self, column: str) -> str:
        """A column of the transfers sheet, as a formula names it."""
        last = HEAD_ROW + max(self.transfers, 1)
        return f"Transfers!${column}${HEAD_ROW + 1}:${column}${last}"

    def of_entry(self, number: int) -> Mapping[str, int]:
        """What an entry moved, by movement."""
        return self.by_entry.get(number, {})

    def refrigerants(self) -> tuple[str, ...]:
        """Refrigerants that moved."""
        return tuple(sorted({key[1] for key in self.by_month}))


def entries(content: AuditContent, totals: Totals) -> Table:
    """Every entry as recorded, with its place in the chain."""

    def rows() -> Iterator[Row]:
        for entry in content.entries():
            totals.entries += 1
            yield (
                entry.number,
                entry.bench,
                entry.kind,
                content.job_numbers.get(entry.job or "", ""),
                clock(entry.happened_at),
                zone(entry.happened_at),
                clock(entry.recorded_at),
                content.person(entry.by),
                payload_text(entry.payload),
                entry.previous_hash,
                entry.hash,
                entry.id,
            )

    return Table(
        "Entries",
        "Every entry as recorded. Each hash covers the entry and the hash before it.",
        ENTRIES,
        rows(),
    )


def transfers(content: AuditContent, totals: Totals) -> Table:
    """Every mass line with both ends; sums it while it is written."""

    def rows() -> Iterator[Row]:
        for each in moved(content.entries()):
            entry, line = each.entry, each.transfer
            key = (each.month, line.refrigerant, each.movement)
            totals.transfers += 1
            totals.by_month[key] += each.counted_mg
            totals.lines[key] += 1
            totals.by_entry.setdefault(entry.number, Counter())[each.movement] += each.counted_mg
            totals.by_place[line.source, line.refrigerant] -= line.mass_mg
            totals.by_place[line.target, line.refrigerant] += line.mass_mg
            if entry.job:
                totals.by_job.setdefault(entry.job, Counter())[each.movement] += each.counted_mg
            yield (
                entry.number,
                content.job_numbers.get(entry.job or "", ""),
                clock(entry.happened_at),
                zone(entry.happened_at),
                each.month,
                entry.kind,
                line.source,
                line.target,
                line.refrigerant,
                line.as_typed,
                content.person(entry.by),
                each.movement,
                each.counted_mg,
                line.mass_mg,
                kg(line.mass_mg),
                lb(line.mass_mg),
            )

    return Table(
        "Transfers",
        "Every mass moved, with both ends. A reversal counts against the movement it takes back.",
        TRANSFERS,
        rows(),
    )


def totals_by_month(totals: Totals) -> Table:
    """The program's totals beside live ones over the transfers."""

    def rows() -> Iterator[Row]:
        for at, (key, mass_mg) in enumerate(sorted(totals.by_month.items()), HEAD_ROW + 1):
            control = (
                f"=SUMIFS({totals.range(COUNTED)},{totals.range(MONTH)},$A{at},"
                f"{totals.range(REFRIGERANT)},$B{at},{totals.range(COUNTS_AS)},$C{at})/{MG_PER_KG}"
            )
            yield (
                *key,
                totals.lines[key],
                kg(mass_mg),
                Formula(control, kg(mass_mg) or 0),
                Formula(f"=ROUND(F{at}-E{at},6)", 0),
            )

    return Table(
        "Totals by month",
        "Refrigerant by month. The control total is worked out here from the transfers sheet.",
        (
            Column("Month", 9),
            Column("Refrigerant", 12),
            Column("Movement", 18),
            Column("Transfers", 10, Form.WHOLE),
            Column("Program's total [kg]", 14, Form.EXACT),
            Column("Control total [kg]", 14, Form.EXACT),
            Column("Difference [kg]", 13, Form.EXACT),
        ),
        rows(),
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
    text = (
        f"=SUMIFS({totals.range(COUNTED)},{totals.range(REFRIGERANT)},$A{at},"
        f'{totals.range(COUNTS_AS)},"{movement}")/{MG_PER_KG}'
    )
    return Formula(text, kg(mass_mg) or 0)


def balances(content: AuditContent, totals: Totals) -> Table:
    """Opening and closing balance of each place, the closing one recomputed from the transfers."""

    def rows() -> Iterator[Row]:
        ordered = sorted(content.balances, key=lambda each: (each.place, each.refrigerant))
        for at, each in enumerate(ordered, HEAD_ROW + 1):
            net_mg = totals.by_place[each.place, each.refrigerant]
            sums = [
                f"SUMIFS({totals.range(MASS)},{totals.range(end)},$A{at},"
                f"{totals.range(REFRIGERANT)},$B{at})"
                for end in (INTO, FROM)
            ]
            control = f"=C{at}+({sums[0]}-{sums[1]})/{MG_PER_KG}"
            off_mg = each.opening_mg + net_mg - each.closing_mg
            yield (
                each.place,
                each.refrigerant,
                kg(each.opening_mg),
                kg(each.closing_mg),
                Formula(control, kg(each.opening_mg + net_mg) or 0),
                Formula(f"=ROUND(E{at}-D{at},6)", kg(off_mg) or 0),
            )

    return Table(
        "Balances",
        f"What each place held at the ends of the period, {content.period}. The control balance "
        "is worked out here from the opening one and the transfers sheet.",
        (
            Column("Place", 22),
            Column("Refrigerant", 12),
            Column("Opening [kg]", 14, Form.EXACT),
            Column("Closing [kg]", 14, Form.EXACT),
            Column("Control closing [kg]", 14, Form.EXACT),
            Column("Difference [kg]", 13, Form.EXACT),
        ),
        rows(),
    )
