"""Colours of what is drawn, from the theme in use; meaning never hangs on colour alone."""

from dataclasses import dataclass

from PySide6.QtGui import QColor

from chargebench.ui import theme


@dataclass(frozen=True, slots=True)
class Ink:
    """One set of drawing colours."""

    ground: QColor
    paper: QColor
    text: QColor
    quiet: QColor
    line: QColor
    mass: QColor
    on_mass: QColor
    before: QColor
    stop: QColor
    check: QColor
    note: QColor

    def of_level(self, level: str) -> QColor:
        """Colour of a flag's level; ordinary text for none."""
        return {"stop": self.stop, "check": self.check, "note": self.note}.get(level, self.text)


def ink() -> Ink:
    """Drawing colours that go with the theme in use."""
    now = theme.colours()
    accent, panel = QColor(now.accent), QColor(now.panel)
    return Ink(
        ground=QColor(now.ground),
        paper=panel,
        text=QColor(now.ink),
        quiet=QColor(now.faint),
        line=QColor(now.line),
        mass=accent,
        on_mass=QColor(now.on_accent),
        before=blend(accent, panel, 0.65),
        stop=QColor(now.stop),
        check=QColor(now.check),
        note=QColor(now.note),
    )


def blend(one: QColor, other: QColor, share: float) -> QColor:
    """One colour with a share of another mixed in."""
    return QColor(
        round(one.red() * (1 - share) + other.red() * share),
        round(one.green() * (1 - share) + other.green() * share),
        round(one.blue() * (1 - share) + other.blue() * share),
    )
