"""What the ledger records, what it refuses, and that a refusal leaves nothing behind."""

from typing import Any

import pytest

from chargebench.errors import (
    AlreadyRecorded,
    JobClosed,
    NotReversible,
    Overdrawn,
    PostingRefused,
    UnknownJob,
    WrongRefrigerant,
)
from chargebench.ledger import Ledger, NewEntry, Transfer
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, FREEZER, NOON


def test_that_a_charge_moves_both_balances_and_keeps_the_text_typed(shop: Ledger) -> None:
    books.register(shop)
    books.receive(shop, 4_650_000)
    entry = books.weigh_in(shop, books.open_job(shop), 99_223, hose_mg=300)
    assert shop.balance(CYLINDER, "R290") == 4_650_000 - 99_223 - 300
    assert shop.balance(FREEZER, "R290") == 99_223
    assert shop.balance("atmosphere", "R290") == 300
    assert shop.entry(entry.id).transfers[0].as_typed == "3.5 oz"


def test_that_an_entry_reads_back_as_it_was_given(shop: Ledger) -> None:
    books.register(shop)
    entry = books.receive(shop)
    assert shop.entry(entry.id) == entry
    assert entry.happened_at == NOON
    assert entry.happened_at.utcoffset() == NOON.utcoffset()


def test_that_a_second_post_of_an_entry_gives_back_the_first(shop: Ledger) -> None:
    new = NewEntry("received", BY, NOON, {}, (Transfer("supplier", CYLINDER, "R290", 5, "5 mg"),))
    first = shop.post(new)
    assert shop.post(new) == first
    assert shop.balance(CYLINDER, "R290") == 5
    assert shop.head()[0] == 1


def test_that_a_second_post_of_a_job_or_row_gives_back_the_first(shop: Ledger) -> None:
    job = NewEntry("job-opened", BY, NOON, {"equipment": "E-203"})
    assert shop.post(job) == shop.post(job)
    row = {"name": "Harbour Kitchen"}
    first = shop.put_row("site", "S-1", row, BY, NOON, id="same")
    assert shop.put_row("site", "S-1", row, BY, NOON, id="same") == first


def test_that_an_id_can_not_stand_for_two_entries(shop: Ledger) -> None:
    shop.post(NewEntry("weighed", BY, NOON, {"found": "1 kg"}, id="same"))
    with pytest.raises(AlreadyRecorded, match="Entry 1 already stands"):
        shop.post(NewEntry("weighed", BY, NOON, {"found": "2 kg"}, id="same"))
    assert shop.head()[0] == 1


def test_that_a_cylinder_gives_no_more_than_it_holds(shop: Ledger) -> None:
    books.register(shop)
    books.receive(shop, 100_000)
    job, before = books.open_job(shop), shop.head()
    with pytest.raises(Overdrawn, match=r"C-014 holds 100 g of R290 by the book; 100\.3 g was"):
        books.weigh_in(shop, job, 100_000, hose_mg=300)
    assert shop.head() == before
    assert shop.balance(CYLINDER, "R290") == 100_000
    assert shop.balance(FREEZER, "R290") == 0


@pytest.mark.parametrize(("taken_mg", "taken"), [(1_010, True), (1_011, False)])
def test_that_a_cylinder_may_go_below_zero_by_its_tolerance_only(
    shop: Ledger, taken_mg: int, taken: bool
) -> None:
    books.receive(shop, 1_000)
    line = Transfer(CYLINDER, FREEZER, "R290", taken_mg, "about a gram")
    new = NewEntry("step-signed", BY, NOON, {}, (line,))
    try:
        shop.post(new, may_overdraw_mg={CYLINDER: 10})
    except Overdrawn:
        assert not taken
    else:
        assert taken
    assert shop.balance(CYLINDER, "R290") == (-10 if taken else 1_000)


