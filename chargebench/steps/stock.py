"""What stock work comes to: receive, weigh, decant, return."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any

from chargebench.calc.scale import explained_difference
from chargebench.ledger import Transfer
from chargebench.rules import RuleSet
from chargebench.steps.case import Figure, Worked
from chargebench.steps.fill import (
    ledger_tolerance_mg,
    moved_uncertainty,
    tare_mg,
    unfillable,
)
from chargebench.steps.fill import overfull as over_limit
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import Quantity, Reading, System, from_mg, mg, shown
from chargebench.words import say

_NOT_DECANTED = "Expected {wanted} after than before; nothing was decanted."
_NO_TARE = "Expected a tare in the register for {cylinder}; enter it first."
_BELOW_TARE = "This is less than the tare of {cylinder}; check cylinder and scale."

KINDS = {"receive": "received", "weigh": "weighed", "decant": "decanted", "return": "returned"}


@dataclass(frozen=True, slots=True)
class Shelf:
    """What stock work needs to know: the cylinders, what they hold, the scales, the rules."""

    cylinders: Mapping[str, Answers]
    contents_mg: Mapping[str, Mapping[str, int]]
    instruments: Mapping[str, Answers]
    rule_set: RuleSet
    units: System = "SI"  # what sentences speak in
    ledger_doubt_mg: Callable[[str], int] = lambda _: 0  # of what it says a cylinder holds, k = 2

    def cylinder(self, cylinder: str) -> Answers:
        """A cylinder's row."""
        return self.cylinders.get(cylinder, NOTHING)

    def held_mg(self, cylinder: str) -> int:
        """All a cylinder holds."""
        return sum(self.contents_mg.get(cylinder, {}).values())


@dataclass(frozen=True, slots=True)
class Weighing:
    """A cylinder on the scale against the ledger, in milligrams."""

    cylinder: str
    expected_mg: int
    found_mg: int
    tolerance_mg: int
    scale_mg: int = 0  # what of the tolerance is the scale's; older entries do not say
    ledger_mg: int = 0  # and what the ledger's

    @property
    def difference_mg(self) -> int:
        """Found less expected."""
        return self.found_mg - self.expected_mg

    @property
    def beyond(self) -> bool:
        """Whether the difference is more than scale and ledger can explain."""
        return abs(self.difference_mg) > self.tolerance_mg


def weighing(answers: Answers, shelf: Shelf) -> Weighing | None:
    """A weighing worked out; None while something it needs is missing."""
    cylinder = answers.text("cylinder")
    gross = answers.mass_mg("gross")
    tare = tare_mg(shelf.cylinder(cylinder))
    if gross is None or tare is None:
        return None
    expected = shelf.held_mg(cylinder)
    scale = shelf.instruments.get(answers.text("scale"))
    scale_mg = ledger_tolerance_mg(gross, scale, shelf.rule_set)
    ledger_mg = shelf.ledger_doubt_mg(cylinder)
    allowed = explained_difference(scale=from_mg(scale_mg), ledger=from_mg(ledger_mg))
    return Weighing(cylinder, expected, gross - tare, mg(allowed), scale_mg, ledger_mg)


def doubts(
    typed: Mapping[str, Any], transfers: Sequence[Transfer], place: str, shelf: Shelf
) -> list[Quantity]:
    """Standard uncertainty of each mass line of an entry at a place, by what was typed with it."""
    lines = typed.get("lines", ())
    scales = [typed["scale"]] if "scale" in typed else []
    scales += [
        line["scale"]
        for line in lines
        if "scale" in line and f"cylinder:{line.get('cylinder')}" == place
    ]
    moved = [line for line in transfers if place in (line.source, line.target)]
    return [
        moved_uncertainty(
            line.mass_mg,
            shelf.instruments.get(scales[min(number, len(scales) - 1)]) if scales else None,
            shelf.rule_set,
            weighed=bool(scales),
        )
        for number, line in enumerate(moved)
    ]


def recorded(act: str, answers: Answers, shelf: Shelf) -> dict[str, dict[str, int]]:
    """What an entry keeps of an act beside its text and mass lines: a weighing's own figures."""
    found = weighing(answers, shelf) if act == "weigh" else None
    if found is None:
        return {}
    figures = asdict(found)
    del figures["cylinder"]
    return {"weighed": figures}


