"""Decay test after evacuation: tight, moisture, leak or not yet decided, and the leak left open.

A leak is straight while the pressure is far below the air's; water levels off; outgassing may rise
as a logarithm; a gauge may lag by 30 s. One reading is set aside if it is further than
`DecayLimits.stray` standard deviations from every shape that the others fit. The pressure of water
follows the temperature: a straight part that `DecayLimits.warming` explains proves no leak.

Numbers come as minutes and absolute pascals, for they are many. The verdict is never turned into
grams a year: the flow through a leak under vacuum and under pressure differ by a factor of 14 to
28 between viscous and molecular flow, and a liquid-side leak passes far more.
"""

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from statistics import median

from chargebench.calc.decay_fit import Fit, fitted
from chargebench.calc.decay_rules import DecayRule, RuleResult, RuleWord, standard_rules
from chargebench.errors import OutsideDomain
from chargebench.units import Q
from chargebench.words import say

__all__ = [
    "MICRON_PA",
    "DecayLimits",
    "DecayRule",
    "DecayVerdict",
    "DecayWord",
    "RuleResult",
    "RuleWord",
    "judge",
    "standard_rules",
]

_PA_LEAST, _PA_MOST = 1e-6, 1e7  # sanity fences: far outside any decay test
NOT_WATER = (
    "It levels off, but above the vapour pressure of water at the temperature given: not water "
    "alone. Refrigerant out of the oil or a leak stays possible."
)
FALLS = "The pressure falls: shut the pump off, let the temperature settle, and start again."
SCATTERS = "The readings scatter too much to tell: look at the gauge, its place and its hose."
_FALLEN = 0.8  # of the first readings, by the last: 2 K of cooling over water make 0.88
MICRON_PA = float(Q(1, "micron_Hg").m_as("Pa"))  # the one registry's, as readings are read
_WATER_PER_KELVIN = 0.062  # IAPWS-SR1: 2339 Pa at 20 °C, 2488 Pa at 21 °C


class DecayWord(StrEnum):
    """What a decay test says."""

    TIGHT = "tight"
    MOISTURE = "moisture"
    LEAK = "leak"
    UNDECIDED = "not yet decided"


@dataclass(frozen=True, slots=True)
class DecayLimits:
    """Limits of the decision rule; the defaults are our own choice, not a standard.

    They were chosen on simulated tests (tests/simulate_decay.py), which are not field data.
    """

    slope_allowed: float = 5.0  # micron/min: a leak is at least this; a tight system rises less
    rise_allowed: float = 150.0  # micron, beyond slope_allowed x length: outgassing let through
    slope_open: float = 10.0  # micron/min: tight needs an upper limit below this + rise/length
    share: float = 0.5  # of the rise: the linear part decides between leak and moisture
    margin: float = 2.0  # AICc by which one shape must be better to be called better
    minutes_least: float = 10.0  # nothing is said before
    minutes_firm: float = 20.0  # a verdict before is not firm
    gauge_gain: float = 0.10  # error of the gauge in proportion; widens the slope limits
    noise_floor: float = 0.003  # relative scatter below which agreement is not believed
    stray: float = 5.0  # standard deviations of the others: a reading further off is set aside
    outgassing_most: float = 3_000.0  # micron: a rise above is not slow outgassing of surfaces
    scatter_most: float = 0.25  # of the readings about the best shape: more is no measurement
    warming: float = 0.1  # K/min: a straight part that this gives over water is no leak


@dataclass(frozen=True, slots=True)
class DecayVerdict:
    """Verdict on a decay test, with the figures of its two sentences and the fitted shape."""

    word: DecayWord
    firm: bool  # long enough for a firm verdict
    reason: str
    minutes: float
    minutes_more: float  # to go on for a firm verdict; an estimate beyond `minutes_firm`
    slope_upper: float | None = None  # Pa/min: a leak below this can not be excluded
    slope_lower: float | None = None  # Pa/min
    set_aside: float | None = None  # min: the reading that fits none of the shapes
    fit: Fit | None = field(default=None, repr=False)

    @property
    def slope_upper_micron(self) -> float | None:
        """Leak [micron/min] that can not be excluded."""
        return None if self.slope_upper is None else self.slope_upper / MICRON_PA

    @property
    def sentences(self) -> tuple[str, str]:
        """The verdict; and what can not be excluded, with the minutes more that would decide."""
        not_firm = "" if self.firm or self.word is DecayWord.UNDECIDED else ", not firm yet"
        word = self.word.value.capitalize()
        verdict = say("{word}{firm}. {reason}", word=word, firm=not_firm, reason=self.reason)
        minutes = math.ceil(self.minutes_more)
        further = say("Go on for {minutes} more minutes.", minutes=minutes) if minutes > 0 else ""
        micron, pascal = self.slope_upper_micron, self.slope_upper
        if micron is None or pascal is None:
            return verdict, further
        excluded = "A leak below {micron:.1f} micron/min ({pascal:.2f} Pa/min) can not be excluded"
        leak = say(excluded, micron=micron, pascal=pascal)
        if not further:
            return verdict, say("{leak}.", leak=leak)
        return verdict, say("{leak}; go on for {minutes} more minutes.", leak=leak, minutes=minutes)


