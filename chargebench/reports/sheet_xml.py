"""Sheets streamed through openpyxl with cells it can not write itself.

openpyxl writes a formula without its value, so a viewer that does not calculate shows nothing; it
makes a formula of any text that begins with an equals sign; and it prints 16 digits of a float.
Here each cell is written by its own type: a formula with its value, text as text, all 17 digits.
"""

import math
from collections.abc import Iterator, Sequence
from datetime import date, datetime
from decimal import Decimal
from pathlib import Path
from typing import Any

from lxml import etree
from openpyxl.utils import get_column_letter
from openpyxl.utils.datetime import to_excel
from openpyxl.worksheet._write_only import WriteOnlyWorksheet
from openpyxl.worksheet._writer import WorksheetWriter

from chargebench.reports.table import Cell, Formula

Styled = tuple[Cell, int]  # a value and the number of its style
TEXT_LONGEST = 32_767  # characters a spreadsheet cell can hold
CUT = " … (cut here; the ledger has the whole text)"
STARTS_FORMULA = ("=", "+", "-", "@", "\t", "\r")
_XML_SPACE = "{http://www.w3.org/XML/1998/namespace}space"
# What XML 1.0 can not hold, shown as the replacement character.
_ILLEGAL = dict.fromkeys(
    [*(set(range(0x20)) - {0x09, 0x0A, 0x0D}), *range(0xD800, 0xE000), 0xFFFE, 0xFFFF], "\ufffd"
)


class _Writer(WorksheetWriter):
    """Writes rows of styled plain values."""

    def write_row(self, xf: Any, row: Any, row_idx: int) -> None:
        """One row in one piece: a height in points or None, then (value, style) pairs."""
        element = etree.Element("row", r=str(row_idx))
        height = next(row)
        if height is not None:
            element.set("ht", repr(height))
            element.set("customHeight", "1")
        for at, (value, style) in enumerate(row, 1):
            if value is not None and value != "":
                _cell(element, f"{get_column_letter(at)}{row_idx}", value, style)
        xf.write(element)

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


def _cell(row: etree._Element, at: str, value: Cell, style: int) -> None:
    cell = etree.SubElement(row, "c", r=at, s=str(style))
    if isinstance(value, Formula):
        etree.SubElement(cell, "f").text = value.text.removeprefix("=")
        if isinstance(value.value, str):
            cell.set("t", "str")
        etree.SubElement(cell, "v").text = _number(value.value)
    elif isinstance(value, bool | str):
        _text(cell, ("yes" if value else "no") if isinstance(value, bool) else value)
    elif isinstance(value, datetime | date):
        etree.SubElement(cell, "v").text = repr(float(_serial(value)))
    elif isinstance(value, float) and not math.isfinite(value):
        _text(cell, str(value))
    else:
        assert value is not None
        etree.SubElement(cell, "v").text = _number(value)


def _serial(value: date) -> float:
    """Days since the spreadsheet's first day."""
    days: float = to_excel(value)  # type: ignore[no-untyped-call]
    return days


def _number(value: Decimal | float | str) -> str:
    if isinstance(value, Decimal):
        return f"{value:f}"
    return repr(value) if isinstance(value, float) else str(value)


def _text(cell: etree._Element, value: str) -> None:
    cell.set("t", "inlineStr")
    text = etree.SubElement(etree.SubElement(cell, "is"), "t")
    shown = value.translate(_ILLEGAL)
    if len(shown) > TEXT_LONGEST:
        shown = shown[: TEXT_LONGEST - len(CUT)] + CUT
    if shown != shown.strip() or "\n" in shown:
        text.set(_XML_SPACE, "preserve")
    text.text = shown
