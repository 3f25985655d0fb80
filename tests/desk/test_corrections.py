"""Corrections: what was signed stays beside its reversal and what took its place."""

import pytest

from chargebench.desk import Correction, Desk
from chargebench.errors import ChargebenchError, JobClosed, NotReversible
from tests.desk import shops
from tests.desk.shops import expect_refusal


@pytest.fixture
def job(desk: Desk) -> str:
    """A job whose weigh-in of 90 g was signed from 400 g received."""
    shops.receive(desk)
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", shops.NAMEPLATE)
    desk.sign(job, "weigh_in", shops.weigh_in(90))
    return job


def _signed(desk: Desk, job: str, step: str) -> str:
    return next(each.entry for each in desk.job(job).steps if each.key == step)


def test_that_a_step_done_again_names_what_it_replaces(desk: Desk, job: str) -> None:
    first = _signed(desk, job, "weigh_in")
    reversal = desk.reverse(first, "read from the wrong scale")
    second = desk.sign(job, "weigh_in", shops.weigh_in(95))
    assert shops.held(desk, "cylinder:C-001") == 400_000 - 95_000
    assert second.payload["replaces"] == first
    was, back = desk.taken_back(job, "weigh_in")[0]
    assert (was.id, back.id) == (first, reversal.id)
    assert back.payload["reason"] == "read from the wrong scale"
    of_first, of_second = (desk.correction(desk.entry(each)) for each in (first, second.id))
    assert of_first == Correction(reversed_by=reversal, replaced_by=second)
    assert of_second == Correction(replaces=desk.entry(first))
    assert desk.correction(reversal) == Correction(reverses=desk.entry(first))
    assert desk.reversed_among([first, second.id]) == {first}
    assert desk.verify().ok


def test_that_a_step_signed_once_replaces_nothing(desk: Desk, job: str) -> None:
    assert "replaces" not in desk.entry(_signed(desk, job, "weigh_in")).payload
    assert desk.taken_back(job, "weigh_in") == []


def test_that_stock_work_taken_back_stands_open_to_be_mended(desk: Desk) -> None:
    entry = shops.receive(desk, "40 g")
    desk.reverse(entry, "a nought was missing")
    assert desk.typed("stock", "receive") == {"cylinder": "C-001", "mass": "40 g"}
    assert desk.act_to_mend(desk.entry(entry)) == "receive"
    assert shops.held(desk, "cylinder:C-001") == 0


def test_that_text_being_typed_is_not_overwritten_by_a_reversal(desk: Desk) -> None:
    entry = shops.receive(desk, "40 g")
    desk.keep("stock", "receive", {"cylinder": "C-003"})
    desk.reverse(entry, "a nought was missing")
    assert desk.typed("stock", "receive") == {"cylinder": "C-003"}


def test_that_rows_and_jobs_are_corrected_by_new_entries_only(desk: Desk, job: str) -> None:
    entries = {entry.kind: entry.id for entry in desk.entries()}
    for kind in ("register", "job-opened"):
        with expect_refusal(desk, NotReversible, "record the right state"):
            desk.reverse(entries[kind], "wrong")
    assert desk.job(job).state == "open"


def test_that_a_closed_job_is_opened_again_only_with_a_reason(desk: Desk) -> None:
    job = desk.open_job("E-001")
    for step in desk.job(job).steps:
        if step.key != "follow_up":
            desk.not_needed(job, step.key, "only looked at")
    desk.close_job(job)
    with expect_refusal(desk, JobClosed, "Reopen it with a reason"):
        desk.reverse(_signed(desk, job, "as_found"), "was needed")
    with expect_refusal(desk, ChargebenchError, "Expected a reason"):
        desk.reopen(job, "  ")
    reopened = desk.reopen(job, "the label was forgotten")
    assert reopened.payload["reason"] == "the label was forgotten"
    desk.reverse(_signed(desk, job, "as_found"), "was needed")
    assert desk.job(job).state == "open"
