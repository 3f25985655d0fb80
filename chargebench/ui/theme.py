"""Colours, sizes and the style sheet: light and dark, from the system or by choice; our own.

A state is told by shape and word; colour only repeats it. No colour stands for a refrigerant.
"""

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPalette
from PySide6.QtWidgets import QApplication, QPushButton

from chargebench.ui.kept import kept

TARGET_PX_MIN = 44  # a gloved finger
TEXT_SIZES = (1.0, 1.25, 1.5, 1.75, 2.0)
SYSTEM = ""
LOOKS = (SYSTEM, "light", "dark")
_LOOK, _TEXT = "look", "text"


@dataclass(frozen=True, slots=True)
class Colours:
    """One set of colours; every text colour has 4.5:1 or more on ground and panel."""

    ground: str
    panel: str
    ink: str
    faint: str
    line: str
    accent: str
    on_accent: str
    focus: str
    stop: str
    check: str
    note: str
    chosen: str


LIGHT = Colours(
    ground="#f1f2ec",
    panel="#fdfdfa",
    ink="#1a2426",
    faint="#54605f",
    line="#98a39f",
    accent="#14505a",
    on_accent="#ffffff",
    focus="#b04a00",
    stop="#a01c1c",
    check="#744600",
    note="#274c80",
    chosen="#d8e5e3",
)
DARK = Colours(
    ground="#12181a",
    panel="#1b2326",
    ink="#e9eeea",
    faint="#a5b3b2",
    line="#5b6a6c",
    accent="#7fd0d6",
    on_accent="#0c2226",
    focus="#ffb066",
    stop="#ff9d94",
    check="#f0c069",
    note="#a3c4f7",
    chosen="#2b3d41",
)


class _Now:
    colours = LIGHT
    text_size = 1.0
    base_points = 0.0


def colours() -> Colours:
    """The colours in use."""
    return _Now.colours


def em() -> int:
    """Height of a line of text in pixels; sizes are multiples of it so that text can grow."""
    return QFontMetrics(QApplication.font()).height()


def target() -> int:
    """Height of anything that is pressed."""
    return max(TARGET_PX_MIN, round(em() * 1.9))


def text_size() -> float:
    """Factor on the system's text size."""
    return _Now.text_size


def apply(app: QApplication, *, dark: bool | None = None, text: float | None = None) -> None:
    """Put colours, text size and style sheet on; `dark` and `text` override what is in use."""
    if dark is None:
        dark = app.styleHints().colorScheme() is Qt.ColorScheme.Dark
    if not _Now.base_points:
        app.setStyle("Fusion")
        _Now.base_points = max(app.font().pointSizeF(), 9.0) * 1.15
    _Now.colours = DARK if dark else LIGHT
    _Now.text_size = _Now.text_size if text is None else text
    font = QFont(app.font())
    font.setPointSizeF(_Now.base_points * _Now.text_size)
    app.setFont(font)
    app.setPalette(_palette(_Now.colours))
    app.setStyleSheet(_editors(_Now.colours) + _acts_and_lists(_Now.colours))


def look() -> str:
    """The look this bench chose; empty: as the system."""
    chosen = str(kept().value(_LOOK, SYSTEM))
    return chosen if chosen in LOOKS else SYSTEM


def kept_text_size() -> float:
    """The text size this bench chose."""
    try:
        wanted = float(str(kept().value(_TEXT, TEXT_SIZES[0])))
    except ValueError:
        wanted = TEXT_SIZES[0]
    return min(TEXT_SIZES, key=lambda size: abs(size - wanted))


def keep_look(chosen: str) -> None:
    """Remember a look for this bench."""
    assert chosen in LOOKS, chosen
    kept().setValue(_LOOK, chosen)


def keep_text_size(size: float) -> None:
    """Remember a text size for this bench."""
    kept().setValue(_TEXT, str(size))


def apply_chosen(app: QApplication) -> None:
    """Put on the look and the text size this bench chose."""
    chosen = look()
    apply(app, dark=None if chosen == SYSTEM else chosen == "dark", text=kept_text_size())


def step_text(app: QApplication, by: int) -> None:
    """Make text one size larger or smaller, from now on."""
    place = min(TEXT_SIZES, key=lambda size: abs(size - _Now.text_size))
    wanted = TEXT_SIZES.index(place) + by
    if 0 <= wanted < len(TEXT_SIZES):
        keep_text_size(TEXT_SIZES[wanted])
        apply(app, dark=_Now.colours is DARK, text=TEXT_SIZES[wanted])


def follow_system(app: QApplication, then: Callable[[], None]) -> None:
    """Change between light and dark when the system does, unless one was chosen."""

    def changed() -> None:
        if look() == SYSTEM:
            apply(app)
            then()

    app.styleHints().colorSchemeChanged.connect(lambda _: changed())


def mark_main(button: QPushButton, *, main: bool) -> None:
    """Mark a button as the one act a page is for, or as one among others."""
    wanted = "main" if main else ""
    if button.property("weight") != wanted:
        button.setProperty("weight", wanted)
        button.style().unpolish(button)
        button.style().polish(button)


