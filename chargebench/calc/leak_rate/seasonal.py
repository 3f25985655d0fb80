"""Seasonal variance: refrigerant taken out for a season and put back is no leak."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

from chargebench.calc.compare import above
from chargebench.calc.dates import after
from chargebench.calc.leak_rate.rates import Addition
from chargebench.rules import Figure
from chargebench.units import Q, Quantity, dimensions

SEASONAL = "seasonal variance"
_HALF_A_MILLIGRAM = Q(0.5, "mg")  # a ledger has whole ones; less is what floats leave over


@dataclass(frozen=True, slots=True)
class Removal:
    """Refrigerant taken out for a season."""

    on: date
    mass: Quantity
    entry: int = 0


@dimensions(removed="[mass]", added_back="[mass]")
def beyond_seasonal_variance(*, removed: Quantity, added_back: Quantity) -> Quantity:
    """What was added back beyond a seasonal removal and so counts in the leak rate.

    Parameters
    ----------
    removed : Quantity [kg]
        Mass taken out for the season.
    added_back : Quantity [kg]
        Mass put back within the same twelve months.

    Returns
    -------
    Quantity [kg]
        Zero where no more was put back than was removed.

    Source
    ------
    40CFR82F, 82.152 (seasonal variance).
    """
    return Q(max(0.0, added_back.m_as("kg") - removed.m_as("kg")), "kg")


def without_seasonal(
    additions: Sequence[Addition], removals: Sequence[Removal], within: Figure
) -> tuple[Addition, ...]:
    """Additions in which what was put back beyond a seasonal removal counts as any other.

    Parameters
    ----------
    additions : sequence of Addition
        In any order.
    removals : sequence of Removal
        Taken out for a season; each mass is put back once.
    within : Figure [day, month or year]
        Span from removal within which it may be put back.

    Returns
    -------
    tuple of Addition
        By day. One called seasonal without a removal on record before it counts whole.

    Source
    ------
    40CFR82F, 82.152 (seasonal variance).
    """
    left: list[tuple[date, Quantity]] = [
        (one.on, one.mass) for one in sorted(removals, key=lambda removal: removal.on)
    ]
    found: list[Addition] = []
    for one in sorted(additions, key=lambda addition: addition.on):
        if one.not_counted != SEASONAL:
            found.append(one)
            continue
        open_mass = one.mass
        for place, (removed_on, removed) in enumerate(left):
            if removed_on <= one.on <= after(removed_on, within):
                beyond = beyond_seasonal_variance(removed=removed, added_back=open_mass)
                left[place] = (removed_on, removed - (open_mass - beyond))
                open_mass = beyond
        seasonal = one.mass - open_mass
        if above(seasonal, _HALF_A_MILLIGRAM):
            found.append(replace(one, mass=seasonal))
        if above(open_mass, _HALF_A_MILLIGRAM):
            found.append(replace(one, mass=open_mass, not_counted=""))
    return tuple(found)
