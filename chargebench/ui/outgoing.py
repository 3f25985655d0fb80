"""Panels of the Records area that do something: export, verify, and saying how it went."""

from collections.abc import Callable
from datetime import date, datetime
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QFileDialog,
    QFrame,
    QHBoxLayout,
    QLineEdit,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk, Exported, Filters
from chargebench.desk.export import CALENDAR, CHECKLIST, JOBS, REPORTS, TABLES, WORKBOOK
from chargebench.desk.records import EVERYTHING
from chargebench.ledger import Problem, Verification
from chargebench.ui.errand import Errand
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.period import Period
from chargebench.ui.stock_words import moment
from chargebench.words import joined, say


class Panel(QFrame):
    """A panel with words, a main act, progress, cancel and close."""

    left = Signal()

    def __init__(
        self, desk: Desk, main: str, parent: QWidget | None = None, *, acts_first: bool = False
    ) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self._desk = desk
        self._errand: Errand | None = None
        self.says = wrapped()
        self.says.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        self.bar = QProgressBar()
        self.bar.setAccessibleName(tr("Progress"))
        self.bar.hide()
        self.main = QPushButton(tr(main))
        self.main.setProperty("weight", "main")
        self.cancel = QPushButton(tr("Can&cel"))
        self.cancel.hide()
        self.close_button = QPushButton(tr("Close"))
        self.close_button.setToolTip(tr("Esc"))
        self.main.clicked.connect(lambda _: self.begin())
        self.cancel.clicked.connect(lambda _: self._cancel())
        self.close_button.clicked.connect(lambda _: self.left.emit())
        self._foot = QHBoxLayout()
        self._foot.addWidget(self.bar, 1)
        self._foot.addStretch(0)
        for button in (self.close_button, self.cancel, self.main):
            self._foot.addWidget(button)
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.says)
        self._column.addWidget(self.refusal)
        self._column.insertLayout(0 if acts_first else 2, self._foot)

    def begin(self) -> None:
        """Do it."""
        raise NotImplementedError

    @property
    def working(self) -> bool:
        """Whether the work is going on."""
        return self._errand is not None

    def _start(self, work: Callable[[Desk, Errand], Any], done: Callable[[Any], None]) -> None:
        if self._errand is not None:
            return
        errand = Errand(self._desk, work)
        self._errand = errand
        errand.progressed.connect(self._progressed)
        errand.done.connect(done)
        errand.refused.connect(self._refuse)
        errand.finished.connect(self._over)
        self.refusal.hide()
        self.bar.setRange(0, 0)
        for part, shown in ((self.bar, True), (self.cancel, True), (self.main, False)):
            part.setVisible(shown)
        self.cancel.setEnabled(True)
        self.cancel.setFocus()
        errand.begin()

    def _progressed(self, what: str, so_far: int, of: int) -> None:
        self.bar.setRange(0, of)
        self.bar.setValue(so_far)
        self.bar.setFormat(f"{what} %p %" if of else what)

    def _cancel(self) -> None:
        if self._errand is not None:
            self._errand.cancel()
            self.cancel.setEnabled(False)

    def _over(self) -> None:
        self._errand = None
        for part, shown in ((self.bar, False), (self.cancel, False), (self.main, True)):
            part.setVisible(shown)
        self.main.setFocus()

    def _refuse(self, says: str) -> None:
        self.refusal.setText(tr(says))
        self.refusal.show()

    def finish(self) -> None:
        """Stop the work before the window goes."""
        if self._errand is not None:
            self._errand.finish()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc cancels work that goes on, or closes the panel."""
        if event.key() != Qt.Key.Key_Escape:
            super().keyPressEvent(event)
        elif self.working:
            self._cancel()
        else:
            self.left.emit()


class ExportPanel(Panel):
    """Says what will be written and where, writes it, says what was written."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "&Write it", parent)
        self._period, self._filters = Period(), EVERYTHING
        self.folder = QLineEdit()
        self.folder.setAccessibleName(tr("Folder to write into"))
        self.choose = QPushButton(tr("C&hoose folder…"))
        row = QHBoxLayout()
        row.addWidget(wrapped("Into the folder"))
        row.addWidget(self.folder, 1)
        row.addWidget(self.choose)
        self._column.insertLayout(0, row)
        self.sign = QCheckBox(tr("Sign with this bench's ke&y, so that a change shows elsewhere"))
        self._column.insertWidget(2, self.sign)
        self.choose.clicked.connect(lambda _: self._choose())
        self.folder.textChanged.connect(lambda _: self._tell())

    def offer(self, period: Period, filters: Filters, folder: Path) -> None:
        """Offer to write a period's records, narrowed to what the filters choose."""
        self._period, self._filters = period, filters
        if not self.folder.text():
            self.folder.setText(str(folder))
        self._tell()

    @property
    def _chosen(self) -> str:
        """What the records are narrowed to, in words; empty where they are not."""
        chosen, who = self._filters, self._filters.by or ""
        named = (
            ("equipment", chosen.equipment),
            ("refrigerant", chosen.refrigerant),
            ("person", self._desk.label("person", who) if who else ""),
        )
        return joined(", ", (f"{what} {value}" for what, value in named if value))

    def _path(self) -> Path:
        return Path(self.folder.text().strip()).expanduser()

    def _tell(self) -> None:
        narrowed = say(", only {chosen}", chosen=self._chosen) if self._chosen else ""
        says = say(
            "Will be written, for {words}{narrowed}: {workbook} (every job, entry, "
            "transfer and test with its totals), {tables} (the same as CSV and SQLite), "
            "{checklist} (the flammable-refrigerant handling lists), {reports} and {jobs} (a "
            "report and a job file for each job), {calendar} (what is due, for a calendar), and a "
            "manifest with the SHA-256 of each and the head of the chain.",
            words=self._period.words,
            narrowed=narrowed,
            workbook=WORKBOOK,
            checklist=CHECKLIST,
            tables=TABLES,
            calendar=CALENDAR,
            reports=REPORTS,
            jobs=JOBS,
        )
        there = [name for name in (WORKBOOK, CHECKLIST, CALENDAR) if (self._path() / name).exists()]
        if self.folder.text().strip() and there:
            says += say(" Already there and replaced: {there}.", there=", ".join(there))
        self.says.setText(tr(says))
        self.main.setEnabled(bool(self.folder.text().strip()))

    def _choose(self) -> None:
        chosen = QFileDialog.getExistingDirectory(
            self, tr("Folder to write into"), self.folder.text()
        )
        if chosen:
            self.folder.setText(chosen)

    def begin(self) -> None:
        """Write."""
        folder, period, filters = self._path(), self._period, self._filters
        signed = self.sign.isChecked()
        self.folder.setEnabled(False)
        self._desk.keep_head("export")  # here, for the thread that writes only reads
        self._start(
            lambda desk, errand: desk.export(
                folder,
                period.since,
                period.until,
                filters,
                errand.progress,
                errand.cancelled,
                signed=signed,
            ),
            self._written,
        )

    def _written(self, exported: Exported) -> None:
        inside = [path.relative_to(exported.folder) for path in exported.files]
        names = dict.fromkeys(path.parts[0] for path in inside)  # a folder stands for its files
        self.says.setText(
            tr(
                say(
                    "Written into {folder}: {names}; {count} files.",
                    folder=exported.folder,
                    names=joined(", ", names),
                    count=len(inside),
                )
            )
        )

    def _over(self) -> None:
        super()._over()
        self.folder.setEnabled(True)


