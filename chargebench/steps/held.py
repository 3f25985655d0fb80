"""Readings of a standing pressure test, each against the first: what temperature leaves of them."""

from dataclasses import dataclass

from chargebench.calc.pressure_test import State
from chargebench.errors import ChargebenchError
from chargebench.steps.case import Case
from chargebench.steps.pressure_test import judged, state, state_of
from chargebench.units import Q


@dataclass(frozen=True, slots=True)
class Held:
    """One reading: as read, and less what the change of temperature explains."""

    minutes: float
    pascals: float  # as read, absolute
    corrected: float  # less what temperature explains
    doubt: float  # expanded, k = 2


def series(case: Case) -> tuple[Held, ...]:
    """The readings that have a temperature, from the first on; else start and end of the test."""
    found: list[Held] = []
    start = None
    for at, now in _states(case):
        start = start or now
        try:
            verdict = judged(case, start, now, None)
        except ChargebenchError:
            continue
        first = start.pressure.m_as("Pa")
        found.append(
            Held(
                at,
                float(now.pressure.m_as("Pa")),
                float(first - verdict.drop.m_as("Pa")),
                float(verdict.expanded_uncertainty.m_as("Pa")),
            )
        )
    return tuple(sorted(found, key=lambda held: held.minutes))


def _states(case: Case) -> list[tuple[float, State]]:
    """Minutes and the nitrogen of each reading."""
    answers = case.step("pressure_test")
    found = [
        (line.quantity("at"), state_of(case, line.reading("reading"), line.quantity("temperature")))
        for line in answers.lines("readings")
    ]
    if not found:
        found = [
            (Q(0, "min"), state(case, "start")),
            (answers.quantity("hold"), state(case, "end")),
        ]
    return [(float(at.m_as("min")), now) for at, now in found if at is not None and now is not None]
