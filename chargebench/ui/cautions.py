"""What to mind at a step: the first caution on one line, all and their sources one key away."""

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from chargebench import sources
from chargebench.rules import ChecklistLine
from chargebench.ui import theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.ui.oneline import OneLine
from chargebench.words import joined, say


class Cautions(QWidget):
    """Cautions that hold for a refrigerant's class at one step; nothing where there are none."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: tuple[ChecklistLine, ...] = ()
        self.first = OneLine()
        self.more = QPushButton()
        self.more.setCheckable(True)
        self.more.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.more.toggled.connect(self._unfold)
        QShortcut(QKeySequence("Shift+F8"), self).activated.connect(self._toggle)
        self.more.setToolTip(tr("Shift+F8: all cautions of this step with their sources"))
        self.all = wrapped()
        self.all.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.all.hide()
        top = QHBoxLayout()
        top.setContentsMargins(0, 0, 0, 0)
        top.addWidget(self.first, 1)
        top.addWidget(self.more)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, theme.em() // 3)
        column.setSpacing(theme.em() // 6)
        column.addLayout(top)
        column.addWidget(self.all)
        self.setAccessibleName(tr("Cautions"))
        self.hide()

    def show_lines(self, lines: Sequence[ChecklistLine]) -> None:
        """Show the cautions of a step, the one that counts first on its line."""
        if tuple(lines) == self._lines:
            return
        self._lines = tuple(lines)
        self.setVisible(bool(lines))
        if not lines:
            self.more.setChecked(False)
            return
        self.first.say(say("Mind: {text}", text=lines[0].text))
        self.first.setAccessibleName(
            tr(say("Mind: {text} {source}", text=lines[0].text, source=_source(lines[0])))
        )
        self.all.setText(
            tr(
                joined(
                    "\n",
                    (
                        say("{text} · {source}", text=line.text, source=_source(line))
                        for line in lines
                    ),
                )
            )
        )
        self._unfold(self.more.isChecked())

    def _toggle(self) -> None:
        if self._lines:
            self.more.toggle()

    def _unfold(self, unfolded: bool) -> None:  # noqa: FBT001 - a signal's signature
        many = say("All {count}", count=len(self._lines)) if len(self._lines) > 1 else "Source"
        self.more.setText(tr("Less" if unfolded else many))
        self.all.setVisible(unfolded)


def _source(line: ChecklistLine) -> str:
    place = f", {line.place}" if line.place else ""
    return sources.said(f"{line.source}{place}", line.mark)
