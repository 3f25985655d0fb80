"""Under the form: what signing will record, and the acts on a step: sign, not needed, reverse."""

from collections.abc import Callable, Sequence
from datetime import datetime

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence, QShortcut
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench.desk.views import StepView
from chargebench.steps import Asks, Field, Form, answer
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fields import LineEdit, WhenEdit
from chargebench.ui.language import tr
from chargebench.ui.wording import at
from chargebench.words import joined, say

_DONE_AT = Form("done", "Done", "", (Field("at", "Done at", Asks.WHEN),))


class ReasonLine(QWidget):
    """Asks for a reason in place; nothing covers what is being read."""

    asking = Signal(bool)  # whether it asks now; its act is the page's main one meanwhile

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._act: Callable[[str], None] | None = None
        self.asks = wrapped()
        self.reason = LineEdit()
        self.record = QPushButton(tr("Record"))
        self.record.setProperty("weight", "main")
        self.back = QPushButton(tr("Back"))
        line = QHBoxLayout()
        line.addWidget(self.reason, 1)
        line.addWidget(self.back)
        line.addWidget(self.record)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.asks)
        column.addLayout(line)
        self.record.clicked.connect(lambda _: self._done())
        self.reason.returnPressed.connect(self._done)
        self.back.clicked.connect(lambda _: self.leave())
        self.hide()

    def ask(self, question: str, verb: str, act: Callable[[str], None]) -> None:
        """Ask; `act` is called with the reason."""
        self._act = act
        self.asks.setText(tr(question))
        self.reason.setAccessibleName(tr(question))
        self.record.setText(tr(verb))
        self.reason.clear()
        self.show()
        self.asking.emit(True)  # noqa: FBT003 - a signal's signature
        self.reason.setFocus()

    def leave(self) -> None:
        """Go back without recording."""
        self._act = None
        self.hide()
        self.asking.emit(False)  # noqa: FBT003 - a signal's signature

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Esc goes back."""
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
            return
        super().keyPressEvent(event)

    def _done(self) -> None:
        if self._act is not None:
            self._act(self.reason.text())


class SignStrip(QFrame):
    """The acts on the current step."""

    sign = Signal(object)  # datetime, or None for now
    set_aside = Signal(str)
    reverse = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self._step: StepView | None = None
        self.will = wrapped()
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self.done_at = WhenEdit("now", moment=True)
        self.done_at.setPlaceholderText(tr("done now"))
        self.done_at.setMinimumWidth(theme.em() * 6)
        self.done_at.setAccessibleName(tr("Done at"))
        self.done_at.setToolTip(tr("When it was done, if not now: 2026-11-25 14:30"))
        self.done_at.setMaximumWidth(theme.em() * 10)
        self.aside = QPushButton(tr("Not needed"))
        self.aside.setToolTip(tr("Ctrl+Shift+N"))
        self.display = QPushButton(tr("Bench display"))
        self.display.setToolTip(tr("F11: figures readable from three metres"))
        self.display.hide()
        self.sign_button = QPushButton(tr("Sign"))
        self.sign_button.setProperty("weight", "main")
        self.sign_button.setToolTip(tr("Ctrl+Return"))
        self.reverse_button = QPushButton(tr("Reverse"))
        self.reverse_button.setToolTip(tr("Ctrl+R: take it back by a further entry, with a reason"))
        self.before = wrapped(weight="faint")
        self.before.setTextFormat(Qt.TextFormat.RichText)
        self.before.hide()
        self.reason = ReasonLine()
        self.reason.asking.connect(lambda asks: theme.mark_main(self.sign_button, main=not asks))
        self._acts = QWidget()
        line = QHBoxLayout(self._acts)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self.done_at, 1)
        line.addStretch(1)
        for button in (self.display, self.aside, self.sign_button):
            line.addWidget(button)
        top = QHBoxLayout()
        top.addWidget(self.will, 1)
        top.addWidget(self.reverse_button)
        column = QVBoxLayout(self)
        edge = theme.em() // 3
        column.setContentsMargins(edge, edge, edge, edge)
        column.setSpacing(edge)
        column.addLayout(top)
        for each in (self.before, self.says, self._acts, self.reason):
            column.addWidget(each)
        self._keys()
        self.sign_button.clicked.connect(lambda _: self._on_sign())
        self.aside.clicked.connect(lambda _: self._on_aside())
        self.reverse_button.clicked.connect(lambda _: self._on_reverse())

    def _keys(self) -> None:
        # A button's own shortcut presses it with a pause; these act at once.
        for key, button in (
            ("Ctrl+Return", self.sign_button),
            ("Ctrl+Enter", self.sign_button),
            ("Ctrl+Shift+N", self.aside),
            ("F11", self.display),
            ("Ctrl+R", self.reverse_button),
        ):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.activated.connect(lambda b=button: b.click() if b.isVisible() else None)

    def show_taken_back(self, lines: Sequence[str]) -> None:
        """Show what was signed here before and taken back, as rich text."""
        self.before.setText(tr(joined("<br>", lines)))
        self.before.setVisible(bool(lines))

    def show_step(self, step: StepView, *, job_open: bool, may_not: str = "") -> None:
        """Offer what can be done with a step as it stands; `may_not` says why nothing can be."""
        self._step = step
        self.say("")
        self.reason.leave()
        self.done_at.clear()
        is_open = step.state == "open"
        for each in (self.done_at, self.aside, self.sign_button):
            each.setVisible(is_open and job_open)
        self._acts.setVisible(is_open and job_open)
        self.reverse_button.setVisible(not is_open and job_open)
        self.reverse_button.setText(tr("Reverse" if step.state == "signed" else "Take back"))
        if not is_open:
            when = at(step.at) if step.at else ""
            word = (
                "Signed"
                if step.state == "signed"
                else say("Not needed ({reason}); signed", reason=step.reason)
            )
            judged = say(" Judged by {rule_set}.", rule_set=step.rule_set) if step.rule_set else ""
            self.will.setText(
                tr(
                    say(
                        "{word} by {by}, {when}, entry {step_number}.{judged}",
                        word=word,
                        by=step.by,
                        when=when,
                        step_number=step.number,
                        judged=judged,
                    )
                )
            )
        elif may_not:
            self.will.setText(tr(may_not))
        elif not job_open:
            self.will.setText(tr("The job is closed; open it again with a reason to record here."))

    def will_record(self, text: str) -> None:
        """Say in a line what signing records."""
        if text != self.will.text():
            self.will.setText(tr(text))

    def say(self, text: str) -> None:
        """Say why it was not recorded."""
        self.says.setText(tr(text))
        self.says.setVisible(bool(text))

    def _on_sign(self) -> None:
        answers = answer(_DONE_AT, {"at": self.done_at.text()})
        if answers.refusals:
            self.say(answers.refusals["at"])
            self.done_at.setFocus()
            return
        when = answers.values.get("at")
        assert when is None or isinstance(when, datetime)
        self.sign.emit(when)

    def _on_aside(self) -> None:
        assert self._step is not None
        self.reason.ask(
            say("Why is {step} not needed?", step=self._step.title),
            "Record",
            lambda why: self.set_aside.emit(why),
        )

    def _on_reverse(self) -> None:
        assert self._step is not None
        self.reason.ask(
            say(
                "Why is entry {step_number} taken back? It stays in the records, and a "
                "further entry reverses it; the text opens again to be mended.",
                step_number=self._step.number,
            ),
            "Record reversal",
            lambda why: self.reverse.emit(why),
        )
