"""A shop file that may be damaged, read row by row as far as it can be.

Everything is read from a copy, so the file itself stays as it was found.
"""

import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Self

from chargebench.ledger import schema
from chargebench.ledger.entry import canonical, chained

_PIECE, _BLOCK = 1 << 20, 4_096  # bytes copied at a time, and where the disk does not answer
_HEADER = 100  # bytes of SQLite's own at the start of the first page
_LEAF = 13  # what a page of a table begins with that holds its rows itself
_INDEXES = (
    "",
    "NOT INDEXED",
    *(f"INDEXED BY entry_by_{by}" for by in ("job", "kind", "time")),
)
_GUESSED_MOST = 10_000_000  # places of entries tried one by one between the first and the last


@dataclass(frozen=True, slots=True)
class Found:
    """An entry as stored, in the order of its table's columns, with its mass lines."""

    row: tuple[Any, ...]
    lines: tuple[tuple[Any, ...], ...]

    @property
    def key(self) -> tuple[str, int]:
        """Bench and number."""
        return self.row[2], self.row[3]

    @property
    def sound(self) -> bool:
        """Whether what is stored gives the hash it is stored with."""
        try:
            content = canonical(self.row[1:10], self.lines)
            return bool(chained(self.row[10], content) == self.row[11])
        except (TypeError, ValueError):  # a column that is not of its type any more
            return False


class Wreck:
    """A copy of a shop file, open for whatever can be read of it."""

    def __init__(self, path: Path, folder: Path, like: Sequence[Path] = ()) -> None:
        """Copy into `folder`; the first page may be taken from a file this one is `like`."""
        self._copy = folder / f"{path.name}-copy"
        for ending in ("", "-wal", "-journal"):
            part = path.with_name(path.name + ending)
            if part.is_file():
                _copy_readable(part, self._copy.with_name(self._copy.name + ending))
        self.damaged: set[str] = set()  # tables of which something could not be read
        _fill_up(self._copy)
        self._tool = self._opened()
        for other in like:
            if self._readable():
                break
            self._tool.close()
            self.damaged.add("sqlite_schema")
            _transplant(self._copy, other)
            self._tool = self._opened()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self._tool.close()

    def _opened(self) -> sqlite3.Connection:
        tool = sqlite3.connect(self._copy, isolation_level=None)
        # A letter that can not be read is no reason to leave the row: its hash tells.
        tool.text_factory = lambda text: text.decode("utf-8", "replace")
        return tool

    def _readable(self) -> bool:
        return bool(self._rows("SELECT name FROM sqlite_schema WHERE name = 'entry'", ""))

    def _rows(self, query: str, table: str, *values: Any) -> list[tuple[Any, ...]]:
        """Rows of a query up to the first that can not be read."""
        rows: list[tuple[Any, ...]] = []
        try:
            for row in self._tool.execute(query, values):
                rows.append(row)  # noqa: PERF402  what was read before it breaks counts
        except (sqlite3.Error, UnicodeDecodeError):
            self.damaged.add(table)
        return rows

    def entries(self) -> Iterator[Found]:
        """Every entry that can be read whole, by its place in the order recorded."""
        for position in self._positions():
            rows = self._rows("SELECT * FROM entry WHERE position = ?", "entry", position)
            lines = self._rows(
                "SELECT source, target, refrigerant, mass_mg, as_typed FROM transfer "
                "WHERE entry = ? ORDER BY line",
                "transfer",
                position,
            )
            if rows:
                yield Found(rows[0], tuple(lines))

    def _positions(self) -> Sequence[int]:
        """Places where an entry may stand: by every index and from both ends."""
        found: set[int] = set()
        for index in _INDEXES:
            whole = self._rows(f"SELECT position FROM entry {index}", "entry")  # noqa: S608
            found.update(row[0] for row in whole)
            if "entry" not in self.damaged:
                return sorted(found)
        backwards = "SELECT position FROM entry NOT INDEXED ORDER BY position DESC"
        found.update(row[0] for row in self._rows(backwards, "entry"))
        first, last = min(found, default=1), max(found, default=0)
        if last - first < _GUESSED_MOST:
            return range(min(first, 1), last + 1)
        return sorted(found)

    def table(self, name: str, key: str) -> list[dict[str, Any]]:
        """Rows of another table, read from both ends of its key."""
        kept: dict[tuple[Any, ...], dict[str, Any]] = {}
        columns = [row[1] for row in self._rows(f"PRAGMA table_info({name})", name)]
        if not columns:
            self.damaged.add(name)
        for order in ("", ", ".join(f"{part} DESC" for part in key.split(", "))):
            by = order or key
            for row in self._rows(f"SELECT * FROM {name} ORDER BY {by}", name):  # noqa: S608
                if _as_written(name, columns, row):
                    kept.setdefault(row, dict(zip(columns, row, strict=True)))
                else:
                    self.damaged.add(name)
            if name not in self.damaged:
                break
        return list(kept.values())


