"""Rows of published values kept in tests/checkdata, each with its source and its mark."""

import csv
import functools
from pathlib import Path

from chargebench.units import Q, Quantity

FOLDER = Path(__file__).resolve().parent.parent / "checkdata"
AIR = Q(101_325, "Pa")


@functools.cache
def rows(name: str) -> tuple[dict[str, str], ...]:
    """The file's rows; a test without any would pass without testing."""
    with (FOLDER / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        found = tuple(csv.DictReader(file))
    assert found
    return found


def label(row: dict[str, str]) -> str:
    """Name of a row in pytest's report."""
    return f"{row['refrigerant']} {row['quantity']} {row['condition']}".replace(" ", "_")


def condition(text: str) -> Quantity:
    """A condition such as `t=-23.150 C`, `p=100000 Pa`, `20 psig` or `424 kPa gauge`, absolute."""
    number, unit = text.split("=")[-1].split(" ", 1)
    return absolute(float(number), unit)


def absolute(number: float, unit: str) -> Quantity:
    """A number in a printed unit; a gauge pressure is made absolute at standard air pressure."""
    gauge = unit == "psig" or unit.endswith(" gauge")
    unit = {"C": "degC", "psig": "psi"}.get(unit, unit.removesuffix(" gauge"))
    quantity: Quantity = Q(number, unit)
    return quantity + AIR if gauge else quantity