class VerifyPanel(Panel):
    """Says in sentences what was checked, when, what disagreed and what a chain can not prove."""

    done = Signal(object)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(desk, "Verif&y again", parent, acts_first=True)  # its words are long
        self.says.setText(tr("Every entry is recomputed from what was signed, and compared."))

    def begin(self) -> None:
        """Verify."""
        self._start(
            lambda desk, errand: desk.verify(
                lambda so_far, of: errand.progress("entries checked", so_far, of)
            ),
            self._verified,
        )
        # A verification that stops half-way has checked nothing; it is not offered.
        self.cancel.hide()

    def _verified(self, found: Verification) -> None:
        when = moment(datetime.now().astimezone())
        if found.ok:
            head = say("{when}: nothing disagrees.", when=when)
        else:
            head = say(
                "{when}: {count} disagree. Keep this file as it is and a backup.",
                when=when,
                count=len(found.problems),
            )
        problems = joined("\n", (f"✗ {_problem(each)}" for each in found.problems))
        checked = joined(
            "\n", (say("✓ {sentence}", sentence=sentence) for sentence in found.checked)
        )
        limits = joined("\n", (say("– {sentence}", sentence=sentence) for sentence in found.limits))
        parts = (head, problems, checked, "What a chain can not prove:", limits)
        self.says.setText(tr(joined("\n", (part for part in parts if part))))
        self.done.emit(found)


def _problem(problem: Problem) -> str:
    return (
        problem.what
        if problem.entry is None
        else say("entry {entry}: {what}", entry=problem.entry, what=problem.what)
    )


def default_folder(desk: Desk, today: date) -> Path:
    """Where an export goes unless another folder is chosen: beside the shop file."""
    return desk.folder / f"export {today.isoformat()}"
