"""A job from opening to closing: what is kept, signed, set aside, taken back."""

from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, JobClosed, Overdrawn, PostingRefused
from chargebench.steps import STEPS
from tests.desk import shops
from tests.desk.shops import NAMEPLATE, expect_refusal, expect_refused_fields

AFTER = {"what": "is the box still cold", "due": "2026-12-16"}


def states(desk: Desk, job: str) -> dict[str, str]:
    return {step.key: step.state for step in desk.job(job).steps}


def set_aside_the_rest(desk: Desk, job: str) -> None:
    for key, state in states(desk, job).items():
        if state == "open" and key != "follow_up":
            desk.not_needed(job, key, "not this visit")


def closed_job(desk: Desk) -> str:
    job = desk.open_job("E-001")
    set_aside_the_rest(desk, job)
    desk.close_job(job)
    return job


def test_that_a_job_opens_on_an_equipment_with_every_step_open(desk: Desk) -> None:
    job = desk.open_job("E-001", "not holding temperature")
    view = desk.job(job)
    assert (view.number, view.state, view.title) == (
        "B-0001", "open", "Bakery freezer, Bakery, Quay Street",
    )  # fmt: skip
    assert view.headline == "R290, A3 highly flammable, nameplate 100 g"
    assert states(desk, job) == dict.fromkeys(STEPS, "open")


def test_that_a_job_on_no_equipment_is_refused(desk: Desk) -> None:
    with expect_refusal(desk, ChargebenchError, "Expected an equipment of the register; got “E-9”"):
        desk.open_job("E-9")
    with pytest.raises(ChargebenchError, match="no such job"):
        desk.job("nowhere")


def test_that_open_text_is_kept_as_typed_over_a_restart(tmp_path: Path) -> None:
    path = tmp_path / "s.chargebench"
    typed = {"charge": " 3,5 oz?", "remarks": "half a sen"}
    with shops.build(path) as desk:
        job = desk.open_job("E-001")
        entries = desk.reading.head()
        desk.keep(job, "nameplate", typed)
        assert desk.reading.head() == entries  # kept is not recorded
    with Desk.open(path) as again:
        assert again.typed(job, "nameplate") == typed


def test_that_other_steps_read_what_is_kept_in_one(desk: Desk) -> None:
    job = desk.open_job("E-001")
    desk.job(job)
    desk.keep(job, "nameplate", {"charge": "85 g"})
    assert desk.look(job, "weigh_in", shops.weigh_in(85)).worked.result.nameplate.m_as("g") == 85


def test_that_looking_touches_nothing(desk: Desk) -> None:
    job = desk.open_job("E-001")
    head = desk.reading.head()
    look = desk.look(job, "nameplate", {"charge": "nine"})
    assert list(look.answers.refusals) == ["charge"]
    assert desk.look(job, "weigh_in", shops.weigh_in(120)).flags[0].key == "over-nameplate"
    assert (desk.reading.head(), desk.typed(job, "nameplate")) == (head, {})


def test_that_a_signed_step_is_an_entry_with_its_text_and_masses(desk: Desk) -> None:
    job = desk.open_job("E-001")
    entry = desk.sign(job, "nameplate", NAMEPLATE | {"serial": ""}, shops.at("2026-03-02"))
    assert (entry.kind, entry.job, entry.by) == ("step-signed", job, "P-01")
    assert entry.payload["typed"] == NAMEPLATE  # empty fields left out
    assert entry.payload["rule_set"].startswith("us-federal ")
    assert [(line.source, line.mass_mg) for line in entry.transfers] == [("outside", 100_000)]
    assert entry.happened_at == shops.at("2026-03-02")
    step = next(step for step in desk.job(job).steps if step.key == "nameplate")
    assert (step.state, step.entry, step.by) == ("signed", entry.id, "N. Okafor")
    assert desk.typed(job, "nameplate") == NAMEPLATE


def test_that_a_wrong_or_incomplete_step_is_refused_by_field(desk: Desk) -> None:
    job = desk.open_job("E-001")
    with expect_refused_fields(desk, "charge", "refrigerant"):
        desk.sign(job, "nameplate", {"charge": "3,456 g"})
    with expect_refused_fields(desk, "kind", "lines"):
        desk.sign(job, "weigh_in", {})
    with expect_refused_fields(desk, "lines[0].cylinder"):
        desk.sign(job, "weigh_in", shops.weigh_in(10, "C-777"))
    assert states(desk, job) == dict.fromkeys(STEPS, "open")


def test_that_a_step_is_signed_once(desk: Desk) -> None:
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", NAMEPLATE)
    with expect_refusal(desk, PostingRefused, "Nameplate is signed already"):
        desk.sign(job, "nameplate", NAMEPLATE)
    with expect_refusal(desk, PostingRefused, "recorded already"):
        desk.not_needed(job, "nameplate", "why not")


def test_that_a_charge_beyond_the_cylinder_is_refused(desk: Desk) -> None:
    shops.receive(desk, "90 g")
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", NAMEPLATE)
    # 90 g and 3600 g of tare: 0.5 % of 3.69 kg is 18.45 g that the scale may not tell.
    with expect_refusal(desk, Overdrawn, "holds"):
        desk.sign(job, "weigh_in", shops.weigh_in(108.5))
    desk.sign(job, "weigh_in", shops.weigh_in(108.4))
    assert shops.held(desk, "cylinder:C-001") == -18_400
    (flag,) = desk.cylinders("C-001")[0].flags
    assert flag.key == "balance-below-zero"


