"""One step of a job: its form, what it comes to while one types, and the acts on it."""

from collections.abc import Callable, Mapping, Sequence
from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QVBoxLayout, QWidget

from chargebench.desk import Act, Desk
from chargebench.desk.views import JobView, Look, StepView, TickLine
from chargebench.errors import ChargebenchError, StepRefused
from chargebench.steps import STEPS, Asks
from chargebench.steps.taken import words
from chargebench.ui.bench_display import BenchDisplay
from chargebench.ui.correction_words import taken_back_words
from chargebench.ui.decay_timer import DecayTimer
from chargebench.ui.decay_watch import WATCHED
from chargebench.ui.formview import FormView
from chargebench.ui.letting_go import let_go
from chargebench.ui.livestrip import LiveStrip, instrument_of
from chargebench.ui.signing import SignStrip
from chargebench.ui.taking import first_empty, focused_place, take
from chargebench.ui.weighing import Weighing
from chargebench.words import joined, say

KEEP_MS = 300
AFTER_CLOSING = "follow_up"
_OWN_LETTERS = "snl"  # Alt letters of the acts; a form's labels take others
_TIMER_LETTERS = "iapfr"


class StepPane(QWidget):
    """The form of one step and the strip of acts under it."""

    looked = Signal(object)  # Look
    recorded = Signal(str, bool)  # what was recorded; whether to go on to the next open step

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._view: JobView | None = None
        self._who = ""
        self.may_not = ""  # why who works here records nothing
        self._form: FormView | None = None
        self._timer: DecayTimer | None = None
        self._refused: Mapping[str, str] = {}
        self._low = False
        self._unkept = False
        self._keep = QTimer(self)
        self._keep.setSingleShot(True)
        self._keep.setInterval(KEEP_MS)
        self._keep.timeout.connect(self.flush)
        self.strip = SignStrip()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self.live = LiveStrip(desk)
        self._column.addWidget(self.live)
        self._column.addWidget(self.strip)
        self.live.take.connect(self.take_reading)
        self.live.settings_wanted.connect(self._choose_port)
        QShortcut(QKeySequence("F2"), self).activated.connect(self.take_reading)
        self.strip.sign.connect(self.sign)
        self.strip.set_aside.connect(self._set_aside)
        self.strip.reverse.connect(self._reverse)
        self.strip.display.clicked.connect(lambda _: self.show_display())

    def form(self) -> FormView:
        """The form shown."""
        assert self._form is not None
        return self._form

    def key(self) -> str:
        """Key of the step shown; empty before the first."""
        return self._form.form.key if self._form is not None else ""

    def clear(self) -> None:
        """Take the form off; what is typed is kept."""
        self.flush()
        for acts in (self.live, self.strip):  # out of the form before it goes
            self._column.addWidget(acts)
        for gone in (self._form, self._timer):
            if gone is not None:
                self._column.removeWidget(gone)
                let_go(gone)
        self._form = self._timer = None

    def show_step(self, view: JobView, key: str) -> Look:
        """Show a step of a job; what it comes to as it stands."""
        self.clear()
        self.see(view)
        self._refused = {}
        letters = _OWN_LETTERS + (_TIMER_LETTERS if key in WATCHED else "")
        form = FormView(STEPS[key], self._desk, ticks=self._ticks(key), taken=letters)
        locked = self._step(key).state != "open" or not self._may_record(key)
        form.put(self._desk.typed(view.id, key))
        form.lock(locked=locked)
        form.edited.connect(lambda _: self._edited())
        self._column.insertWidget(0, form, 1)
        form.show()  # at once: the next key may go into it
        self._form = form
        if key in WATCHED:
            self._show_timer(key, form, locked=locked)
        self._follow(locked=locked)
        self.strip.show_step(self._step(key), job_open=self._may_record(key), may_not=self.may_not)
        if locked and self._read():
            self.strip.will_record(self.strip.will.text() + self._read())
        self.strip.show_taken_back(self._taken_back(key))
        self.strip.display.setVisible(key == "weigh_in" and not locked)
        self._place_strip()
        return self.look()

    def set_low(self, *, low: bool) -> None:
        """On a low page the acts stand at the end of the form, which takes all the height."""
        if low != self._low:
            self._low = low
            self._place_strip()

    def _place_strip(self) -> None:
        for acts in (self.live, self.strip):
            heard = acts is self.live and self.live.listens  # what it shows stays in sight
            if self._low and self._form is not None and not heard:
                self._form.set_foot(acts)
            else:
                self._column.addWidget(acts)
        self.strip.show()  # a new parent hides it
        self.live.setVisible(bool(self.live.instrument))

    def weighing(self) -> Weighing:
        """What the bench display types into."""
        return Weighing(self._desk, self._viewed(), self.form())

    def show_display(self) -> BenchDisplay:
        """Weigh with figures readable from three metres."""
        live = self.live
        display = self.weighing().display(
            self, live.live if live.listens else None, live.instrument if live.listens else ""
        )
        display.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        display.showFullScreen()
        return display

    def see(self, view: JobView) -> None:
        """Take a job's newest view and who signs now; the form stays."""
        self._view = view
        self.may_not = self._desk.refusal(Act.RECORD)
        self._who = self._desk.label("person", self._desk.person) or "nobody chosen yet"

    def _follow(self, *, locked: bool = False) -> None:
        """Listen to the instrument this step names."""
        named = "" if locked else instrument_of(self.key(), self.form().typed())
        self.live.show_instrument(named)

    def take_reading(self) -> None:
        """Put what the instrument shows into the field typed in, else into the first it fits."""
        if self._timer is not None and self._timer.reading.hasFocus() and self.live.listens:
            self._timer.take_live()
            return
        form, kind = self.form(), self.live.kind
        place = focused_place(form, kind) or first_empty(form, kind)
        taken = self.live.taken()
        if place is not None and taken is not None:
            take(form, place, *taken)

    def _choose_port(self, instrument: str) -> None:
        from chargebench.ui.line_dialog import LineDialog

        self.live.let_go(wait=True)
        dialog = LineDialog(self._desk, instrument, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.finished.connect(lambda _: self._follow())
        dialog.open()

    def _show_timer(self, key: str, form: FormView, *, locked: bool) -> None:
        timer = DecayTimer(WATCHED[key], live=self._live_of_timer)
        timer.show_typed(form.typed(), locked=locked)
        timer.changed.connect(form.type_over)
        self._column.insertWidget(0, timer)
        timer.setVisible(not locked)
        self._timer = timer

    def _live_of_timer(self) -> tuple[str, str] | None:
        return self.live.taken() if self.live.listens else None

    def _may_record(self, key: str) -> bool:
        of_job = self._viewed().state == "open" or key == AFTER_CLOSING
        return of_job and not self.may_not

    def _taken_back(self, key: str) -> list[str]:
        return [
            taken_back_words(was, reversal, lambda by: self._desk.label("person", by))
            for was, reversal in self._desk.taken_back(self._viewed().id, key)
        ]

    def _viewed(self) -> JobView:
        assert self._view is not None
        return self._view

    def _step(self, key: str) -> StepView:
        return next(step for step in self._viewed().steps if step.key == key)

    def _ticks(self, key: str) -> dict[str, Sequence[TickLine]]:
        job = self._viewed().id
        return {
            field.key: self._desk.ticks(job, key, field.key)
            for field in STEPS[key].fields
            if field.asks is Asks.TICKS
        }

    def look(self) -> Look:
        """Understand and work out what stands in the form, and show it."""
        form = self.form()
        look = self._desk.look(self._viewed().id, self.key(), form.typed())
        form.tell(look.answers, self._refused)
        if self._step(self.key()).state == "open" and self._may_record(self.key()):
            self.strip.will_record(self._will_record(look))
        return look

    def _will_record(self, look: Look) -> str:
        title, number = self.form().form.title, self._viewed().number
        will = say(
            "Signing records {title} of {number} by {who}.",
            title=title,
            number=number,
            who=self._who,
        )
        return joined(" ", (will, *look.worked.sentences[:1])) + self._read()

    def _read(self) -> str:
        """What of the step was read, not typed."""
        taken = words(self.form().typed())
        return f" {taken[0].upper()}{taken[1:]}." if taken else ""

    def _edited(self) -> None:
        self._refused = {}
        if self._timer is not None:
            self._timer.show_typed(self.form().typed())
        self._follow()
        self.looked.emit(self.look())
        # Started once and not put off by further keys, so text waits this long at most.
        self._unkept = True
        if not self._keep.isActive():
            self._keep.start()

    def flush(self) -> None:
        """Keep what is typed, now."""
        self._keep.stop()
        if self._unkept:
            self._unkept = False
            self._desk.keep(self._viewed().id, self.key(), self.form().typed())

    def sign(self, happened_at: datetime | None = None) -> None:
        """Sign the step."""
        form = self.form()
        self.flush()
        try:
            entry = self._desk.sign(self._viewed().id, self.key(), form.typed(), happened_at)
        except StepRefused as refusal:
            self._refused = refusal.fields
            self.look()
            self.strip.say(str(refusal))
            if refusal.fields:
                form.focus_path(next(iter(refusal.fields)))
            return
        except ChargebenchError as refusal:
            self.strip.say(str(refusal))
            return
        self.recorded.emit(
            say("{step} signed, entry {number}.", step=form.form.title, number=entry.number),
            True,  # noqa: FBT003
        )

    def _set_aside(self, reason: str) -> None:
        job, key, title = self._viewed().id, self.key(), self.form().form.title
        self.flush()
        self._record(
            lambda: self._desk.not_needed(job, key, reason),
            say("{title} recorded as not needed.", title=title),
            onward=True,
        )

    def _reverse(self, reason: str) -> None:
        step = self._step(self.key())
        said = say(
            "Entry {entry} reversed; {step} is open again.", entry=step.number, step=step.title
        )
        self._record(lambda: self._desk.reverse(step.entry, reason), said, onward=False)

    def _record(self, act: Callable[[], object], said: str, *, onward: bool) -> None:
        try:
            act()
        except ChargebenchError as refusal:
            self.strip.say(str(refusal))
            return
        self.recorded.emit(said, onward)
