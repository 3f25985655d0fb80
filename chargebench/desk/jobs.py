"""Jobs: open, keep what is typed, look, sign, set aside, close."""

from dataclasses import asdict, replace
from datetime import datetime
from typing import Any

from chargebench import flags, steps
from chargebench.desk.corrections import Corrections
from chargebench.desk.rights import Act
from chargebench.desk.views import JobView, Look, StepView, TickLine
from chargebench.errors import (
    ChargebenchError,
    NotAllowed,
    PostingRefused,
    PropertiesUnavailable,
    StepRefused,
)
from chargebench.fluids import await_gas_density
from chargebench.ledger import Entry
from chargebench.steps import STEPS, Case, Typed, answer, safety_list
from chargebench.steps.taken import checked
from chargebench.units import Reading, shown
from chargebench.words import joined, say

AFTER_CLOSING = "follow_up"
REST_ON_GAS = ("pressure_test", "weigh_in")


class Jobs(Corrections):
    """One visit or repair on one equipment, made of steps."""

    def open_job(
        self, equipment: str, reason: str = "", *, happened_at: datetime | None = None
    ) -> str:
        """Open a job on an equipment; its id."""
        if not self.row("equipment", equipment):
            raise ChargebenchError(
                say(
                    "Expected an equipment of the register; got “{equipment}”.", equipment=equipment
                )
            )
        entry = self._post(
            "job-opened",
            {"equipment": equipment, "reason": reason},
            happened_at=happened_at,
        )
        self._changed()
        assert entry.job is not None
        return entry.job

    def job(self, job: str) -> JobView:
        """One job with its steps' states and all its flags."""
        case = self._case(job)
        worked = self._worked_out(case)
        raised = flags.of_job(case, worked) + flags.of_follow_up(
            case.step(AFTER_CLOSING), self.today
        )
        return JobView(
            id=job,
            number=case.number,
            state=case.state,
            equipment_id=case.equipment_id,
            title=self._title(case.equipment_id),
            headline=self._headline(case),
            steps=tuple(self._step_view(case, key) for key in STEPS),
            flags=flags.worst_first(raised),
            case=case,
        )

    def _title(self, equipment: str) -> str:
        row = self.row("equipment", equipment)
        site = self.row("site", row.get("site", ""))
        return ", ".join(name for name in (row.get("name"), site.get("name")) if name)

    def _headline(self, case: Case) -> str:
        charge = case.nameplate("charge")
        words = [case.refrigerant.name if case.refrigerant else "refrigerant unknown"]
        if case.refrigerant:
            words.append(flags.class_words(case.refrigerant.safety_class))
        if isinstance(charge, Reading):
            as_shown = shown(charge.quantity, self.units)
            same = as_shown.endswith(f" {charge.unit}")  # typed in the shop's unit already
            also = "" if same else say(" ({as_shown})", as_shown=as_shown)
            words.append(say("nameplate {charge}{also}", charge=charge.text, also=also))
        return joined(", ", words)

    def _step_view(self, case: Case, key: str) -> StepView:
        title = STEPS[key].title
        signed = case.signed.get(key)
        if signed is None:
            return StepView(key, title, "open")
        return StepView(
            key,
            title,
            "signed" if signed.needed else "not needed",
            signed.entry,
            signed.number,
            case.people.get(signed.by, signed.by),
            signed.happened_at,
            signed.reason,
            signed.rule_set,
        )

    def typed(self, job: str, step: str) -> Typed:
        """What stands in a step: as signed, else as kept while typing."""
        signed = self._signed_payload(job, step)
        return signed if signed is not None else self.reading.typed(job, step)

    def keep(self, job: str, step: str, typed: Typed) -> None:
        """Keep an open step's text as typed, durably."""
        if says := self.refusal(Act.RECORD):
            raise NotAllowed(says)
        self.ledger.keep_typed(job, step, dict(typed))
        if job in self._cases:  # the other steps read what is typed in this one
            self._cases[job] = self._with(self._cases[job], step, answer(STEPS[step], typed))
            self._worked.pop(job, None)

    def look(self, job: str, step: str, typed: Typed) -> Look:
        """Understand and work out what is typed; no disk is touched, so it may run at each key."""
        answers = answer(STEPS[step], typed)
        case = self._with(self._case(job), step, answers)
        worked = steps.work_out(case, step)
        raised = flags.of_step_in_job(case, step, worked)
        if step == AFTER_CLOSING:
            raised += flags.of_follow_up(answers, self.today)
        return Look(answers, worked, flags.worst_first(raised))

    def sign(self, job: str, step: str, typed: Typed, happened_at: datetime | None = None) -> Entry:
        """Record a step.

        Raises
        ------
        StepRefused
            Wrong or missing fields, each with what it wants.
        PostingRefused
            The ledger does not take it; nothing is recorded.
        """
        if step in REST_ON_GAS:
            _await_gas()
        on = self.today if happened_at is None else happened_at.date()
        case = replace(self._with(self._case(job), step, answer(STEPS[step], typed)), today=on)
        if step in case.signed and step != AFTER_CLOSING:
            raise PostingRefused(
                say(
                    "{title} is signed already (entry {number}); reverse it with a reason "
                    "to record it again.",
                    title=STEPS[step].title,
                    number=case.signed[step].number,
                )
            )
        self._refuse_unready(case, step)
        worked = steps.work_out(case, step)
        raised = flags.of_step(case, step, worked)
        entry = self._post(
            "follow-up" if step == AFTER_CLOSING else "step-signed",
            {
                "step": step,
                "typed": _plain(checked(typed)),
                "rule_set": self.rule_set.called,
                "worked": [[f.label, self.figure_text(f)] for f in worked.figures],
                "said": list(worked.sentences),
                "flags": [asdict(flag) for flag in raised],
                **self._replacing(job, step),
            },
            job=job,
            transfers=steps.movements(case, step),
            happened_at=happened_at,
            may_overdraw_mg=steps.overdraw_allowed_mg(case, step),
            signs=step,
        )
        self._changed(job)
        return entry

    def _replacing(self, job: str, step: str) -> dict[str, str]:
        """What a step done again stands in the place of."""
        before = self.taken_back(job, step) if step != AFTER_CLOSING else []
        return {"replaces": before[-1][0].id} if before else {}

    def _refuse_unready(self, case: Case, step: str) -> None:
        answers = case.step(step)
        fields = dict(answers.refusals)
        fields |= {
            path: say("Expected {label}.", label=label.lower())
            for path, label in answers.missing.items()
        }
        fields |= steps.refusals(case, step)
        if fields:
            raise StepRefused(STEPS[step].title, fields)

    def not_needed(
        self, job: str, step: str, reason: str, happened_at: datetime | None = None
    ) -> Entry:
        """Set a step aside with a reason."""
        if not reason.strip():
            raise ChargebenchError("Expected a reason why this step is not needed.")
        if step in self._case(job).signed:
            raise PostingRefused(say("{title} is recorded already.", title=STEPS[step].title))
        entry = self._post(
            "step-not-needed",
            {"step": step, "reason": reason.strip()},
            job=job,
            happened_at=happened_at,
        )
        self._changed(job)
        return entry

    def close_job(self, job: str, *, happened_at: datetime | None = None) -> Entry:
        """Close a job; refused while a stop flag or an open step stands."""
        view = self.job(job)
        waiting = [
            step.title for step in view.steps if step.state == "open" and step.key != AFTER_CLOSING
        ]
        if waiting:
            raise PostingRefused(
                say(
                    "Expected every step signed or set aside before closing; open: {waiting}.",
                    waiting=joined(", ", waiting),
                )
            )
        entry = self._post(
            "job-closed",
            {"flags": [asdict(flag) for flag in view.flags]},
            job=job,
            happened_at=happened_at,
        )
        self._changed(job)
        return entry

    def reopen(self, job: str, reason: str) -> Entry:
        """Open a closed job again, by an entry with a reason."""
        if not reason.strip():
            raise ChargebenchError("Expected a reason to open a closed job again.")
        entry = self._post("job-reopened", {"reason": reason.strip()}, job=job)
        self._changed(job)
        return entry

    def ticks(self, job: str, step: str, field: str) -> tuple[TickLine, ...]:
        """The lines a tick list of a step shows: parts to search, or its safety lines."""
        case = self._case(job)
        if field == "components":
            return tuple(TickLine(key, text) for key, text in steps.components(case))
        return tuple(
            TickLine(line.key, line.text, f"{line.source}, {line.place}", line.mark)
            for line in safety_list.lines(case, step)
        )


def _await_gas() -> None:
    """Wait until gas densities are at hand: what is signed should not rest on the ideal law."""
    try:
        await_gas_density()
    except PropertiesUnavailable:
        return  # the ideal law then serves, its error in the doubt, and the sentence says so


def _plain(typed: Typed) -> dict[str, Any]:
    """Typed text as it goes into an entry: empty fields and empty lines left out."""
    plain: dict[str, Any] = {}
    for key, given in typed.items():
        if isinstance(given, str):
            if given.strip():
                plain[key] = given
            continue
        lines = [{k: v for k, v in line.items() if v.strip()} for line in given]
        if kept := [line for line in lines if line]:
            plain[key] = kept
    return plain
