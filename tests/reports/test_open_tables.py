"""Tables in open formats, read back by readers that are not ours: csv, sqlite3, json."""

import csv
import hashlib
import json
import sqlite3
from collections.abc import Iterator
from datetime import date, datetime
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from chargebench.errors import ExportRefused
from chargebench.ledger import Transfer
from chargebench.reports.open_tables import slug, write_tables
from chargebench.reports.sheets import ORDER
from tests.reports.books import content_of, entry

ROW = ("cylinder:C-014", "equipment:E-001", "R290")


@pytest.fixture
def written(tmp_path: Path) -> Path:
    content = content_of(
        entry(1, Transfer(*ROW, 88_401, "3.1 oz")),
        entry(2, Transfer(*ROW, 1, "=1+1")),
        entry(3, Transfer(*ROW, 299, 'a "quoted", text\nof two lines')),
    )
    write_tables(content, tmp_path)
    return tmp_path / "tables"


def _rows(path: Path) -> list[dict[str, str]]:
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file, strict=True))


def test_that_every_sheet_is_a_csv_and_a_table(written: Path) -> None:
    names = {slug(name) for name in ORDER}
    assert {path.stem for path in written.glob("*.csv")} == names
    with sqlite3.connect(written / "tables.sqlite") as file:
        assert {name for (name,) in file.execute("SELECT name FROM sqlite_schema")} == names
    file.close()


def test_that_masses_come_back_to_the_milligram_and_text_to_the_letter(written: Path) -> None:
    rows = _rows(written / "transfers.csv")
    typed = [row["As typed"] for row in rows]
    assert typed == ["3.1 oz", "'=1+1", 'a "quoted", text\nof two lines']
    assert [Decimal(row["Mass [kg]"]) * 1_000_000 for row in rows] == [88_401, 1, 299]
    with sqlite3.connect(written / "tables.sqlite") as file:
        stored = file.execute('SELECT "As typed", "Mass [kg]" FROM transfers').fetchall()
    file.close()
    assert [text for text, _ in stored] == ["3.1 oz", "=1+1", typed[2]]
    assert [round(mass * 1_000_000) for _, mass in stored] == [88_401, 1, 299]


def test_that_lines_end_as_the_standard_says(written: Path) -> None:
    # RFC 4180, 2.1: each record ends with CR LF; 2.7: a quote within a field is doubled.
    content = (written / "transfers.csv").read_bytes()
    assert content.endswith(b"\r\n")
    assert b'"a ""quoted"", text\nof two lines"' in content


_READ: dict[str, Any] = {
    "string": str,
    "integer": int,
    "number": Decimal,
    "boolean": {"true": True, "false": False}.__getitem__,
    "date": date.fromisoformat,
    "datetime": lambda text: datetime.strptime(text, "%Y-%m-%dT%H:%M:%S"),  # noqa: DTZ007
}


def test_that_each_file_is_what_its_description_says(written: Path) -> None:
    package = json.loads((written / "datapackage.json").read_text("utf-8"))
    assert package["profile"] == "tabular-data-package"
    for resource in package["resources"]:
        path = written / resource["path"]
        assert resource["bytes"] == path.stat().st_size
        assert resource["hash"] == "sha256:" + hashlib.sha256(path.read_bytes()).hexdigest()
        assert resource["name"] == resource["name"].lower()
        fields = resource["schema"]["fields"]
        with path.open(encoding="utf-8", newline="") as file:
            head, *rows = list(csv.reader(file, strict=True))
        assert head == [field["name"] for field in fields]
        assert len(set(head)) == len(head)
        for row in rows:
            for text, field in zip(row, fields, strict=True):
                if text:
                    _READ[field["type"]](text)


def test_that_the_same_records_make_the_same_bytes(tmp_path: Path) -> None:
    content = content_of(entry(1, Transfer(*ROW, 88_401, "3.1 oz")))
    for name in ("one", "two"):
        (tmp_path / name).mkdir()
        write_tables(content, tmp_path / name)
    for path in (tmp_path / "one" / "tables").iterdir():
        assert path.read_bytes() == (tmp_path / "two" / "tables" / path.name).read_bytes()


def test_that_a_cancelled_export_leaves_no_half_table(tmp_path: Path) -> None:
    asked: Iterator[bool] = iter([False, True])
    with pytest.raises(ExportRefused, match="cancelled"):
        write_tables(content_of(entry(1)), tmp_path, cancelled=lambda: next(asked, True))
    left = [path.name for path in (tmp_path / "tables").iterdir()]
    assert not [name for name in left if name.startswith(".") or name == "datapackage.json"]
