"""Stock: what every cylinder holds and what is due, and the instruments beside them."""

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QLabel,
    QLineEdit,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import CylinderLine, Desk
from chargebench.ledger import Entry
from chargebench.ui.area_button import area_button
from chargebench.ui.cylinder_columns import FILL_COLUMN, cylinder_columns
from chargebench.ui.cylinder_page import ACTS, CylinderPage
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fillbar import FillDelegate
from chargebench.ui.flagbar import FlagLine
from chargebench.ui.instruments import InstrumentRow, instrument_columns, instrument_rows
from chargebench.ui.language import tr
from chargebench.ui.notifier import Notifier
from chargebench.ui.print_here import print_button, print_cylinder
from chargebench.ui.registerdialog import make_row
from chargebench.ui.registers import RegistersDialog
from chargebench.ui.rowtable import PAGE, RowModel, RowView
from chargebench.ui.stock_act import StockAct
from chargebench.ui.stocktake import StockTakePage
from chargebench.ui.turning import Turning, row_of, scrolled
from chargebench.words import say

_SEARCH_MS = 120
_NO_CYLINDERS = (
    "No cylinders yet. Every gram comes from one and goes to one. Press New cylinder to put the "
    "first on the register, then receive what is in it."
)
_NO_INSTRUMENTS = (
    "No instruments yet. A weigh-in asks for a scale with its resolution, a test for its gauge. "
    "Press New instrument to put the first on the register."
)
_NOTHING_FOUND = "Nothing here fits. Look for another word."


