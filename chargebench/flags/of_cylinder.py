"""Flags of a cylinder in stock."""

from collections.abc import Mapping
from datetime import date

from chargebench.calc.cylinder import requalification_state, tare_loss
from chargebench.flags.circuit import requalification_flag
from chargebench.flags.flag import Flag
from chargebench.rules import RuleSet
from chargebench.steps import Answers
from chargebench.steps.fill import overfull
from chargebench.units import System, brief, from_mg, shown
from chargebench.words import joined, say


def of_cylinder(
    cylinder: str,
    row: Answers,
    held_mg: Mapping[str, int],
    rule_set: RuleSet,
    today: date,
    units: System = "SI",
) -> tuple[Flag, ...]:
    """Every flag of a cylinder by what it holds and what its row says."""
    about = f"cylinder:{cylinder}"
    found: list[Flag] = []
    for refrigerant, mass in held_mg.items():
        if mass < 0:
            found.append(
                Flag(
                    "check",
                    "balance-below-zero",
                    say(
                        "{cylinder} stands at {mass} of {refrigerant} by the book. Put it on the "
                        "scale and book the difference.",
                        cylinder=cylinder,
                        mass=shown(from_mg(mass), units),
                        refrigerant=refrigerant,
                    ),
                    about,
                    shown(from_mg(mass), units),
                    brief(from_mg(0), units),
                )
            )
    found += _mixed(cylinder, row, held_mg)
    if over := overfull(cylinder, row, 0, sum(held_mg.values()), rule_set, units):
        found.append(Flag("stop", "cylinder-overfilled", over, about, source="AHRI-K"))
    if row.yes("refillable"):
        state = requalification_state(row.date("requalification_due"), today)
        if not state.may_be_filled:
            found.append(requalification_flag(cylinder, row, state.word))
    found += _tare(cylinder, row, rule_set)
    return tuple(found)


def _mixed(cylinder: str, row: Answers, held_mg: Mapping[str, int]) -> list[Flag]:
    held = [name for name, mass in held_mg.items() if mass]
    registered = row.text("refrigerant")
    if row.text("contents") == "mixed waste" or not held or held == [registered]:
        return []
    return [
        Flag(
            "stop",
            "wrong-refrigerant",
            say(
                "{cylinder} is registered for {registered} and holds {held}. Do not use "
                "it; return it as a mixture.",
                cylinder=cylinder,
                registered=registered,
                held=joined(", ", held),
            ),
            f"cylinder:{cylinder}",
            ", ".join(held),
            registered,
        )
    ]


def _tare(cylinder: str, row: Answers, rule_set: RuleSet) -> list[Flag]:
    stamped, found = row.quantity("tare"), row.quantity("tare_found")
    if stamped is None or found is None or stamped.magnitude <= 0:
        return []
    loss = tare_loss(stamped=stamped, found=found, rule=rule_set.cylinder)
    if not loss.blocks_filling:
        return []
    rule = rule_set.cylinder.tare_loss
    return [
        Flag(
            "stop",
            "tare-loss",
            say(
                "{cylinder} lost {share:.1f} % of its stamped tare. Requalify it before it "
                "is filled.",
                cylinder=cylinder,
                share=loss.share.m_as("percent"),
            ),
            f"cylinder:{cylinder}",
            say("{share:.1f} %", share=loss.share.m_as("percent")),
            rule.text,
            f"{rule.source}, {rule.place}",
            rule.mark,
        )
    ]
