"""A paper laid out: marks on pages in millimetres, from which PDF, preview and printer are drawn.

Whatever draws a paper draws these marks and nothing else, so that what is seen in the preview is
what lies in the printer and in the PDF.
"""

from dataclasses import dataclass
from datetime import datetime

POINT_MM = 25.4 / 72


@dataclass(frozen=True, slots=True)
class Words:
    """A line of text; `y` is its baseline."""

    x: float
    y: float
    text: str
    size: float  # points
    bold: bool = False
    grey: int = 0  # level, 0 black to 255 white


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line through points."""

    points: tuple[tuple[float, float], ...]
    width: float = 0.2
    grey: int = 0
    dash: float = 0.0  # length of a dash and of the gap after it; 0: drawn through


@dataclass(frozen=True, slots=True)
class Box:
    """A filled rectangle."""

    x: float
    y: float
    width: float
    height: float
    grey: int = 0


@dataclass(frozen=True, slots=True)
class Ring:
    """A small circle, hollow."""

    x: float
    y: float
    radius: float
    grey: int = 0


@dataclass(frozen=True, slots=True)
class Image:
    """A picture as JPEG in the three colours of a screen, or in greys."""

    x: float
    y: float
    width: float
    height: float
    jpeg: bytes


Mark = Words | Stroke | Box | Ring | Image


@dataclass(frozen=True, slots=True)
class Drawn:
    """A paper, ready to be drawn anywhere."""

    title: str
    width: float
    height: float
    pages: tuple[tuple[Mark, ...], ...]
    made_at: datetime
    program: str