def test_that_places_other_than_cylinders_may_be_negative(shop: Ledger) -> None:
    lines = (
        Transfer("outside", FREEZER, "R290", 85_000, "85 g"),
        Transfer("equipment:E-9", "destruction", "R12", 7, "7 mg"),
    )
    shop.post(NewEntry("step-signed", BY, NOON, {}, lines))
    assert shop.balance("outside", "R290") == -85_000
    assert shop.balance("equipment:E-9", "R12") == -7


def test_that_refrigerants_do_not_mix_in_a_cylinder(shop: Ledger) -> None:
    books.receive(shop, 1_000)
    with pytest.raises(WrongRefrigerant, match="C-014 holds 1 g of R290; R600a does not go into"):
        books.receive(shop, 1_000, refrigerant="R600a")
    assert {held.refrigerant for held in shop.balances("")} == {"R290"}


def test_that_an_emptied_cylinder_takes_another_refrigerant(shop: Ledger) -> None:
    books.receive(shop, 1_000)
    away = Transfer(CYLINDER, "reclaimer", "R290", 1_000, "1 g")
    shop.post(NewEntry("returned", BY, NOON, {}, (away,)))
    books.receive(shop, 2_000, refrigerant="R600a")
    assert shop.balance(CYLINDER, "R600a") == 2_000


def test_that_a_registered_cylinder_takes_only_its_refrigerant(shop: Ledger) -> None:
    books.register(shop)
    with pytest.raises(WrongRefrigerant, match="registered for R290; R600a does not go into it"):
        books.receive(shop, 1_000, refrigerant="R600a")


def test_that_a_mixed_waste_cylinder_takes_anything(shop: Ledger) -> None:
    books.register(shop)
    for refrigerant in ("R404A", "R134a", "R22"):
        books.receive(shop, 500_000, cylinder="cylinder:C-099", refrigerant=refrigerant)
    assert [held.refrigerant for held in shop.balances("cylinder:C-099")] == [
        "R134a",
        "R22",
        "R404A",
    ]


def test_that_job_numbers_count_up_per_bench(shop: Ledger) -> None:
    for _ in range(3):
        books.open_job(shop)
    assert [job.number for job in shop.jobs()] == ["B-0003", "B-0002", "B-0001"]


def test_that_a_closed_job_takes_only_a_follow_up_or_a_reopening(shop: Ledger) -> None:
    job = books.whole_job(shop)
    with pytest.raises(JobClosed, match=r"B-0001 is closed\. Reopen it"):
        books.weigh_in(shop, job)
    shop.post(NewEntry("follow-up", BY, NOON, {"result": "still runs"}, job=job))
    shop.post(NewEntry("job-reopened", BY, NOON, {"reason": "hose line missing"}, job=job))
    books.weigh_in(shop, job, 1)
    found = shop.job(job)
    assert found is not None
    assert (found.state, found.closed_at) == ("open", None)


@pytest.mark.parametrize(
    ("kind", "job", "says"),
    [
        ("step-signed", "nowhere", "no such job"),
        ("job-closed", None, "names its job"),
        ("job-reopened", "open", "is open already"),
        ("job-opened", "open", "already open"),
        ("job-opened", None, "opened on an equipment"),
    ],
)
def test_that_an_entry_fits_the_state_of_its_job(
    shop: Ledger, kind: str, job: str | None, says: str
) -> None:
    opened = books.open_job(shop)
    with pytest.raises(UnknownJob, match=says):
        shop.post(NewEntry(kind, BY, NOON, {}, job=opened if job == "open" else job))
    assert shop.head()[0] == 1


def test_that_a_reversal_turns_every_transfer_round(shop: Ledger) -> None:
    books.register(shop)
    books.receive(shop)
    before = shop.balances("")
    entry = books.weigh_in(shop, books.open_job(shop))
    reversal = shop.reverse(entry.id, BY, NOON, "wrong cylinder")
    assert reversal.payload == {"reverses": entry.id, "reason": "wrong cylinder"}
    assert [b for b in shop.balances("") if b.mass_mg] == before
    assert shop.is_reversed(entry.id)
    assert shop.reversals() == {entry.id: reversal.id}


