"""Who may do what: each role at each act, and the shops that have only some of the roles."""

from collections.abc import Callable

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError, NotAllowed, StepRefused
from chargebench.ledger import NewEntry
from tests.desk import shops
from tests.desk.shops import expect_refusal

OWNER, TECHNICIAN, OTHER, OFFICER = "P-10", "P-01", "P-02", "P-11"


@pytest.fixture
def staffed(desk: Desk) -> Desk:
    """The shop with two technicians, its owner and a compliance officer; 400 g received."""
    shops.receive(desk)
    desk.save_row("person", OFFICER, {"name": "D. Maas", "role": "officer"})
    desk.save_row("person", OWNER, {"name": "A. Lindqvist", "role": "shop"})
    return desk


def _record(desk: Desk) -> None:
    shops.receive(desk, "10 g")


def _open_job(desk: Desk) -> None:
    desk.open_job("E-001")


def _sign(desk: Desk) -> None:
    _of_owner(desk, lambda: desk.open_job("E-001"))
    desk.sign(desk.jobs()[0].id, "nameplate", shops.NAMEPLATE)


def _keep(desk: Desk) -> None:
    desk.keep("job", "nameplate", {"charge": "8"})


def _take_back_own(desk: Desk) -> None:
    if desk.person == OFFICER:  # of whom there can be no entry: one from before the role changed
        entry = desk.ledger.post(NewEntry("received", OFFICER, shops.at("2026-03-02"), {}))
        desk.reverse(entry.id, "wrong cylinder")
    else:
        desk.reverse(shops.receive(desk, "10 g"), "wrong cylinder")


def _take_back_of_another(desk: Desk) -> None:
    entry = desk.ledger.post(NewEntry("received", OTHER, shops.at("2026-03-02"), {}))
    desk.reverse(entry.id, "wrong cylinder")


def _register(desk: Desk) -> None:
    desk.save_row("site", "L-009", {"name": "Harbour Kitchen"})


def _settings(desk: Desk) -> None:
    desk.save_row("shop", "shop", {**shops.SHOP, "units": "IP"})


def _people(desk: Desk) -> None:
    desk.save_row("person", "P-12", {"name": "S. Ito", "role": "technician"})


def _close(desk: Desk) -> None:
    job = _of_owner(desk, lambda: _ready_to_close(desk))
    desk.close_job(job)


def _reopen(desk: Desk) -> None:
    def closed() -> str:
        job = _ready_to_close(desk)
        desk.close_job(job)
        return job

    desk.reopen(_of_owner(desk, closed), "the label was forgotten")


def _ready_to_close(desk: Desk) -> str:
    job = desk.open_job("E-001")
    for step in desk.job(job).steps:
        if step.key != "follow_up":
            desk.not_needed(job, step.key, "only looked at")
    return job


def _of_owner(desk: Desk, act: Callable[[], str]) -> str:
    before = desk.person
    desk.choose(OWNER)
    made = act()
    desk.choose(before)
    return made


# As issue and brief of this program word it: technician signs jobs and stock work; shop also
# registers, corrections of others' entries, closing and reopening, people; officer only reads.
BY_TECHNICIAN = (_record, _open_job, _sign, _keep, _take_back_own)
BY_SHOP = (_take_back_of_another, _register, _settings, _people, _close, _reopen)


@pytest.mark.parametrize("act", [*BY_TECHNICIAN, *BY_SHOP])
def test_that_the_shop_may_do_everything(staffed: Desk, act: Callable[[Desk], None]) -> None:
    staffed.choose(OWNER)
    before = staffed.reading.head()
    act(staffed)
    assert staffed.reading.head() != before or act is _keep


@pytest.mark.parametrize("act", BY_TECHNICIAN)
def test_that_a_technician_signs_work(staffed: Desk, act: Callable[[Desk], None]) -> None:
    staffed.choose(TECHNICIAN)
    before = staffed.reading.head()
    act(staffed)
    assert staffed.reading.head() != before or act is _keep


@pytest.mark.parametrize("act", BY_SHOP)
def test_that_a_technician_is_told_who_of_the_shop_may(
    staffed: Desk, act: Callable[[Desk], None]
) -> None:
    staffed.choose(TECHNICIAN)
    with pytest.raises(NotAllowed, match=r"N\. Okafor is a technician.*Expected A\. Lindqvist"):
        act(staffed)


@pytest.mark.parametrize("act", [*BY_TECHNICIAN, *BY_SHOP])
def test_that_an_officer_records_nothing(staffed: Desk, act: Callable[[Desk], None]) -> None:
    staffed.choose(OFFICER)
    with pytest.raises(NotAllowed, match=r"D\. Maas is an officer and may not "):
        act(staffed)
    theirs = [entry for entry in staffed.entries() if entry.by == OFFICER]
    assert [entry for entry in theirs if entry.payload] == []


def test_that_an_officer_reads_exports_and_verifies(staffed: Desk) -> None:
    staffed.choose(OFFICER)
    assert staffed.verify().ok
    assert staffed.usage_totals()[0].received_mg == 400_000
    staffed.all_flags()
    assert b"R290" in staffed.job_file(_of_owner(staffed, lambda: staffed.open_job("E-001")))


def test_that_technicians_do_the_work_of_the_shop_where_nobody_is_of_it(desk: Desk) -> None:
    for act in BY_SHOP[1:4]:
        act(desk)
    assert desk.row("person", "P-12")["name"] == "S. Ito"


def test_that_somebody_registered_before_roles_counts_as_of_the_shop(staffed: Desk) -> None:
    when = shops.at("2026-03-02")
    staffed.ledger.put_row("person", "P-13", {"name": "J. Vries"}, "P-01", when)
    staffed.choose("P-13")
    _register(staffed)
    assert list(staffed.entries())[-1].by == "P-13"


def test_that_somebody_who_is_not_registered_signs_nothing(staffed: Desk) -> None:
    with pytest.raises(ChargebenchError, match="Expected a person of the register"):
        staffed.choose("P-77")
    staffed.person = "P-77"
    with expect_refusal(staffed, NotAllowed, "not in the register of people"):
        _record(staffed)


@pytest.mark.parametrize("role", ["officer"])
def test_that_no_shop_is_left_to_people_who_only_read(desk: Desk, role: str) -> None:
    desk.save_row("person", "P-02", {"name": "L. Brandvold", "role": role})
    with expect_refusal(desk, StepRefused, "somebody left who is of the shop"):
        desk.save_row("person", "P-01", {"name": "N. Okafor", "role": role})


def test_that_no_shop_is_made_by_an_officer(desk: Desk) -> None:
    path = desk.path.with_name("other.chargebench")
    with pytest.raises(StepRefused, match="somebody left who is of the shop"):
        Desk.create(path, shops.SHOP, {"name": "D. Maas", "role": "officer"})
    assert not path.exists()