def test_that_a_step_set_aside_wants_a_reason(desk: Desk) -> None:
    job = desk.open_job("E-001")
    with expect_refusal(desk, ChargebenchError, "Expected a reason"):
        desk.not_needed(job, "pressure_test", "  ")
    desk.not_needed(job, "pressure_test", "not opened ")
    step = next(step for step in desk.job(job).steps if step.key == "pressure_test")
    assert (step.state, step.reason) == ("not needed", "not opened")


def test_that_a_reversal_takes_masses_back_and_lets_the_text_be_mended(desk: Desk) -> None:
    shops.receive(desk)
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", NAMEPLATE)
    wrong = desk.sign(job, "weigh_in", shops.weigh_in(90))
    assert shops.held(desk, "equipment:E-001") == 190_000
    with expect_refusal(desk, ChargebenchError, "Expected a reason"):
        desk.reverse(wrong.id, " ")
    reversal = desk.reverse(wrong.id, "typed 90 for 99")
    assert reversal.payload == {"reverses": wrong.id, "reason": "typed 90 for 99"}
    assert shops.held(desk, "equipment:E-001") == 100_000
    assert shops.held(desk, "cylinder:C-001") == 400_000
    assert states(desk, job)["weigh_in"] == "open"
    assert desk.typed(job, "weigh_in") == shops.weigh_in(90)
    desk.sign(job, "weigh_in", shops.weigh_in(99))
    assert shops.held(desk, "cylinder:C-001") == 301_000
    with expect_refusal(desk, PostingRefused, "already reversed"):
        desk.reverse(wrong.id, "again")
    with expect_refusal(desk, PostingRefused, "no such entry|not"):
        desk.reverse(reversal.id, "and back")


def test_that_a_job_closes_once_every_step_is_settled(desk: Desk) -> None:
    job = desk.open_job("E-001")
    desk.sign(job, "nameplate", NAMEPLATE)
    with expect_refusal(desk, PostingRefused, "open: As found, Findings"):
        desk.close_job(job)
    set_aside_the_rest(desk, job)
    desk.close_job(job)
    assert desk.job(job).state == "closed"
    assert [line.number for line in desk.jobs(state="open")] == []
    assert [line.now for line in desk.jobs(state="closed")] == ["closed"]


def test_that_a_closed_job_takes_nothing_but_a_follow_up(desk: Desk) -> None:
    job = desk.open_job("E-001")
    signed = desk.sign(job, "nameplate", NAMEPLATE)
    set_aside_the_rest(desk, job)
    desk.close_job(job)
    with expect_refusal(desk, JobClosed, "is closed"):
        desk.reverse(signed.id, "second thoughts")
    with expect_refusal(desk, JobClosed, "is closed"):
        desk.close_job(job)
    desk.sign(job, "follow_up", AFTER)
    desk.sign(job, "follow_up", AFTER | {"done_on": "2026-12-17", "result": "cold"})
    assert states(desk, job)["follow_up"] == "signed"
    assert desk.job(job).state == "closed"


def test_that_reversing_a_follow_up_brings_the_one_before_back(desk: Desk) -> None:
    job = desk.open_job("E-001")
    first = desk.sign(job, "follow_up", AFTER)
    second = desk.sign(job, "follow_up", AFTER | {"result": "warm"})
    desk.reverse(second.id, "another box")
    step = next(step for step in desk.job(job).steps if step.key == "follow_up")
    assert (step.state, step.entry) == ("signed", first.id)


def test_that_a_job_opens_again_with_a_reason(desk: Desk) -> None:
    job = closed_job(desk)
    with expect_refusal(desk, ChargebenchError, "Expected a reason"):
        desk.reopen(job, "")
    desk.reopen(job, "the part came")
    assert desk.job(job).state == "open"
    with expect_refusal(desk, PostingRefused, "open already"):
        desk.reopen(job, "once more")


def test_that_jobs_are_found_and_paged_newest_first(desk: Desk) -> None:
    for equipment in ("E-001", "E-002", "E-001"):
        desk.open_job(equipment)
    assert [line.number for line in desk.jobs()] == ["B-0003", "B-0002", "B-0001"]
    assert [line.number for line in desk.jobs("walk-in")] == ["B-0002"]
    assert [line.number for line in desk.jobs("QUAY b-0001")] == ["B-0001"]
    assert [line.number for line in desk.jobs(equipment="E-001")] == ["B-0003", "B-0001"]
    first = desk.jobs(limit=2)
    assert [line.number for line in desk.jobs(limit=2, before=first[-1].key)] == ["B-0001"]


def test_that_tick_lists_are_those_of_the_class_and_the_kind(desk: Desk) -> None:
    freezer, walk_in = desk.open_job("E-001"), desk.open_job("E-002")
    assert desk.ticks(freezer, "safety", "ticks")
    assert {line.key for line in desk.ticks(freezer, "leak_search", "components")} != {
        line.key for line in desk.ticks(walk_in, "leak_search", "components")
    }
