"""The timer of a decay test: asks for each reading and adds it to the step's list.

The start is a moment of the wall clock in the step's typed text, so that a closed lid or a restart
does not lose it.
"""

import re
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import (
    QApplication,
    QFileDialog,
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
from chargebench.steps.series import lines_from_file, lines_from_text
from chargebench.ui.fields import LineEdit
from chargebench.units import Kind, Reading, read

EVERY_S = 60.0  # seconds between readings where nothing else is typed
_TICK_MS = 250
_LETTERS = re.compile(r"[^\d\s.,+\-\u2212]")


def wall_clock() -> datetime:
    """Now, with the zone of this computer."""
    return datetime.now().astimezone()


class DecayTimer(QWidget):
    """Start, the next reading asked for, and readings from elsewhere."""

    changed = Signal(dict)  # the part of the step's typed text that became different

    def __init__(
        self, now: Callable[[], datetime] = wall_clock, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._now = now
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
        self.start = QPushButton("&Isolated now")
        self.start.setToolTip("The pump is valved off: the decay test starts at this moment.")
        self.reading = LineEdit("420 micron")
        self.reading.setAccessibleName("Gauge reading")
        self.add = QPushButton("&Add")
        self.paste = QPushButton("&Paste")
        self.paste.setToolTip("Two columns from the clipboard: time and reading, with units.")
        self.file = QPushButton("From &file…")
        self.start.clicked.connect(self.begin)
        self.reading.edited.connect(self._typing)
        self.reading.returnPressed.connect(self.take)
        self.add.clicked.connect(self.take)
        self.paste.clicked.connect(self.take_clipboard)
        self.file.clicked.connect(self._choose_file)
        entry = QGridLayout()
        caption = QLabel("&Reading")
        caption.setBuddy(self.reading)
        entry.addWidget(caption, 0, 0)
        entry.addWidget(self.reading, 0, 1)
        entry.addWidget(self.add, 0, 2)
        others = QHBoxLayout()
        for button in (self.start, self.paste, self.file):
            others.addWidget(button)
        others.addStretch(1)
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
        for part in (self.start, self.add, self.paste, self.file):
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
        self._change({"decay_started": self._now().isoformat(sep=" ", timespec="seconds")})
        self.reading.setFocus()

    def take(self) -> None:
        """Add the reading as typed, at the moment its typing began."""
        seconds = self._elapsed() if self._typing_since is None else self._typing_since
        if seconds is None:
            self._refuse("Press “Isolated now” when the pump is valved off, then read the gauge.")
            return
        text = self._with_unit(self.reading.text().strip())
        try:
            reading = read(Kind.PRESSURE, text)
        except ReadingRefused as refusal:
            self._refuse(str(refusal))
            return
        lines = self._lines()
        if lines and seconds <= _seconds(lines[-1]):
            self._refuse("This moment already has a reading; wait for the next one.")
            return
        self.reading.put("")
        self.reading.say("")
        self._typing_since = None
        self._change({"decay": [*lines, {"at": span(seconds), "reading": reading.text}]})

    def take_clipboard(self) -> None:
        """Add readings from the clipboard's two columns."""
        self._take_series(lambda: lines_from_text(QApplication.clipboard().text()))

    def take_file(self, path: Path) -> None:
        """Add readings from a two-column text file."""
        self._take_series(lambda: lines_from_file(path))

    def refresh(self) -> None:
        """Write what is asked for now."""
        lines, elapsed = self._lines(), self._elapsed()
        count = f"{len(lines)} reading{'' if len(lines) == 1 else 's'}"
        last = f", last {lines[-1]['reading']} after {lines[-1]['at']}" if lines else ""
        self.tells.setText(f"{count}{last}.")
        if elapsed is None:
            self.asks.setText("Isolate the pump" if not lines else "Readings entered")
            return
        if elapsed < 0:
            self.asks.setText("The clock shows a time before the start; check it.")
            return
        due = self._due(lines)
        if elapsed < due:
            self.asks.setText(f"Next reading in {clock(due - elapsed + 0.999)}")
            return
        self.asks.setText(f"Read the gauge now: {clock(elapsed)}")
        if due != self._asked_for:
            self._asked_for = due
            QApplication.beep()

    def _due(self, lines: Sequence[TypedLine]) -> float:
        """When the next reading is due, in seconds from the start: the first one at once."""
        if not lines:
            return 0.0
        every = self._every()
        return (_seconds(lines[-1]) // every + 1) * every

    def _every(self) -> float:
        try:
            typed = str(self._typed.get("decay_every", ""))
            seconds = float(read(Kind.DURATION, typed).quantity.m_as("s"))
        except ReadingRefused:
            return EVERY_S
        return seconds if seconds >= 1 else EVERY_S

    def _started(self) -> datetime | None:
        try:
            started = datetime.fromisoformat(str(self._typed.get("decay_started", "")).strip())
        except ValueError:
            return None
        return started if started.tzinfo else started.astimezone()

    def _elapsed(self) -> float | None:
        started = self._started()
        return None if started is None else (self._now() - started).total_seconds()

    def _lines(self) -> list[TypedLine]:
        lines = self._typed.get("decay", ())
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
        return f"{text} {before.unit}"

    def _choose_file(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, "Readings from a file", "", "Two columns (*.txt *.csv *.tsv *.log);;All files (*)"
        )
        if name:
            self.take_file(Path(name))

    def _take_series(self, lines: Callable[[], tuple[TypedLine, ...]]) -> None:
        if self._lines():
            self._refuse(
                "There are readings already. Take their lines out of the form, then add a series."
            )
            return
        try:
            self._change({"decay": list(lines())})
        except ReadingRefused as refusal:
            self._refuse(str(refusal))

    def _change(self, part: dict[str, object]) -> None:
        self.says.hide()
        self.show_typed({**self._typed, **part})  # type: ignore[dict-item]
        self.changed.emit(part)

    def _refuse(self, says: str) -> None:
        self.says.setText(says)
        self.says.show()


def clock(seconds: float) -> str:
    """Seconds as a clock shows them: 4:05."""
    minutes, rest = divmod(int(seconds), 60)
    return f"{minutes}:{rest:02d}"


def span(seconds: float) -> str:
    """Seconds as a time span a form understands: 4 min 5 s."""
    minutes, rest = divmod(int(seconds), 60)
    if not minutes:
        return f"{rest} s"
    return f"{minutes} min {rest} s" if rest else f"{minutes} min"


def _seconds(line: TypedLine) -> float:
    try:
        return float(read(Kind.DURATION, line.get("at", "")).quantity.m_as("s"))
    except ReadingRefused:
        return 0.0


def _label(weight: str) -> QLabel:
    label = QLabel()
    label.setWordWrap(True)
    label.setProperty("weight", weight)
    return label
