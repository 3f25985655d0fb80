"""Rows of a table read so far: further ones are read page by page as one scrolls."""

from collections.abc import Callable, Sequence
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QRectF, Qt
from PySide6.QtGui import QFont, QPainter, QPixmap

from chargebench.ui import theme
from chargebench.ui.columns import Column
from chargebench.ui.shapes import draw

PAGE = 200
Index = QModelIndex | QPersistentModelIndex
Row = TypeVar("Row")
_TOP = QModelIndex()
_LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
_RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter


class RowModel(QAbstractTableModel, Generic[Row]):
    """Rows read so far; `page` reads those after a row, or the first ones."""

    def __init__(self, columns: Sequence[Column[Row]], page_size: int = PAGE) -> None:
        super().__init__()
        self.columns = tuple(columns)
        self._folded: tuple[Column[Row], ...] | None = None
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

    @property
    def shown(self) -> tuple[Column[Row], ...]:
        """The columns as they are shown: folded where there is no room for all."""
        return self._folded or self.columns

    def fold(self, folded: Sequence[Column[Row]] | None) -> None:
        """Show columns folded, or again as they are."""
        self.beginResetModel()
        self._folded = tuple(folded) if folded else None
        self.endResetModel()

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
        return 0 if parent.isValid() else len(self.shown)

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
            return self.shown[section].title()
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return _RIGHT if self.shown[section].right else _LEFT
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """One cell."""
        row, column = self._rows[index.row()], self.shown[index.column()]
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
