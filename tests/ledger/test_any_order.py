"""Three benches that hand over in any order end with the same books."""

from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from chargebench.ledger import Ledger
from tests.ledger import books, chains
from tests.ledger.books import CYLINDER
from tests.ledger.chains import decide, draw


def work(benches: dict[str, Ledger], at: str, what: str, mass_mg: int) -> Iterator[tuple[str, int]]:
    """One act at one bench; the entry and what the cylinder gained by it."""
    ledger = benches[at]
    if what in benches:
        chains.take(ledger, chains.handed(benches[what]))
    elif what == "draw":
        yield draw(ledger, mass_mg).id, -mass_mg
    elif what == "receive":
        yield books.receive(ledger, mass_mg).id, mass_mg
    elif what == "decide":
        decide(ledger, "C-014", "C-015", same=bool(mass_mg % 2))
    else:
        books.open_job(ledger)


ACTS = st.lists(
    st.tuples(
        st.sampled_from(["B", "D", "F"]),
        st.sampled_from(["draw", "receive", "decide", "job", "B", "D", "F"]),
        st.integers(0, 3_000_000),
    ),
    max_size=14,
)


@given(acts=ACTS, order=st.permutations(["B", "D", "F"]))
@settings(max_examples=40)
def test_that_balances_are_the_same_whoever_hands_over_first(
    tmp_path_factory: pytest.TempPathFactory,
    acts: list[tuple[str, str, int]],
    order: list[str],
) -> None:
    """Three benches work, now and then one takes another's file; in the end all know all."""
    folder = tmp_path_factory.mktemp("benches")
    with chains.shop(folder) as b, chains.further(b, "D") as d, chains.further(b, "F") as f:
        benches = {"B": b, "D": d, "F": f}
        moved = dict(worked for act in acts for worked in work(benches, *act))
        for giver in order:
            for taker in reversed(order):
                chains.take(benches[taker], chains.handed(benches[giver]))
        for giver in order:  # what the last takers recorded of the first givers
            for ledger in benches.values():
                chains.take(ledger, chains.handed(benches[giver]))
        # Told from the acts alone: 4 650 000 delivered, 99 523 used before the benches parted.
        left = 4_650_000 - 99_523 + sum(moved.values())
        for ledger in benches.values():
            assert ledger.balance(CYLINDER, "R290") == left
            assert set(books.sums(ledger).values()) == {0}
            assert set(moved) <= {entry.id for entry in ledger.entries()}
            assert ledger.verify().problems == ()
        assert chains.held(b) == chains.held(d) == chains.held(f)
