"""`chargebench verify` on the sample shop after somebody was at it with a database tool."""

import json
import random
import re
import shutil
import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

import pytest

from chargebench.__main__ import main
from chargebench.ledger import Reader
from tests.ledger.books import database_tool

pytestmark = pytest.mark.slow

ENTRY = (
    "position",
    "id",
    "bench",
    "number",
    "kind",
    "job",
    "happened_at",
    "recorded_at",
    "by",
    "payload",
    "previous_hash",
    "hash",
    "happened_us",
)
TRANSFER = ("entry", "line", "source", "target", "refrigerant", "mass_mg", "as_typed")
COLUMNS = [("entry", column) for column in ENTRY] + [("transfer", column) for column in TRANSFER]
ROWS_A_COLUMN = 3
Value = str | bytes | int | None


@dataclass
class Shop:
    """A copy of the sample shop, and the command that verifies it."""

    path: Path
    capture: pytest.CaptureFixture[str]

    def verify(self) -> tuple[int, set[int]]:
        """Exit code, and the numbers of the entries named."""
        self.capture.readouterr()
        code = main(["verify", "--shop", str(self.path)])
        said = self.capture.readouterr()
        named = re.findall(r"^PROBLEM entry (\d+):", said.err, re.MULTILINE)
        return code, {int(number) for number in named}


