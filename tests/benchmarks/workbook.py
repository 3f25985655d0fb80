"""A sheet of 100 000 rows and 15 columns: ours beside openpyxl, other writers and the bare zip.

Usage: python -m tests.benchmarks.workbook WRITER ROWS FILE
"""

import csv
import importlib.util
import json
import os
import shutil
import subprocess
import sys
import time
import zipfile
from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

from tests.benchmarks.measure import Row, child, peak_mib

BEGAN = datetime(2016, 1, 4, 8)  # noqa: DTZ001  spreadsheets know no zones
PLACES = ("cylinder:C-0014", "equipment:E-000203", "atmosphere", "supplier")


def cells(count: int) -> Iterator[list[Any]]:
    """The rows: two moments, seven numbers, six texts, the same each time."""
    for number in range(count):
        when = BEGAN + timedelta(minutes=53 * number)
        kg = Decimal(number * 7919 % 9_000_000) / 1_000_000
        yield [
            number + 1, when, when + timedelta(minutes=3), "step-signed", f"B-{number:06d}",
            PLACES[number % 2], PLACES[2 + number % 2], "R290", kg, float(kg) * 2.2046226,
            number % 97, number % 31, kg * 3, f"{kg} kg", "N. Okafor",
        ]  # fmt: skip


def ours(count: int, path: Path) -> None:
    """As the audit workbook writes a sheet."""
    from openpyxl.workbook import Workbook
    from openpyxl.writer.excel import ExcelWriter

    from chargebench.reports.sheet_xml import StreamedSheet
    from chargebench.reports.styles import Styles
    from chargebench.reports.table import Column, Form

    book: Any = Workbook(write_only=True)
    styles = Styles(book)
    sheet = StreamedSheet(book, "Rows")
    book._add_sheet(sheet)
    sheet.write_into(str(path.with_suffix(".xml")))
    forms = {1: Form.MOMENT, 2: Form.MOMENT, 8: Form.EXACT}
    columns = [Column(f"c{at}", form=forms.get(at, Form.PLAIN)) for at in range(15)]
    for row in cells(count):
        pairs = zip(columns, row, strict=True)
        sheet.append([None, *((value, styles.of(column, value)) for column, value in pairs)])
    sheet.close()
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, allowZip64=True) as archive:
        ExcelWriter(book, archive).write_data()


def openpyxl(count: int, path: Path) -> None:
    """Its write-only mode, with lxml, which is its fastest."""
    from openpyxl import Workbook

    book = Workbook(write_only=True)
    sheet = book.create_sheet("Rows")
    for row in cells(count):
        sheet.append(row)
    book.save(path)


def xlsxwriter(count: int, path: Path) -> None:
    """Another writer, in its mode of constant memory."""
    import xlsxwriter as other  # type: ignore[import-not-found]

    book = other.Workbook(str(path), {"constant_memory": True})
    sheet, moment = book.add_worksheet("Rows"), book.add_format({"num_format": "yyyy-mm-dd"})
    for number, row in enumerate(cells(count)):
        for at, value in enumerate(row):
            if isinstance(value, datetime):
                sheet.write_datetime(number, at, value, moment)
            elif isinstance(value, str):
                sheet.write_string(number, at, value)
            else:
                sheet.write_number(number, at, value)
    book.close()


def office(count: int, path: Path) -> None:
    """LibreOffice, from a CSV file."""
    source = path.with_suffix(".csv")
    with source.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows(cells(count))
    profile = f"-env:UserInstallation={(path.parent / 'profile').as_uri()}"
    subprocess.run(
        ["soffice", profile, "--headless", "--convert-to", "xlsx", "--outdir", str(path.parent),
         str(source)],
        check=True, capture_output=True,
    )  # fmt: skip


def zipped(count: int, path: Path) -> None:
    """The floor: the same values as bare sheet text, packed; no styles, no checks."""
    with (
        zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive,
        archive.open("xl/worksheets/sheet1.xml", "w", force_zip64=True) as sheet,
    ):
        sheet.write(b"<worksheet><sheetData>")
        for row in cells(count):
            line = "".join(
                f'<c t="inlineStr"><is><t>{value}</t></is></c>'
                if isinstance(value, str | datetime)
                else f"<c><v>{value}</v></c>"
                for value in row
            )
            sheet.write(f"<row>{line}</row>".encode())
        sheet.write(b"</sheetData></worksheet>")


WRITERS: dict[str, Callable[[int, Path], None]] = {
    each.__name__: each for each in (ours, openpyxl, xlsxwriter, office, zipped)
}


_SHORT = ("ours", "zipped")


def own(folder: Path, count: int) -> Iterator[Row]:
    """Ours beside the bare zip alone, for the short run."""
    module = "tests.benchmarks.workbook"
    took = [child(module, name, str(count), str(folder / "b.xlsx"))["took"] for name in _SHORT]
    yield Row(f"workbook, {count} x 15", took[0], "s", "zipped", took[1], 3.0, runs=1)


def rows(folder: Path, count: int = 100_000, runs: int = 3) -> Iterator[Row]:
    """Ours beside each; other writers only where they are at hand."""
    peers = os.environ.get("CHARGEBENCH_PEERS", sys.executable)
    took: dict[str, list[dict[str, Any]]] = {name: [] for name in WRITERS}
    if not shutil.which("soffice"):
        took.pop("office")
    if peers == sys.executable and importlib.util.find_spec("xlsxwriter") is None:
        took.pop("xlsxwriter")
        print("XlsxWriter is not installed; CHARGEBENCH_PEERS names a Python that has it.")
    for _ in range(runs):
        for name, found in took.items():
            python = peers if name == "xlsxwriter" else sys.executable
            out = str(folder / f"{name}.xlsx")
            module = "tests.benchmarks.workbook"
            found.append(child(module, name, str(count), out, python=python))

    def middle(name: str, key: str) -> float:
        return float(sorted(each[key] for each in took[name])[runs // 2])

    mine = middle("ours", "took")
    for name in took:
        if name != "ours":
            limit = 3.0 if name == "zipped" else 1.0
            what = f"workbook, {count} x 15"
            yield Row(what, mine, "s", name, middle(name, "took"), limit, runs=runs)
    memory = middle("ours", "peak") - middle("ours", "before")
    yield Row(f"workbook, {count} x 15, memory", memory, "MiB", "", None, most=60, runs=runs)


if __name__ == "__main__":
    if sys.argv[1] == "ours":
        import chargebench.reports  # noqa: F401  what an idle program has of it
    before = peak_mib()
    began = time.perf_counter()
    WRITERS[sys.argv[1]](int(sys.argv[2]), Path(sys.argv[3]))
    took_s = time.perf_counter() - began
    print(json.dumps({"took": took_s, "before": before, "peak": peak_mib()}))
