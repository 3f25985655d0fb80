"""One line under a form: what the instrument of this step shows now, to be taken by a key."""

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QHideEvent, QShowEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QWidget

from chargebench.desk import Desk
from chargebench.errors import ReadingRefused
from chargebench.instruments import LineSettings
from chargebench.instruments.listening import Listener, Live
from chargebench.steps import Typed
from chargebench.ui import theme
from chargebench.ui.bench_ports import plugged
from chargebench.ui.language import tr
from chargebench.ui.oneline import OneLine
from chargebench.ui.shapes import Shape
from chargebench.units import Kind

KINDS = {"scale": Kind.SCALE, "vacuum gauge": Kind.PRESSURE, "pressure gauge": Kind.PRESSURE}
_POLL_MS = 100


_NAMED_BY = {"evacuation": "gauge", "pressure_test": "gauge"}


def instrument_of(step: str, typed: Typed) -> str:
    """The instrument a step's readings come from: as far as it is named in what is typed."""
    if step in _NAMED_BY:
        named = typed.get(_NAMED_BY[step], "")
        return named.strip() if isinstance(named, str) else ""
    if step not in ("weigh_in", "recovery"):
        return ""
    lines = typed.get("lines", ())
    scales = [] if isinstance(lines, str) else [line.get("scale", "").strip() for line in lines]
    return next((scale for scale in reversed(scales) if scale), "")


class LiveStrip(QFrame):
    """Listens to one instrument while it is in sight; shows its reading, lost or not."""

    take = Signal()  # the reading is wanted in the field typed in
    settings_wanted = Signal(str)  # instrument

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self._desk = desk
        self._listener: Listener | None = None
        self._heard_by: tuple[object, ...] = ()
        self._kind = Kind.SCALE
        self.instrument = ""
        self._shape = Shape()
        self.says = OneLine()
        self.take_button = QPushButton(tr("Take reading"))
        self.take_button.setToolTip(tr("F2: into the field typed in"))
        self.settings_button = QPushButton(tr("Port…"))
        edge = theme.em() // 3
        line = QHBoxLayout(self)
        line.setContentsMargins(edge, edge // 2, edge, edge // 2)
        line.addWidget(self._shape)
        line.addWidget(self.says, 1)
        line.addWidget(self.take_button)
        line.addWidget(self.settings_button)
        self._poll = QTimer(self)
        self._poll.setInterval(_POLL_MS)
        self._poll.timeout.connect(self.refresh)
        self.take_button.clicked.connect(lambda _: self.take.emit())
        self.settings_button.clicked.connect(lambda _: self.settings_wanted.emit(self.instrument))
        self.show_instrument("")

    def show_instrument(self, instrument: str) -> None:
        """Follow an instrument of the register; none for a step without one."""
        row = self._desk.row("instrument", instrument) if instrument else {}
        if row.get("kind", "") not in KINDS:
            instrument, row = "", {}
        self.instrument = instrument
        self.setVisible(bool(instrument))
        where = plugged(instrument) if instrument else None
        known = (instrument, row.get("serial_line", ""), where)
        if known == self._heard_by:
            return
        self.let_go()
        self._heard_by = known
        if instrument and where is not None and row.get("serial_line"):
            self._listen(row)
        self.refresh()

    def _listen(self, row: dict[str, str]) -> None:
        where = plugged(self.instrument)
        assert where is not None
        try:
            settings = LineSettings.read(row["serial_line"])
        except ReadingRefused as refusal:
            self.says.say(f"{self.instrument}: {refusal}")
            return
        answers = self._desk.answers("instrument", self.instrument)
        kind = self._kind = KINDS[row["kind"]]
        key = "resolution" if kind is Kind.SCALE else ""
        self._listener = Listener(
            where.port,
            settings,
            kind,
            resolution=answers.quantity(key) if key else None,
            identity=where.identity,
        )
        self._poll.start()

    def let_go(self, *, wait: bool = False) -> None:
        """Stop listening, so that the port is free."""
        self._poll.stop()
        if self._listener is not None:
            self._listener.stop(wait=wait)
            self._listener = None
        self._heard_by = ()

    @property
    def kind(self) -> Kind:
        """What the instrument measures."""
        return self._kind

    @property
    def listens(self) -> bool:
        """Whether a port is listened to."""
        return self._listener is not None

    def live(self) -> Live:
        """What the instrument shows now."""
        assert self._listener is not None
        return self._listener.live()

    def refresh(self) -> None:
        """Write what it shows now."""
        self.take_button.setVisible(self.listens)
        if self._listener is None:
            self._shape.show_shape("")
            self.settings_button.setText(tr("Read from its port…"))
            self.says.say(f"Readings of {self.instrument} are typed.", f"{self.instrument}: typed")
            return
        self.settings_button.setText(tr("Port…"))
        live = self._listener.live()
        if live.heard is None:
            self._shape.show_shape("check")
            self.says.say(f"{self.instrument} {live.state}: {live.says}", live.says)
            return
        self._shape.show_shape("signed" if live.steady else "open")
        word = "rests" if live.steady else "moves"
        self.says.say(f"{self.instrument} shows {live.heard.text}, {word}")

    def taken(self) -> tuple[str, str] | None:
        """The reading at rest and its instrument; None, with the reason said, where it moves."""
        live = self._listener.live() if self._listener is not None else None
        if live is None or live.heard is None:
            return None
        if not live.steady and self._kind is not Kind.PRESSURE:  # a vacuum rises as it is read
            self.says.say(f"{self.instrument} still moves: wait until it rests, then F2 again.")
            return None
        return live.heard.text, self.instrument

    def showEvent(self, event: QShowEvent) -> None:  # noqa: N802 - Qt's name
        """Listen while in sight."""
        super().showEvent(event)
        if self.instrument and self._listener is None:
            self.show_instrument(self.instrument)

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Leave the port to others when out of sight; the bench display keeps this in sight."""
        super().hideEvent(event)
        if not event.spontaneous():
            self.let_go()
