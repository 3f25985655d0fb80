"""Records: usage, flags, leak rates and due dates, entries, verification."""

from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from pathlib import Path

from chargebench import flags, fluids
from chargebench.calc import leak_rate
from chargebench.calc.leak_rate import Addition, Circuit
from chargebench.desk.jobs import AFTER_CLOSING
from chargebench.desk.stock import Stock
from chargebench.desk.views import UsageTotal
from chargebench.flags import Flag
from chargebench.ledger import Entry, Filters, UsageRow, Verification
from chargebench.reports import LeakRateLine
from chargebench.rules import Regulation
from chargebench.steps import NOTHING, STEPS, Answers, answer
from chargebench.units import from_mg

UsageKey = tuple[int, int, int]
EVERYTHING = Filters()


class Records(Stock):
    """What was recorded, and what it comes to."""

    def usage(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
        *,
        before: UsageKey | None = None,
        limit: int = 500,
    ) -> Sequence[UsageRow]:
        """Mass lines of a period, the last day included, newest first; paged by `before`."""
        return self.reading.usage(
            day_start(since), day_end(until), filters, before=before, limit=limit
        )

    def usage_totals(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> list[UsageTotal]:
        """A period's movements by refrigerant."""
        totals: dict[str, UsageTotal] = {}
        for row in self.reading.usage_totals(day_start(since), day_end(until), filters):
            total = totals.get(row.refrigerant, UsageTotal(row.refrigerant))
            column = _column(row.source, row.target)
            if column:
                total = replace(total, **{column: getattr(total, column) + row.mass_mg})
            totals[row.refrigerant] = total
        return [totals[name] for name in sorted(totals)]

    def usage_by_month(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> dict[str, UsageTotal]:
        """A period's movements of all refrigerants together, by month such as 2026-11."""
        months: dict[str, UsageTotal] = {}
        for row in self.reading.usage_totals(day_start(since), day_end(until), filters):
            total = months.get(row.month, UsageTotal("all"))
            column = _column(row.source, row.target)
            if column:
                total = replace(total, **{column: getattr(total, column) + row.mass_mg})
            months[row.month] = total
        return dict(sorted(months.items()))

    def entries(
        self,
        since: date | None = None,
        until: date | None = None,
        *,
        after: str | None = None,
        limit: int | None = None,
    ) -> Iterator[Entry]:
        """Entries of a period, the last day included, in the order recorded."""
        return self.reading.entries(
            since=day_start(since), until=day_end(until), after=after, limit=limit
        )

    def all_flags(self) -> list[Flag]:
        """Flags of jobs (of closed ones as closed), cylinders and leak rates, worst first."""
        follow_ups = {
            entry.job: answer(STEPS[AFTER_CLOSING], entry.payload["typed"])
            for entry in self.reading.entries(kind="follow-up")
        }
        found: list[Flag] = []
        for row in self.reading.jobs():
            if row.closed_at:
                raised = (
                    *self.flags_at_closing(row.id),
                    *flags.of_follow_up(follow_ups.get(row.id, NOTHING), self.today),
                )
            else:
                raised = self.job(row.id).flags
            found += [_of_job(row.number, flag) for flag in raised]
        found += [flag for line in self.cylinders() for flag in line.flags]
        found += [flag for line in self.leak_rates() for flag in self._leak_flags(line)]
        return list(flags.worst_first(tuple(found)))

    def _leak_flags(self, line: LeakRateLine) -> list[Flag]:
        if not line.over or line.threshold_pct is None:
            return []
        rule = self.rule_set.leak_rate
        assert rule is not None
        limit = leak_rate.threshold(
            rule.regulation(line.regulation),
            self.answers("equipment", line.equipment_id).text("category"),
        )
        worst = max(line.annualizing_pct or 0.0, line.rolling_pct or 0.0)
        return [
            flags.of_equipment(
                line.equipment_id,
                name=line.name,
                rate_pct=worst,
                threshold_pct=line.threshold_pct,
                source=f"{limit.source}, {limit.place}",
                mark=limit.mark,
                repair_by=dict(line.due)["repair"],
            )
        ]

    def leak_rates(self) -> list[LeakRateLine]:
        """Every equipment's leak rate by both methods, against each regulation that binds it."""
        added = self._additions()
        lines: list[LeakRateLine] = []
        for equipment in self.rows("equipment"):
            lines += self._leak_rate_lines(equipment, added.get(equipment, []))
        return lines

    def _additions(self) -> dict[str, list[Addition]]:
        """What each job put into its equipment beyond what it took out of it.

        Recovering or lawfully releasing and putting the same back is no leak; what goes in beyond
        that brings the equipment back to full charge (40 CFR 82.152).
        """
        net: dict[tuple[str, str], int] = defaultdict(int)
        on: dict[tuple[str, str], date] = {}
        for row in self.reading.usage():
            if row.reversed or row.job is None or row.equipment is None:
                continue
            place, key = f"equipment:{row.equipment}", (row.equipment, row.job)
            if row.target == place and row.source.startswith("cylinder:"):
                net[key] += row.mass_mg
                on[key] = max(on.get(key, date.min), row.happened_at.date())
            elif row.source == place and row.target.startswith("cylinder:"):
                net[key] -= row.mass_mg
        found: dict[str, list[Addition]] = defaultdict(list)
        for (equipment, job), day in on.items():
            case = self._case(job)
            leaked = net[equipment, job] - (case.step("recovery").mass_mg("released") or 0)
            if leaked > 0:
                why = case.step("weigh_in").text("not_counted")
                found[equipment].append(Addition(day, from_mg(leaked), why))
        return found

    def _leak_rate_lines(self, equipment: str, additions: list[Addition]) -> list[LeakRateLine]:
        row = self.answers("equipment", equipment)
        charge, name = row.mass_mg("charge"), row.text("refrigerant")
        if not charge or not name or row.date("retired"):
            return []
        circuit = self._circuit(row, name)
        bare = LeakRateLine(
            equipment_id=equipment,
            name=row.text("name"),
            refrigerant=name,
            full_charge_mg=charge,
            annualizing_pct=None,
            rolling_pct=None,
            threshold_pct=None,
            regulation="",
            over=False,
            additions=tuple((one.on, round(one.mass.m_as("mg"))) for one in additions),
        )
        bound = leak_rate.applies(circuit, self.rule_set.leak_rate, self.today)
        return [self._against(bare, row, additions, one) for one in bound] or [bare]

    def _circuit(self, row: Answers, name: str) -> Circuit:
        refrigerant = fluids.refrigerant(name)
        charge = row.quantity("charge")
        assert charge is not None
        figure = refrigerant.gwp.get(self.rule_set.gwp.set.value)
        return Circuit(
            full_charge=charge,
            category=row.text("category"),
            ozone_depleting=refrigerant.contains_hcfc_or_cfc,
            hfc=refrigerant.contains_hfc,
            solely_ozone_depleting=refrigerant.contains_hcfc_or_cfc
            and not refrigerant.contains_hfc,
            gwp=0.0 if figure is None else float(figure.value),
            excluded_subsector=bool(row.yes("subsector_excluded")),
        )

    def _against(
        self, line: LeakRateLine, row: Answers, additions: list[Addition], rule: Regulation
    ) -> LeakRateLine:
        limit = leak_rate.threshold(rule, row.text("category"))
        line = replace(line, regulation=rule.key, threshold_pct=limit.quantity.m_as("percent"))
        all_rules = self.rule_set.leak_rate
        assert all_rules is not None
        events = [
            one
            for one in leak_rate.merged(additions, all_rules.merge_window)
            if not one.not_counted and one.on >= rule.applies_from.value
        ]
        if not events:
            return line
        last = max(events, key=lambda one: one.on)
        charge = row.quantity("charge")
        assert charge is not None
        rates = {}
        days = leak_rate.days_since_last(additions, last.on, rule)
        if days is None and (installed := row.date("installed")) and installed < last.on:
            days = (last.on - installed).days  # never added to before: full since installation
        if days is not None:
            # Additions of one day have no rate of their own; `merged` has summed them.
            rates["annualizing_pct"] = leak_rate.annualizing(last.mass, charge, max(days, 1))
        rates["rolling_pct"] = leak_rate.rolling(
            additions, charge, last.on, counted_from=rule.applies_from.value
        )
        over = any(leak_rate.over_threshold(rate, limit) for rate in rates.values())
        line = replace(
            line,
            **{key: rate.m_as("percent") for key, rate in rates.items()},
            over=over,
            added_on=last.on,
        )
        if not over:
            return line
        due = leak_rate.due_dates(last.on, rule)
        return replace(
            line,
            due=(
                ("repair", due.repair),
                ("follow-up test", due.follow_up),
                ("plan", due.plan),
            ),
        )

    def verify(self, progress: Callable[[int, int], None] | None = None) -> Verification:
        """Recompute the whole ledger and compare; says what was checked."""
        return self.reading.verify(progress)

    def backup(self) -> Path | None:
        """Keep a copy of the shop file beside it; None where the newest is still the same."""
        return self.ledger.backup()


def _of_job(number: str, flag: Flag) -> Flag:
    return replace(flag, about=f"job:{number}, {flag.about}", says=f"{number}: {flag.says}")


def _column(source: str, target: str) -> str:
    """Column of the totals that a movement between two kinds of places belongs to."""
    if target == "atmosphere":
        return "released_mg"
    pairs = {
        ("supplier", "cylinder"): "received_mg",
        ("cylinder", "equipment"): "charged_mg",
        ("equipment", "cylinder"): "recovered_mg",
    }
    if "difference" in (source, target):
        return "difference_mg"
    if source == "cylinder" and target in ("supplier", "reclaimer", "destruction"):
        return "returned_mg"
    return pairs.get((source, target), "")


def day_start(day: date | None) -> datetime | None:
    """Midnight before a day, by the bench's clock."""
    return None if day is None else datetime.combine(day, time()).astimezone()


def day_end(day: date | None) -> datetime | None:
    """Midnight after a day, by the bench's clock."""
    return None if day is None else day_start(day + timedelta(days=1))
