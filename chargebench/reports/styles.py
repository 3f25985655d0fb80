"""The few styles of a workbook, by number."""

from openpyxl.cell import WriteOnlyCell
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.workbook import Workbook

from chargebench.reports.sheet_xml import STARTS_FORMULA
from chargebench.reports.table import Cell, Column, Form

_RULE = Border(bottom=Side(style="thin", color="808080"))
_HEAD = PatternFill("solid", fgColor="E4E8EC")


class Styles:
    """Style numbers of one workbook; the same look everywhere, told by words and not by colour."""

    def __init__(self, workbook: Workbook) -> None:
        self._sheet = workbook.create_sheet("styles")
        self._by_form = {form: self._of(form) for form in Form}
        self._text = self._number(Form.PLAIN, wrap=False)
        self._quoted = self._number(Form.PLAIN, wrap=False, quoted=True)
        self._long_quoted = self._number(Form.PLAIN, wrap=True, quoted=True)
        self.title = self._number(Form.PLAIN, font=Font(bold=True, size=14))
        self.says = self._number(Form.PLAIN, font=Font(italic=True, color="505050"))
        self.head = self._number(Form.PLAIN, wrap=True, font=Font(bold=True), head=True)
        workbook.remove(self._sheet)

    def of(self, column: Column, value: Cell) -> int:
        """Style of a value in a column."""
        if not isinstance(value, str):
            return self._by_form[column.form]
        risky = value.startswith(STARTS_FORMULA)
        if column.form is Form.LONG:
            return self._long_quoted if risky else self._by_form[Form.LONG]
        return self._quoted if risky else self._text

    def _of(self, form: Form) -> int:
        return self._number(form, wrap=form is Form.LONG)

    def _number(
        self,
        form: Form,
        *,
        wrap: bool = False,
        font: Font | None = None,
        head: bool = False,
        quoted: bool = False,
    ) -> int:
        cell = WriteOnlyCell(self._sheet)
        cell.number_format = "General" if form is Form.LONG else form.value
        cell.alignment = Alignment(vertical="top", wrap_text=wrap)
        if font is not None:
            cell.font = font
        if head:
            cell.border = _RULE
            cell.fill = _HEAD
        if quoted:
            # A spreadsheet that lets the cell be edited keeps taking it for text.
            cell.quotePrefix = True
        number: int = cell.style_id
        return number
