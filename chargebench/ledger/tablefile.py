"""Tables of an export in one SQLite file, for records too many for a spreadsheet."""

import sqlite3
from collections.abc import Iterable, Sequence
from pathlib import Path
from types import TracebackType
from typing import Self

Value = str | int | float | None


class TableFile:
    """A new SQLite file that takes one table after the other; nothing of a ledger is in it."""

    def __init__(self, path: Path) -> None:
        """Begin the file anew.

        Raises
        ------
        OSError
            It can not be written.
        """
        path.unlink(missing_ok=True)
        try:
            self._file = sqlite3.connect(path, isolation_level=None)
            # Whole or not at all is the caller's: the file gets its name when it is complete.
            self._file.execute("PRAGMA journal_mode=OFF")
            self._file.execute("PRAGMA synchronous=OFF")
            self._file.execute("BEGIN")
        except sqlite3.Error as problem:
            raise OSError(str(problem)) from problem

    def add(self, name: str, columns: Sequence[str], rows: Iterable[Sequence[Value]]) -> None:
        """Add a table; a column takes numbers and text as they come.

        Raises
        ------
        OSError
            The disk is full or gone.
        """
        heads = ", ".join(_quoted(column) for column in columns)
        places = ", ".join("?" * len(columns))
        try:
            self._file.execute(f"CREATE TABLE {_quoted(name)} ({heads})")
            self._file.executemany(
                f"INSERT INTO {_quoted(name)} VALUES ({places})",  # noqa: S608  quoted above
                rows,
            )
        except sqlite3.Error as problem:
            raise OSError(str(problem)) from problem

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        problem: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        try:
            if kind is None:
                self._file.execute("COMMIT")
        except sqlite3.Error as refusal:
            raise OSError(str(refusal)) from refusal
        finally:
            self._file.close()


def _quoted(name: str) -> str:
    return '"' + name.replace('"', '""') + '"'
