"""What an export says, gathered from the ledger as plain data."""

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date

import chargebench
from chargebench import steps
from chargebench.desk.opened import now
from chargebench.desk.records import Records, day_end, day_start
from chargebench.ledger import Entry, Job
from chargebench.reports import (
    AuditContent,
    BalanceRecord,
    JobRecord,
    StepRecord,
    Tick,
)
from chargebench.steps import STEPS, Case, answer, safety_list

REGISTERS_SHOWN = ("site", "equipment", "cylinder", "person", "instrument")


class Content(Records):
    """Gathers the records of a period."""

    def content(self, since: date | None = None, until: date | None = None) -> AuditContent:
        """All that an audit workbook and a checklist of a period say."""
        start, end = day_start(since), day_end(until)
        verification = self.verify()
        jobs = [job for job in self.reading.jobs() if self._in_period(job, since, until)]

        def entries() -> Iterator[Entry]:
            return self.reading.entries(since=start, until=end)

        return AuditContent(
            program=f"chargebench {chargebench.__version__}",
            made_at=now(),
            since=since,
            until=until,
            rule_set=self.rule_set,
            entries=entries,
            entry_count=sum(1 for _ in entries()),
            chain_head=self.reading.head(),
            registers={register: self.rows(register) for register in REGISTERS_SHOWN},
            shop=self.shop,
            jobs=tuple(self._job_record(job) for job in reversed(jobs)),
            job_numbers={job.id: job.number for job in self.reading.jobs()},
            balances=tuple(self._balance_records(since, until)),
            cylinders=tuple(self.cylinders()),
            leak_rates=tuple(self.leak_rates()),
            due=tuple(self.due()),
            unaccounted=self.unaccounted(since, until),
            retention=tuple(self.retention()),
            flags=tuple(self.all_flags()),
            verification=(
                *verification.checked,
                *(f"Entry {each.entry}: {each.what}" for each in verification.problems),
                *verification.limits,
            ),
        )

    @staticmethod
    def _in_period(job: Job, since: date | None, until: date | None) -> bool:
        closed = job.closed_at.date() if job.closed_at else date.max
        return (until is None or job.opened_at.date() <= until) and (
            since is None or closed >= since
        )

    def _job_record(self, job: Job) -> JobRecord:
        case = self._case(job.id)
        view = self.job(job.id)
        opened = next(iter(self.reading.entries(job=job.id, kind="job-opened")))
        return JobRecord(
            case=case,
            title=view.title,
            opened_at=job.opened_at,
            steps=tuple(self._step_records(case)),
            closed_at=job.closed_at,
            reason=opened.payload.get("reason", ""),
            by=case.people.get(opened.by, opened.by),
            flags=view.flags,
            checklist=tuple(self._ticks(case)),
            limits=self._worked_out(case)["nameplate"].figures,
        )

    def _step_records(self, case: Case) -> Iterator[StepRecord]:
        entries = list(self.reading.entries(job=case.job))
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

    def _balance_records(self, since: date | None, until: date | None) -> Iterator[BalanceRecord]:
        opening = self._balances_at(self.reading.entries(until=day_start(since))) if since else {}
        closing = self._balances_at(self.reading.entries(until=day_end(until)))
        for place, refrigerant in sorted({*opening, *closing}):
            key = (place, refrigerant)
            yield BalanceRecord(place, refrigerant, opening.get(key, 0), closing.get(key, 0))

    def _balances_at(self, entries: Iterable[Entry]) -> dict[tuple[str, str], int]:
        names = self.reading.names()
        sums: dict[tuple[str, str], int] = defaultdict(int)
        for entry in entries:
            for line in entry.transfers:
                source, target = (names.get(end, end) for end in (line.source, line.target))
                sums[source, line.refrigerant] -= line.mass_mg
                sums[target, line.refrigerant] += line.mass_mg
        return sums
