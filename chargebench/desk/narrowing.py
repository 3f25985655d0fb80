"""What of the records is shown when an export is narrowed to equipment, refrigerant or person."""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import datetime

from chargebench.desk.records import Records
from chargebench.errors import ChargebenchError
from chargebench.ledger import Filters
from chargebench.reports import AuditContent, ChangeRecord, JobRecord, Selection, StockRecord
from chargebench.steps import REGISTERS, STOCK, answer, stock
from chargebench.words import say

_ACTS = {kind: act for act, kind in stock.KINDS.items()}


class Narrowing(Records):
    """Narrows what leaves, and gathers stock work and changes."""

    def selection(self, filters: Filters) -> Selection:
        """What filters choose; refused where there is no such thing on record.

        Raises
        ------
        ChargebenchError
            An equipment, a refrigerant or a person that is not on record.
        """
        equipment, people = self.rows("equipment"), self.rows("person")
        named = {row.get("name", ""): key for key, row in people.items()}
        person = named.get(filters.by or "", filters.by or "")  # by id or by name
        kinds = {key: row.get("refrigerant", "") for key, row in equipment.items()}
        cylinders = self.rows("cylinder").values()
        held = {*kinds.values(), *(row.get("refrigerant", "") for row in cylinders)}
        for what, value, known in (
            ("an equipment", filters.equipment, equipment.keys()),
            ("a refrigerant", filters.refrigerant, held),
            ("a person", person, people.keys()),
        ):
            if value and value not in known:
                listed = ", ".join(sorted(known - {""})) or "none yet"
                raise ChargebenchError(
                    say(
                        "Expected {what} on record ({listed}); got “{value}”.",
                        what=what,
                        listed=listed,
                        value=value,
                    )
                )
        if not (filters.equipment or filters.refrigerant or person):
            return Selection()
        names = self.reading.names()
        goes_by = names.get(f"person:{person}", f"person:{person}")
        return Selection(
            equipment=filters.equipment or "",
            refrigerant=filters.refrigerant or "",
            person=people[person].get("name", person) if person else "",
            people=frozenset(
                key for key in people if names.get(f"person:{key}", f"person:{key}") == goes_by
            ),
            equipment_of={job.id: job.equipment for job in self.reading.jobs()},
            refrigerant_of=kinds,
        )

    def narrowed(self, content: AuditContent) -> AuditContent:
        """Content without the register rows, due dates and flags of what is not shown."""
        chosen = content.selection
        shown = {job.case.equipment_id for job in content.jobs}
        moved = {each.place for each in content.balances}
        rows = content.registers
        equipment = {
            key: row
            for key, row in rows["equipment"].items()
            if (key == chosen.equipment if chosen.equipment else True)
            and chosen.refrigerant in ("", row.get("refrigerant", ""))
            and (key in shown or not chosen.person)
        }
        cylinders = {
            key: row
            for key, row in rows["cylinder"].items()
            if chosen.refrigerant in ("", row.get("refrigerant", ""))
            and (
                f"cylinder:{key}" in moved
                or not (chosen.equipment or chosen.person)
            )
        }  # fmt: skip
        people = [key for key in rows["person"] if not chosen.person or key in chosen.people]
        kept = {
            *(f"equipment:{key}" for key in equipment),
            *(f"cylinder:{key}" for key in cylinders),
            *(f"person:{key}" for key in people),
            *(f"job:{job.case.number}" for job in content.jobs),
        }

        def stays(about: str) -> bool:
            names = {each.strip() for each in about.split(",")}
            which = {each for each in names if each.partition(":")[0] in _NARROWED}
            return not which or which <= kept

        return replace(
            content,
            registers={**rows, "equipment": equipment, "cylinder": cylinders},
            cylinders=tuple(each for each in content.cylinders if each.id in cylinders),
            leak_rates=tuple(each for each in content.leak_rates if each.equipment_id in equipment),
            due=tuple(each for each in content.due if stays(each.about)),
            retention=tuple(each for each in content.retention if stays(each.about)),
            flags=tuple(each for each in content.flags if stays(each.about)),
        )

    def _stock_records(
        self, since: datetime | None, until: datetime | None, selection: Selection
    ) -> Iterator[StockRecord]:
        """Stock work of a period, oldest first."""
        people, why = self.rows("person"), self._reasons()
        kinds = tuple(_ACTS)
        for entry in self.reading.entries(since=since, until=until, kind=kinds):
            if (shown := selection.of(entry)) is None:
                continue
            yield StockRecord(
                kind=shown.kind,
                entry=shown.id,
                bench=shown.bench,
                number=shown.number,
                at=shown.happened_at,
                by=people.get(shown.by, {}).get("name", shown.by),
                answers=answer(STOCK[_ACTS[shown.kind]], shown.payload["typed"]),
                moved_mg=sum(line.mass_mg for line in shown.transfers),
                said=" ".join(shown.payload.get("said", ())),
                reversed=why.get(shown.id, ""),
            )

    def _reasons(self) -> dict[str, str]:
        """Every reversed entry and why."""
        return {
            entry.payload["reverses"]: entry.payload["reason"]
            for entry in self.reading.entries(kind="reversal")
        }

    def _changes(
        self, since: datetime | None, until: datetime | None, selection: Selection
    ) -> Iterator[ChangeRecord]:
        """What was put into registers, changed there, or taken back."""
        people = self.rows("person")
        found = self.reading.entries(since=since, until=until, kind=("register", "reversal"))
        for entry in found:
            if selection.of(entry) is None:
                continue
            by = people.get(entry.by, {}).get("name", entry.by)
            head = (entry.bench, entry.number, entry.happened_at, by)
            payload = entry.payload
            if entry.kind == "reversal":
                undone = self.reading.entry(payload["reverses"])
                said = f"{undone.kind} {undone.payload.get('step', '')}".strip()
                about = say(
                    "entry {bench}-{undone_number}", bench=undone.bench, undone_number=undone.number
                )
                yield ChangeRecord(*head, "taken back", about, said, reason=payload["reason"])
                continue
            about = f"{payload['register']}:{payload['id']}"
            before, after = payload["before"], payload["after"] or {}
            if before is None:
                yield ChangeRecord(*head, "registered", about)
                continue
            for key in sorted({*before, *after}):
                was, now = before.get(key, ""), after.get(key, "")
                if was != now:
                    label = _label(payload["register"], key)
                    why = after.get("charge_revised_why", "") if key == "charge" else ""
                    yield ChangeRecord(*head, "changed", about, label, was, now, why)

    def _registered_by(self) -> dict[str, int]:
        """The last entry about each register row."""
        return {
            f"{entry.payload['register']}:{entry.payload['id']}": entry.number
            for entry in self.reading.entries(kind="register")
        }

    def _judged_by(self, jobs: Iterable[JobRecord]) -> tuple[str, ...]:
        found = {signed.rule_set for job in jobs for signed in job.case.signed.values()}
        return tuple(sorted(found - {""}))

    def _last_recorded(self) -> datetime | None:
        last = next(iter(self.reading.entries(newest_first=True, limit=1)), None)
        return None if last is None else last.recorded_at


_NARROWED = ("equipment", "cylinder", "person", "job")


def _label(register: str, key: str) -> str:
    """What a register calls a field."""
    form = REGISTERS.get(register)
    return next((each.label for each in form.fields if each.key == key), key) if form else key
