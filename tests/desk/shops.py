"""A small invented shop to work in: two equipments, four cylinders, a scale, two people."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, StepRefused

SHOP = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"}
PERSON = {"name": "N. Okafor", "role": "technician"}
FREEZER = {
    "name": "Bakery freezer",
    "site": "L-001",
    "category": "commercial refrigeration",
    "cabinet": "self-contained with doors or drawers",
    "refrigerant": "R290",
    "charge": "100 g",
    "factory_sealed": "yes",
    "low_side_design": "150 psig",
}
WALK_IN = {
    "name": "Walk-in",
    "site": "L-001",
    "category": "commercial refrigeration",
    "cabinet": "walk-in or remote condensing",
    "refrigerant": "R449A",
    "charge": "20 lb",
}
SAFE = {"refillable": "yes", "requalification_due": "2099-12-31"}
CYLINDERS = {
    "C-001": SAFE | {"refrigerant": "R290", "contents": "new", "tare": "3600 g"},
    "C-002": SAFE | {"refrigerant": "R290", "contents": "recovered", "tare": "8 kg",
                     "water_capacity": "10 kg"},
    "C-003": SAFE | {"refrigerant": "R449A", "contents": "new", "tare": "6 kg"},
    "C-009": SAFE | {"refrigerant": "R449A", "contents": "mixed waste", "tare": "8 kg"},
}  # fmt: skip
SCALE = {"kind": "scale", "name": "Bench scale", "resolution": "0.1 g"}
NAMEPLATE = {"refrigerant": "R290", "charge": "100 g"}
NO_HOSE = "no hose, closed at the equipment"


def build(path: Path) -> Desk:
    """The shop: entries 1 to 10."""
    desk = Desk.create(path, SHOP, PERSON)
    desk.save_row("site", "L-001", {"name": "Bakery, Quay Street"})
    desk.save_row("equipment", "E-001", FREEZER)
    desk.save_row("equipment", "E-002", WALK_IN)
    desk.save_row("instrument", "I-001", SCALE)
    for cylinder, row in CYLINDERS.items():
        desk.save_row("cylinder", cylinder, row)
    desk.save_row("person", "P-02", {"name": "L. Brandvold", "role": "technician"})
    return desk


@contextmanager
def expect_refusal(desk: Desk, refusal: type[ChargebenchError], says: str = "") -> Iterator[None]:
    """What is done within is refused and leaves no entry."""
    before = desk.reading.head()
    with pytest.raises(refusal, match=says):
        yield
    assert desk.reading.head() == before
    assert sum(1 for _ in desk.entries()) == before[0]


@contextmanager
def expect_refused_fields(desk: Desk, *paths: str) -> Iterator[None]:
    """A form is refused at exactly these fields and leaves no entry."""
    before = desk.reading.head()
    with pytest.raises(StepRefused) as refusal:
        yield
    assert sorted(refusal.value.fields) == sorted(paths)
    assert desk.reading.head() == before


def at(day: str, clock: str = "10:00") -> datetime:
    """A moment on the bench's wall clock."""
    return datetime.fromisoformat(f"{day}T{clock}").astimezone()


def receive(desk: Desk, mass: str = "400 g", cylinder: str = "C-001", **when: Any) -> str:
    """A delivery; the entry's id."""
    return desk.act("receive", {"cylinder": cylinder, "mass": mass}, **when).id


def weigh_in(grams: float, cylinder: str = "C-001", kind: str = "into an evacuated system") -> Any:
    """A weigh-in of so many grams, typed as start and end on the scale."""
    return {
        "kind": kind,
        "lines": [
            {"cylinder": cylinder, "scale": "I-001", "arrangement": "zeroed display",
             "start": "0 g", "end": f"{-grams:.3f} g", "hose_state": NO_HOSE}
        ],
    }  # fmt: skip


def recovery(grams: float, cylinder: str = "C-002") -> Any:
    """A recovery of so many grams."""
    line = {"cylinder": cylinder, "scale": "I-001", "before": "0 g", "after": f"{grams:.3f} g"}
    return {"how": "recovered", "opening": "opened for repair", "lines": [line]}


def held(desk: Desk, place: str, refrigerant: str = "R290") -> int:
    """What a place holds by the book, in milligrams."""
    return desk.reading.balance(place, refrigerant)


def sums(desk: Desk) -> dict[str, int]:
    """Balances of every refrigerant over all places."""
    total: dict[str, int] = {}
    for each in desk.reading.balances(""):
        total[each.refrigerant] = total.get(each.refrigerant, 0) + each.mass_mg
    return total
