"""Editors a field can have: one line, a moment, a choice, yes or no."""

import time
from datetime import datetime

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QResizeEvent, QWheelEvent
from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QSizePolicy,
    QWidget,
)

from chargebench.steps.form import YES_NO
from chargebench.ui import theme
from chargebench.ui.language import tr
from chargebench.words import say

SEEK_SECONDS = 1.5  # letters typed without a longer pause are one word


class LineEdit(QLineEdit):
    """One line of text; at its right edge stands what the text was understood as."""

    edited = Signal()

    def __init__(self, example: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tail = QLabel(self)
        self._tail.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._tail.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._tail.setProperty("weight", "faint")
        self._says = ""
        if example:
            self.setPlaceholderText(tr(say("e.g. {example}", example=example)))
        self.textEdited.connect(lambda _: self.edited.emit())

    def put(self, text: str) -> None:
        """Show a text as if it had been typed earlier."""
        if text != self.text():
            self.setText(text)
            self.setCursorPosition(0)

    def type_over(self, text: str) -> None:
        """Replace the text on a person's behalf; counts as typed."""
        if text != self.text():
            self.setText(text)
            self.edited.emit()

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self.setReadOnly(locked)

    def tail(self) -> str:
        """What stands at the right edge."""
        return self._says

    def say(self, text: str) -> None:
        """Write what the text was understood as at the right edge."""
        text = tr(text)
        if text != self._says:
            self._says = text
            self._place_tail()

    def _place_tail(self) -> None:
        room = self.width() // 2
        metrics = self._tail.fontMetrics()
        self._tail.setText(metrics.elidedText(self._says, Qt.TextElideMode.ElideRight, room))
        wide = metrics.horizontalAdvance(self._tail.text()) + theme.em() // 4
        margin = theme.em() // 2
        self._tail.setGeometry(self.width() - wide - margin, 2, wide, self.height() - 4)
        self.setTextMargins(0, 0, wide + margin if self._says else 0, 0)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Keep the right edge."""
        super().resizeEvent(event)
        self._place_tail()


class WhenEdit(LineEdit):
    """A date or a moment; Ctrl+T writes today or now."""

    def __init__(self, example: str, *, moment: bool, parent: QWidget | None = None) -> None:
        super().__init__(example or ("2026-11-25 14:30" if moment else "2026-11-25"), parent)
        self._moment = moment
        self.setToolTip(tr("Ctrl+T writes now" if moment else "Ctrl+T writes today"))

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Ctrl+T."""
        ctrl = event.modifiers() == Qt.KeyboardModifier.ControlModifier
        if ctrl and event.key() == Qt.Key.Key_T and not self.isReadOnly():
            now = datetime.now().astimezone()
            self.type_over(f"{now:%Y-%m-%d %H:%M}" if self._moment else f"{now:%Y-%m-%d}")
            return
        super().keyPressEvent(event)


class Choice(QComboBox):
    """One of a few; the first letters choose. Turning the wheel over it changes nothing."""

    edited = Signal()

    def __init__(self, choices: tuple[str, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._says = ""
        self._sought, self._sought_at = "", 0.0
        self.addItem("", "")
        for choice in choices:
            self.addItem(tr(choice), choice)  # what is kept stays English
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(8)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.view().setTextElideMode(Qt.TextElideMode.ElideNone)
        self.currentIndexChanged.connect(lambda _: self.edited.emit())

    def text(self) -> str:
        """The choice made."""
        return str(self.currentData() or "")

    def put(self, text: str) -> None:
        """Show a choice made earlier, also one that is not offered any more."""
        if self.findData(text) < 0:
            self.addItem(tr(text), text)
        self.blockSignals(True)  # noqa: FBT003 - Qt's signature
        self.setCurrentIndex(self.findData(text))
        self.blockSignals(False)  # noqa: FBT003 - Qt's signature

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        self.setDisabled(locked)

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Letters look for a choice, spaces among them too; Delete takes it back."""
        text, plain = event.text(), not event.modifiers() & ~Qt.KeyboardModifier.ShiftModifier
        if event.key() in (Qt.Key.Key_Delete, Qt.Key.Key_Backspace):
            self.setCurrentIndex(0)
        elif plain and text.isprintable() and text and (text != " " or self._looking()):
            self._look_for(text)
        else:
            super().keyPressEvent(event)

    def _looking(self) -> bool:
        return bool(self._sought) and time.monotonic() - self._sought_at < SEEK_SECONDS

    def _look_for(self, text: str) -> None:
        self._sought = (self._sought if self._looking() else "") + text.casefold()
        self._sought_at = time.monotonic()
        choices = [self.itemText(place).casefold() for place in range(self.count())]
        for fits in (str.startswith, str.__contains__):
            found = [place for place, each in enumerate(choices) if fits(each, self._sought)]
            if found:
                self.setCurrentIndex(found[0])
                return

    def say(self, text: str) -> None:
        """Write what is wanted while nothing is chosen."""
        text = tr(text)
        if text != self._says:
            self._says = text
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802 - Qt's name
        """Draw what is wanted into the empty choice."""
        super().paintEvent(event)
        if self._says and not self.currentText():
            painter = QPainter(self)
            painter.setPen(QColor(theme.colours().faint))
            room = self.rect().adjusted(theme.em() // 2, 0, -theme.em() * 2, 0)
            side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(room, side, self._says)
            painter.end()

    def showPopup(self) -> None:  # noqa: N802 - Qt's name
        """Make the list as wide as its widest choice."""
        wide = self.view().sizeHintForColumn(0) + theme.em() * 2
        self.view().setMinimumWidth(max(self.width(), wide))
        super().showPopup()

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802 - Qt's name
        """Leave the wheel to the page."""
        event.ignore()


class YesNo(QWidget):
    """Yes, no, or not said: y, n, arrow keys; Delete takes it back."""

    edited = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(theme.em() // 3)
        self._buttons = {word: QPushButton(tr(word), self) for word in YES_NO}
        for word, button in self._buttons.items():
            button.setCheckable(True)
            button.setMinimumWidth(theme.em() * 4)
            button.clicked.connect(lambda checked, w=word: self._press(w if checked else ""))
            button.installEventFilter(self)
            layout.addWidget(button)
        layout.addStretch()
        self._wants = QLabel()
        self._wants.setProperty("weight", "faint")
        layout.addWidget(self._wants)
        self._buttons["no"].setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.setFocusProxy(self._buttons["yes"])

    def text(self) -> str:
        """What was said."""
        return next((word for word, each in self._buttons.items() if each.isChecked()), "")

    def put(self, text: str) -> None:
        """Show what was said earlier."""
        for word, button in self._buttons.items():
            button.setChecked(word == text)

    def lock(self, *, locked: bool) -> None:
        """Only to be read."""
        for button in self._buttons.values():
            button.setDisabled(locked)

    def say(self, text: str) -> None:
        """Write what is wanted while nothing is said."""
        self._wants.setText(tr("" if self.text() else text))

    def name(self, label: str) -> None:
        """Name both buttons for a screen reader."""
        for word, button in self._buttons.items():
            button.setAccessibleName(tr(say("{label}: {word}", label=label, word=word)))

    def parts(self) -> list[QWidget]:
        """Both buttons."""
        return list(self._buttons.values())

    def _press(self, word: str) -> None:
        self.put(word)
        self.edited.emit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:  # noqa: N802 - Qt's name
        """Keys of both buttons."""
        if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            keys = {
                **{Qt.Key(ord(tr(word)[0].upper())): word for word in YES_NO},
                Qt.Key.Key_Left: "yes",
                Qt.Key.Key_Right: "no",
                Qt.Key.Key_Delete: "",
                Qt.Key.Key_Backspace: "",
            }
            plain = not event.modifiers() & (
                Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.AltModifier
            )
            if plain and event.key() in keys:
                word = keys[Qt.Key(event.key())]
                self._press(word)
                if word:
                    self._buttons[word].setFocus()
                return True
        return super().eventFilter(watched, event)
