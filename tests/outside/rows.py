"""Rows of values printed by others, as they stand in `tests/checkdata`.

Each row names its source and its mark: SEEN, read in the source named; SEEN-2, in a secondary
source that quotes it; MEMORY, recalled; BY HAND, arithmetic from inputs that stand in the row.
Nothing of this program is needed to read them.
"""

import csv
import functools
from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent / "checkdata"
SAME = "same"  # the tolerance of what is a word and not a number

Row = dict[str, str]


@functools.cache
def rows(name: str) -> tuple[Row, ...]:
    """The file's rows; a test without any would pass without testing."""
    with (FOLDER / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        found = tuple(csv.DictReader(file))
    assert found
    return found


def label(row: Row) -> str:
    """Name of a row in pytest's report."""
    return f"{row['refrigerant']} {row['quantity']} {row['condition']}".replace(" ", "_")
