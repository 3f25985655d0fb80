"""A small table of the side panel: words wrap, what matters is marked, reasons stand below."""

from dataclasses import dataclass, replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from chargebench.steps import Cell, Table
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.wording import fine_of, value_of
from chargebench.units import System
from chargebench.words import joined, say

MARK = "◆\u00a0"
_LEAST, _MOST = 8, 14  # characters; columns share the width by their longest words
_REASONS_BELOW = ("searches",)  # tables whose reasons are read without being asked for


@dataclass(frozen=True, slots=True)
class _Written:
    """What one label says and how."""

    text: str
    weight: str = ""
    right: bool = False
    across: int = 1
    tip: str = ""
    spoken: str = ""


Spot = tuple[int, int]  # line, column


class SideTable(QWidget):
    """Heads, rows, and what the table says; only what changed is written anew."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self._labels: dict[Spot, QLabel] = {}
        self._written: dict[Spot, _Written] = {}
        self._cells: dict[tuple[Spot, System], tuple[Cell, _Written]] = {}
        self.title = wrapped(weight="head")
        self.says = wrapped(weight="faint")
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(theme.em() // 2)
        self._grid.setVerticalSpacing(theme.em() // 5)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, theme.em() // 3, 0, theme.em() // 3)
        column.setSpacing(theme.em() // 4)
        column.addWidget(self.title)
        column.addLayout(self._grid)
        column.addWidget(self.says)

    def show_table(self, table: Table, system: System) -> None:
        """Write a table."""
        if self._table is None or (table.title, table.says) != (
            self._table.title,
            self._table.says,
        ):
            self.title.setText(tr(table.title))
            self.setAccessibleName(tr(table.title))
            self.says.setText(tr(table.says))
            self.says.setVisible(bool(table.says))
        self._table = table
        wanted = self._plan(table, system)
        for spot, one in wanted.items():
            if self._written.get(spot) != one:
                self._write(spot, one)
        for spot in self._written.keys() - wanted.keys():
            self._labels[spot].hide()
        if wanted != self._written:
            self._share_width(wanted, len(table.heads))
        self._written = wanted

    def _plan(self, table: Table, system: System) -> dict[Spot, _Written]:
        """Every label of a table."""
        below = table.key in _REASONS_BELOW
        rights = [_holds_figures(table, place) for place in range(len(table.heads))]
        wanted = {
            (0, place): _Written(head, "faint", rights[place])
            for place, head in enumerate(table.heads)
        }
        for number, row in enumerate(table.rows):
            line = 1 + number * (2 if below else 1)
            for place, cell in enumerate(row):
                spot, head = (line, place), table.heads[place]
                wanted[spot] = self._of_cell(spot, cell, system, head, right=rights[place])
            if below and (why := joined(" ", (cell.why for cell in row if cell.why))):
                wanted[line + 1, 0] = _Written(why, "faint", across=len(table.heads))
        return wanted

    def _of_cell(
        self, spot: Spot, cell: Cell, system: System, head: str, *, right: bool
    ) -> _Written:
        """A cell in words; writing a quantity takes long, so it is done once for each."""
        known = self._cells.get((spot, system))
        if known is not None and known[0] == cell:
            return replace(known[1], right=right)
        text = _text(cell, system)
        first = spot[1] == 0
        weight = "check" if cell.marked else ("faint" if first else "")
        spoken = (
            text
            if first or not text
            else say("{head}: {text}. {why}", head=head, text=text, why=cell.why)
        )
        made = _Written(text, weight, right, 1, cell.why, spoken)
        self._cells[spot, system] = (cell, made)
        return made

    def _write(self, spot: Spot, one: _Written) -> None:
        label = self._labels.get(spot)
        before = self._written.get(spot)
        if label is None:
            label = self._labels[spot] = wrapped(weight=one.weight)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        if before is None or before.across != one.across:
            self._grid.addWidget(label, *spot, 1, one.across)
        label.setText(tr(one.text))
        label.setToolTip(tr(one.tip))
        label.setAccessibleName(tr(one.spoken))
        top = Qt.AlignmentFlag.AlignTop
        label.setAlignment(top | (Qt.AlignmentFlag.AlignRight if one.right else top))
        if label.property("weight") != one.weight:
            label.setProperty("weight", one.weight)
            label.style().unpolish(label)
            label.style().polish(label)
        label.show()

    def _share_width(self, wanted: dict[Spot, _Written], columns: int) -> None:
        longest = [_LEAST] * columns
        for (line, place), one in wanted.items():
            if line and one.across == 1:
                longest[place] = max(longest[place], len(one.text))
        for place, length in enumerate(longest):
            self._grid.setColumnStretch(place, min(length, _MOST))

    def texts(self) -> list[list[str]]:
        """What the shown labels say, line by line."""
        lines: dict[int, list[str]] = {}
        for (line, _), one in sorted(self._written.items()):
            lines.setdefault(line, []).append(one.text)
        return list(lines.values())


def _holds_figures(table: Table, place: int) -> bool:
    """Whether a column holds figures: they stand at the right."""
    first = next((row[place].value for row in table.rows if row[place].value != ""), "")
    return not isinstance(first, str)


def _text(cell: Cell, system: System) -> str:
    if isinstance(cell.value, str):
        text = cell.value
    else:
        text = fine_of(cell.value, system) if cell.fine else value_of(cell.value, system)
        text = text.replace(" ", "\u00a0")  # a number and its unit stay on one line
    return f"{MARK}{text}" if cell.marked else text
