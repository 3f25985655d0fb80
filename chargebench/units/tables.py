"""What can be measured and in which units: every spelling read, and the fences of sense."""

from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from chargebench.units.registry import ureg


class Kind(StrEnum):
    """What a typed reading measures; its value is how a refusal names it."""

    MASS = "mass"
    SCALE = "scale reading"
    PRESSURE = "pressure"
    AIR_PRESSURE = "air pressure"
    TEMPERATURE = "temperature"
    DIFFERENCE = "temperature difference"
    LENGTH = "length"
    AREA = "area"
    VOLUME = "volume"
    DURATION = "time span"
    PERCENT = "percentage"
    MASS_RATE = "loss per year"
    CURRENT = "current"
    NUMBER = "number"

    @property
    def with_article(self) -> str:
        """The kind as a refusal names it: a mass, an area."""
        return _WITH_ARTICLE[self.value]


# Whole, since another language has other articles.
_WITH_ARTICLE = {
    "mass": "a mass",
    "scale reading": "a scale reading",
    "pressure": "a pressure",
    "air pressure": "an air pressure",
    "temperature": "a temperature",
    "temperature difference": "a temperature difference",
    "length": "a length",
    "area": "an area",
    "volume": "a volume",
    "time span": "a time span",
    "percentage": "a percentage",
    "loss per year": "a loss per year",
    "current": "a current",
    "number": "a number",
}


@dataclass(frozen=True, slots=True)
class Unit:
    """One unit of a kind."""

    label: str  # as printed
    pint: Any  # pint unit
    gauge: bool = False


def _units(*rows: tuple[str, str, str]) -> dict[str, Unit]:
    """Spelling -> unit, from (label, pint name, spellings parted by '|')."""
    table: dict[str, Unit] = {}
    for label, name, spellings in rows:
        unit = Unit(label, ureg.Unit(name))
        table |= dict.fromkeys([fold(label), *map(fold, spellings.split("|"))], unit)
    return table


def fold(spelling: str) -> str:
    """Spelling without what does not tell units apart: spaces, case, raised digits."""
    return spelling.replace(" ", "").replace("²", "2").replace("³", "3").casefold()


_MASS = _units(
    ("mg", "mg", "milligram|milligrams"),
    ("g", "g", "gram|grams|gr"),
    ("kg", "kg", "kilogram|kilograms|kilo|kilos"),
    ("t", "metric_ton", "tonne|tonnes"),
    ("lb", "lb", "lbs|pound|pounds|lb.|lbs."),
    ("oz", "oz", "ounce|ounces|oz."),
)
_ABSOLUTE = _units(
    ("Pa", "Pa", "pascal|Pa(a)"),
    ("hPa", "hPa", "hPa(a)"),
    ("micron", "micron_Hg", "microns|µmHg|umHg|µm|mTorr"),
    ("Torr", "torr", "torr"),
    ("mmHg", "mmHg", "mmHg(a)"),
    ("mbar", "mbar", "mbar(a)|mbara"),
    ("kPa(a)", "kPa", "kPaa|kPaabs|kPa(abs)"),
    ("MPa(a)", "MPa", "MPaa|MPaabs|MPa(abs)"),
    ("bar(a)", "bar", "bara|barabs|bar(abs)"),
    ("psia", "psi", "psi(a)|psiabs|psi(abs)"),
    ("inHg(a)", "inHg", "inHga|inHgabs|inHg(abs)"),
    ("atm", "atm", "atm(a)"),
)
_GAUGE = {
    spelling: Unit(unit.label, unit.pint, gauge=True)
    for spelling, unit in _units(
        ("psig", "psi", "psi(g)|psigauge"),
        ("bar(g)", "bar", "barg|bargauge"),
        ("kPa(g)", "kPa", "kPag|kPagauge"),
        ("MPa(g)", "MPa", "MPag|MPagauge"),
    ).items()
}
# A vacuum on a dial gauge: -10 inHg, or the trade's "10 inHg vac".
DIAL = {
    fold("inHg"): Unit("inHg", ureg.Unit("inHg"), gauge=True),
    fold('"Hg'): Unit("inHg", ureg.Unit("inHg"), gauge=True),
}
_DIAL_VACUUM = {
    fold(s): Unit("inHg vac", ureg.Unit("inHg"), gauge=True)
    for s in ("inHg vac", "inHg vacuum", '"Hg vac', "inHgv")
}
_TEMPERATURE = _units(
    ("°C", "degC", "C|degC|deg C|celsius|ºC"),
    ("°F", "degF", "F|degF|deg F|fahrenheit|ºF"),
    ("K", "kelvin", "kelvin"),
)
_DIFFERENCE = _units(
    ("K", "kelvin", "kelvin|°C|C|degC|delta C|deltaC"),
    ("°F", "delta_degF", "F|degF|delta F|deltaF|R"),
)
_LENGTH = _units(
    ("mm", "mm", "millimetre|millimeter"),
    ("cm", "cm", "centimetre|centimeter"),
    ("m", "m", "metre|meter|metres|meters"),
    ("in", "inch", 'inch|inches|"|in.'),
    ("ft", "foot", "foot|feet|'|ft."),
)
_AREA = _units(
    ("m²", "m**2", "m2|sqm|sq m"),
    ("ft²", "ft**2", "ft2|sqft|sq ft"),
    ("cm²", "cm**2", "cm2|sq cm"),
    ("in²", "inch**2", "in2|sqin|sq in"),
)
_VOLUME = _units(
    ("mL", "mL", "ml|cc|cm3"),
    ("L", "L", "l|litre|liter|litres|liters|dm3"),
    ("m³", "m**3", "m3|cubic metre"),
    ("in³", "inch**3", "in3|cu in|cuin"),
    ("ft³", "ft**3", "ft3|cu ft|cuft"),
)
_DURATION = _units(
    ("s", "s", "sec|second|seconds|secs"),
    ("min", "min", "minute|minutes|mins"),
    ("h", "hour", "hr|hrs|hour|hours"),
    ("d", "day", "day|days"),
)
_RATE = _units(
    ("g/yr", "g/year", "g/y|g/a|g/year"),
    ("kg/yr", "kg/year", "kg/y|kg/a|kg/year"),
    ("oz/yr", "oz/year", "oz/y|oz/year"),
    ("lb/yr", "lb/year", "lb/y|lb/year"),
)
_PERCENT = _units(("%", "percent", "percent|per cent|pct"))
_CURRENT = _units(("A", "A", "amp|amps|ampere"), ("mA", "mA", "milliamp|milliamps"))


