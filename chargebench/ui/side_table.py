"""A small table of the side panel: words wrap, what matters is marked, reasons stand below."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from chargebench.steps import Cell, Table
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.wording import fine_of, value_of
from chargebench.units import System

MARK = "◆\u00a0"
_LEAST, _MOST = 8, 14  # characters; columns share the width by their longest words
_REASONS_BELOW = ("searches",)  # tables whose reasons are read without being asked for


class SideTable(QWidget):
    """Heads, rows, and what the table says; its labels are written anew, not made anew."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._table: Table | None = None
        self._labels: dict[tuple[int, int], QLabel] = {}
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
        if table == self._table:
            return
        self._table = table
        self.title.setText(table.title)
        self.setAccessibleName(table.title)
        self.says.setText(table.says)
        self.says.setVisible(bool(table.says))
        below = table.key in _REASONS_BELOW
        used: set[tuple[int, int]] = set()
        for place, head in enumerate(table.heads):
            used.add((0, place))
            self._write(0, place, head, weight="faint", right=self._right(table, place))
        for number, row in enumerate(table.rows):
            line = 1 + number * (2 if below else 1)
            for place, cell in enumerate(row):
                used.add((line, place))
                self._write_cell(line, place, cell, table, system)
            if below and (why := " ".join(cell.why for cell in row if cell.why)):
                used.add((line + 1, 0))
                self._write(line + 1, 0, why, weight="faint", across=len(table.heads))
        for spot, label in self._labels.items():
            label.setVisible(spot in used)
        for place in range(len(table.heads)):
            column = (spot for spot in used if spot[1] == place and spot[0])
            longest = max((len(self._labels[spot].text()) for spot in column), default=0)
            self._grid.setColumnStretch(place, min(max(longest, _LEAST), _MOST))

    @staticmethod
    def _right(table: Table, place: int) -> bool:
        """Whether a column holds figures: they stand at the right."""
        cells = [row[place].value for row in table.rows if row[place].value != ""]
        return bool(cells) and not isinstance(cells[0], str)

    def _write_cell(self, line: int, place: int, cell: Cell, table: Table, system: System) -> None:
        text = (
            fine_of(cell.value, system)
            if cell.fine and not isinstance(cell.value, str)
            else value_of(cell.value, system)
        )
        if not isinstance(cell.value, str):
            text = text.replace(" ", "\u00a0")  # a number and its unit stay on one line
        text = f"{MARK}{text}" if cell.marked else text
        weight = "check" if cell.marked else ("faint" if place == 0 else "")
        label = self._write(line, place, text, weight=weight, right=self._right(table, place))
        label.setToolTip("" if table.key in _REASONS_BELOW else cell.why)
        name = str(table.rows[0][0].value) if place == 0 else table.heads[place]
        label.setAccessibleName(f"{name}: {text}. {cell.why}" if text and place else text)

    def _write(
        self,
        line: int,
        place: int,
        text: str,
        *,
        weight: str,
        right: bool = False,
        across: int = 1,
    ) -> QLabel:
        label = self._labels.get((line, place))
        if label is None:
            label = self._labels[line, place] = wrapped(weight=weight)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._grid.addWidget(label, line, place, 1, across)
        label.setText(text)
        top = Qt.AlignmentFlag.AlignTop
        label.setAlignment(top | (Qt.AlignmentFlag.AlignRight if right else top))
        if label.property("weight") != weight:
            label.setProperty("weight", weight)
            label.style().unpolish(label)
            label.style().polish(label)
        return label

    def texts(self) -> list[list[str]]:
        """What the shown labels say, line by line."""
        lines: dict[int, list[str]] = {}
        for (line, _), label in sorted(self._labels.items()):
            if not label.isHidden():
                lines.setdefault(line, []).append(label.text())
        return list(lines.values())
