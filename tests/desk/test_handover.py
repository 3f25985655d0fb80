"""Two benches of one shop: what a person does to bring them together, and is told."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from chargebench.desk import Desk
from chargebench.errors import ChainFileRefused, ChargebenchError
from chargebench.ledger import NewEntry
from tests.desk import benches, shops

CYLINDER = shops.SAFE | {"refrigerant": "R290", "contents": "new"}


@pytest.fixture
def both(tmp_path: Path) -> Iterator[tuple[Desk, Desk]]:
    shop, bench = benches.shop_and_bench(tmp_path)
    with shop, bench:
        yield shop, bench


def charge(desk: Desk, grams: float, job: str = "") -> str:
    """A job on the freezer with its nameplate and a weigh-in from C-001; its id."""
    job = job or desk.open_job("E-001")
    desk.sign(job, "nameplate", shops.NAMEPLATE)
    desk.sign(job, "weigh_in", shops.weigh_in(grams))
    return job


def found(desk: Desk) -> list[str]:
    """Flags of hand-overs and of things met twice."""
    keys = [flag.key for flag in desk.all_flags()]
    return [key for key in keys if key.startswith("bench-") or key == "met-twice"]


def test_that_a_further_bench_works_under_its_own_letter(both: tuple[Desk, Desk]) -> None:
    shop, bench = both
    assert bench.shop == shop.shop
    assert bench.person == "P-01"
    job = charge(bench, 90)
    assert bench.job(job).number == "D-0001"
    assert bench.save_row("cylinder", None, CYLINDER) == "C-D-001"
    assert bench.save_row("cylinder", None, CYLINDER) == "C-D-002"
    assert shop.save_row("cylinder", None, CYLINDER) == "C-010"


def test_that_a_letter_is_given_once_and_looks_like_no_register(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, _ = both
    assert shop.next_bench() == "F"  # B is the shop's, C and E begin ids, D is given
    for letter in ("D", "B"):
        with pytest.raises(ChainFileRefused, match=f"There is a bench {letter} already"):
            shop.hand_over(tmp_path / "x.chain", for_bench=letter)
    for letter in ("d", "", "2", "ABCDEFGHI", "Ä"):
        if letter:
            with pytest.raises(ChainFileRefused, match="can not name a bench"):
                shop.hand_over(tmp_path / "x.chain", for_bench=letter)
    with pytest.raises(ChainFileRefused, match="name no other bench"):
        shop.hand_over(tmp_path / "x.chain", for_bench="F", only="B")
    assert not (tmp_path / "x.chain").exists()


def test_that_two_benches_that_draw_from_one_cylinder_end_with_the_same_books(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    charge(shop, 90)
    job = charge(bench, 95)
    benches.pass_on(bench, shop, tmp_path)
    benches.pass_on(shop, bench, tmp_path)
    for desk in both:
        assert shops.held(desk, "cylinder:C-001") == 400_000 - 90_000 - 95_000
        assert {line.number for line in desk.jobs()} == {"B-0001", "D-0001"}
        assert desk.job(job).case.is_signed("weigh_in")
        assert set(shops.sums(desk).values()) == {0}
        assert desk.verify().ok
    assert found(shop) == []


def test_that_a_cylinder_overdrawn_by_two_benches_is_flagged_until_it_is_settled(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    for desk in both:
        desk.act("return", {"cylinder": "C-001", "mass": "300 g", "to": "reclaimer"})
    chain = benches.pass_on(bench, shop, tmp_path)
    (flag,) = [flag for flag in shop.all_flags() if flag.key == "bench-overdrawn"]
    assert "C-001" in flag.says
    assert "−200 g of R290" in flag.says
    with pytest.raises(ChargebenchError, match="how it was settled"):
        shop.settle(flag.about, " ")
    shop.settle(flag.about, "weighed, 200 g booked as difference")
    assert found(shop) == []
    with pytest.raises(ChargebenchError, match="not open any more"):
        shop.settle(flag.about, "again")
    assert shop.take_over(chain).entry is None


def test_that_a_cylinder_met_twice_is_shown_for_a_decision_and_then_as_one(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    theirs = bench.save_row("cylinder", None, CYLINDER | {"serial": "AB 77-0412"})
    ours = shop.save_row("cylinder", None, CYLINDER | {"serial": "ab770412"})
    bench.act("receive", {"cylinder": theirs, "mass": "1 kg"})
    shop.act("receive", {"cylinder": ours, "mass": "2 kg"})
    benches.pass_on(bench, shop, tmp_path)
    assert found(shop) == ["met-twice"]
    (pair,) = shop.met_twice()
    assert (pair.register, {pair.one, pair.other}) == ("cylinder", {ours, theirs})
    shop.decide("cylinder", ours, theirs, same=True)
    assert found(shop) == []
    shown = {line.id: line.mass_mg for line in shop.cylinders()}
    assert shown[ours] == 3_000_000
    assert theirs not in shown
    assert theirs not in shop.choices("cylinder")
    assert [row.running_mg for row in shop.history(f"cylinder:{theirs}")] == [3_000_000, 2_000_000]
    shop.act("return", {"cylinder": ours, "mass": "2.5 kg", "to": "reclaimer"})
    assert shop.verify().ok


def test_that_two_things_with_one_number_are_not_asked_about_again(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    person = {"name": "L. Brandvold", "role": "technician", "certificate": "U-114"}
    bench.save_row("person", None, person)
    shop.save_row("person", None, person)
    benches.pass_on(bench, shop, tmp_path)
    (pair,) = shop.met_twice()
    assert pair.what == "certificate number"
    shop.decide("person", pair.one, pair.other, same=False, reason="father and son")
    assert shop.met_twice() == []
    assert len(shop.choices("person")) == 4
    benches.pass_on(shop, bench, tmp_path)
    assert bench.met_twice() == []  # decided once for all


def test_that_usage_of_a_person_met_twice_is_found_under_either_id(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    from chargebench.desk import Filters

    shop, bench = both
    person = {"name": "A. Lind", "role": "shop", "certificate": "U-9"}
    ours, theirs = shop.save_row("person", "P-9", person), bench.save_row("person", None, person)
    shop.person, bench.person = ours, theirs
    for desk in both:
        shops.receive(desk, "10 g")
    benches.pass_on(bench, shop, tmp_path)
    assert len(shop.usage(filters=Filters(by=ours))) == 1
    shop.decide("person", ours, theirs, same=True)
    assert len(shop.usage(filters=Filters(by=ours))) == 2
    assert len(shop.usage(filters=Filters(by=theirs))) == 2


@pytest.mark.parametrize(("register", "other"), [("cylinder", "C-404"), ("site", "L-001")])
def test_that_only_rows_that_are_there_are_decided_on(
    both: tuple[Desk, Desk], register: str, other: str
) -> None:
    with pytest.raises(ChargebenchError, match="Expected a row"):
        both[0].decide(register, "C-001", other, same=True)


def test_that_a_row_changed_at_two_benches_is_flagged_with_both_words(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    shop.save_row("site", "L-001", {"name": "Bakery, Quay 4"})
    bench.save_row("site", "L-001", {"name": "Bakery, Quay 5"})
    benches.pass_on(bench, shop, tmp_path)
    (flag,) = [flag for flag in shop.all_flags() if flag.key == "bench-row"]
    assert "“Bakery, Quay 4” here" in flag.says
    assert "“Bakery, Quay 5” there" in flag.says
    assert shop.label("site", "L-001") == "Bakery, Quay 5"


def test_that_work_on_a_job_closed_meanwhile_is_flagged_by_its_number(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    job = shop.open_job("E-001")
    benches.pass_on(shop, bench, tmp_path)
    bench.not_needed(job, "recovery", "nothing opened")
    shop.ledger.post(NewEntry("job-closed", "P-01", shops.at("2026-11-20"), {"flags": []}, job=job))
    benches.pass_on(bench, shop, tmp_path)
    (flag,) = [flag for flag in shop.all_flags() if flag.key == "bench-closed-job"]
    assert "belongs to job B-0001, which was closed meanwhile" in flag.says


def test_that_a_job_file_taken_in_at_one_bench_is_known_at_the_other(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    job = charge(shop, 90)
    file = tmp_path / "job.json"
    file.write_bytes(shop.job_file(job))
    entries = bench.take_in(file)
    assert {entry.bench for entry in entries} == {"D"}
    benches.pass_on(bench, shop, tmp_path)
    with pytest.raises(ChargebenchError, match="was taken in before"):
        shop.take_in(file)


def test_that_all_the_program_signs_can_be_taken_in(sample_shop: Path, tmp_path: Path) -> None:
    """The sample shop holds every kind of entry the window records."""
    with Desk.open_reading(sample_shop) as sample:
        sample.hand_over(tmp_path / "all.chain")
        entries = sum(1 for _ in sample.entries())
        with shops_of(tmp_path, sample) as desk:
            taken = desk.take_over(tmp_path / "all.chain")
            assert (taken.taken, taken.conflicts) == (entries, ())
            assert desk.reading.balances("") == sample.reading.balances("")
            assert [line.number for line in desk.jobs()] == [line.number for line in sample.jobs()]
            assert desk.verify().ok


def shops_of(folder: Path, sample: Desk) -> Desk:
    """An empty bench of the sample's shop."""
    from chargebench.ledger import Ledger

    ledger = Ledger.create(folder / "bench.chargebench", "Q")
    ledger.belong_to(sample.reading.shop_id, "B")
    return Desk(ledger)


def test_that_masses_of_both_benches_are_told_in_the_export(
    both: tuple[Desk, Desk], tmp_path: Path
) -> None:
    shop, bench = both
    theirs = bench.save_row("cylinder", None, CYLINDER | {"serial": "9"})
    shops.receive(bench, "30 g", theirs)
    shops.receive(bench, "5 g")
    benches.pass_on(bench, shop, tmp_path)
    shop.decide("cylinder", "C-001", theirs, same=True)
    content = shop.content()
    assert content.entry_count == sum(1 for _ in shop.entries())
    closing = {r.place: r.closing_mg for r in content.balances if r.refrigerant == "R290"}
    assert closing == {"cylinder:C-001": 435_000, "supplier": -435_000}