def _undecided(reason: str, minutes: float, limits: DecayLimits) -> DecayVerdict:
    more = max(limits.minutes_firm - minutes, 0.0)
    return DecayVerdict(
        DecayWord.UNDECIDED, firm=False, reason=reason, minutes=minutes, minutes_more=more
    )


def judge(
    minutes: Sequence[float],
    pascals: Sequence[float],
    limits: DecayLimits = DecayLimits(),
    *,
    water_pa: float | None = None,
    steps: Sequence[float] | None = None,
) -> DecayVerdict:
    """Verdict on the pressure rise of an isolated, evacuated system.

    Parameters
    ----------
    minutes : sequence of float [min], shape (n,)
        Times of the readings, any spacing, any order.
    pascals : sequence of float [Pa], shape (n,)
        Absolute pressures, above zero.
    limits : DecayLimits [micron/min, micron, min]
        Of the rule.
    water_pa : float [Pa] or None
        Vapour pressure of water at the coldest spot; moisture alone can not rise above.
    steps : sequence of float [Pa], shape (n,), or None
        Step of the display at each reading; None: no coarser than `limits.noise_floor`.

    Returns
    -------
    DecayVerdict [Pa/min, min]
        Word, reason, the slope that can not be excluded, minutes more, fitted shape.

    Raises
    ------
    OutsideDomain
        Readings that are not finite, or pressures not above zero.

    Notes
    -----
    p(t) = p0 + (Q/V) t + b (1 - exp(-t/tau)); limits: profile, 95 %, at least a display's step.

    Source
    ------
    PFEIFFER, 7.1.2 (q = V dp/dt); AICC (choice between shapes); limits COMMON, our own choice.
    """
    readings = _in_order(minutes, pascals, steps)
    length = readings[-1][0] - readings[0][0] if readings else 0.0
    if (fitted := _fit(readings, limits)) is None:
        return _undecided(
            "At least three readings at clearly different times are needed.", length, limits
        )
    word, reason = _doubted(*_word(fitted, length, limits), fitted, readings, water_pa)
    gain, known = 1 + limits.gauge_gain, word is not DecayWord.UNDECIDED
    return DecayVerdict(
        word=word,
        firm=(firm := known and length >= limits.minutes_firm),
        reason=reason,
        minutes=length,
        minutes_more=0.0 if firm else _minutes_more(fitted, length, limits),
        slope_upper=fitted.slope.high * gain,
        slope_lower=fitted.slope.low / gain,
        set_aside=None if fitted.stray is None else readings[fitted.stray][0],
        fit=fitted,
    )


_Row = tuple[float, float, float]  # min, Pa, step of the display in Pa


def _in_order(
    minutes: Sequence[float], pascals: Sequence[float], steps: Sequence[float] | None
) -> list[_Row]:
    shown = [0.0] * len(minutes) if steps is None else steps
    readings = sorted(zip(minutes, pascals, shown, strict=True))
    if not all(
        abs(at) <= 1e7 and _PA_LEAST <= pa <= _PA_MOST and 0 <= step <= _PA_MOST
        for at, pa, step in readings
    ):
        raise OutsideDomain(
            "Expected finite times and absolute pressures above zero; a gauge that shows 0 micron "
            "is below its range: enter the smallest figure it can show."
        )
    return readings


def _fit(readings: Sequence[_Row], limits: DecayLimits) -> Fit | None:
    if len({round(at, 3) for at, *_ in readings}) < 3:
        return None
    times, pressures, steps = zip(*readings, strict=True)
    return fitted(times, pressures, steps, noise_floor=limits.noise_floor, stray_limit=limits.stray)


