"""A shop file for each test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.desk import Desk
from tests.desk import shops


@pytest.fixture
def desk(tmp_path: Path) -> Iterator[Desk]:
    """The invented shop, open."""
    with shops.build(tmp_path / "shop.chargebench") as opened:
        yield opened
