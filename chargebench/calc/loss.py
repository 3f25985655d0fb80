"""Missing charge: how fast it went if it leaked, who could have seen that, when it runs short."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from chargebench.calc.scale import COVERAGE
from chargebench.errors import OutsideDomain
from chargebench.units import YEARLY, Q, Quantity, System, digits, dimensions
from chargebench.words import joined, say

_STEADY_SEEN = (
    ", but {would} would have seen a steady one of this size: look for one that opens only "
    "running, hot or cold"
)
SHARES_SHORT = (10, 20)  # per cent; design choice, not a standard
_DAYS_A_YEAR = 365.25
MORE_REASON = "it was overcharged, or something else than this refrigerant came with it."


class MissingWord(StrEnum):
    """How recovered and nameplate compare."""

    MISSING = "missing"
    NONE = "nothing missing within the doubt"
    MORE = "more than the nameplate"


class SeenWord(StrEnum):
    """Whether a search that found nothing could have found the loss."""

    WOULD = "would have seen it"
    COULD_NOT = "could not have seen it"
    DOUBTFUL = "may have seen it or not"


@dataclass(frozen=True, slots=True)
class AverageLoss:
    """Missing mass, and the average loss since the equipment was last known full."""

    word: MissingWord
    missing: Quantity  # g
    missing_uncertainty: Quantity  # g, k = 2
    days: int
    rate: Quantity | None  # g/year; None without time between
    rate_uncertainty: Quantity | None  # g/year, k = 2


@dataclass(frozen=True, slots=True)
class Search:
    """A search that found nothing, with the range of the smallest loss it sees."""

    name: str
    smallest: Quantity | None  # mass / time; None: not known
    smallest_upper: Quantity | None = None  # where only an order of magnitude is known
    void: str = ""  # why the search does not count, as "detector failed its check after"


@dataclass(frozen=True, slots=True)
class Seen:
    """Whether one search could have seen the loss, and why."""

    search: str
    word: SeenWord
    reason: str


@dataclass(frozen=True, slots=True)
class ShortDate:
    """When the charge will be short by a share if the loss goes on; None where it will not."""

    share: int  # per cent of the nameplate
    expected: date | None
    earliest: date | None  # at the upper end of the rate's doubt


@dimensions(
    nameplate="[mass]",
    recovered="[mass]",
    uncertainty="[mass]",
    left_behind="[mass]",
)
def average_loss(
    *,
    nameplate: Quantity,
    recovered: Quantity,
    uncertainty: Quantity,
    last_full: date,
    on: date,
    left_behind: Quantity | None = None,
) -> AverageLoss:
    """Average loss since the equipment was last known full.

    Parameters
    ----------
    nameplate, recovered : Quantity [g]
        What it should hold, and what came out.
    uncertainty : Quantity [g]
        Standard uncertainty of recovered and nameplate together (k = 1).
    last_full : date [-]
        Last day on which the charge was known to be full; a guess makes the rate a guess.
    on : date [-]
        Day of the recovery.
    left_behind : Quantity [g] or None
        Most that recovery may have left in oil and vapour; between nothing and this is taken as
        equally likely.

    Returns
    -------
    AverageLoss [g, g/year]
        Missing mass and rate with k = 2. Missing only where it is more than its uncertainty.

    Raises
    ------
    OutsideDomain
        Recovered before it was last full.

    Notes
    -----
    missing = nameplate - recovered - left_behind / 2, u**2 = uncertainty**2 + left_behind**2 / 12.
    Missing mass is no proof of a leak: it may never have been charged right.

    Source
    ------
    JCGM100, 4.3.7 and 5.1.2.
    """
    days = (on - last_full).days
    if days < 0:
        told = "Expected the day it was last full, {last}, not to be after {on}."
        raise OutsideDomain(say(told, last=str(last_full), on=str(on)))
    behind = left_behind.m_as("g") if left_behind is not None else 0.0
    missing = nameplate.m_as("g") - recovered.m_as("g") - behind / 2
    doubt = COVERAGE * math.hypot(uncertainty.m_as("g"), behind / math.sqrt(12))
    word = MissingWord.NONE
    if abs(missing) > doubt:
        word = MissingWord.MISSING if missing > 0 else MissingWord.MORE
    rate = rate_doubt = None
    if days > 0:
        rate = Q(missing / days * _DAYS_A_YEAR, "g / year")
        rate_doubt = Q(doubt / days * _DAYS_A_YEAR, "g / year")
    return AverageLoss(word, Q(missing, "g"), Q(doubt, "g"), days, rate, rate_doubt)


def could_have_seen(
    loss: AverageLoss, searches: Sequence[Search], system: System = "SI"
) -> tuple[Seen, ...]:
    """Whether each search that found nothing could have found the loss.

    Parameters
    ----------
    loss : AverageLoss [g/year]
        Of which the rate and its uncertainty are used.
    searches : sequence of Search [g/year]
        With the smallest loss each sees, as refrigerant.
    system : System [-]
        Units the reasons speak in.

    Returns
    -------
    tuple of Seen [-]
        In the order of the searches; doubtful wherever the ranges of loss and search overlap.

    Notes
    -----
    An average says nothing of a leak that opened late, or only while running, hot or vibrating.

    Source
    ------
    COMMON (comparison of ranges).
    """
    return tuple(Seen(search.name, *_seen(loss, search, system)) for search in searches)


def _seen(loss: AverageLoss, search: Search, system: System) -> tuple[SeenWord, str]:
    if search.void:
        return SeenWord.COULD_NOT, say("The search does not count: {void}.", void=search.void)
    if loss.rate is None or loss.rate_uncertainty is None:
        return SeenWord.DOUBTFUL, "There is no time span to reckon a loss over."
    if search.smallest is None:
        return SeenWord.DOUBTFUL, "What the search can see is not known."
    unit, label = YEARLY[system]
    rate, doubt = loss.rate.m_as(unit), loss.rate_uncertainty.m_as(unit)
    limits = [
        limit.m_as(unit) for limit in (search.smallest, search.smallest_upper) if limit is not None
    ]
    sees: str = digits(min(limits), 3)
    if max(limits) > min(limits):
        sees = say("{least} to {most}", least=sees, most=digits(max(limits), 3))
    lost = say("{rate} ± {doubt}", rate=digits(rate, 3), doubt=digits(doubt, 2))
    sees_from = "it sees from {sees} {label}; the loss is {lost} {label}."
    figures = say(sees_from, sees=sees, lost=lost, label=label)
    if rate - doubt >= max(limits):
        return SeenWord.WOULD, say("A steady leak was large enough: {figures}", figures=figures)
    if rate + doubt < min(limits):
        return SeenWord.COULD_NOT, say("Too small for it: {figures}", figures=figures)
    return SeenWord.DOUBTFUL, say("Near its limit: {figures}", figures=figures)


def explanations(loss: AverageLoss, seen: Sequence[Seen]) -> tuple[str, ...]:
    """Honest answer to "a leak, or never charged right?": what stays possible, in sentences.

    Parameters
    ----------
    loss : AverageLoss [g, g/year]
        As computed.
    seen : sequence of Seen [-]
        What each search without a find could have seen.

    Returns
    -------
    tuple of str [-]
        One sentence for each explanation left; none is ever called proven.

    Source
    ------
    COMMON.
    """
    if loss.word is MissingWord.NONE:
        return (
            "Nothing is missing that the scale could tell; neither a leak nor tightness shows.",
        )
    if loss.word is MissingWord.MORE:
        return (say("More came out than the nameplate holds: {reason}", reason=MORE_REASON),)
    would = [each.search for each in seen if each.word is SeenWord.WOULD]
    leak = "A leak is possible"
    if would:
        leak += say(_STEADY_SEEN, would=joined(" and ", would))
    elif seen:
        leak += "; no search made so far could rule it out"
    else:
        leak += "; it has not been searched for"
    return (
        f"{leak}.",
        "It may never have been charged right: a short weigh-in leaves the same figure.",
        "It may have gone with hose connections: each takes what the hose holds.",
    )


@dimensions(
    content="[mass]", nameplate="[mass]", rate="[mass] / [time]", rate_uncertainty="[mass] / [time]"
)
def short_dates(
    *,
    content: Quantity,
    nameplate: Quantity,
    rate: Quantity,
    rate_uncertainty: Quantity,
    on: date,
) -> tuple[ShortDate, ...]:
    """When the charge will be 10 % and 20 % short if the loss goes on.

    Parameters
    ----------
    content, nameplate : Quantity [g]
        What is in the equipment on that day, and what should be.
    rate, rate_uncertainty : Quantity [g/year]
        Average loss and its expanded uncertainty.
    on : date [-]
        Day of the content.

    Returns
    -------
    tuple of ShortDate [-]
        For 10 % and 20 %; `on` itself where it is short already, None where it never will be.

    Raises
    ------
    OutsideDomain
        A nameplate charge that is not above zero.

    Notes
    -----
    Linear in time. A real leak slows as the pressure falls and does not keep to a date.

    Source
    ------
    COMMON (extrapolation).
    """
    full, inside = nameplate.m_as("g"), content.m_as("g")
    if full <= 0:
        raise OutsideDomain("Expected a nameplate charge above zero.")
    mean = rate.m_as("g/year")
    fast = mean + abs(rate_uncertainty.m_as("g/year"))
    found = []
    for share in SHARES_SHORT:
        spare = inside - full * (1 - share / 100)
        found.append(ShortDate(share, _after(on, spare, mean), _after(on, spare, fast)))
    return tuple(found)


def _after(on: date, spare_g: float, grams_a_year: float) -> date | None:
    if spare_g <= 0:
        return on
    if grams_a_year <= 0:
        return None
    days = spare_g / grams_a_year * _DAYS_A_YEAR
    return on + timedelta(days=math.floor(days)) if days < (date.max - on).days else None
