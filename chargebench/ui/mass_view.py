"""What the mass picture and the bench display show of a weigh-in, as plain data."""

from dataclasses import dataclass

from chargebench.units import Quantity, System, show, unit_for
from chargebench.units.registry import Q

OVER = "over"
UNDER = "under"
WITHIN = "within"
TOO_COARSE = "scale too coarse to tell"
_OWN_PLACES = {"gram": 1, "kilogram": 4, "milligram": 0, "ounce": 2, "pound": 3}
_NONE = Q(0, "g")


@dataclass(frozen=True, slots=True)
class MassView:
    """One weigh-in as it is drawn: masses, the verdict's word, the scale's stop readings."""

    nameplate: Quantity
    tolerance: Quantity = _NONE
    charged: Quantity | None = None
    opening: Quantity = _NONE
    hose: Quantity = _NONE
    uncertainty: Quantity | None = None  # expanded, k = 2
    word: str = ""
    difference: Quantity | None = None  # in it, less nameplate
    stop_readings: tuple[Quantity, ...] = ()  # in the unit the scale was read in
    cylinder: str = ""
    cylinder_left: Quantity | None = None
    cylinder_limit: Quantity | None = None
    system: System = "SI"

    @property
    def unit(self) -> str:
        """Unit of the whole picture: the one the nameplate is shown in."""
        return unit_for(self.nameplate, self.system)[0]

    def text(self, mass: Quantity) -> str:
        """A mass of the picture in the picture's unit."""
        unit, places = unit_for(self.nameplate, self.system)
        return show(mass, unit, places)

    def size(self, mass: Quantity | None) -> float:
        """A mass as a number of the picture's unit, for drawing to scale."""
        return 0.0 if mass is None else float(mass.m_as(self.unit))

    @property
    def in_it(self) -> Quantity | None:
        """What is in the equipment: what was in before and what was charged."""
        return None if self.charged is None else self.opening + self.charged

    @property
    def verdict(self) -> str:
        """The verdict with its figure, as it is written above the bar."""
        if self.difference is None or self.uncertainty is None or not self.word:
            return "Nothing weighed yet" if self.charged is None else "Not judged yet"
        doubt = f"(±{self.text(self.uncertainty)})"
        if self.word == OVER:
            return f"Over nameplate by {self.text(self.difference)} {doubt}"
        if self.word == UNDER:
            return f"Under nameplate by {self.text(self.difference * -1)} {doubt}"
        if self.word == WITHIN:
            return f"Within ±{self.text(self.tolerance)} of the nameplate {doubt}"
        return f"Scale too coarse to tell: {self.text(self.difference)} {doubt}"

    @property
    def rows(self) -> tuple[tuple[str, str], ...]:
        """Figures written under the bar, label and value."""
        rows = [("nameplate", f"{self.text(self.nameplate)} ±{self.text(self.tolerance)}")]
        if self.in_it is not None:
            rows.insert(0, ("in it", self.text(self.in_it)))
        else:
            rows.append(("to weigh in", self.text(self.nameplate - self.opening)))
        if self.opening.magnitude:
            rows.append(("in before", self.text(self.opening)))
        if self.hose.magnitude:
            rows.append(("in the hose", self.text(self.hose)))
        if self.uncertainty is not None:
            rows.append(("uncertainty", f"±{self.text(self.uncertainty)} (k = 2)"))
        rows.extend(("stop reading", scale_text(each)) for each in self.stop_readings)
        if self.cylinder and self.cylinder_left is not None:
            left = show(self.cylinder_left, *unit_for(self.cylinder_left, self.system))
            limit = self.cylinder_limit
            of = f" of {show(limit, *unit_for(limit, self.system))} limit" if limit else ""
            rows.append((f"left in {self.cylinder}", f"{left}{of}"))
        return tuple(rows)

    @property
    def sentence(self) -> str:
        """The whole picture in words, for a screen reader."""
        return f"{self.verdict}. " + "; ".join(f"{label} {value}" for label, value in self.rows)


def scale_text(reading: Quantity) -> str:
    """A scale reading in the unit the scale was read in."""
    unit = str(reading.units)
    return show(reading, unit, _OWN_PLACES.get(unit, 2))
