"""Quantities as the shop wants them shown: SI or IP, with places that fit their size.

A temperature is told from a temperature difference by its unit: degC or degF is a temperature,
kelvin or delta_degF a difference. So with pressures: kPa is a difference of pressures, any other
unit an absolute pressure.
"""

from typing import Literal

from chargebench.units.reading import show
from chargebench.units.registry import Quantity
from chargebench.words import Measured

System = Literal["SI", "IP"]
_Choice = tuple[float, str, int]  # used from this size on (in its own unit), unit, places

# By dimension, largest first: the first whose size the quantity reaches is used.
_CHOICES: dict[str, dict[System, tuple[_Choice, ...]]] = {
    "[mass]": {
        "SI": ((1, "kg", 3), (0, "g", 1)),
        "IP": ((1, "lb", 2), (1, "oz", 2), (0, "oz", 3)),
    },
    "[pressure]": {
        "SI": ((0.02, "bar", 2), (0, "Pa", 1)),
        "IP": ((0.3, "psi", 1), (0, "micron_Hg", 0)),
    },
    "[pressure] / [time]": {
        "SI": ((0, "Pa / minute", 2),),
        "IP": ((0, "micron_Hg / minute", 1),),
    },
    "[length]": {"SI": ((1, "m", 2), (0, "mm", 1)), "IP": ((1, "ft", 2), (0, "inch", 2))},
    "[area]": {"SI": ((0, "m**2", 1),), "IP": ((0, "ft**2", 0),)},
    "[volume]": {"SI": ((1, "L", 2), (0, "mL", 1)), "IP": ((0.1, "ft**3", 2), (0, "inch**3", 2))},
    "[time]": {
        "SI": ((2, "day", 0), (2, "hour", 1), (0, "minute", 0)),
        "IP": ((2, "day", 0), (2, "hour", 1), (0, "minute", 0)),
    },
    "[mass] / [time]": {
        "SI": ((1, "kg / year", 2), (0, "g / year", 0)),
        "IP": ((1, "lb / year", 2), (0, "oz / year", 1)),
    },
    "[mass] / [volume]": {
        "SI": ((1, "kg / m**3", 3), (0, "g / m**3", 1)),
        "IP": ((0, "lb / ft**3", 4),),
    },
    "[current]": {"SI": ((0, "A", 2),), "IP": ((0, "A", 2),)},
    "[]": {"SI": ((0, "", 2),), "IP": ((0, "", 2),)},
}
_TEMPERATURES: dict[System, tuple[str, str]] = {
    "SI": ("degC", "kelvin"),
    "IP": ("degF", "delta_degF"),
}


def unit_for(quantity: Quantity, system: System) -> tuple[str, int]:
    """Unit and decimal places a quantity is shown in."""
    if quantity.check("[temperature]"):
        offset = str(quantity.units) in ("degree_Celsius", "degree_Fahrenheit")
        return _TEMPERATURES[system][0 if offset else 1], 1
    if str(quantity.units) == "percent":
        return "percent", 1
    choices = next(by[system] for dimension, by in _CHOICES.items() if quantity.check(dimension))
    for least, unit, places in choices:
        if abs(quantity.m_as(unit)) >= least:
            return unit, places
    raise AssertionError(quantity)


# Losses are spoken of by the year, in the small unit of mass whatever their size.
YEARLY: dict[System, tuple[str, str]] = {"SI": ("g / year", "g/yr"), "IP": ("oz / year", "oz/yr")}


def digits(value: float, count: int) -> Measured:
    """A number rounded to its first digits, never written with a power of ten."""
    return Measured(f"{float(f'{value:.{count}g}'):.10g}")


def gauge(pressure: Quantity, unit: str, places: int) -> Measured:
    """Text of a pressure that is above the air's, in a unit: 150.0 psig, 10.34 bar(g)."""
    text = show(pressure, unit, places)
    return Measured(text.replace("(a)", "(g)").replace("psia", "psig"))


def brief(quantity: Quantity, system: System) -> Measured:
    """Text of a chosen limit in the shop's units, without zeros at its end: 3 K, 5.4 °F."""
    number, _, label = shown(quantity, system).partition(" ")
    number = number.rstrip("0").rstrip(".") if "." in number else number
    return Measured(f"{number} {label}".strip())


_PRESSURE_DIFFERENCES: dict[System, tuple[str, int, str]] = {
    "SI": ("kPa", 1, "kPa"),
    "IP": ("psi", 2, "psi"),
}


def shown(
    quantity: Quantity, system: System, *, like: Quantity | None = None, finer: int = 0
) -> Measured:
    """Text of a quantity in the shop's units; `like` lends its unit to an uncertainty or limit.

    `finer` gives more places to what is small beside its unit.
    """
    if str(quantity.units) == "kilopascal":
        unit, places, label = _PRESSURE_DIFFERENCES[system]
        return Measured(f"{show(quantity, unit, places).split(' ', maxsplit=1)[0]} {label}")
    unit, places = unit_for(quantity if like is None else like, system)
    return show(quantity, unit, places + finer)
