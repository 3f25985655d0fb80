"""Who works at the bench, and whether their signature is locked: chosen and locked by keys.

Part of the shell, so nothing heavy is imported here before it is wanted.
"""

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QPushButton, QWidget

from chargebench.ui.idle import IdleWatch
from chargebench.ui.language import tr
from chargebench.words import say

if TYPE_CHECKING:
    from chargebench.desk import Desk


class WhoSigns(QWidget):
    """The person, and a button that says what can be done with their signature."""

    said = Signal(str)
    leaving = Signal()  # before somebody else works here
    chosen = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._desk: Desk | None = None
        self.watch = IdleWatch(self)
        self.people = QComboBox()
        self.people.setAccessibleName(tr("Who signs"))
        self.people.setToolTip(tr("F4: who signs"))
        self.people.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.lock = QPushButton()
        self.lock.setProperty("weight", "area")
        self.lock.setToolTip(tr("Ctrl+L; Ctrl+Shift+L sets a passphrase"))
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self.people)
        line.addWidget(self.lock)
        self.people.activated.connect(self._choose)
        self.lock.clicked.connect(lambda _: self.turn())
        self.watch.lapsed.connect(self._lapsed)
        pressed: dict[str, Callable[[], object]] = {
            "F4": self.people.setFocus,  # letters and arrows choose; X11 fields use up Ctrl+U
            "Ctrl+L": self.turn,
            "Ctrl+Shift+L": self.set_passphrase,
        }
        for key, act in pressed.items():
            QShortcut(QKeySequence(key), self).activated.connect(act)
        self.hide()

    def open_desk(self, desk: "Desk") -> None:
        """Serve an open shop; signatures ask here from now on."""
        self._desk = desk
        desk.asks = self._asked

    def read(self) -> None:
        """Show who works, and how their signature stands."""
        desk = self._opened()
        people = {key: row.get("name", key) for key, row in desk.choices("person").items()}
        if [self.people.itemData(n) for n in range(self.people.count())] != list(people):
            self.people.clear()
            for key, name in people.items():
                self.people.addItem(name, key)
        self.people.setCurrentIndex(self.people.findData(desk.person))
        self.setVisible(bool(people))
        self._show_lock()

    def _opened(self) -> "Desk":
        assert self._desk is not None
        return self._desk

    def _show_lock(self) -> None:
        desk = self._opened()
        self.lock.setVisible(desk.needs_passphrase)
        self.lock.setText(tr("Lock" if desk.unlocked else "Locked"))
        self.lock.setAccessibleName(tr("Lock now" if desk.unlocked else "Locked: unlock"))
        self.watch.watch(desk)

    def _choose(self, place: int) -> None:
        desk = self._opened()
        self.leaving.emit()
        desk.choose(str(self.people.itemData(place)))
        self._show_lock()
        self.chosen.emit()
        asks = "; signing asks for the passphrase" if desk.locked else ""
        self.said.emit(
            say(
                "{currenttext} signs from now on{asks}.",
                currenttext=self.people.currentText(),
                asks=asks,
            )
        )

    def turn(self) -> None:
        """Lock now; or unlock, where it is locked."""
        if self._desk is None:
            return
        desk, name = self._desk, self.people.currentText()
        if not desk.needs_passphrase:
            self.said.emit(
                say("{name} signs without a passphrase. Ctrl+Shift+L sets one.", name=name)
            )
        elif desk.unlocked:
            desk.lock()
            self._show_lock()
            self.said.emit(
                say("Locked; the next signature of {name} asks for the passphrase.", name=name)
            )
        else:
            self._asked()

    def set_passphrase(self) -> None:
        """Set what unlocks the signature of who works."""
        if self._desk is None:
            return
        from chargebench.ui.passphrase import SetDialog

        dialog = SetDialog(self._desk, self._desk.person, self.window())
        dialog.accepted.connect(self._passphrase_set)
        dialog.finished.connect(dialog.deleteLater)
        dialog.finished.connect(lambda _: self.window().activateWindow())
        dialog.open()

    def _passphrase_set(self) -> None:
        self._show_lock()
        self.said.emit(
            say(
                "Passphrase set; the signature of {currenttext} is unlocked.",
                currenttext=self.people.currentText(),
            )
        )

    def _asked(self) -> None:
        from chargebench.ui.passphrase import ask

        ask(self._opened(), self.window())
        self._show_lock()

    def _lapsed(self) -> None:
        self._show_lock()
        self.said.emit("Locked after a while without a key; the next signature asks again.")
