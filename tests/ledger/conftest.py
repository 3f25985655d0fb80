"""A shop of its own for each test: as a file, and where both must do the same, on a server too."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.ledger import Ledger
from tests.ledger import books
from tests.postgres.server import Site


@pytest.fixture(scope="session")
def made_site(postgres: str) -> Site:
    """A shop on a server as it was made, to be cloned."""
    site = Site.made(postgres)
    site.shop().close()
    return site


@pytest.fixture(params=["file", "server"])
def shop(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Ledger]:
    """An empty shop, open for recording."""
    if request.param == "server":
        site: Site = request.getfixturevalue("made_site").clone()
        with Ledger.open(site.address()) as ledger:
            yield ledger
        site.drop()
        return
    with Ledger.create(tmp_path / "larkmoor.chargebench") as ledger:
        yield ledger


@pytest.fixture
def filed(tmp_path: Path) -> Iterator[Ledger]:
    """An empty shop in a file, for what only a file has."""
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
