"""Columns of a table as data, and what becomes of them where there is no room for all.

Some give way; where that is not enough the table folds: what stands first keeps its column, all
else stands in one cell under its heads. Nothing has to be scrolled sideways.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFontMetrics

from chargebench.ui.language import tr

Row = TypeVar("Row")
OWN_SHARE = 0.45  # of the room that columns of their own take at most in a folded table
LINES_MOST = 8
SENTENCE = 40  # characters; longer words need no head before them
_WRAP = Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignLeft


@dataclass(frozen=True, slots=True)
class Column(Generic[Row]):
    """One column: its head, what it says of a row; as wide as its words, or as the room allows."""

    head: str
    text: Callable[[Row], str]
    right: bool = False  # figures stand at the right
    shape: Callable[[Row], str] | None = None  # a state's shape before its word
    least: float = 0.0  # lines of text; given, it shrinks so far and takes what room is left
    drawn: float = 0.0  # lines of text that a picture beside the words takes
    gives_way: int = 0  # the highest goes first where there is no room for all

    def title(self) -> str:
        """Its head as the window shows it."""
        return tr(self.head)

    def says(self, row: Row) -> str:
        """What it says of a row as the window shows it."""
        return tr(self.text(row))


def that_fit(columns: Sequence[Column[Any]], least: Sequence[int], room: int) -> list[int] | None:
    """Places of the columns shown: some give way for the others; None where that is not enough."""
    shown = list(range(len(columns)))
    for place in sorted(range(len(columns)), key=lambda place: -columns[place].gives_way):
        if sum(least[each] for each in shown) <= room:
            return shown
        if columns[place].gives_way:
            shown.remove(place)
    return None


def fold(columns: Sequence[Column[Row]], widths: Sequence[int], room: int) -> list[Column[Row]]:
    """The first columns as they are, the others in one that names each of them."""
    kept = max((place + 1 for place, each in enumerate(columns) if each.drawn), default=1)
    while kept < len(columns) - 1 and sum(widths[: kept + 1]) <= room * OWN_SHARE:
        kept += 1
    return [*columns[:kept], _together(columns[kept:])]


def _together(columns: Sequence[Column[Row]]) -> Column[Row]:
    def text(row: Row) -> str:
        said = ((each.title().replace("\n", " "), each.says(row)) for each in columns)
        named = (
            words if len(words) > SENTENCE else f"{head} {words}".strip()
            for head, words in said
            if words
        )
        return " · ".join(named)

    def shape(row: Row) -> str:
        return next((name for each in columns if each.shape and (name := each.shape(row))), "")

    return Column("", text, shape=shape, least=1)


def lines_of(texts: Sequence[str], width: int, words: QFontMetrics) -> int:
    """Lines that the longest of these texts takes in a cell."""
    page = QRect(0, 0, max(width, 1), 9_999)
    highest = max((words.boundingRect(page, _WRAP, each).height() for each in texts), default=0)
    return max(1, min(LINES_MOST, -(-highest // words.lineSpacing())))
