"""The reference on paper: chart, saturation table, what is known of a refrigerant."""

from collections.abc import Sequence
from dataclasses import dataclass

from chargebench.reports.drawn import Drawn, Image
from chargebench.reports.letterhead import DEFERENCE, Letterhead, joined
from chargebench.reports.page import Fact, Page

_CHART_SHARE = 0.85  # of the width


@dataclass(frozen=True, slots=True)
class ReferenceTable:
    """What was looked up, in the words of the window."""

    title: str
    heads: tuple[str, ...]
    rows: Sequence[tuple[str, ...]]
    says: Sequence[str]
    known_title: str
    known: Sequence[Fact]
    chart: bytes  # JPEG
    chart_shape: float  # height by width


def draw_reference(letterhead: Letterhead, table: ReferenceTable) -> Drawn:
    """The looked-up table with its chart and sources."""
    kept_by = joined(letterhead.name, f"{letterhead.made_at:%Y-%m-%d}")
    page = Page(
        paper=letterhead.paper, head=joined(kept_by, table.title, by="   ·   "), foot=DEFERENCE
    )
    page.title_line(table.title)
    page.y += 2
    wide = page.across * _CHART_SHARE
    page.mark(Image(page.left, page.y, wide, wide * table.chart_shape, table.chart))
    page.y += wide * table.chart_shape + 2
    for sentence in table.says:
        page.paragraph(sentence)
    page.y += 1
    every = range(len(table.heads))
    page.table(table.heads, table.rows, tuple(1 for _ in every), right=every)
    page.heading(table.known_title, keep=24)
    page.facts(table.known)
    return page.finish(table.title, letterhead.made_at, letterhead.program)
