"""Whatever a person, a scanner or a cat can type in a form, as hypothesis strategies."""

from hypothesis import strategies as st

from chargebench.steps import Asks, Field, Form
from chargebench.units import RULES

ROWS = ("C-014", "C-015", "C-016", "C-099", "S-1", "S-5", "D-1", "R-1")
REFRIGERANTS = ("R290", "R404A", "R744", "R717", "R11", "R438A", "R600a")
JUNK = st.sampled_from(
    (
        "", " ", "nan", "inf", "-inf", "NaN g", "1e5 g", "1e999 kg", "0", "-0 g", "0 g", "--5 g",
        "1,2,3 g", "1.234,5 g", "9" * 59, "9" * 400 + " g", "½ lb", "٣ g", "３ g", "², ³ m",
        "1/0 in", "1/4", "0/2 in", "\x00", "\ud7ff", "🙂", "g", ".", ",", "-", "+", "/", "()",
        "1 lb 99 oz",
        "1 g 1 g", "0.0000000001 g", "0,1,", "1\u202f000 g", "1 00 g", "999999999999 micron",
        "0 K", "-459.67 F", "1e-300", "²", "5²", "①", "1²3 g", "५ kg", "0000-00-00", "2026-02-30",
        "20260302", "2026-W10-1", "2026-03-02T25:00", "9999-12-31", "0001-01-01",
        "0001-01-01T00:00",
        "9999-12-31T23:59:59", "R-290", "r290", "R717", "R744", "R1234ze(E)", "yes", "no", "YES",
    )
)  # fmt: skip
NUMBERS = st.one_of(
    st.integers(-5, 3000).map(str),
    st.floats(-50, 5000, allow_nan=False).map(lambda x: f"{x:.3f}"),
    st.sampled_from(("0", "0.0", "0,000001", "1000000", "4312.5", "1/4", "−3", "1 000")),
)


def text_of(field: Field) -> st.SearchStrategy[str]:
    """Text for one field: what it asks for, near misses, and anything else."""
    sound: list[st.SearchStrategy[str]] = [JUNK, st.text(max_size=70)]
    if field.kind is not None:
        units = st.sampled_from(sorted(RULES[field.kind].units))
        sound += [st.builds(lambda n, u: f"{n} {u}", NUMBERS, units)] * 4
    if field.example:
        sound += [st.just(field.example)] * 2
    if field.choices:
        sound += [st.sampled_from(field.choices)] * 4
    match field.asks:
        case Asks.YES_NO:
            sound += [st.sampled_from(("yes", "no"))] * 3
        case Asks.ROW:
            sound += [st.sampled_from(ROWS)] * 4
        case Asks.REFRIGERANT:
            sound += [st.sampled_from(REFRIGERANTS)] * 4
        case Asks.DATE:
            sound += [st.dates().map(lambda day: day.isoformat())] * 3
        case Asks.WHEN:
            sound += [st.datetimes().map(lambda when: when.isoformat(" "))] * 3
    return st.one_of(*sound)


Value = str | list[dict[str, str]]


def value_of(field: Field) -> st.SearchStrategy[Value]:
    """What may stand in one field, also lines where text is asked and text where lines are."""
    if field.asks is Asks.LINES:
        line = st.fixed_dictionaries({}, optional={f.key: text_of(f) for f in field.fields})
        return st.one_of(st.lists(line, max_size=4), st.lists(line, max_size=4), JUNK)
    if field.asks is Asks.TICKS:
        said = st.one_of(JUNK, st.text(max_size=20))
        tick = st.fixed_dictionaries({}, optional=dict.fromkeys(("line", "at", "by"), said))
        return st.one_of(st.lists(tick, max_size=4), JUNK)
    return st.one_of(text_of(field), text_of(field), st.just([{"line": "a"}]))


def typed(form: Form) -> st.SearchStrategy[dict[str, Value]]:
    """A whole form as it may stand at any keystroke."""
    return st.fixed_dictionaries({}, optional={f.key: value_of(f) for f in form.fields})