@dataclass(frozen=True, slots=True)
class KindRule:
    """What a kind accepts: its units, examples for a refusal, limits in the base unit."""

    units: dict[str, Unit]
    example: str
    base: str
    lowest: float
    highest: float
    compound: tuple[str, ...] = ()


# The limits are sanity fences, not physics: far outside anything a bench meets, near enough to
# catch a slipped decimal point or a pasted serial number.
RULES: dict[Kind, KindRule] = {
    Kind.MASS: KindRule(_MASS, "3.9 oz, 1 lb 2.5 oz or 110 g", "kg", 0, 100_000, ("lb", "oz")),
    Kind.SCALE: KindRule(_MASS, "4312.5 g or 9 lb 8.1 oz", "kg", -100_000, 100_000, ("lb", "oz")),
    Kind.PRESSURE: KindRule(
        _ABSOLUTE | _GAUGE | DIAL | _DIAL_VACUUM,
        "68 psig, 4.7 bar(g), -10 inHg, 500 micron or 66 Pa",
        "bar",
        -1.1,
        1_000,
    ),
    Kind.AIR_PRESSURE: KindRule(
        _ABSOLUTE | _units(("inHg", "inHg", '"Hg'), ("kPa", "kPa", "kPa"), ("psi", "psi", "psi")),
        "1013 hPa or 29.92 inHg",
        "bar",
        0.3,
        1.2,
    ),
    Kind.TEMPERATURE: KindRule(_TEMPERATURE, "-12.5 °C or 9 F", "kelvin", 0, 1_500),
    Kind.DIFFERENCE: KindRule(_DIFFERENCE, "5 K or 9 F", "kelvin", -1_000, 1_000),
    Kind.LENGTH: KindRule(_LENGTH, "36 in, 1/4 in or 1.5 m", "m", 0, 10_000, ("ft", "in")),
    Kind.AREA: KindRule(_AREA, "12 m² or 130 ft²", "m**2", 0, 1_000_000),
    Kind.VOLUME: KindRule(_VOLUME, "12.5 L or 0.4 ft³", "L", 0, 10_000_000),
    Kind.DURATION: KindRule(
        _DURATION, "20 min or 1 h 30 min", "day", 0, 36_600, ("d", "h", "min", "s")
    ),
    Kind.PERCENT: KindRule(_PERCENT, "35 %", "percent", 0, 1_000),
    Kind.MASS_RATE: KindRule(_RATE, "3 g/yr or 0.1 oz/yr", "kg/year", 0, 1_000_000),
    Kind.CURRENT: KindRule(_CURRENT, "4.2 A", "A", 0, 10_000),
    Kind.NUMBER: KindRule({"": Unit("", ureg.Unit(""))}, "3 or 2.5", "", -1e9, 1e9),
}


LABELS: dict[str, str] = {
    str(unit.pint): unit.label
    for table in (
        _MASS,
        _ABSOLUTE,
        _TEMPERATURE,
        _LENGTH,
        _AREA,
        _VOLUME,
        _DURATION,
        _RATE,
        _PERCENT,
    )
    for unit in table.values()
} | {
    "delta_degree_Fahrenheit": "°F",
    "kelvin": "K",
    "bar": "bar(a)",
    "pound_force_per_square_inch": "psia",
    "pascal / minute": "Pa/min",
    "micron_Hg / minute": "micron/min",
    "kilogram / meter ** 3": "kg/m³",
    "gram / meter ** 3": "g/m³",
    "pound / foot ** 3": "lb/ft³",
}