def _as_written(table: str, columns: Sequence[str], row: Sequence[Any]) -> bool:
    """Whether every value is of its column's kind; SQLite keeps any kind in any column."""
    known = schema.metadata.tables[table].c
    for name, value in zip(columns, row, strict=True):
        if name not in known or (value is None and known[name].nullable):
            continue
        if not isinstance(value, known[name].type.python_type):
            return False
    return True


def _copy_readable(source: Path, target: Path) -> None:
    """Copy a file; blocks the disk does not give are left empty."""
    with source.open("rb", buffering=0) as old, target.open("wb") as new:
        size = source.stat().st_size
        for at in range(0, size, _PIECE):
            for block in _blocks(old, at, min(_PIECE, size - at)):
                new.write(block)


def _blocks(file: Any, at: int, size: int) -> Iterator[bytes]:
    try:
        file.seek(at)
        piece = file.read(size)
        if len(piece) == size:
            yield piece
            return
    except OSError:
        pass
    for start in range(at, at + size, _BLOCK):
        block = b""
        with suppress(OSError):
            file.seek(start)
            block = file.read(min(_BLOCK, at + size - start))
        yield block.ljust(min(_BLOCK, at + size - start), b"\x00")


def _fill_up(copy: Path) -> None:
    """Give a file that was cut off the length its head says: SQLite reads none of it otherwise."""
    with copy.open("r+b") as file:
        head = file.read(_HEADER)
        size = int.from_bytes(head[16:18], "big")
        length = (65_536 if size == 1 else size) * int.from_bytes(head[28:32], "big")
        if copy.stat().st_size < length <= 1 << 40:
            file.truncate(length)


def _transplant(copy: Path, other: Path) -> None:
    """Put a first page that says where the tables are in the place of one that can not be read.

    Shop files are made by the same steps and backups page for page, so tables begin at the same
    pages; one that does not is read as empty or damaged, and its hashes keep entries honest.
    """
    made = copy.with_name(copy.name + "-page")
    with sqlite3.connect(other) as kept, copy.open("r+b") as file:
        size = kept.execute("PRAGMA page_size").fetchone()[0]
        rows = kept.execute(
            "SELECT type, name, tbl_name, rootpage, sql FROM sqlite_schema WHERE type = 'table' "
            "OR sql IS NULL ORDER BY rootpage"
        ).fetchall()
        kept.rollback()
        page = _first_page(made, size, rows)
        page[28:32] = max(copy.stat().st_size // size, 1).to_bytes(4, "big")
        page[92:96] = page[24:28]  # the count of pages above holds good
        if copy.with_name(copy.name + "-wal").exists():
            page[18:20] = b"\x02\x02"  # to be read with it
        file.write(page)
    kept.close()


def _first_page(made: Path, size: int, rows: Sequence[tuple[Any, ...]]) -> bytearray:
    """A first page that lists as many of the tables as it has room for."""
    for count in range(len(rows), 0, -1):
        made.unlink(missing_ok=True)
        tool = sqlite3.connect(made, isolation_level=None)
        tool.execute(f"PRAGMA page_size={size}")
        tool.execute("CREATE TABLE seed (a)")
        tool.execute("PRAGMA writable_schema=ON")
        tool.execute("DELETE FROM sqlite_schema")
        for *named, sql in rows[:count]:
            short = None if sql is None else " ".join(sql.split())
            tool.execute("INSERT INTO sqlite_schema VALUES (?, ?, ?, ?, ?)", (*named, short))
        tool.close()
        page = bytearray(made.read_bytes()[:size])
        if page[_HEADER] == _LEAF:
            break
    return page
