"""What falls due and how leak rates stand, as plain data: each row names what it rests on."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from chargebench.rules import Figure

OPEN, OVERDUE, DONE = "open", "overdue", "done"


@dataclass(frozen=True, slots=True)
class DueLine:
    """Something owed by a day.

    `on` is `start` and the span of `figure`, or `extended_to` where more time was had. `entries`
    are what it was worked out from, `ended_by` what ended it.
    """

    on: date
    what: str
    about: str  # equipment:E-003, instrument:S-1, ...
    name: str
    state: str  # open, overdue, done
    figure: str = ""
    source: str = ""  # key of sources.py with the place in it; "register" for a date typed there
    mark: str = ""
    start: date | None = None
    entries: tuple[int, ...] = ()
    extended_to: date | None = None
    done_on: date | None = None
    ended_by: tuple[int, ...] = ()
    how: str = ""
    regulation: str = ""
    of: date | None = None  # the exceedance it belongs to; stays when its start moves

    @property
    def key(self) -> str:
        """What stays the same when the day moves: the thing owed, and what set it in motion."""
        return f"{self.about}|{self.regulation}|{self.what}|{self.of or self.start or ''}"


@dataclass(frozen=True, slots=True)
class LeakRateAt:
    """One computation: the leak rate of an addition, and all it was worked out from."""

    on: date
    entries: tuple[int, ...]  # of the addition
    added_mg: int
    days: int | None  # since the last addition
    annualizing_pct: float | None
    rolling_from: date
    rolling_mg: int
    rolling_entries: tuple[int, ...]
    rolling_pct: float
    method: str
    rate_pct: float  # by the method that counts
    over: bool
    duties: tuple[DueLine, ...] = ()


@dataclass(frozen=True, slots=True)
class LeakRateLine:
    """An equipment's leak rate against its threshold."""

    equipment_id: str
    name: str
    refrigerant: str
    full_charge_mg: int
    annualizing_pct: float | None
    rolling_pct: float | None
    threshold_pct: float | None
    regulation: str
    over: bool
    added_on: date | None = None
    due: tuple[tuple[str, date], ...] = ()  # what still stands, by day
    additions: tuple[tuple[date, int], ...] = ()
    method: str = ""
    rate_pct: float | None = None
    co2e_t: float | None = None  # where leak checks hang on it
    threshold_source: str = ""
    threshold_mark: str = ""
    lacks_detection: Figure | None = None  # from which a detection system must be fitted
    computed: tuple[LeakRateAt, ...] = ()
    duties: tuple[DueLine, ...] = ()  # those of no single addition

    @property
    def waiting(self) -> tuple[DueLine, ...]:
        """What additions over the threshold set off and nothing has ended."""
        return tuple(each for one in self.computed for each in one.duties if each.state != DONE)


@dataclass(frozen=True, slots=True)
class RetentionLine:
    """A record and the day until which it is kept."""

    what: str
    about: str  # job:B-0003, equipment:E-005
    name: str
    ended_on: date | None  # closed, or retired; None while it goes on
    figure: str
    source: str
    mark: str
    keep_until: date | None
    may_be_archived: bool


def standing(duties: Iterable[DueLine]) -> tuple[tuple[str, date], ...]:
    """What still stands, by day."""
    waiting = sorted((each for each in duties if each.state != DONE), key=lambda each: each.on)
    return tuple((each.what, each.on) for each in waiting)
