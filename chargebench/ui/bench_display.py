"""The bench display: a weigh-in over the whole screen, readable from three metres, keys only."""

from collections.abc import Callable
from enum import StrEnum

from PySide6.QtCore import QRectF, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QApplication, QWidget

from chargebench.errors import ReadingRefused
from chargebench.ui.ink import Ink, ink
from chargebench.ui.large_text import fit, sized, slot
from chargebench.ui.mass_bar import MassBar, hatch, whole_range
from chargebench.ui.mass_view import MassView, scale_text
from chargebench.units import Kind, Reading, read

NEAR_SHARE = 0.10  # of the nameplate still to go: our own choice of when to warn
_BEEP_GAP_MS = 220
_LONGEST = 20
SETTLE_MS = 700  # a reading counts once typing has paused: its first digits alone mean nothing
FRESH_MS = 3_000  # after this pause the next figure begins a new reading


class Zone(StrEnum):
    """Where a weigh-in stands towards its stop."""

    FAR = "still to go"
    NEAR = "still to go: slowly"
    AT = "stop now"
    PAST = "over nameplate"
    UNKNOWN = "type the scale's reading"


_BEEPS = {Zone.NEAR: 1, Zone.AT: 2, Zone.PAST: 3}


Looks = Callable[[str, str], MassView | None]  # start and live reading as text, worked out


def zone_of(view: MassView | None) -> Zone:
    """Where a weigh-in stands towards its stop."""
    if view is None or view.to_go is None:
        return Zone.UNKNOWN
    to_go, allowed = view.size(view.to_go), view.size(view.tolerance)
    if to_go < -allowed:
        return Zone.PAST
    if to_go <= allowed:
        return Zone.AT
    return Zone.NEAR if to_go <= NEAR_SHARE * view.size(view.nameplate) else Zone.FAR


