"""Writing an audit workbook: sheets streamed one after the other, whole or not at all."""

import os
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import cast
from zipfile import ZIP_DEFLATED, ZipFile

from openpyxl.utils import get_column_letter
from openpyxl.workbook import Workbook
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

from chargebench.errors import ExportRefused
from chargebench.reports.charts import anchor, scatter
from chargebench.reports.content import AuditContent
from chargebench.reports.sheet_xml import StreamedSheet
from chargebench.reports.sheets import ORDER, tables
from chargebench.reports.styles import Styles
from chargebench.reports.table import HEAD_ROW, Form, Table, height

Progress = Callable[[str, int, int], None]  # sheet, rows written, rows expected in all
Cancelled = Callable[[], bool]
ROWS_MOST = 1_048_576 - HEAD_ROW - 20  # what a spreadsheet holds, less head and foot
TELL_EVERY = 500  # rows
WIDE, VERY_WIDE = 150, 330  # characters: from here on larger paper, more pages across


def write_workbook(
    content: AuditContent,
    path: Path,
    progress: Progress | None = None,
    cancelled: Cancelled | None = None,
) -> None:
    """Write the audit workbook.

    Raises
    ------
    ExportRefused
        Cancelled, or it could not be written; then there is no file, or the one before.
    """
    part = path.with_name(f".{path.name}.part")
    try:
        with TemporaryDirectory(prefix="chargebench-") as folder:
            book = _Book(content, Path(folder), _Teller(content, progress, cancelled))
            book.fill()
            book.pack(part)
        part.replace(path)
        _keep(path.parent)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"The workbook could not be written to {path}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)


def _keep(folder: Path) -> None:
    """Make the new name outlast a power cut, where the system lets a folder be synced."""
    if os.name != "nt":
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


@dataclass(slots=True)
class _Teller:
    """Tells how far the export is, and hears that it is to stop."""

    content: AuditContent
    progress: Progress | None
    cancelled: Cancelled | None
    done: int = 0

    def row(self, sheet: str) -> None:
        """One more row is written."""
        self.done += 1
        if self.done % TELL_EVERY == 0:
            self.say(sheet)

    def say(self, sheet: str) -> None:
        """Report, and stop if asked to."""
        if self.cancelled is not None and self.cancelled():
            raise ExportRefused("The export was cancelled; nothing was written.")
        if self.progress is not None:
            # Entries and their transfers are nearly all of the rows.
            self.progress(sheet, self.done, max(self.done, 2 * self.content.entry_count))


class _Book:
    """A workbook being written."""

    def __init__(self, content: AuditContent, folder: Path, teller: _Teller) -> None:
        self._content = content
        self._folder = folder
        self._teller = teller
        self._book = Workbook(write_only=True)
        self._styles = Styles(self._book)
        properties = self._book.properties
        properties.creator = content.program
        properties.title = f"Audit workbook, {content.shop.get('name', '')}"
        properties.created = content.made_at.replace(tzinfo=None)
        self._sheets = {name: self._sheet(name) for name in ORDER}

    def _sheet(self, name: str) -> StreamedSheet:
        sheet = StreamedSheet(self._book, name)
        # The only way to give the workbook a sheet of another class than its own.
        self._book._add_sheet(sheet)  # type: ignore[attr-defined]  # noqa: SLF001
        return sheet

    def fill(self) -> None:
        """Write every sheet into its own file; those with totals come after what they total."""
        for number, table in enumerate(tables(self._content)):
            self._teller.say(table.name)
            sheet = self._sheets[table.name]
            try:
                self._write(table, sheet, self._folder / f"{number}.xml")
            except BaseException:
                sheet.abandon()
                raise

    def pack(self, path: Path) -> None:
        """Pack the sheets into one file, safe on disk."""
        with path.open("wb") as file:
            with ZipFile(file, "w", ZIP_DEFLATED, allowZip64=True) as archive:
                ExcelWriter(self._book, archive).write_data()
            file.flush()
            os.fsync(file.fileno())

    def _write(self, table: Table, sheet: StreamedSheet, path: Path) -> None:
        styles, columns = self._styles, table.columns
        self._dress(table, sheet)
        sheet.write_into(str(path))
        sheet.append([20.0, (table.name, styles.title)])
        sheet.append([None, (table.says, styles.says)])
        sheet.append([None])
        heads = [column.head for column in columns]
        tall = height([(head, column.width) for head, column in zip(heads, columns, strict=True)])
        sheet.append([tall, *((column.head, styles.head(column)) for column in columns)])
        wraps = [at for at, column in enumerate(columns) if column.form is Form.LONG]
        written = 0
        for row in table.rows:
            assert len(row) == len(columns), (table.name, row)
            if written == ROWS_MOST:
                raise ExportRefused(
                    f"The sheet {table.name} would have more rows than a spreadsheet holds; "
                    "export a shorter period."
                )
            tall = height([(row[at], columns[at].width) for at in wraps])
            pairs = zip(columns, row, strict=True)
            sheet.append([tall, *((value, styles.of(column, value)) for column, value in pairs)])
            written += 1
            self._teller.row(table.name)
        if not written:
            sheet.append([None, (table.empty, styles.says)])
        last = get_column_letter(len(columns))
        sheet.auto_filter.ref = f"A{HEAD_ROW}:{last}{HEAD_ROW + max(written, 1)}"
        if table.foot:
            sheet.append([None])
        for line in table.foot:
            sheet.append([None, (line, styles.says)])
        below = HEAD_ROW + max(written, 1) + len(table.foot) + 4
        for number, curve in enumerate(table.charts):
            chart = scatter(self._sheets[curve.sheet], curve)
            Worksheet.add_chart(cast("Worksheet", sheet), chart, anchor(columns, below, number))
        sheet.close()

    def _dress(self, table: Table, sheet: StreamedSheet) -> None:
        """Widths, frozen head and paper; all before the first row."""
        for at, column in enumerate(table.columns, 1):
            sheet.column_dimensions[get_column_letter(at)].width = column.width
        sheet.freeze_panes = f"A{HEAD_ROW + 1}"
        sheet.print_title_rows = f"{HEAD_ROW}:{HEAD_ROW}"
        wide = sum(column.width for column in table.columns)
        sheet.page_setup.orientation = "landscape"
        metric = self._content.shop.get("units") == "SI"
        small, large = ("9", "8") if metric else ("1", "3")  # A4 and A3, Letter and Tabloid
        sheet.page_setup.paperSize = large if wide > WIDE else small
        sheet.page_setup.fitToWidth = 1 + int(wide // VERY_WIDE)
        sheet.page_setup.fitToHeight = 0
        sheet.sheet_properties.pageSetUpPr.fitToPage = True
        sheet.oddFooter.center.text = "&A, page &P of &N"
        sheet.oddFooter.left.text = self._content.shop.get("name", "").replace("&", "&&")
