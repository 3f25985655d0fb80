"""The Records area laid out: period, views, panels, totals."""

from typing import Any

from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk, DueLine, LeakRateLine, UsageRow, UsageTotal
from chargebench.flags import Flag
from chargebench.ledger import Entry
from chargebench.reports import UnaccountedLine
from chargebench.ui import theme
from chargebench.ui.entry_detail import EntryDetail
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.handing import HandOverPanel
from chargebench.ui.language import tr
from chargebench.ui.month_chart import MonthChart
from chargebench.ui.outgoing import ExportPanel, Panel, VerifyPanel, default_folder
from chargebench.ui.period import PeriodBar
from chargebench.ui.print_here import print_button, print_usage
from chargebench.ui.record_columns import (
    due_columns,
    entry_columns,
    flag_columns,
    leak_columns,
    struck,
    total_columns,
    unaccounted_columns,
    usage_columns,
)
from chargebench.ui.rowtable import RowModel, RowView
from chargebench.ui.turning import Folding, Turning, row_of, scrolled

VIEWS = ("Usage", "Flags", "Leak rates", "Due dates", "Entries", "Unaccounted")
USAGE, FLAGS, LEAKS, DUE, ENTRIES, UNACCOUNTED = range(6)
_LETTERS = ("Usa&ge", "Fl&ags", "&Leak rates", "&Due dates", "E&ntries", "&Unaccounted")
EMPTY = (
    (
        "No mass moved in this period. Each gram received, charged, recovered or returned stands "
        "here once it is signed. Choose another period, or sign a step on the Bench."
    ),
    "No flags: nothing here asks for attention.",
    (
        "No equipment yet. Leak rates are worked out for each equipment from what was added to it. "
        "Start a job on the Bench to put the first on the register."
    ),
    (
        "Nothing is due. Repairs, tests and inspections of leaking equipment, calibrations, "
        "requalifications and certificates stand here by their day."
    ),
    "Nothing was signed in this period. Choose another.",
    "Nothing was charged in this period, and nothing was missed.",
)
LOW_EMS = 28
_TOTALS_SHARE = 0.4  # of the page's height, at most


def _in_two(*buttons: QWidget) -> Turning:
    """Buttons in one row, or with large text in two."""
    half = (len(buttons) + 1) // 2
    return Turning((row_of(*buttons[:half]), row_of(*buttons[half:])), fill=1)


