"""A shop on a server of its own for each test, and one with a job in it to be tried at."""

from collections.abc import Iterator

import pytest

from tests.ledger import books
from tests.postgres.server import Site


@pytest.fixture
def site(postgres: str) -> Iterator[Site]:
    """An empty database with an owner who is no superuser."""
    made = Site.made(postgres)
    yield made
    made.drop()


@pytest.fixture
def worked(site: Site) -> Site:
    """A shop with registers, a delivery and a whole job, made by its owner as bench B."""
    with site.shop() as ledger:
        books.whole_job(ledger)
        ledger.keep_checkpoint("export")
    return site
