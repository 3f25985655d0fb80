"""What the mass picture and the bench display show of a weigh-in, as plain data."""

from dataclasses import dataclass, replace

from chargebench.calc.charge import ChargeWord
from chargebench.steps import Answers, Case, Worked
from chargebench.steps.fill import fill_limit
from chargebench.steps.weigh_in import WeighedIn, tolerance
from chargebench.units import Q, Quantity, Reading, System, from_mg, show, unit_for
from chargebench.words import joined, say

_NONE = Q(0, "g")
_OWN_PLACES = {"gram": 1, "kilogram": 4, "milligram": 0, "ounce": 2, "pound": 3}


@dataclass(frozen=True, slots=True)
class MassView:
    """One weigh-in as it is drawn: masses, the verdict's word, the scale's stop readings."""

    nameplate: Quantity
    tolerance: Quantity = _NONE
    charged: Quantity | None = None  # None: nothing weighed yet
    opening: Quantity | None = _NONE  # None: what was in before is not known
    total: Quantity | None = None  # what is in the equipment, where that is known
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
        """Where the bar ends: what is in it, or what was charged if that is all that is known."""
        return self.charged if self.total is None else self.total

    @property
    def to_go(self) -> Quantity | None:
        """What is still to go in; negative once there is too much. None if it is not known."""
        if self.opening is None:
            return None
        already = self.opening if self.total is None else self.total
        left: Quantity = self.nameplate.to("g") - already.to("g")
        return left

    @property
    def verdict(self) -> str:
        """The verdict with its figure, as it is written above the bar."""
        if self.charged is None:
            return "Nothing weighed yet"
        if self.opening is None:
            return say(
                "Charged {text}; what was in before was not weighed", text=self.text(self.charged)
            )
        if self.difference is None or self.uncertainty is None or not self.word:
            return "Not judged yet"
        doubt = f"(±{self.text(self.uncertainty)})"
        if self.word == ChargeWord.OVER:
            return say(
                "Over nameplate by {text} {doubt}", text=self.text(self.difference), doubt=doubt
            )
        if self.word == ChargeWord.UNDER:
            return say(
                "Under nameplate by {text} {doubt}",
                text=self.text(self.difference * -1),
                doubt=doubt,
            )
        if self.word == ChargeWord.WITHIN:
            return say(
                "Within ±{text} of the nameplate {doubt}",
                text=self.text(self.tolerance),
                doubt=doubt,
            )
        return say(
            "Scale too coarse to tell: off by {text} {doubt}",
            text=self.text(self.difference),
            doubt=doubt,
        )

    @property
    def rows(self) -> tuple[tuple[str, str], ...]:
        """Figures written under the bars, label and value."""
        rows: list[tuple[str, str]] = []
        if self.charged is not None:
            known = self.total is not None
            rows.append(("in it" if known else "charged", self.text(self.in_it or self.charged)))
        rows.append(
            (
                "nameplate",
                say(
                    "{text} ±{text_2}",
                    text=self.text(self.nameplate),
                    text_2=self.text(self.tolerance),
                ),
            )
        )
        if self.opening is not None and self.opening.magnitude:
            rows.append(("in before", self.text(self.opening)))
        if self.hose.magnitude:
            rows.append(("in the hose", self.text(self.hose)))
        if self.uncertainty is not None and self.charged is not None:
            rows.append(("uncertainty", say("±{text} (k = 2)", text=self.text(self.uncertainty))))
        rows.extend(("stop reading", scale_text(each)) for each in self.stop_readings)
        if self.cylinder and self.cylinder_left is not None:
            left = show(self.cylinder_left, *unit_for(self.cylinder_left, self.system))
            limit = self.cylinder_limit
            rows.append((say("left in {cylinder}", cylinder=self.cylinder), left))
            if limit is not None:
                rows.append(("its fill limit", show(limit, *unit_for(limit, self.system))))
        return tuple(rows)

    @property
    def sentence(self) -> str:
        """The whole picture in words, for a screen reader."""
        return say("{verdict}. ", verdict=self.verdict) + joined(
            "; ", (say("{label} {value}", label=label, value=value) for label, value in self.rows)
        )


def scale_text(reading: Quantity) -> str:
    """A scale reading in the unit the scale was read in."""
    unit = str(reading.units)
    return show(reading, unit, _OWN_PLACES.get(unit, 2))


def mass_view(
    worked: Worked, system: System, case: Case | None = None, answers: Answers | None = None
) -> MassView | None:
    """What is drawn of a weigh-in as typed so far; None without a nameplate charge.

    The case lends the cylinder's content, the answers the units the scale was read in.
    """
    result = worked.result
    if not isinstance(result, WeighedIn):
        nameplate = None if case is None else case.nameplate("charge")
        if case is None or not isinstance(nameplate, Reading):
            return None
        mass = nameplate.quantity.to("g")
        return MassView(mass, tolerance(case)[0], system=system)
    verdict = result.verdict
    view = MassView(
        nameplate=result.nameplate,
        tolerance=result.tolerance,
        charged=result.charged if result.charged.magnitude else None,
        opening=result.opening,
        total=result.total if result.charged.magnitude else None,
        hose=result.hose,
        uncertainty=result.budget.expanded,
        word=str(verdict.word) if verdict else "",
        difference=verdict.difference if verdict else None,
        stop_readings=_stop_readings(result, answers),
        system=system,
    )
    return _with_cylinder(view, result, case)


def _stop_readings(result: WeighedIn, answers: Answers | None) -> tuple[Quantity, ...]:
    """Stop readings in the unit each line's start was typed in."""
    starts = [line.reading("start") for line in answers.lines("lines")] if answers else []
    units = [start.pint_unit for start in starts if start is not None]
    found: list[Quantity] = []
    for number, line in enumerate(result.lines):
        if line.stop_reading is not None:
            same = len(units) == len(result.lines)
            found.append(line.stop_reading.to(units[number] if same else "g"))
    return tuple(found)


def _with_cylinder(view: MassView, result: WeighedIn, case: Case | None) -> MassView:
    """The cylinder in use: what is left in it, and its limit."""
    if case is None or not result.lines or result.lines[-1].cylinder not in case.cylinders:
        return view
    cylinder = result.lines[-1].cylinder
    left = from_mg(sum(case.cylinder_content_mg.get(cylinder, {}).values()))
    if not case.is_signed("weigh_in"):  # once it is, the book has taken the charge out already
        for line in result.lines:
            if line.cylinder == cylinder:
                left = left - line.reading.left_cylinder
    limit = fill_limit(case.cylinders[cylinder], case.rule_set)
    return replace(
        view,
        cylinder=cylinder,
        cylinder_left=left,
        cylinder_limit=limit.mass if limit else None,
    )
