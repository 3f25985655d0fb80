"""The sample shop's records, gathered once."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from chargebench.desk import Desk, sample
from chargebench.reports import AuditContent
from chargebench.reports.workbook import write_workbook


@pytest.fixture(scope="session")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Desk]:
    """The sample shop, opened."""
    desk = sample.build(tmp_path_factory.mktemp("sample") / "larkmoor.chargebench")
    yield desk
    desk.close()


@pytest.fixture(scope="session")
def content(shop: Desk) -> AuditContent:
    """All that the sample shop's workbook says."""
    gathered = shop.content()
    entries = list(gathered.entries())
    return replace(gathered, entries=lambda: iter(entries))


@pytest.fixture(scope="session")
def workbook(content: AuditContent, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The sample shop's workbook."""
    path = tmp_path_factory.mktemp("workbook") / "audit.xlsx"
    write_workbook(content, path)
    return path
