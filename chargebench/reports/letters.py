"""How wide text is set in the embedded font, and where its lines break."""

from functools import cache

from fontTools.ttLib import TTFont

from chargebench.reports.drawn import POINT_MM
from chargebench.resource import resource

FONT = "DejaVu Sans"
FACES = {False: "DejaVuSans.ttf", True: "DejaVuSans-Bold.ttf"}  # by bold
LEADING = 1.38  # distance of lines, by the size of the letters
# What a font can not draw is shown as a box by the reader; control characters break lines apart.
_CONTROL = dict.fromkeys([*(set(range(0x20)) - {0x0A}), *range(0x7F, 0xA0)], " ")


def plain(text: str) -> str:
    """Text without what can not be set in a line."""
    return text.translate(_CONTROL).encode("utf-8", "replace").decode()


def width(text: str, size: float, *, bold: bool = False) -> float:
    """Width of a line [mm]."""
    advances, box, em = _advances(bold)
    units = sum(advances.get(ord(letter), box) for letter in text)
    return units / em * size * POINT_MM


def step(size: float) -> float:
    """Distance from a line to the next [mm]."""
    return size * POINT_MM * LEADING


@cache
def _advances(bold: bool) -> tuple[dict[int, int], int, int]:  # noqa: FBT001 - kept by it
    """Advance of each letter, that of the box for one that is lacking, and the em, in units."""
    with TTFont(resource("fonts", FACES[bold]), lazy=True) as font:
        widths = font["hmtx"].metrics
        known = {code: widths[name][0] for code, name in font.getBestCmap().items()}
        return known, widths[".notdef"][0], font["head"].unitsPerEm


def lines(text: str, room: float, size: float, *, bold: bool = False) -> list[str]:
    """Lines of a text in a width; a word longer than a line is broken where the line ends."""
    found: list[str] = []
    for part in plain(text).split("\n"):
        line = ""
        for word in part.split(" "):
            longer = f"{line} {word}" if line else word
            if width(longer, size, bold=bold) <= room:
                line = longer
                continue
            if line:
                found.append(line)
            line = word
            while width(line, size, bold=bold) > room and len(line) > 1:
                fits = _fitting(line, room, size, bold=bold)
                found.append(line[:fits])
                line = line[fits:]
        found.append(line)
    return found


def _fitting(word: str, room: float, size: float, *, bold: bool) -> int:
    """How many letters of a word fit into a line; at least one."""
    fits = 1
    while fits < len(word) and width(word[: fits + 1], size, bold=bold) <= room:
        fits += 1
    return fits
