"""A few of the calls the fault report fails, and a loss that its check must see."""

from pathlib import Path

import pytest

from chargebench.ledger import Ledger
from tests.faults import disk
from tests.ledger import books


def test_that_an_acknowledged_entry_that_is_missing_is_counted_as_lost(tmp_path: Path) -> None:
    with Ledger.create(tmp_path / "shop.chargebench") as ledger:
        entry = books.receive(ledger)
    outcome = disk.Outcome("control")
    disk.check(outcome, tmp_path, [entry.id])
    assert outcome.ok
    disk.check(outcome, tmp_path, [entry.id, "acknowledged and never recorded"])
    assert (outcome.lost, outcome.ok) == (1, False)


@pytest.mark.slow
def test_that_a_disk_that_fails_loses_nothing_acknowledged() -> None:
    outcomes = disk.every_call(step=20, at_most=61)
    if not outcomes:
        pytest.skip("a failing disk takes Linux and gcc; the disk that is full is tried elsewhere")
    assert all(outcome.ok for outcome in outcomes), outcomes
