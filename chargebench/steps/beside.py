"""The same readings side by side: today, as the maker gave them, of earlier visits and sisters.

What is marked: a difference (superheat, subcooling, condensing over ambient, air over evaporating)
that is off today's by more than the band of `calc.evidence` around an expected figure, widened by
its doubt where either was taken from surfaces; or, of a maker's figure, by more than the maker's
own tolerance. Other pressures and single temperatures follow weather and load; they are shown and
not marked.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields

from chargebench.calc.readings import Bands, Differences
from chargebench.errors import ChargebenchError
from chargebench.steps import maker, running
from chargebench.steps.case import Case, Cell, Table, Worked
from chargebench.steps.forms import STEPS
from chargebench.steps.maker import MakersFigure
from chargebench.units import Kind, Q, Quantity, Reading, System, brief
from chargebench.words import say

_BANDS = Bands()
_MAKER = 2  # place of the maker's column
_SHOWN = (
    "suction_pressure",
    "discharge_pressure",
    "box",
    "ambient",
    "suction_line",
    "liquid_line",
    "discharge_line",
    "condenser_surface",
    "evaporator_inlet",
    "evaporator_outlet",
    "current",
    "frost",
    "running",
)
_SURFACE_DOUBT = Q(_BANDS.surface_doubt, "kelvin")
_SURE = Q(_BANDS.around_expected, "kelvin")
_SURFACES = _SURE + _SURFACE_DOUBT
_DIFFERENCES = frozenset(each.name for each in fields(Differences))
_UNITS = ("kelvin", "Pa", "A")
_EVEN = 1e-9  # room for the last digits: on the band is not beyond it

Row = tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Taken:
    """The readings of one visit: what they are called, what they came to."""

    head: str
    differences: Differences
    from_surfaces: bool
    values: Mapping[str, Quantity | str]


def taken(case: Case, step: str, head: str, worked: Worked | None = None) -> Taken | None:
    """The readings of a step of a job, worked out already or now; None where there are none."""
    values = dict(_values(case, step))
    if not values:
        return None
    result = (worked or running.work_out(case, step)).result
    if not isinstance(result, running.Ran):
        return Taken(head, running.NOTHING, from_surfaces=False, values=values)
    return Taken(head, result.differences, result.from_surfaces, values)


def _values(case: Case, step: str) -> Iterator[tuple[str, Quantity | str]]:
    for key in _SHOWN:
        value = case.step(step).values.get(key)
        if isinstance(value, Reading):
            if value.kind is not Kind.PRESSURE:
                yield key, value.quantity
                continue
            try:
                yield key, case.absolute(step, key) or value.quantity
            except ChargebenchError:
                continue
        elif value:
            yield key, str(value)


def table(
    case: Case, step: str, others: Sequence[Taken], worked: Worked | None = None
) -> Table | None:
    """Today's readings with all there is to hold beside them; None where there is nothing."""
    today = taken(case, step, "today", worked)
    if step == "as_left" and (found := taken(case, "as_found", "as found today")):
        others = (found, *others)
    makers = tuple(maker.figures(case))
    if today is None or not (others or makers):
        return None
    rows: list[Row] = [
        *_differences(case, step, today, others),
        *_single(case, step, today, others),
        *_said_by_maker(case, len(others)),
    ]
    heads = ("Reading", today.head, "maker", *(each.head for each in others))
    if not makers:
        heads = (*heads[:_MAKER], *heads[_MAKER + 1 :])
        rows = [(*row[:_MAKER], *row[_MAKER + 1 :]) for row in rows]
    return Table("beside", "Side by side", heads, tuple(rows), _rule(case.units))


def _rule(units: System) -> str:
    return say(
        "◆ off today's by more than {sure}, or {surfaces} where taken from "
        "surfaces: our own band; off the maker's by more than the maker's own "
        "tolerance where there is one. Other pressures and single temperatures "
        "follow weather and load and are not marked.",
        sure=brief(_SURE, units),
        surfaces=brief(_SURFACES, units),
    )


