"""Bench: the list of jobs, a new one, and the job that is open."""

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk
from chargebench.desk.views import JobLine
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.job import JobPage
from chargebench.ui.joblist import job_columns
from chargebench.ui.language import tr
from chargebench.ui.newjob import NewJob
from chargebench.ui.notifier import Notifier
from chargebench.ui.registers import RegistersDialog
from chargebench.ui.rowtable import RowModel, RowView

_STATES: tuple[tuple[str, str | None], ...] = (
    ("open jobs", "open"),
    ("closed jobs", "closed"),
    ("all jobs", None),
)
_SEARCH_MS = 120
JOBS_A_PAGE = 40  # each is worked out to say where it stands
NARROW_EMS, LOW_EMS = 48, 30
_NOTHING_YET = (
    "No jobs yet. A job is one visit or repair on one equipment, from the nameplate to the label. "
    "Press New job (Ctrl+N) to start the first."
)
_NOTHING_FOUND = "No job here fits. Look for another word, or among closed jobs."


class BenchArea(QStackedWidget):
    """Jobs."""

    said = Signal(str)

    def __init__(self, desk: Desk, notifier: Notifier, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._notifier = notifier
        self.list: RowModel[JobLine] = RowModel(job_columns(narrow=False), JOBS_A_PAGE)
        self._narrow = False
        self._page: JobPage | None = None
        self._pause = QTimer(self)
        self._pause.setSingleShot(True)
        self._pause.setInterval(_SEARCH_MS)
        self._pause.timeout.connect(self.read)
        self._build()
        self.addWidget(self._list_page)
        notifier.changed.connect(self._changed)

    def _build(self) -> None:
        self._list_page = QWidget()
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("job, equipment, site, refrigerant"))
        self.search.setAccessibleName(tr("Find a job"))
        label = QLabel(tr("&Find"))
        label.setBuddy(self.search)
        self.state = QComboBox()
        self.state.addItems([tr(text) for text, _ in _STATES])
        self.state.setAccessibleName(tr("Which jobs"))
        self.registers = QPushButton(tr("Re&gisters"))
        self.new = QPushButton(tr("&New job"))
        self.new.setProperty("weight", "main")
        self.new.setToolTip(tr("Ctrl+N"))
        self.new_job = NewJob(self._desk)
        self.new_job.hide()
        self.empty = wrapped(weight="faint")
        self.table = RowView(self.list, "Jobs", lines=2)
        top = QHBoxLayout()
        top.addWidget(label)
        top.addWidget(self.search, 1)
        for each in (self.state, self.registers, self.new):
            top.addWidget(each)
        column = QVBoxLayout(self._list_page)
        edge = theme.em() // 2
        column.setContentsMargins(edge, edge, edge, 0)
        column.addLayout(top)
        column.addWidget(self.new_job)
        column.addWidget(self.empty)
        column.addWidget(self.table, 1)
        self.search.textChanged.connect(lambda _: self._pause.start())
        self.search.returnPressed.connect(self._first)
        self.state.currentIndexChanged.connect(lambda _: self.read())
        self.table.opened.connect(self.open_row)
        self.new.clicked.connect(lambda _: self.ask_new())
        self.registers.clicked.connect(lambda _: self._open_registers())
        self.new_job.opened.connect(self._job_made)
        self.new_job.put_away.connect(self._put_away)
        shortcut = QShortcut(QKeySequence("Ctrl+N"), self._list_page)
        shortcut.activated.connect(self.ask_new)
        QShortcut(QKeySequence("Ctrl+F"), self._list_page).activated.connect(self.search.setFocus)

    def read(self) -> None:
        """Read the list again."""
        state = _STATES[self.state.currentIndex()][1]
        find = self.search.text().strip()
        self.list.read(
            lambda after: self._desk.jobs(
                find, state, limit=JOBS_A_PAGE, before=None if after is None else after.key
            )
        )
        nothing = not self.list.rowCount()
        self.table.setVisible(not nothing)
        self.empty.setVisible(nothing)
        looked_for = bool(find) or state == "closed"
        self.empty.setText(tr(_NOTHING_FOUND if looked_for else _NOTHING_YET))

    def _fold(self) -> None:
        narrow = self.width() < theme.em() * NARROW_EMS
        if narrow != self._narrow:
            self._narrow = narrow
            self.table.lines = 3 if narrow else 2
            self.list.show_columns(job_columns(narrow=narrow))

    def open_row(self, row: int) -> None:
        """Open the job of a row."""
        self.open_job(self.list.row(row).id)

    def open_job(self, job: str, step: str = "") -> None:
        """Open a job, at a step or at the first open one."""
        if self._page is None:
            self._page = JobPage(self._desk, self._notifier)
            self._page.left.connect(self.show_list)
            self._page.said.connect(self.said)
            self.addWidget(self._page)
        self.setCurrentWidget(self._page)
        self._page.open(job, step)

    def job_page(self) -> JobPage:
        """The page of the job that is open."""
        assert self._page is not None
        return self._page

    def shown_job(self) -> tuple[str, str] | None:
        """Job and step being looked at."""
        if self._page is None or self.currentWidget() is not self._page:
            return None
        return self._page.where()

    def show_list(self) -> None:
        """Go back to the list."""
        self.setCurrentWidget(self._list_page)
        self.read()
        (self.table if self.list.rowCount() else self.new).setFocus()
        if self.list.rowCount():
            self.table.selectRow(0)

    def flush(self) -> None:
        """Keep what is typed, now."""
        if self._page is not None:
            self._page.flush()

    def _first(self) -> None:
        self._pause.stop()
        self.read()
        if self.list.rowCount():
            self.open_row(0)

    def _job_made(self, job: str) -> None:
        theme.mark_main(self.new, main=True)
        self._notifier.changed.emit()
        self.open_job(job)

    def ask_new(self) -> None:
        """Unfold the questions of a new job; on a low page the list makes room."""
        self.new_job.ask()
        theme.mark_main(self.new, main=False)
        if self.height() < theme.em() * LOW_EMS:
            self.table.hide()

    def _put_away(self) -> None:
        self.new_job.hide()
        theme.mark_main(self.new, main=True)
        self.read()
        self.new.setFocus()

    def _open_registers(self) -> None:
        RegistersDialog(self._desk, self._notifier, self).open()

    def _changed(self) -> None:
        if self.currentWidget() is self._list_page and self.isVisible():
            self.read()

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Read when shown."""
        super().showEvent(event)
        if self.currentWidget() is self._list_page:
            self.read()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Columns by the width there is."""
        super().resizeEvent(event)
        self._fold()
