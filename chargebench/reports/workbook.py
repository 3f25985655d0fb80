"""Writing an audit workbook: sheets streamed one after the other, whole or not at all."""

import os
import shutil
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, cast
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from openpyxl.chart._chart import ChartBase
from openpyxl.packaging.custom import StringProperty
from openpyxl.utils import get_column_letter
from openpyxl.workbook import Workbook
from openpyxl.worksheet.pagebreak import Break
from openpyxl.worksheet.worksheet import Worksheet
from openpyxl.writer.excel import ExcelWriter

from chargebench.errors import ExportRefused
from chargebench.reports.charts import ACROSS, CHARTS_A_PAGE, ROWS_EACH, anchor, bars, scatter
from chargebench.reports.content import AuditContent
from chargebench.reports.sheet_xml import StreamedSheet, plain
from chargebench.reports.sheets import ORDER, tables
from chargebench.reports.styles import Styles
from chargebench.reports.table import HEAD_ROW, Curve, Form, Table, clock, height

Progress = Callable[[str, int, int], None]  # sheet, rows written, rows expected in all
Cancelled = Callable[[], bool]
ROWS_MOST = 1_048_576 - HEAD_ROW - 20  # what a spreadsheet holds, less head and foot
TELL_EVERY = 500  # rows
ZIP_TIME = (1980, 1, 1, 0, 0, 0)  # of every part: the earliest a zip can say
WIDE, VERY_WIDE = 150, 270  # characters: from here on larger paper, more pages across
HEAD_COLUMNS = "A:B"  # repeated on pages beside the first


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


class _TimelessZip(ZipFile):
    """A zip whose parts all carry one time, so that the same content makes the same bytes."""

    def writestr(self, zinfo_or_arcname: str | ZipInfo, data: Any, *_: Any, **__: Any) -> None:
        """Write a part from memory."""
        super().writestr(self._part(str(zinfo_or_arcname)), data)

    def write(self, filename: Any, arcname: Any = None, *_rest: Any, **_more: Any) -> None:
        """Write a part from a file, piece by piece."""
        part = self._part(str(arcname))
        part.file_size = Path(filename).stat().st_size
        with Path(filename).open("rb") as source, self.open(part, "w") as target:
            shutil.copyfileobj(source, target, 1 << 20)

    def _part(self, name: str) -> ZipInfo:
        part = ZipInfo(name, ZIP_TIME)
        part.compress_type = self.compression
        part.external_attr = 0o600 << 16
        return part


class _Book:
    """A workbook being written."""

    def __init__(self, content: AuditContent, folder: Path, teller: _Teller) -> None:
        self._content = content
        self._folder = folder
        self._teller = teller
        self._book = Workbook(write_only=True)
        self._styles = Styles(self._book)
        self._describe()
        self._sheets = {name: self._sheet(name) for name in ORDER}

    def _describe(self) -> None:
        """Properties that say which records these are and who worked them out.

        The times are those of the last entry recorded, not of writing, so that the same records
        make the same file.
        """
        content, properties = self._content, self._book.properties
        shop, recorded = content.shop.get("name", ""), content.last_recorded
        properties.creator = content.program
        properties.title = plain(f"Audit workbook, {shop}, {content.period}")
        properties.created = properties.modified = clock(recorded) or datetime(1980, 1, 1)  # noqa: DTZ001
        number, hash_ = content.chain_head
        for name, value in (
            ("Program", content.program),
            ("Shop", shop),
            ("Period", content.period),
            ("Records shown", content.selection.words),
            ("Rule set", f"{content.rule_set.name}, {content.rule_set.edition}"),
            ("Rule sets steps were judged by", "; ".join(content.judged_by)),
            ("Chain head, entry", str(number)),
            ("Chain head, SHA-256", hash_),
        ):
            said = StringProperty(name=name, value=plain(value))
            self._book.custom_doc_props.append(said)  # type: ignore[attr-defined]

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
            with _TimelessZip(file, "w", ZIP_DEFLATED, allowZip64=True) as archive:
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
        self._draw(table, sheet, HEAD_ROW + max(written, 1) + len(table.foot) + 4)
        sheet.close()

    def _draw(self, table: Table, sheet: StreamedSheet, below: int) -> None:
        """Hang the charts under the rows; where there are more than a few, on pages of their own.

        Programs that fit a sheet to the page's width may take no notice of the breaks.
        """
        for number, curve in enumerate(table.charts):
            if isinstance(curve, Curve):
                chart: ChartBase = scatter(self._sheets[curve.sheet], curve)
            else:
                chart = bars(sheet, table.columns, curve)
            at = anchor(table.columns, below, number)
            Worksheet.add_chart(cast("Worksheet", sheet), chart, at)
            if len(table.charts) > ACROSS and number % CHARTS_A_PAGE == 0:
                sheet.row_breaks.append(Break(id=below - 1 + number // ACROSS * ROWS_EACH))

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
        sheet.page_setup.fitToWidth = across = 1 + int(wide // VERY_WIDE)
        if across > 1:
            sheet.print_title_cols = HEAD_COLUMNS
        sheet.page_setup.fitToHeight = 0
        sheet.sheet_properties.pageSetUpPr.fitToPage = True
        sheet.oddHeader.left.text = plain(self._content.shop.get("name", "")).replace("&", "&&")
        sheet.oddHeader.center.text = "&A"
        sheet.oddHeader.right.text = self._content.period
        number, hash_ = self._content.chain_head
        sheet.oddFooter.left.text = f"{self._content.program}, entry {number}, {hash_[:12]}"
        sheet.oddFooter.right.text = "page &P of &N"
        protection = sheet.protection
        protection.sheet = True  # without a password; filters, sorting and widths stay free
        for free in ("autoFilter", "sort", "formatColumns", "formatRows", "formatCells"):
            setattr(protection, free, False)
