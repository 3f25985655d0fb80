"""What falls due in a shop, and until when its records are kept."""

from collections.abc import Iterator
from datetime import date

from chargebench.calc.dates import after
from chargebench.desk.jobs import AFTER_CLOSING
from chargebench.desk.leakrates import LeakRates
from chargebench.ledger import Job
from chargebench.reports import DueLine, RetentionLine
from chargebench.reports.dated import DONE, OPEN, OVERDUE
from chargebench.rules import Figure
from chargebench.steps import STEPS, answer

# Dates that stand in a register: register, field, what is owed, and whose rule asks for it.
_REGISTERED = (
    ("instrument", "calibration_due", "calibration", "COMMON, scales and gauges in good order"),
    ("cylinder", "requalification_due", "requalification", "49CFR173, 180.205"),
    ("person", "certificate_until", "certificate renewed", "register"),
)
_RETIREMENT = "retirement"  # in the rule set's words for records kept from then on


class DueDates(LeakRates):
    """One calendar of everything that is owed."""

    def due(self) -> list[DueLine]:
        """Everything owed and everything done about it, by day."""
        found = [*self._leak_duties(), *self._registered(), *self._follow_ups()]
        found += self._retention_ends()
        return sorted(found, key=lambda each: (each.on, each.about, each.what))

    def _leak_duties(self) -> Iterator[DueLine]:
        for one in self._appliances():
            for line in self._rated(one):
                for computed in line.computed:
                    yield from computed.duties
                yield from line.duties

    def _registered(self) -> Iterator[DueLine]:
        for register, field, what, source in _REGISTERED:
            for key in self.rows(register):
                row = self.answers(register, key)
                on = row.date(field)
                if on is None:
                    continue
                name = row.text("name") or self.label(register, key)
                yield DueLine(
                    on=on,
                    what=what,
                    about=f"{register}:{key}",
                    name=name,
                    state=_state(on, self.today),
                    source=source,
                )

    def _follow_ups(self) -> Iterator[DueLine]:
        """Visits that were promised: the last follow-up of each job that stands."""
        undone = self.reading.reversals()
        standing = {
            entry.job: entry
            for entry in self.reading.entries(kind="follow-up")
            if entry.id not in undone
        }
        for job, entry in standing.items():
            row = self.reading.job(job or "")
            answers = answer(STEPS[AFTER_CLOSING], entry.payload["typed"])
            on, done_on = answers.date("due"), answers.date("done_on")
            if row is None or on is None:
                continue
            yield DueLine(
                on=on,
                what=f"follow-up: {answers.text('what')}",
                about=f"job:{row.number}",
                name=self._title(row.equipment),
                state=_state(on, self.today, done_on),
                source="register",
                entries=(entry.number,),
                done_on=done_on,
                ended_by=(entry.number,) if done_on else (),
                of=entry.happened_at.date(),
            )

    def retention(self) -> list[RetentionLine]:
        """Every job and every equipment with the day until which its records are kept."""
        found = [self._job_kept(job) for job in reversed(self.reading.jobs())]
        found += [self._charge_kept(key) for key in self.rows("equipment")]
        return found

    def _job_kept(self, job: Job) -> RetentionLine:
        keep = self.rule_set.records.keep
        closed = job.closed_at.date() if job.closed_at else None
        return self._kept("service records", f"job:{job.number}",
                          self._title(job.equipment), closed, keep)  # fmt: skip

    def _charge_kept(self, equipment: str) -> RetentionLine:
        """Full charge and how it is known: kept while the equipment is used, and after that."""
        rows = self.rule_set.records.rows
        keep = next((row.keep for row in rows if _RETIREMENT in row.what), None)
        retired = self.answers("equipment", equipment).date("retired")
        return self._kept("full charge and equipment record", f"equipment:{equipment}",
                          self._title(equipment), retired,
                          keep or self.rule_set.records.keep)  # fmt: skip

    def _kept(
        self, what: str, about: str, name: str, ended: date | None, keep: Figure
    ) -> RetentionLine:
        until = None if ended is None else after(ended, keep)
        return RetentionLine(
            what=what,
            about=about,
            name=name,
            ended_on=ended,
            figure=keep.text,
            source=f"{keep.source}, {keep.place}",
            mark=keep.mark,
            keep_until=until,
            may_be_archived=until is not None and until < self.today,
        )

    def _retention_ends(self) -> Iterator[DueLine]:
        """The day each month's closed jobs may be archived: a row a month, not a row a job."""
        months: dict[str, RetentionLine] = {}
        for line in self.retention():
            if line.keep_until is None or line.ended_on is None:
                continue
            month = f"{line.ended_on:%Y-%m}" if line.about.startswith("job:") else line.about
            last = months.get(month)
            if last is None or (last.keep_until or date.min) < line.keep_until:
                months[month] = line
        for month, line in months.items():
            assert line.keep_until is not None
            of_month = line.about.startswith("job:")
            yield DueLine(
                on=line.keep_until,
                what="records may be archived after this day",
                about=f"records:{month}" if of_month else line.about,
                name=f"jobs closed in {month}" if of_month else line.name,
                state=DONE if line.may_be_archived else OPEN,
                figure=line.figure,
                source=line.source,
                mark=line.mark,
                start=line.ended_on,
                how="may be archived" if line.may_be_archived else "",
                of=line.ended_on.replace(day=1) if of_month else line.ended_on,
            )


def _state(on: date, today: date, done_on: date | None = None) -> str:
    if done_on is not None:
        return DONE
    return OVERDUE if today > on else OPEN
