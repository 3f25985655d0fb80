"""What a transfer counts as, and that counting follows every reversal."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from chargebench.ledger import Transfer
from chargebench.reports.movement import MOVEMENTS, moved, movement
from tests.reports.books import entry

PLACES = (
    "cylinder:C-014",
    "cylinder:C-031",
    "equipment:E-001",
    "supplier",
    "reclaimer",
    "destruction",
    "atmosphere",
    "outside",
    "difference",
)
ENDS = st.tuples(st.sampled_from(PLACES), st.sampled_from(PLACES)).filter(
    lambda two: two[0] != two[1]
)


@pytest.mark.parametrize(
    ("source", "target", "counts_as"),
    [
        ("supplier", "cylinder:C-014", "received"),
        ("cylinder:C-014", "equipment:E-001", "charged"),
        ("equipment:E-001", "cylinder:C-031", "recovered"),
        ("equipment:E-001", "atmosphere", "released or lost"),
        ("cylinder:C-014", "atmosphere", "released or lost"),
        ("cylinder:C-031", "reclaimer", "returned"),
        ("cylinder:C-014", "cylinder:C-031", "decanted"),
        ("outside", "equipment:E-001", "assumed content"),
        ("cylinder:C-014", "difference", "difference"),
        ("supplier", "equipment:E-001", "other"),
    ],
)
def test_that_ends_tell_the_movement(source: str, target: str, counts_as: str) -> None:
    assert movement(source, target) == counts_as


@given(ENDS, st.integers(1, 10**9))
def test_that_an_entry_and_its_reversal_count_to_nothing(
    ends: tuple[str, str], mass_mg: int
) -> None:
    line = Transfer(*ends, "R290", mass_mg, "")
    both = list(moved(iter((entry(1, line), entry(2, line.turned(), kind="reversal")))))
    assert both[0].movement == both[1].movement
    assert both[0].movement in MOVEMENTS
    assert sum(each.counted_mg for each in both) == 0


def test_that_what_weighing_finds_counts_up_and_what_it_misses_down() -> None:
    found = Transfer("difference", "cylinder:C-014", "R290", 5, "")
    counted = [each.counted_mg for each in moved(iter((entry(1, found, found.turned()),)))]
    assert counted == [5, -5]
