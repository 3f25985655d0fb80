"""Print every value of ours beside the same one from outside: `python -m tests.outside_checks`.

Rows are those of `tests/checkdata` and of the independent libraries in `tests/outside/peers.py`.
Ends with 1 where one is further off than its tolerance.
"""

import collections
import sys
from collections.abc import Callable
from functools import cache, partial

from chargebench import fluids
from tests.outside import of_calc, of_fluids, of_rules, peers
from tests.outside.check import Check, Value
from tests.outside.rows import FOLDER, SAME, Row, rows

OURS: dict[str, Callable[[Row], Value]] = of_fluids.OURS | of_calc.OURS | of_rules.OURS
# Files whose rows are one check each; the others are data for tests or for teqp.
FILES = (
    *("saturation_published", "state_points", "service_tables", "normal_boiling_points"),
    *("blend_boiling_points", "compositions", "catalogue", "water", "cylinder_ratios"),
    *("worked_examples", "rules"),
)
NO_CHECKS = {
    "hose_residual": "computed by CoolProp alone; teqp gives the same hoses in the table",
    "vacuum_decay_confusion": "a simulation, held against the rule in tests/calc",
    "mixture_pairs": "parameters handed to teqp",
}
HEADS = ("quantity", "of", "condition", "expected", "ours", "difference", "tolerance", "unit",
         "source", "mark")  # fmt: skip


def _value(row: Row) -> Value:
    return row["expected"] if row["tolerance"] == SAME else float(row["expected"])


def _of_row(row: Row) -> Check:
    return Check(
        quantity=row["quantity"],
        about=row["refrigerant"],
        condition=row["condition"],
        unit=row["unit"],
        tolerance=row["tolerance"],
        source=row["source"],
        mark=row["seen_or_memory"],
        expected=partial(_value, row),
        ours=partial(OURS[row["quantity"]], row),
    )


@cache
def checks() -> tuple[Check, ...]:
    """Every outside check, printed rows first."""
    return tuple(_of_row(row) for name in FILES for row in rows(name)) + tuple(peers.checks())


def unread_files() -> set[str]:
    """Files of rows that are neither checked nor said to be no checks."""
    return {path.stem for path in FOLDER.glob("*.csv")} - set(FILES) - set(NO_CHECKS)


def _text(value: Value) -> str:
    return value if isinstance(value, str) else f"{value:.7g}"


def main() -> int:
    """Print the table and what became of it."""
    failing, marks = 0, collections.Counter[str]()
    print("\t".join(HEADS))
    for check in checks():
        found = check.compare()
        failing += not found.met
        marks[check.mark] += 1
        cells = (
            check.quantity, check.about, check.condition, _text(found.expected), _text(found.ours),
            found.difference, check.tolerance, check.unit, check.source, check.mark,
        )  # fmt: skip
        print("\t".join(cells) + ("" if found.met else "\tFAILS"))
    fluids.close()
    of_each = ", ".join(f"{count} {mark}" for mark, count in marks.most_common())
    print(f"{sum(marks.values())} checks, {failing} failing; {of_each}")
    return 1 if failing else 0


if __name__ == "__main__":
    sys.exit(main())