class RecordsPage(QWidget):
    """What the Records area is made of, laid out."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.usage: RowModel[UsageRow] = RowModel(usage_columns(desk))
        self.flags: RowModel[Flag] = RowModel(flag_columns())
        self.leaks: RowModel[LeakRateLine] = RowModel(leak_columns(desk))
        self.due: RowModel[DueLine] = RowModel(due_columns(desk))
        self.undone: set[str] = set()  # of the entries read, those that were taken back
        self.entries: RowModel[Entry] = RowModel(entry_columns(desk, self.undone))
        self.entries.struck = lambda entry: entry.id in self.undone
        self.usage.struck = struck
        self.entry = EntryDetail(desk)
        self.unaccounted: RowModel[UnaccountedLine] = RowModel(unaccounted_columns(desk))
        self.totals: RowModel[UsageTotal] = RowModel(total_columns(desk))
        self.period = PeriodBar(desk)
        self.export_panel = ExportPanel(desk)
        self.verify_panel = VerifyPanel(desk)
        self.hand_over_panel = HandOverPanel(desk)
        self.panels: tuple[Panel, ...] = (
            self.export_panel,
            self.verify_panel,
            self.hand_over_panel,
        )
        self._build()

    def _build(self) -> None:
        self._views = QButtonGroup(self)
        views: list[QPushButton] = []
        for place, words in enumerate(_LETTERS):
            button = QPushButton(tr(words))
            button.setProperty("weight", "area")
            button.setCheckable(True)
            self._views.addButton(button, place)
            views.append(button)
        acts = self._acts()
        bar = Turning((_in_two(*views), acts))
        self._models: tuple[RowModel[Any], ...] = (
            self.usage,
            self.flags,
            self.leaks,
            self.due,
            self.entries,
            self.unaccounted,
        )
        self.tables = [
            RowView(self._models[place], name, lines=2 if place == FLAGS else 1)
            for place, name in enumerate(VIEWS)
        ]
        self.totals_table = RowView(self.totals, "Totals of the period", to_press=False)
        self.months = MonthChart(self._desk.units)
        below = Turning((self.totals_table, self.months))
        put_away = {"Period and filter&s": self.period, "A&cts": acts}
        self._folding = Folding({**put_away, "Totals by refrigerant": below})
        self.empty = wrapped(weight="faint")
        self.detail = wrapped()  # of the chosen row, where a cell can not hold it
        self.detail.hide()
        self.says = wrapped()
        self.says.hide()
        self._panels = QWidget()
        self._panels.hide()
        panels = QVBoxLayout(self._panels)
        panels.setContentsMargins(0, 0, 0, 0)
        for panel in self.panels:
            panel.hide()
            panels.addWidget(panel)
        page = QWidget()
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._folding)
        column.addWidget(self.period)
        column.addWidget(bar)
        column.addWidget(self.says)
        column.addWidget(self._panels)
        column.addWidget(self.empty)
        for table in self.tables:
            table.hide()
            column.addWidget(table, 2)
        column.addWidget(self.detail)
        column.addWidget(self.entry)
        column.addStretch(0)
        column.addWidget(below)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(scrolled(page))
        self._views.button(USAGE).setChecked(True)

    def _acts(self) -> QWidget:
        self.take_in = QPushButton(tr("&Take in…"))
        self.back_up = QPushButton(tr("&Back up"))
        self.go_back = QPushButton(tr("Bac&kups…"))
        self.go_back.setToolTip(tr("Go back to a backup, or rescue what can be read"))
        self.verify = QPushButton(tr("&Verify"))
        self.export = QPushButton(tr("E&xport…"))
        self.export.setProperty("weight", "main")
        self.hand_over = QPushButton(tr("Hand &over…"))
        self.print = print_button("P&rint…", "Ctrl+P: the usage log", self, self.show_print)
        return _in_two(
            self.take_in,
            self.hand_over,
            self.back_up,
            self.go_back,
            self.print,
            self.verify,
            self.export,
        )

    @property
    def view(self) -> int:
        """Which of the views is shown."""
        return self._views.checkedId()

    def show_view(self, view: int) -> None:
        """Show one of the views."""
        if any(button.hasFocus() for button in self._views.buttons()):
            self._views.button(view).setFocus()
        self._views.button(view).click()

    @property
    def covered(self) -> bool:
        """Whether a panel takes all of a low page."""
        return not self._panels.isHidden() and self._low

    @property
    def _low(self) -> bool:
        return self.height() < theme.em() * LOW_EMS

    def show_print(self) -> None:
        """Show the usage log of the period as it would be printed."""
        print_usage(self._desk, self.period.period, self.period.filters, self)

    def _show(self, view: int) -> None:
        raise NotImplementedError

    def _fit_totals(self) -> None:
        rows = self.totals.rowCount()
        shown = bool(rows) and not self.covered
        self.totals_table.setVisible(shown)
        most = max(round(self.height() * _TOTALS_SHARE), self.totals_table.height_of(1))
        self.totals_table.setFixedHeight(min(self.totals_table.height_of(max(rows, 1)), most))
        self.months.setVisible(shown and self.view == USAGE)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Totals up to their share of the height."""
        super().resizeEvent(event)
        self._folding.set_low(low=self._low)
        self._show(self.view)

    def show_export(self) -> None:
        """Say what an export will write, and where."""
        self._follow_period()
        self._open_panel(self.export_panel)
        self.export_panel.main.setFocus()

    def _follow_period(self) -> None:
        where = default_folder(self._desk, self._desk.today)
        self.export_panel.offer(self.period.period, self.period.filters, where)

    def show_verify(self) -> None:
        """Verify now."""
        self._open_panel(self.verify_panel)
        self.verify_panel.begin()

    def _open_panel(self, panel: QWidget) -> None:
        for each in self.panels:
            each.setVisible(each is panel)
        self._panels.show()
        theme.mark_main(self.export, main=False)
        self._folding.put_away()
        self._show(self.view)

    def _close_panels(self) -> None:
        self._panels.hide()
        theme.mark_main(self.export, main=True)
        self._show(self.view)
        self._views.button(self.view).setFocus()
