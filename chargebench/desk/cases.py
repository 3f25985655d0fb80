"""The case a job is worked out from: folded from its entries, kept until something changes."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from chargebench import steps
from chargebench.desk.registers import Registers
from chargebench.desk.views import JobLine
from chargebench.errors import ChargebenchError
from chargebench.fluids import refrigerant
from chargebench.ledger import Entry, Reader
from chargebench.steps import (
    STEPS,
    Answers,
    Case,
    Figure,
    Signed,
    Typed,
    Worked,
    answer,
)
from chargebench.units import shown


class Cases(Registers):
    """Builds each job's case once, and works its steps out once, until something is recorded."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self._cases: dict[str, Case] = {}
        self._worked: dict[str, dict[str, Worked]] = {}
        self._lines: dict[str, JobLine] = {}

    def figure_text(self, figure: Figure) -> str:
        """A worked-out figure with its doubt, in the shop's units."""
        if isinstance(figure.value, str):
            return figure.value
        text = shown(figure.value, self.units)
        if figure.doubt is None:
            return text
        return f"{text} ± {shown(figure.doubt, self.units, like=figure.value)}"

    def limit_text(self, figure: Figure) -> str:
        """What a figure is held against, in the shop's units; empty where nothing is."""
        if figure.limit is None or isinstance(figure.limit, str):
            return figure.limit or ""
        like = None if isinstance(figure.value, str) else figure.value
        return shown(figure.limit, self.units, like=like)

    def _changed(self, job: str | None = None) -> None:
        """Forget what was worked out: every case, for cylinders are shared; lines of one job."""
        super()._changed(job)
        self._cases.clear()
        self._worked.clear()
        if job is None:
            self._lines.clear()
        else:
            self._lines.pop(job, None)

    def _case(self, job: str) -> Case:
        if job not in self._cases:
            self._cases[job] = self._build_case(job)
        return self._cases[job]

    def _worked_out(self, case: Case) -> Mapping[str, Worked]:
        if case.job not in self._worked:
            self._worked[case.job] = {key: steps.work_out(case, key) for key in STEPS}
        return self._worked[case.job]

    def _build_case(self, job: str) -> Case:
        row = self.reading.job(job)
        if row is None:
            raise ChargebenchError("There is no such job in this shop.")
        signed, payloads = fold_steps(self.reading.entries(job=job))
        answers = {
            key: answer(form, payloads[key] if key in payloads else self.reading.typed(job, key))
            for key, form in STEPS.items()
        }
        equipment = self.answers("equipment", row.equipment)
        place = f"equipment:{row.equipment}"
        content = [each for each in self.reading.balances(place) if each.place == place]
        bare = Case(
            job=job,
            number=row.number,
            state=row.state,
            # A closed job is judged by the day it was closed, not by what fell due since.
            today=row.closed_at.date() if row.closed_at else self.today,
            rule_set=self.rule_set,
            units=self.units,
            equipment_id=row.equipment,
            equipment=equipment,
            site=self.answers("site", equipment.text("site")),
            answers=answers,
            signed=signed,
            cylinders=self.all_answers("cylinder"),
            cylinder_content_mg=self._contents(),
            equipment_content_mg=sum(each.mass_mg for each in content),
            equipment_seen=bool(content),
            instruments=self.all_answers("instrument"),
            people={key: each.get("name", key) for key, each in self.rows("person").items()},
        )
        return _with_refrigerant(bare)

    def _contents(self) -> dict[str, dict[str, int]]:
        contents: dict[str, dict[str, int]] = {}
        for balance in self.reading.balances("cylinder:"):
            held = contents.setdefault(balance.place.removeprefix("cylinder:"), {})
            held[balance.refrigerant] = balance.mass_mg
        for each, name in self.reading.names().items():  # of a cylinder met twice, under both ids
            register, _, cylinder = each.partition(":")
            if register == "cylinder":
                contents[cylinder] = contents.get(name.partition(":")[2], {})
        return contents

    def _with(self, case: Case, step: str, answers: Answers) -> Case:
        return _with_refrigerant(replace(case, answers={**case.answers, step: answers}))

    def _signed_payload(self, job: str, step: str) -> Typed | None:
        _, payloads = fold_steps(self.reading.entries(job=job))
        return payloads.get(step)


def fold_steps(entries: Iterable[Entry]) -> tuple[dict[str, Signed], dict[str, Typed]]:
    """Which steps of a job stand signed or set aside after all its entries, and their text."""
    recorded = list(entries)
    undone = {each.payload["reverses"] for each in recorded if each.kind == "reversal"}
    standing: dict[str, Entry] = {
        each.payload["step"]: each  # the last that stands: a follow-up is signed again and again
        for each in recorded
        if each.kind in ("step-signed", "step-not-needed", "follow-up") and each.id not in undone
    }
    signed = {
        key: Signed(
            entry=entry.id,
            number=entry.number,
            by=entry.by,
            happened_at=entry.happened_at,
            needed=entry.kind != "step-not-needed",
            reason=entry.payload.get("reason", ""),
            rule_set=entry.payload.get("rule_set", ""),
        )
        for key, entry in standing.items()
    }
    typed = {
        key: entry.payload["typed"]
        for key, entry in standing.items()
        if entry.kind != "step-not-needed"
    }
    return signed, typed


def _with_refrigerant(case: Case) -> Case:
    name = case.nameplate("refrigerant")
    return replace(case, refrigerant=refrigerant(name) if name else None)
