"""Core statements turned into SQL text once; a post runs nine, and compiling was half its time."""

from collections.abc import Iterable, Mapping
from typing import Any

from sqlalchemy import Connection, Executable


class Prepared:
    """A statement whose text and order of parameters are worked out at its first use."""

    def __init__(self, statement: Executable, keys: Iterable[str] | None = None) -> None:
        self._statement: Any = statement
        self._keys = None if keys is None else list(keys)
        self._texts: dict[str, tuple[str, tuple[str, ...], dict[str, Any]]] = {}

    def run(self, connection: Connection, values: Mapping[str, Any]) -> Any:
        """Result of the statement with named values."""
        text, order, fixed = self._texts.get(connection.dialect.name) or self._compile(connection)
        given = {**fixed, **values}
        return connection.exec_driver_sql(text, tuple([given[name] for name in order]))

    def _compile(self, connection: Connection) -> tuple[str, tuple[str, ...], dict[str, Any]]:
        compiled = self._statement.compile(dialect=connection.dialect, column_keys=self._keys)
        made = str(compiled), tuple(compiled.positiontup), dict(compiled.params)
        self._texts[connection.dialect.name] = made
        return made
