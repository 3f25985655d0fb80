"""Jobs as rows of a table, read page by page."""

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap

from chargebench.desk import Desk
from chargebench.desk.views import JobLine
from chargebench.ui import theme
from chargebench.ui.shapes import draw

PAGE = 40
HEADS = ("Job", "Equipment", "Refrigerant", "Charge", "Stands at", "Flag")
Index = QModelIndex | QPersistentModelIndex
_TOP = QModelIndex()


class JobList(QAbstractTableModel):
    """The jobs found, newest first."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._lines: list[JobLine] = []
        self._find = ""
        self._state: str | None = "open"
        self._all_read = True
        self._narrow = False

    def set_narrow(self, *, narrow: bool) -> None:
        """On a narrow page refrigerant, charge and step stand under the equipment's name."""
        if narrow != self._narrow:
            self.beginResetModel()
            self._narrow = narrow
            self.endResetModel()

    def read(self, find: str, state: str | None) -> None:
        """Read the first page of what is looked for."""
        lines = self._desk.jobs(find, state, limit=PAGE)
        self.beginResetModel()
        self._find, self._state = find, state
        self._lines = list(lines)
        self._all_read = len(lines) < PAGE
        self.endResetModel()

    def line(self, row: int) -> JobLine:
        """One job."""
        return self._lines[row]

    def lines(self) -> Sequence[JobLine]:
        """The jobs read so far."""
        return tuple(self._lines)

    def rowCount(self, parent: Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """Rows read so far."""
        return 0 if parent.isValid() else len(self._lines)

    def columnCount(self, parent: Index = _TOP) -> int:  # noqa: N802 - Qt's name
        """Columns."""
        return 0 if parent.isValid() else len(HEADS)

    def canFetchMore(self, parent: Index) -> bool:  # noqa: N802 - Qt's name
        """Whether there may be further jobs."""
        return not parent.isValid() and not self._all_read

    def fetchMore(self, parent: Index) -> None:  # noqa: N802, ARG002 - Qt's name
        """Read the next page."""
        last = self._lines[-1].key
        more = self._desk.jobs(self._find, self._state, limit=PAGE, before=last)
        self._all_read = len(more) < PAGE
        if more:
            first = len(self._lines)
            self.beginInsertRows(QModelIndex(), first, first + len(more) - 1)
            self._lines.extend(more)
            self.endInsertRows()

    def headerData(  # noqa: N802 - Qt's name
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Heads."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return HEADS[section]
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        return None

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """One cell."""
        line = self._lines[index.row()]
        title = line.title
        if self._narrow:
            title = f"{title}\n{line.refrigerant} {line.charge} · {line.now}"
        text = (line.number, title, line.refrigerant, line.charge, line.now, _flag(line))
        match role:
            case Qt.ItemDataRole.DisplayRole | Qt.ItemDataRole.ToolTipRole:
                return text[index.column()]
            case Qt.ItemDataRole.AccessibleTextRole:
                return f"{HEADS[index.column()]}: {text[index.column()]}"
            case Qt.ItemDataRole.DecorationRole if index.column() == 5 and line.worst:
                return _shape(line.worst.level)
        return None


def _flag(line: JobLine) -> str:
    return f"{line.worst.level.upper()}  {line.worst.says}" if line.worst else ""


def _shape(name: str) -> QPixmap:
    side = theme.em()
    pixmap = QPixmap(side, side)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    draw(painter, QRectF(1, 1, side - 2, side - 2), name)
    painter.end()
    return pixmap
