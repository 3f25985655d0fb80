"""Job files that leave: what one shop writes, another takes in with the same words and masses."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench import jobfile
from chargebench.desk import Desk, sample
from chargebench.ledger import Entry
from chargebench.reports.manifest import check_manifest
from chargebench.resource import sample_jobs

SHOP, PASTRY = "00-shop.json", "03-pastry-cabinet-compressor-r600a.json"  # one step done twice


@pytest.fixture
def told(sample_shop: Path) -> Iterator[Desk]:
    """The sample shop, only read."""
    with Desk.open_reading(sample_shop) as desk:
        yield desk


@pytest.fixture
def other(tmp_path: Path) -> Iterator[Desk]:
    """Another shop with the same cylinders, before any job."""
    first = jobfile.read(sample_jobs() / SHOP)
    assert first.shop is not None
    key, person = next(iter(first.register["person"].items()))
    with Desk.create(tmp_path / "other.chargebench", first.shop, person, person_id=key) as desk:
        desk.take_in(sample_jobs() / SHOP)
        yield desk


def recorded(desk: Desk, job: str) -> list[tuple[str, object, object]]:
    """What a job's entries say and move, without what differs between shops: ids and times."""
    return [
        (entry.kind, entry.payload.get("typed"), entry.transfers)
        for entry in desk.reading.entries(job=job)
    ]


def pastry(desk: Desk) -> str:
    (line,) = desk.jobs("pastry")
    return line.id


def test_that_a_job_file_says_what_the_file_it_came_from_said(told: Desk) -> None:
    written = jobfile.read(told.job_file(pastry(told)))
    came = jobfile.read(sample_jobs() / PASTRY)
    assert written.job == came.job


def test_that_another_shop_takes_in_the_same_words_and_masses(
    told: Desk, other: Desk, tmp_path: Path
) -> None:
    path = tmp_path / "job.json"
    path.write_bytes(told.job_file(pastry(told)))
    taken: list[Entry] = other.take_in(path)
    assert taken[0].kind == "taken-in"
    assert recorded(other, pastry(other)) == recorded(told, pastry(told))


def test_that_an_open_job_leaves_what_is_recorded(told: Desk) -> None:
    line = told.jobs(state="open")[0]
    written = jobfile.read(told.job_file(line.id)).job
    assert written is not None
    assert written.closed_at is None
    recorded_steps = {step.key for step in told.job(line.id).steps if step.state != "open"}
    assert {each.step for each in written.steps} == recorded_steps
    assert len(written.steps) == len(recorded_steps)


def test_that_an_export_holds_a_job_file_for_each_job(told: Desk, tmp_path: Path) -> None:
    exported = told.export(tmp_path / "out")
    names = {path.name for path in exported.files if path.parent.name == "jobs"}
    assert names == {f"{line.number}.json" for line in told.jobs()}
    assert check_manifest(exported.folder) == ()


def test_that_a_step_taken_back_and_left_open_does_not_leave(tmp_path: Path) -> None:
    with sample.build(tmp_path / "s.chargebench") as desk:
        line = desk.jobs(state="open")[0]
        weighed = next(step for step in desk.job(line.id).steps if step.key == "weigh_in")
        desk.reverse(weighed.entry, "overfilled")
        written = jobfile.read(desk.job_file(line.id)).job
        assert written is not None
        assert "weigh_in" not in {each.step for each in written.steps}
