"""Job files that leave: one job as typed, with the register rows it needs."""

from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import Any

from chargebench import jobfile
from chargebench.desk.content import Content
from chargebench.errors import ChargebenchError, ExportRefused
from chargebench.jobfile import Job, JobFile, StepTyped
from chargebench.ledger import Entry
from chargebench.steps import STEPS, Field
from chargebench.steps.form import Asks
from chargebench.words import say

_STEPS = ("step-signed", "step-not-needed", "follow-up")


class JobFiles(Content):
    """Writes a job down for another bench, or for a person to read."""

    def job_file(self, job: str) -> bytes:
        """A job file of what is signed in a job; text of open steps is not in it."""
        row = self.reading.job(job)
        if row is None:
            raise ChargebenchError("There is no such job in this shop.")
        entries = list(self.reading.entries(job=job))
        opened = next(each for each in entries if each.kind == "job-opened")
        steps = tuple(_steps(entries))
        content = Job(
            equipment=row.equipment,
            opened_at=opened.happened_at,
            by=opened.by,
            reason=opened.payload["reason"],
            steps=steps,
            closed_at=row.closed_at,
        )
        named = {("person", content.by), ("equipment", row.equipment)}
        for each in steps:
            named.add(("person", each.by))
            named |= set(_named(STEPS[each.step].fields, each.typed))
        if site := self.row("equipment", row.equipment).get("site"):
            named.add(("site", site))
        register: dict[str, dict[str, Mapping[str, str]]] = {}
        for name, row_id in sorted(named):
            register.setdefault(name, {})[row_id] = self.row(name, row_id)
        about = say(
            "{number} {title}, from {name}",
            number=row.number,
            title=self._title(row.equipment),
            name=self.shop["name"],
        )
        return jobfile.write(JobFile(about=about, register=register, job=content))

    def write_job_files(self, folder: Path, jobs: Iterable[str]) -> tuple[Path, ...]:
        """Write a job file for each job into a folder, named by its number.

        Raises
        ------
        ExportRefused
            A file could not be written.
        """
        written: list[Path] = []
        try:
            folder.mkdir(parents=True, exist_ok=True)
            for job in jobs:
                path = folder / f"{self.job(job).number}.json"
                path.write_bytes(self.job_file(job))
                written.append(path)
        except OSError as problem:
            raise ExportRefused(
                say("Expected a folder that can be written; {problem}.", problem=problem)
            ) from problem
        return tuple(written)


def _steps(entries: Iterable[Entry]) -> Iterator[StepTyped]:
    """A job's steps as recorded; one done again carries why the one before was taken back."""
    why: dict[str, str] = {}  # of the step that was taken back last
    by_id: dict[str, str] = {}
    kept: list[tuple[Entry, str]] = []
    for entry in entries:
        if entry.kind in _STEPS:
            step = entry.payload["step"]
            by_id[entry.id] = step
            kept.append((entry, why.pop(step, "")))
        elif entry.kind == "reversal" and entry.payload["reverses"] in by_id:
            why[by_id[entry.payload["reverses"]]] = entry.payload["reason"]
    for entry, again in kept:
        step = entry.payload["step"]
        if step in why and not any(
            other.payload["step"] == step and other.number > entry.number for other, _ in kept
        ):
            continue  # taken back and not done again: it stands open
        yield StepTyped(
            step=step,
            by=entry.by,
            happened_at=entry.happened_at,
            typed=entry.payload.get("typed", {}),
            not_needed=entry.payload.get("reason", ""),
            again=again,
        )


def _named(fields: Iterable[Field], typed: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """Register rows that typed text names."""
    for each in fields:
        given = typed.get(each.key)
        if not given:
            continue
        if each.asks is Asks.ROW:
            yield each.register, given
        elif each.asks is Asks.TICKS:
            yield from (("person", line["by"]) for line in given)
        elif each.asks is Asks.LINES:
            for line in given:
                yield from _named(each.fields, line)
