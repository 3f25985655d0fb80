"""Sheets of the ledger itself: entries and transfers; what totals look up is summed in passing."""

from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from chargebench.ledger.entry import payload_text
from chargebench.reports.content import AuditContent
from chargebench.reports.movement import Moved, moved
from chargebench.reports.table import (
    HEAD_ROW,
    Column,
    Form,
    Row,
    Table,
    clock,
    kg,
    lb,
    letter_of,
    zone,
)

ENTRIES = (
    Column("Bench", 7),
    Column("Entry", 8, Form.WHOLE),
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
    Column("Bench", 7),
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
    sent: Counter[tuple[str, str, str]] = field(default_factory=Counter)  # returned, by where to
    by_entry: dict[str, Counter[str]] = field(default_factory=dict)  # of jobs
    by_job: dict[str, Counter[str]] = field(default_factory=dict)
    into: Counter[tuple[str, str]] = field(default_factory=Counter)  # by place and refrigerant
    out_of: Counter[tuple[str, str]] = field(default_factory=Counter)

    def add(self, each: Moved, source: str, target: str) -> None:
        """Count one transfer, its ends named as the sheet names them."""
        entry, line = each.entry, each.transfer
        key = (each.month, line.refrigerant, each.movement)
        self.transfers += 1
        self.by_month[key] += each.counted_mg
        self.lines[key] += 1
        if each.movement == "returned":
            to = source if entry.kind == "reversal" else target
            self.sent[each.month, line.refrigerant, to] += each.counted_mg
        self.out_of[source, line.refrigerant] += line.mass_mg
        self.into[target, line.refrigerant] += line.mass_mg
        if entry.job:
            self.by_entry.setdefault(entry.id, Counter())[each.movement] += each.counted_mg
            self.by_job.setdefault(entry.job, Counter())[each.movement] += each.counted_mg

    def range(self, head: str) -> str:
        """A column of the transfers sheet, as a formula names it."""
        column, last = letter_of(TRANSFERS, head), HEAD_ROW + max(self.transfers, 1)
        return f"Transfers!${column}${HEAD_ROW + 1}:${column}${last}"

    def of_entry(self, entry: str) -> Mapping[str, int]:
        """What an entry moved, by movement."""
        return self.by_entry.get(entry, {})

    def net_mg(self, place: str, refrigerant: str) -> int:
        """What came into a place less what went out of it."""
        return self.into[place, refrigerant] - self.out_of[place, refrigerant]

    def refrigerants(self) -> tuple[str, ...]:
        """Refrigerants that moved."""
        return tuple(sorted({key[1] for key in self.by_month}))


def entries(content: AuditContent, totals: Totals) -> Table:
    """Every entry as recorded, with its place in the chain."""

    def rows() -> Iterator[Row]:
        for entry in content.entries():
            totals.entries += 1
            yield (
                entry.bench,
                entry.number,
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
        "Every entry as recorded. Each hash covers the entry and the hash before it"
        + (f"; shown are those of {content.selection.words}." if content.selection else "."),
        ENTRIES,
        rows(),
    )


def transfers(content: AuditContent, totals: Totals) -> Table:
    """Every mass line with both ends; sums it while it is written."""
    names = content.names

    def rows() -> Iterator[Row]:
        for each in moved(content.entries()):
            entry, line = each.entry, each.transfer
            source, target = (names.get(end, end) for end in (line.source, line.target))
            totals.add(each, source, target)
            yield (
                entry.bench,
                entry.number,
                content.job_numbers.get(entry.job or "", ""),
                clock(entry.happened_at),
                zone(entry.happened_at),
                each.month,
                entry.kind,
                source,
                target,
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
        "Every mass moved, with both ends, each under the id its thing goes by. A reversal counts "
        "against the movement it takes back.",
        TRANSFERS,
        rows(),
    )
