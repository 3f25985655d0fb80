"""The doubt in a mass taken as the difference of scale readings, line by line."""

import math
from collections.abc import Sequence
from dataclasses import dataclass

from chargebench.units import Q, Quantity, dimensions
from chargebench.words import say

COVERAGE = 2  # k = 2, about 95 % (JCGM100, 6.3.3)


@dataclass(frozen=True, slots=True)
class BudgetLine:
    """One source of doubt: its standard uncertainty and how it was come by."""

    name: str
    standard_uncertainty: Quantity
    how: str


@dataclass(frozen=True, slots=True)
class Budget:
    """All sources of doubt of one charge, combined, and expanded with k = 2."""

    lines: tuple[BudgetLine, ...]
    combined: Quantity
    expanded: Quantity


@dimensions(resolution="[mass]", repeatability="[mass]")
def net_uncertainty(*, resolution: Quantity, repeatability: Quantity) -> Quantity:
    """Standard uncertainty of a net mass taken as the difference of two scale readings.

    Parameters
    ----------
    resolution : Quantity [g]
        Smallest step the display shows.
    repeatability : Quantity [g]
        Standard deviation of one reading from the scale's certificate; zero if unknown.

    Returns
    -------
    Quantity [g]
        Standard uncertainty (k = 1). A constant offset cancels in the difference.

    Notes
    -----
    u**2 = 2 (d**2 / 12 + s**2)

    Source
    ------
    JCGM100, 4.3.7 (rectangular distribution).
    """
    step, spread = resolution.m_as("g"), repeatability.m_as("g")
    return Q(math.hypot(step / math.sqrt(12), spread) * math.sqrt(2), "g")


@dimensions(
    resolution="[mass]", repeatability="[mass]", gain="[]", net="[mass]", hose_half_width="[mass]"
)
def charge_budget(
    *,
    resolution: Quantity,
    repeatability: Quantity,
    gain: Quantity,
    net: Quantity,
    hose_half_width: Quantity,
    lines: int = 1,
) -> Budget:
    """Uncertainty budget of a charge weighed in from one or several cylinders.

    Parameters
    ----------
    resolution : Quantity [g]
        Smallest step the display shows.
    repeatability : Quantity [g]
        Standard deviation of one reading; zero if unknown.
    gain : Quantity [percent]
        Largest error of the scale in proportion to the mass.
    net : Quantity [g]
        Sum of the net masses.
    hose_half_width : Quantity [g]
        Half of the range the hose content may lie in, over all lines.
    lines : int
        Number of net masses, two readings each.

    Returns
    -------
    Budget [g]
        The lines, combined (k = 1) and expanded (k = 2).

    Notes
    -----
    u**2 = n 2 (d**2 / 12 + s**2) + (gain net)**2 / 3 + hose**2 / 3. Gain and hose content err the
    same way in every line of one charge, so they are added before they are squared.

    Source
    ------
    JCGM100, 4.3.7 and 5.1.2.
    """
    assert lines >= 1, "a charge has at least one line"
    step = net_uncertainty(resolution=resolution, repeatability=Q(0, "g")) * math.sqrt(lines)
    spread = Q(abs(repeatability.m_as("g")) * math.sqrt(2 * lines), "g")
    off = Q(abs(gain.m_as("") * net.m_as("g")) / math.sqrt(3), "g")
    hose = Q(abs(hose_half_width.m_as("g")) / math.sqrt(3), "g")
    budget = (
        BudgetLine(
            "resolution", step, say("{lines} readings, each within half a step", lines=2 * lines)
        ),
        BudgetLine(
            "repeatability", spread, say("{lines} readings, by the certificate", lines=2 * lines)
        ),
        BudgetLine("gain", off, "largest error in proportion to the mass"),
        BudgetLine("hose content", hose, "within the half-width given"),
    )
    combined = math.hypot(*(line.standard_uncertainty.m_as("g") for line in budget))
    return Budget(budget, Q(combined, "g"), Q(COVERAGE * combined, "g"))


def ledger_uncertainty(standard_uncertainties: Sequence[Quantity]) -> Quantity:
    """Expanded uncertainty of what the ledger says a cylinder holds.

    Parameters
    ----------
    standard_uncertainties : Sequence[Quantity] [g]
        Of each mass put in or taken out since the ledger was last set to the scale (k = 1), and
        of that weighing.

    Returns
    -------
    Quantity [g]
        Expanded with k = 2.

    Notes
    -----
    U = 2 sqrt(sum u**2); the movements were weighed apart from each other.

    Source
    ------
    JCGM100, 5.1.2 and 6.2.1.
    """
    return Q(COVERAGE * math.hypot(*(u.m_as("g") for u in standard_uncertainties)), "g")


@dimensions(scale="[mass]", ledger="[mass]")
def explained_difference(*, scale: Quantity, ledger: Quantity) -> Quantity:
    """Difference between scale and ledger that the doubts of both can explain.

    Parameters
    ----------
    scale : Quantity [g]
        What the weighing may be off by.
    ledger : Quantity [g]
        Expanded uncertainty of what the ledger says (k = 2).

    Returns
    -------
    Quantity [g]
        Both together, as they err apart from each other.

    Source
    ------
    JCGM100, 5.1.2.
    """
    return Q(math.hypot(scale.m_as("g"), ledger.m_as("g")), "g")
