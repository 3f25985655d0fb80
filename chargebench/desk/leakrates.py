"""Leak rates: what each job added to its equipment, against the regulations that bind it."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, timedelta

from chargebench.calc.leak_rate import YEAR_DAYS
from chargebench.desk.appliance import Appliance
from chargebench.desk.history import History, history
from chargebench.desk.leakchecks import checked, owes_checks
from chargebench.desk.stocktake import StockTakes
from chargebench.errors import StepRefused
from chargebench.ledger import Reader
from chargebench.reports import LeakRateLine
from chargebench.steps import REGISTERS, Typed
from chargebench.words import say

METHOD, WHY = "leak_method", "leak_method_why"


class LeakRates(StockTakes):
    """Every equipment's leak rate, worked out once until something is recorded."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self._rated_lines: tuple[date, list[LeakRateLine]] | None = None

    def leak_rates(self) -> list[LeakRateLine]:
        """Every equipment's leak rate by both methods, against each regulation that binds it.

        A retired one is left out once nothing is owed of it any more.
        """
        return [
            line
            for line in self._all_rated()
            if line.due or self.answers("equipment", line.equipment_id).date("retired") is None
        ]

    def _all_rated(self) -> list[LeakRateLine]:
        """The lines of every equipment; another day they are worked out anew."""
        if self._rated_lines is None or self._rated_lines[0] != self.today:
            lines = [line for one in self._appliances() for line in self._rated(one)]
            self._rated_lines = (self.today, lines)
        return self._rated_lines[1]

    def _changed(self, job: str | None = None) -> None:
        super()._changed(job)
        self._rated_lines = None

    def _rated(self, one: Appliance) -> list[LeakRateLine]:
        """A line for each regulation that binds; one without a threshold where none does."""
        found = one.rated()
        if self.rule_set.climate is not None:
            found.append(checked(one, self.rule_set.climate))
        return found or [one.bare]

    def _appliances(self, site: str = "") -> Iterator[Appliance]:
        """Equipment whose refrigerant and charge are known, of one site or of all.

        The history is read only of what a regulation binds, and as far back as records are kept
        and a year more, for what its oldest duties run from.
        """
        rule_set, today = self.rule_set, self.today
        kept_for = timedelta(days=rule_set.records.keep.quantity.m_as("day"))
        since = today - kept_for - timedelta(days=YEAR_DAYS)
        for equipment, row in self.all_answers("equipment").items():
            stands_at = row.text("site")
            if not row.text("refrigerant") or not row.mass_mg("charge"):
                continue
            if site and stands_at != site:
                continue
            method = self.answers("site", stands_at).text(METHOD)
            one = Appliance(equipment, row, method, History(), rule_set, today)
            if one.bound or (rule_set.climate and owes_checks(one, rule_set.climate)):
                jobs = reversed(self.reading.jobs(equipment=equipment))
                entries = (
                    list(self.reading.entries(job=job.id))
                    for job in jobs
                    if job.closed_at is None or job.closed_at.date() >= since
                )
                one = replace(one, past=history(equipment, entries))
            yield one

    def save_row(
        self,
        register: str,
        row_id: str | None,
        typed: Typed,
        *,
        happened_at: datetime | None = None,
    ) -> str:
        """As any register's form is saved; a change of a site's method is recorded under both.

        Raises
        ------
        StepRefused
            Wrong or missing fields; a method changed without a reason, or while an appliance of
            the site is over its threshold under either.
        ChargebenchError
            An id that can not be one.
        """
        before = self.row("site", row_id).get(METHOD, "") if register == "site" and row_id else ""
        now = str(typed.get(METHOD, "")).strip()
        changed = before and now != before
        results = self._results(row_id or "", typed) if changed else []
        if not changed:
            return super().save_row(register, row_id, typed, happened_at=happened_at)
        with self.ledger.together():
            saved = super().save_row(register, row_id, typed, happened_at=happened_at)
            self._post(
                "leak-method-changed",
                {
                    "site": saved,
                    "from": before,
                    "to": now,
                    "reason": str(typed.get(WHY, "")).strip(),
                    "results": results,
                },
                happened_at=happened_at,
            )
        return saved

    def _results(self, site: str, typed: Typed) -> list[dict[str, str]]:
        """Both rates of every appliance of a site; refused where one is over under either."""
        refusals: dict[str, str] = {}
        if not str(typed.get(WHY, "")).strip():
            refusals[WHY] = "Expected why the method changes: it may after taking a facility over."
        results: list[dict[str, str]] = []
        for line in (line for one in self._appliances(site) for line in one.rated()):
            rates = {"annualizing": line.annualizing_pct, "rolling average": line.rolling_pct}
            limit = line.threshold_pct or 0.0
            over = [name for name, rate in rates.items() if (rate or 0.0) > limit]
            if over:
                refusals[METHOD] = say(
                    "{name} is over its threshold by the {over} method. The method may "
                    "change only while every appliance of the site is below by both.",
                    name=line.name,
                    over=over[0],
                )
            shown = {name: f"{rate:.2f} %" for name, rate in rates.items() if rate is not None}
            results.append({"equipment": line.equipment_id, "under": line.regulation} | shown)
        if refusals:
            raise StepRefused(REGISTERS["site"].title, refusals)
        return results
