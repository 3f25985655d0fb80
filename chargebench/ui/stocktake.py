"""A stock-take on the page: scan, Enter, reading, Enter, next; a list that says how each stands."""

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QHideEvent, QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import Desk
from chargebench.desk.stocktake import TypedStockTake
from chargebench.errors import ChargebenchError, StepRefused
from chargebench.steps.forms.stock import WEIGH
from chargebench.steps.stocktake import Counted, StockTake, Word
from chargebench.ui.fieldrow import FieldRow, wrapped
from chargebench.ui.fields import LineEdit
from chargebench.ui.language import tr
from chargebench.ui.rowtable import Column, RowModel, RowView
from chargebench.ui.signing import ReasonLine
from chargebench.ui.stock_words import mass, signed_mass
from chargebench.units import System
from chargebench.words import joined, say

_KEEP_MS = 400
_PURPOSE = (
    "Every cylinder once over the scale. Scan or type its id and press Enter, type the reading and "
    "press Enter, take the next. What is typed is kept until you sign; a cylinder weighed again "
    "counts as weighed last. Another content on the label than in the register: type it behind the "
    "id, such as C-014 R600a."
)
_SHAPES = {
    Word.AGREES: "signed",
    Word.DIFFERS: "check",
    Word.OTHER: "stop",
    Word.STRANGE: "check",
    Word.UNREAD: "now",
    Word.OPEN: "",
}


