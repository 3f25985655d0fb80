"""A repeated group of fields: several cylinders in one charge, readings of a decay test."""

from collections.abc import Callable, Mapping, Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.steps import NOTHING, Answers, Field
from chargebench.steps.form import LINES_MOST, TypedLine
from chargebench.ui import theme
from chargebench.ui.fieldrow import FieldRow, KnowsRows, wrapped
from chargebench.ui.language import tr
from chargebench.words import say

TABLE_FIELDS_MOST = 3  # groups this small are one row a line, growing as one types
COLUMN_EMS = 13
TABLE_COLUMN_EMS, REMOVE_EMS = 10, 6


class _Line(QFrame):
    """One line: its fields in columns, and a button that takes it away."""

    edited = Signal()
    gone = Signal()
    wants_new = Signal(str, object)

    def __init__(self, field: Field, desk: KnowsRows) -> None:
        super().__init__()
        self.setObjectName("line")
        self.rows = {
            each.key: FieldRow(each, desk, label=each.label.replace("&", "&&"))
            for each in field.fields
        }
        self.remove = QPushButton(tr("Remove"))
        self.remove.setToolTip(tr("Ctrl+Shift+Delete"))
        self.remove.clicked.connect(lambda _: self.gone.emit())
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(theme.em() // 2, 0, 0, theme.em() // 3)
        self._grid.setHorizontalSpacing(theme.em() // 2)
        self._grid.setVerticalSpacing(theme.em() // 3)
        self._shape: tuple[int, bool] | None = None
        for row in self.rows.values():
            row.edited.connect(self.edited)
            row.wants_new.connect(lambda register, r=row: self.wants_new.emit(register, r))
        self.remove.setSizePolicy(self.remove.sizePolicy())

    def number(self, number: int, group: str) -> None:
        """Name the line for a screen reader."""
        self.remove.setAccessibleName(
            tr(say("Remove line {number} of {group}", number=number, group=group))
        )
        for row in self.rows.values():
            name = say("{label}, line {number}", label=row.field.label, number=number)
            for editor in row.editors():
                if editor is row.editor:
                    editor.setAccessibleName(tr(name))

    def lay_out(self, columns: int, *, labelled: bool, table: bool) -> None:
        """Spread the fields over columns."""
        for row in self.rows.values():
            row.lay_out(beside=False, labelled=labelled)
        if self._shape == (columns, table):
            return
        self._shape = (columns, table)
        for row in self.rows.values():
            self._grid.removeWidget(row)
        self._grid.removeWidget(self.remove)
        for column in range(self._grid.columnCount()):
            self._grid.setColumnStretch(column, 0)
        for place, row in enumerate(self.rows.values()):
            self._grid.addWidget(row, place // columns, place % columns, Qt.AlignmentFlag.AlignTop)
            self._grid.setColumnStretch(place % columns, 1)
            row.show()
        bottom = Qt.AlignmentFlag.AlignBottom
        if table:
            self._grid.addWidget(self.remove, 0, columns, bottom)
        else:
            last = (len(self.rows) - 1) // columns + 1
            self._grid.addWidget(self.remove, last, 0, Qt.AlignmentFlag.AlignLeft)

    def typed(self) -> dict[str, str]:
        """What is typed in the line."""
        return {key: row.text() for key, row in self.rows.items()}

    def blank(self) -> bool:
        """Nothing typed."""
        return not any(row.text().strip() for row in self.rows.values())

    def put(self, typed: TypedLine) -> None:
        """Show a line typed earlier."""
        for key, row in self.rows.items():
            row.put(typed.get(key, ""))


class LinesField(QWidget):
    """Lines that can be added and removed by keyboard."""

    edited = Signal()
    wants_new = Signal(str, object)
    grown = Signal()

    def __init__(self, field: Field, desk: KnowsRows, *, label: str) -> None:
        super().__init__()
        self.field = field
        self._desk = desk
        self._locked = False
        self._table = len(field.fields) <= TABLE_FIELDS_MOST
        self.label = QLabel(tr(label))
        self.label.setProperty("weight", "head")
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        self.add = QPushButton(tr("Add a line"))
        self.add.setAccessibleName(tr(say("Add a line to {label}", label=field.label)))
        self.add.setToolTip(tr("Ctrl+Shift+Delete takes a line away"))
        self.add.clicked.connect(lambda _: self.add_line(focus=True))
        self._lines: list[_Line] = []
        self._stack = QVBoxLayout()
        self._stack.setSpacing(theme.em() // 3 if not self._table else 0)
        foot = QHBoxLayout()
        foot.addWidget(self.add)
        foot.addStretch()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, theme.em() // 2, 0, 0)
        layout.setSpacing(theme.em() // 4)
        layout.addWidget(self.label)
        layout.addWidget(self.refusal)
        layout.addLayout(self._stack)
        layout.addLayout(foot)
        self.put([])

    def editors(self) -> list[QWidget]:
        """What takes the keys."""
        return [
            editor for line in self._lines for row in line.rows.values() for editor in row.editors()
        ]

    def line_rows(self, number: int) -> Mapping[str, FieldRow]:
        """The fields of one line."""
        return self._lines[number].rows

    def __len__(self) -> int:
        return len(self._lines)

    def typed(self) -> list[dict[str, str]]:
        """The lines typed; blank ones at the end are left out."""
        typed = [line.typed() for line in self._lines]
        while typed and not any(text.strip() for text in typed[-1].values()):
            typed.pop()
        return typed

    def put(self, typed: Sequence[TypedLine]) -> None:
        """Show lines typed earlier."""
        wanted = max(len(typed), 1)
        if self._table and typed and not self._locked:
            wanted += 1
        while len(self._lines) > wanted:
            self._drop(self._lines[-1])
        while len(self._lines) < wanted:
            self._append()
        self.label.setBuddy(self.editors()[0])
        for number, line in enumerate(self._lines):
            line.put(typed[number] if number < len(typed) else {})
        self._arrange()

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self._locked = locked
        self.add.setVisible(not locked)
        for line in self._lines:
            line.remove.setVisible(not locked)
            for row in line.rows.values():
                row.lock(locked=locked)

    def add_line(self, *, focus: bool = False) -> None:
        """Add one line at the end."""
        if len(self._lines) >= LINES_MOST:
            return
        if not (self._lines and self._lines[-1].blank()):
            self._append()
            self._arrange()
        if focus:
            next(iter(self._lines[-1].rows.values())).editor.setFocus()

    def lay_out(self, *, beside: bool) -> None:  # noqa: ARG002 - the group measures itself
        """Spread the lines over the width there is."""
        self._arrange()

    def tell(self, path: str, answers: Answers, refusals: Mapping[str, str]) -> None:
        """Show what each line was understood as."""
        refusal = refusals.get(path, "")
        self.refusal.setText(tr(refusal))
        self.refusal.setVisible(bool(refusal))
        understood = iter(answers.lines(self.field.key))
        for number, line in enumerate(self._lines):
            values = NOTHING if line.blank() else next(understood, NOTHING)
            for key, row in line.rows.items():
                row.tell(f"{path}[{number}].{key}", values, refusals)

    def _append(self) -> None:
        line = _Line(self.field, self._desk)
        line.edited.connect(self._line_edited)
        line.gone.connect(lambda each=line: self._remove(each))
        line.wants_new.connect(self.wants_new)
        self._lines.append(line)
        self._stack.addWidget(line)
        line.show()  # at once: the next key may go into it
        self.grown.emit()

    def _drop(self, line: _Line) -> None:
        self._lines.remove(line)
        self._stack.removeWidget(line)
        line.hide()
        line.deleteLater()

    def _remove(self, line: _Line) -> None:
        place = self._lines.index(line)
        if len(self._lines) == 1:
            line.put({})
        else:
            self._drop(line)
        self._arrange()
        self.edited.emit()
        self.label.setBuddy(self.editors()[0])
        near = self._lines[min(place, len(self._lines) - 1)]
        next(iter(near.rows.values())).editor.setFocus()

    def _line_edited(self) -> None:
        if self._table and not self._lines[-1].blank() and len(self._lines) < LINES_MOST:
            self._append()
            self._arrange()
        self.edited.emit()

    def _arrange(self) -> None:
        count = len(self.field.fields)
        fit = max(1, (self.width() - theme.em()) // (theme.em() * COLUMN_EMS))
        beside_remove = self.width() - theme.em() * REMOVE_EMS
        table = self._table and beside_remove >= theme.em() * TABLE_COLUMN_EMS * count
        columns = count if table else min(fit, count)
        for number, line in enumerate(self._lines):
            line.number(number + 1, self.field.label)
            line.lay_out(columns, labelled=number == 0 or not table, table=table)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Spread again."""
        super().resizeEvent(event)
        self._arrange()

    def remove_focused(self) -> bool:
        """Take away the line typed in; False where there is none."""
        line = self._line_of(self.focusWidget())
        if line is None or self._locked:
            return False
        self._remove(line)
        return True

    def _line_of(self, widget: QWidget | None) -> _Line | None:
        inside: Callable[[_Line], bool] = lambda line: (  # noqa: E731
            widget is not None and line.isAncestorOf(widget)
        )
        return next((line for line in self._lines if inside(line)), None)
