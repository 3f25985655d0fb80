"""The frozen steps make what the code expects, and files of every released schema still open."""

import ast
import shutil
import sqlite3
from pathlib import Path

import pytest
from sqlalchemy import inspect

from chargebench.ledger import Ledger, Reader, dialect, migrations, schema, sqlite

OLD = Path(__file__).resolve().parents[1] / "old_ledgers"
STEPS = sorted(Path(migrations.__file__).parent.glob("step_*.py"))


def test_that_the_steps_make_the_tables_the_code_expects(shop: Ledger) -> None:
    with shop._connection.begin():
        there = inspect(shop._connection)
        for table in schema.metadata.tables.values():
            columns = [(c["name"], c["nullable"]) for c in there.get_columns(table.name)]
            assert columns == [(c.name, c.nullable) for c in table.columns]
            assert there.get_pk_constraint(table.name)["constrained_columns"] == [
                column.name for column in table.primary_key
            ]
        assert set(there.get_table_names()) == set(schema.metadata.tables)
        assert dialect.of(shop._connection).missing_guards(shop._connection) == []


def test_that_every_table_keeps_to_its_types(filed: Ledger) -> None:
    tool = sqlite3.connect(filed.path)
    strict = {row[1]: row[5] for row in tool.execute("PRAGMA table_list") if row[0] == "main"}
    tool.close()
    assert {strict[name] for name in schema.metadata.tables} == {1}


def test_that_a_file_is_open_so_that_a_power_cut_loses_nothing(filed: Ledger) -> None:
    with filed._connection.begin():
        found = {
            name: sqlite.pragma(filed._connection, name)
            for name in ("journal_mode", "synchronous", "foreign_keys", "recursive_triggers")
        }
    assert found == {
        "journal_mode": "wal",
        "synchronous": 2,
        "foreign_keys": 1,
        "recursive_triggers": 1,
    }


@pytest.mark.parametrize("step", STEPS, ids=lambda path: path.stem)
def test_that_a_step_imports_nothing_of_ours(step: Path) -> None:
    names = []
    for node in ast.walk(ast.parse(step.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            names += [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names.append("." * node.level + (node.module or ""))
    assert [name for name in names if name.startswith((".", "chargebench", "tests"))] == []
    assert names


def test_that_every_step_is_run_and_has_its_old_file() -> None:
    assert [step.__module__.rsplit(".", 1)[1] for step in migrations.STEPS] == [
        path.stem for path in STEPS
    ]
    assert len(list(OLD.glob("schema_*.chargebench"))) == len(STEPS)


@pytest.mark.parametrize("number", range(1, len(STEPS) + 1))
def test_that_a_file_of_every_released_schema_opens_with_all_it_held(
    tmp_path: Path, number: int
) -> None:
    file = tmp_path / "old.chargebench"
    shutil.copy(OLD / f"schema_{number}.chargebench", file)
    with Ledger.open(file) as ledger:
        assert ledger.verify().problems == ()
        assert [job.number for job in ledger.jobs("closed", find="bakery")] == ["B-0001"]
        assert [job.number for job in ledger.jobs("open")] == ["B-0002"]
        assert ledger.balance("equipment:E-203", "R290") == 99_223
        assert ledger.balance("cylinder:C-014", "R290") == 4_650_000 - 99_223 - 300
        job = ledger.jobs("open")[0].id
        assert ledger.typed(job, "weigh-in") == {"start": "4 312.5 g"}
    with Reader.open_reading(file) as reader:
        assert reader.head()[0] == 13


def test_that_an_upgrade_of_a_released_file_keeps_it_as_it_was(tmp_path: Path) -> None:
    old = OLD / "schema_1.chargebench"
    file = tmp_path / "old.chargebench"
    shutil.copy(old, file)
    Ledger.open(file, backups=0).close()
    (copy,) = sqlite.backup_folder(file).iterdir()
    assert copy.name.startswith(f"before-schema-{len(STEPS)}-")
    with sqlite3.connect(copy) as kept, sqlite3.connect(old) as was:
        assert kept.execute("PRAGMA user_version").fetchone() == (1,)
        for table in ("entry", "transfer", "checkpoint", "typed"):
            rows = f"SELECT * FROM {table}"  # noqa: S608
            assert kept.execute(rows).fetchall() == was.execute(rows).fetchall()
    kept.close()
    was.close()
