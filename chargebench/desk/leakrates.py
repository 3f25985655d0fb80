"""Leak rates: what each job added to its equipment, against the regulations that bind it."""

from collections import defaultdict
from dataclasses import replace
from datetime import date

from chargebench import fluids
from chargebench.calc import leak_rate
from chargebench.calc.leak_rate import YEAR_DAYS, Addition, Circuit
from chargebench.desk.stock import Stock
from chargebench.reports import LeakRateLine
from chargebench.rules import Regulation
from chargebench.steps import Answers
from chargebench.units import from_mg


class LeakRates(Stock):
    """Every equipment's leak rate."""

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
        # Duties do not end with a smaller addition: the newest that went over within a year stands.
        lines = [self._at_addition(line, row, additions, one, rule) for one in events]
        over = [
            each
            for each in lines
            if each.over
            and each.added_on is not None
            and (self.today - each.added_on).days < YEAR_DAYS
        ]
        return max(over or lines, key=_added_on, default=line)

    def _at_addition(
        self,
        line: LeakRateLine,
        row: Answers,
        additions: list[Addition],
        event: Addition,
        rule: Regulation,
    ) -> LeakRateLine:
        """Both leak rates on the day of an addition, and what is due if it went over."""
        limit = leak_rate.threshold(rule, row.text("category"))
        charge = row.quantity("charge")
        assert charge is not None
        rates = {}
        days = leak_rate.days_since_last(additions, event.on, rule)
        if days is None and (installed := row.date("installed")) and installed < event.on:
            days = (event.on - installed).days  # never added to before: full since installation
        if days is not None:
            # Additions of one day have no rate of their own; `merged` has summed them.
            rates["annualizing_pct"] = leak_rate.annualizing(event.mass, charge, max(days, 1))
        rates["rolling_pct"] = leak_rate.rolling(
            additions, charge, event.on, counted_from=rule.applies_from.value
        )
        over = any(leak_rate.over_threshold(rate, limit) for rate in rates.values())
        due = leak_rate.due_dates(event.on, rule)
        return replace(
            line,
            **{key: rate.m_as("percent") for key, rate in rates.items()},
            over=over,
            added_on=event.on,
            due=_duties(due) if over else (),
        )


def _added_on(line: LeakRateLine) -> date:
    return line.added_on or date.min


def _duties(due: leak_rate.DueDates) -> tuple[tuple[str, date], ...]:
    return (
        ("repair", due.repair),
        ("follow-up test", due.follow_up),
        ("plan", due.plan),
    )
