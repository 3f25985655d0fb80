"""What another bench can not have signed is refused; what it did apart is said in words."""

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from chargebench import flags
from chargebench.desk import Desk
from chargebench.errors import ChainFileRefused
from chargebench.ledger import Conflict, NewEntry
from tests.desk import benches, shops


@pytest.fixture
def both(tmp_path: Path) -> Iterator[tuple[Desk, Desk]]:
    shop, bench = benches.shop_and_bench(tmp_path)
    with shop, bench:
        yield shop, bench


SIGNED: dict[str, dict[str, Any]] = {
    "step-signed": {"step": "weigh_in", "typed": {"kind": 3}, "rule_set": "", "flags": []},
    "follow-up": {"step": "follow_up"},
    "step-not-needed": {"step": "weigh_in"},
    "job-closed": {"flags": [{"level": "loud", "key": "", "says": "", "about": ""}]},
    "weighed": {"places": ["cylinder:C-001"], "weighed": {"expected_mg": 1}},
    "handed-over": {"file": "", "sha256": "", "chains": [], "conflicts": [{"moon": 1}]},
    "settled": {"entry": "x"},
    "bench-named": {},
    "taken-in": {"file": "x"},
}


@pytest.mark.parametrize("kind", SIGNED)
def test_that_what_the_desk_could_not_read_is_refused_whole(
    both: tuple[Desk, Desk], tmp_path: Path, kind: str
) -> None:
    shop, bench = both
    job = bench.open_job("E-001") if kind == "job-closed" else None
    bench.ledger.post(NewEntry(kind, "P-01", shops.at("2026-11-20"), SIGNED[kind], job=job))
    before = shop.reading.heads()
    with pytest.raises(ChainFileRefused, match=f"not what this program signs as “{kind}”"):
        benches.pass_on(bench, shop, tmp_path)
    assert shop.reading.heads() == before


def test_that_a_step_and_an_id_nobody_knows_are_refused(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    when = shops.at("2026-11-20")
    bench.ledger.post(
        NewEntry("step-not-needed", "P-01", when, {"step": "moonwalk", "reason": "x"})
    )
    with pytest.raises(ChainFileRefused, match="no step “moonwalk”"):
        benches.pass_on(bench, shop, tmp_path)


def test_that_a_row_under_an_id_that_can_not_be_one_is_refused(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    bench.ledger.put_row("site", "../L", {"name": "x"}, "P-01", shops.at("2026-11-20"))
    with pytest.raises(ChainFileRefused, match="A row's id of letters"):
        benches.pass_on(bench, shop, tmp_path)


@pytest.mark.parametrize(
    ("conflict", "says"),
    [
        (Conflict("mixed", place="cylinder:C-1", refrigerant="R290"), "Do not use it"),
        (Conflict("signed-twice", "D", 7, step="weigh_in"), "take one back"),
        (Conflict("reversed-twice", "D", 7), "turned round twice"),
        (Conflict("own-entries", bench="B"), "older copy"),
        (
            Conflict("row", "D", 7, register="cylinder", row="C-1",
                     here={"serial": "1"}, there={"serial": "2"}, stands="here"),
            "perhaps two things under one id",
        ),
        (
            Conflict("row", "D", 7, register="site", row="L-1",
                     here={"name": "a"}, there={"name": "b"}, stands="here"),
            "The words here stand",
        ),
    ],
)  # fmt: skip
def test_that_every_conflict_says_what_to_do(conflict: Conflict, says: str) -> None:
    flag = flags.of_conflict(conflict, "conflict:x/0", "D", "B-0001")
    assert says in flag.says
    assert flag.key == f"bench-{conflict.what}"
    assert flag.level == ("stop" if conflict.what == "mixed" else "check")
