"""Mass nobody can account for, by refrigerant, against what was used in the same period."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from chargebench.ledger import UsageRow

RELEASED = "released"  # what the text of a lawful release begins with


@dataclass(slots=True)
class UnaccountedLine:
    """One refrigerant in a period, in milligrams."""

    refrigerant: str
    used_mg: int = 0  # charged into equipment
    missing_mg: int = 0  # by the scale less in cylinders than the ledger said
    over_mg: int = 0  # by the scale more
    lost_mg: int = 0  # presumed lost from equipment
    released_mg: int = 0  # where the law allows
    hoses_mg: int = 0  # left in hoses
    entries: tuple[str, ...] = ()  # that it was worked out from, oldest first: B-12

    @property
    def unaccounted_mg(self) -> int:
        """What went nobody knows where: missing less found over, and presumed lost."""
        return self.missing_mg - self.over_mg + self.lost_mg

    @property
    def share(self) -> float | None:
        """Of what was used; None where nothing was."""
        return self.unaccounted_mg / self.used_mg if self.used_mg else None


def unaccounted(
    rows: Iterable[UsageRow], used_mg: Mapping[str, int]
) -> tuple[UnaccountedLine, ...]:
    """Lines of a period by refrigerant, from its mass lines to or from difference and atmosphere.

    What was reversed counts for nothing, nor does its reversal.
    """
    lines = {name: UnaccountedLine(name, used) for name, used in used_mg.items() if used}
    for row in rows:
        if not row.reversed:
            line = lines.setdefault(row.refrigerant, UnaccountedLine(row.refrigerant))
            column = _column(row)
            setattr(line, column, getattr(line, column) + row.mass_mg)
            line.entries = (f"{row.bench}-{row.number}", *line.entries)  # rows come newest first
    return tuple(lines[name] for name in sorted(lines))


def _column(row: UsageRow) -> str:
    if row.target == "difference":
        return "missing_mg"
    if row.source == "difference":
        return "over_mg"
    if row.source.startswith("cylinder:"):
        return "hoses_mg"
    return "released_mg" if row.as_typed.startswith(RELEASED) else "lost_mg"
