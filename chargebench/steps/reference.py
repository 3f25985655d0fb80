"""Saturation of a refrigerant as a table and a chart: range, step and units as asked."""

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from chargebench.errors import OutsideDomain, ReadingRefused
from chargebench.fluids import Saturation, saturation
from chargebench.steps.form import Answers
from chargebench.steps.forms.reference import BY_PRESSURE, DENSITIES
from chargebench.units import (
    RULES,
    STANDARD_ATMOSPHERE,
    Kind,
    Q,
    Quantity,
    absolute,
    air_pressure_at,
    show,
)
from chargebench.words import say

ROWS_MOST = 400
CHART_POINTS = 90
_ONE = 1e-6  # bubble and dew closer than this are one


@dataclass(frozen=True, slots=True)
class Scale:
    """A unit a column is in, as a line through kelvin or pascal; a gauge's zero is the air's.

    Hundreds of rows are worked out while one types, so plain numbers are converted here.
    """

    label: str
    unit: str
    slope: float  # kelvin or pascal in one unit
    zero: float  # kelvin or pascal at zero
    gauge: bool = False

    def of(self, base: float) -> float:
        """Kelvin or pascal as a number in this unit."""
        return (base - self.zero) / self.slope

    def base(self, number: float) -> float:
        """A number in this unit as kelvin or pascal."""
        return number * self.slope + self.zero

    @property
    def air(self) -> float:
        """What a gauge leaves out, in this unit."""
        return self.zero / self.slope if self.gauge else 0.0


@dataclass(frozen=True, slots=True)
class Point:
    """One row: temperature at bubble and at dew, pressures and densities, as numbers."""

    bubble_temperature: float
    dew_temperature: float
    bubble_pressure: float
    dew_pressure: float
    liquid_density: float
    vapour_density: float


@dataclass(frozen=True, slots=True)
class Tabled:
    """A table and a chart of one refrigerant's saturation."""

    refrigerant: str
    by: str
    glides: bool  # bubble and dew differ
    heads: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    points: tuple[Point, ...]
    chart: tuple[tuple[float, float, float], ...]  # temperature, bubble and dew pressure
    temperature: Scale
    pressure: Scale
    says: tuple[str, ...]


def air_at(answers: Answers, site: Answers) -> Quantity:
    """Air pressure as typed, else by the site's height, else the standard atmosphere."""
    typed = answers.reading("air_pressure")
    if typed is not None:
        return absolute(typed, STANDARD_ATMOSPHERE)
    height = site.quantity("elevation")
    return STANDARD_ATMOSPHERE if height is None else air_pressure_at(height)


def tabled(answers: Answers, by: str, site: Answers) -> Tabled:
    """The table asked for.

    Raises
    ------
    ReadingRefused
        A range or step that can not be understood or gives too many rows.
    """
    name = answers.text("refrigerant")
    curve = saturation(name)
    air = air_at(answers, site)
    temperature = _scale(Kind.TEMPERATURE, answers.text("temperature"), air)
    pressure = _scale(Kind.PRESSURE, answers.text("pressure"), air)
    asked = _asked(answers, by, air, temperature, pressure)
    density = answers.text("density")
    points = tuple(_points(curve, by, asked, (temperature, pressure, DENSITIES[density])))
    chart = tuple(_chart(curve, points, temperature, pressure))
    left_out = len(asked) - len(points)
    return Tabled(
        refrigerant=name,
        by=by,
        glides=any(abs(bubble - dew) > _ONE * (dew + pressure.air) for _, bubble, dew in chart),
        heads=_heads(by, temperature.label, pressure.label, density),
        rows=tuple(_row(by, each, pressure) for each in points),
        points=points,
        chart=chart,
        temperature=temperature,
        pressure=pressure,
        says=_says(curve, left_out, temperature, pressure),
    )


def _scale(kind: Kind, label: str, air: Quantity) -> Scale:
    unit = next(each for each in RULES[kind].units.values() if each.label == label)
    base = "Pa" if kind is Kind.PRESSURE else "kelvin"
    zero, one = (float(Q(number, unit.pint).m_as(base)) for number in (0.0, 1.0))
    above = float(air.m_as("Pa")) if unit.gauge else 0.0
    return Scale(label, str(unit.pint), one - zero, zero + above, unit.gauge)


def _asked(
    answers: Answers, by: str, air: Quantity, temperature: Scale, pressure: Scale
) -> list[float]:
    """The temperatures or pressures the rows are asked for at, in kelvin or pascal."""
    kind, scale = (
        (Kind.PRESSURE, pressure) if by == BY_PRESSURE else (Kind.TEMPERATURE, temperature)
    )
    low, high = (_limit(answers, key, kind, air) for key in ("low", "high"))
    step = _step(answers, kind, scale)
    base = "Pa" if by == BY_PRESSURE else "kelvin"
    first, last = scale.of(low.m_as(base)), scale.of(high.m_as(base))
    if not (step > 0 and last >= first):
        raise ReadingRefused("Expected a step above zero, and a range from low to high.")
    count = math.floor((last - first) / step + 1e-9) + 1
    if count > ROWS_MOST:
        raise ReadingRefused(
            say(
                "Expected a step that gives at most {rows_most} rows; got {count}.",
                rows_most=ROWS_MOST,
                count=count,
            )
        )
    return [scale.base(first + step * place) for place in range(count)]


