"""One cylinder opened: what it holds against its limit, and its history as a running balance."""

from collections.abc import Container, Sequence
from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import CylinderLine, Desk
from chargebench.ledger import HistoryRow
from chargebench.ui.entry_detail import EntryDetail
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fillbar import FillBar, share_words
from chargebench.ui.flagbar import FlagLine
from chargebench.ui.language import tr
from chargebench.ui.rowtable import PAGE, Column, RowModel, RowView
from chargebench.ui.stock_words import (
    Places,
    day,
    due_words,
    mass,
    moment,
    moved_words,
    numbered,
    signed_mass,
)
from chargebench.units import System
from chargebench.words import joined, say

ACTS = (("receive", "Recei&ve"), ("weigh", "&Weigh"), ("decant", "&Decant"), ("return", "Re&turn"))
_EMPTY = (
    "Nothing has moved in or out of this cylinder yet. Receive it, or weigh it, to begin its "
    "history."
)


class CylinderPage(QWidget):
    """Facts, flags, acts and history of a cylinder."""

    left = Signal()
    acted = Signal(str)  # key of the act wanted
    changes = Signal()  # its register row is wanted
    job_wanted = Signal(str)
    taken_back = Signal(object)  # the entry that was reversed here

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.cylinder = ""
        self.title = wrapped(weight="title")
        self.facts = wrapped()
        self.fill = FillBar()
        self.fill_words = wrapped()
        self.empty = wrapped(_EMPTY, "faint")
        self._undone: set[str] = set()  # of the entries read, those that were taken back
        self.model: RowModel[HistoryRow] = RowModel(self._columns())
        self.model.struck = lambda row: row.entry in self._undone
        self.entry = EntryDetail(desk)
        self.table = RowView(self.model, "History, newest first")
        self.table.opened.connect(self._open_row)
        self.table.selectionModel().currentRowChanged.connect(lambda *_: self._show_entry())
        self.entry.listen(self)
        self.entry.wanted.connect(self._go_to)
        self.entry.reversed.connect(self.taken_back)
        self.back = QPushButton(tr("‹ Stock"))
        self.change = QPushButton(tr("C&hange"))
        self.change.setToolTip(tr("Change what the register says of this cylinder"))
        self.label = QPushButton(tr("La&bel…"))
        self.label.setToolTip(tr("Ctrl+P: label with QR code, statement of a hand-over"))
        self.back.clicked.connect(lambda _: self.left.emit())
        self.change.clicked.connect(lambda _: self.changes.emit())
        self._flags = QVBoxLayout()
        self._flag_lines: list[FlagLine] = []
        self._build()

    def _build(self) -> None:
        head = QHBoxLayout()
        top = Qt.AlignmentFlag.AlignTop
        head.addWidget(self.back, 0, top)
        head.addWidget(self.title, 1, top)
        head.addWidget(self.label, 0, top)
        head.addWidget(self.change, 0, top)
        acts = QHBoxLayout()
        for key, words in ACTS:
            button = QPushButton(tr(words))
            button.clicked.connect(lambda _, act=key: self.acted.emit(act))
            acts.addWidget(button)
        acts.addStretch(1)
        bar = QGridLayout()
        bar.addWidget(self.fill, 0, 0)
        bar.addWidget(self.fill_words, 0, 1)
        bar.setColumnStretch(0, 2)
        bar.setColumnStretch(1, 3)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(head)
        layout.addLayout(bar)
        layout.addWidget(self.facts)
        layout.addLayout(self._flags)
        layout.addLayout(acts)
        layout.addWidget(self.empty)
        layout.addWidget(self.table, 1)
        layout.addWidget(self.entry)

    def open(self, line: CylinderLine) -> None:
        """Show a cylinder."""
        self.cylinder = line.id
        self.model.columns = tuple(self._columns())
        self._undone.clear()
        self.model.read(self._page)
        kind = f"{line.contents}, " if line.contents else ""
        once = ", not refillable" if line.refillable is False else ""
        self.title.setText(
            tr(
                say(
                    "{id}  {refrigerant}, {kind}{once}",
                    id=line.id,
                    refrigerant=line.refrigerant,
                    kind=kind.rstrip(", "),
                    once=once,
                )
            )
        )
        self.fill.show_cylinder(line)
        self.fill_words.setText(tr(_fill_words(line, self._desk.units)))
        self.facts.setText(tr(_facts(line, self._desk)))
        self._show_flags(line)
        nothing = not self.model.rowCount()
        self.empty.setVisible(nothing)
        self.table.setVisible(not nothing)
        if not nothing:
            self.table.selectRow(0)
        self._show_entry()

    def _columns(self) -> Sequence[Column[HistoryRow]]:
        return _columns(self._desk, self._undone)

    def _page(self, after: HistoryRow | None) -> list[HistoryRow]:
        before = None if after is None else after.key
        page = self._desk.history(f"cylinder:{self.cylinder}", before=before, limit=PAGE)
        self._undone |= self._desk.reversed_among([row.entry for row in page])
        return page

    def _show_entry(self) -> None:
        row = self.table.currentIndex().row()
        chosen = 0 <= row < self.model.rowCount()
        self.entry.show_entry(self._desk.entry(self.model.row(row).entry) if chosen else None)

    def _go_to(self, entry: str) -> None:
        row = self.model.find(lambda each: each.entry == entry)
        if row >= 0:
            self.table.selectRow(row)
            self.table.setFocus()

    def _show_flags(self, line: CylinderLine) -> None:
        while len(self._flag_lines) < len(line.flags):
            self._flag_lines.append(FlagLine())
            self._flags.addWidget(self._flag_lines[-1])
        for place, shown in enumerate(self._flag_lines):
            shown.setVisible(place < len(line.flags))
            if place < len(line.flags):
                shown.show_flag(line.flags[place])

    def _open_row(self, number: int) -> None:
        job = self.model.row(number).job
        if job:
            self.job_wanted.emit(job)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc goes back."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
            return
        super().keyPressEvent(event)


