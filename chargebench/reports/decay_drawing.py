"""The decay test drawn: readings, fitted shape, pass rules, water line; pressures on a log axis."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from math import ceil, floor, log10

from chargebench.calc.evacuation import RuleWord
from chargebench.reports.drawn import Mark, Ring, Stroke, Words
from chargebench.reports.letters import lines, step, width
from chargebench.reports.page import GREY, RULE
from chargebench.steps.evacuation import Evacuated
from chargebench.units import Q, System

_SIZE = 6.5  # points
_LEFT, _ABOVE, _BELOW = 13.0, 3.0, 7.0  # mm, for the axes' figures
_NAMES = 58.0  # mm beside the plot, for the names of the lines across it
_POINTS = 81
_NAMED = (1, 2, 5)


@dataclass(frozen=True, slots=True)
class _Axes:
    """Where a minute and a pressure lie."""

    x: float
    y: float
    width: float
    height: float
    minutes: float
    low: float  # logarithms of the axis's ends
    high: float
    unit: float  # of the axis, in pascals

    def across(self, minutes: float) -> float:
        return self.x + self.width * minutes / self.minutes

    def up(self, pascals: float) -> float:
        share = (log10(max(pascals / self.unit, 1e-3)) - self.low) / (self.high - self.low)
        return self.y + self.height * (1 - min(max(share, 0.0), 1.0))


def decay_marks(
    result: Evacuated, system: System, x: float, y: float, wide: float, high: float
) -> Iterator[Mark]:
    """The drawing in a rectangle of the page [mm]."""
    unit = 1.0 if system == "SI" else float(Q(1, "micron_Hg").m_as("Pa"))
    levels = list(_levels(result))
    every = [*result.pascals, *(pascals for _, pascals in levels)]
    low, top = log10(max(min(every) / unit, 1e-3)), log10(max(max(every) / unit, 1e-3))
    room = max(0.12 * (top - low), 0.12)
    axes = _Axes(
        x + _LEFT,
        y + _ABOVE,
        wide - _LEFT - _NAMES,
        high - _ABOVE - _BELOW,
        max(20.0, max(result.minutes) * 1.03),
        low - room,
        top + room,
        unit,
    )
    yield from _frame(axes, "Pa" if system == "SI" else "micron")
    yield from _named_levels(axes, levels)
    yield from _fitted(axes, result)
    for minutes, pascals in zip(result.minutes, result.pascals, strict=True):
        yield Ring(axes.across(minutes), axes.up(pascals), 0.7)


def _levels(result: Evacuated) -> Iterator[tuple[str, float]]:
    """Pass rules that were tried, and the pressure at which water boils at the coldest part."""
    for one in result.rules:
        if one.word is RuleWord.NOT_DEEP:
            continue
        rule = one.rule
        if rule.allowed_rise is not None:
            yield f"{rule.name}: {one.word}", (one.start + rule.allowed_rise).m_as("Pa")
        if rule.end_at_most is not None:
            yield f"{rule.name}: {one.word}", rule.end_at_most.m_as("Pa")
    if result.water is not None:
        yield "water boils at the coldest part", result.water.m_as("Pa")


def _frame(axes: _Axes, unit: str) -> Iterator[Mark]:
    bottom = axes.y + axes.height
    corners = ((axes.x, axes.y), (axes.x, bottom), (axes.x + axes.width, bottom))
    decades = range(floor(axes.low), ceil(axes.high) + 1)
    named = (1,) if len(decades) > 6 else _NAMED
    for size in (n * 10.0**d for d in decades for n in named):
        if axes.low <= log10(size) <= axes.high:
            at = axes.up(size * axes.unit)
            yield Stroke(((axes.x, at), (axes.x + axes.width, at)), 0.1, RULE)
            yield _right(f"{size:,.6g}".replace(",", "\u202f"), axes.x - 1, at + 0.8)
    apart = next((n for n in (1, 2, 5, 10, 20, 50, 100, 200, 500) if axes.minutes / n <= 11), 1000)
    for minutes in range(0, int(axes.minutes) + 1, apart):
        at = axes.across(minutes)
        yield Stroke(((at, bottom), (at, bottom + 0.8)), 0.15)
        says = str(minutes)
        yield Words(at - width(says, _SIZE) / 2, bottom + 3.4, says, _SIZE, grey=GREY)
    yield Stroke(corners, 0.2)
    yield Words(axes.x + 0.6, axes.y - 0.6, unit, _SIZE, grey=GREY)
    yield _right("min", axes.x + axes.width, bottom + 6.2)


def _named_levels(axes: _Axes, levels: list[tuple[str, float]]) -> Iterator[Mark]:
    """Dashed lines, named beside the plot; where lines are close, their names stand apart."""
    end = axes.x + axes.width
    free = axes.y - 2
    for name, pascals in sorted(levels, key=lambda level: -level[1]):
        at = axes.up(pascals)
        yield Stroke(((axes.x, at), (end, at)), 0.2, GREY, 1.2)
        says = lines(name, _NAMES - 6, _SIZE)
        first = max(at + 0.8, free)
        yield Stroke(((end, at), (end + 3, first - 0.8)), 0.1, GREY)
        for place, line in enumerate(says):
            yield Words(end + 4, first + place * step(_SIZE), line, _SIZE, grey=GREY)
        free = first + len(says) * step(_SIZE) + 0.4


def _fitted(axes: _Axes, result: Evacuated) -> Iterator[Mark]:
    """The fitted shape, drawn through; its limits, thin."""
    verdict = result.verdict
    if verdict is None or verdict.fit is None:
        return
    first, last = result.minutes[0], result.minutes[-1]
    times = [first + (last - first) * n / (_POINTS - 1) for n in range(_POINTS)]
    low, high = verdict.fit.band(times)
    line: Callable[..., Stroke] = lambda sizes, width, grey: Stroke(  # noqa: E731
        tuple((axes.across(t), axes.up(float(p))) for t, p in zip(times, sizes, strict=True)),
        width,
        grey,
    )
    yield line(low, 0.12, 150)
    yield line(high, 0.12, 150)
    yield line(verdict.fit.at(times), 0.35, 0)


def _right(text: str, x: float, y: float) -> Words:
    return Words(x - width(text, _SIZE), y, text, _SIZE, grey=GREY)
