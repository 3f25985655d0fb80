"""Eight benches on one PostgreSQL, beside a bare row lock through psycopg on the same server."""

import multiprocessing
import random
import statistics
import time
from collections.abc import Callable, Iterator, Sequence
from multiprocessing.synchronize import Barrier
from typing import Any

from chargebench.ledger import Ledger, NewEntry, Transfer
from tests.benchmarks.measure import Row
from tests.ledger.books import BY, NOON
from tests.postgres.server import Site, started

BENCHES, POSTS, CYLINDERS = 8, 200, 5_000


def _ours(address: Any, worker: int, cylinders: int, go: Barrier, ends: Any) -> None:
    choice = random.Random(worker)
    with Ledger.open(address) as ledger:
        ledger.head()
        go.wait()
        for _ in range(POSTS):
            source = f"cylinder:C{choice.randrange(cylinders)}"
            line = Transfer(source, f"equipment:E{worker}", "R290", 1, "1 mg")
            ledger.post(NewEntry("step-signed", BY, NOON, {}, (line,)))
        ends.put(time.time())


def _bare(address: str, worker: int, cylinders: int, go: Barrier, ends: Any) -> None:
    import psycopg

    choice = random.Random(worker)
    with psycopg.connect(address) as connection:
        connection.execute("SELECT 1")
        connection.commit()
        go.wait()
        for _ in range(POSTS):
            key = choice.randrange(cylinders)
            lock = "SELECT mass FROM bare.held WHERE id = %s FOR UPDATE"
            found = connection.execute(lock, (key,)).fetchone()
            assert found is not None
            after = found[0] - 1
            moved = "INSERT INTO bare.moved (held, mass, after, bench) VALUES (%s, -1, %s, %s)"
            connection.execute(moved, (key, after, worker))
            connection.execute("UPDATE bare.held SET mass = %s WHERE id = %s", (after, key))
            connection.commit()
        ends.put(time.time())


def _rate(work: Callable[..., None], addresses: Sequence[Any], cylinders: int) -> float:
    spawn = multiprocessing.get_context("spawn")
    go, ends = spawn.Barrier(BENCHES + 1), spawn.Queue()
    workers = [
        spawn.Process(target=work, args=(address, number, cylinders, go, ends))
        for number, address in enumerate(addresses)
    ]
    for each in workers:
        each.start()
    go.wait()
    began = time.time()
    last: float = max(ends.get() for _ in workers)
    for each in workers:
        each.join()
    return BENCHES * POSTS / (last - began)


def _tables(site: Site) -> str:
    from psycopg.conninfo import make_conninfo

    with site.open_admin() as connection:
        for statement in (
            "CREATE SCHEMA bare",
            "CREATE TABLE bare.held (id int PRIMARY KEY, mass bigint)",
            (
                "CREATE TABLE bare.moved (id bigserial PRIMARY KEY, held int REFERENCES "
                "bare.held, mass bigint, after bigint, bench int)"
            ),
            "INSERT INTO bare.held SELECT k, 1000000000 FROM generate_series(0, 4999) k",
        ):
            connection.execute(statement)
    return make_conninfo(site.admin, dbname=site.database)


def rows(runs: int = 3) -> Iterator[Row]:
    """Postings a second, spread over the cylinders and all on one; then verified."""
    with started() as admin:
        site = Site.made(admin)
        with site.shop() as shop:
            shop.post_all(
                NewEntry(
                    "received", BY, NOON, {},
                    (Transfer("supplier", f"cylinder:C{number}", "R290", 10**9, "1 t"),),
                )
                for number in range(CYLINDERS)
            )  # fmt: skip
        addresses = [site.bench(f"W{number}") for number in range(BENCHES)]
        bare = [_tables(site)] * BENCHES
        for what, cylinders in (("spread", CYLINDERS), ("on one cylinder", 1)):
            theirs, ours = [], []
            for _ in range(runs):
                theirs.append(_rate(_bare, bare, cylinders))
                ours.append(_rate(_ours, addresses, cylinders))
            yield Row(
                f"eight benches on PostgreSQL, {what}", statistics.median(ours), "posts/s",
                "bare psycopg, row lock", statistics.median(theirs), 0.5, runs=runs,
                more_is_better=True,
            )  # fmt: skip
        with Ledger.open(site.address()) as shop:
            lost = len(shop.verify().problems)
        yield Row("eight benches, updates lost", lost, "", "", None, most=0, runs=1)
