"""Tables of frozen rows: columns as data, laid out for the room there is."""

from typing import Any

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableView, QWidget

from chargebench.ui import theme
from chargebench.ui.columns import Column as Column
from chargebench.ui.columns import fold, lines_of, that_fit
from chargebench.ui.language import tr
from chargebench.ui.rowmodel import PAGE as PAGE
from chargebench.ui.rowmodel import RowModel as RowModel

ROWS_MEASURED = 50


class RowView(QTableView):
    """A table whose rows are opened by Enter or a click."""

    opened = Signal(int)

    def __init__(
        self,
        model: RowModel[Any],
        name: str,
        parent: QWidget | None = None,
        *,
        to_press: bool = True,
        lines: int = 1,
    ) -> None:
        super().__init__(parent)
        self._to_press = to_press  # rows that are only read may be lower than a gloved finger
        self.lines = lines  # of text in a row
        self._rows_model = model
        self._widths: list[int] = []  # that head and words want; measured with each reading
        self._heads: list[int] = []
        self._measured: tuple[Column[Any], ...] = ()  # the columns these are of
        self._fold_of: tuple[object, int] | None = None  # the columns folded, and how many stand
        self._folding = False
        self._lines_folded = 0
        self.setModel(model)
        self.setAccessibleName(tr(name))
        self.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QTableView.SelectionMode.SingleSelection)
        self.setHorizontalScrollMode(QTableView.ScrollMode.ScrollPerPixel)
        self.setTabKeyNavigation(False)
        self.setShowGrid(False)
        self.setWordWrap(lines > 1)
        self.verticalHeader().hide()
        head = self.horizontalHeader()
        head.setHighlightSections(False)
        head.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        head.setMinimumSectionSize(theme.em() * 2)
        self.setMinimumHeight(self.height_of(3 if to_press else 1))
        self.clicked.connect(lambda index: self.opened.emit(index.row()))
        model.modelReset.connect(self._measure_anew)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter opens the row."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.opened.emit(self.currentIndex().row())
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Give the room that is left to the columns that can use it."""
        super().resizeEvent(event)
        self.lay_out()

    def row_height(self) -> int:
        """Height of a row."""
        lines = self._lines_folded or self.lines
        if not self._to_press:
            return round(theme.em() * (lines + 0.8))
        return max(theme.target(), round(theme.em() * (lines + 0.5)))

    def height_of(self, rows: int) -> int:
        """Height that shows this many rows under their heads."""
        return self.horizontalHeader().sizeHint().height() + self.row_height() * rows + 6

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Wide enough for every column."""
        return QSize(sum(self._wanted()) + theme.em() * 2, super().sizeHint().height())

    def lay_out(self) -> None:
        """Set the columns' widths for their words, the text size and the room there is."""
        if self._folding:
            return
        columns, wanted, room = self._rows_model.columns, self._wanted(), self.viewport().width()
        least = [
            min(width, max(round(column.least * theme.em()), head)) if column.least else width
            for column, width, head in zip(columns, wanted, self._heads, strict=True)
        ]
        shown = that_fit(columns, least, room)
        self._fold(fold(columns, wanted, room) if shown is None and self.isVisible() else None)
        if self._fold_of is None:
            self._share_out(shown or list(range(len(columns))), least, room)
        else:
            self._lay_out_folded(room)
        high = self.row_height()
        if self.verticalHeader().defaultSectionSize() != high:
            self.verticalHeader().setDefaultSectionSize(high)

    def _fold(self, folded: list[Column[Any]] | None) -> None:
        """Fold or unfold the columns, at the row that was chosen."""
        wanted = None if folded is None else (self._rows_model.columns, len(folded))
        if wanted == self._fold_of:
            return
        self._fold_of, self._lines_folded = wanted, 0
        row, self._folding = self.currentIndex().row(), True
        self._rows_model.fold(folded)
        self.setWordWrap(folded is not None or self.lines > 1)
        self._folding = False
        if row >= 0:
            self.selectRow(row)

    def _lay_out_folded(self, room: int) -> None:
        *own, last = self._rows_model.shown
        widths = [min(width, round(room * 0.6 / len(own))) for width in self._widths[: len(own)]]
        rest = room - sum(widths)
        for place, width in enumerate((*widths, rest)):
            self.setColumnHidden(place, False)  # noqa: FBT003 - Qt's signature
            self.setColumnWidth(place, width)
        said = [last.says(row) for row in self._rows_model.rows[:ROWS_MEASURED]]
        shaped = any(last.shape and last.shape(row) for row in self._rows_model.rows)
        beside = theme.em() * (3 if shaped else 1)
        self._lines_folded = lines_of(said, rest - beside, self.fontMetrics())

    def _share_out(self, shown: list[int], least: list[int], room: int) -> None:
        """Give the columns shown their least, and what room is left to those that ask for it."""
        columns, wanted = self._rows_model.columns, self._widths
        spare = max(room - sum(least[place] for place in shown), 0)
        asked = sum(wanted[place] - least[place] for place in shown)
        growing = [place for place in shown if columns[place].least]
        for place in range(len(columns)):
            self.setColumnHidden(place, place not in shown)
            width = least[place]
            if asked > spare:
                width += spare * (wanted[place] - least[place]) // asked
            elif place in growing:
                width = wanted[place] + (spare - asked) // len(growing)
            if place in shown:
                self.setColumnWidth(place, width)

    def _measure_anew(self) -> None:
        if not self._folding:
            self._widths = []
            self.lay_out()

    def _wanted(self) -> list[int]:
        """Width that each column's head and first rows want."""
        if self._measured != self._rows_model.columns or not self._widths:
            rows = self._rows_model.rows[:ROWS_MEASURED]
            bold = QFont(self.font())
            bold.setBold(True)
            self._heads, self._widths = [], []
            self._measured = self._rows_model.columns
            heads, words, em = QFontMetrics(bold), self.fontMetrics(), theme.em()
            edges = 2 * (em // 3) + 8
            for column in self._rows_model.columns:
                lines = [line for row in rows for line in column.says(row).split("\n")]
                wide = max((words.horizontalAdvance(line) for line in lines), default=0)
                shaped = column.shape is not None and any(column.shape(row) for row in rows)
                beside = round(em * (column.drawn + (1.4 if shaped else 0)))
                head = max(heads.horizontalAdvance(line) for line in column.title().split("\n"))
                self._heads.append(head + edges)
                self._widths.append(max(head, wide + beside) + edges)
        return self._widths
