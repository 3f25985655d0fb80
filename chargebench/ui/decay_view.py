"""What the decay plot shows of an evacuation, as plain data."""

from dataclasses import dataclass

from chargebench.units import Q, System, show

_UNITS: dict[System, tuple[str, int]] = {"SI": ("Pa", 1), "IP": ("micron_Hg", 0)}


@dataclass(frozen=True, slots=True)
class Level:
    """A named pressure drawn as a line across the plot."""

    name: str
    pascals: float


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
    def sentence(self) -> str:
        """The whole plot in words, for a screen reader."""
        count = len(self.minutes)
        readings = f"{count} reading{'' if count == 1 else 's'}"
        if count:
            readings += f", last {self.text(self.pascals[-1])} after {self.minutes[-1]:g} min"
        lines = "; ".join(f"{each.name} {self.text(each.pascals)}" for each in self.levels)
        return " ".join(part for part in (f"{readings}.", lines, self.verdict, self.left_open))
