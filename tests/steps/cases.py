"""A small invented shop around one job, so that a step's test says only what it is about."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, date, datetime
from functools import cache
from typing import Any

from chargebench import fluids, rules
from chargebench.steps import REGISTERS, STEPS, Answers, Case, Signed, Typed, answer

TODAY = date(2026, 3, 2)
FREEZER = "equipment:E-001"
ANSWERED_AT = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)

EQUIPMENT = {
    "name": "Bakery freezer",
    "site": "L-001",
    "category": "commercial refrigeration",
    "cabinet": "self-contained with doors or drawers",
    "refrigerant": "R290",
    "charge": "100 g",
    "factory_sealed": "yes",
    "low_side_design": "150 psig",
    "high_side_design": "320 psig",
    "volume": "4.5 L",
    "installed": "2025-05-01",
}
NEW = {"refrigerant": "R290", "contents": "new", "refillable": "yes", "tare": "3600 g"}
CYLINDERS: dict[str, dict[str, str]] = {
    "C-014": NEW | {"requalification_due": "2028-06-30"},
    "C-015": NEW
    | {
        "contents": "recovered",
        "tare": "8 kg",
        "water_capacity": "10 kg",
        "requalification_due": "2026-03-02",
    },
    "C-016": NEW | {"refillable": "no"},
    "C-099": {"refrigerant": "R404A", "contents": "mixed waste", "refillable": "yes"},
}
INSTRUMENTS: dict[str, dict[str, str]] = {
    "S-1": {"kind": "scale", "name": "Bench scale", "resolution": "0.1 g"},
    "S-5": {"kind": "scale", "name": "Van scale", "resolution": "5 g"},
    "D-1": {"kind": "leak detector", "name": "Sniffer", "sensitivity": "3 g/yr"},
    "R-1": {"kind": "recovery machine", "name": "Machine", "made": "2015-01-01"},
}


@cache
def rule_set_of(name: str) -> rules.RuleSet:
    """A rule set, read once."""
    return rules.load(name)


def row(register: str, typed: Typed) -> Answers:
    """A register row understood."""
    return answer(REGISTERS[register], typed)


def case(
    answers: Mapping[str, Typed] | None = None,
    *,
    signed: tuple[str, ...] = (),
    equipment: Typed | None = None,
    site: Typed | None = None,
    cylinders: Mapping[str, Typed] | None = None,
    instruments: Mapping[str, Typed] | None = None,
    rule_set: str = "us-federal",
    **changes: Any,
) -> Case:
    """One job on the bakery freezer with these steps typed; rows given are added to the usual."""
    typed = answers or {}
    bare = Case(
        job="J",
        number="B-0001",
        state="open",
        today=TODAY,
        rule_set=rule_set_of(rule_set),
        equipment_id="E-001",
        equipment=row("equipment", {**EQUIPMENT, **(equipment or {})}),
        site=row("site", {"name": "Bakery", **(site or {})}),
        answers={key: answer(form, typed.get(key, {})) for key, form in STEPS.items()},
        signed={
            key: Signed(f"entry {key}", number, "P-01", ANSWERED_AT)
            for number, key in enumerate(signed, 1)
        },
        cylinders={k: row("cylinder", v) for k, v in {**CYLINDERS, **(cylinders or {})}.items()},
        cylinder_content_mg={"C-014": {"R290": 400_000}},
        instruments={
            k: row("instrument", v) for k, v in {**INSTRUMENTS, **(instruments or {})}.items()
        },
    )
    name = bare.nameplate("refrigerant")
    return replace(bare, refrigerant=fluids.refrigerant(name) if name else None, **changes)
