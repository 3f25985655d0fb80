"""The clause table: its form fields, sheets and columns exist, and the sample shop fills them."""

from functools import cache
from pathlib import Path
from typing import Any

import pytest

from chargebench.__main__ import main
from chargebench.reports import AuditContent
from chargebench.reports.clauses import CLAUSES, Clause, clauses
from chargebench.reports.sheets import tables
from chargebench.sources import SOURCES
from chargebench.steps import REGISTERS, STEPS, STOCK
from tests.reports.books import sheet_rows

FORMS = {"register": REGISTERS, "step": STEPS, "stock": STOCK}
EACH = pytest.mark.parametrize("clause", clauses(), ids=lambda each: f"{each.field}, {each.place}")
# The fields an inspector asks for, by group, as the regulations list them: 82.157(l),
# 82.156(a)(3), 82.155(b)(2), 82.154(c)(3), 82.161(a)(4); 84.106(l); EU 2024/573 articles 5, 7, 12.
ASKED = {
    "40CFR82F": (
        "82.157(l)(1)", "82.157(l)(2)(i)", "82.157(l)(2)(ii)", "82.157(l)(2)(iii)",
        "82.157(l)(2)(iv)", "82.157(l)(2)(v)", "82.157(l)(2)(vi)", "82.157(l)(2)(viii)",
        "82.157(l)(3)", "82.157(l)(5)", "82.157(l)(4), (6) to (11)",
        "82.156(a)(3)(i)", "82.156(a)(3)(ii)", "82.156(a)(3)(iii)", "82.156(b)",
        "82.155(b)(2)", "82.154(c)(3)", "82.161(a)",
    ),
    "40CFR84.106": ("(l)(1)(vi)", "(a)(3)"),
    "EU2024/573": (
        "article 7(1)(a)", "article 7(1)(d)", "article 7(1)(e)", "article 7(1)(g)",
        "article 5(1)", "article 5(2)", "article 6", "article 4(5)", "article 12(3)",
        "article 12(7)",
    ),
}  # fmt: skip


@pytest.fixture(scope="module")
def heads(content: AuditContent) -> dict[str, tuple[str, ...]]:
    """Heads of every sheet's columns."""
    return {each.name: tuple(column.head for column in each.columns) for each in tables(content)}


@cache
def rows_of(workbook: Path, sheet: str) -> list[dict[str, Any]]:
    return sheet_rows(workbook, sheet)


def asks(form: str) -> bool:
    """Whether a form has the field: register.site.name, step.weigh_in.lines.start, ..."""
    kind, name, *path = form.split(".")
    fields = FORMS[kind][name].fields
    for at, key in enumerate(path):
        found = next((each for each in fields if each.key == key), None)
        if found is None:
            return False
        fields = found.fields
        assert fields or at == len(path) - 1, form
    return bool(path)


@EACH
def test_that_a_row_is_full_and_its_form_asks_for_it(clause: Clause) -> None:
    assert clause.source in SOURCES
    assert all((clause.field, clause.sheet, clause.column))
    assert asks(clause.form) if clause.form else clause.note or clause.column in ("Job", "By")


@EACH
def test_that_its_sheet_has_the_column(clause: Clause, heads: dict[str, tuple[str, ...]]) -> None:
    assert clause.column in heads[clause.sheet]


@EACH
def test_that_the_sample_shop_shows_a_value_or_the_row_says_why_not(
    clause: Clause, workbook: Path
) -> None:
    cells = {row[clause.column] for row in rows_of(workbook, clause.sheet)} - {None, ""}
    shown = {cell for cell in cells if clause.value in str(cell)}
    assert bool(shown) != bool(clause.absent), shown


def test_that_every_clause_an_inspector_names_has_a_row() -> None:
    named = {source: " ".join(e.place for e in clauses() if e.source == source) for source in ASKED}
    missing = [
        f"{source} {place}"
        for source, places in ASKED.items()
        for place in places
        if place not in named[source]
    ]
    assert missing == []


def test_that_the_workbook_shows_the_table(workbook: Path) -> None:
    rows = sheet_rows(workbook, "Clauses")
    assert len(rows) == len(clauses()) > 100
    assert list(rows[0]) == [column.head for column in CLAUSES]


def test_that_the_command_prints_the_table(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["clauses"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) == len(clauses())
    assert all(line.count("\t") == 5 for line in lines)
