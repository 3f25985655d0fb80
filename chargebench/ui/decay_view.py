"""What the decay plot shows of an evacuation, as plain data."""

from dataclasses import dataclass

from chargebench.calc.evacuation import RuleResult, RuleWord
from chargebench.steps import Worked
from chargebench.steps.evacuation import Evacuated
from chargebench.units import Q, Quantity, System, show, shown
from chargebench.words import joined, say

_POINTS = 121  # of the drawn curve
_UNITS: dict[System, tuple[str, int]] = {"SI": ("Pa", 1), "IP": ("micron_Hg", 0)}


@dataclass(frozen=True, slots=True)
class Level:
    """A named pressure drawn as a line across the plot."""

    name: str
    pascals: float
    word: str = ""  # how the test stands against it


@dataclass(frozen=True, slots=True)
class DecayView:
    """Readings of a decay test, what was fitted to them, what they are held against."""

    minutes: tuple[float, ...]
    pascals: tuple[float, ...]
    word: str = ""  # tight, moisture, leak, not yet decided
    verdict: str = ""  # the verdict as a sentence
    left_open: str = ""  # what can not be excluded, and how many more minutes would decide
    curve_minutes: tuple[float, ...] = ()
    curve: tuple[float, ...] = ()
    low: tuple[float, ...] = ()
    high: tuple[float, ...] = ()
    rules: tuple[Level, ...] = ()
    water: Level | None = None
    system: System = "SI"

    @property
    def unit(self) -> str:
        """Unit of the pressure axis."""
        return "Pa" if self.system == "SI" else "micron"

    def size(self, pascals: float) -> float:
        """A pressure as a number of the axis's unit, for drawing; above zero for the log axis."""
        factor = 1.0 if self.system == "SI" else float(Q(1, "Pa").m_as("micron_Hg"))
        return max(pascals * factor, 1e-3)

    def text(self, pascals: float) -> str:
        """A pressure in the axis's unit."""
        return show(Q(pascals, "Pa"), *_UNITS[self.system])

    @property
    def levels(self) -> tuple[Level, ...]:
        """Every line across the plot."""
        return (*self.rules, self.water) if self.water else self.rules

    @property
    def key(self) -> tuple[tuple[str, Level], ...]:
        """Every line across the plot with the letter it carries there."""
        return tuple(zip("ABCDEFGHIJKLMNOPQRSTUVWXYZ", self.levels, strict=False))

    @property
    def key_words(self) -> str:
        """What each letter in the plot stands for."""
        return joined(
            "\n",
            (
                say(
                    "{letter}  {level} {text}",
                    letter=letter,
                    level=level.name,
                    text=self.text(level.pascals),
                )
                for letter, level in self.key
            ),
        )

    @property
    def sentence(self) -> str:
        """The whole plot in words, for a screen reader."""
        count = len(self.minutes)
        readings = say("{count} readings", count=count) if count != 1 else "1 reading"
        if count:
            readings += say(
                ", last {text} after {minutes:g} min",
                text=self.text(self.pascals[-1]),
                minutes=self.minutes[-1],
            )
        lines = joined(
            "; ",
            (
                say("{name} {text}", name=each.name, text=self.text(each.pascals))
                for each in self.levels
            ),
        )
        return joined(" ", (part for part in (f"{readings}.", lines, self.verdict, self.left_open)))


def decay_view(worked: Worked, system: System, coldest: Quantity | None = None) -> DecayView | None:
    """What is drawn of a vacuum step as typed so far; None before the first reading."""
    result = worked.result
    if not isinstance(result, Evacuated) or not result.minutes:
        return None
    says = (*worked.sentences, "", "")
    verdict = result.verdict
    curve: tuple[tuple[float, ...], ...] = ((), (), (), ())
    if verdict is not None and verdict.fit is not None:
        first, last = result.minutes[0], result.minutes[-1]
        times = [first + (last - first) * n / (_POINTS - 1) for n in range(_POINTS)]
        low, high = verdict.fit.band(times)
        curve = (tuple(times), tuple(verdict.fit.at(times)), tuple(low), tuple(high))
    return DecayView(
        minutes=result.minutes,
        pascals=result.pascals,
        word=str(verdict.word) if verdict else "",
        verdict=says[0],
        left_open=says[1],
        curve_minutes=curve[0],
        curve=curve[1],
        low=curve[2],
        high=curve[3],
        rules=tuple(level for rule in result.rules for level in _rule_levels(rule)),
        water=_water(result, system, coldest),
        system=system,
    )


def _rule_levels(result: RuleResult) -> list[Level]:
    """Lines of a pass rule: what it must not rise above; where to start, if that was not met."""
    rule, word = result.rule, str(result.word)
    levels: list[Level] = []
    if result.word is RuleWord.NOT_DEEP:
        levels.append(
            Level(
                say("{rule}: {word}, start at most", rule=rule.name, word=word),
                rule.pull_to.m_as("Pa"),
                word,
            )
        )
    elif rule.allowed_rise is not None:
        highest: Quantity = result.start + rule.allowed_rise
        levels.append(
            Level(
                say("{rule}: {word}, rise to at most", rule=rule.name, word=word),
                highest.m_as("Pa"),
                word,
            )
        )
    if rule.end_at_most is not None and result.word is not RuleWord.NOT_DEEP:
        end = rule.end_at_most.m_as("Pa")
        levels.append(
            Level(say("{rule}: {word}, end at most", rule=rule.name, word=word), end, word)
        )
    return levels


def _water(result: Evacuated, system: System, coldest: Quantity | None) -> Level | None:
    if result.water is None:
        return None
    at = (
        say(" at {coldest}", coldest=shown(coldest, system))
        if coldest is not None
        else " at the coldest part"
    )
    frozen = coldest is not None and coldest.m_as("degC") < 0
    return Level(
        f"{'ice turns to vapour' if frozen else 'water boils'}{at}", result.water.m_as("Pa")
    )
