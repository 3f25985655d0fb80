"""Reads a QR code off a PDF page: filled boxes to modules, modules to text.

Written from ISO/IEC 18004 (from memory), without the library that made the code. Versions 1 and 2
in one block, clean as printed: nothing is corrected, so one wrong module is one wrong text.
"""

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from pypdf import PdfReader
from pypdf.generic import ContentStream

_ALPHANUMERIC = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"
_FORMAT_MASK = 0b101_0100_0001_0010
_MASKS: tuple[Callable[[int, int], int], ...] = (
    lambda row, column: (row + column) % 2,
    lambda row, _: row % 2,
    lambda _, column: column % 3,
    lambda row, column: (row + column) % 3,
    lambda row, column: (row // 2 + column // 3) % 2,
    lambda row, column: row * column % 2 + row * column % 3,
    lambda row, column: (row * column % 2 + row * column % 3) % 2,
    lambda row, column: ((row + column) % 2 + row * column % 3) % 2,
)
Modules = list[list[bool]]


def read_label(path: Path) -> str:
    """Text of the code on the first page, whose only black boxes are its modules."""
    return text_of(modules(list(_boxes(path))))


def _boxes(path: Path) -> Iterator[tuple[float, float, float, float]]:
    reader = PdfReader(path)
    page: Any = reader.pages[0]
    for operands, operator in ContentStream(page["/Contents"], reader).operations:
        if operator == b"re":
            x, y, wide, high = (float(each) for each in operands)
            yield x, y + min(high, 0), wide, abs(high)


def modules(boxes: list[tuple[float, float, float, float]]) -> Modules:
    """Dark modules of the square the boxes lie in, the top row first."""
    left, right = min(x for x, *_ in boxes), max(x + wide for x, _, wide, _ in boxes)
    low, top = min(y for _, y, *_ in boxes), max(y + high for _, y, _, high in boxes)
    side = min(high for *_, high in boxes)
    count = round((right - left) / side)
    assert count == round((top - low) / side), "the code is not square"

    def dark(row: int, column: int) -> bool:
        x, y = left + (column + 0.5) * side, top - (row + 0.5) * side
        return any(a <= x <= a + wide and b <= y <= b + high for a, b, wide, high in boxes)

    return [[dark(row, column) for column in range(count)] for row in range(count)]


def text_of(code: Modules) -> str:
    """The text in a code."""
    count = len(code)
    assert count in (21, 25), f"{count} modules are not those of version 1 or 2"
    bits = "".join(str(int(bit)) for bit in _data(code))
    mode, rest = bits[:4], bits[4:]
    if mode == "0100":
        length = int(rest[:8], 2)
        letters = bytes(int(rest[8 + 8 * n : 16 + 8 * n], 2) for n in range(length))
        return letters.decode("latin-1")  # ISO/IEC 8859-1 where nothing else is said
    assert mode == "0010", f"mode {mode} is neither letters nor bytes"
    length, rest = int(rest[:9], 2), rest[9:]
    text = ""
    while len(text) < length:
        if length - len(text) == 1:
            return text + _ALPHANUMERIC[int(rest[:6], 2)]
        first, second = divmod(int(rest[:11], 2), 45)
        text, rest = text + _ALPHANUMERIC[first] + _ALPHANUMERIC[second], rest[11:]
    return text


def _data(code: Modules) -> Iterator[bool]:
    """Modules of data in their order, the mask taken off."""
    count = len(code)
    mask = _MASKS[_format(code) >> 10 & 0b111]
    column, up = count - 1, True
    while column > 0:
        if column == 6:  # the timing pattern
            column -= 1
        for row in range(count - 1, -1, -1) if up else range(count):
            for place in (column, column - 1):
                if not _fixed(row, place, count):
                    yield code[row][place] != (mask(row, place) == 0)
        column, up = column - 2, not up


def _format(code: Modules) -> int:
    """Level and mask, beside the upper left finder."""
    places = [(8, n) for n in (0, 1, 2, 3, 4, 5, 7, 8)]
    places += [(n, 8) for n in (7, 5, 4, 3, 2, 1, 0)]
    return int("".join(str(int(code[r][c])) for r, c in places), 2) ^ _FORMAT_MASK


def _fixed(row: int, column: int, count: int) -> bool:
    """Finders with their format bits, timing, and in version 2 the alignment pattern."""
    high, far = row >= count - 8, column >= count - 8
    finder = (row <= 8 and (column <= 8 or far)) or (high and column <= 8)
    alignment = count == 25 and 16 <= row <= 20 and 16 <= column <= 20
    return finder or row == 6 or column == 6 or alignment
