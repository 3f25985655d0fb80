"""The usage log on paper: every mass line of a period as it stands on the screen, then totals."""

from collections.abc import Sequence
from dataclasses import dataclass

from chargebench.reports.drawn import Drawn
from chargebench.reports.letterhead import DEFERENCE, Letterhead, joined
from chargebench.reports.page import Page

_SHARES = {
    "When": 12,
    "From": 13,
    "To": 13,
    "As typed": 13,
    "What": 10,
    "Refrigerant": 11,
    "By": 10,
    "Entry": 6,
}
_SHARE = 8  # of the other columns
Rows = Sequence[tuple[str, ...]]


@dataclass(frozen=True, slots=True)
class UsageTable:
    """A period's mass lines and totals in words, with which columns stand to the right."""

    heads: tuple[str, ...]
    rows: Rows
    right: tuple[int, ...]
    total_heads: tuple[str, ...]
    totals: Rows
    narrowed: str = ""  # to what, in words
    left_out: int = 0  # lines that are not printed


def draw_usage_log(letterhead: Letterhead, usage: UsageTable) -> Drawn:
    """The log; what it is narrowed to stands under its title."""
    page = Page(
        paper=letterhead.paper,
        head=f"{letterhead.name}   ·   Usage log   ·   {letterhead.period}",
        foot=f"{DEFERENCE} Made {letterhead.made_at:%Y-%m-%d}.",
    )
    page.title_line("Usage log")
    page.paragraph(joined(letterhead.period, usage.narrowed, by="; "))
    page.y += 1.5
    if usage.totals:
        page.heading("Totals", keep=24)
        shares = (3, *(2 for _ in usage.total_heads[1:]))
        right = range(1, len(usage.total_heads))
        page.table(usage.total_heads, usage.totals, shares, right=right, size=page.small + 0.5)
    page.heading("Every mass line, newest first", keep=24)
    if usage.left_out:
        page.paragraph(
            f"The newest {len(usage.rows)} lines; {usage.left_out} older ones are not printed. "
            "Choose a shorter period, or export: the workbook has every line."
        )
        page.y += 1
    if usage.rows:
        shares = tuple(_SHARES.get(head, _SHARE) for head in usage.heads)
        page.table(usage.heads, usage.rows, shares, right=usage.right, size=page.small - 0.5)
    else:
        page.paragraph("No mass moved in this period.")
    title = f"Usage log, {letterhead.name}, {letterhead.period}"
    return page.finish(title, letterhead.made_at, letterhead.program)
