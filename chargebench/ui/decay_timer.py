"""The timer of a decay or pressure test: asks for each reading and adds it to the step's list.

The start is a moment of the wall clock in the step's typed text, so that a closed lid or a restart
does not lose it.
"""

import re
from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.errors import ReadingRefused
from chargebench.steps import Typed
from chargebench.steps.form import TypedLine
from chargebench.steps.taken import of_series, with_taken
from chargebench.ui.decay_watch import DECAY, Watched, clock, due, ends_of, seconds_of, span
from chargebench.ui.fields import LineEdit
from chargebench.ui.language import tr
from chargebench.ui.series import Series
from chargebench.ui.sound import Tone, chime
from chargebench.units import Kind, Reading, read
from chargebench.words import joined, say

_TICK_MS = 250
_LETTERS = re.compile(r"[^\d\s.,+\-\u2212]")


def wall_clock() -> datetime:
    """Now, with the zone of this computer."""
    return datetime.now().astimezone()


class DecayTimer(QWidget):
    """Start, the next reading asked for, and readings from elsewhere."""

    changed = Signal(dict)  # the part of the step's typed text that became different

    def __init__(
        self,
        watched: Watched = DECAY,
        now: Callable[[], datetime] = wall_clock,
        live: Callable[[], tuple[str, str] | None] = lambda: None,
        sound: Callable[[Tone], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._watched = watched
        self._now = now
        self._live = live
        self._sound: Callable[[Tone], None] = sound or chime()
        self._typed: Typed = {}
        self._typing_since: float | None = None
        self._asked_for = -1.0
        self._tick = QTimer(self)
        self._tick.setInterval(_TICK_MS)
        self._tick.timeout.connect(self.refresh)
        self._build()
        self.refresh()

    def _build(self) -> None:
        self.asks = _label("title")
        self.tells = _label("faint")
        self.says = _label("refusal")
        self.start = QPushButton(tr(self._watched.begin))
        self.start.setToolTip(tr(self._watched.begin_hint))
        self.reading = LineEdit(self._watched.example)
        self.reading.setAccessibleName(tr("Gauge reading"))
        self.temperature = LineEdit(self._watched.temperature, self)
        self.temperature.setAccessibleName(tr("Temperature at the reading"))
        self.temperature.setVisible(bool(self._watched.temperature))
        self.add = QPushButton(tr("&Add"))
        self.series = Series(
            lambda: not self._lines(),
            third=Kind.TEMPERATURE if self._watched.temperature else None,
        )
        self.start.clicked.connect(self.begin)
        self.reading.edited.connect(self._typing)
        for editor in (self.reading, self.temperature):
            editor.returnPressed.connect(self.take)
        self.add.clicked.connect(self.take)
        self.series.wanted.connect(self._add_series)
        self.series.said.connect(self._refuse)
        entry = QGridLayout()
        caption = QLabel(tr("&Reading"))
        caption.setBuddy(self.reading)
        for column, part in enumerate((caption, self.reading, self.temperature, self.add)):
            entry.addWidget(part, 0, column)
        entry.setColumnStretch(1, 2)
        entry.setColumnStretch(2, 1 if self._watched.temperature else 0)
        others = QHBoxLayout()
        others.addWidget(self.start, 0, Qt.AlignmentFlag.AlignTop)
        others.addWidget(self.series, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.asks)
        layout.addLayout(entry)
        layout.addWidget(self.says)
        layout.addLayout(others)
        layout.addWidget(self.tells)
        self.says.hide()

    def show_typed(self, typed: Typed, *, locked: bool = False) -> None:
        """Show a step's typed text; locked once it is signed."""
        self._typed = typed
        for part in (self.start, self.add, self.series):
            part.setEnabled(not locked)
        self.reading.lock(locked=locked)
        started = self._started() is not None and not locked
        if started and not self._tick.isActive():
            self._tick.start()
        elif not started:
            self._tick.stop()
        self.refresh()

    @property
    def running(self) -> bool:
        """Whether the timer counts."""
        return self._tick.isActive()

    def begin(self) -> None:
        """Start the test at this moment."""
        if self._lines():
            self._refuse(
                "There are readings already. Take their lines out of the form to start again."
            )
            return
        self._change({self._watched.started: self._now().isoformat(sep=" ", timespec="seconds")})
        self.reading.setFocus()

    def take(self) -> None:
        """Add the reading as typed, at the moment its typing began."""
        seconds = self._elapsed() if self._typing_since is None else self._typing_since
        text = self._with_unit(self.reading.text().strip())
        if self._add(seconds, text, ""):
            self.reading.put("")
            self.reading.say("")
            self._typing_since = None

    def take_live(self) -> bool:
        """Add what the instrument shows now; False where it shows nothing."""
        taken = self._live()
        return taken is not None and self._add(self._elapsed(), *taken)

    def _add(self, seconds: float | None, text: str, source: str) -> bool:
        if seconds is None:
            begin = self._watched.begin.replace("&", "")
            self._refuse(say("Press “{begin}” at the start, then read the gauge.", begin=begin))
            return False
        line = {"at": span(seconds)}
        try:
            line["reading"] = read(Kind.PRESSURE, text).text
            if degrees := self.temperature.text().strip():
                line["temperature"] = read(Kind.TEMPERATURE, degrees).text
        except ReadingRefused as refusal:
            self._refuse(str(refusal))
            return False
        lines = self._lines()
        if lines and seconds_of(line) <= seconds_of(lines[-1]):
            self._refuse("This moment already has a reading; wait for the next one.")
            return False
        where = f"{self._watched.lines}[{len(lines)}].reading"
        self._take_lines([*lines, line], source, {where: line["reading"]} if source else {})
        return True

    def _take_lines(self, lines: list[TypedLine], source: str, texts: dict[str, str]) -> None:
        part: dict[str, object] = {self._watched.lines: lines, **ends_of(self._watched, lines)}
        if source:
            whole = with_taken({**self._typed, **part}, source, texts)  # type: ignore[dict-item]
            part["taken"] = whole.get("taken", [])
        self._change(part)

    def refresh(self) -> None:
        """Write what is asked for now; an instrument that is listened to is read by itself."""
        lines, elapsed = self._lines(), self._elapsed()
        count = say("{count} readings", count=len(lines)) if len(lines) != 1 else "1 reading"
        last = (
            say(", last {reading} after {at}", reading=lines[-1]["reading"], at=lines[-1]["at"])
            if lines
            else ""
        )
        self.tells.setText(tr(joined("", (count, last, "."))))
        if elapsed is None:
            self.asks.setText(tr(self._watched.first if not lines else "Readings entered"))
            return
        if elapsed < 0:
            self.asks.setText(tr("The clock shows a time before the start; check it."))
            return
        wanted_at = due(self._watched, self._typed, lines)
        if elapsed < wanted_at:
            self.asks.setText(
                tr(say("Next reading in {clock}", clock=clock(wanted_at - elapsed + 0.999)))
            )
            return
        if self.running and not self.reading.text().strip() and self.take_live():
            return
        self.asks.setText(tr(say("Read the gauge now: {clock}", clock=clock(elapsed))))
        if wanted_at != self._asked_for:
            self._asked_for = wanted_at
            self._sound(Tone.PROMPT)

    def _started(self) -> datetime | None:
        try:
            started = datetime.fromisoformat(
                str(self._typed.get(self._watched.started, "")).strip()
            )
        except ValueError:
            return None
        return started if started.tzinfo else started.astimezone()

    def _elapsed(self) -> float | None:
        started = self._started()
        return None if started is None else (self._now() - started).total_seconds()

    def _lines(self) -> list[TypedLine]:
        lines = self._typed.get(self._watched.lines, ())
        if isinstance(lines, str):
            return []
        return [
            line for line in lines if line.get("reading", "").strip() and line.get("at", "").strip()
        ]

    def _typing(self) -> None:
        text = self.reading.text().strip()
        if not text:
            self._typing_since = None
        elif self._typing_since is None:
            self._typing_since = self._elapsed()
        whole = self._with_unit(text)
        self.reading.say(f"= {whole}" if whole != text else "")
        self.says.hide()

    def _with_unit(self, text: str) -> str:
        """A bare number takes the unit of the reading before it."""
        lines = self._lines()
        if not text or _LETTERS.search(text) or not lines:
            return text
        try:
            before: Reading = read(Kind.PRESSURE, lines[-1]["reading"])
        except ReadingRefused:
            return text
        return say("{text} {unit}", text=text, unit=before.unit)

    def _add_series(self, lines: list[TypedLine], source: str) -> None:
        self._take_lines(list(lines), source, of_series(self._watched.lines, lines))

    def _change(self, part: dict[str, object]) -> None:
        self.says.hide()
        self.show_typed({**self._typed, **part})  # type: ignore[dict-item]
        self.changed.emit(part)

    def _refuse(self, says: str) -> None:
        self.says.setText(tr(says))
        self.says.show()


def _label(weight: str) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setProperty("weight", weight)
    return label
