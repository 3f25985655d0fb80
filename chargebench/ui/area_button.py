"""A button that turns to one of several views of a page."""

from PySide6.QtWidgets import QPushButton

from chargebench.ui.language import tr


def area_button(words: str) -> QPushButton:
    """One of several of which one is chosen: of those in its group, else beside it."""
    button = QPushButton(tr(words))
    button.setProperty("weight", "area")
    button.setCheckable(True)
    button.setAutoExclusive(True)
    button.setAutoDefault(False)
    return button
