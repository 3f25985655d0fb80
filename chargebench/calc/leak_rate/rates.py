"""Leak rates by the annualizing and the rolling average method."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from chargebench.calc.dates import after
from chargebench.errors import ChargebenchError
from chargebench.rules import Figure, Regulation
from chargebench.units import Q, Quantity, dimensions

YEAR_DAYS = 365  # 40CFR82F, 82.152: both leak-rate methods are defined over 365 days


@dataclass(frozen=True, slots=True)
class Addition:
    """Refrigerant added to an appliance."""

    on: date
    mass: Quantity
    not_counted: str = ""  # "retrofit", "new installation", "seasonal variance": outside the rate
    entries: tuple[int, ...] = ()  # numbers of the entries it is the sum of


@dimensions(added="[mass]", full_charge="[mass]")
def annualizing(added: Quantity, full_charge: Quantity, days: int) -> Quantity:
    """Leak rate by the annualizing method.

    Parameters
    ----------
    added : Quantity [kg]
        Mass that brought the appliance back to full charge; several additions for one leak summed.
    full_charge : Quantity [kg]
        Full charge of the appliance.
    days : int [d]
        Days since refrigerant was last added; 1 or more.

    Returns
    -------
    Quantity [percent]
        Share of the full charge that a year would lose.

    Raises
    ------
    ChargebenchError
        No full charge, or additions of the same day, for which the rule gives no rate.

    Notes
    -----
    100 (added / full charge) / (min(days, 365) / 365)

    Source
    ------
    40CFR82F, 82.152 (leak rate, annualizing method).
    """
    if days < 1:
        raise ChargebenchError(
            "Expected at least one day since the last addition; additions of the same day for "
            "one leak are summed first."
        )
    rate: Quantity = share_of_charge(added, full_charge) * YEAR_DAYS / min(days, YEAR_DAYS)
    return rate


@dimensions(part="[mass]", full_charge="[mass]")
def share_of_charge(part: Quantity, full_charge: Quantity) -> Quantity:
    """Mass as a share of the full charge.

    Parameters
    ----------
    part : Quantity [kg]
        Mass added or lost.
    full_charge : Quantity [kg]
        Full charge of the appliance.

    Returns
    -------
    Quantity [percent]
        Reckoned in the unit of the full charge, so that pounds of pounds stay exact.

    Raises
    ------
    ChargebenchError
        No full charge.

    Source
    ------
    40CFR82F, 82.152 (leak rate).
    """
    whole = full_charge.magnitude
    if not whole > 0:
        raise ChargebenchError("Expected a full charge above zero to reckon a leak rate.")
    return Q(100 * part.m_as(full_charge.units) / whole, "percent")


@dimensions(full_charge="[mass]")
def rolling(
    additions: Sequence[Addition],
    full_charge: Quantity,
    on: date,
    *,
    last_good_follow_up: date | None = None,
    counted_from: date | None = None,
) -> Quantity:
    """Leak rate by the rolling average method.

    Parameters
    ----------
    additions : sequence of Addition
        Every addition on record.
    full_charge : Quantity [kg]
        Full charge of the appliance.
    on : date
        Day of the computation, itself included.
    last_good_follow_up : date, optional
        Follow-up test that showed every leak repaired; only what was added after it counts.
    counted_from : date, optional
        First day that counts at all, such as the day a regulation began.

    Returns
    -------
    Quantity [percent]
        Share of the full charge added within 365 days.

    Raises
    ------
    ChargebenchError
        No full charge.

    Notes
    -----
    100 (sum of additions of the last 365 days) / full charge. An addition exactly 365 days ago
    counts.

    Source
    ------
    40CFR82F, 82.152 (leak rate, rolling average method); 82.157(b) for what is not counted.
    """
    start = rolling_start(on, last_good_follow_up=last_good_follow_up, counted_from=counted_from)
    counted = (one.mass for one in additions if start <= one.on <= on and not one.not_counted)
    total: Quantity = sum(counted, Q(0.0, full_charge.units))
    return share_of_charge(total, full_charge)


def rolling_start(
    on: date, *, last_good_follow_up: date | None = None, counted_from: date | None = None
) -> date:
    """First day whose additions count in the rolling average of a day.

    Parameters
    ----------
    on : date
        Day of the computation.
    last_good_follow_up : date, optional
        Follow-up test that showed every leak repaired; the count begins the day after.
    counted_from : date, optional
        First day that counts at all.

    Returns
    -------
    date
        At most 365 days back.

    Source
    ------
    40CFR82F, 82.152 (leak rate, rolling average method).
    """
    start = on - timedelta(days=YEAR_DAYS)
    if counted_from is not None:
        start = max(start, counted_from)
    if last_good_follow_up is not None:
        start = max(start, last_good_follow_up + timedelta(days=1))
    return start


def merged(additions: Sequence[Addition], window: Figure) -> tuple[Addition, ...]:
    """Additions with those of one leak event summed into one.

    Parameters
    ----------
    additions : sequence of Addition
        In any order.
    window : Figure [day]
        Additions this many days or fewer after the first of an event belong to it.

    Returns
    -------
    tuple of Addition
        By day; each event on the day of its first addition. What is not counted stays apart.

    Source
    ------
    CHARGEBENCH, 40CFR82F 82.152 sums the additions of one leak and names no window.
    """
    events: list[Addition] = []
    for one in sorted(additions, key=lambda addition: addition.on):
        for place, event in enumerate(events):
            if one.not_counted == event.not_counted and one.on <= after(event.on, window):
                entries = (*event.entries, *one.entries)
                events[place] = replace(event, mass=event.mass + one.mass, entries=entries)
                break
        else:
            events.append(one)
    return tuple(events)


def days_since_last(additions: Sequence[Addition], on: date, regulation: Regulation) -> int | None:
    """Days to put into the annualizing formula for an addition of a day.

    Parameters
    ----------
    additions : sequence of Addition
        Additions on record; those on or after the day are passed over.
    on : date
        Day of the addition that is annualized.
    regulation : Regulation
        A regulation that began later than the records names the days of its first computation.

    Returns
    -------
    int or None [d]
        None where no earlier addition is known and the regulation names no figure.

    Source
    ------
    40CFR82F, 82.152; 40CFR84.106, first computation with 365 days.
    """
    first = regulation.first_days
    since = regulation.applies_from.value if first is not None else date.min
    earlier = [one.on for one in additions if since <= one.on < on]
    if earlier:
        return (on - max(earlier)).days
    return int(first.value) if first is not None else None
