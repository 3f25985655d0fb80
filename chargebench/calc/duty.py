"""A duty with its clock: from which day it runs, by which figure, until when, and what ended it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from chargebench.calc.dates import after
from chargebench.rules import Figure
from chargebench.rules.figure import Words


class State(StrEnum):
    """How a duty stands on a day."""

    OPEN = "open"
    OVERDUE = "overdue"
    DONE = "done"


@dataclass(frozen=True, slots=True)
class Done:
    """What was recorded on a day, by the number of its entry."""

    on: date
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Duty:
    """Something owed by a day.

    `due` is `start` and the span of `rule`, or `extended_to` where that was granted. `entries`
    are those it was worked out from, `ended_by` those that ended it.
    """

    what: str
    due: date
    start: date
    rule: Figure | Words
    entries: tuple[int, ...] = ()
    extended_to: date | None = None
    done_on: date | None = None
    ended_by: tuple[int, ...] = ()
    how: str = ""  # how it ended, or why it was extended

    def state(self, today: date) -> State:
        """Done, open, or overdue from the day after it was due."""
        if self.done_on is not None:
            return State.DONE
        return State.OVERDUE if today > self.due else State.OPEN

    def ended(self, on: date, how: str, *entries: int) -> "Duty":
        """The duty as ended on a day by recorded entries."""
        return replace(self, done_on=on, how=how, ended_by=tuple(each for each in entries if each))


def periodic(
    what: str,
    start: date,
    every: Figure,
    done: Sequence[Done],
    *,
    entries: tuple[int, ...] = (),
    until: date | None = None,
) -> tuple[Duty, ...]:
    """A duty that returns: each time it was done, and the next.

    Parameters
    ----------
    what : str
        What is owed.
    start : date
        Day from which the first span runs.
    every : Figure [day, month or year]
        The span.
    done : sequence of Done
        When it was done; what lies on or before the start is passed over.
    entries : tuple of int
        Entries the first span was worked out from; each later one from the entry before it.
    until : date, optional
        Day after which nothing further is owed.

    Returns
    -------
    tuple of Duty
        By day. What was done early counts, and the next span runs from it.

    Source
    ------
    COMMON, a period runs from the last time the duty was done.
    """
    found: list[Duty] = []
    owed = Duty(what, after(start, every), start, every, entries)
    for one in sorted(done, key=lambda each: each.on):
        if until is not None and owed.due > until:
            break
        if one.on > owed.start:
            found.append(owed.ended(one.on, "done", one.entry))
            entries = (one.entry,) if one.entry else ()
            owed = Duty(what, after(one.on, every), one.on, every, entries)
    if until is None or owed.due <= until:
        found.append(owed)
    return tuple(found)
