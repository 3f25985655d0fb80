"""Eight benches, each a process with a login of its own, at the same and at different cylinders."""

import subprocess
import sys
from pathlib import Path

import pytest

from chargebench.errors import Overdrawn, StorageRefused, WrongRefrigerant
from chargebench.ledger import Address, Ledger, NewEntry, Transfer
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON
from tests.postgres.server import Site

ROOT = Path(__file__).resolve().parents[2]
BENCHES = [f"W{number}" for number in range(8)]
POSTS = 60


def _work(addresses: dict[str, Address], cylinder: str, mass_mg: int) -> dict[str, list[str]]:
    """Let all benches take from cylinders at once; what each says it did."""
    children = {
        bench: subprocess.Popen(
            [sys.executable, "-m", "tests.postgres.bench", address.full, cylinder.format(bench),
             str(mass_mg), str(POSTS)],
            cwd=ROOT, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True,
        )
        for bench, address in addresses.items()
    }  # fmt: skip
    for child in children.values():
        assert child.stdout is not None
        assert child.stdout.readline() == "open\n"
    for child in children.values():  # all are ready: go
        assert child.stdin is not None
        child.stdin.write("go\n")
        child.stdin.flush()
    said = {bench: child.communicate()[0].split() for bench, child in children.items()}
    assert {child.returncode for child in children.values()} == {0}
    return said


@pytest.mark.parametrize("cylinder", [CYLINDER, "cylinder:{}"], ids=["the same", "its own"])
def test_that_eight_benches_at_once_lose_nothing(site: Site, cylinder: str) -> None:
    received = BENCHES if "{" in cylinder else [""]
    with site.shop() as shop:
        addresses = {bench: site.bench(bench) for bench in BENCHES}
        for bench in received:
            books.receive(shop, 10_000, cylinder=cylinder.format(bench))
        said = _work(addresses, cylinder, 1)
        assert {bench: len(ids) for bench, ids in said.items()} == dict.fromkeys(BENCHES, POSTS)
        left = sum(held.mass_mg for held in shop.balances("cylinder:"))
        assert left == 10_000 * len(received) - 8 * POSTS
        stands = {entry.id for entry in shop.entries(kind="step-signed")}
        assert stands == {each for ids in said.values() for each in ids}
        assert {bench: shop.heads()[bench][0] for bench in BENCHES} == dict.fromkeys(BENCHES, POSTS)
        assert shop.verify().problems == ()


def test_that_eight_benches_can_not_overdraw_a_cylinder_together(site: Site) -> None:
    with site.shop() as shop:
        addresses = {bench: site.bench(bench) for bench in BENCHES}
        books.receive(shop, 1_000)
        said = _work(addresses, CYLINDER, 7)  # 480 times 7 would be far more than it holds
        posted = sum(len(ids) for ids in said.values())
        assert posted == 1_000 // 7
        assert shop.balance(CYLINDER, "R290") == 1_000 - 7 * posted
        assert shop.verify().ok


def test_that_a_bench_waits_for_another_and_then_sees_what_it_left(site: Site) -> None:
    with site.shop() as shop, Ledger.open(site.bench("VAN2")) as van:
        books.receive(shop, 1_000)
        take = Transfer(CYLINDER, "equipment:E-1", "R290", 700, "0.7 g")
        van.post(NewEntry("step-signed", BY, NOON, {}, (take,)))
        with pytest.raises(Overdrawn, match=r"holds 0\.3 g of R290 by the book"):
            shop.post(NewEntry("step-signed", BY, NOON, {}, (take,)))


@pytest.mark.parametrize(
    ("held", "posted"),
    [
        ("cylinder:C-014", NewEntry("received", BY, NOON, {}, (
            Transfer("supplier", CYLINDER, "R290", 5, "5 mg"),))),
        ("site:S-1", NewEntry("register", BY, NOON, {
            "register": "site", "id": "S-1", "after": {"name": "Pier"}})),
    ],
    ids=["filling a cylinder", "writing a row"],
)  # fmt: skip
def test_that_what_an_entry_rests_on_is_held_against_other_benches(
    site: Site, held: str, posted: NewEntry
) -> None:
    with site.shop() as shop, site.open_admin() as other:
        books.register_usual(shop)
        other.autocommit = False
        other.execute("SELECT pg_advisory_xact_lock(hashtextextended(%s, 0))", (held,))
        head = shop.head()
        shop._connection.exec_driver_sql("SET lock_timeout = '50ms'")
        shop._connection.commit()
        with pytest.raises(StorageRefused, match=r"Nothing was recorded .* another bench is"):
            shop.post(posted)
        assert shop.head() == head
        other.rollback()
        assert shop.post(posted).number == head[0] + 1
        assert shop.verify().ok


def test_that_two_benches_can_not_mix_refrigerants_in_an_empty_cylinder(site: Site) -> None:
    with site.shop() as shop, Ledger.open(site.bench("VAN2")) as van:
        books.receive(shop, 5, cylinder="cylinder:C-7", refrigerant="R290")
        with pytest.raises(WrongRefrigerant, match=r"holds 0\.005 g of R290"):
            books.receive(van, 5, cylinder="cylinder:C-7", refrigerant="R600a")


def test_that_job_numbers_count_per_bench_and_any_bench_may_sign(site: Site) -> None:
    with site.shop() as shop, Ledger.open(site.bench("VAN2")) as van:
        books.register_usual(shop)
        books.receive(van)
        first, _second, third = (books.open_job(each) for each in (shop, van, van))
        books.weigh_in(van, first)
        books.weigh_in(shop, third)
        assert [job.number for job in shop.jobs()] == ["VAN2-0002", "VAN2-0001", "B-0001"]
        assert shop.verify().problems == ()