def _palette(c: Colours) -> QPalette:
    palette = QPalette()
    roles = {
        QPalette.ColorRole.Window: c.ground,
        QPalette.ColorRole.WindowText: c.ink,
        QPalette.ColorRole.Base: c.panel,
        QPalette.ColorRole.AlternateBase: c.ground,
        QPalette.ColorRole.Text: c.ink,
        QPalette.ColorRole.Button: c.panel,
        QPalette.ColorRole.ButtonText: c.ink,
        QPalette.ColorRole.BrightText: c.stop,
        QPalette.ColorRole.PlaceholderText: c.faint,
        QPalette.ColorRole.Highlight: c.accent,
        QPalette.ColorRole.HighlightedText: c.on_accent,
        QPalette.ColorRole.Link: c.accent,
        QPalette.ColorRole.ToolTipBase: c.panel,
        QPalette.ColorRole.ToolTipText: c.ink,
        QPalette.ColorRole.Mid: c.line,
    }
    for role, colour in roles.items():
        palette.setColor(role, QColor(colour))
    # Text that can not be edited is still read: the same contrast as other text.
    for role in (QPalette.ColorRole.Text, QPalette.ColorRole.WindowText):
        palette.setColor(QPalette.ColorGroup.Disabled, role, QColor(c.ink))
    palette.setColor(QPalette.ColorGroup.Disabled, QPalette.ColorRole.ButtonText, QColor(c.faint))
    return palette


def _editors(c: Colours) -> str:
    line = em()
    high = target() - 4  # two borders of 2 px
    return f"""
QLineEdit, QPlainTextEdit, QComboBox {{
    background: {c.panel}; color: {c.ink}; border: 2px solid {c.line}; border-radius: 3px;
    padding: 0 {line // 3}px; selection-background-color: {c.accent};
    selection-color: {c.on_accent}; }}
QLineEdit, QPlainTextEdit {{ placeholder-text-color: {c.faint}; }}
QLineEdit, QComboBox {{ min-height: {high}px; }}
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus {{ border-color: {c.focus}; }}
QLineEdit[readOnly="true"], QPlainTextEdit[readOnly="true"] {{
    background: {c.ground}; border-style: dashed; }}
QComboBox:disabled {{ background: {c.ground}; color: {c.ink}; border-style: dashed; }}
QComboBox::drop-down {{ border: 0; width: {line * 3 // 2}px; }}
QComboBox::down-arrow {{
    width: 0; height: 0; border-left: {line // 4}px solid {c.panel};
    border-right: {line // 4}px solid {c.panel}; border-top: {line // 3}px solid {c.ink}; }}
QComboBox QAbstractItemView {{
    background: {c.panel}; color: {c.ink}; border: 2px solid {c.focus};
    selection-background-color: {c.accent}; selection-color: {c.on_accent}; }}
QComboBox QAbstractItemView::item {{ min-height: {high}px; }}
"""


def _acts_and_lists(c: Colours) -> str:
    line = em()
    high = target() - 4
    return f"""
QPushButton {{
    background: {c.panel}; color: {c.ink}; border: 2px solid {c.line}; border-radius: 3px;
    min-height: {high}px; min-width: {high}px; padding: 0 {line * 2 // 3}px; }}
QPushButton:hover {{ background: {c.chosen}; }}
QPushButton:focus {{ border-color: {c.focus}; }}
QPushButton:pressed, QPushButton:checked {{ background: {c.accent}; color: {c.on_accent}; }}
QPushButton:disabled {{ color: {c.faint}; border-style: dashed; }}
QPushButton:disabled:checked {{
    background: {c.chosen}; color: {c.ink}; border-style: solid; font-weight: bold; }}
QPushButton[weight="main"] {{
    background: {c.accent}; color: {c.on_accent}; border-color: {c.accent}; font-weight: bold; }}
QPushButton[weight="main"]:focus {{ border-color: {c.focus}; border-width: 3px; }}
QPushButton[weight="main"]:disabled {{ background: {c.panel}; color: {c.faint}; }}
QPushButton[weight="area"] {{
    border: 0; border-bottom: 4px solid transparent; background: transparent; border-radius: 0;
    font-weight: bold; }}
QPushButton[weight="area"]:checked {{ color: {c.accent}; border-bottom-color: {c.accent}; }}
QPushButton[weight="area"]:focus {{ border-bottom-color: {c.focus}; }}
QPushButton[weight="area"]:hover {{ background: {c.chosen}; }}
QScrollArea, QScrollArea > QWidget > QWidget#page {{ background: transparent; border: 0; }}
QFrame#panel {{ background: {c.panel}; border: 1px solid {c.line}; border-radius: 3px; }}
QFrame#line {{ border: 0; border-left: 4px solid {c.line}; }}
QLabel[weight="title"] {{ font-size: {round(_points() * 1.35)}pt; font-weight: bold; }}
QLabel[weight="head"] {{ font-weight: bold; }}
QLabel[weight="faint"] {{ color: {c.faint}; }}
QLabel[weight="refusal"] {{ color: {c.stop}; }}
QLabel[weight="stop"] {{ color: {c.stop}; font-weight: bold; }}
QLabel[weight="check"] {{ color: {c.check}; font-weight: bold; }}
QLabel[weight="note"] {{ color: {c.note}; font-weight: bold; }}
QLabel[weight="figure"] {{ font-weight: bold; }}
QListView, QTableView, QTreeView {{
    background: {c.panel}; color: {c.ink}; border: 2px solid {c.line}; border-radius: 3px;
    selection-background-color: {c.chosen}; selection-color: {c.ink}; outline: 0; }}
QListView:focus, QTableView:focus, QTreeView:focus {{ border-color: {c.focus}; }}
QTableView::item {{ padding: 0 {line // 3}px; border-bottom: 1px solid {c.chosen}; }}
QHeaderView::section {{
    background: {c.ground}; color: {c.faint}; border: 0; border-bottom: 2px solid {c.line};
    padding: {line // 4}px {line // 3}px; font-weight: bold; }}
QToolTip {{ background: {c.panel}; color: {c.ink}; border: 1px solid {c.line}; }}
"""


def _points() -> float:
    return _Now.base_points * _Now.text_size
