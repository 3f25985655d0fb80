"""A refused job file leaves the shop as it was: no entry, no row, no job."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import JobFileRefused
from tests.jobfile.broken import BROKEN, file

SHOP = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "us-federal"}
PERSON = {"name": "N. Okafor", "role": "technician"}


@pytest.fixture(scope="module")
def desk(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Desk]:
    made = Desk.create(tmp_path_factory.mktemp("shop") / "larkmoor.chargebench", SHOP, PERSON)
    yield made
    made.close()


@pytest.mark.parametrize("name", BROKEN)
def test_that_a_refused_file_changes_nothing(desk: Desk, tmp_path: Path, name: str) -> None:
    path = tmp_path / "job.json"
    path.write_bytes(BROKEN[name])
    before = (desk.ledger.head(), desk.rows("equipment"), desk.jobs())
    with pytest.raises(JobFileRefused):
        desk.take_in(path)
    assert (desk.ledger.head(), desk.rows("equipment"), desk.jobs()) == before


def test_that_a_file_whose_last_step_can_not_be_recorded_changes_nothing(
    desk: Desk, tmp_path: Path
) -> None:
    # All of it reads well, but the cylinder holds less than the weigh-in draws.
    path = tmp_path / "job.json"
    path.write_bytes(
        file(
            lambda tree: tree["job"]["steps"][1]["typed"]["lines"][0].update(
                start="9312.5 g", end="27.4 g"
            )
        )
    )
    before = (desk.ledger.head(), desk.rows("equipment"), desk.jobs())
    with pytest.raises(JobFileRefused, match=r"job\.steps\[1\]"):
        desk.take_in(path)
    assert (desk.ledger.head(), desk.rows("equipment"), desk.jobs()) == before
