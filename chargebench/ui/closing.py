"""Closing a job and opening it again; asks in place for the reasons that takes."""

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from chargebench.desk import Act, Desk
from chargebench.desk.views import StepView
from chargebench.errors import ChargebenchError
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.signing import ReasonLine
from chargebench.ui.steppane import AFTER_CLOSING
from chargebench.words import joined, say


class Closing(QWidget):
    """Empty until there is a reason to ask for, or a refusal to say."""

    recorded = Signal(str)

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self.reason = ReasonLine()
        self.says = wrapped(weight="refusal")
        self.says.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.says)
        column.addWidget(self.reason)

    def leave(self) -> None:
        """Ask and say nothing any more."""
        self.says.hide()
        self.reason.leave()

    def close_job(self, job: str) -> None:
        """Close; steps nothing was typed in are set aside with one reason."""
        if self._may_not():
            return
        steps = self._desk.job(job).steps
        waiting = [s for s in steps if s.state == "open" and s.key != AFTER_CLOSING]
        untouched = [step for step in waiting if not self._desk.typed(job, step.key)]
        if waiting and len(untouched) == len(waiting):
            titles = joined(", ", (step.title for step in waiting))
            self.reason.ask(
                say("Nothing is typed in: {titles}. Why are they not needed?", titles=titles),
                "Set aside and close",
                lambda why: self._act(
                    lambda: self._aside_and_close(job, untouched, why), "Job closed."
                ),
            )
            return
        self._act(lambda: self._desk.close_job(job), "Job closed.")

    def _aside_and_close(self, job: str, untouched: list[StepView], reason: str) -> None:
        for step in untouched:
            self._desk.not_needed(job, step.key, reason)
        self._desk.close_job(job)

    def reopen(self, job: str) -> None:
        """Open a closed job again, with a reason."""
        if self._may_not():
            return
        self.reason.ask(
            "Why is this job opened again?",
            "Reopen",
            lambda why: self._act(lambda: self._desk.reopen(job, why), "Job open again."),
        )

    def _may_not(self) -> bool:
        """Say who may, before anything is asked, if who works here may not."""
        self.says.setText(tr(self._desk.refusal(Act.CLOSE)))
        self.says.setVisible(bool(self.says.text()))
        return bool(self.says.text())

    def _act(self, act: Callable[[], object], said: str) -> None:
        try:
            act()
        except ChargebenchError as refusal:
            self.says.setText(tr(str(refusal)))
            self.says.show()
            return
        self.leave()
        self.recorded.emit(said)
