"""The workbook's tables in open formats: CSV with a table schema, and one SQLite file.

CSV as RFC 4180 has it: UTF-8, comma, quotes doubled, CR LF. `datapackage.json` describes each file
as a Frictionless tabular data package does (specs.frictionlessdata.io, version 1), so that a
program can check and type what it reads. The same records make the same bytes.
"""

import csv
import hashlib
import json
import os
import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from decimal import Decimal
from pathlib import Path
from typing import Any

from chargebench.errors import ExportRefused
from chargebench.ledger import TableFile
from chargebench.reports.content import AuditContent
from chargebench.reports.sheets import tables
from chargebench.reports.table import Cell, Form, Formula, Table

FOLDER, PACKAGE, DATABASE = "tables", "datapackage.json", "tables.sqlite"
Progress = Callable[[str, int, int], None]  # table, tables done, tables in all
Cancelled = Callable[[], bool]

# What a spreadsheet would take for a formula when it opens a CSV (OWASP, CSV injection).
_FORMULA = re.compile(r"[=+\-@\t\r\n]")
_ASK_EVERY = 500  # rows between two questions whether to stop


@dataclass(slots=True)
class _Types:
    """Types met in a column, for its schema."""

    form: Form
    met: set[type] = field(default_factory=set)

    def schema_type(self) -> str:
        """The column's type in words of the table schema."""
        if not self.met:
            return {Form.DATE: "date", Form.WHEN: "datetime", Form.MOMENT: "datetime"}.get(
                self.form, "string"
            )
        for type_name, kinds in (
            ("boolean", {bool}),
            ("integer", {int}),
            ("number", {int, float, Decimal}),
            ("date", {date}),
            ("datetime", {datetime}),
        ):
            if self.met <= kinds:
                return type_name
        return "string"


def write_tables(
    content: AuditContent,
    folder: Path,
    progress: Progress | None = None,
    cancelled: Cancelled | None = None,
) -> list[Path]:
    """Write every table of the workbook as CSV, their description, and one SQLite file of all.

    Raises
    ------
    ExportRefused
        Cancelled, or a file could not be written.
    """
    inside = folder / FOLDER
    database = inside / DATABASE
    part = database.with_name(f".{DATABASE}.part")
    written: list[Path] = []
    described: list[dict[str, Any]] = []
    try:
        inside.mkdir(exist_ok=True)
        with TableFile(part) as whole:
            for done, table in enumerate(tables(content)):
                if progress is not None:
                    progress(table.name, done, done + 1)
                path = inside / f"{slug(table.name)}.csv"
                types = [_Types(column.form) for column in table.columns]
                rows = _counted(_typed_rows(table, types), cancelled)
                _write_csv(path, table, rows, whole)
                written.append(path)
                described.append(_described(table, path, types))
        part.replace(database)
        package = inside / PACKAGE
        _write_package(package, content, described)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"The tables could not be written to {inside}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)
    return [*written, package, database]


def slug(name: str) -> str:
    """A sheet's name as a file's and a resource's: lower case, hyphens."""
    return re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")


def _typed_rows(table: Table, types: Sequence[_Types]) -> Iterator[list[Any]]:
    """Rows as values, a formula as what it comes to; notes the types met."""
    for row in table.rows:
        values = [cell.value if isinstance(cell, Formula) else cell for cell in row]
        for value, column in zip(values, types, strict=True):
            if value is not None and value != "":
                column.met.add(type(value) if not isinstance(value, str) else str)
        yield values


def _counted(rows: Iterator[list[Any]], cancelled: Cancelled | None) -> Iterator[list[Any]]:
    for count, row in enumerate(rows):
        if count % _ASK_EVERY == 0 and cancelled is not None and cancelled():
            raise ExportRefused("The export was cancelled.")
        yield row


def _write_csv(path: Path, table: Table, rows: Iterator[list[Any]], whole: TableFile) -> None:
    """Write one table to its file and, in the same pass, into the SQLite file."""
    part = path.with_name(f".{path.name}.part")
    try:
        with part.open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)  # commas, doubled quotes, CR LF: RFC 4180
            writer.writerow(column.head for column in table.columns)

            def passed_on() -> Iterator[list[str | int | float | None]]:
                for row in rows:
                    writer.writerow([_text(value) for value in row])
                    yield [_stored(value) for value in row]

            whole.add(slug(table.name), [column.head for column in table.columns], passed_on())
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    finally:
        part.unlink(missing_ok=True)


def _text(value: Cell) -> str:
    """A value as a CSV field; a text that a spreadsheet would run gets an apostrophe in front."""
    match value:
        case None:
            return ""
        case bool():
            return "true" if value else "false"
        case datetime():
            return value.isoformat(timespec="seconds")
        case date():
            return value.isoformat()
        case Decimal():
            return f"{value:f}"
        case str():
            return f"'{value}" if _FORMULA.match(value) else value
        case _:
            return repr(value)


def _stored(value: Cell) -> str | int | float | None:
    """A value as SQLite keeps it: exact decimals as numbers of seventeen digits, text untouched."""
    match value:
        case None | bool() | int() | float() | str():
            return value
        case Decimal():
            return float(value)
        case datetime():
            return value.isoformat(timespec="seconds")
        case date():
            return value.isoformat()
        case _:
            raise AssertionError(value)


def _described(table: Table, path: Path, types: Sequence[_Types]) -> dict[str, Any]:
    """One table as a tabular data resource."""
    fields: list[dict[str, str]] = []
    for column, met in zip(table.columns, types, strict=True):
        described = {"name": column.head, "type": met.schema_type()}
        if described["type"] == "datetime":
            described["format"] = "%Y-%m-%dT%H:%M:%S"
        fields.append(described)
    with path.open("rb") as file:
        digest = hashlib.file_digest(file, "sha256").hexdigest()
    return {
        "name": slug(table.name),
        "title": table.name,
        "description": table.says,
        "path": path.name,
        "profile": "tabular-data-resource",
        "format": "csv",
        "mediatype": "text/csv",
        "encoding": "utf-8",
        "bytes": path.stat().st_size,
        "hash": f"sha256:{digest}",
        "dialect": {"delimiter": ",", "lineTerminator": "\r\n", "doubleQuote": True},
        "schema": {"fields": fields, "missingValues": [""]},
    }


def _write_package(path: Path, content: AuditContent, described: list[dict[str, Any]]) -> None:
    number, head = content.chain_head
    said = {
        "profile": "tabular-data-package",
        "name": "chargebench-records",
        "title": f"Refrigerant records of {content.shop.get('name', '')}, {content.period}",
        "description": (
            f"Written by {content.program} from a ledger whose last entry is {number}, "
            f"SHA-256 {head}. A text that a spreadsheet would take for a formula has an "
            f"apostrophe in front; {DATABASE} has it without."
        ),
        "resources": sorted(described, key=lambda each: str(each["name"])),
    }
    part = path.with_name(f".{path.name}.part")
    try:
        with part.open("w", encoding="utf-8", newline="\n") as file:
            json.dump(said, file, ensure_ascii=False, indent=2)
            file.write("\n")
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    finally:
        part.unlink(missing_ok=True)
