"""The head of the window: the three areas, the shop and how it judges, and who signs."""

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QPushButton, QWidget

from chargebench.ui import theme
from chargebench.ui.language import tr
from chargebench.ui.oneline import OneLine
from chargebench.ui.whosigns import WhoSigns
from chargebench.words import say

AREAS = ("Bench", "Stock", "Records")


class TopBar(QWidget):
    """Where one is and who one is."""

    area_wanted = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._tabs = QButtonGroup(self)
        line = QHBoxLayout(self)
        line.setContentsMargins(theme.em() // 2, 0, theme.em() // 2, 0)
        for place, name in enumerate(AREAS):
            tab = QPushButton(tr(name))
            tab.setCheckable(True)
            tab.setProperty("weight", "area")
            tab.setToolTip(tr(say("Alt+{place}", place=place + 1)))
            tab.setEnabled(False)
            self._tabs.addButton(tab, place)
            line.addWidget(tab)
        self.shop = OneLine()
        self.shop.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.settings = QPushButton(tr("Shop…"))
        self.settings.setProperty("weight", "area")
        self.settings.setToolTip(tr("Ctrl+,: name, address, units, rule set, how it looks here"))
        self.settings.hide()
        self.who = WhoSigns()
        line.addWidget(self.shop, 1)
        line.addWidget(self.settings)
        line.addSpacing(theme.em() // 2)
        line.addWidget(self.who)
        self._tabs.idClicked.connect(self.area_wanted)

    @property
    def area(self) -> int:
        """Which area is shown; -1 for none."""
        return self._tabs.checkedId()

    def open(self) -> None:
        """Offer what a shop that is open has."""
        from chargebench.ui import icons  # not before the window stands on the screen

        for tab, name in zip(self._tabs.buttons(), AREAS, strict=True):
            tab.setEnabled(True)
            icons.put(tab, name.lower())
        self.settings.show()

    def show_area(self, place: int) -> None:
        """Mark an area; the focus goes along where a tab has it."""
        self._tabs.button(place).setChecked(True)
        if any(tab.hasFocus() for tab in self._tabs.buttons()):
            self._tabs.button(place).setFocus()