def _doubted(
    word: DecayWord, reason: str, fitted: Fit, readings: Sequence[_Row], water_pa: float | None
) -> tuple[DecayWord, str]:
    """The word and reason after what speaks against the readings themselves."""
    kept = [pa for place, (_, pa, _) in enumerate(readings) if place != fitted.stray]
    if word is DecayWord.MOISTURE and water_pa is not None and max(kept) > water_pa:
        word, reason = DecayWord.UNDECIDED, NOT_WATER
    third = math.ceil(len(kept) / 3)
    if word is DecayWord.TIGHT and median(kept[-third:]) < _FALLEN * median(kept[:third]):
        word, reason = DecayWord.UNDECIDED, FALLS
    if word is DecayWord.TIGHT and min(kept) == max(kept):
        reason += " The gauge did not move: make sure it is not at the end of its range."
    if fitted.stray is None:
        return word, reason
    at, pa, _ = readings[fitted.stray]
    above = pa > fitted.at([at])[0]
    # A first reading far below, or a last far above, may be a rise and not a mistake.
    risen_first = fitted.stray == 0 and not above and word is DecayWord.TIGHT
    risen_last = fitted.stray == len(readings) - 1 and above and word is not DecayWord.LEAK
    if risen_first or risen_last:
        return DecayWord.UNDECIDED, say(
            "The {which} reading stands far off the others: read on, and strike it out "
            "if it was wrong.",
            which="first" if risen_first else "last",
        )
    return word, say(
        "{reason} The reading at {at:g} min fits none of this and was left out.",
        reason=reason,
        at=at,
    )


def _word(fitted: Fit, length: float, limits: DecayLimits) -> tuple[DecayWord, str]:
    """The decision rule, in order: tight, leak, moisture, otherwise not yet decided."""
    if length < limits.minutes_least:
        return DecayWord.UNDECIDED, say(
            "A test under {minutes_least:g} min tells too little.",
            minutes_least=limits.minutes_least,
        )
    if fitted.scatter > limits.scatter_most:
        return DecayWord.UNDECIDED, SCATTERS
    slope_least = limits.slope_allowed * MICRON_PA
    rise_most = (limits.slope_allowed * length + limits.rise_allowed) * MICRON_PA
    open_most = (limits.slope_open + limits.rise_allowed / length) * MICRON_PA
    gain = 1 + limits.gauge_gain
    if fitted.rise.high * gain <= rise_most and fitted.slope.high * gain <= open_most:
        return DecayWord.TIGHT, "The whole rise stays within what a tight, dry system shows."
    above = _information(fitted, limits)
    others = [value for name, value in above.items() if name != "log rise"]
    log_close = above.get("log rise", math.inf) <= limits.margin
    log_best = bool(others) and above.get("log rise", math.inf) == 0 and min(others) > limits.margin
    straight = above.get("line", math.inf) == 0
    linear = fitted.linear_share.low > limits.share or fitted.line_significant
    warming = limits.warming * _WATER_PER_KELVIN * fitted.settled * fitted.curve_significant
    if fitted.slope.low > max(slope_least, warming) and (linear or straight):
        if log_close:
            return DecayWord.UNDECIDED, "Slow outgassing would look the same as a leak so far."
        return DecayWord.LEAK, "The pressure goes on rising in a straight line."
    level = not fitted.line_significant or fitted.best_slope <= warming
    curved = fitted.curve_significant and level
    if (curved and fitted.linear_share.high <= limits.share) or log_best:
        return DecayWord.MOISTURE, "The rise levels off as it does over water or wet oil."
    return DecayWord.UNDECIDED, "The readings fit more than one cause so far."


def _information(fitted: Fit, limits: DecayLimits) -> dict[str, float]:
    """AICc of each shape above that of the best; a log rise only while small enough for one."""
    found = dict(fitted.information)
    if fitted.rise.low > limits.outgassing_most * MICRON_PA:
        found.pop("log rise", None)
    best = min(found.values(), default=0.0)
    return {name: value - best for name, value in found.items()}


def _minutes_more(fitted: Fit, length: float, limits: DecayLimits) -> float:
    """Minutes to go on: to a firm length, beyond it by how the slope limits narrow.

    The half-width of a slope falls about as length**-1.5 at a steady pace of readings; it must
    become smaller than the distance to the limit it straddles. Not more than doubling.
    """
    short = limits.minutes_firm - length
    if short > 0:
        return short
    half = (fitted.slope.high - fitted.slope.low) / 2
    distance = abs(fitted.best_slope - limits.slope_allowed * MICRON_PA)
    factor = (half / distance) ** (2 / 3) if distance > 0 else 2.0
    return math.ceil(length * (min(max(factor, 1.25), 2.0) - 1))
