"""The shop's registers: look up, label, check and save rows."""

import re
from collections.abc import Callable, Iterator, Mapping
from datetime import datetime
from functools import partial

from chargebench.desk.opened import as_row, now, refuse_incomplete, refuse_nobody_left
from chargebench.desk.rights import Act
from chargebench.desk.signing import Signing
from chargebench.errors import ChargebenchError
from chargebench.ledger import Reader
from chargebench.steps import REGISTERS, Answers, Typed, answer
from chargebench.words import say

PREFIXES = {"site": "L", "equipment": "E", "cylinder": "C", "person": "P", "instrument": "I"}
ID = re.compile(r"[A-Za-z0-9][A-Za-z0-9._-]{0,39}")


class Understood(Mapping[str, Answers]):
    """Rows of a register, each understood when it is first asked for: a shop has thousands."""

    def __init__(self, rows: Mapping[str, Typed], read: Callable[[str, Typed], Answers]) -> None:
        self._rows = rows
        self._read = read

    def __getitem__(self, row_id: str) -> Answers:
        return self._read(row_id, self._rows[row_id])

    def __iter__(self) -> Iterator[str]:
        return iter(self._rows)

    def __len__(self) -> int:
        return len(self._rows)


class Registers(Signing):
    """What the shop knows by name: sites, equipment, cylinders, people, instruments."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self._understood: dict[tuple[str, str], Answers] = {}

    def rows(self, register: str) -> dict[str, dict[str, str]]:
        """All rows of a register by id."""
        return self.reading.rows(register)

    def choices(self, register: str) -> dict[str, dict[str, str]]:
        """Rows to choose from: of a thing met twice only the one it goes by."""
        names = self.reading.names()
        return {
            row_id: row
            for row_id, row in self.rows(register).items()
            if names.get(f"{register}:{row_id}", f"{register}:{row_id}") == f"{register}:{row_id}"
        }

    def row(self, register: str, row_id: str) -> dict[str, str]:
        """One row; empty where there is none."""
        return self.reading.row(register, row_id) or {}

    def answers(self, register: str, row_id: str) -> Answers:
        """One row understood."""
        if (register, row_id) in self._understood:
            return self._understood[register, row_id]
        return self._understand(register, row_id, self.row(register, row_id))

    def _understand(self, register: str, row_id: str, row: Typed) -> Answers:
        key = (register, row_id)
        if key not in self._understood:
            self._understood[key] = answer(REGISTERS[register], row)
        return self._understood[key]

    def all_answers(self, register: str) -> Understood:
        """Every row understood, as far as it is asked for."""
        return Understood(self.rows(register), partial(self._understand, register))

    def check_row(self, register: str, typed: Typed) -> Answers:
        """What is typed in a register's form, with refusals and what is missing."""
        return answer(REGISTERS[register], typed)

    def next_id(self, register: str) -> str:
        """The next free id of a register, such as C-015; at a further bench, such as C-D-001."""
        of_bench = f"{self.reading.bench}-" if self.reading.begun_from else ""
        prefix = f"{PREFIXES[register]}-{of_bench}"
        numbers = [
            int(row_id.removeprefix(prefix))
            for row_id in self.rows(register)
            if row_id.startswith(prefix) and row_id.removeprefix(prefix).isdigit()
        ]
        return f"{prefix}{max(numbers, default=0) + 1:03d}"

    def save_row(
        self,
        register: str,
        row_id: str | None,
        typed: Typed,
        *,
        happened_at: datetime | None = None,
    ) -> str:
        """Save a register's form as a row; the change is an entry with before and after.

        Raises
        ------
        StepRefused
            Wrong or missing fields.
        ChargebenchError
            An id that can not be one, or somebody who may not change the register.
        """
        refuse_incomplete(register, typed, self.folder)
        row_id = row_id or self.next_id(register)
        if not ID.fullmatch(row_id):
            raise ChargebenchError(
                say(
                    "Expected an id of letters, digits, dots and dashes, such as {next_id}.",
                    next_id=self.next_id(register) if register != "shop" else "shop",
                )
            )
        row = as_row(typed)
        if register == "person":
            refuse_nobody_left({**self.rows("person"), row_id: row})
        by = self._signs(Act.PEOPLE if register == "person" else Act.REGISTER)
        self.ledger.put_row(register, row_id, row, by=by, happened_at=happened_at or now())
        if register == "shop":
            self._ruled = None  # its file may say something else by now
        self._changed()
        return row_id

    def label(self, register: str, row_id: str) -> str:
        """How a row is called on screens and sheets."""
        row = self.row(register, row_id)
        if register == "cylinder":
            return f"{row_id} {row.get('refrigerant', '')}".strip()
        return row.get("name", row_id)

    def _changed(self, job: str | None = None) -> None:
        super()._changed(job)
        if job is None:
            self._understood.clear()
