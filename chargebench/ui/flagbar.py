"""Flags of a job: the worst always in sight, the rest one key away."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from chargebench.flags import Flag
from chargebench.sources import MARKS_SAID, cite, name
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.oneline import OneLine
from chargebench.ui.shapes import Shape
from chargebench.words import say


def source_words(source: str, mark: str = "") -> str:
    """A source in full: its name with the place, the whole citation, how far it was checked."""
    key, _, _ = source.partition(",")
    checked = (
        say(" This figure is {marks_said}.", marks_said=MARKS_SAID[mark])
        if mark in MARKS_SAID
        else ""
    )
    try:
        return f"{name(source)}: {cite(key.strip())}.{checked}"
    except KeyError:
        return source


def _in_full(flag: Flag) -> str:
    """A flag's sentence, and whether the figure it stands on was never verified."""
    if flag.mark != "MEMORY":
        return flag.says
    return say(
        "{says} (The figure behind it is {marks_said}.)",
        says=flag.says,
        marks_said=MARKS_SAID[flag.mark],
    )


class FlagLine(QWidget):
    """One flag: shape, word, sentence, source."""

    def __init__(self, flag: Flag | None = None) -> None:
        super().__init__()
        self._shape = Shape()
        self._word = QLabel()
        self._says = wrapped()
        self._brief = OneLine()
        self._brief.hide()
        layout = QGridLayout(self)
        layout.setContentsMargins(0, theme.em() // 5, 0, theme.em() // 5)
        layout.setHorizontalSpacing(theme.em() // 3)
        top = Qt.AlignmentFlag.AlignTop
        layout.addWidget(self._shape, 0, 0, top)
        layout.addWidget(self._word, 0, 1, top)
        layout.addWidget(self._says, 0, 2, top)
        layout.addWidget(self._brief, 0, 3, top)
        self.set_brief(brief=False)
        self.show_flag(flag)

    def set_brief(self, *, brief: bool) -> None:
        """One line only, where the page is low; the whole sentence again where it is not."""
        self._says.setHidden(brief)
        self._brief.setVisible(brief)
        grid = self.layout()
        assert isinstance(grid, QGridLayout)
        for column, stretch in ((2, not brief), (3, brief)):
            grid.setColumnStretch(column, int(stretch))

    def show_flag(self, flag: Flag | None) -> None:
        """Show a flag, or that there is none."""
        if flag is None:
            self._shape.show_shape("")
            self._word.hide()
            self._says.setText(tr("No flags on this job."))
            self._brief.say(self._says.text())
            self.setToolTip("")
            return
        self._shape.show_shape(flag.level)
        self._word.setText(tr(flag.level).upper())
        self._word.show()
        self._word.setProperty("weight", flag.level)
        self._word.style().unpolish(self._word)
        self._word.style().polish(self._word)
        self._says.setText(tr(_in_full(flag)))
        self._brief.say(_in_full(flag), flag.says)
        self.setToolTip(tr(source_words(flag.source, flag.mark) if flag.source else ""))
        self.setAccessibleName(
            tr(say("{level}: {in_full}", level=flag.level, in_full=_in_full(flag)))
        )

    def text(self) -> str:
        """What the line says."""
        return self._says.text()


class FlagBar(QFrame):
    """The worst flag, and a button that unfolds the others below it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self._flags: tuple[Flag, ...] = ()
        self._shown = False
        self._low = False
        self.worst = FlagLine()
        self.more = QPushButton()
        self.more.setCheckable(True)
        QShortcut(QKeySequence("F8"), self).activated.connect(self._toggle)
        self.more.toggled.connect(self._unfold)
        self._rest = QScrollArea()
        self._rest.setWidgetResizable(True)
        self._rest.setFrameShape(QFrame.Shape.NoFrame)
        self._rest.hide()
        top = QHBoxLayout()
        top.addWidget(self.worst, 1)
        top.addWidget(self.more, 0, Qt.AlignmentFlag.AlignTop)
        layout = QVBoxLayout(self)
        edge = theme.em() // 3
        layout.setContentsMargins(edge, edge // 2, edge, edge // 2)
        layout.setSpacing(0)
        layout.addLayout(top)
        layout.addWidget(self._rest)
        self.show_flags(())

    def flags(self) -> tuple[Flag, ...]:
        """The flags shown, worst first."""
        return self._flags

    def show_flags(self, flags: Sequence[Flag]) -> None:
        """Show flags, worst first."""
        if tuple(flags) == self._flags and self._shown:
            return
        self._shown = True
        self._flags = tuple(flags)
        self.worst.show_flag(self._flags[0] if self._flags else None)
        self._offer_more()

    def set_low(self, *, low: bool) -> None:
        """On a low page the worst flag takes one line; all of it is one key away with the rest."""
        if low != self._low:
            self._low = low
            self.worst.set_brief(brief=low)
            self._offer_more()

    def _rest_of(self) -> tuple[Flag, ...]:
        return self._flags if self._low else self._flags[1:]

    def _offer_more(self) -> None:
        rest = self._rest_of()
        self.more.setVisible(bool(rest))
        self.more.setText(
            tr(
                say("All {count} (F8)", count=len(rest))
                if self._low
                else say("{count} more (F8)", count=len(rest))
            )
        )
        if not rest:
            self.more.setChecked(False)
        if self.more.isChecked():
            self._fill()

    def _toggle(self) -> None:
        if self._rest_of():
            self.more.toggle()

    def _unfold(self, unfolded: bool) -> None:  # noqa: FBT001 - a signal's signature
        unfolded = unfolded and bool(self._rest_of())
        self._rest.setVisible(unfolded)
        if unfolded:
            self._fill()

    def _fill(self) -> None:
        page = QWidget()
        page.setObjectName("page")
        column = QVBoxLayout(page)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for flag in self._rest_of():
            column.addWidget(FlagLine(flag))
            if flag.source:
                source = wrapped(source_words(flag.source, flag.mark), "faint")
                source.setContentsMargins(theme.em() * 2, 0, 0, theme.em() // 3)
                column.addWidget(source)
        column.addStretch()
        self._rest.setWidget(page)
        line = theme.em()
        most = line * (6 if self._low else 12)
        self._rest.setFixedHeight(max(line * 4, min(most, page.sizeHint().height())))