def _differences(case: Case, step: str, today: Taken, others: Sequence[Taken]) -> Iterator[Row]:
    expected = maker.expected(case)
    for each in fields(Differences):
        mine = getattr(today.differences, each.name)
        theirs = [getattr(other.differences, each.name) for other in others]
        given = expected.get(each.name)
        if mine is None and given is None and not any(value is not None for value in theirs):
            continue
        makers = Cell("")
        if given is not None:
            makers = _makers(case, step, given, mine, surfaces=today.from_surfaces)
        yield (
            Cell(running.LABELS[each.name]),
            Cell("" if mine is None else mine),
            makers,
            *(
                _beside(case, value, mine, surfaces=today.from_surfaces or other.from_surfaces)
                for value, other in zip(theirs, others, strict=True)
            ),
        )


def _beside(case: Case, value: Quantity | None, today: Quantity | None, *, surfaces: bool) -> Cell:
    """A difference of another visit or unit, with how far today's is off it."""
    if value is None or today is None:
        return Cell("" if value is None else value)
    marked, said = _off(case, today, value, _SURFACES if surfaces else _SURE)
    return Cell(value, marked, said)


def _makers(
    case: Case, step: str, given: MakersFigure, today: Quantity | None, *, surfaces: bool
) -> Cell:
    """A figure of the maker in the maker's words, with how far today's is off it."""
    source = say("Given by {given_by}.", given_by=given.given_by)
    held = given.held(case, step)
    if today is None or held is None:
        return Cell(given.expected, why=source)
    middle, around = held
    difference = given.of in _DIFFERENCES
    if around is None and difference:
        around = _SURE
    if around is not None and difference and surfaces:
        around = around + _SURFACE_DOUBT
    marked, said = _off(case, today, middle, around)
    return Cell(given.expected, marked, say("{said} {source}", said=said, source=source))


def _off(case: Case, today: Quantity, other: Quantity, band: Quantity | None) -> tuple[bool, str]:
    """Whether today's is off another beyond a band, and by how much, in words."""
    unit = next(unit for unit in _UNITS if today.check(Q(1, unit).dimensionality))
    off = today.m_as(unit) - other.m_as(unit)
    size = case.shown(_as_difference(abs(off), unit))
    how = say("{size} {side}", size=size, side="higher" if off > 0 else "lower")
    if abs(off) <= _EVEN * max(1.0, abs(today.m_as(unit))):
        how = "the same"
    if band is None:
        return False, say("Today's is {how}; the maker gave no tolerance.", how=how)
    allowed = band.m_as(unit)
    within = brief(_as_difference(allowed, unit), case.units)
    beyond = abs(off) > allowed + _EVEN * max(1.0, abs(allowed))
    return beyond, say("Today's is {how}; the band is {within}.", how=how, within=within)


def _as_difference(size: float, unit: str) -> Quantity:
    """A size as a difference: of pressures in kPa, by which it is told from a pressure."""
    return Q(size, unit).to("kPa") if unit == "Pa" else Q(size, unit)


def _single(case: Case, step: str, today: Taken, others: Sequence[Taken]) -> Iterator[Row]:
    form, expected = STEPS["as_found"], maker.expected(case)
    for key in _SHOWN:
        cells = [each.values.get(key, "") for each in (today, *others)]
        given = expected.get(key)
        beside = any(cell != "" for cell in cells[1:]) or (cells[0] != "" and bool(others))
        if given is None and not beside:
            continue
        mine, *theirs = (Cell(cell) for cell in cells)
        makers = Cell("")
        if given is not None:
            value = None if isinstance(mine.value, str) else mine.value
            makers = _makers(case, step, given, value, surfaces=False)
        yield (Cell(form.field(key).label), mine, makers, *theirs)


def _said_by_maker(case: Case, others: int) -> Iterator[Row]:
    """The maker's other figures, in the maker's words."""
    held = list(maker.expected(case).values())
    for each in maker.figures(case):
        if each not in held:
            why = say("Given by {given_by}.", given_by=each.given_by)
            yield (Cell(each.what), Cell(""), Cell(each.expected, why=why), *(Cell(""),) * others)
