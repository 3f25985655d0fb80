"""One equipment under the leak rules: its rates at each addition, and every duty they set off."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property

from chargebench import fluids
from chargebench.calc import leak_rate
from chargebench.calc.compare import at_least
from chargebench.calc.duty import Duty, periodic
from chargebench.calc.leak_rate import Addition, Afterwards, Circuit, Exceedance
from chargebench.desk.history import History
from chargebench.reports import DueLine, LeakRateAt, LeakRateLine
from chargebench.reports.dated import DONE, standing
from chargebench.rules import Figure, Regulation, RuleSet
from chargebench.steps import Answers
from chargebench.units import Quantity

DETECTION_CHECK = "leak detection system check"


@dataclass(frozen=True)
class Appliance:
    """What the rules see in one equipment: its register row, its site's method, its history."""

    id: str
    row: Answers
    method: str  # of its site; both count while none is chosen
    past: History
    rule_set: RuleSet
    today: date

    @property
    def charge(self) -> Quantity:
        """Full charge, as typed in the register."""
        charge = self.row.quantity("charge")
        assert charge is not None, self.id
        return charge

    @property
    def refrigerant(self) -> fluids.Refrigerant:
        """The refrigerant of the register."""
        return fluids.refrigerant(self.row.text("refrigerant"))

    @property
    def gwp(self) -> float:
        """Global warming potential in the rule set's own set; zero where it has none."""
        figure = self.refrigerant.gwp.get(self.rule_set.gwp.set.value)
        return 0.0 if figure is None else float(figure.value)

    @property
    def circuit(self) -> Circuit:
        """What decides which regulation binds."""
        known = self.refrigerant
        return Circuit(
            full_charge=self.charge,
            category=self.row.text("category"),
            ozone_depleting=known.contains_hcfc_or_cfc,
            hfc=known.contains_hfc,
            solely_ozone_depleting=known.contains_hcfc_or_cfc and not known.contains_hfc,
            gwp=self.gwp,
            excluded_subsector=bool(self.row.yes("subsector_excluded")),
        )

    @cached_property
    def afterwards(self) -> Afterwards:
        """What may stop a clock."""
        since = self.row.date("mothballed")
        return Afterwards(
            tests=tuple(self.past.tests),
            inspections=tuple(self.past.searches),
            extensions=tuple(self.past.extensions),
            papers=tuple(self.past.papers),
            normal_running=tuple(self.past.normal_running),
            retired=self.row.date("retired"),
            mothballed=None if since is None else (since, self.row.date("mothball_ended")),
        )

    @cached_property
    def events(self) -> tuple[Addition, ...]:
        """Additions, those of one leak event summed, those of a season apart."""
        rule = self.rule_set.leak_rate
        assert rule is not None
        apart = leak_rate.without_seasonal(
            self.past.additions, self.past.removals, rule.seasonal_within
        )
        return leak_rate.merged(apart, rule.merge_window)

    @property
    def bare(self) -> LeakRateLine:
        """Its line without a threshold."""
        return LeakRateLine(
            equipment_id=self.id,
            name=self.row.text("name"),
            refrigerant=self.row.text("refrigerant"),
            full_charge_mg=self.row.mass_mg("charge") or 0,
            annualizing_pct=None,
            rolling_pct=None,
            threshold_pct=None,
            regulation="",
            over=False,
            method=self.method,
            additions=tuple((one.on, round(one.mass.m_as("mg"))) for one in self.past.additions),
        )

    @property
    def bound(self) -> tuple[Regulation, ...]:
        """The leak repair regulations that bind it."""
        return leak_rate.applies(self.circuit, self.rule_set.leak_rate, self.today)

    def rated(self) -> list[LeakRateLine]:
        """A line for each leak repair regulation that binds it."""
        return [self._line(rule) for rule in self.bound]

    def _line(self, rule: Regulation) -> LeakRateLine:
        limit = leak_rate.threshold(rule, self.row.text("category"))
        computed = self._computed(rule)
        duties = tuple(self._returning(rule, computed))
        line = replace(
            self.bare,
            regulation=rule.key,
            threshold_pct=limit.quantity.m_as("percent"),
            threshold_source=f"{limit.source}, {limit.place}",
            threshold_mark=limit.mark,
            lacks_detection=self._lacks_detection(rule.detection_from),
            computed=computed,
            duties=duties,
            due=standing((*(each for one in computed for each in one.duties), *duties)),
        )
        waiting = [one for one in computed if any(each.state != DONE for each in one.duties)]
        shown = max(waiting or computed, key=lambda one: one.on, default=None)
        if shown is None:
            return line
        return replace(
            line,
            annualizing_pct=shown.annualizing_pct,
            rolling_pct=shown.rolling_pct,
            rate_pct=shown.rate_pct,
            method=shown.method,
            over=shown.over,
            added_on=shown.on,
        )

    def _lacks_detection(self, reaching: Figure | None) -> Figure | None:
        """From which charge on a system is compulsory, where it is and none is fitted."""
        if reaching is None or self.row.yes("leak_detection"):
            return None
        return reaching if at_least(self.charge, reaching.quantity) else None

    def _computed(self, rule: Regulation) -> tuple[LeakRateAt, ...]:
        """The leak rate at every addition since the regulation began, with what it set off."""
        begun = rule.applies_from.value
        counted = [one for one in self.events if not one.not_counted and one.on >= begun]
        found: list[LeakRateAt] = []
        for place, event in enumerate(counted):
            at = self._at(event, rule)
            if at.over:
                following = counted[place + 1].on if place + 1 < len(counted) else None
                at = replace(at, duties=self._set_off(at, following, rule))
            found.append(at)
        return tuple(found)

    def _at(self, event: Addition, rule: Regulation) -> LeakRateAt:
        days = leak_rate.days_since_last(self.events, event.on, rule)
        if days is None and (installed := self.row.date("installed")) and installed < event.on:
            days = (event.on - installed).days  # never added to before: full since installation
        annualizing = None
        if days is not None:
            # Additions of one day have no rate of their own; `merged` has summed them.
            annualizing = leak_rate.annualizing(event.mass, self.charge, max(days, 1))
        good = [day for day in leak_rate.good_follow_ups(self.past.tests) if day < event.on]
        since = leak_rate.rolling_start(
            event.on,
            last_good_follow_up=max(good, default=None),
            counted_from=rule.applies_from.value,
        )
        rolled = [one for one in self.events if since <= one.on <= event.on and not one.not_counted]
        rolling = leak_rate.rolling(rolled, self.charge, event.on, counted_from=since)
        method, rate = _deciding(self.method, annualizing, rolling)
        return LeakRateAt(
            on=event.on,
            entries=event.entries,
            added_mg=round(event.mass.m_as("mg")),
            days=days,
            annualizing_pct=None if annualizing is None else annualizing.m_as("percent"),
            rolling_from=since,
            rolling_mg=round(sum(one.mass.m_as("mg") for one in rolled)),
            rolling_entries=tuple(number for one in rolled for number in one.entries),
            rolling_pct=rolling.m_as("percent"),
            method=method,
            rate_pct=rate.m_as("percent"),
            over=leak_rate.over_threshold(
                rate, leak_rate.threshold(rule, self.row.text("category"))
            ),
        )

    def _set_off(
        self, at: LeakRateAt, following: date | None, rule: Regulation
    ) -> tuple[DueLine, ...]:
        exceedance = self._exceedance(at, following)
        duties = leak_rate.exceedance_duties(exceedance, rule, self.afterwards, self.today)
        return tuple(self.due_line(duty, rule.key, at.on) for duty in duties)

    def _exceedance(self, at: LeakRateAt, following: date | None) -> Exceedance:
        entries = tuple(sorted({*at.entries, *at.rolling_entries}))
        shut = any(at.on <= day < (following or date.max) for day in self.past.shutdowns)
        return Exceedance(at.on, entries, shutdown=shut, next_addition=following)

    def _returning(self, rule: Regulation, computed: Sequence[LeakRateAt]) -> Iterator[DueLine]:
        """Inspections after the newest exceedance, and reports of each year."""
        over = [one for one in computed if one.over]
        row = leak_rate.inspection(
            rule, category=self.row.text("category"), full_charge=self.charge
        )
        if self.row.yes("leak_detection"):
            yield from self.detection_checks(rule.detection_check, rule.key)
        elif over and row is not None:
            exceedance = self._exceedance(over[-1], None)
            for duty in leak_rate.inspection_duties(exceedance, row, rule, self.afterwards):
                yield self.due_line(duty, rule.key)
        begun = rule.applies_from.value
        counted = [one for one in self.events if not one.not_counted and one.on >= begun]
        for year in sorted({one.on.year for one in counted}):
            entries = tuple(n for one in counted if one.on.year == year for n in one.entries)
            chronic = leak_rate.chronic(counted, self.charge, year, rule)
            report = leak_rate.report_duty(chronic, year, rule, self.past.papers, entries)
            if report is not None:
                yield self.due_line(report, rule.key)

    def detection_checks(self, every: Figure | None, regulation: str) -> Iterator[DueLine]:
        """The next check of a detection system that stands in for inspections, or is owed."""
        since = self.row.date("detection_checked") or self.row.date("installed")
        if every is not None and since is not None and self.row.date("retired") is None:
            for duty in periodic(DETECTION_CHECK, since, every, ()):
                yield self.due_line(duty, regulation)

    def due_line(self, duty: Duty, regulation: str, of: date | None = None) -> DueLine:
        """A duty as a row."""
        rule = duty.rule
        return DueLine(
            on=duty.due,
            what=duty.what,
            about=f"equipment:{self.id}",
            name=self.row.text("name"),
            state=duty.state(self.today),
            figure=rule.text,
            source=f"{rule.source}, {rule.place}",
            mark=rule.mark,
            start=duty.start,
            entries=duty.entries,
            extended_to=duty.extended_to,
            done_on=duty.done_on,
            ended_by=duty.ended_by,
            how=duty.how,
            regulation=regulation,
            of=of,
        )


def _deciding(chosen: str, annualizing: Quantity | None, rolling: Quantity) -> tuple[str, Quantity]:
    """The rate that counts, and by which method: the site's, or the higher while it chose none."""
    if annualizing is None:
        return "rolling average", rolling
    if chosen:
        return chosen, annualizing if chosen == "annualizing" else rolling
    if annualizing >= rolling:
        return "annualizing, the higher", annualizing
    return "rolling average, the higher", rolling
