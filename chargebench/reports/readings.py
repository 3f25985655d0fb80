"""Readings of a job as found and as left, side by side, with the maker's figures."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from chargebench.reports.content import JobRecord
from chargebench.steps import Case, Cell, Table, beside
from chargebench.steps.beside import Taken
from chargebench.steps.running import NOTHING

MARK = "◆"
_NO_OTHER = Taken("", NOTHING, from_surfaces=False, values={})


@dataclass(frozen=True, slots=True)
class Beside:
    """Heads and rows of the table, and what its marks mean where there are any."""

    heads: tuple[str, ...] = ()
    rows: Sequence[tuple[str, ...]] = ()
    says: str = ""


def side_by_side(job: JobRecord) -> Beside:
    """The table, of steps that are signed only; empty where none is."""
    case, found, left = job.case, job.counts("as_found"), job.counts("as_left")
    if left is None:
        if found is None:
            return Beside()
        table = beside.table(case, "as_found", (_NO_OTHER,), found.worked)
        return _in_order(case, table, "As found", "")
    earlier = beside.taken(case, "as_found", "", found.worked) if found else None
    # What was read as found is handed over beside; the table would else add it once more.
    bare = replace(case, answers={k: v for k, v in case.answers.items() if k != "as_found"})
    table = beside.table(bare, "as_left", (earlier or _NO_OTHER,), left.worked)
    return _in_order(case, table, "As left", "As found" if earlier else "")


def _in_order(case: Case, table: Table | None, today: str, before: str) -> Beside:
    """What was before stands first, the maker last; a row of nothing is left out."""
    if table is None:
        return Beside()
    columns = {"Reading": 0, before: len(table.heads) - 1, today: 1}
    if "maker" in table.heads:
        columns["Maker"] = 2
    columns.pop("", None)
    rows = [tuple(_text(case, row[place]) for place in columns.values()) for row in table.rows]
    marked = any(MARK in cell for row in rows for cell in row)
    says = table.says.replace("today's", f"“{today}”") if marked else ""
    return Beside(tuple(columns), [row for row in rows if any(row[1:])], says)


def _text(case: Case, cell: Cell) -> str:
    value = cell.value if isinstance(cell.value, str) else case.shown(cell.value)
    return f"{MARK} {value}" if cell.marked else value