@pytest.fixture
def shop(sample_shop: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Shop:
    path = tmp_path / "copy.chargebench"
    shutil.copy(sample_shop, path)
    return Shop(path, capsys)


def test_that_the_columns_here_are_all_there_are(shop: Shop) -> None:
    with sqlite3.connect(shop.path) as tool:
        for table, columns in (("entry", ENTRY), ("transfer", TRANSFER)):
            found = [row[1] for row in tool.execute(f"PRAGMA table_info({table})")]
            assert tuple(found) == columns
    tool.close()


def test_that_the_sample_shop_verifies(shop: Shop) -> None:
    assert main(["verify", "--shop", str(shop.path)]) == 0
    said = shop.capture.readouterr()
    assert said.err == ""
    assert "entries were read" in said.out
    assert "can not" in said.out  # what a chain does not prove is said too


def _one_byte_other(value: Value, chance: random.Random) -> Value:
    """The value with one byte of it changed."""
    if value is None:
        return "x"
    if isinstance(value, int):
        return value ^ (1 << chance.randrange(9, 24))  # not to one that another row has
    place = chance.randrange(len(value))
    if isinstance(value, bytes):
        return value[:place] + bytes([value[place] ^ 1 << chance.randrange(8)]) + value[place + 1 :]
    other = chance.choice([each for each in "0a: é" if each != value[place]])
    return value[:place] + other + value[place + 1 :]


KEYS = {"entry": ("position",), "transfer": ("entry", "line")}


def _where(table: str) -> str:
    return " AND ".join(f"{key} = ?" for key in KEYS[table])


def _keys(tool: sqlite3.Connection, table: str) -> list[tuple[int, ...]]:
    """Key of every row; its first part is the position, and so the number, of an entry."""
    keys = ", ".join(KEYS[table])
    return tool.execute(f"SELECT {keys} FROM {table} ORDER BY {keys}").fetchall()  # noqa: S608


def _change_cell(tool: sqlite3.Connection, table: str, column: str, chance: random.Random) -> int:
    """Change a byte somewhere in a column; number of the entry it belongs to."""
    row, where = chance.choice(_keys(tool, table)), _where(table)
    read = f"SELECT {column} FROM {table} WHERE {where}"  # noqa: S608
    (before,) = tool.execute(read, row).fetchone()
    write = f"UPDATE {table} SET {column} = ? WHERE {where}"  # noqa: S608
    tool.execute(write, (_one_byte_other(before, chance), *row))
    return row[0]


@pytest.mark.parametrize(("table", "column"), COLUMNS, ids=[".".join(each) for each in COLUMNS])
@pytest.mark.parametrize("seed", range(ROWS_A_COLUMN))
def test_that_a_changed_byte_is_found_and_its_entry_named(
    shop: Shop, table: str, column: str, seed: int
) -> None:
    chance = random.Random(f"{table} {column} {seed}")  # noqa: S311
    with database_tool(shop.path) as tool:
        number = _change_cell(tool, table, column, chance)
    code, named = shop.verify()
    assert code == 1
    assert number in named


def _numbers(tool: sqlite3.Connection) -> list[int]:
    return [row[0] for row in tool.execute("SELECT number FROM entry ORDER BY position")]


@pytest.mark.parametrize("share", [0.0, 0.3, 0.8, 1.0], ids=["first", "early", "late", "last"])
def test_that_an_entry_taken_out_is_missed(shop: Shop, share: float) -> None:
    with database_tool(shop.path) as tool:
        numbers = _numbers(tool)
        gone = numbers[round(share * (len(numbers) - 1))]
        tool.execute("DELETE FROM transfer WHERE entry = ?", (gone,))
        tool.execute("DELETE FROM entry WHERE position = ?", (gone,))
    code, named = shop.verify()
    assert code == 1
    assert gone in named


@pytest.mark.parametrize("seed", range(3))
def test_that_a_mass_line_taken_out_is_missed(shop: Shop, seed: int) -> None:
    with database_tool(shop.path) as tool:
        lines = tool.execute("SELECT entry, line FROM transfer").fetchall()
        entry, line = random.Random(seed).choice(lines)  # noqa: S311
        tool.execute("DELETE FROM transfer WHERE entry = ? AND line = ?", (entry, line))
    code, named = shop.verify()
    assert code == 1
    assert entry in named


def _swap(
    tool: sqlite3.Connection,
    table: str,
    columns: Sequence[str],
    one: tuple[int, ...],
    other: tuple[int, ...],
) -> None:
    """What stands in one row stands in the other, all but its place."""
    where = _where(table)
    read = f"SELECT {', '.join(columns)} FROM {table} WHERE {where}"  # noqa: S608
    write = f"UPDATE {table} SET {', '.join(f'{each} = ?' for each in columns)} WHERE {where}"  # noqa: S608
    first, second = (tool.execute(read, row).fetchone() for row in (one, other))
    if table == "entry":  # no id and no number may stand there twice, even for a moment
        tool.execute("UPDATE entry SET id = 'aside', number = -1 WHERE position = ?", one)
    tool.execute(write, (*first, *other))
    tool.execute(write, (*second, *one))


@pytest.mark.parametrize("seed", range(3))
def test_that_two_entries_swapped_are_both_named(shop: Shop, seed: int) -> None:
    with database_tool(shop.path) as tool:
        one, other = random.Random(seed).sample(_numbers(tool), 2)  # noqa: S311
        _swap(tool, "entry", ENTRY[1:], (one,), (other,))
    code, named = shop.verify()
    assert code == 1
    assert {one, other} <= named


def test_that_two_mass_lines_swapped_are_both_named(shop: Shop) -> None:
    with database_tool(shop.path) as tool:
        one, other = _keys(tool, "transfer")[0], _keys(tool, "transfer")[-1]
        _swap(tool, "transfer", TRANSFER[2:], one, other)
    code, named = shop.verify()
    assert code == 1
    assert {one[0], other[0]} <= named


def test_that_a_number_swapped_within_the_chain_is_named(shop: Shop) -> None:
    """Two neighbours with their numbers exchanged, all else left."""
    with database_tool(shop.path) as tool:
        _swap(tool, "entry", ["number"], (7,), (8,))
    code, named = shop.verify()
    assert code == 1
    assert {7, 8} <= named


def test_that_a_head_printed_on_an_export_is_kept_and_may_be_asked_for(
    shop: Shop, tmp_path: Path
) -> None:
    assert main(["export", "--shop", str(shop.path), "--out", str(tmp_path / "out")]) == 0
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    number, digest = manifest["chain_head"]["entry"], manifest["chain_head"]["sha256"]
    with Reader.open_reading(shop.path) as reader:
        assert "with 1 heads kept at exports" in " ".join(reader.verify().checked)
    asked = ["verify", "--shop", str(shop.path), "--head"]
    assert main([*asked, f"{number}:{digest}"]) == 0
    assert main([*asked, f"B:{number}:{digest}"]) == 0
    shop.capture.readouterr()
    assert main([*asked, f"{number}:{digest[::-1]}"]) == 1
    said = shop.capture.readouterr()
    assert f"PROBLEM entry {number}: Entry {number} of bench B is not the one" in said.err
    assert "given by --head" in said.err
    assert main([*asked, f"{number}:{digest[:-1]}"]) == 1
    assert "Expected a head as in the manifest" in shop.capture.readouterr().err
