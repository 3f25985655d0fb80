"""A shop file of its own for each test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.ledger import Ledger


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[Ledger]:
    """An empty shop, open for recording."""
    with Ledger.create(tmp_path / "larkmoor.chargebench") as ledger:
        yield ledger
