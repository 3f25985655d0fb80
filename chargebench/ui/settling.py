"""What has to be decided after a hand-over: a conflict settled, one thing or two."""

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.steps import REGISTERS
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.words import joined, say


class _Decision(QDialog):
    """Words, a line to type a reason in, and what can be decided."""

    def __init__(self, title: str, says: str, asks: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr(title))
        self.setWindowModality(Qt.WindowModality.WindowModal)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.words = wrapped(says)
        self.reason = QLineEdit()
        self.reason.setAccessibleName(tr(asks))
        self.refusal = wrapped(weight="refusal")
        self.refusal.hide()
        self.cancel = QPushButton(tr("&Cancel"))
        self.cancel.setAutoDefault(False)
        self.cancel.clicked.connect(lambda _: self.reject())
        self._acts = QHBoxLayout()
        self._acts.addStretch()
        self._acts.addWidget(self.cancel)
        column = QVBoxLayout(self)
        column.addWidget(wrapped(title, "title"))
        column.addWidget(self.words)
        column.addWidget(wrapped(asks, "faint"))
        column.addWidget(self.reason)
        column.addWidget(self.refusal)
        column.addLayout(self._acts)
        self.resize(min(theme.em() * 40, parent.window().width()), self.sizeHint().height())

    def offer(self, words: str, act: Callable[[str], object], *, main: bool = False) -> QPushButton:
        """Add a button that records a decision with the reason typed."""
        button = QPushButton(tr(words))
        button.setAutoDefault(False)
        if main:
            button.setProperty("weight", "main")
        button.clicked.connect(lambda _: self._decide(act))
        self._acts.addWidget(button)
        return button

    def _decide(self, act: Callable[[str], object]) -> None:
        try:
            act(self.reason.text())
        except ChargebenchError as refusal:
            self.refusal.setText(tr(str(refusal)))
            self.refusal.show()
            self.reason.setFocus()
            return
        self.accept()


class SettleConflict(_Decision):
    """How a conflict of a hand-over was settled."""

    def __init__(self, desk: Desk, key: str, says: str, parent: QWidget) -> None:
        super().__init__("Settle a conflict", says, "How it was settled", parent)
        self.settled = self.offer("&Settled", lambda reason: desk.settle(key, reason), main=True)


class DecideTwice(_Decision):
    """Whether two ids name one thing, with what is written of both."""

    def __init__(self, desk: Desk, register: str, one: str, other: str, parent: QWidget) -> None:
        title = say("{title}: one or two?", title=REGISTERS[register].title)
        super().__init__(title, _beside(desk, register, one, other), "Why (may stay empty)", parent)

        def decided(*, same: bool) -> Callable[[str], object]:
            return lambda reason: desk.decide(register, one, other, same=same, reason=reason)

        self.two = self.offer("&Two things", decided(same=False))
        self.same = self.offer("The &same thing", decided(same=True), main=True)


def _beside(desk: Desk, register: str, one: str, other: str) -> str:
    rows = desk.row(register, one), desk.row(register, other)
    lines = [say("{one} beside {other}:", one=one, other=other)]
    for field in REGISTERS[register].fields:
        words = [row.get(field.key, "") for row in rows]
        if any(words):
            same = "the same" if words[0] == words[1] else words[1] or "nothing"
            lines.append(
                say(
                    "{label}: {words} – {same}",
                    label=field.label,
                    words=words[0] or "nothing",
                    same=same,
                )
            )
    return joined("\n", lines)


def open_decision(
    desk: Desk, about: str, says: str, parent: QWidget, done: Callable[[], None]
) -> _Decision | None:
    """Open what a flag asks to be decided; None where it asks nothing of the kind."""
    kind, _, rest = about.partition(":")
    dialog: _Decision
    if kind == "conflict":
        dialog = SettleConflict(desk, about, says, parent)
    elif kind == "twice":
        register, _, pair = rest.partition(":")
        one, _, other = pair.partition("=")
        dialog = DecideTwice(desk, register, one, other, parent)
    else:
        return None
    dialog.accepted.connect(done)
    dialog.open()
    dialog.reason.setFocus()
    return dialog
