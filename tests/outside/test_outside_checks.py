"""Every value of ours that has one outside beside it, and what the table of them promises."""

import ast
import dataclasses
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench import fluids
from tests import outside_checks
from tests.outside import peers
from tests.outside.check import LIBRARIES, MARKS, Check
from tests.tidy import tree

CHECKS = outside_checks.checks()
EXPECTING = ("by_teqp.py", "by_chemicals.py", "rows.py")  # where expected values come from


@pytest.fixture(autouse=True, scope="module")
def _ended() -> Iterator[None]:
    yield
    fluids.close()


@pytest.mark.parametrize("check", CHECKS, ids=str)
def test_that_ours_agrees_with_the_value_from_outside(check: Check) -> None:
    found = check.compare()
    assert found.met, (check, found)


def test_that_there_are_enough_checks_and_each_says_where_it_is_from() -> None:
    assert len(CHECKS) >= 250
    unsaid = [str(check) for check in CHECKS if not check.source or check.mark not in MARKS]
    assert unsaid == []
    by_coolprop = [str(check) for check in CHECKS if check.source.startswith("CoolProp")]
    assert by_coolprop == []


def test_that_most_checks_do_not_rest_on_memory_and_every_library_has_some() -> None:
    marks = Counter(check.mark for check in CHECKS)
    assert all(marks[library] >= 20 for library in LIBRARIES)
    assert marks["SEEN"] + marks["SEEN-2"] >= 250
    assert marks["MEMORY"] < len(CHECKS) / 10


def test_that_most_refrigerants_are_checked_against_print_and_all_against_a_library() -> None:
    printed = {check.about for check in CHECKS if check.mark.startswith("SEEN")}
    assert len(printed & set(fluids.names())) >= 35
    by_library = {check.about for check in CHECKS if check.mark == "teqp"}
    assert set(fluids.names()) - by_library == set(peers.NOT_BY_TEQP)


def test_that_no_check_stands_twice() -> None:
    keys = Counter((str(check), check.source, check.unit) for check in CHECKS)
    assert [key for key, count in keys.items() if count > 1] == []


def test_that_every_file_of_rows_is_read() -> None:
    assert outside_checks.unread_files() == set()


def test_that_expected_values_come_neither_from_this_program_nor_from_coolprop() -> None:
    imported = {
        name.split(".")[0]
        for file in EXPECTING
        for node in ast.walk(tree.parsed(Path(__file__).with_name(file)))
        if isinstance(node, ast.Import | ast.ImportFrom)
        for name in (
            [node.module or ""]
            if isinstance(node, ast.ImportFrom)
            else [alias.name for alias in node.names]
        )
    }
    assert {"teqp", "chemicals", "iapws"} <= imported
    assert not imported & {"chargebench", "CoolProp"}


@pytest.mark.parametrize(("ours", "met"), [(100.0, True), (101.0, True), (101.1, False)])
def test_that_a_check_holds_within_its_tolerance_and_not_beyond(ours: float, *, met: bool) -> None:
    plain = dataclasses.replace(CHECKS[0], expected=lambda: 100.0, ours=lambda: ours)
    for tolerance in ("1", "1 %"):
        assert dataclasses.replace(plain, tolerance=tolerance).compare().met is met


def test_that_the_script_ends_badly_where_a_value_is_off(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    off = dataclasses.replace(CHECKS[0], expected=lambda: 1.0, ours=lambda: 2.0)
    word = dataclasses.replace(CHECKS[0], expected=lambda: "A3", ours=lambda: "A3")
    monkeypatch.setattr(outside_checks, "checks", lambda: (off, word))
    assert outside_checks.main() == 1
    table = capsys.readouterr().out.splitlines()
    assert table[1].endswith("FAILS")
    assert "\tsame\t" in table[2]
    assert table[-1].startswith("2 checks, 1 failing")
