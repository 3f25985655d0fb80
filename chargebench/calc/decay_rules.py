"""Pass rules of standards and makers on a decay test, beside our own verdict; needs no numpy."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from chargebench.units import Q, Quantity

_SLACK_PA = 1e-6  # typed decimals, not the bits of their conversion, decide


class RuleWord(StrEnum):
    """How a decay test stands against a standard's pass rule."""

    PASSED = "passed"
    FAILED = "failed"
    TOO_SHORT = "not held long enough"
    NOT_DEEP = "vacuum not deep enough"


@dataclass(frozen=True, slots=True)
class DecayRule:
    """Pass rule of a standard or a maker: pull down to, hold for, rise or end at most."""

    name: str
    pull_to: Quantity
    hold: Quantity
    source: str
    allowed_rise: Quantity | None = None
    end_at_most: Quantity | None = None
    strictly_below: bool = False  # the start must be below `pull_to`, not at it


@dataclass(frozen=True, slots=True)
class RuleResult:
    """A pass rule applied to the readings."""

    rule: DecayRule
    word: RuleWord
    start: Quantity
    highest_rise: Quantity
    held: Quantity
    minutes_more: float


def standard_rules(
    minutes: Sequence[float], pascals: Sequence[float], rules: Sequence[DecayRule]
) -> tuple[RuleResult, ...]:
    """Pass rules of standards and makers, applied to the same readings.

    Parameters
    ----------
    minutes : sequence of float [min], shape (n,)
        Times of the readings; the hold begins at the first.
    pascals : sequence of float [Pa], shape (n,)
        Absolute pressures.
    rules : sequence of DecayRule [Pa, h]
        Rows of the rule set.

    Returns
    -------
    tuple of RuleResult [Pa, h, min]
        In the order of the rules; none without readings.

    Notes
    -----
    A rule fails as soon as one reading within the hold is above it; it passes only when the hold
    is over. Readings after the hold are not asked for and do not count.

    Source
    ------
    RD552/2019, IF-09 1.6 (a pass rule of this form; the figures are rule-set data).
    """
    readings = sorted(zip(minutes, pascals, strict=True))
    return tuple(_apply(rule, readings) for rule in rules) if readings else ()


def _apply(rule: DecayRule, readings: Sequence[tuple[float, float]]) -> RuleResult:
    first, start = readings[0]
    hold, target = rule.hold.m_as("min"), rule.pull_to.m_as("Pa")
    ends = hold * (1 - 1e-9)
    # The reading that ends the hold counts: nothing is known between it and the one before.
    held = next((at - first for at, _ in readings if at - first >= ends), readings[-1][0] - first)
    rise = max(pa for at, pa in readings if at - first <= held) - start
    rise_bad = rule.allowed_rise is not None and rise > rule.allowed_rise.m_as("Pa") + _SLACK_PA
    end_bad = (
        rule.end_at_most is not None and start + rise > rule.end_at_most.m_as("Pa") + _SLACK_PA
    )
    too_high = start > target + _SLACK_PA or (rule.strictly_below and start >= target - _SLACK_PA)
    more = 0.0 if held >= ends else hold - held
    if too_high:
        word = RuleWord.NOT_DEEP
    elif rise_bad or end_bad:
        word = RuleWord.FAILED
    else:
        word = RuleWord.TOO_SHORT if more else RuleWord.PASSED
    return RuleResult(rule, word, Q(start, "Pa"), Q(rise, "Pa"), Q(held / 60, "hour"), more)
