"""Taking in job files: recorded as entries of this bench, all of a file or nothing of it."""

from pathlib import Path

from chargebench import jobfile
from chargebench.desk.jobfiles import JobFiles
from chargebench.errors import (
    ChargebenchError,
    JobFileRefused,
    NotAllowed,
    PostingRefused,
    SignatureLocked,
)
from chargebench.jobfile import Job, JobFile, StepTyped
from chargebench.ledger import Entry
from chargebench.words import say


class TakeIn(JobFiles):
    """Takes in what another bench, or a person with an editor, wrote down."""

    def take_in(self, path: Path) -> list[Entry]:
        """Take in one job file; the entries it became, all or none.

        Raises
        ------
        JobFileRefused
            Not a job file, taken in before, or with something that can not be recorded; nothing
            was.
        NotAllowed, SignatureLocked
            Who takes it in may not, or did not unlock their signature.
        """
        content = jobfile.read(path)
        if self._taken_in(content.sha256):
            raise JobFileRefused(
                say("{path} was taken in before; nothing was recorded again.", path=path.name)
            )
        signer = self.person
        before = self.reading.head()[0]
        try:
            with self._vouching(), self.ledger.together():
                self._record(content, path.name)
        except (JobFileRefused, NotAllowed, SignatureLocked):
            raise
        except ChargebenchError as refusal:
            raise JobFileRefused(f"{path.name}: {refusal}") from refusal
        finally:
            self.person = signer
            self._changed()
        return [
            entry
            for entry in self.reading.entries()
            if entry.bench == self.reading.bench and entry.number > before
        ]

    def _taken_in(self, sha256: str) -> bool:
        return any(
            entry.payload["sha256"] == sha256 for entry in self.reading.entries(kind="taken-in")
        )

    def _record(self, content: JobFile, name: str) -> None:
        self.person = self.person or self._first_person(content)
        origin = {"file": name, "sha256": content.sha256, "about": content.about}
        self._post("taken-in", origin)
        self._changed()
        for register, rows in content.register.items():
            for row_id, row in rows.items():
                self._take_row(
                    register, row_id, {k: v for k, v in row.items() if isinstance(v, str)}
                )
        for act in content.stock:
            self.person = act.by
            self.act(act.act, act.typed, act.happened_at)
        if content.job is not None:
            self._take_job(content.job)

    @staticmethod
    def _first_person(content: JobFile) -> str:
        if content.job is not None:
            return content.job.by
        return next(iter(content.register.get("person", {})), "")

    def _take_row(self, register: str, row_id: str, row: dict[str, str]) -> None:
        known = self.row(register, row_id)
        if not known:
            self.save_row(register, row_id, row)
        elif any(known.get(key) != text for key, text in row.items()):
            raise JobFileRefused(
                say(
                    "register.{register}.{row_id}: this shop has other words for {row_id}; "
                    "give it another id, or make both the same.",
                    register=register,
                    row_id=row_id,
                )
            )

    def _take_job(self, job: Job) -> None:
        self.person = job.by
        job_id = self.open_job(job.equipment, job.reason, happened_at=job.opened_at)
        for number, step in enumerate(job.steps):
            self.person = step.by
            try:
                self._take_step(job_id, step)
            except (ChargebenchError, PostingRefused) as refusal:
                raise JobFileRefused(
                    say(
                        "job.steps[{number}] ({step}): {refusal}",
                        number=number,
                        step=step.step,
                        refusal=refusal,
                    )
                ) from refusal
        if job.closed_at is not None:
            self.person = job.by
            self.close_job(job_id, happened_at=job.closed_at)

    def _take_step(self, job: str, step: StepTyped) -> None:
        if step.again:
            standing = self._case(job).signed[step.step]
            self.reverse(standing.entry, step.again)
            self.ledger.forget_typed(job, step.step)
        if step.not_needed:
            self.not_needed(job, step.step, step.not_needed, step.happened_at)
        else:
            self.sign(job, step.step, step.typed, step.happened_at)