class BenchDisplay(QWidget):
    """Still to go, where to stop, a running bar; the scale's reading is typed as it changes."""

    started = Signal(str)  # the reading marked as the start
    ended = Signal(str)  # the reading taken as the end
    left = Signal()

    def __init__(
        self,
        look: Looks,
        *,
        head: str,
        place: str,
        start: str = "",
        unit: str = "g",
        sound: Callable[[], None] = QApplication.beep,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self._look = look
        self._head, self._place = head, place
        self._sound = sound
        self._unit = _unit_of(start) or unit
        self.start_text = start
        self.live_text = ""
        self.says = ""
        self.view = look(start, "")
        self.zone = zone_of(self.view)
        self.setWindowTitle(head)
        self.setAccessibleName(head)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(480, 320)
        self._settle = _single_shot(self, SETTLE_MS, self.settle)
        self._fresh = _single_shot(self, FRESH_MS, lambda: None)
        self._describe()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Figures are the live reading; space marks the start, enter the end, escape leaves."""
        key, typed = event.key(), event.text()
        if key == Qt.Key.Key_Escape:
            self.left.emit()
            self.close()
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

    def _reading(self) -> Reading | None:
        """The live reading, in the start's unit where none is typed; None if it is not one yet."""
        try:
            reading = read(Kind.SCALE, self.live_text, bare_unit=self._unit)
        except ReadingRefused as refusal:
            self.says = str(refusal) if self.live_text else "Type what the scale shows."
            return None
        self.says = ""
        return reading

    def _whole(self, reading: Reading) -> str:
        """The reading with its unit written out."""
        bare = reading.text.lstrip("+-\u2212").replace(",", "").replace(".", "").isdigit()
        return f"{reading.text} {reading.unit}" if bare else reading.text

    def _type(self, text: str) -> None:
        self.live_text = text
        self.says = ""
        self._settle.start()
        self._fresh.start()
        self.update()

    def settle(self) -> None:
        """Take the live reading as it stands and show what it comes to."""
        self._settle.stop()
        reading = self._reading()
        if reading is not None or not self.live_text:
            self._show(self._look(self.start_text, self._whole(reading) if reading else ""))
        self._describe()
        self.update()

    def _show(self, view: MassView | None) -> None:
        self.view = view
        zone = zone_of(view)
        if zone is not self.zone:
            self.zone = zone
            for number in range(_BEEPS.get(zone, 0)):
                QTimer.singleShot(number * _BEEP_GAP_MS, self, self._sound)

    def _mark_start(self) -> None:
        reading = self._reading()
        if reading is not None:
            self.start_text = self._whole(reading)
            self._unit = _unit_of(self.start_text) or self._unit
            self.started.emit(self.start_text)
            self.live_text = ""
            self.settle()
        self.update()

    def _take_end(self) -> None:
        reading = self._reading()
        if reading is None:
            self.update()
            return
        if not self.start_text:
            self.says = "Mark the start first: type the reading, then space."
            self.update()
            return
        self.ended.emit(self._whole(reading))
        self.close()

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
        return scale_text(readings[-1]) if readings else "mark the start"

    def _describe(self) -> None:
        live = f"Live {self.live_text}. " if self.live_text else ""
        self.setAccessibleDescription(
            f"{live}{self.figure} {self.zone}. Stop at {self.stop}. {self.says}"
        )

    def paintEvent(self, _event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw all of it in shares of the screen."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = ink()
        whole = QRectF(self.rect())
        painter.fillRect(whole, colours.ground)
        room = whole.adjusted(whole.width() * 0.03, 0, -whole.width() * 0.03, 0)
        self._draw_heads(painter, room, colours)
        self._draw_figures(painter, room, colours)
        if self.view is not None:
            self._draw_bar(painter, room, colours)
        keys = "space: mark start     enter: end     del: clear     esc: back"
        fit(painter, slot(room, 0.93, 0.99), keys, colours.quiet, Qt.AlignmentFlag.AlignHCenter)

    def _draw_heads(self, painter: QPainter, room: QRectF, colours: Ink) -> None:
        top = slot(room, 0.02, 0.09)
        left = QRectF(top.left(), top.top(), top.width() * 0.56, top.height())
        right = QRectF(left.right(), top.top(), top.right() - left.right(), top.height())
        fit(painter, left, self._head, colours.text, Qt.AlignmentFlag.AlignLeft)
        fit(painter, right, self._place, colours.quiet, Qt.AlignmentFlag.AlignRight)

    def _draw_figures(self, painter: QPainter, room: QRectF, colours: Ink) -> None:
        band = slot(room, 0.12, 0.60)
        left = QRectF(band.left(), band.top(), band.width() * 0.58, band.height())
        right = QRectF(left.right() + 24, band.top(), band.right() - left.right() - 24, 0)
        right.setHeight(band.height())
        back, front = _block(self.zone, colours)
        if self.zone is Zone.PAST:
            hatch(painter, left, colours.stop, colours.ground)
            inner = left.adjusted(18, 18, -18, -18)
            painter.fillRect(inner, back)
        else:
            inner = left
            painter.fillRect(left, back)
            painter.setPen(QPen(front, 6 if self.zone is Zone.AT else 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(left)
        centre = Qt.AlignmentFlag.AlignHCenter
        inner = inner.adjusted(inner.width() * 0.04, 0, -inner.width() * 0.04, 0)
        fit(painter, slot(inner, 0.06, 0.70), self.figure, front, centre, bold=True)
        fit(painter, slot(inner, 0.72, 0.94), str(self.zone), front, centre)
        side = Qt.AlignmentFlag.AlignLeft
        fit(painter, slot(right, 0.0, 0.16), "STOP AT", colours.quiet, side)
        fit(painter, slot(right, 0.16, 0.46), self.stop, colours.text, side, bold=True)
        live = f"live {self.live_text or '…'}"
        if self.live_text and _unit_of(self.live_text) == "":
            live += f" {self._unit}"
        fit(painter, slot(right, 0.54, 0.74), live, colours.text, side)
        start = f"start {self.start_text}" if self.start_text else "no start yet"
        fit(painter, slot(right, 0.78, 0.92), start, colours.quiet, side)

    def _draw_bar(self, painter: QPainter, room: QRectF, colours: Ink) -> None:
        view = self.view
        assert view is not None
        lowest, highest = whole_range(view)
        box = slot(room, 0.68, 0.82)
        bar = MassBar(view, box, lowest, highest)
        painter.setFont(sized(painter.font(), box.height() * 0.4))
        bar.draw(painter, colours)
        plate = bar.x(view.size(view.nameplate))
        ends = slot(room, 0.835, 0.90)
        fit(painter, ends, "0", colours.quiet, Qt.AlignmentFlag.AlignLeft)
        wide = room.width() * 0.3
        under = QRectF(plate - wide / 2, ends.top(), wide, ends.height())
        fit(painter, under, view.text(view.nameplate), colours.text, Qt.AlignmentFlag.AlignHCenter)
        if self.says:
            above = slot(room, 0.61, 0.66)
            fit(painter, above, self.says, colours.check, Qt.AlignmentFlag.AlignLeft)


def _single_shot(parent: QWidget, pause_ms: int, then: Callable[[], None]) -> QTimer:
    timer = QTimer(parent)
    timer.setSingleShot(True)
    timer.setInterval(pause_ms)
    timer.timeout.connect(then)
    return timer


def _block(zone: Zone, colours: Ink) -> tuple[QColor, QColor]:
    """Ground and text of the large block."""
    if zone is Zone.AT:
        return colours.text, colours.ground
    if zone is Zone.PAST:
        return colours.paper, colours.stop
    return colours.paper, colours.text


def _unit_of(text: str) -> str:
    """Unit a scale reading is typed in; empty where there is none, or it is no reading."""
    try:
        return read(Kind.SCALE, text).unit
    except ReadingRefused:
        return ""
