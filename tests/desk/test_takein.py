"""Job files taken in: all of a file or nothing, and never twice."""

import json
from collections.abc import Iterator
from copy import deepcopy
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest

from chargebench.desk import Desk, sample
from chargebench.errors import JobFileRefused
from chargebench.resource import sample_jobs
from tests.desk import shops
from tests.desk.shops import expect_refusal, held

WHEN = "2026-03-02T{}-05:00"
VISIT: dict[str, Any] = {
    "chargebench_job": 1,
    "about": "A recharge.",
    "register": {  # all that the job names; what the shop has already in the same words stays
        "site": {"L-001": {"name": "Bakery, Quay Street"}},
        "cylinder": {"C-001": shops.CYLINDERS["C-001"]},
        "instrument": {"I-001": shops.SCALE},
        "equipment": {"E-003": shops.FREEZER | {"name": "Pastry cabinet"}},
        "person": {"P-03": {"name": "S. Ito", "role": "technician"}},
    },
    "stock": [
        {
            "act": "receive",
            "by": "P-03",
            "happened_at": WHEN.format("08:00"),
            "typed": {"cylinder": "C-001", "mass": "400 g"},
        }
    ],
    "job": {
        "equipment": "E-003",
        "reason": "warm",
        "opened_at": WHEN.format("08:30"),
        "by": "P-03",
        "steps": [
            {
                "step": "nameplate",
                "by": "P-03",
                "happened_at": WHEN.format("08:40"),
                "typed": shops.NAMEPLATE,
            },
            {
                "step": "weigh_in",
                "by": "P-03",
                "happened_at": WHEN.format("09:40"),
                "typed": shops.weigh_in(60),
            },
            {
                "step": "weigh_in",
                "by": "P-03",
                "happened_at": WHEN.format("09:50"),
                "again": "misread the scale",
                "typed": shops.weigh_in(99),
            },
            {
                "step": "support",
                "by": "P-03",
                "happened_at": WHEN.format("09:55"),
                "not_needed": "nobody called",
            },
        ],
    },
}


def write(folder: Path, visit: dict[str, Any]) -> Path:
    path = folder / "visit.json"
    path.write_text(json.dumps(visit), encoding="utf-8")
    return path


def test_that_a_job_file_becomes_entries_of_this_bench(desk: Desk, tmp_path: Path) -> None:
    before = desk.reading.head()[0]
    entries = desk.take_in(write(tmp_path, VISIT))
    kinds = [entry.kind for entry in entries]
    assert kinds == [
        "taken-in", "register", "register", "received", "job-opened", "step-signed",
        "step-signed", "reversal", "step-signed", "step-not-needed",
    ]  # fmt: skip
    assert [entry.number for entry in entries] == list(range(before + 1, before + 11))
    assert {entry.by for entry in entries[3:]} == {"P-03"}
    assert entries[5].happened_at == datetime.fromisoformat(WHEN.format("08:40"))
    assert held(desk, "cylinder:C-001") == 301_000
    assert desk.person == "P-01"  # who signs here has not changed
    assert [line.title for line in desk.jobs()] == ["Pastry cabinet, Bakery, Quay Street"]
    assert shops.sums(desk) == {"R290": 0}
    assert desk.verify().ok


def test_that_the_same_file_is_taken_in_once(desk: Desk, tmp_path: Path) -> None:
    path = write(tmp_path, VISIT)
    desk.take_in(path)
    with expect_refusal(desk, JobFileRefused, "visit.json was taken in before"):
        desk.take_in(path)
    again = path.rename(tmp_path / "another name.json")
    with expect_refusal(desk, JobFileRefused, "was taken in before"):
        desk.take_in(again)


def _spoiled() -> Iterator[tuple[str, dict[str, Any]]]:
    """Files whose last part can not be recorded, after much that can."""
    visit = deepcopy(VISIT)
    visit["job"]["steps"][2]["typed"] = shops.weigh_in(900)
    yield "holds", visit  # more than the cylinder has
    visit = deepcopy(VISIT)
    visit["job"]["steps"][2]["typed"] = shops.weigh_in(99, "C-777")
    yield "C-777", visit
    visit = deepcopy(VISIT)
    del visit["job"]["steps"][2]["again"]
    yield "weigh_in|signed", visit
    visit = deepcopy(VISIT)
    visit["job"]["closed_at"] = WHEN.format("11:00")
    yield "every step signed or set aside", visit
    visit = deepcopy(VISIT)
    visit["job"]["equipment"] = "E-777"
    yield "E-777", visit
    visit = deepcopy(VISIT)
    visit["register"]["person"]["P-02"] = {"name": "Somebody else", "role": "officer"}
    yield r"register\.person\.P-02", visit
    visit = deepcopy(VISIT)
    visit["stock"][0]["typed"]["mass"] = "1,234 g"
    yield "1,234", visit


@pytest.mark.parametrize(("says", "visit"), list(_spoiled()))
def test_that_a_file_is_taken_in_whole_or_not_at_all(
    desk: Desk, tmp_path: Path, says: str, visit: dict[str, Any]
) -> None:
    rows, balances = desk.rows("equipment"), desk.reading.balances("")
    with expect_refusal(desk, JobFileRefused, says):
        desk.take_in(write(tmp_path, visit))
    assert desk.rows("equipment") == rows
    assert desk.reading.balances("") == balances
    assert (desk.jobs(), desk.person) == ([], "P-01")
    shops.receive(desk)  # the bench goes on as if nothing had been
    assert desk.verify().ok


def test_that_the_sample_shop_is_conserved_and_verifies(tmp_path: Path) -> None:
    with sample.build(tmp_path / "sample.chargebench") as desk:
        assert set(shops.sums(desk).values()) == {0}
        assert desk.verify().ok
        taken = [entry.payload["file"] for entry in desk.reading.entries(kind="taken-in")]
        assert taken == sorted(path.name for path in sample_jobs().glob("*.json"))
