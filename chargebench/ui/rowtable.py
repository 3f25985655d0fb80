"""Tables of frozen rows: columns as data, further rows read page by page as one scrolls."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent, QPainter, QPixmap, QResizeEvent
from PySide6.QtWidgets import QHeaderView, QTableView, QWidget

from chargebench.ui import theme
from chargebench.ui.language import tr
from chargebench.ui.shapes import draw

PAGE = 200
ROWS_MEASURED = 50
Index = QModelIndex | QPersistentModelIndex
Row = TypeVar("Row")
_TOP = QModelIndex()
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


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


class RowModel(QAbstractTableModel, Generic[Row]):
    """Rows read so far; `page` reads those after a row, or the first ones."""

    def __init__(self, columns: Sequence[Column[Row]], page_size: int = PAGE) -> None:
        super().__init__()
        self.columns = tuple(columns)
        self._page_size = page_size
        self._rows: list[Row] = []
        self._page: Callable[[Row | None], Sequence[Row]] | None = None
        self.struck: Callable[[Row], bool] = lambda _: False  # rows that stand no more

    def read(self, page: Callable[[Row | None], Sequence[Row]]) -> None:
        """Read the first page; further pages follow as one scrolls."""
        self.beginResetModel()
        self._rows = list(page(None))
        self._page = page if len(self._rows) >= self._page_size else None
        self.endResetModel()

    def show_rows(self, rows: Sequence[Row]) -> None:
        """Show rows that are all there already."""
        self.beginResetModel()
        self._rows, self._page = list(rows), None
        self.endResetModel()

    def find(self, wanted: Callable[[Row], bool]) -> int:
        """Number of the first such row, reading further pages for it; -1 where there is none."""
        number = 0
        while number < len(self._rows) or self.canFetchMore(_TOP):
            if number == len(self._rows):
                self.fetchMore(_TOP)
            elif wanted(self._rows[number]):
                return number
            else:
                number += 1
        return -1

    def row(self, number: int) -> Row:
        """One row."""
        return self._rows[number]

    def show_columns(self, columns: Sequence[Column[Row]]) -> None:
        """Show other columns of the same rows."""
        self.beginResetModel()
        self.columns = tuple(columns)
        self.endResetModel()

    @property
    def rows(self) -> Sequence[Row]:
        """The rows read so far."""
        return tuple(self._rows)

    def rowCount(self, parent: Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """Rows read so far."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """Columns."""
        return 0 if parent.isValid() else len(self.columns)

    def canFetchMore(self, parent: Index) -> bool:  # noqa: N802 - Qt's name
        """Whether there may be further rows."""
        return not parent.isValid() and self._page is not None

    def fetchMore(self, parent: Index) -> None:  # noqa: N802, ARG002 - Qt's name
        """Read the next page."""
        assert self._page is not None
        more = self._page(self._rows[-1])
        if len(more) < self._page_size:
            self._page = None
        if more:
            first = len(self._rows)
            self.beginInsertRows(QModelIndex(), first, first + len(more) - 1)
            self._rows.extend(more)
            self.endInsertRows()

    def headerData(  # noqa: N802 - Qt's name
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Heads, aligned as their columns."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self.columns[section].title()
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.columns[section].right else _LEFT
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """One cell."""
        row, column = self._rows[index.row()], self.columns[index.column()]
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.ToolTipRole:
                return column.says(row)
            case Qt.ItemDataRole.AccessibleTextRole:
                return f"{column.title()}: {column.says(row)}"
            case Qt.ItemDataRole.TextAlignmentRole:
                return _RIGHT if column.right else _LEFT
            case Qt.ItemDataRole.UserRole:
                return row
            case Qt.ItemDataRole.FontRole if self.struck(row):
                return _struck_font()
            case Qt.ItemDataRole.DecorationRole if column.shape is not None:
                name = column.shape(row)
                return _pixmap(name) if name else None
        return None


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
        if not self._to_press:
            return round(theme.em() * 1.8)
        return max(theme.target(), round(theme.em() * (self.lines + 0.5)))

    def height_of(self, rows: int) -> int:
        """Height that shows this many rows under their heads."""
        return self.horizontalHeader().sizeHint().height() + self.row_height() * rows + 6

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Wide enough for every column."""
        return QSize(sum(self._wanted()) + theme.em() * 2, super().sizeHint().height())

    def lay_out(self) -> None:
        """Set the columns' widths for their words, the text size and the room there is."""
        high = self.row_height()
        if self.verticalHeader().defaultSectionSize() != high:
            self.verticalHeader().setDefaultSectionSize(high)
        columns, wanted, room = self._rows_model.columns, self._wanted(), self.viewport().width()
        least = [
            min(width, max(round(column.least * theme.em()), head)) if column.least else width
            for column, width, head in zip(columns, wanted, self._heads, strict=True)
        ]
        shown = _that_fit(columns, least, room)
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
        self._widths = []
        self.lay_out()

    def _wanted(self) -> list[int]:
        """Width that each column's head and first rows want."""
        if not self._widths:
            rows = self._rows_model.rows[:ROWS_MEASURED]
            bold = QFont(self.font())
            bold.setBold(True)
            self._heads = []
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


def _that_fit(columns: Sequence[Column[Any]], least: Sequence[int], room: int) -> list[int]:
    """Places of the columns shown: some give way if there is room for the others, else none."""
    every = list(range(len(columns)))
    shown = list(every)
    for place in sorted(every, key=lambda place: -columns[place].gives_way):
        if sum(least[each] for each in shown) <= room:
            return shown
        if columns[place].gives_way:
            shown.remove(place)
    return every  # one has to scroll anyhow


def _struck_font() -> QFont:
    font = QFont()
    font.setStrikeOut(True)
    return font


def _pixmap(name: str) -> QPixmap:
    side = theme.em()
    pixmap = QPixmap(side, side)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    draw(painter, QRectF(1, 1, side - 2, side - 2), name)
    painter.end()
    return pixmap