class StockArea(QStackedWidget):
    """Cylinders and instruments; a cylinder opened; a stock act."""

    said = Signal(str)
    job_wanted = Signal(str)
    reference_wanted = Signal(str)

    def __init__(self, desk: Desk, notifier: Notifier, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._notifier = notifier
        self.cylinders: RowModel[CylinderLine] = RowModel(cylinder_columns(desk))
        self.instruments: RowModel[InstrumentRow] = RowModel(instrument_columns(desk))
        self._acts: dict[str, StockAct] = {}
        self._shown: dict[str, QWidget] = {}
        self._came_from: QWidget | None = None
        self.stocktake: StockTakePage | None = None
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_SEARCH_MS)
        self._pause.timeout.connect(self.read)
        self._build()
        self.page = CylinderPage(desk)
        self.page.left.connect(self.show_list)
        self.page.acted.connect(lambda act: self.begin(act, self.page.cylinder))
        self.page.changes.connect(lambda: self._edit_cylinder(self.page.cylinder))
        self.page.label.clicked.connect(lambda _: self.show_print())
        self.page.job_wanted.connect(self.job_wanted)
        self.page.taken_back.connect(self._taken_back)
        self.page.entry.said.connect(self.said)
        self.addWidget(scrolled(self._list_page))
        self.addWidget(scrolled(self.page))
        notifier.changed.connect(self._changed)

    def _build(self) -> None:
        self._list_page = QWidget()
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("cylinder, refrigerant, owner; a scanner types here"))
        self.search.setAccessibleName(tr("Find a cylinder or an instrument"))
        label = QLabel(tr("&Find"))
        label.setBuddy(self.search)
        self.show_cylinders = area_button("&Cylinders")
        self.show_instruments = area_button("&Instruments")
        self.new = QPushButton(tr("&New cylinder"))
        self.new.setProperty("weight", "main")
        self.registers = QPushButton(tr("Re&gisters"))
        self.registers.setToolTip(tr("Sites, equipment, people, instruments, cylinders, the shop"))
        self.reference = QPushButton(tr("R&eference"))
        self.reference.setToolTip(tr("F7: saturation table, chart, limits of any refrigerant"))
        self.table = RowView(self.cylinders, "Cylinders")
        self.table.setItemDelegateForColumn(FILL_COLUMN, FillDelegate(self.table))
        self.instrument_table = RowView(self.instruments, "Instruments")
        self.empty = wrapped(weight="faint")
        self.worst = FlagLine()
        looked = row_of(
            label, self.search, self.reference, self.registers, self.new, fill=self.search
        )
        top = Turning((row_of(self.show_cylinders, self.show_instruments), looked), fill=1)
        buttons = [QPushButton(tr(words)) for _, words in ACTS]
        for button, (key, _) in zip(buttons, ACTS, strict=True):
            button.clicked.connect(lambda _, act=key: self.begin(act, self._chosen()))
        self.counting = QPushButton(tr("Stoc&k-take"))
        self.counting.setToolTip(tr("Weigh every cylinder in one go"))
        self.counting.clicked.connect(lambda _: self.begin_stocktake())
        tip = "Ctrl+P: label with QR code, one or all that are listed"
        self.labels = print_button("La&bel…", tip, self, self.show_print)
        self.acts = Turning((row_of(*buttons), row_of(self.counting, self.labels)))
        column = QVBoxLayout(self._list_page)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(top)
        column.addWidget(self.empty)
        column.addWidget(self.table, 1)
        column.addWidget(self.instrument_table, 1)
        column.addWidget(self.worst)
        column.addWidget(self.acts)
        self._connect()

    def _connect(self) -> None:
        self.search.textChanged.connect(lambda _: self._pause.start())
        self.search.returnPressed.connect(self._first)
        self.show_cylinders.setChecked(True)
        self.show_instruments.toggled.connect(lambda _: self.read())
        self.table.opened.connect(lambda row: self.open_cylinder(self.cylinders.row(row).id))
        self.instrument_table.opened.connect(
            lambda row: self._edit("instrument", self.instruments.row(row).id)
        )
        self.table.selectionModel().currentRowChanged.connect(lambda *_: self._show_worst())
        self.new.clicked.connect(lambda _: self._edit(self._kind(), None))
        self.registers.clicked.connect(lambda _: self._open_registers())
        self.reference.clicked.connect(lambda _: self._look_up())
        find = QShortcut(QKeySequence("Ctrl+F"), self._list_page)
        find.activated.connect(self.search.setFocus)

    def _kind(self) -> str:
        return "instrument" if self.show_instruments.isChecked() else "cylinder"

    def read(self) -> None:
        """Read the list shown."""
        words, kind = self.search.text().strip(), self._kind()
        if kind == "cylinder":
            self.cylinders.read(
                lambda after: self._desk.cylinders(
                    words, after=None if after is None else after.id, limit=PAGE
                )
            )
        else:
            self.instruments.show_rows(instrument_rows(self._desk, words))
        shown, hidden = (
            (self.table, self.instrument_table)
            if kind == "cylinder"
            else (self.instrument_table, self.table)
        )
        nothing = not shown.model().rowCount()
        had_focus = hidden.hasFocus()
        shown.setVisible(not nothing)
        if had_focus:  # hidden with it, the focus would go to what stands next: an area's tab
            (self.search if nothing else shown).setFocus()
        hidden.hide()
        self.empty.setVisible(nothing)
        never = _NO_CYLINDERS if kind == "cylinder" else _NO_INSTRUMENTS
        self.empty.setText(tr(_NOTHING_FOUND if words else never))
        self.new.setText(tr(say("&New {kind}", kind=kind)))
        self.acts.setVisible(kind == "cylinder")
        if not nothing:
            shown.selectRow(0)
        self._show_worst()

    def _show_worst(self) -> None:
        """The whole sentence of the chosen cylinder's worst flag, under the list."""
        chosen = self._chosen()
        line = next((row for row in self.cylinders.rows if row.id == chosen), None)
        flagged = line is not None and bool(line.flags)
        self.worst.setVisible(flagged)
        if line is not None and line.flags:
            self.worst.show_flag(line.flags[0])

    def _chosen(self) -> str:
        row = self.table.currentIndex().row()
        chosen = self._kind() == "cylinder" and 0 <= row < self.cylinders.rowCount()
        return self.cylinders.row(row).id if chosen else ""

    def _first(self) -> None:
        self._pause.stop()
        self.read()
        if self._kind() == "cylinder" and self.cylinders.rowCount():
            exact = self.search.text().strip().casefold()
            rows = self.cylinders.rows
            line = next((row for row in rows if row.id.casefold() == exact), rows[0])
            self.open_cylinder(line.id)

    def open_cylinder(self, cylinder: str) -> None:
        """Open a cylinder at its history."""
        found = next((line for line in self._desk.cylinders(cylinder) if line.id == cylinder), None)
        if found is None:
            return
        self.page.open(found)
        self.setCurrentIndex(1)
        (self.page.table if self.page.table.isVisible() else self.page.back).setFocus()

    def begin(self, act: str, cylinder: str = "") -> None:
        """Begin a stock act, at a cylinder where one is chosen."""
        if act not in self._acts:
            made = StockAct(self._desk, act)
            made.left.connect(self._leave_act)
            made.recorded.connect(self._recorded)
            self._acts[act], self._shown[act] = made, scrolled(made)
            self.addWidget(self._shown[act])
        self._came_from = self.currentWidget()
        self.setCurrentWidget(self._shown[act])
        self._acts[act].begin(cylinder)

    def begin_stocktake(self) -> None:
        """Begin a stock-take, or go on with the one that is not signed yet."""
        if self.stocktake is None:
            self.stocktake = StockTakePage(self._desk)
            self.stocktake.left.connect(self.show_list)
            self.stocktake.recorded.connect(self._counted)
            self._count_page = scrolled(self.stocktake)
            self.addWidget(self._count_page)
        self.setCurrentWidget(self._count_page)
        self.stocktake.begin()

    def _counted(self, says: str) -> None:
        self.said.emit(says)
        self._notifier.changed.emit()
        self.show_list()

    def act(self, act: str) -> StockAct:
        """The page of an act that has been begun."""
        return self._acts[act]

    def show_list(self) -> None:
        """Go back to the list."""
        self.setCurrentIndex(0)
        self.read()
        shown = self.table if self._kind() == "cylinder" else self.instrument_table
        (shown if shown.isVisible() else self.new).setFocus()

    def show_print(self) -> None:
        """Show the labels of the cylinder opened or chosen, and how it was handed over."""
        opened = self.page.cylinder if self.currentIndex() == 1 else self._chosen()
        print_cylinder(self._desk, opened, [row.id for row in self.cylinders.rows], self)

    def _leave_act(self) -> None:
        if self._came_from is self.widget(1):
            self.open_cylinder(self.page.cylinder)
        else:
            self.show_list()

    def _recorded(self, cylinder: str, says: str) -> None:
        self.said.emit(says)
        self._notifier.changed.emit()
        self.open_cylinder(cylinder)

    def _taken_back(self, entry: Entry) -> None:
        """Show the reversal; where the work can be mended, its text stands open again."""
        self._notifier.changed.emit()
        if act := self._desk.act_to_mend(entry):
            self.begin(act, self.page.cylinder)
        else:
            self.open_cylinder(self.page.cylinder)

    def _edit_cylinder(self, cylinder: str) -> None:
        self._edit("cylinder", cylinder)

    def _edit(self, register: str, row_id: str | None) -> None:
        make_row(self._desk, register, self, self._saved, row_id=row_id)

    def _saved(self, row_id: str) -> None:
        self.said.emit(say("{row_id} saved.", row_id=row_id))
        self._notifier.changed.emit()

    def _look_up(self) -> None:
        chosen = self._chosen()
        row = self._desk.row("cylinder", chosen) if chosen else {}
        self.reference_wanted.emit(row.get("refrigerant", ""))

    def _open_registers(self) -> None:
        RegistersDialog(self._desk, self._notifier, self).open()

    def _changed(self) -> None:
        if not self.isVisible():
            return
        if self.currentIndex() == 1:
            self.open_cylinder(self.page.cylinder)
        elif self.currentIndex() == 0:
            self.read()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Read what is shown: it may have changed meanwhile."""
        super().showEvent(event)
        self._changed()
        if not self.isAncestorOf(self.window().focusWidget() or self.window()):
            self.search.setFocus()