def _columns(desk: Desk, undone: Container[str]) -> Sequence[Column[HistoryRow]]:
    system, places = desk.units, Places(desk)
    return (
        Column("When", lambda row: moment(row.happened_at)),
        Column("What", lambda row: _what(row) + (", reversed" if row.entry in undone else "")),
        Column("Moved", lambda row: signed_mass(row.mass_mg, system), right=True),
        Column("Held after", lambda row: mass(row.running_mg, system), right=True),
        Column("From or to", lambda row: places.words(row.other), least=7),
        Column("As typed", lambda row: row.as_typed, least=7),
        Column("Refrigerant", lambda row: row.refrigerant, gives_way=1),
        Column("Job", lambda row: row.job_number or ""),
        Column("Entry", lambda row: numbered(desk, row), right=True),
    )


def _what(row: HistoryRow) -> str:
    here, there = "cylinder", row.other
    ends = (there, here) if row.mass_mg > 0 else (here, there)
    return moved_words(row.kind, *ends, row.as_typed)


def _fill_words(line: CylinderLine, system: System) -> str:
    held = mass(line.mass_mg, system)
    if line.limit_mg is None:
        return say("holds {held}; no limit can be worked out without its water capacity", held=held)
    gross = (
        say("; gross at most {gross_limit}", gross_limit=mass(line.gross_limit_mg, system))
        if line.gross_limit_mg
        else ""
    )
    return say(
        "holds {held} of {limit}, {share_words} ({by}){gross}",
        held=held,
        limit=mass(line.limit_mg, system),
        share_words=share_words(line),
        by=line.by,
        gross=gross,
    )


def _facts(line: CylinderLine, desk: Desk) -> str:
    last = line.last_weighed
    weighed = (
        say("last weighed {last}", last=day(date.fromisoformat(last)))
        if last
        else "never weighed here"
    )
    row = desk.row("cylinder", line.id)
    known = [row.get("spec", ""), row.get("serial", ""), row.get("owner", "")]
    facts = [
        say("requalification {due_words}", due_words=due_words(line.due, desk.today)),
        weighed,
        *known,
    ]
    return joined("  ·  ", (each for each in facts if each))