def moved_mg(act: str, answers: Answers) -> int | None:
    """Mass an act moves, in milligrams."""
    if act in ("receive", "return"):
        return answers.mass_mg("mass")
    if act == "decant":
        before, after = answers.mass_mg("before"), answers.mass_mg("after")
        if before is None or after is None:
            return None
        return before - after if answers.text("weighed") == "from" else after - before
    return None


def work_out(act: str, answers: Answers, shelf: Shelf) -> Worked:
    """Figures and sentences of an act."""
    if act == "weigh":
        found = weighing(answers, shelf)
        return NOT_YET if found is None else _weighed(found, shelf.units)
    moved = moved_mg(act, answers)
    if moved is None:
        return NOT_YET
    figures = [Figure("moved", "Moved", from_mg(moved))]
    signs = {"receive": (("cylinder", 1),), "return": (("cylinder", -1),)}
    for key, sign in signs.get(act, (("source", -1), ("target", 1))):
        cylinder = answers.text(key)
        if cylinder in shelf.cylinders:
            left = from_mg(shelf.held_mg(cylinder) + sign * moved)
            figures.append(
                Figure(f"left-{key}", say("Then in {cylinder}", cylinder=cylinder), left)
            )
    return Worked(tuple(figures), (), moved)


NOT_YET = Worked()


def _weighed(found: Weighing, units: System) -> Worked:
    figures = (
        Figure("expected", "By the ledger", from_mg(found.expected_mg)),
        Figure("found", "Found", from_mg(found.found_mg)),
        Figure(
            "difference",
            "Difference",
            from_mg(found.difference_mg),
            limit=from_mg(found.tolerance_mg),
        ),
        Figure("of-scale", "Of that limit the scale", from_mg(found.scale_mg)),
        Figure("of-ledger", "and the ledger, in quadrature", from_mg(found.ledger_mg)),
    )
    says = say(
        "{cylinder} holds {found}; the ledger has {expected}.",
        cylinder=found.cylinder,
        found=shown(from_mg(found.found_mg), units),
        expected=shown(from_mg(found.expected_mg), units),
    )
    return Worked(figures, (says,), found)


def refusals(act: str, answers: Answers, shelf: Shelf) -> dict[str, str]:
    """What an act is refused for, beside wrong and missing fields."""
    fields: dict[str, str] = {}
    for key in ("cylinder", "source", "target"):
        cylinder = answers.text(key)
        if cylinder and cylinder not in shelf.cylinders:
            fields[key] = say(
                "Expected a cylinder of the register; got “{cylinder}”.", cylinder=cylinder
            )
    scale = answers.text("scale")
    if scale and scale not in shelf.instruments:
        fields["scale"] = say("Expected a scale of the register; got “{scale}”.", scale=scale)
    if fields:
        return fields
    if act == "decant":
        fields |= _decant_refusals(answers, shelf)
    if act == "weigh":
        fields |= _weigh_refusals(answers, shelf)
    return fields


def _decant_refusals(answers: Answers, shelf: Shelf) -> dict[str, str]:
    source, target = answers.text("source"), answers.text("target")
    if source == target:
        return {"target": "Expected another cylinder than the one decanted from."}
    if reason := unfillable(target, shelf.cylinder(target)):
        return {"target": reason}
    moved = moved_mg("decant", answers)
    if moved is not None and moved <= 0:
        wanted = "less" if answers.text("weighed") == "from" else "more"
        return {"after": say(_NOT_DECANTED, wanted=wanted)}
    if len(shelf.contents_mg.get(source, {})) > 1:
        return {"source": say("{source} holds a mixture; it can only be returned.", source=source)}
    return {}


def _weigh_refusals(answers: Answers, shelf: Shelf) -> dict[str, str]:
    cylinder = answers.text("cylinder")
    if tare_mg(shelf.cylinder(cylinder)) is None:
        return {"cylinder": say(_NO_TARE, cylinder=cylinder)}
    found = weighing(answers, shelf)
    assert found is not None
    if found.found_mg < -found.tolerance_mg:
        return {"gross": say(_BELOW_TARE, cylinder=cylinder)}
    if answers.yes("accept") and found.beyond and not answers.text("reason"):
        return {"reason": "Expected the reason of the difference that is to be booked."}
    return {}


