"""How an instrument is listened to: its port here, how it speaks, and what it says meanwhile."""

from collections.abc import Iterable

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import (
    QComboBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, ReadingRefused
from chargebench.instruments import LineSettings, practice
from chargebench.instruments.listening import Listener, ports
from chargebench.instruments.settings import BAUDS, BITS, PARITIES, STOPS
from chargebench.ui import theme
from chargebench.ui.bench_ports import Plugged, plug, plugged
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.fields import LineEdit
from chargebench.ui.language import tr
from chargebench.ui.livestrip import KINDS
from chargebench.ui.practising import practise
from chargebench.units import Kind
from chargebench.words import joined, say

_POLL_MS = 150
_MARKS = ("point", "comma")


class LineDialog(QDialog):
    """Port, speed, frame, marks; under them the lines as they come and as they are understood."""

    def __init__(self, desk: Desk, instrument: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._desk = desk
        self._instrument = instrument
        self._row = desk.row("instrument", instrument)
        self._kind = KINDS.get(self._row.get("kind", ""), Kind.SCALE)
        self._listener: Listener | None = None
        self._heard: tuple[str, str] = ("", "")
        self._identities: dict[str, str] = {}
        self.setWindowTitle(tr(say("{instrument}: port", instrument=instrument)))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self._build()
        self._poll = QTimer(self)
        self._poll.setInterval(_POLL_MS)
        self._poll.timeout.connect(self.refresh)
        self._put()
        self._poll.start()
        self.refresh()

    def _build(self) -> None:
        self.port = QComboBox()
        self.port.setEditable(True)
        self.again = QPushButton(tr("Look again"))
        self.again.setToolTip(tr("Look for ports again, as after plugging an adapter in"))
        self.baud, self.bits = _choice(BAUDS), _choice(BITS)
        self.parity, self.stop = _choice(PARITIES.values()), _choice(STOPS)
        self.stable, self.moving = LineEdit("ST"), LineEdit("US or ?")
        self.unit = LineEdit("g" if self._kind is Kind.SCALE else "micron")
        self.asked = LineEdit("nothing; it sends by itself")
        self.mark = _choice(_MARKS)
        port = QHBoxLayout()
        port.addWidget(self.port, 1)
        port.addWidget(self.again)
        frame = QHBoxLayout()
        for word, choice in (("", self.bits), ("parity", self.parity), ("stop", self.stop)):
            if word:
                frame.addWidget(QLabel(tr(word)))
            frame.addWidget(choice)
        rows = QFormLayout()
        rows.addRow(_label("&Port at this bench", self.port), port)
        for label, part in (
            ("Sp&eed", self.baud),
            ("Mark when it &rests", self.stable),
            ("Mark when it &moves", self.moving),
            ("&Unit, if it sends none", self.unit),
            ("&Decimal mark", self.mark),
            ("As&k it by", self.asked),
        ):
            rows.addRow(label, part)
        rows.insertRow(2, _label("Data &bits", self.bits), frame)
        for name, part in (
            ("Port", self.port),
            ("Speed", self.baud),
            ("Data bits", self.bits),
            ("Parity", self.parity),
            ("Stop bits", self.stop),
            ("Decimal mark", self.mark),
        ):
            part.setAccessibleName(tr(name))
        self._build_page(rows)
        self.again.clicked.connect(lambda _: self._list_ports())

    def _build_page(self, rows: QFormLayout) -> None:
        """The settings, and under them what comes from the port now."""
        self.lines = wrapped(weight="faint")
        self.lines.setMinimumHeight(theme.em() * 9)
        self.lines.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.lines.setAccessibleName(tr("Lines as they come"))
        self.understood = wrapped(weight="figure")
        self.says = wrapped(weight="refusal")
        self.says.hide()
        page = QWidget()
        page.setObjectName("page")
        column = QVBoxLayout(page)
        column.addWidget(wrapped(f"{self._instrument} {self._row.get('name', '')}", "title"))
        column.addLayout(rows)
        column.addWidget(wrapped("What comes now", "head"))
        column.addWidget(self.understood)
        column.addWidget(self.lines, 1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        area.setWidget(page)
        whole = QVBoxLayout(self)
        whole.addWidget(area, 1)
        whole.addWidget(self.says)
        whole.addWidget(self._buttons())
        self._fit(page)

    def _fit(self, page: QWidget) -> None:
        """All of it, as far as the window behind has room."""
        parent = self.parentWidget()
        assert parent is not None
        room, wanted = parent.window().size(), page.sizeHint()
        high = wanted.height() + theme.em() * 6
        wide = max(wanted.width(), theme.em() * 30) + theme.em() * 2
        self.resize(min(wide, room.width()), min(high, room.height() - 40))

    def _buttons(self) -> QDialogButtonBox:
        box = QDialogButtonBox()
        self.save_button = box.addButton(tr("&Save"), QDialogButtonBox.ButtonRole.AcceptRole)
        self.save_button.setProperty("weight", "main")
        cancel = box.addButton(tr("&Cancel"), QDialogButtonBox.ButtonRole.RejectRole)
        self.practice = box.addButton(tr("Prac&tise"), QDialogButtonBox.ButtonRole.ActionRole)
        self.practice.setToolTip(tr("Listen to a practice instrument of this program instead"))
        self.practice.setVisible(practice.offered())
        for button in (self.save_button, cancel, self.practice):
            button.setAutoDefault(False)
        box.accepted.connect(self.save)
        box.rejected.connect(self.reject)
        self.practice.clicked.connect(lambda _: self._practise())
        return box

    def _put(self) -> None:
        try:
            settings = LineSettings.read(self._row.get("serial_line", "") or str(LineSettings()))
        except ReadingRefused:
            settings = LineSettings()
        self._put_settings(settings)
        where = plugged(self._instrument)
        self._list_ports()
        self.port.setEditText(where.port if where else self.port.currentText())

    def _put_settings(self, settings: LineSettings) -> None:
        self.baud.setCurrentText(str(settings.baud))
        self.bits.setCurrentText(str(settings.bits))
        self.parity.setCurrentText(PARITIES[settings.parity])
        self.stop.setCurrentText(settings.stop)
        for editor, text in (
            (self.stable, settings.stable),
            (self.moving, settings.moving),
            (self.unit, settings.unit),
            (self.asked, settings.asked),
        ):
            editor.put(text)
        self.mark.setCurrentText(_MARKS[settings.comma])

    def _list_ports(self) -> None:
        typed = self.port.currentText()
        found = ports()
        self._identities = {port.name: port.identity for port in found}
        self.port.clear()
        for port in found:
            self.port.addItem(port.name)
            self.port.setItemData(self.port.count() - 1, port.says, Qt.ItemDataRole.ToolTipRole)
        if typed:
            self.port.setEditText(typed)

    def settings(self) -> LineSettings:
        """What is chosen; refused where a mark can not be one."""
        letters = {said: letter for letter, said in PARITIES.items()}
        chosen = LineSettings(
            baud=int(self.baud.currentText()),
            bits=int(self.bits.currentText()),
            parity=letters[self.parity.currentText()],
            stop=self.stop.currentText(),
            stable=self.stable.text().strip(),
            moving=self.moving.text().strip(),
            unit=self.unit.text().strip(),
            comma=self.mark.currentText() == _MARKS[True],
            asked=self.asked.text().strip(),
        )
        return LineSettings.read(str(chosen))

    def refresh(self) -> None:
        """Listen with what is chosen, and show what comes."""
        port = self.port.currentText().strip()
        try:
            settings = self.settings()
        except ReadingRefused as refusal:
            self._say(str(refusal))
            return
        self.says.hide()
        if (port, str(settings)) != self._heard:
            self._stop()
            self._heard = (port, str(settings))
            if port:
                self._listener = Listener(port, settings, self._kind)
        if self._listener is None:
            self.understood.setText(tr("Choose the port it is plugged into."))
            self.lines.setText("")
            return
        live = self._listener.live()
        self.lines.setText(joined("\n", live.lines))
        if live.heard is None:
            self.understood.setText(tr(live.refusal or live.says))
        else:
            word = "rests" if live.steady else "moves"
            self.understood.setText(tr(say("= {heard}, {word}", heard=live.heard.text, word=word)))

    def _practise(self) -> None:
        port, settings = practise(self._kind)
        self._put_settings(settings)
        self.port.setEditText(port)
        self.refresh()

    def save(self) -> None:
        """Keep the port here, and how it speaks in the register."""
        port = self.port.currentText().strip()
        try:
            line = str(self.settings())
            if line != self._row.get("serial_line", ""):
                row = {**self._row, "serial_line": line}
                self._desk.save_row("instrument", self._instrument, row)
        except ChargebenchError as refusal:
            self._say(str(refusal))
            return
        here = Plugged(port, self._identities.get(port, "")) if port else None
        plug(self._instrument, here)
        self.accept()

    def done(self, result: int) -> None:
        """Leave the port to who wants it next."""
        self._poll.stop()
        self._stop()
        super().done(result)

    def _stop(self) -> None:
        if self._listener is not None:
            self._listener.stop(wait=True)
            self._listener = None

    def _say(self, text: str) -> None:
        self.says.setText(tr(text))
        self.says.show()


def _choice(offered: Iterable[object]) -> QComboBox:
    made = QComboBox()
    made.addItems([str(each) for each in offered])
    return made


def _label(words: str, of: QWidget) -> QLabel:
    label = QLabel(tr(words))
    label.setBuddy(of)
    return label
