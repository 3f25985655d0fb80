"""What a transfer counts as in the totals: received, charged, recovered, ..."""

from collections.abc import Iterator
from dataclasses import dataclass

from chargebench.ledger import Entry, Transfer

MOVEMENTS = (
    "received",
    "charged",
    "recovered",
    "released or lost",
    "returned",
    "decanted",
    "assumed content",
    "difference",
    "other",
)
_BY_ENDS = {
    ("supplier", "cylinder"): "received",
    ("cylinder", "equipment"): "charged",
    ("equipment", "cylinder"): "recovered",
    ("equipment", "atmosphere"): "released or lost",
    ("cylinder", "atmosphere"): "released or lost",
    ("cylinder", "supplier"): "returned",
    ("cylinder", "reclaimer"): "returned",
    ("cylinder", "destruction"): "returned",
    ("cylinder", "cylinder"): "decanted",
    ("outside", "equipment"): "assumed content",
}


@dataclass(frozen=True, slots=True)
class Moved:
    """A transfer of an entry and what it counts as; a reversal counts against what it undoes."""

    entry: Entry
    transfer: Transfer
    movement: str
    counted_mg: int  # negative for a reversal, and for what weighing found missing

    @property
    def month(self) -> str:
        """Year and month of the wall clock where it happened."""
        return self.entry.happened_at.strftime("%Y-%m")


def moved(entries: Iterator[Entry]) -> Iterator[Moved]:
    """Every transfer of the entries."""
    for entry in entries:
        undone = entry.kind == "reversal"
        for line in entry.transfers:
            source, target = (line.target, line.source) if undone else (line.source, line.target)
            # Found by weighing counts up, missed by weighing counts down.
            against = undone != (target == "difference")
            counted_mg = -line.mass_mg if against else line.mass_mg
            yield Moved(entry, line, movement(source, target), counted_mg)


def movement(source: str, target: str) -> str:
    """What a transfer between two places counts as."""
    ends = (source.partition(":")[0], target.partition(":")[0])
    if "difference" in ends:
        return "difference"
    return _BY_ENDS.get(ends, "other")
