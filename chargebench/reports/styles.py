"""The few styles of a workbook, by number."""

from openpyxl.cell import WriteOnlyCell
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.workbook import Workbook

from chargebench.reports.sheet_xml import STARTS_FORMULA
from chargebench.reports.table import Cell, Column, Form

FONT = "Calibri"  # the library's default; without a name a program may choose another
_RULE = Border(bottom=Side(style="thin", color="808080"))
_HEAD = PatternFill("solid", fgColor="E4E8EC")
_TEXT = Alignment(vertical="top", horizontal="left", indent=1)
_LONG = Alignment(vertical="top", horizontal="left", indent=1, wrap_text=True)
_NUMBER = Alignment(vertical="top", horizontal="right", indent=1)
_WORDS = (Form.PLAIN, Form.LONG, Form.DATE, Form.WHEN, Form.MOMENT)  # aligned as text is


class Styles:
    """Style numbers of one workbook; the same look everywhere, told by words and not by colour."""

    def __init__(self, workbook: Workbook) -> None:
        self._sheet = workbook.create_sheet("styles")
        self._by_form = {form: self._of(form) for form in Form}
        self._text = self._number(_TEXT)
        self._long = self._number(_LONG)
        self._text_quoted = self._number(_TEXT, quoted=True)
        self._long_quoted = self._number(_LONG, quoted=True)
        self.title = self._number(Alignment(), font=Font(name=FONT, bold=True, size=14))
        self.says = self._number(Alignment(), font=Font(name=FONT, italic=True, color="505050"))
        self._head = self._number(_LONG, head=True)
        self._number_head = self._number(
            Alignment(vertical="top", horizontal="right", indent=1, wrap_text=True), head=True
        )
        workbook.remove(self._sheet)

    def of(self, column: Column, value: Cell) -> int:
        """Style of a value in a column."""
        if isinstance(value, bool):
            return self._text
        if not isinstance(value, str):
            return self._by_form[column.form]
        # Quoted, a spreadsheet keeps taking it for text when the cell is edited.
        quoted = value.startswith(STARTS_FORMULA)
        if column.form is Form.LONG:
            return self._long_quoted if quoted else self._long
        return self._text_quoted if quoted else self._text

    def head(self, column: Column) -> int:
        """Style of a column's head, aligned as its values are."""
        return self._head if column.form in _WORDS else self._number_head

    def _of(self, form: Form) -> int:
        aligned = _TEXT if form in _WORDS and form is not Form.PLAIN else _NUMBER
        return self._number(aligned, number="General" if form is Form.LONG else form.value)

    def _number(
        self,
        aligned: Alignment,
        *,
        number: str = "General",
        font: Font | None = None,
        head: bool = False,
        quoted: bool = False,
    ) -> int:
        cell = WriteOnlyCell(self._sheet)
        cell.number_format = number
        cell.alignment = aligned
        if font is not None:
            cell.font = font
        if head:
            cell.font = Font(name=FONT, bold=True)
            cell.border = _RULE
            cell.fill = _HEAD
        if quoted:
            cell.quotePrefix = True
        style: int = cell.style_id
        return style