def overfull(act: str, answers: Answers, shelf: Shelf) -> str:
    """Sentence of how far an act overfills a cylinder; empty where it does not."""
    target = answers.text("target") if act == "decant" else answers.text("cylinder")
    if act not in ("decant", "receive"):
        return ""
    added = moved_mg(act, answers) or 0
    row, held = shelf.cylinder(target), shelf.held_mg(target)
    return over_limit(target, row, held, added, shelf.rule_set, shelf.units)


def places(act: str, answers: Answers) -> tuple[str, ...]:
    """Places an act is about, whether or not mass moves."""
    keys = ("source", "target") if act == "decant" else ("cylinder",)
    return tuple(f"cylinder:{answers.text(key)}" for key in keys)


def movements(act: str, answers: Answers, shelf: Shelf) -> tuple[Transfer, ...]:
    """Mass lines of an act."""
    if act == "weigh":
        return _difference(answers, shelf)
    moved = moved_mg(act, answers)
    assert moved is not None
    if moved == 0:
        return ()
    if act == "receive":
        cylinder = answers.text("cylinder")
        kind = shelf.cylinder(cylinder).text("refrigerant")
        return (Transfer("supplier", f"cylinder:{cylinder}", kind, moved, _text(answers, "mass")),)
    if act == "return":
        cylinder = answers.text("cylinder")
        ends = (f"cylinder:{cylinder}", answers.text("to"))
        return _shares(cylinder, ends, moved, _text(answers, "mass"), shelf)
    source, target = answers.text("source"), answers.text("target")
    typed = f"{_text(answers, 'before')} → {_text(answers, 'after')}"
    kind = shelf.cylinder(source).text("refrigerant")
    return (Transfer(f"cylinder:{source}", f"cylinder:{target}", kind, moved, typed),)


def _shares(
    cylinder: str, ends: tuple[str, str], moved: int, typed: str, shelf: Shelf
) -> tuple[Transfer, ...]:
    """A mixed cylinder's content moves in proportion to what was put in."""
    held = {key: each for key, each in shelf.contents_mg.get(cylinder, {}).items() if each > 0}
    total = sum(held.values())
    if len(held) < 2:
        kind = next(iter(held), shelf.cylinder(cylinder).text("refrigerant"))
        return (Transfer(*ends, kind, moved, typed),)
    lines: list[Transfer] = []
    left, left_of = moved, total
    for kind, mass in held.items():
        part = left * mass // left_of
        left, left_of = left - part, left_of - mass
        if part:
            lines.append(Transfer(*ends, kind, part, typed))
    return tuple(lines)


def _difference(answers: Answers, shelf: Shelf) -> tuple[Transfer, ...]:
    found = weighing(answers, shelf)
    assert found is not None
    if not (answers.yes("accept") and found.difference_mg):
        return ()
    place = f"cylinder:{found.cylinder}"
    ends = ("difference", place) if found.difference_mg > 0 else (place, "difference")
    size = abs(found.difference_mg)
    return _shares(found.cylinder, ends, size, _text(answers, "gross"), shelf)


def _text(answers: Answers, key: str) -> str:
    reading: Reading | None = answers.reading(key)
    return "" if reading is None else reading.text


def overdraw_allowed_mg(act: str, answers: Answers, shelf: Shelf) -> dict[str, int]:
    """How far below zero an act may take each cylinder, for what scales can not tell.

    A weighing that is booked says what is there, so it is never an overdraw.
    """
    key = "source" if act == "decant" else "cylinder"
    cylinder = answers.text(key)
    if act == "weigh":
        found = weighing(answers, shelf)
        left = 0 if found is None else found.found_mg
        return {f"cylinder:{cylinder}": -min(0, left, shelf.held_mg(cylinder))}
    scale = shelf.instruments.get(answers.text("scale"))
    held = shelf.held_mg(cylinder) + (tare_mg(shelf.cylinder(cylinder)) or 0)
    return {f"cylinder:{cylinder}": ledger_tolerance_mg(held, scale, shelf.rule_set)}
