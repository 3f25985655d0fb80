"""The list of jobs: a line each, kept until something is recorded in it."""

from chargebench.desk.views import JobLine
from chargebench.desk.visits import Visits
from chargebench.flags import Flag
from chargebench.ledger import Job
from chargebench.units import shown


class JobList(Visits):
    """Lists jobs: an open one is worked out, a closed one stands as it was closed."""

    def jobs(
        self,
        find: str = "",
        state: str | None = None,
        *,
        equipment: str | None = None,
        limit: int = 200,
        before: int | None = None,
    ) -> list[JobLine]:
        """Jobs, newest first; `find` is looked for in number, equipment and site."""
        rows = self.reading.jobs(
            state=state, find=find, equipment=equipment, before=before, limit=limit
        )
        return [self._job_line(row) for row in rows]

    def equipment_lately(self, visits: int = 8) -> tuple[str, ...]:
        """Equipment of the newest visits, each once, the newest first."""
        return tuple(dict.fromkeys(row.equipment for row in self.reading.jobs(limit=visits)))

    def _job_line(self, row: Job) -> JobLine:
        if row.id not in self._lines:
            self._lines[row.id] = self._closed_line(row) if row.closed_at else self._open_line(row)
        return self._lines[row.id]

    def _open_line(self, row: Job) -> JobLine:
        view = self.job(row.id)
        charge = view.case.nameplate("charge")
        return JobLine(
            id=row.id,
            number=row.number,
            title=view.title,
            refrigerant=view.case.refrigerant.name if view.case.refrigerant else "",
            charge=shown(charge.quantity, self.units) if charge else "",
            now=next((step.title for step in view.steps if step.state == "open"), ""),
            worst=view.flags[0] if view.flags else None,
            state=row.state,
            opened_at=row.opened_at,
            key=row.opened_by,
        )

    def _closed_line(self, row: Job) -> JobLine:
        """A closed job's line from its register rows and the flags it was closed with."""
        equipment = self.answers("equipment", row.equipment)
        charge = equipment.quantity("charge")
        raised = self.flags_at_closing(row.id)
        return JobLine(
            id=row.id,
            number=row.number,
            title=self._title(row.equipment),
            refrigerant=equipment.text("refrigerant"),
            charge="" if charge is None else shown(charge, self.units),
            now="closed",
            worst=raised[0] if raised else None,
            state=row.state,
            opened_at=row.opened_at,
            key=row.opened_by,
        )

    def flags_at_closing(self, job: str) -> list[Flag]:
        """The flags a job was last closed with, worst first."""
        closed = list(self.reading.entries(job=job, kind="job-closed"))
        return [Flag(**each) for each in closed[-1].payload["flags"]] if closed else []
