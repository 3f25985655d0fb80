"""Readings of other visits: of this equipment before, and of its sister units."""

from collections.abc import Iterator
from dataclasses import replace

from chargebench.desk.jobs import Jobs
from chargebench.desk.views import Look
from chargebench.ledger import Job, Reader
from chargebench.steps import Typed, beside
from chargebench.steps.beside import Taken

EARLIER_MOST, SISTERS_MOST = 2, 2
_LOOKED_AT = 30  # jobs back; further ones say little about today
_STEPS = {"as_left": "as left", "as_found": "as found"}  # as it was left says how it should run


class Visits(Jobs):
    """Finds what stands beside today's readings, once until something is recorded."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self._beside: dict[tuple[str, str], tuple[Taken, ...]] = {}

    def look(self, job: str, step: str, typed: Typed) -> Look:
        """As any step is looked at; readings with what stands beside them."""
        look = super().look(job, step, typed)
        if step not in _STEPS:
            return look
        case = self._with(self._case(job), step, look.answers)
        table = beside.table(case, step, self.beside(job, typed), look.worked)
        if table is None:
            return look
        tables = (*look.worked.tables, table)
        return replace(look, worked=replace(look.worked, tables=tables))

    def beside(self, job: str, typed: Typed) -> tuple[Taken, ...]:
        """Readings of earlier visits to this equipment, then of its sister units.

        `typed` is what stands in the step: it may name the sister.
        """
        given = typed.get("sister", "")
        chosen = given.strip() if isinstance(given, str) else ""
        if chosen and not self.row("equipment", chosen):
            chosen = ""
        if (job, chosen) not in self._beside:
            self._beside[job, chosen] = self._stands_beside(job, chosen)
        return self._beside[job, chosen]

    def _changed(self, job: str | None = None) -> None:
        super()._changed(job)
        self._beside.clear()

    def _stands_beside(self, job: str, chosen: str) -> tuple[Taken, ...]:
        case = self._case(job)
        opened = self.reading.job(job)
        assert opened is not None
        before = self.reading.jobs(
            equipment=case.equipment_id, before=opened.opened_by, limit=_LOOKED_AT
        )
        found = [*self._taken(before, "", EARLIER_MOST)]
        for sister in [chosen] if chosen else self._sisters(case.equipment_id):
            name = self.label("equipment", sister)
            jobs = self.reading.jobs(equipment=sister, limit=_LOOKED_AT)
            found += self._taken(jobs, f"{sister} {name}, ", 1)
        return tuple(found)

    def _taken(self, jobs: list[Job], called: str, most: int) -> Iterator[Taken]:
        """The last signed readings of each job, newest job first."""
        for job in jobs:
            case = self._case(job.id)
            for step, words in _STEPS.items():
                if not case.is_signed(step):
                    continue
                on = case.signed[step].happened_at.date()
                taken = beside.taken(case, step, f"{called}{words} {on}")
                if taken is not None:
                    yield taken
                    most -= 1
                    break
            if not most:
                return

    def _sisters(self, equipment: str) -> list[str]:
        rows = self.rows("equipment")
        mine = _kind(rows.get(equipment, {}))
        if not all(mine):
            return []
        alike = [key for key, row in rows.items() if key != equipment and _kind(row) == mine]
        return alike[:SISTERS_MOST]


def _kind(row: dict[str, str]) -> tuple[str, ...]:
    """Make, model and refrigerant: units that should run alike."""
    return tuple(row.get(key, "").casefold() for key in ("make", "model", "refrigerant"))
