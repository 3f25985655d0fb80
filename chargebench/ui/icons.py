"""Icons of our own, from resources/icons, drawn in the colours of the theme in use."""

from functools import lru_cache

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QAbstractButton

from chargebench.resource import resource
from chargebench.ui import theme

_KEPT = 512


@lru_cache(_KEPT)
def _drawing(name: str, colour: str, paper: str) -> QSvgRenderer:
    plain = resource("icons", f"{name}.svg").read_text(encoding="utf-8")
    coloured = plain.replace("currentColor", colour).replace('"paper"', f'"{paper}"')
    return QSvgRenderer(QByteArray(coloured.encode()))


def draw(painter: QPainter, rect: QRectF, name: str, colour: str) -> None:
    """Draw an icon into a square; what lies inside a filled shape is of the page's colour."""
    _drawing(name, colour, theme.colours().panel).render(painter, rect)


def pixmap(name: str, colour: str, side: int, ratio: float = 1.0) -> QPixmap:
    """An icon as a picture, sharp on a screen of this ratio."""
    made = QPixmap(QSize(round(side * ratio), round(side * ratio)))
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    draw(painter, QRectF(made.rect()), name, colour)
    painter.end()
    made.setDevicePixelRatio(ratio)
    return made


def put(button: QAbstractButton, name: str) -> None:
    """Put an icon before a button's word, in the colours the word has at rest and pressed."""
    now, side, ratio = theme.colours(), theme.em(), button.devicePixelRatioF()
    weight = button.property("weight")
    rest = now.on_accent if weight == "main" else now.ink
    pressed = now.accent if weight == "area" else now.on_accent
    icon = QIcon()
    for mode, state, colour in (
        (QIcon.Mode.Normal, QIcon.State.Off, rest),
        (QIcon.Mode.Normal, QIcon.State.On, pressed),
        (QIcon.Mode.Disabled, QIcon.State.Off, now.faint),
    ):
        icon.addPixmap(pixmap(name, colour, side, ratio), mode, state)
    button.setIcon(icon)
    button.setIconSize(QSize(side, side))
