"""One thing under two ids: what it holds is of both, until it is decided otherwise."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.errors import PostingRefused
from chargebench.ledger import SAME, Ledger, NewEntry, Transfer, pair_id
from tests.ledger import books, chains
from tests.ledger.books import BY, NOON
from tests.ledger.chains import decide


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[Ledger]:
    with chains.shop(tmp_path) as ledger:
        yield ledger


def test_that_one_cylinder_under_two_ids_holds_what_both_hold_until_it_is_decided_otherwise(
    shop: Ledger,
) -> None:
    for cylinder, mass_mg in (("C-5", 300), ("C-D-001", 200)):
        books.receive(shop, mass_mg, cylinder=f"cylinder:{cylinder}")
    decide(shop, "C-5", "C-D-001", same=True)
    assert [shop.balance(f"cylinder:{c}", "R290") for c in ("C-5", "C-D-001")] == [500, 500]
    out = Transfer("cylinder:C-D-001", "reclaimer", "R290", 450, "450 mg")
    shop.post(NewEntry("returned", BY, NOON, {}, (out,)))  # more than either id was filled with
    with pytest.raises(PostingRefused, match=r"C-5 holds 0\.05 g"):
        shop.post(NewEntry("returned", BY, NOON, {}, (out,)))
    rows = shop.history("cylinder:C-5")
    assert [(row.mass_mg, row.running_mg) for row in rows] == [(-450, 50), (200, 500), (300, 300)]
    assert shop.history("cylinder:C-D-001") == rows
    assert shop.verify().ok
    decide(shop, "C-5", "C-D-001", same=False)
    assert [shop.balance(f"cylinder:{c}", "R290") for c in ("C-5", "C-D-001")] == [300, -250]
    assert shop.verify().ok


@pytest.mark.parametrize(
    "row",
    [
        {"register": "site", "one": "a", "other": "b", "same": "yes", "reason": ""},
        {"register": "cylinder", "one": "a", "other": "a", "same": "yes", "reason": ""},
        {"register": "cylinder", "one": "a", "other": "b", "same": "perhaps", "reason": ""},
        {"register": "cylinder", "one": "a", "other": "c", "same": "yes", "reason": ""},
        {"register": "cylinder"},
    ],
)
def test_that_a_decision_is_on_two_rows_of_one_register(shop: Ledger, row: dict[str, str]) -> None:
    payload = {"register": SAME, "id": pair_id("cylinder", "a", "b"), "after": row}
    with pytest.raises(PostingRefused, match="decision"):
        shop.post(NewEntry(SAME, BY, NOON, payload))


def test_that_deciding_in_a_circle_leaves_one_thing(shop: Ledger) -> None:
    for one, other in (("C-1", "C-2"), ("C-2", "C-3"), ("C-3", "C-1")):
        decide(shop, one, other, same=True)
    assert shop.names() == {f"cylinder:C-{n}": "cylinder:C-1" for n in (1, 2, 3)}
