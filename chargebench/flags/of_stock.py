"""Flags of stock work as it is typed."""

from chargebench.flags.flag import Flag
from chargebench.steps import Answers, Worked, stock
from chargebench.steps.stock import Shelf, Weighing
from chargebench.units import System, from_mg, shown
from chargebench.words import say


def of_stock(act: str, answers: Answers, shelf: Shelf, worked: Worked) -> tuple[Flag, ...]:
    """Flags an act raises."""
    found: list[Flag] = []
    if over := stock.overfull(act, answers, shelf):
        target = answers.text("target") or answers.text("cylinder")
        found.append(
            Flag("stop", "cylinder-overfilled", over, f"cylinder:{target}", source="AHRI-K")
        )
    if isinstance(worked.result, Weighing) and worked.result.beyond:
        found.append(unaccounted(worked.result, shelf.units))
    return tuple(found)


def unaccounted(weighing: Weighing, units: System = "SI") -> Flag:
    """Mass by the book that the scale does not find, or the other way."""
    difference = from_mg(weighing.difference_mg)
    size = from_mg(abs(weighing.difference_mg))
    tolerance = shown(from_mg(weighing.tolerance_mg), units)
    where = "more" if weighing.difference_mg > 0 else "less"
    return Flag(
        "check",
        "unaccounted-mass",
        say(
            "{cylinder} weighs {size} {where} than the book says, beyond ±{tolerance}. "
            "Find out why, then book the difference.",
            cylinder=weighing.cylinder,
            size=shown(size, units),
            where=where,
            tolerance=tolerance,
        ),
        f"cylinder:{weighing.cylinder}",
        shown(difference, units),
        tolerance,
        "HVACLAB",
    )