class StockTakePage(QWidget):
    """Counts the stock; signed by one deliberate act."""

    recorded = Signal(str)
    left = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._typed = desk.stocktake_typed()
        self.scale = FieldRow(WEIGH.field("scale"), desk, label="Sc&ale")
        self.cylinder = LineEdit("C-014; a scanner types here")
        self.gross = LineEdit("12.430 kg")
        self.model: RowModel[Counted] = RowModel(_columns(desk.units))
        self.table = RowView(self.model, "Cylinders of the stock-take")
        self.stands = wrapped()
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self.reason = ReasonLine()
        self.back = QPushButton(tr("&Back"))
        self.back.setToolTip(tr("Esc; what is counted stays here"))
        self.take_away = QPushButton(tr("&Take the line away"))
        self.take_away.setToolTip(tr("Ctrl+Shift+Delete: the chosen cylinder is not counted yet"))
        self.sign_button = QPushButton(tr("Sign the stock-take"))
        self.sign_button.setProperty("weight", "main")
        self.sign_button.setToolTip(tr("Ctrl+Return"))
        self._build()
        self._connect()
        self._put(self.scale, self._typed.scale)
        self.read()

    def _build(self) -> None:
        entry = QHBoxLayout()
        for words, editor, wide in (("C&ylinder", self.cylinder, 3), ("&Reading", self.gross, 2)):
            label = QLabel(tr(words))
            label.setBuddy(editor)
            editor.setAccessibleName(tr(words.replace("&", "")))
            entry.addWidget(label)
            entry.addWidget(editor, wide)
        buttons = QHBoxLayout()
        for button in (self.back, self.take_away):
            buttons.addWidget(button)
        buttons.addStretch(1)
        buttons.addWidget(self.sign_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(wrapped("Stock-take", "title"))
        column.addWidget(wrapped(_PURPOSE, "faint"))
        column.addWidget(self.scale)
        column.addLayout(entry)
        column.addWidget(self.says)
        column.addWidget(self.reason)
        column.addWidget(self.table, 1)
        column.addWidget(self.stands)
        column.addLayout(buttons)

    def _connect(self) -> None:
        self._keep = QTimer(self)
        self._keep.setSingleShot(True)
        self._keep.setInterval(_KEEP_MS)
        self._keep.timeout.connect(self.flush)
        self.scale.edited.connect(self._scale_edited)
        self.cylinder.returnPressed.connect(self._to_reading)
        self.gross.returnPressed.connect(self._take)
        self.table.opened.connect(lambda row: self._ask(self.model.row(row)))
        self.back.clicked.connect(lambda _: self.left.emit())
        self.take_away.clicked.connect(lambda _: self._drop())
        self.sign_button.clicked.connect(lambda _: self.sign())
        for keys, act in (("Ctrl+Return", self.sign), ("Ctrl+Shift+Delete", self._drop)):
            QShortcut(
                QKeySequence(keys),
                self,
                act,
                context=Qt.ShortcutContext.WidgetWithChildrenShortcut,
            )

    @staticmethod
    def _put(row: FieldRow, text: str) -> None:
        assert isinstance(row.editor, LineEdit)
        row.editor.put(text)

    def begin(self) -> None:
        """Start, or go on where it was left."""
        self.read()
        known = self.look().refusals
        (self.scale.editor if "scale" in known else self.cylinder).setFocus()

    def look(self) -> StockTake:
        """How the cylinders stand."""
        return self._desk.look_stocktake(self._typed)

    def read(self) -> None:
        """Show how the cylinders stand: those counted, the last first, then the others."""
        found = self.look()
        self.model.show_rows((*reversed(found.lines), *found.open))
        if self.model.rowCount():
            self.table.selectRow(0)
        self.stands.setText(tr(f"{found.sentence.capitalize()}."))
        self.sign_button.setEnabled(bool(found.lines))

    def _scale_edited(self) -> None:
        assert isinstance(self.scale.editor, LineEdit)
        self._change(replace(self._typed, scale=self.scale.editor.text().strip()))

    def _change(self, typed: TypedStockTake) -> None:
        self._typed = typed
        self._keep.start()
        self.says.hide()
        self.read()

    def flush(self) -> None:
        """Keep what is typed, now."""
        self._keep.stop()
        self._desk.keep_stocktake(self._typed)

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """What is typed and not kept yet is kept when the page goes out of sight."""
        if self._keep.isActive():
            self.flush()
        super().hideEvent(event)

    def _to_reading(self) -> None:
        if self.cylinder.text().strip():
            self.gross.setFocus()
            self.gross.selectAll()

    def _take(self) -> None:
        """Take what stands in the two fields as a line; the next one begins at its id."""
        cylinder = self.cylinder.text().strip()
        if not cylinder:
            self.cylinder.setFocus()
            return
        self._change(
            self._typed.with_line({"cylinder": cylinder, "gross": self.gross.text().strip()})
        )
        self.flush()
        self.cylinder.clear()
        self.gross.clear()
        self.cylinder.setFocus()

    def _chosen(self) -> Counted | None:
        row = self.table.currentIndex().row()
        return self.model.row(row) if 0 <= row < self.model.rowCount() else None

    def _drop(self) -> None:
        chosen = self._chosen()
        if chosen is not None and self._typed.line(chosen.cylinder):
            self._change(self._typed.without(chosen.cylinder))
            self.flush()
        self.cylinder.setFocus()

    def _ask(self, line: Counted) -> None:
        """Ask why the ledger is wrong about a cylinder; take one up again that has no reading."""
        if line.word is not Word.DIFFERS or line.weighing is None:
            self.cylinder.put(line.cylinder)
            self.gross.put(line.gross)
            self.gross.setFocus()
            return
        self.table.selectRow(self.model.rows.index(line))
        more = "more" if line.weighing.difference_mg > 0 else "less"
        size = mass(abs(line.weighing.difference_mg), self._desk.units)
        self.reason.ask(
            say(
                "{cylinder} weighs {size} {more} than the ledger says. Why? The reason "
                "books the difference; without one it stays as it is, to be found out.",
                cylinder=line.cylinder,
                size=size,
                more=more,
            ),
            "Go on",
            lambda why: self._settle(line.cylinder, why.strip()),
        )

    def _settle(self, cylinder: str, reason: str) -> None:
        said = {"accept": "yes" if reason else "no", "reason": reason}
        self._change(self._typed.with_line({**self._typed.line(cylinder), **said}))
        self.flush()
        self.reason.leave()
        self.table.setFocus()

    def sign(self) -> None:
        """Record it all; where a line is not settled, ask for what it wants."""
        try:
            entries = self._desk.sign_stocktake(self._typed)
        except StepRefused as refusal:
            self._refuse(next(iter(refusal.fields.values())))
            unsettled = [line for line in self.look().lines if not line.settled]
            if "scale" in refusal.fields:
                self.scale.editor.setFocus()
            elif unsettled:
                self._ask(unsettled[0])
            return
        except ChargebenchError as refusal:
            self._refuse(str(refusal))
            return
        self._keep.stop()
        self._typed = self._desk.stocktake_typed()
        self._put(self.scale, "")
        self.recorded.emit(joined(" ", entries[-1].payload["said"]))

    def _refuse(self, says: str) -> None:
        self.says.setText(tr(says))
        self.says.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc goes back."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)


def _columns(system: System) -> Sequence[Column[Counted]]:
    return (
        Column("Cylinder", lambda line: line.cylinder),
        Column("Refrigerant", lambda line: line.refrigerant, gives_way=3),
        Column("Stands", lambda line: str(line.word), shape=lambda line: _SHAPES[line.word]),
        Column("Reading", lambda line: line.gross, right=True, gives_way=4),
        Column("Expected", lambda line: _figure(line, "expected_mg", system), right=True),
        Column("Found", lambda line: _figure(line, "found_mg", system), right=True),
        Column("Difference", lambda line: _difference(line, system), right=True),
        Column("Tolerance", lambda line: _figure(line, "tolerance_mg", system), right=True),
        Column(
            "of the scale", lambda line: _figure(line, "scale_mg", system), right=True, gives_way=1
        ),
        Column(
            "of the ledger",
            lambda line: _figure(line, "ledger_mg", system),
            right=True,
            gives_way=2,
        ),
        Column("", _becomes, least=8),
    )


def _figure(line: Counted, name: str, system: System) -> str:
    return "" if line.weighing is None else mass(getattr(line.weighing, name), system)


def _difference(line: Counted, system: System) -> str:
    return "" if line.weighing is None else signed_mass(line.weighing.difference_mg, system)


def _becomes(line: Counted) -> str:
    """What is still wanted of a line, or what becomes of its difference."""
    if line.says:
        return line.says
    if line.word is not Word.DIFFERS:
        return ""
    return say("booked: {reason}", reason=line.reason) if line.accept else "left to be found out"
