"""A workbook read back, and small contents made by hand."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from openpyxl import load_workbook

from chargebench import rules
from chargebench.ledger import Entry, Transfer
from chargebench.reports import AuditContent
from chargebench.reports.table import HEAD_ROW

MADE_AT = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


def sheet_rows(path: Path, sheet: str, *, values: bool = True) -> list[dict[str, Any]]:
    """Rows of a sheet below its head, by the column's head."""
    book = load_workbook(path, data_only=values)
    rows = book[sheet].iter_rows(min_row=HEAD_ROW, values_only=True)
    heads = [str(head) for head in next(rows)]
    found: list[dict[str, Any]] = []
    for row in rows:
        if all(cell is None for cell in row):
            break
        found.append(dict(zip(heads, row, strict=False)))
    return found


def entry(number: int, *transfers: Transfer, kind: str = "step-signed", **more: Any) -> Entry:
    """An entry as the ledger hands it out; its chain is not looked at here."""
    made = Entry(
        id=f"e-{number}",
        bench="B",
        number=number,
        kind=kind,
        job=None,
        happened_at=MADE_AT + timedelta(hours=number),
        recorded_at=MADE_AT,
        by="P-01",
        payload={},
        transfers=transfers,
        previous_hash="0" * 64,
        hash=f"{number:064x}",
    )
    return replace(made, **more)


def content_of(*entries: Entry, **more: Any) -> AuditContent:
    """The least content that has these entries."""

    def again() -> Iterator[Entry]:
        return iter(entries)

    made = AuditContent(
        program="chargebench test",
        made_at=MADE_AT,
        today=MADE_AT.date(),
        since=None,
        until=None,
        rule_set=rules.load("us-federal"),
        entries=again,
        entry_count=len(entries),
        chain_head=(len(entries), "f" * 64),
        registers={"person": {"P-01": {"name": "N. Okafor", "role": "technician"}}},
        shop={"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"},
    )
    return replace(made, **more)


CHARGED = Transfer("cylinder:C-014", "equipment:E-001", "R290", 88_401, "10 012.2 g → 9 923.5 g")
RECEIVED = Transfer("supplier", "cylinder:C-014", "R290", 4_400_000, "4.40 kg")
