"""What an export says, gathered from the ledger as plain data."""

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from datetime import date
from functools import partial

import chargebench
from chargebench import steps
from chargebench.desk.narrowing import Narrowing
from chargebench.desk.opened import now
from chargebench.desk.records import EVERYTHING, day_end, day_start
from chargebench.ledger import Entry, Filters, Job, Transfer
from chargebench.reports import (
    AuditContent,
    BalanceRecord,
    JobRecord,
    Selection,
    StepRecord,
    Tick,
)
from chargebench.steps import STEPS, Case, answer, safety_list

PlaceKey = tuple[str, str]  # place, refrigerant
REGISTERS_SHOWN = ("site", "equipment", "cylinder", "person", "instrument")


class Content(Narrowing):
    """Gathers the records of a period."""

    def content(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> AuditContent:
        """All that an audit workbook and a checklist of a period say, narrowed by the filters.

        Of the filters equipment, refrigerant and person count.
        """
        start, end = day_start(since), day_end(until)
        verification, selection = self.verify(), self.selection(filters)
        jobs = [
            record
            for job in reversed(self.reading.jobs())
            if self._in_period(job, since, until)
            and (record := self._job_record(job, selection)) is not None
        ]

        def entries() -> Iterator[Entry]:
            found = self.reading.entries(since=start, until=end)
            return (entry for each in found if (entry := selection.of(each)) is not None)

        content = AuditContent(
            program=f"chargebench {chargebench.__version__}",
            made_at=now(),
            today=self.today,
            since=since,
            until=until,
            rule_set=self.rule_set,
            entries=entries,
            entry_count=sum(1 for _ in entries()),
            chain_head=self.reading.head(),
            chain_heads=self.reading.heads(),
            registers={register: self.rows(register) for register in REGISTERS_SHOWN},
            shop=self.shop,
            jobs=tuple(jobs),
            job_numbers={job.id: job.number for job in self.reading.jobs()},
            balances=tuple(self._balance_records(since, until, selection)),
            cylinders=tuple(self.cylinders()),
            leak_rates=tuple(self.leak_rates()),
            due=tuple(self.due()),
            unaccounted=self.unaccounted(since, until, filters),
            retention=tuple(self.retention()),
            flags=tuple(self.all_flags()),
            verification=(
                *verification.checked,
                *(f"Entry {each.entry}: {each.what}" for each in verification.problems),
                *verification.limits,
            ),
            selection=selection,
            names=self.reading.names(),
            stock=partial(self._stock_records, start, end, selection),
            changes=tuple(self._changes(start, end, selection)),
            registered=self._registered_by(),
            judged_by=self._judged_by(jobs),
            last_recorded=self._last_recorded(),
        )
        return self.narrowed(content) if selection else content

    @staticmethod
    def _in_period(job: Job, since: date | None, until: date | None) -> bool:
        closed = job.closed_at.date() if job.closed_at else date.max
        return (until is None or job.opened_at.date() <= until) and (
            since is None or closed >= since
        )

    def _job_record(self, job: Job, selection: Selection) -> JobRecord | None:
        """A job with those of its steps that are shown; None where nothing of it is."""
        recorded = list(self.reading.entries(job=job.id))
        shown = {entry.id for entry in recorded if selection.of(entry) is not None}
        if not shown:
            return None
        case = self._case(job.id)
        view = self.job(job.id)
        opened = next(entry for entry in recorded if entry.kind == "job-opened")
        return JobRecord(
            case=case,
            title=view.title,
            opened_at=job.opened_at,
            steps=tuple(each for each in self._step_records(case, recorded) if each.entry in shown),
            closed_at=job.closed_at,
            reason=opened.payload.get("reason", ""),
            by=case.people.get(opened.by, opened.by),
            flags=view.flags,
            checklist=tuple(self._ticks(case)),
            limits=self._worked_out(case)["nameplate"].figures,
        )

    def _step_records(self, case: Case, entries: Iterable[Entry]) -> Iterator[StepRecord]:
        why = {
            each.payload["reverses"]: each.payload["reason"]
            for each in entries
            if each.kind == "reversal"
        }
        worked = self._worked_out(case)
        for entry in entries:
            if entry.kind not in ("step-signed", "step-not-needed", "follow-up"):
                continue
            step, typed = entry.payload["step"], entry.payload.get("typed", {})
            answers = answer(STEPS[step], typed)
            stands = entry.id not in why
            yield StepRecord(
                step=step,
                number=entry.number,
                by=case.people.get(entry.by, entry.by),
                at=entry.happened_at,
                answers=answers,
                typed=typed,
                worked=worked[step]
                if stands
                else steps.work_out(replace(case, answers={**case.answers, step: answers}), step),
                not_needed=entry.payload.get("reason", ""),
                reversed=why.get(entry.id, ""),
                entry=entry.id,
                bench=entry.bench,
            )

    def _ticks(self, case: Case) -> Iterator[Tick]:
        for line in safety_list.lines(case):
            ticks = case.step(line.step).lines("ticks") if case.is_signed(line.step) else ()
            tick = next((each for each in ticks if each.text("line") == line.key), None)
            if tick is None:
                yield Tick(line)
            else:
                by = tick.text("by")
                yield Tick(line, case.people.get(by, by), tick.values.get("at"))

    def _balance_records(
        self, since: date | None, until: date | None, selection: Selection
    ) -> Iterator[BalanceRecord]:
        opening = self._balances_at(self.reading.entries(until=day_start(since))) if since else {}
        closing = self._balances_at(self.reading.entries(until=day_end(until)))
        outside: dict[PlaceKey, int] = {}
        places = {*opening, *closing}
        if selection:
            shown, outside = self._apart(since, until, selection)
            places = set(shown)
        for place, refrigerant in sorted(places):
            key = (place, refrigerant)
            yield BalanceRecord(
                place,
                refrigerant,
                opening.get(key, 0),
                closing.get(key, 0),
                outside.get(key, 0),
            )

    def _apart(
        self, since: date | None, until: date | None, selection: Selection
    ) -> tuple[dict[PlaceKey, int], dict[PlaceKey, int]]:
        """What a period's mass lines come to by place: those that are shown, and the others."""
        names = self.reading.names()
        shown: dict[PlaceKey, int] = defaultdict(int)
        outside: dict[PlaceKey, int] = defaultdict(int)
        for entry in self.reading.entries(since=day_start(since), until=day_end(until)):
            taken = selection.of(entry)
            for line in entry.transfers:
                _add(shown if taken and line in taken.transfers else outside, line, names)
        return shown, outside

    def _balances_at(self, entries: Iterable[Entry]) -> dict[PlaceKey, int]:
        names = self.reading.names()
        sums: dict[PlaceKey, int] = defaultdict(int)
        for entry in entries:
            for line in entry.transfers:
                _add(sums, line, names)
        return sums


def _add(sums: dict[PlaceKey, int], line: Transfer, names: Mapping[str, str]) -> None:
    """Take a mass out of one place and into the other, each under the id it goes by."""
    source, target = (names.get(end, end) for end in (line.source, line.target))
    sums[source, line.refrigerant] -= line.mass_mg
    sums[target, line.refrigerant] += line.mass_mg