def _limit(answers: Answers, key: str, kind: Kind, air: Quantity) -> Quantity:
    typed = answers.reading(key)
    assert typed is not None, key
    return absolute(typed, air) if kind is Kind.PRESSURE else typed.quantity


def _step(answers: Answers, kind: Kind, scale: Scale) -> float:
    typed = answers.quantity("step")
    assert typed is not None
    if kind is Kind.PRESSURE:
        return float(typed.m_as(scale.unit))
    kelvin = float(typed.m_as("kelvin"))
    return kelvin * 9 / 5 if scale.label == "°F" else kelvin


def _points(
    curve: Saturation, by: str, asked: Sequence[float], units: tuple[Scale, Scale, str]
) -> Iterator[Point]:
    """The rows inside the curves' domain; what lies outside is left out."""
    temperature, pressure, unit = units
    density = float(Q(1, "kg/m**3").m_as(unit))
    for each in asked:
        try:
            bubble, dew = (
                (curve.bubble_kelvin(each), curve.dew_kelvin(each))
                if by == BY_PRESSURE
                else (each, each)
            )
            yield Point(
                temperature.of(bubble),
                temperature.of(dew),
                pressure.of(curve.bubble_pa(bubble)),
                pressure.of(curve.dew_pa(dew)),
                curve.liquid_kgm3(bubble) * density,
                curve.vapour_kgm3(dew) * density,
            )
        except OutsideDomain:
            continue


def _chart(
    curve: Saturation, points: Sequence[Point], temperature: Scale, pressure: Scale
) -> Iterator[tuple[float, float, float]]:
    """Bubble and dew pressure over the temperatures of the table."""
    if not points:
        return
    first = min(points[0].bubble_temperature, points[0].dew_temperature)
    last = max(points[-1].bubble_temperature, points[-1].dew_temperature)
    for place in range(CHART_POINTS + 1):
        at = first + (last - first) * place / CHART_POINTS
        kelvin = temperature.base(at)
        try:
            bubble, dew = curve.bubble_pa(kelvin), curve.dew_pa(kelvin)
        except OutsideDomain:
            continue
        yield at, pressure.of(bubble), pressure.of(dew)


def _heads(by: str, temperature: str, pressure: str, density: str) -> tuple[str, ...]:
    first = (
        (
            say("Pressure [{pressure}]", pressure=pressure),
            say("Bubble [{temperature}]", temperature=temperature),
            say("Dew [{temperature}]", temperature=temperature),
        )
        if by == BY_PRESSURE
        else (
            say("Temperature [{temperature}]", temperature=temperature),
            say("Bubble [{pressure}]", pressure=pressure),
            say("Dew [{pressure}]", pressure=pressure),
        )
    )
    return (
        *first,
        say("Liquid [{density}]", density=density),
        say("Vapour [{density}]", density=density),
    )


def _row(by: str, point: Point, pressure: Scale) -> tuple[str, ...]:
    bubble, dew = (
        _number(each, _places(each + pressure.air))
        for each in (point.bubble_pressure, point.dew_pressure)
    )
    first = (
        (bubble, _number(point.bubble_temperature, 2), _number(point.dew_temperature, 2))
        if by == BY_PRESSURE
        else (_number(point.bubble_temperature, _fine(point.bubble_temperature)), bubble, dew)
    )
    densities = (point.liquid_density, point.vapour_density)
    return (*first, *(_number(each, _places(each)) for each in densities))


def _fine(temperature: float) -> int:
    """Places that tell rows of a fine step apart."""
    return 1 if abs(temperature * 10 - round(temperature * 10)) < 1e-6 else 2


def _places(size: float) -> int:
    """Decimal places that leave four digits that count; a gauge's by its absolute pressure."""
    return max(0, 3 - math.floor(math.log10(size))) if size > 0 else 3


def _number(value: float, places: int) -> str:
    text = f"{value:.{places}f}"
    return (text[1:] if float(text) == 0 and text.startswith("-") else text).replace("-", "\u2212")


def _says(curve: Saturation, left_out: int, temperature: Scale, pressure: Scale) -> tuple[str, ...]:
    says: list[str] = []
    if pressure.gauge:
        says.append(
            say(
                "Gauge pressures where the air has {zero}.",
                zero=show(Q(pressure.zero, "Pa"), "hPa", 1),
            )
        )
    if left_out:
        low, high = (show(each, temperature.unit, 1) for each in curve.domain)
        says.append(
            say(
                "The curves hold from {low} to {high}; {left_out} rows outside are left out.",
                low=low,
                high=high,
                left_out=left_out,
            )
        )
    return tuple(says)
