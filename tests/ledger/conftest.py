"""A shop file of its own for each test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.ledger import Ledger
from tests.ledger import books


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[Ledger]:
    """An empty shop, open for recording."""
    with Ledger.create(tmp_path / "larkmoor.chargebench") as ledger:
        yield ledger


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A closed shop file with one whole job and a head kept at an export."""
    file = tmp_path / "larkmoor.chargebench"
    with Ledger.create(file) as ledger:
        books.whole_job(ledger)
        ledger.keep_checkpoint("export")
    return file
