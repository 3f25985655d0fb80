"""Each broken job file gets a clear refusal, word for word as kept."""

import sys
from pathlib import Path
from typing import Any

import pytest

from chargebench import jobfile
from chargebench.errors import JobFileRefused
from chargebench.jobfile.upgrade import UPGRADES
from tests.jobfile.broken import BROKEN, file
from tests.messages.kept import kept

reading = sys.modules["chargebench.jobfile.read"]  # the package gives the name to its function


@pytest.mark.parametrize("name", BROKEN)
def test_that_a_broken_file_is_refused_in_the_words_kept(name: str) -> None:
    with pytest.raises(JobFileRefused) as refusal:
        jobfile.read(BROKEN[name])
    assert str(refusal.value) == kept("job_file")[name]


def test_that_no_words_are_kept_for_a_file_nobody_tries() -> None:
    assert list(kept("job_file")) == list(BROKEN)


def test_that_every_refusal_names_a_place_or_says_what_was_expected() -> None:
    vague = [
        name
        for name, said in kept("job_file").items()
        if not any(word in said for word in (": ", "Expected"))
    ]
    assert vague == []


def test_that_the_file_the_broken_ones_are_made_from_is_read() -> None:
    read = jobfile.read(file())
    assert read.job is not None
    assert [step.step for step in read.job.steps] == ["nameplate", "weigh_in", "recovery"]


def test_that_a_file_on_disk_is_refused_by_its_size_before_it_is_read(tmp_path: Path) -> None:
    large = tmp_path / "large.json"
    with large.open("wb") as hole:
        hole.truncate(50_000_000)
    with pytest.raises(JobFileRefused, match="this one has 50 000 000"):
        jobfile.read(large)


@pytest.mark.parametrize("name", ["missing.json", "."])
def test_that_a_path_that_is_no_file_is_refused_kindly(tmp_path: Path, name: str) -> None:
    with pytest.raises(JobFileRefused, match="Expected a job file at"):
        jobfile.read(tmp_path / name)


def test_that_an_older_file_is_brought_to_the_format_of_today(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    # No format is older than the first yet: a step from it to an imagined second one.
    def rename(tree: dict[str, Any]) -> dict[str, Any]:
        return {("about" if key == "remarks" else key): value for key, value in tree.items()}

    monkeypatch.setattr(reading, "VERSION", 2)
    monkeypatch.setitem(UPGRADES, 1, rename)
    assert jobfile.read(file(lambda tree: tree.update(remarks="old"))).about == "old"
