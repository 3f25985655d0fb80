"""New job: pick the equipment or make it, say why, start."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.steps import Asks, Field, Form, answer
from chargebench.ui import theme
from chargebench.ui.fieldrow import FieldRow, wrapped
from chargebench.ui.language import tr
from chargebench.ui.pick import PickEdit
from chargebench.ui.registerdialog import make_row

NEW_JOB = Form(
    "new_job",
    "New job",
    "One visit or repair on one equipment.",
    (
        Field("equipment", "Equipment", Asks.ROW, register="equipment", required=True),
        Field("reason", "Reason of the visit", example="not holding temperature"),
    ),
)


class NewJob(QFrame):
    """Unfolds above the list of jobs."""

    opened = Signal(str)
    put_away = Signal()

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self._desk = desk
        equipment, reason = NEW_JOB.fields
        self.equipment = FieldRow(equipment, desk, label="&Equipment")
        self.reason = FieldRow(reason, desk, label="&Reason of the visit")
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self.start = QPushButton(tr("&Start job"))
        self.start.setProperty("weight", "main")
        self.make = QPushButton(tr("&Make equipment"))
        self.back = QPushButton(tr("Back"))
        acts = QHBoxLayout()
        acts.addWidget(self.make)
        acts.addStretch()
        acts.addWidget(self.back)
        acts.addWidget(self.start)
        column = QVBoxLayout(self)
        column.setSpacing(theme.em() // 3)
        for each in (self.equipment, self.reason, self.says):
            column.addWidget(each)
        column.addLayout(acts)
        for row in (self.equipment, self.reason):
            row.edited.connect(self._tell)
        self.equipment.wants_new.connect(lambda _: self._make())
        if isinstance(self.equipment.editor, PickEdit):
            self.equipment.editor.taken.connect(lambda _: self.reason.editor.setFocus())
        self.make.clicked.connect(lambda _: self._make())
        self.start.clicked.connect(lambda _: self.begin())
        self.back.clicked.connect(lambda _: self.put_away.emit())
        self._tell()

    def ask(self) -> None:
        """Begin afresh."""
        self.says.hide()
        self.show()
        self.equipment.editor.setFocus()
        if isinstance(self.equipment.editor, PickEdit):
            self.equipment.editor.offer(self._desk.equipment_lately())

    def begin(self) -> None:
        """Open the job."""
        if isinstance(self.equipment.editor, PickEdit):
            self.equipment.editor.settle()
        try:
            job = self._desk.open_job(self.equipment.text().strip(), self.reason.text().strip())
        except ChargebenchError as refusal:
            self.says.setText(tr(str(refusal)))
            self.says.show()
            self.equipment.editor.setFocus()
            return
        for row in (self.equipment, self.reason):
            row.put("")
        self.hide()
        self.opened.emit(job)

    def _tell(self) -> None:
        typed = {"equipment": self.equipment.text(), "reason": self.reason.text()}
        answers = answer(NEW_JOB, typed)
        for key, row in (("equipment", self.equipment), ("reason", self.reason)):
            row.tell(key, answers, answers.refusals)

    def _make(self) -> None:
        make_row(self._desk, "equipment", self, self._made)

    def _made(self, equipment: str) -> None:
        if isinstance(self.equipment.editor, PickEdit):
            self.equipment.editor.reread()
            self.equipment.editor.type_over(equipment)
        self.reason.editor.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Enter goes on, Esc goes back."""
        if event.key() == Qt.Key.Key_Escape:
            self.put_away.emit()
            return
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.modifiers():
            if self.reason.editor.hasFocus():
                self.begin()
            else:
                self.focusNextChild()
            return
        super().keyPressEvent(event)
