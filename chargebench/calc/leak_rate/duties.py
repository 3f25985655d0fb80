"""Which leak repair regulation binds a circuit, its thresholds and its clocks."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from chargebench.calc.compare import above, at_least
from chargebench.calc.dates import after
from chargebench.calc.leak_rate.rates import Addition, share_of_charge
from chargebench.rules import Figure, Inspection, LeakRate, Regulation
from chargebench.units import Q, Quantity, dimensions


@dataclass(frozen=True, slots=True)
class Circuit:
    """What the leak repair rules see in one refrigerant circuit."""

    full_charge: Quantity
    category: str
    ozone_depleting: bool  # contains a class I or II substance
    hfc: bool  # contains a regulated substance (HFC)
    solely_ozone_depleting: bool
    gwp: float
    excluded_subsector: bool = False


@dataclass(frozen=True, slots=True)
class DueDates:
    """Latest days after an appliance went over its threshold."""

    repair: date
    initial_test: date
    follow_up: date
    plan: date
    plan_finish: date
    extension_cap: date


@dataclass(frozen=True, slots=True)
class Chronic:
    """Share of the full charge lost in a calendar year."""

    share: Quantity
    is_chronic: bool
    report_due: date | None
    reached_on: date | None = None


def over_threshold(rate: Quantity, threshold: Figure) -> bool:
    """Whether a leak rate is over its threshold; at the threshold it is not.

    Parameters
    ----------
    rate : Quantity [percent]
        Leak rate.
    threshold : Figure [percent]
        Threshold of the regulation for the category.

    Returns
    -------
    bool
        Strictly above.

    Source
    ------
    40CFR82F, 82.157(c); 40CFR84.106, (c).
    """
    return above(rate, threshold.quantity)


def threshold(regulation: Regulation, category: str) -> Figure:
    """Threshold of a regulation for a category of equipment.

    Parameters
    ----------
    regulation : Regulation
        One of the rule set's.
    category : str
        Category as in the equipment register.

    Returns
    -------
    Figure [percent]
        The category's, or that of all others.

    Source
    ------
    40CFR82F, 82.157(c); 40CFR84.106, (c).
    """
    return regulation.thresholds.get(category, regulation.thresholds["other"])


def applies(circuit: Circuit, rule: LeakRate | None, on: date) -> tuple[Regulation, ...]:
    """Leak repair regulations that bind a circuit on a day.

    Parameters
    ----------
    circuit : Circuit
        Charge, category and refrigerant of the circuit.
    rule : LeakRate or None
        The rule set's regulations; None where the jurisdiction has none.
    on : date
        The day asked about.

    Returns
    -------
    tuple of Regulation
        None, one or both: a blend of HCFC and HFC of 50 lb comes under both.

    Source
    ------
    40CFR82F, 82.157(a); 40CFR84.106, (a).
    """
    regulations = rule.regulations if rule is not None else ()
    return tuple(one for one in regulations if _binds(one, circuit, on))


def _binds(regulation: Regulation, circuit: Circuit, on: date) -> bool:
    if on < regulation.applies_from.value:
        return False
    if not at_least(circuit.full_charge, regulation.charge_from.quantity):
        return False
    if regulation.scope == "ozone-depleting":
        return circuit.ozone_depleting
    assert regulation.gwp_above is not None, regulation.key
    in_scope = circuit.hfc or circuit.gwp > float(regulation.gwp_above.value)
    return in_scope and not circuit.solely_ozone_depleting and not circuit.excluded_subsector


def due_dates(
    exceeded_on: date,
    rule: Regulation,
    *,
    shutdown: bool = False,
    initial_test_on: date | None = None,
) -> DueDates:
    """Latest days for repair, tests and plan after a threshold was exceeded.

    Parameters
    ----------
    exceeded_on : date
        Day refrigerant was added to the appliance that is over its threshold.
    rule : Regulation
        The regulation that binds it.
    shutdown : bool
        Whether the repair needs an industrial process shutdown.
    initial_test_on : date, optional
        Day of the good initial verification test; without it the follow-up is reckoned from the
        last day for that test.

    Returns
    -------
    DueDates
        The initial test is due with the repair, before refrigerant goes back in.

    Source
    ------
    40CFR82F, 82.157(d) to (h); 40CFR84.106, (d) to (h).
    """
    repair = after(exceeded_on, rule.repair_shutdown if shutdown else rule.repair)
    cap = rule.extension_cap_shutdown if shutdown else rule.extension_cap
    plan = after(exceeded_on, rule.plan)
    return DueDates(
        repair=repair,
        initial_test=repair,
        follow_up=after(initial_test_on or repair, rule.follow_up),
        plan=plan,
        plan_finish=after(plan, rule.plan_finish),
        extension_cap=after(exceeded_on, cap),
    )


@dimensions(full_charge="[mass]")
def inspection(
    regulation: Regulation, *, category: str, full_charge: Quantity
) -> Inspection | None:
    """Leak inspections owed by an appliance that went over its threshold.

    Parameters
    ----------
    regulation : Regulation
        The regulation that binds it.
    category : str
        Category as in the equipment register.
    full_charge : Quantity [kg]
        Full charge.

    Returns
    -------
    Inspection or None
        The row of the largest charge reached.

    Source
    ------
    40CFR82F, 82.157(g); 40CFR84.106, (g).
    """
    rows = [
        row
        for row in regulation.inspections
        if (not row.categories or category in row.categories)
        and at_least(full_charge, row.charge_from.quantity)
    ]
    return max(rows, key=lambda row: row.charge_from.quantity.m_as("kg"), default=None)


@dimensions(full_charge="[mass]")
def chronic(
    additions: Sequence[Addition], full_charge: Quantity, year: int, rule: Regulation
) -> Chronic:
    """Whether an appliance is a chronic leaker of a calendar year, and when its report is due.

    Parameters
    ----------
    additions : sequence of Addition
        Every addition on record.
    full_charge : Quantity [kg]
        Full charge.
    year : int
        Calendar year.
    rule : Regulation
        The regulation that binds the appliance.

    Returns
    -------
    Chronic
        Share [percent], whether it reaches the limit, and the day of the report if it does.

    Raises
    ------
    ChargebenchError
        No full charge.

    Source
    ------
    40CFR82F, 82.157(j); 40CFR84.106, (j).
    """
    total, reached_on = Q(0.0, full_charge.units), None
    counted = [one for one in additions if one.on.year == year and not one.not_counted]
    for one in sorted(counted, key=lambda addition: addition.on):
        total = total + one.mass
        if reached_on is None and at_least(
            share_of_charge(total, full_charge), rule.chronic_share.quantity
        ):
            reached_on = one.on
    share = share_of_charge(total, full_charge)
    reached = reached_on is not None
    due = date.fromisoformat(f"{year + 1}-{rule.chronic_report_by.value}") if reached else None
    return Chronic(share, reached, due, reached_on)