def test_that_an_entry_is_reversed_once_with_a_reason_and_wholly(shop: Ledger) -> None:
    entry = books.receive(shop)
    with pytest.raises(NotReversible, match="needs a reason"):
        shop.reverse(entry.id, BY, NOON, "  ")
    with pytest.raises(NotReversible, match="no such entry"):
        shop.reverse("nothing", BY, NOON, "why")
    half = NewEntry("reversal", BY, NOON, {"reverses": entry.id})
    with pytest.raises(NotReversible, match="turns its transfers round"):
        shop.post(half)
    with pytest.raises(NotReversible, match="no such entry"):
        shop.post(NewEntry("reversal", BY, NOON, {"reverses": "nothing"}))
    reversal = shop.reverse(entry.id, BY, NOON, "sent back")
    with pytest.raises(NotReversible, match="already reversed"):
        shop.reverse(entry.id, BY, NOON, "again")
    with pytest.raises(NotReversible, match="is not reversed"):
        shop.reverse(reversal.id, BY, NOON, "undo the undoing")
    assert shop.head()[0] == 2


def test_that_several_entries_are_recorded_all_or_none(shop: Ledger) -> None:
    good = NewEntry("weighed", BY, NOON, {})
    bad = NewEntry("returned", BY, NOON, {}, (Transfer(CYLINDER, "reclaimer", "R290", 1, "1 mg"),))
    with pytest.raises(Overdrawn):
        shop.post_all([good, bad])
    assert shop.head()[0] == 0
    assert [entry.number for entry in shop.post_all([good, NewEntry("weighed", BY, NOON, {})])] == [
        1,
        2,
    ]


def _take_more_than_came(shop: Ledger) -> None:
    job = books.open_job(shop)
    books.receive(shop, 100)
    assert shop.balance(CYLINDER, "R290") == 100
    books.weigh_in(shop, job)


def test_that_entries_recorded_together_stand_or_fall_together(shop: Ledger) -> None:
    books.register(shop)
    before = shop.head()
    with pytest.raises(Overdrawn), shop.together():
        _take_more_than_came(shop)
    assert shop.head() == before
    assert shop.jobs() == []
    with shop.together():
        books.weigh_in(shop, books.open_job(shop), 0, hose_mg=0)
    assert [job.number for job in shop.jobs()] == ["B-0001"]
    assert shop.verify().ok


def test_that_a_refusal_caught_among_entries_recorded_together_leaves_no_row(shop: Ledger) -> None:
    with shop.together():
        books.receive(shop, 100)
        with pytest.raises(Overdrawn):
            books.weigh_in(shop, books.open_job(shop), 99)
    assert [entry.kind for entry in shop.entries()] == ["received", "job-opened"]
    assert shop.balance(CYLINDER, "R290") == 100
    assert shop.verify().problems == ()


def test_that_a_register_entry_holds_the_row_before_and_after(shop: Ledger) -> None:
    shop.put_row("person", "P-1", {"name": "N. Okafor"}, BY, NOON)
    entry = shop.put_row("person", "P-1", {"name": "N. Okafor", "role": "shop"}, BY, NOON)
    assert entry.payload["before"] == {"name": "N. Okafor"}
    assert entry.payload["after"] == {"name": "N. Okafor", "role": "shop"}
    assert shop.row("person", "P-1") == entry.payload["after"]
    assert shop.rows("person") == {"P-1": entry.payload["after"]}
    assert shop.row("person", "P-2") is None


@pytest.mark.parametrize(
    ("register", "row_id", "row"),
    [("pets", "1", {}), ("site", "", {}), ("site", "S-1", {"elevation": 120})],
)
def test_that_a_register_takes_rows_of_text_only(
    shop: Ledger, register: str, row_id: str, row: dict[str, Any]
) -> None:
    with pytest.raises(PostingRefused, match=r"expected|holds text only"):
        shop.put_row(register, row_id, row, BY, NOON)
    assert shop.head()[0] == 0
