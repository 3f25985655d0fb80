"""Taking in what other benches signed: nothing lost, nothing twice, conflicts told."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.errors import ChainFileRefused, PostingRefused, ShopFileRefused
from chargebench.ledger import (
    Ledger,
    NewEntry,
    Transfer,
    begin,
)
from tests.ledger import books, chains
from tests.ledger.books import BY, CYLINDER, NOON, later
from tests.ledger.chains import draw


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[Ledger]:
    with chains.shop(tmp_path) as ledger:
        yield ledger


@pytest.fixture
def bench(shop: Ledger) -> Iterator[Ledger]:
    with chains.further(shop, "D") as ledger:
        yield ledger


def whats(shop: Ledger, bench: Ledger) -> list[str]:
    """Kinds of conflict that taking a bench in raises."""
    return [conflict.what for conflict in chains.take(shop, chains.handed(bench)).conflicts]


def test_that_a_further_bench_knows_what_the_shop_knows(shop: Ledger, bench: Ledger) -> None:
    assert (bench.bench, bench.shop_id, bench.begun_from) == ("D", shop.shop_id, "B")
    assert bench.rows("cylinder") == shop.rows("cylinder")
    assert chains.held(bench) == chains.held(shop)
    assert [job.number for job in bench.jobs()] == ["B-0001"]
    assert bench.entries(kind="handed-over").__next__().payload["sha256"]
    assert bench.verify().ok


def test_that_a_bench_is_begun_only_by_a_file_made_for_it(shop: Ledger, tmp_path: Path) -> None:
    plain = chains.handed(shop)
    with pytest.raises(ChainFileRefused, match="was not made to begin a bench"):
        begin(tmp_path / "x.chargebench", plain, NOON)
    for_bench = chains.handed(shop, for_bench="F")
    bad = chains.changed(for_bench, lambda lines: lines.__delitem__(5))
    with pytest.raises(ChainFileRefused):
        begin(tmp_path / "x.chargebench", bad, NOON)
    with pytest.raises(ShopFileRefused, match="is there already"):
        begin(shop.path, for_bench, NOON)
    assert list(tmp_path.glob("x.*")) == []
    assert shop.verify().ok


def test_that_a_file_taken_in_twice_changes_nothing_more(shop: Ledger, bench: Ledger) -> None:
    draw(bench, 85_000)
    chain = chains.handed(bench)
    first = chains.take(shop, chain)
    after = chains.state(shop)
    again = chains.take(shop, chain)
    assert (first.taken, first.known) == (2, 12)
    assert (again.taken, again.known, again.entry) == (0, 14, None)
    assert chains.state(shop) == after


def test_that_a_file_that_begins_too_late_names_what_is_missing(
    shop: Ledger, bench: Ledger
) -> None:
    for _ in range(3):
        draw(bench, 1_000)
    before = chains.state(shop)
    with pytest.raises(ChainFileRefused, match="Entries 1 to 2 of bench D are missing"):
        chains.take(shop, chains.handed(bench, only="D", first=3))
    with pytest.raises(ChainFileRefused, match="Entry 1 of bench D is missing"):
        chains.take(shop, chains.handed(bench, only="D", first=2))
    assert chains.state(shop) == before
    chains.take(shop, chains.handed(bench, only="D"))
    assert shop.heads()["D"] == bench.heads()["D"]


def test_that_what_rests_on_a_chain_not_seen_here_waits_for_it(shop: Ledger, bench: Ledger) -> None:
    with chains.further(shop, "F") as third:
        job = books.open_job(third)
        chains.take(bench, chains.handed(third))
        draw(bench, 500, job=job)  # on a job of bench F, which the shop does not know
        before = chains.state(shop)
        with pytest.raises(ChainFileRefused, match="Take in the chain of bench F first"):
            chains.take(shop, chains.handed(bench, only="D"))
        assert chains.state(shop) == before
        chains.take(shop, chains.handed(third, only="F"))
        chains.take(shop, chains.handed(bench, only="D"))
    assert shop.verify().ok


def test_that_two_computers_that_record_as_one_bench_are_found_out(
    shop: Ledger, tmp_path: Path
) -> None:
    chain = chains.handed(shop, for_bench="F")
    with (
        begin(tmp_path / "one.chargebench", chain, NOON) as one,
        begin(tmp_path / "two.chargebench", chain, NOON) as two,
    ):
        for ledger in (one, two):
            draw(ledger, 1_000)
        chains.take(shop, chains.handed(one))
        before = chains.state(shop)
        draw(two, 2_000)
        for part in (chains.handed(two), chains.handed(two, only="F", first=3)):
            with pytest.raises(ChainFileRefused, match="two computers record as bench F"):
                chains.take(shop, part)
        assert chains.state(shop) == before


def test_that_a_cylinder_overdrawn_by_two_benches_is_a_conflict_and_no_entry_is_lost(
    shop: Ledger, bench: Ledger
) -> None:
    drawn = draw(bench, 4_000_000)
    draw(shop, 4_000_000)
    taken = chains.take(shop, chains.handed(bench))
    (found,) = taken.conflicts
    # 4 650 000 delivered; 99 223 and 300 of the shop's own job; 4 000 000 drawn twice.
    left = 4_650_000 - 99_223 - 300 - 8_000_000
    assert (found.what, found.place, found.mass_mg) == ("overdrawn", CYLINDER, left)
    assert shop.entry(drawn.id) == drawn
    assert shop.balance(CYLINDER, "R290") == left
    assert taken.entry is not None
    assert taken.entry.payload["conflicts"] == [
        {"what": "overdrawn", "place": CYLINDER, "refrigerant": "R290", "mass_mg": left}
    ]
    assert shop.verify().ok


def test_that_a_delivery_in_the_same_file_mends_what_came_before_it(
    shop: Ledger, bench: Ledger
) -> None:
    draw(bench, 4_000_000)
    books.receive(bench)
    draw(shop, 4_000_000)
    assert whats(shop, bench) == []


def test_that_another_refrigerant_in_a_cylinder_is_a_conflict(shop: Ledger, bench: Ledger) -> None:
    fresh = "cylinder:C-7"  # in no register: what goes in first decides
    books.receive(shop, 100, cylinder=fresh, refrigerant="R600a")
    books.receive(bench, 200, cylinder=fresh, refrigerant="R290")
    assert whats(shop, bench) == ["mixed"]
    assert (shop.balance(fresh, "R600a"), shop.balance(fresh, "R290")) == (100, 200)


def test_that_what_went_out_again_mixes_nothing(shop: Ledger, bench: Ledger) -> None:
    fresh = "cylinder:C-7"
    books.receive(shop, 100, cylinder=fresh, refrigerant="R600a")
    books.receive(bench, 200, cylinder=fresh, refrigerant="R290")
    out = Transfer(fresh, "reclaimer", "R290", 200, "200 mg")
    bench.post(NewEntry("returned", BY, NOON, {}, (out,)))
    assert whats(shop, bench) == []


def test_that_work_on_a_job_closed_meanwhile_is_a_conflict(shop: Ledger, bench: Ledger) -> None:
    job = books.open_job(shop)
    chains.take(bench, chains.handed(shop))
    draw(bench, 1_000, job=job)
    shop.post(NewEntry("job-closed", BY, later(95), {}, job=job))
    assert whats(shop, bench) == ["closed-job"]
    found = shop.job(job)
    assert found is not None
    assert found.state == "closed"


def test_that_a_step_signed_at_two_benches_is_a_conflict_unless_one_is_taken_back(
    shop: Ledger, bench: Ledger
) -> None:
    job = books.open_job(shop)
    chains.take(bench, chains.handed(shop))
    draw(shop, 1_000, job=job)
    mine = draw(bench, 1_000, job=job)
    with_it = chains.handed(bench)
    bench.reverse(mine.id, BY, later(99), "the shop has it")
    without = chains.handed(bench)
    with chains.further(shop, "F") as third:
        assert whats(third, bench) == []
    assert [each.what for each in chains.take(shop, with_it).conflicts] == ["signed-twice"]
    assert chains.take(shop, without).conflicts == ()


def test_that_an_entry_taken_back_at_two_benches_is_a_conflict(shop: Ledger, bench: Ledger) -> None:
    wrong = draw(shop, 1_000)
    chains.take(bench, chains.handed(shop))
    by_shop = shop.reverse(wrong.id, BY, later(95), "mistyped")
    bench.reverse(wrong.id, BY, later(96), "mistyped")
    assert whats(shop, bench) == ["reversed-twice"]
    assert shop.reversals()[wrong.id] == by_shop.id
    assert shop.verify().ok


def test_that_the_later_words_of_a_row_stand_and_the_others_are_told(
    shop: Ledger, bench: Ledger
) -> None:
    shop.put_row("site", "S-1", {"name": "Bakery, Quay 4"}, BY, NOON)
    bench.put_row("site", "S-1", {"name": "Bakery, Quay 5"}, BY, NOON)
    (found,) = chains.take(shop, chains.handed(bench)).conflicts
    assert (found.what, found.register, found.row, found.stands) == ("row", "site", "S-1", "there")
    assert (found.here, found.there) == ({"name": "Bakery, Quay 4"}, {"name": "Bakery, Quay 5"})
    (back,) = chains.take(bench, chains.handed(shop)).conflicts
    assert back.stands == "here"
    for ledger in (shop, bench):
        assert ledger.row("site", "S-1") == {"name": "Bakery, Quay 5"}
        assert ledger.verify().ok


def test_that_words_written_with_the_others_in_sight_are_no_conflict(
    shop: Ledger, bench: Ledger
) -> None:
    shop.put_row("site", "S-1", {"name": "Bakery, Quay 4"}, BY, NOON)
    chains.take(bench, chains.handed(shop))
    bench.put_row("site", "S-1", {"name": "Bakery, Quay 5"}, BY, NOON)
    assert whats(shop, bench) == []
    assert shop.row("site", "S-1") == {"name": "Bakery, Quay 5"}


def test_that_the_same_row_made_at_two_benches_is_the_same(shop: Ledger, bench: Ledger) -> None:
    for ledger in (shop, bench):
        ledger.put_row("cylinder", "C-77", {"refrigerant": "R290", "serial": "77"}, BY, NOON)
    assert whats(shop, bench) == []


def test_that_two_cylinders_under_one_id_are_told_by_their_serial_numbers(
    shop: Ledger, bench: Ledger
) -> None:
    for ledger, serial in ((shop, "77"), (bench, "88")):
        ledger.put_row("cylinder", "C-77", {"refrigerant": "R290", "serial": serial}, BY, NOON)
    (found,) = chains.take(shop, chains.handed(bench)).conflicts
    assert (found.row, found.here, found.there) == ("C-77", {"serial": "77"}, {"serial": "88"})


def test_that_entries_of_this_bench_itself_come_back(shop: Ledger, tmp_path: Path) -> None:
    old = shop.backup_to(tmp_path / "old.chargebench")
    draw(shop, 1_000)
    chain = chains.handed(shop)
    with Ledger.open(old, backups=0) as restored:
        taken = chains.take(restored, chain)
        assert [each.what for each in taken.conflicts] == ["own-entries"]
        assert [e.id for e in restored.entries()][:13] == [e.id for e in shop.entries()]
        assert restored.verify().ok
        draw(restored, 1)  # goes on after them


def test_that_progress_is_told_and_stopping_takes_nothing(shop: Ledger, bench: Ledger) -> None:
    for _ in range(300):
        bench.post(NewEntry("note", BY, NOON, {}))
    chain, before = chains.handed(bench), chains.state(shop)

    def stop(done: int, of: int) -> None:
        assert (done, of) == (200, 313)
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        shop.take_over(chain, BY, NOON, progress=stop)
    assert chains.state(shop) == before


def test_that_what_can_not_have_been_signed_is_refused_with_its_entry(
    shop: Ledger, bench: Ledger
) -> None:
    def nothing_of_it(new: NewEntry) -> None:
        raise PostingRefused(f"no {new.kind} is known.")

    chain, before = chains.handed(bench), chains.state(shop)
    with pytest.raises(ChainFileRefused, match="Entry 1 of bench D: no handed-over is known"):
        shop.take_over(chain, BY, NOON, check=nothing_of_it)
    assert chains.state(shop) == before
