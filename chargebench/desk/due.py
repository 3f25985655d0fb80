"""What falls due in a shop, and until when its records are kept."""

from collections.abc import Iterator
from datetime import date

from chargebench import flags
from chargebench.calc.dates import after
from chargebench.desk.jobs import AFTER_CLOSING
from chargebench.desk.leakrates import LeakRates
from chargebench.flags import Flag
from chargebench.reports import DueLine, LeakRateLine, RetentionLine
from chargebench.reports.dated import DONE, OPEN, OVERDUE
from chargebench.rules import Figure
from chargebench.steps import STEPS, answer
from chargebench.words import say

# Dates that stand in a register: register, field, and what is owed.
_REGISTERED = (
    ("instrument", "calibration_due", "calibration"),
    ("cylinder", "requalification_due", "requalification"),
    ("person", "certificate_until", "renewal of the certificate"),
)
_RETIREMENT = "retirement"  # in the rule set's words for records kept from then on


class DueDates(LeakRates):
    """One calendar of everything that is owed."""

    def due(self) -> list[DueLine]:
        """Everything owed and everything done about it, by day."""
        found = [*self._leak_duties(), *self._registered(), *self._follow_ups()]
        found += self._retention_ends()
        return sorted(found, key=lambda each: (each.on, each.about))

    def _leak_duties(self) -> Iterator[DueLine]:
        for line in self._all_rated():
            for computed in line.computed:
                yield from computed.duties
            yield from line.duties

    def _registered(self) -> Iterator[DueLine]:
        """Dates that stand in the register; each names the entry that put the row there."""
        numbers = {
            (entry.payload["register"], entry.payload["id"]): entry.number
            for entry in self.reading.entries(kind="register")
        }
        for register, field, what in _REGISTERED:
            rule = self._asked_by(register)
            for key in self.rows(register):
                row = self.answers(register, key)
                on = row.date(field)
                if on is None:
                    continue
                yield DueLine(
                    on=on,
                    what=what,
                    about=f"{register}:{key}",
                    name=row.text("name") or row.text("refrigerant"),
                    state=_state(on, self.today),
                    source=f"{rule.source}, {rule.place}" if rule else "register",
                    mark=rule.mark if rule else "",
                    entries=(numbers[register, key],) if (register, key) in numbers else (),
                )

    def _asked_by(self, register: str) -> Figure | None:
        """The figure that asks for a registered date; most stand only on what was certified."""
        rows = self.rule_set.cylinder.requalifications if register == "cylinder" else ()
        return next((row.every for row in rows if not row.specs), None)

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
                what="follow-up",
                about=f"job:{row.number}",
                name=f"{self._title(row.equipment)}: {answers.text('what')}",
                state=_state(on, self.today, done_on),
                source="register",
                entries=(entry.number,),
                done_on=done_on,
                ended_by=(entry.number,) if done_on else (),
                of=row.opened_at.date(),
            )

    def retention(self) -> list[RetentionLine]:
        """Every job and every equipment with the day until which its records are kept."""
        records, today = self.rule_set.records, self.today
        # Full charge and how it is known: kept while the equipment is used, and after that.
        rows = (row.keep for row in records.rows if _RETIREMENT in row.what)
        charge_keep = next(rows, records.keep)
        titles = {key: self._title(key) for key in self.rows("equipment")}
        found = [
            _kept(
                ("service records", f"job:{job.number}", titles.get(job.equipment, "")),
                job.closed_at.date() if job.closed_at else None,
                records.keep,
                today,
            )
            for job in reversed(self.reading.jobs())
        ]
        found += [
            _kept(
                ("full charge and equipment record", f"equipment:{key}", title),
                self.answers("equipment", key).date("retired"),
                charge_keep,
                today,
            )
            for key, title in titles.items()
        ]
        return found

    def _retention_ends(self) -> Iterator[DueLine]:
        """The day each month's closed jobs may be archived: a row a month, not a row a job."""
        months: dict[str, tuple[date, date, RetentionLine]] = {}
        for line in self.retention():
            ended, until = line.ended_on, line.keep_until
            if ended is None or until is None:
                continue
            month = f"{ended:%Y-%m}" if line.about.startswith("job:") else line.about
            if month not in months or months[month][0] < until:
                months[month] = (until, ended, line)
        for month, (until, ended, line) in months.items():
            of_month = line.about.startswith("job:")
            yield DueLine(
                on=until,
                what="records may be archived after this day",
                about=f"records:{month}" if of_month else line.about,
                name=say("jobs closed in {month}", month=month) if of_month else line.name,
                state=DONE if line.may_be_archived else OPEN,
                figure=line.figure,
                source=line.source,
                mark=line.mark,
                start=ended,
                how="may be archived" if line.may_be_archived else "",
                of=ended.replace(day=1) if of_month else ended,
            )


def _kept(
    called: tuple[str, str, str], ended: date | None, keep: Figure, today: date
) -> RetentionLine:
    what, about, name = called
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
        may_be_archived=until is not None and until < today,
    )


def leak_flags(line: LeakRateLine, today: date) -> Iterator[Flag]:
    """A rate over its threshold while anything is owed for it, and what else is overdue."""
    first = min(line.waiting, key=lambda each: each.on, default=None)
    if first is not None and line.threshold_pct is not None:
        yield flags.of_equipment(
            line.equipment_id,
            name=line.name,
            rate_pct=line.rate_pct or 0.0,
            threshold_pct=line.threshold_pct,
            source=line.threshold_source,
            mark=line.threshold_mark,
            owed=first.what,
            owed_by=first.on,
            today=today,
        )
    for each in line.duties:
        if each.state == OVERDUE:
            yield flags.of_overdue(
                line.equipment_id,
                name=line.name,
                owed=each.what,
                owed_by=each.on,
                source=each.source,
                mark=each.mark,
            )
    if line.lacks_detection is not None:
        figure = line.lacks_detection
        yield flags.of_detection(
            line.equipment_id,
            name=line.name,
            reaching=figure.text,
            source=f"{figure.source}, {figure.place}",
            mark=figure.mark,
        )


def _state(on: date, today: date, done_on: date | None = None) -> str:
    if done_on is not None:
        return DONE
    return OVERDUE if today > on else OPEN
