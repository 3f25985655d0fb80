"""A chain made anew from the middle, and what stands beside the chain: pictures and registers."""

import hashlib
import sqlite3
from pathlib import Path

import pytest

from chargebench.ledger import Checkpoint, Ledger, Reader
from chargebench.ledger.entry import canonical, chained
from tests.ledger import books
from tests.ledger.books import BY

WEIGH_IN = 11  # the number of the weigh-in that is changed


def _chained_anew(tool: sqlite3.Connection, since: int) -> None:
    """Give every entry from one on the hash its content now has, and the head with them."""
    columns = 'id, bench, number, kind, job, happened_at, recorded_at, "by", payload'
    previous = tool.execute("SELECT hash FROM entry WHERE number = ?", (since - 1,)).fetchone()[0]
    rows = tool.execute(f"SELECT {columns} FROM entry WHERE number >= ?", (since,)).fetchall()  # noqa: S608
    for row in rows:
        lines = tool.execute(
            "SELECT source, target, refrigerant, mass_mg, as_typed FROM transfer "
            "WHERE entry = ? ORDER BY line",
            (row[2],),
        ).fetchall()
        digest = chained(previous, canonical(row, lines))
        tool.execute(
            "UPDATE entry SET previous_hash = ?, hash = ? WHERE number = ?",
            (previous, digest, row[2]),
        )
        previous = digest
    tool.execute("UPDATE head SET hash = ?", (previous,))


def _charge_less(path: Path, *, forget_heads: bool) -> None:
    """Take 50 g off a signed weigh-in, with all that would show it in the file itself."""
    with books.database_tool(path) as tool:
        tool.execute("UPDATE transfer SET mass_mg = mass_mg - 50000 WHERE entry = 11 AND line = 0")
        tool.execute("UPDATE balance SET mass_mg = mass_mg + 50000 WHERE place LIKE 'cylinder%'")
        tool.execute("UPDATE balance SET mass_mg = mass_mg - 50000 WHERE place LIKE 'equipment%'")
        tool.execute("UPDATE day_total SET mass_mg = mass_mg - 50000 WHERE target = 'equipment'")
        _chained_anew(tool, WEIGH_IN)
        if forget_heads:
            tool.execute("DELETE FROM checkpoint")


def test_that_a_chain_made_anew_from_the_middle_is_named_by_the_head_kept_at_an_export(
    path: Path,
) -> None:
    _charge_less(path, forget_heads=False)
    found = books.verified(path)
    assert [problem.entry for problem in found.problems] == [12]
    assert "is not the one that stood when a head was kept" in found.problems[0].what


def test_that_a_chain_made_anew_with_its_kept_heads_is_named_by_a_head_kept_elsewhere(
    path: Path,
) -> None:
    with Reader.open_reading(path) as reader:
        kept = Checkpoint("B", *reader.head(), "manifest of March")
    _charge_less(path, forget_heads=True)
    assert books.verified(path).ok  # what a chain can not prove, as the limits say
    assert [problem.entry for problem in books.verified(path, kept).problems] == [12]


def _with_picture(path: Path) -> str:
    """Keep a picture in the file; the hash it is kept under."""
    content = b"\x89PNG of a nameplate"
    name = hashlib.sha256(content).hexdigest()
    with sqlite3.connect(path) as tool:
        tool.execute("INSERT INTO picture VALUES (?, 'image/png', ?, 't')", (name, content))
    tool.close()
    return name


def test_that_a_changed_picture_is_named_by_its_hash(path: Path) -> None:
    name = _with_picture(path)
    assert books.verified(path).ok
    assert any(said.startswith("1 pictures") for said in books.verified(path).checked)
    with books.database_tool(path) as tool:
        tool.execute("UPDATE picture SET content = zeroblob(9)")
    (problem,) = books.verified(path).problems
    assert name[:12] in problem.what


def test_that_the_guards_of_pictures_refuse_any_tool(path: Path) -> None:
    _with_picture(path)
    tool = sqlite3.connect(path)
    for change in ("UPDATE picture SET content = x'00'", "DELETE FROM picture"):
        with pytest.raises(sqlite3.IntegrityError, match="picture is append-only"):
            tool.execute(change)
    tool.close()


def test_that_a_register_change_keeps_what_the_row_was_and_what_it_became(path: Path) -> None:
    with Ledger.open(path, backups=0) as ledger:
        before = ledger.row("cylinder", "C-014")
        entry = ledger.put_row("cylinder", "C-014", {"refrigerant": "R600a"}, BY, books.NOON)
    assert entry.payload["before"] == before
    assert entry.payload["after"] == {"refrigerant": "R600a"}
    with books.database_tool(path) as tool:
        tool.execute("UPDATE entry SET payload = replace(payload, 'R600a', 'R290') WHERE number=13")
    assert 13 in books.named(path)
