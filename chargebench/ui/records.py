"""Records: usage, flags, leak rates and due dates, entries; export, verify, take in, back up."""

from collections.abc import Sequence
from pathlib import Path
from typing import Any

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QWidget

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.ledger import Entry
from chargebench.ui.errand import Errand
from chargebench.ui.handing import files_to_take, told
from chargebench.ui.language import tr
from chargebench.ui.notifier import Notifier
from chargebench.ui.period import Period
from chargebench.ui.record_columns import (
    duty_words,
    leak_words,
    usage_columns,
)
from chargebench.ui.records_page import (
    DUE,
    EMPTY,
    ENTRIES,
    FLAGS,
    LEAKS,
    UNACCOUNTED,
    USAGE,
    RecordsPage,
)
from chargebench.ui.registerdialog import make_row
from chargebench.ui.rowtable import PAGE
from chargebench.ui.settling import open_decision
from chargebench.ui.working import WORK
from chargebench.words import joined, say


class RecordsArea(RecordsPage):
    """The views under one period, totals always in sight, and what leaves."""

    said = Signal(str)
    job_wanted = Signal(str)
    cylinder_wanted = Signal(str)
    backups_wanted = Signal()

    def __init__(self, desk: Desk, notifier: Notifier, parent: QWidget | None = None) -> None:
        super().__init__(desk, parent)
        self._notifier = notifier
        self._errand: Errand | None = None
        self._working_on = FLAGS
        self._stale = True
        self._connect()

    def _connect(self) -> None:
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(120)
        self._pause.timeout.connect(self.read)
        self.period.changed.connect(self._pause.start)
        self.period.changed.connect(self._follow_period)
        self._views.idClicked.connect(lambda _: self.read())
        self._notifier.changed.connect(self._changed)
        self.tables[USAGE].opened.connect(lambda row: self._want_job(self.usage.row(row).job))
        self.tables[ENTRIES].opened.connect(lambda row: self._want_job(self.entries.row(row).job))
        self.tables[FLAGS].opened.connect(lambda row: self._follow(self.flags.row(row).about))
        self.tables[LEAKS].opened.connect(
            lambda row: self._follow(f"equipment:{self.leaks.row(row).equipment_id}")
        )
        self.tables[DUE].opened.connect(lambda row: self._follow(self.due.row(row).about))
        for view in (LEAKS, DUE):
            chosen = self.tables[view].selectionModel().currentRowChanged
            chosen.connect(lambda *_: self._explain())
        self.export.clicked.connect(lambda _: self.show_export())
        self.verify.clicked.connect(lambda _: self.show_verify())
        self.take_in.clicked.connect(lambda _: self.take(*files_to_take(self)))
        self.hand_over.clicked.connect(lambda _: self.show_hand_over())
        self.back_up.clicked.connect(lambda _: self.make_backup())
        self.go_back.clicked.connect(lambda _: self.backups_wanted.emit())
        self.tables[ENTRIES].selectionModel().currentRowChanged.connect(
            lambda *_: self._show_entry()
        )
        self.entry.listen(self)
        self.entry.wanted.connect(self._go_to)
        self.entry.reversed.connect(self._taken_back)
        self.entry.said.connect(self.said)
        for panel in self.panels:
            panel.left.connect(self._close_panels)

    def read(self) -> None:
        """Read the view shown, and the totals."""
        self._stale = False
        self._pause.stop()
        view, period, filters = self.view, self.period.period, self.period.filters
        self.period.narrow(period=view in (USAGE, ENTRIES, UNACCOUNTED), rest=view == USAGE)
        desk = self._desk
        if view == USAGE:
            self.usage.columns = tuple(usage_columns(desk))
            self.usage.read(
                lambda after: desk.usage(
                    period.since,
                    period.until,
                    filters,
                    before=None if after is None else after.key,
                    limit=PAGE,
                )
            )
        elif view == ENTRIES:
            self.undone.clear()
            self.entries.read(lambda after: self._entries(period, after))
        else:
            self._work_out(view)
        self.totals.show_rows(desk.usage_totals(period.since, period.until, filters))
        self.months.show_months(desk.usage_by_month(period.since, period.until, filters))
        self._show(view)

    def _entries(self, period: Period, after: Entry | None) -> list[Entry]:
        """The next page of entries; those of it that were taken back are struck."""
        page = list(
            self._desk.entries(
                period.since,
                period.until,
                after=None if after is None else after.id,
                limit=PAGE,
                newest_first=True,
            )
        )
        self.undone |= self._desk.reversed_among([entry.id for entry in page])
        return page

    def _show_entry(self) -> None:
        row = self.tables[ENTRIES].currentIndex().row()
        chosen = self.view == ENTRIES and 0 <= row < self.entries.rowCount()
        self.entry.show_entry(self.entries.row(row) if chosen else None)

    def _go_to(self, entry: str) -> None:
        """Choose another entry of the list; one that corrects may be of another period."""
        row = self.entries.find(lambda each: each.id == entry)
        if row < 0:
            number = self._desk.entry(entry).number
            self._say(
                say(
                    "Entry {number} is not of this period. Choose a longer one to go to it.",
                    number=number,
                )
            )
            return
        self.tables[ENTRIES].selectRow(row)
        self.tables[ENTRIES].setFocus()

    def _taken_back(self, entry: Entry) -> None:
        self._notifier.changed.emit()
        self._go_to(entry.id)

    def _work_out(self, view: int) -> None:
        """Flags, leak rates and due dates look at every job: on a thread, whatever is shown."""
        if self._errand is not None:
            self._stale = True  # read again when it is done
            return
        period = self.period.period
        work = WORK.get(view, lambda desk, _: desk.unaccounted(period.since, period.until))
        self._errand, self._working_on = Errand(self._desk, work), view
        self._errand.partly.connect(self._worked_out)
        self._errand.done.connect(self._worked_out)
        self._errand.refused.connect(self._say)
        self._errand.finished.connect(self._over)
        self._errand.begin()

    def _worked_out(self, rows: Sequence[Any]) -> None:
        view = self._working_on
        if [*rows] != [*self._models[view].rows]:  # else what is chosen there stays chosen
            self._models[view].show_rows(rows)
        if view == self.view:
            self._show(view)

    def _over(self) -> None:
        self._errand = None
        if self._stale and self.isVisible():
            self.read()

    @property
    def working(self) -> bool:
        """Whether flags, leak rates or due dates are being worked out."""
        return self._errand is not None

    def _show(self, view: int) -> None:
        nothing = not self._models[view].rowCount()
        working = nothing and self._errand is not None
        for place, table in enumerate(self.tables):
            table.setVisible(place == view and not nothing and not self.covered)
        self.empty.setText(tr("Working out …" if working else EMPTY[view]))
        self.empty.setVisible(nothing)
        if not nothing and not self.tables[view].currentIndex().isValid():
            self.tables[view].selectRow(0)
        if view == FLAGS and not nothing:
            self.tables[FLAGS].resizeRowsToContents()
        self._show_entry()
        self._fit_totals()
        self._explain()

    def _explain(self) -> None:
        """All there is to say of the chosen row: more than its cells hold."""
        row = self.tables[self.view].currentIndex().row()
        shown = self.view in (LEAKS, DUE) and 0 <= row < self._models[self.view].rowCount()
        self.detail.setVisible(shown)
        if shown and self.view == LEAKS:
            self.detail.setText(tr(leak_words(self.leaks.row(row), self._desk)))
        elif shown:
            self.detail.setText(tr(duty_words(self.due.row(row))))

    def make_backup(self) -> None:
        """Keep a copy of the shop file."""
        try:
            kept = self._desk.backup()
        except ChargebenchError as refusal:
            self._say(str(refusal))
            return
        self._say(
            say("Backed up: {kept}.", kept=kept) if kept else "The newest backup is still the same."
        )

    def show_hand_over(self) -> None:
        """Say what a chain file will hold, and where it goes."""
        self.hand_over_panel.offer()
        self._open_panel(self.hand_over_panel)
        self.hand_over_panel.main.setFocus()

    def take(self, *paths: Path) -> None:
        """Take in job files and chain files: all of each, or nothing."""
        said: list[str] = []
        try:
            with told(self, "Taking in …") as progress:
                for path, words in self._desk.take_in_files(paths, progress):
                    said.append(say("{path}: {words}", path=path.name, words=words))
        except ChargebenchError as refusal:
            said.append(str(refusal))
        if said:
            self._say(joined("\n", said))
            self._notifier.changed.emit()

    def _say(self, text: str) -> None:
        self.says.setText(tr(text))
        self.says.show()
        self.said.emit(text)

    def _want_job(self, job: str | None) -> None:
        if job:
            self.job_wanted.emit(job)

    def _follow(self, about: str) -> None:
        """Go to what a flag is about: a job, a cylinder, an equipment."""
        kind, _, rest = about.partition(":")
        name = rest.partition(",")[0].strip()
        if kind == "job":
            found = next((job for job in self._desk.jobs(name) if job.number == name), None)
            self._want_job(found.id if found else None)
        elif kind == "cylinder":
            self.cylinder_wanted.emit(name)
        elif kind in ("conflict", "twice"):
            says = self.flags.row(self.tables[FLAGS].currentIndex().row()).says
            open_decision(self._desk, about, says, self, self._notifier.changed.emit)
        elif kind in ("equipment", "instrument", "person", "shop"):
            make_row(self._desk, kind, self, lambda _: self._notifier.changed.emit(), row_id=name)

    def _changed(self) -> None:
        self._stale = True
        if self.isVisible():
            self.period.read_registers()
            self.read()

    def finish(self) -> None:
        """Stop what works on a thread or waits to read, before the window goes."""
        self._pause.stop()
        for panel in self.panels:
            panel.finish()
        if self._errand is not None:
            self._errand.finish()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Read, if something was recorded meanwhile."""
        super().showEvent(event)
        if self._stale:
            self._changed()
        if not self.isAncestorOf(self.window().focusWidget() or self.window()):
            self._views.button(self.view).setFocus()
