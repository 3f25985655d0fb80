"""One value of ours beside the same one from outside, and units as they are printed."""

import re
from collections.abc import Callable
from dataclasses import dataclass

from chargebench.units import Q, Quantity

LIBRARIES = ("chemicals", "iapws", "teqp")
MARKS = ("SEEN", "SEEN-2", "MEMORY", "BY HAND", *LIBRARIES)
AIR = Q(101_325, "Pa")
PINT_UNITS = {"C": "degC", "psig": "psi", "delta degF": "delta_degF", "micron": "micron_Hg"}

Value = float | str


@dataclass(frozen=True)
class Compared:
    """What a check came to; numbers in the unit of its row."""

    expected: Value
    ours: Value
    difference: str
    met: bool


@dataclass(frozen=True)
class Check:
    """One value of ours beside the same one from outside.

    The tolerance is in the row's unit, a share of the expected value such as `0.1 %`, or `same`.
    """

    quantity: str
    about: str
    condition: str
    unit: str
    tolerance: str
    source: str
    mark: str
    expected: Callable[[], Value]
    ours: Callable[[], Value]

    def __str__(self) -> str:
        return f"{self.about} {self.quantity} {self.condition} {self.mark}".replace(" ", "_")

    def compare(self) -> Compared:
        """Work both out and hold them against each other."""
        expected, ours = self.expected(), self.ours()
        if isinstance(expected, str) or isinstance(ours, str):
            return Compared(
                expected, ours, "same" if ours == expected else "other", ours == expected
            )
        number = float(self.tolerance.removesuffix("%"))
        allowed = abs(expected) * number / 100 if self.tolerance.endswith("%") else number
        off = ours - expected
        return Compared(expected, ours, f"{off:.2g}", abs(off) <= allowed * (1 + 1e-9))


def condition(text: str) -> Quantity:
    """A condition such as `t=-23.150 C`, `p=100000 Pa`, `20 psig` or `424 kPa gauge`, absolute."""
    number, unit = text.split("=")[-1].split(" ", 1)
    return absolute(float(number), unit)


def absolute(number: float, unit: str) -> Quantity:
    """A number in a printed unit; a gauge pressure is made absolute at standard air pressure."""
    quantity: Quantity = Q(number, pint_unit(unit))
    return quantity + AIR if _is_gauge(unit) else quantity


def printed(quantity: Quantity, unit: str) -> float:
    """A quantity as a number in a printed unit; absolute pressures as gauge where that is meant."""
    return float((quantity - AIR if _is_gauge(unit) else quantity).m_as(pint_unit(unit)))


def pint_unit(unit: str) -> str:
    """The registry's name of a printed unit."""
    powers = re.sub(r"(?<=[a-z])(?=[23]\b)", "**", unit.removesuffix(" gauge"))
    return PINT_UNITS.get(unit, powers)


def _is_gauge(unit: str) -> bool:
    return unit == "psig" or unit.endswith(" gauge")
