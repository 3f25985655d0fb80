"""The same readings side by side: today, as the maker gave them, of earlier visits and sisters.

What is marked: a difference (superheat, subcooling, condensing over ambient, air over evaporating)
that is off today's by more than the band of `calc.evidence` around an expected figure, widened by
its doubt where either was taken from surfaces. Pressures and single temperatures follow weather
and load; they are shown and not marked.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields

from chargebench.calc.readings import Bands, Differences
from chargebench.errors import ChargebenchError
from chargebench.steps import maker, running
from chargebench.steps.case import Case, Cell, Table, Worked
from chargebench.steps.forms import STEPS
from chargebench.units import Kind, Quantity, Reading

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
_RULE = (
    f"◆ off today's by more than {_BANDS.around_expected:g} K, or "
    f"{_BANDS.around_expected + _BANDS.surface_doubt:g} K where taken from surfaces: our own band. "
    "Pressures and single temperatures follow weather and load and are not marked."
)

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
        *_differences(today, others, maker.expected(case)),
        *_single(today, others),
        *_said_by_maker(makers, len(others)),
    ]
    heads = ("Reading", today.head, "maker", *(each.head for each in others))
    if not makers:
        heads = (*heads[:_MAKER], *heads[_MAKER + 1 :])
        rows = [(*row[:_MAKER], *row[_MAKER + 1 :]) for row in rows]
    return Table("beside", "Side by side", heads, tuple(rows), _RULE)


def _differences(
    today: Taken, others: Sequence[Taken], expected: Mapping[str, maker.MakersFigure]
) -> Iterator[Row]:
    for each in fields(Differences):
        mine = getattr(today.differences, each.name)
        theirs = [getattr(other.differences, each.name) for other in others]
        given = expected.get(each.name)
        if mine is None and given is None and not any(value is not None for value in theirs):
            continue
        makers = Cell("")
        if given is not None and given.middle is not None:
            cell = _against(given.middle, mine, surfaces=today.from_surfaces)
            makers = Cell(given.expected, cell.marked, cell.why)
        yield (
            Cell(running.LABELS[each.name]),
            Cell("" if mine is None else mine),
            makers,
            *(
                _against(value, mine, surfaces=today.from_surfaces or other.from_surfaces)
                for value, other in zip(theirs, others, strict=True)
            ),
        )


def _against(value: Quantity | None, today: Quantity | None, *, surfaces: bool) -> Cell:
    """A difference with how far today's is off it."""
    if value is None:
        return Cell("")
    if today is None:
        return Cell(value)
    off = today.m_as("delta_degC") - value.m_as("delta_degC")
    band = _BANDS.around_expected + (_BANDS.surface_doubt if surfaces else 0.0)
    said = (
        f"Today's is {abs(off):.1f} K {'higher' if off > 0 else 'lower'}; the band is {band:g} K."
    )
    return Cell(value, abs(off) > band, said)


def _single(today: Taken, others: Sequence[Taken]) -> Iterator[Row]:
    form = STEPS["as_found"]
    for key in _SHOWN:
        cells = [each.values.get(key, "") for each in (today, *others)]
        if any(cell != "" for cell in cells[1:]) or (cells[0] != "" and others):
            mine, *theirs = (Cell(cell) for cell in cells)
            yield (Cell(form.field(key).label), mine, Cell(""), *theirs)


def _said_by_maker(makers: Sequence[maker.MakersFigure], others: int) -> Iterator[Row]:
    """The maker's other figures, in the maker's words."""
    for each in makers:
        if not each.of:
            why = f"Given by {each.given_by}."
            yield (Cell(each.what), Cell(""), Cell(each.expected, why=why), *(Cell(""),) * others)
