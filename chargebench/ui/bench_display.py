"""The bench display: a weigh-in over the whole screen, readable from three metres, keys only."""

from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QPaintEvent, QShowEvent
from PySide6.QtWidgets import QWidget

from chargebench.errors import ReadingRefused
from chargebench.instruments.listening import Live, State
from chargebench.instruments.pouring import Pouring, seconds_to
from chargebench.ui.bench_face import Face, paint
from chargebench.ui.bench_zone import Looks, Warned, Zone, unit_of, whole, zone_of
from chargebench.ui.language import tr
from chargebench.ui.mass_view import scale_text
from chargebench.ui.sound import Tone, chime
from chargebench.units import Kind, Reading, read
from chargebench.words import joined, say

_LONGEST = 20
SETTLE_MS = 700  # a reading counts once typing has paused: its first digits alone mean nothing
FRESH_MS = 3_000  # after this pause the next figure begins a new reading
LIVE_MS = 100
ALARM_MS = 2_000  # while more goes in past the stop
LEAST_SHARE = 0.005  # of the nameplate a minute; slower is not pouring
_UNKNOWN = "No stop reading yet: fill in the charge, what stands on the scale and the hose."


class BenchDisplay(QWidget):
    """Still to go, where to stop, a running bar; the reading is the scale's own, or is typed."""

    started = Signal(str, str)  # the reading marked as the start; the instrument it is from
    ended = Signal(str, str)  # the reading taken as the end; the instrument it is from
    left = Signal()

    def __init__(
        self,
        look: Looks,
        *,
        head: str,
        place: str,
        start: str = "",
        unit: str = "g",
        live: Callable[[], Live] | None = None,
        source: str = "",
        sound: Callable[[Tone], None] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self._look = look
        self._head, self._place = head, place
        self._sound: Callable[[Tone], None] = sound or chime()
        self._listen, self._source = live, source
        self._unit = unit_of(start) or unit
        self.start_text = start
        self.live_text = ""  # as typed; what the scale sends stands beside it
        self.live: Live | None = None
        self.says = ""
        self._pouring = Pouring()
        self._warned = Warned()
        seen = look(start, "")
        self.view, self.stops = seen.view, seen.stops
        self.zone = zone_of(self.view)
        self.face = self._face()
        self.setWindowTitle(tr(head))
        self.setAccessibleName(tr(head))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(480, 320)
        self._settle = _timer(self, SETTLE_MS, self.settle, once=True)
        self._fresh = _timer(self, FRESH_MS, lambda: None, once=True)
        self._alarm = _timer(self, ALARM_MS, self._still_past)
        self._tick = _timer(self, LIVE_MS, self.tick)
        if live is not None:
            self._tick.start()
            self.tick()
        self._describe()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Figures are the reading; space marks the start, enter the end, escape leaves."""
        key, typed = event.key(), event.text()
        if key == Qt.Key.Key_Escape:
            self.left.emit()
            self.close()
        elif event.isAutoRepeat() and key in (Qt.Key.Key_Space, Qt.Key.Key_Return):
            event.accept()  # a foot that stays on the pedal presses once
        elif key == Qt.Key.Key_Space:
            self._mark_start()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._take_end()
        elif key == Qt.Key.Key_Backspace:
            self._type(self.live_text[:-1])
        elif key == Qt.Key.Key_Delete:
            self._type("")
        elif typed.isprintable() and typed:
            before = self.live_text if self._fresh.isActive() else ""
            self._type((before + typed)[:_LONGEST])
        else:
            super().keyPressEvent(event)

    def _type(self, text: str) -> None:
        self.live_text = text
        self.says = ""
        self._pouring.clear()
        self._settle.start()
        self._fresh.start()
        self._repaint()

    def _mark_start(self) -> None:
        taken = self._taken()
        if taken is not None:
            self.start_text, source = taken
            self._unit = unit_of(self.start_text) or self._unit
            self.started.emit(self.start_text, source)
            self.live_text = ""
            self._pouring.clear()
            self._warned = Warned()
            self.settle()
        self._repaint()

    def _take_end(self) -> None:
        taken = self._taken()
        if taken is not None and not self.start_text:
            self.says = "Mark the start first: press space at the reading it begins from."
            taken = None
        if taken is None:
            self._repaint()
            return
        self.ended.emit(*taken)
        self.close()

    def _taken(self) -> tuple[str, str] | None:
        """The present reading and the instrument it is from; None where there is none to take."""
        live = self.live
        if self.live_text or live is None:
            reading = self._typed_reading()
            return None if reading is None else (whole(reading), "")
        if live.heard is None:
            self.says = live.says
            return None
        if not live.steady:
            self.says = "The reading still moves: wait until it rests, then press again."
            return None
        self.says = ""
        return live.heard.text, self._source

    def _typed_reading(self) -> Reading | None:
        """What is typed, in the start's unit where none is typed; None if it is no reading yet."""
        try:
            reading = read(Kind.SCALE, self.live_text, bare_unit=self._unit)
        except ReadingRefused as refusal:
            self.says = str(refusal) if self.live_text else "Type what the scale shows."
            return None
        self.says = ""
        return reading

    def settle(self) -> None:
        """Take what is typed as it stands and show what it comes to."""
        self._settle.stop()
        reading = self._typed_reading() if self.live_text or self.live is None else None
        if reading is not None:
            self._show(whole(reading))
        elif not self.live_text:
            heard = self.live.heard if self.live is not None else None
            self._show(heard.text if heard is not None else "")
        self._repaint()

    def tick(self) -> None:
        """Show what the scale sends now, unless a person types."""
        assert self._listen is not None
        before, self.live = self.live, self._listen()
        heard = self.live.heard
        if heard is None or self.live_text:
            self._pouring.clear()
        elif before is None or before.heard is None or before.heard.text != heard.text:
            self._show(heard.text)
        if heard is not None and not self.live_text and self.start_text and self.view is not None:
            self._pouring.add(self.view.size(self.view.to_go), self.live.at)
        self._repaint()

    def _show(self, reading: str) -> None:
        seen = self._look(self.start_text, reading if self.start_text else "")
        self.view, self.stops = seen.view, seen.stops
        self.zone = zone_of(self.view)
        tone = self._warned.enter(self.view)
        if tone is not None:
            self._sound(tone)
        if self.zone is not Zone.PAST or self.live is None:
            self._alarm.stop()
        elif not self._alarm.isActive():
            self._alarm.start()

    def _still_past(self) -> None:
        if self.per_minute is not None and self.per_minute > 0:
            self._sound(Tone.PAST)

    @property
    def figure(self) -> str:
        """The large figure: what is still to go, or what is over."""
        if self.view is None or self.view.to_go is None:
            return "?"
        mass = self.view.to_go
        return self.view.text(mass * -1 if self.zone is Zone.PAST else mass)

    @property
    def stop(self) -> str:
        """Where to stop, as the scale shows it."""
        readings = self.view.stop_readings if self.view else ()
        if readings:
            return scale_text(readings[-1])
        return "?" if self.start_text else "mark the start"

    @property
    def per_minute(self) -> float | None:
        """How fast it goes in, in the picture's unit; None where that can not be told."""
        slope = self._pouring.per_minute
        return None if slope is None or not self.start_text else -slope

    @property
    def rate(self) -> str:
        """How fast it goes in and when it will be there, in words; empty where nothing pours."""
        per_minute, view = self.per_minute, self.view
        if per_minute is None or view is None:
            return ""
        least = LEAST_SHARE * view.size(view.nameplate)
        if per_minute < least:
            return ""
        said = say("{per_minute:.3g} {unit}/min", per_minute=per_minute, unit=view.unit)
        seconds = seconds_to(view.size(view.to_go), per_minute, least)
        if seconds is None:
            return said
        minutes, rest = divmod(round(seconds), 60)
        return say("{said}, stop in {minutes}:{rest:02d}", said=said, minutes=minutes, rest=rest)

    @property
    def present(self) -> str:
        """The present reading in words, and where it comes from."""
        if self.live_text:
            unit = "" if unit_of(self.live_text) else f" {self._unit}"
            return say("typed {live_text}{unit}", live_text=self.live_text, unit=unit)
        if self.live is None:
            return "type the reading"
        if self.live.heard is None:
            return say("{source} {state}", source=self._source, state=self.live.state)
        return joined(" ", (self.live.heard.text, "rests" if self.live.steady else "moves"))

    def _trouble(self) -> str:
        lost = self.live is not None and self.live.state not in (State.LIVE, State.OPENING)
        if self.says or not lost:
            return self.says or (_UNKNOWN if self.stop == "?" else "")
        assert self.live is not None
        return self.live.says

    def _face(self) -> Face:
        return Face(
            head=self._head,
            place=self._place,
            stops=self.stops,
            figure=self.figure,
            zone=self.zone,
            stop=self.stop,
            present=self.present,
            steady=bool(self.live and self.live.steady and not self.live_text),
            start=say("start {at}", at=self.start_text) if self.start_text else "no start yet",
            rate=self.rate,
            says=self._trouble(),
            view=self.view,
        )

    def _repaint(self) -> None:
        face = self._face()
        if face != self.face:
            self.face = face
            self._describe()
            self.update()

    def _describe(self) -> None:
        face, said = self.face, [say("Stop: {each}", each=each) for each in self.face.stops]
        said += [face.present + ".", joined(" ", (face.figure, face.zone)) + ".", face.rate]
        said += [say("Stop at {stop}.", stop=face.stop), face.says]
        self.setAccessibleDescription(tr(joined(" ", (each for each in said if each))))

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Take the keys."""
        super().showEvent(event)
        self.activateWindow()
        self.setFocus()

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw all of it in shares of the screen."""
        paint(self, self.face)


def _timer(
    parent: QWidget, pause_ms: int, then: Callable[[], None], *, once: bool = False
) -> QTimer:
    timer = QTimer(parent)
    timer.setSingleShot(once)
    timer.setInterval(pause_ms)
    timer.timeout.connect(then)
    return timer
