"""What belongs to this computer alone: how the window looks, how large its text is, its language.

Kept on this computer and not in the records; counts once the page it stands on is closed.
"""

from PySide6.QtWidgets import QComboBox, QFormLayout, QLabel, QSizePolicy, QWidget

from chargebench.ui import language, theme
from chargebench.ui.fieldrow import wrapped
from chargebench.ui.language import tr
from chargebench.words import say

_LOOKS = {theme.SYSTEM: "As the system", "light": "Light", "dark": "Dark"}


class ThisBench(QWidget):
    """Three choices."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.look, self.text, self.language = QComboBox(), QComboBox(), QComboBox()
        for key, words in _LOOKS.items():
            self.look.addItem(tr(words), key)
        for size in theme.TEXT_SIZES:
            self.text.addItem(tr(say("{percent} %", percent=round(size * 100))), size)
        for code, words in language.LANGUAGES.items():
            self.language.addItem(tr(words), code)
        self._page = QFormLayout(self)
        self._page.setContentsMargins(0, theme.em(), 0, 0)
        self._page.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self._page.addRow(wrapped("This bench", "head"))
        self._page.addRow(
            wrapped("Kept on this computer; counts once this page is closed.", "faint")
        )
        for words, box in (
            ("Light or dark", self.look),
            ("Text size (Ctrl+Plus, Ctrl+Minus)", self.text),
            ("Language", self.language),
        ):
            label = QLabel(tr(words))
            label.setBuddy(box)
            box.setAccessibleName(tr(words))
            box.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
            self._page.addRow(label, box)
        self.look.setCurrentIndex(self.look.findData(theme.look()))
        self.text.setCurrentIndex(theme.TEXT_SIZES.index(theme.kept_text_size()))
        self.language.setCurrentIndex(self.language.findData(language.chosen()))
        self.look.currentIndexChanged.connect(lambda _: theme.keep_look(self.look.currentData()))
        self.text.currentIndexChanged.connect(
            lambda _: theme.keep_text_size(self.text.currentData())
        )
        self.language.currentIndexChanged.connect(
            lambda _: language.keep(self.language.currentData())
        )
