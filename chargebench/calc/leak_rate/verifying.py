"""What shops record after a repair, and how far it proves that the leaks are closed."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby

INITIAL, FOLLOW_UP = "initial", "follow-up"
PLAN, PLAN_DONE = "retrofit or retirement plan", "plan carried out"
CHRONIC_REPORT = "chronic leaker report"


@dataclass(frozen=True, slots=True)
class VerificationTest:
    """A test of a repaired leak: initial before refrigerant goes back in, or follow-up."""

    on: date
    kind: str
    tight: bool
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Extension:
    """More time for a repair, with the ground it was asked for."""

    asked: date
    until: date
    ground: str
    delivered: date | None = None  # of the parts that were waited for
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Paper:
    """A plan or a report that was made or sent on a day."""

    what: str
    on: date
    entry: int = 0


@dataclass(frozen=True, slots=True)
class Proof:
    """The tests that stand after a day; a test that found a leak sets them back to none."""

    initial: VerificationTest | None = None
    follow_up: VerificationTest | None = None


def proof(tests: Iterable[VerificationTest], exceeded_on: date) -> Proof:
    """The initial and the follow-up test that prove a repair.

    Parameters
    ----------
    tests : iterable of VerificationTest
        Every test on record, one for each repaired leak.
    exceeded_on : date
        Day the appliance went over its threshold; tests before it prove nothing about it.

    Returns
    -------
    Proof
        The first good initial test, and the first good follow-up test after it. The tests of one
        kind and day count together: one leak still open is not tight.

    Source
    ------
    40CFR82F, 82.157(e); 40CFR84.106, (e).
    """
    initial: VerificationTest | None = None
    for test in _by_day([each for each in tests if each.on >= exceeded_on]):
        if not test.tight:
            initial = None
        elif test.kind == FOLLOW_UP:
            return Proof(initial, test)
        else:
            initial = initial or test
    return Proof(initial)


def good_follow_ups(tests: Iterable[VerificationTest]) -> tuple[date, ...]:
    """Days of follow-up tests that showed every leak tested repaired.

    Parameters
    ----------
    tests : iterable of VerificationTest
        Every test on record.

    Returns
    -------
    tuple of date
        In order.

    Source
    ------
    40CFR82F, 82.152 (leak rate, rolling average method).
    """
    return tuple(test.on for test in _by_day(list(tests)) if test.tight and test.kind == FOLLOW_UP)


def _by_day(tests: Sequence[VerificationTest]) -> list[VerificationTest]:
    """One test for each day and kind: tight where all of them were."""

    def of(test: VerificationTest) -> tuple[date, bool]:
        return test.on, test.kind == FOLLOW_UP

    grouped = (list(group) for _, group in groupby(sorted(tests, key=of), key=of))
    return [
        VerificationTest(
            each[0].on, each[0].kind, all(one.tight for one in each), max(one.entry for one in each)
        )
        for each in grouped
    ]
