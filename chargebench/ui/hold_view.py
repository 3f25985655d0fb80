"""What the plot of a standing pressure test shows, as plain data."""

from dataclasses import dataclass

from chargebench.steps import Worked
from chargebench.steps.held import Held
from chargebench.steps.pressure_test import PressureTested
from chargebench.units import Q, System, show
from chargebench.words import joined, say

_UNITS: dict[System, tuple[str, int]] = {"SI": ("kPa", 1), "IP": ("psi", 1)}


@dataclass(frozen=True, slots=True)
class HoldView:
    """Readings less what temperature explains, and the doubt within which they hold."""

    held: tuple[Held, ...]
    word: str = ""
    verdict: str = ""
    left_open: str = ""
    system: System = "SI"

    @property
    def unit(self) -> str:
        """Unit of the pressure axis, absolute."""
        return "kPa(a)" if self.system == "SI" else "psia"

    def size(self, pascals: float) -> float:
        """A pressure as a number of the axis's unit."""
        return float(Q(pascals, "Pa").m_as(_UNITS[self.system][0]))

    @property
    def minutes(self) -> list[float]:
        """When each was read."""
        return [each.minutes for each in self.held]

    @property
    def corrected(self) -> list[float]:
        """Readings less what temperature explains."""
        return [self.size(each.corrected) for each in self.held]

    @property
    def measured(self) -> list[float]:
        """Readings as they were."""
        return [self.size(each.pascals) for each in self.held]

    def edge(self, side: int) -> list[float]:
        """Above (1) or below (-1) which a reading would tell of more than temperature."""
        first = self.held[0].corrected
        return [self.size(first + side * each.doubt) for each in self.held]

    @property
    def key_words(self) -> str:
        """What the marks mean."""
        return (
            "○  less what temperature explains     ×  as read\n"
            "band  what temperature and gauge leave in doubt (k = 2)"
        )

    @property
    def sentence(self) -> str:
        """The whole plot in words, for a screen reader."""
        last = self.held[-1]
        unit, places = _UNITS[self.system]
        said = say(
            "{count} readings, last {pascals} after {minutes:g} min, {corrected} "
            "less what temperature explains.",
            count=len(self.held),
            pascals=show(Q(last.pascals, "Pa"), unit, places),
            minutes=last.minutes,
            corrected=show(Q(last.corrected, "Pa"), unit, places),
        )
        return joined(" ", (part for part in (said, self.verdict, self.left_open) if part))


def hold_view(worked: Worked, held: tuple[Held, ...], system: System) -> HoldView | None:
    """What is drawn of a pressure test as typed so far; None before the first reading."""
    if not held:
        return None
    result = worked.result
    says = (*worked.sentences, "", "")
    word = str(result.verdict.word) if isinstance(result, PressureTested) else ""
    return HoldView(held, word, says[0], says[1], system)
