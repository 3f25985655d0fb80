"""Sheets streamed through openpyxl with cells it can not write itself.

openpyxl writes a formula without its value, so a viewer that does not calculate shows nothing; it
makes a formula of any text that begins with an equals sign; and it prints 16 digits of a float.
Here each cell is written by its own type: a formula with its value, text as text, all 17 digits.
Rows go into the sheet's file as finished text, several times faster than as elements.
"""

import math
import re
from collections.abc import Generator, Iterable, Iterator, Sequence
from datetime import date, datetime
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Any, BinaryIO

from lxml import etree
from openpyxl.utils import get_column_letter
from openpyxl.utils.datetime import to_excel
from openpyxl.worksheet._write_only import WriteOnlyWorksheet
from openpyxl.worksheet._writer import WorksheetWriter
from openpyxl.xml.constants import SHEET_MAIN_NS

from chargebench.reports.table import Cell, Formula

Styled = tuple[Cell, int]  # a value and the number of its style
TEXT_LONGEST = 32_767  # characters a spreadsheet cell can hold
CUT = " … (cut here; the ledger has the whole text)"
STARTS_FORMULA = ("=", "+", "-", "@", "\t", "\r")
# What text of a cell can not hold as it is: markup, what XML 1.0 can not hold at all (shown as the
# replacement character), and what spreadsheets take for an escaped character.
_SPECIAL = re.compile(
    "[&<>\r\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)"
)
_WRITTEN = {"&": "&amp;", "<": "&lt;", ">": "&gt;", "\r": "&#13;", "_": "_x005F_"}


class _Writer(WorksheetWriter):
    """Writes rows of styled plain values."""

    _file: BinaryIO
    _ahead = True  # the library's own text still waits in its buffer

    def get_stream(self) -> Generator[Any, Any, None]:
        """The library's stream, with the file at hand for finished text."""
        with Path(str(self.out)).open("wb") as self._file, etree.xmlfile(self._file) as xf:  # noqa: SIM117
            with xf.element("worksheet", xmlns=SHEET_MAIN_NS):
                try:
                    while True:
                        element = yield
                        if element is True:
                            yield xf
                        elif element is not None:
                            xf.write(element)
                except GeneratorExit:
                    pass

    def write_row(self, xf: Any, row: Any, row_idx: int) -> None:
        """One row in one piece: a height in points or None, then (value, style) pairs."""
        if self._ahead:
            xf.flush()
            self._ahead = False
        height = next(row)
        tall = "" if height is None else f' ht="{height!r}" customHeight="1"'
        cells = "".join(_cells(row, row_idx))
        self._file.write(f'<row r="{row_idx}"{tall}>{cells}</row>'.encode())

    def cleanup(self) -> None:
        """Remove the sheet's own file once it is packed."""
        Path(str(self.out)).unlink()


class StreamedSheet(WriteOnlyWorksheet):
    """A sheet that is written row by row; append takes a height and then (value, style) pairs."""

    # The library gives its sheets these when they are made; its type stubs do not know.
    auto_filter: Any
    column_dimensions: Any
    page_setup: Any
    sheet_properties: Any
    _rows: Any
    oddFooter: Any  # noqa: N815
    oddHeader: Any  # noqa: N815
    protection: Any
    row_breaks: Any

    def write_into(self, path: str) -> None:
        """Begin the sheet in a file of its own; freezing and widths are set before."""
        self._writer = _Writer(self, out=path)
        self._writer.write_top()

    def abandon(self) -> None:
        """End a sheet that is not to be finished, in the order it was begun."""
        if self._writer is not None and not self.closed:
            if self._rows is not None:
                self._rows.close()
            self._writer.close()

    def _values_to_row(self, values: Sequence[Any], row_idx: int) -> Iterator[Any]:
        del row_idx  # the writer counts rows itself
        return iter(values)


_letter = cache(get_column_letter)


def _cells(row: Iterable[Styled], row_idx: int) -> Iterator[str]:
    for at, (value, style) in enumerate(row, 1):
        if value is not None and value != "":
            yield f'<c r="{_letter(at)}{row_idx}" s="{style}"{_content(value)}</c>'


def _content(value: Cell) -> str:
    """The rest of a cell's tag, and what is in it."""
    if isinstance(value, str):
        return _text(value)
    if isinstance(value, bool):
        return _text("yes" if value else "no")
    if isinstance(value, Formula):
        kind = ' t="str"' if isinstance(value.value, str) else ""
        text = _escaped(value.text.removeprefix("="))
        return f"{kind}><f>{text}</f><v>{_escaped(_number(value.value))}</v>"
    if isinstance(value, datetime | date):
        return f"><v>{float(_serial(value))!r}</v>"
    if isinstance(value, float) and not math.isfinite(value):
        return _text(str(value))
    assert value is not None
    return f"><v>{_number(value)}</v>"


def _serial(value: date) -> float:
    """Days since the spreadsheet's first day."""
    days: float = to_excel(value)  # type: ignore[no-untyped-call]
    return days


def _number(value: Decimal | float | str) -> str:
    if isinstance(value, Decimal):
        return f"{value:f}"
    return repr(value) if isinstance(value, float) else str(value)


def _text(value: str) -> str:
    if len(value) > TEXT_LONGEST:
        value = value[: TEXT_LONGEST - len(CUT)] + CUT
    kept = ' xml:space="preserve"' if value != value.strip() or "\n" in value else ""
    return f' t="inlineStr"><is><t{kept}>{_escaped(value)}</t></is>'


def plain(text: str) -> str:
    """Text without what XML can not hold, where nothing but text is wanted: heads, properties."""
    return _SPECIAL.sub(lambda found: found[0] if found[0] in "&<>_" else "\ufffd", text)


def _escaped(text: str) -> str:
    return _SPECIAL.sub(lambda found: _WRITTEN.get(found[0], "\ufffd"), text)
