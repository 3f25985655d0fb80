"""Dialogs that unlock a signature, or set what unlocks it; both only where something is signed."""

from collections.abc import Iterator
from contextlib import contextmanager
from itertools import pairwise

from PySide6.QtCore import Qt, QTimer
from PySide6.QtGui import QHideEvent
from PySide6.QtWidgets import (
    QApplication,
    QDialog,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, PassphraseRefused
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.words import say

_SECOND_MS = 1_000


@contextmanager
def _hashing() -> Iterator[None]:
    """Say by the cursor that the window works; a hash takes about a tenth of a second."""
    QApplication.setOverrideCursor(Qt.CursorShape.WaitCursor)
    try:
        yield
    finally:
        QApplication.restoreOverrideCursor()


class _Asking(QDialog):
    """Fields whose text is never shown, the act, and why it was refused."""

    def __init__(self, desk: Desk, title: str, act: str, parent: QWidget | None) -> None:
        super().__init__(parent)
        self._desk = desk
        self._left = 0
        self.setWindowTitle(tr(title))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setMinimumWidth(theme.em() * 24)
        self.asks = wrapped(title, "title")
        self.says = wrapped(weight="refusal")
        self.says.hide()
        self.act = QPushButton(tr(act))
        self.act.setProperty("weight", "main")
        self.act.setDefault(True)
        self.back = QPushButton(tr("&Back"))
        self.back.setToolTip(tr("Esc; nothing is signed, what is typed stays"))
        self.back.setAutoDefault(False)
        self._second = QTimer(self)
        self._second.setInterval(_SECOND_MS)
        self._second.timeout.connect(self._tick)
        self._column = QVBoxLayout(self)
        self._column.addWidget(self.asks)
        self.act.clicked.connect(lambda _: self.begin())
        self.back.clicked.connect(lambda _: self.reject())

    def _finish(self) -> None:
        """Put refusal and acts under the fields."""
        acts = QHBoxLayout()
        acts.addWidget(self.back)
        acts.addStretch(1)
        acts.addWidget(self.act)
        self._column.addWidget(self.says)
        self._column.addLayout(acts)
        order = (*self.fields(), self.act, self.back)
        for before, after in pairwise(order):
            self.setTabOrder(before, after)
        order[0].setFocus()

    def _field(self, label: str) -> QLineEdit:
        field = QLineEdit()
        field.setEchoMode(QLineEdit.EchoMode.Password)
        field.setInputMethodHints(
            Qt.InputMethodHint.ImhSensitiveData
            | Qt.InputMethodHint.ImhHiddenText
            | Qt.InputMethodHint.ImhNoPredictiveText
        )
        field.setAccessibleName(tr(label.replace("&", "")))
        named = QLabel(tr(label))
        named.setBuddy(field)
        self._column.addWidget(named)
        self._column.addWidget(field)
        return field

    def fields(self) -> tuple[QLineEdit, ...]:
        """What is typed into."""
        return tuple(self.findChildren(QLineEdit))

    def begin(self) -> None:
        """Do it."""
        raise NotImplementedError

    def _refuse(self, refusal: ChargebenchError) -> None:
        """Say why; where one has to wait, count the seconds down."""
        self.says.setText(tr(str(refusal)))
        self.says.show()
        self._left = refusal.wait_seconds if isinstance(refusal, PassphraseRefused) else 0
        if self._left:
            self.act.setEnabled(False)
            self._second.start()
        for field in self.fields():
            field.clear()
        self.fields()[0].setFocus()

    def _tick(self) -> None:
        self._left -= 1
        if self._left > 0:
            self.says.setText(
                tr(say("Too many wrong tries. Try again in {left} s.", left=self._left))
            )
            return
        self._second.stop()
        self.act.setEnabled(True)
        self.says.setText(tr("Try again now."))

    def hideEvent(self, event: QHideEvent) -> None:  # noqa: N802 - Qt's name
        """Nothing typed here stays."""
        for field in self.fields():
            field.clear()
        super().hideEvent(event)


class UnlockDialog(_Asking):
    """Asks for the passphrase of who signs."""

    def __init__(self, desk: Desk, parent: QWidget | None = None) -> None:
        name = desk.label("person", desk.person)
        super().__init__(desk, say("{name} signs", name=name), "&Unlock", parent)
        self.typed = self._field("&PIN or passphrase")
        self._finish()

    def begin(self) -> None:
        """Unlock, for a shift or until idleness."""
        try:
            with _hashing():
                self._desk.unlock(self.typed.text())
        except ChargebenchError as refusal:
            self._refuse(refusal)
            return
        self.accept()


class SetDialog(_Asking):
    """Asks for a new passphrase twice, and for the present one where it is one's own."""

    def __init__(self, desk: Desk, person: str, parent: QWidget | None = None) -> None:
        name = desk.label("person", person)
        super().__init__(
            desk, say("What unlocks the signature of {name}", name=name), "&Set", parent
        )
        self._person = person
        self._column.addWidget(
            wrapped(
                "A PIN or passphrase of at least four characters. It is not kept itself, only what "
                "can check it; that it was set is recorded.",
                "faint",
            )
        )
        own = person == desk.person and desk.has_passphrase
        self.present = self._field("&Present one") if own else None
        self.new = self._field("&New one")
        self.again = self._field("New one &again")
        self._finish()

    def begin(self) -> None:
        """Set it."""
        if self.new.text() != self.again.text():
            self._refuse(ChargebenchError("Expected the same new one twice. Type all anew."))
            return
        try:
            with _hashing():
                present = self.present.text() if self.present is not None else ""
                self._desk.set_passphrase(self._person, self.new.text(), present=present)
        except ChargebenchError as refusal:
            self._refuse(refusal)
            return
        self.accept()


def ask(desk: Desk, window: QWidget) -> None:
    """Let who signs unlock their signature before going on; going back leaves it locked."""
    parent = QApplication.activeWindow() or window
    dialog: _Asking = (
        UnlockDialog(desk, parent) if desk.has_passphrase else SetDialog(desk, desk.person, parent)
    )
    dialog.exec()
    dialog.deleteLater()
    parent.activateWindow()  # the next key goes on where the signature was asked for
