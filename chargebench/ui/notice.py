"""A line under the head of the window for what must not be missed; it stays until closed."""

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QWidget

from chargebench.ui.language import tr


class Notice(QFrame):
    """What was said last, and a button that puts it away."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("panel")
        self.says = QLabel()
        self.says.setWordWrap(True)
        self.says.setTextFormat(Qt.TextFormat.PlainText)
        self.close_button = QPushButton(tr("Close"))
        self.close_button.clicked.connect(lambda _: self.hide())
        layout = QHBoxLayout(self)
        layout.addWidget(self.says, 1)
        layout.addWidget(self.close_button)
        self.hide()

    def tell(self, text: str) -> None:
        """Say something."""
        self.says.setText(tr(text))
        self.show()
