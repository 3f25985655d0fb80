"""A short run of the fuzzer, and what its long run found."""

import re
import sqlite3
from pathlib import Path

import pytest

from chargebench.errors import ShopFileRefused
from chargebench.ledger import Ledger, Reader, rescue
from tests.fuzz.run import series
from tests.fuzz.targets import TARGETS, Target
from tests.ledger import books

COUNT = 60


@pytest.mark.slow
@pytest.mark.parametrize("target", TARGETS, ids=[each.name for each in TARGETS])
def test_that_files_that_are_nearly_right_break_nothing(target: type[Target]) -> None:
    found = series(target, COUNT, seed=4)
    assert found.faults == []
    assert found.tried == COUNT


@pytest.mark.parametrize(
    "change",
    [
        "UPDATE head SET number = 'x'",
        "UPDATE register_row SET id = x'07' WHERE id = 'S-1'",
        "UPDATE job SET id = x'07'",
        "UPDATE balance SET mass_mg = 'x' WHERE place = 'supplier'",
        "UPDATE entry SET number = 'x' WHERE number = 11",
        "UPDATE checkpoint SET hash = 7",
        "UPDATE day_total SET day = x'07' WHERE source = 'cylinder'",
    ],
)
def test_that_a_value_of_a_wrong_kind_is_a_problem_and_no_crash(
    tmp_path: Path, change: str
) -> None:
    path = tmp_path / "shop.chargebench"
    with Ledger.create(path) as ledger:
        books.whole_job(ledger)
        ledger.keep_checkpoint("export")
    with books.database_tool(path) as tool:
        kept = tool.execute("SELECT sql, name FROM sqlite_schema WHERE type = 'table'").fetchall()
        tool.execute("PRAGMA writable_schema=ON")  # tables here let no wrong kind in, pages do
        for sql, name in kept:
            loose = re.sub(r",?\s+STRICT\s*$", "", sql)
            tool.execute("UPDATE sqlite_schema SET sql = ? WHERE name = ?", (loose, name))
        tool.execute("PRAGMA writable_schema=RESET")
        assert tool.execute(change).rowcount
        tool.execute("PRAGMA writable_schema=ON")
        tool.executemany("UPDATE sqlite_schema SET sql = ? WHERE name = ?", kept)
        tool.execute("PRAGMA writable_schema=RESET")
    assert books.verified(path).problems


def test_that_a_text_that_is_none_in_what_a_shop_says_of_itself_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "shop.chargebench"
    Ledger.create(path).close()
    with sqlite3.connect(path) as tool:
        tool.execute("UPDATE about SET value = CAST(x'ff41' AS TEXT) WHERE key = 'shop'")
    tool.close()
    with pytest.raises(ShopFileRefused, match="is damaged"):
        Reader.open_reading(path)


def test_that_a_head_far_beyond_the_entries_does_not_hold_a_rescue_up(tmp_path: Path) -> None:
    path = tmp_path / "shop.chargebench"
    with Ledger.create(path) as ledger:
        books.receive(ledger)
    with sqlite3.connect(path) as tool:
        tool.execute("UPDATE head SET number = 4611686018427387904")
    tool.close()
    found = rescue(path, tmp_path / "new.chargebench", books.NOON)
    assert found.entries == 1
    assert "Entries 2 to 4611686018427387904" in found.missing[0]
