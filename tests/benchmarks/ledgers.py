"""Posting, balances, verification and taking in, each beside the same on the bare library."""

import hashlib
import shutil
import sqlite3
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import msgspec

from chargebench.ledger import Ledger, NewEntry, Reader, Transfer, begin
from tests.benchmarks.measure import RUNS, Row, median, side_by_side

POSTS = 300
NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
LINE = Transfer("supplier", "cylinder:C-0001", "R290", 1_000, "1 g")
PAYLOAD = {"step": "weigh_in", "typed": {"cylinder": "C-0001", "mass": "1 g"}}
_ENCODE = msgspec.json.Encoder(order="deterministic").encode


class _Bare:
    """The same rows written through sqlite3 alone: entry, mass line, balances, day, head, hash."""

    def __init__(self, path: Path) -> None:
        self._tool = sqlite3.connect(path, isolation_level=None)
        for pragma in ("synchronous=FULL", "foreign_keys=ON"):
            self._tool.execute(f"PRAGMA {pragma}")

    def post(self) -> None:
        """One durable, chained post."""
        run = self._tool.execute
        run("BEGIN IMMEDIATE")
        number, previous = run("SELECT number, hash FROM head WHERE bench = 'B'").fetchone()
        at = NOON.isoformat()
        payload = _ENCODE(PAYLOAD).decode()
        line = (LINE.source, LINE.target, LINE.refrigerant, LINE.mass_mg, LINE.as_typed)
        said = (str(uuid.uuid4()), "B", number + 1, "received", None, at, at, "P-01")
        digest = hashlib.sha256(
            previous + _ENCODE((1, *said, msgspec.Raw(payload.encode()), [line]))
        ).digest()
        position = run(
            "INSERT INTO entry VALUES (NULL,?,?,?,?,?,?,?,?,?,?,?,?)",
            (*said, payload, previous, digest, 0),
        ).lastrowid
        run("INSERT INTO transfer VALUES (?,?,?,?,?,?,?)", (position, 0, *line))
        for place, gain in ((LINE.source, -LINE.mass_mg), (LINE.target, LINE.mass_mg)):
            run(
                "INSERT INTO balance VALUES (?,?,?) ON CONFLICT (place, refrigerant) DO UPDATE "
                "SET mass_mg = mass_mg + excluded.mass_mg",
                (place, LINE.refrigerant, gain),
            )
        run(
            "INSERT INTO day_total VALUES (?,'B','P-01','R290','supplier','cylinder',?,1) ON "
            "CONFLICT DO UPDATE SET mass_mg = mass_mg + excluded.mass_mg, lines = lines + 1",
            (at[:10], LINE.mass_mg),
        )
        run("UPDATE head SET number = ?, hash = ? WHERE bench = 'B'", (number + 1, digest))
        run("COMMIT")

    def close(self) -> None:
        """Let go of the file."""
        self._tool.close()


def posting(folder: Path, runs: int = RUNS) -> Iterator[Row]:
    """One post, durable and chained."""
    ours, theirs = folder / "ours.chargebench", folder / "bare.chargebench"
    Ledger.create(ours).close()
    shutil.copy(ours, theirs)
    bare = _Bare(theirs)
    with Ledger.open(ours, backups=0) as ledger:

        def post() -> None:
            for _ in range(POSTS):
                ledger.post(NewEntry("received", "P-01", NOON, dict(PAYLOAD), (LINE,)))

        def post_bare() -> None:
            for _ in range(POSTS):
                bare.post()

        post()
        post_bare()
        mine, floor = side_by_side(post, post_bare, runs=runs)
    bare.close()
    each = 1e6 / POSTS
    yield Row(
        "post one entry", mine * each, "us", "the same rows on bare sqlite3", floor * each, 2.5,
        runs=runs,
    )  # fmt: skip


def reading(shop: Path) -> Iterator[Row]:
    """Balances of every cylinder, and the pages a person looks at."""
    tool = sqlite3.connect(f"{shop.as_uri()}?mode=ro", uri=True)
    query = "SELECT * FROM balance WHERE place >= 'cylinder:' AND place < 'cylinder;'"
    covering = (
        "SELECT place, refrigerant, sum(mg) FROM (SELECT target place, refrigerant, mass_mg mg "
        "FROM transfer UNION ALL SELECT source, refrigerant, -mass_mg FROM transfer) GROUP BY 1, 2"
    )
    with Reader.open_reading(shop) as ledger:
        count = len(ledger.balances())
        bare = median(lambda: tool.execute(query).fetchall())
        ours = median(ledger.balances)
        yield Row(
            f"balances of {count} cylinders", ours * 1e3, "ms", "bare sqlite3, running totals",
            bare * 1e3, most=3,
        )  # fmt: skip
        summed = median(lambda: tool.execute(covering).fetchall(), 1)
        yield Row(
            f"balances of {count} cylinders", ours * 1e3, "ms", "SQL sums over every transfer",
            summed * 1e3, runs=1,
        )  # fmt: skip
        busy = max(ledger.balances(), key=lambda held: held.mass_mg).place
        for what, ask in (
            ("page of the usage log", lambda: ledger.usage(limit=200)),
            ("totals of everything", ledger.usage_totals),
            ("history of a cylinder", lambda: ledger.history(busy)),
            ("history of the atmosphere", lambda: ledger.history("atmosphere")),
            ("page of jobs", lambda: ledger.jobs(limit=200)),
            ("find a job by its number", lambda: ledger.jobs(find="B-0042", limit=200)),
            ("closed jobs with flags", ledger.closed_with_flags),
        ):
            yield Row(what, median(ask) * 1e3, "ms", "", None)
    tool.close()


def verifying(shop: Path, runs: int = 3) -> Iterator[Row]:
    """Verify, beside reading every entry with its lines, its canonical bytes and SHA-256."""

    def floor() -> None:
        tool = sqlite3.connect(f"{shop.as_uri()}?mode=ro", uri=True)
        lines = tool.execute("SELECT * FROM transfer ORDER BY entry, line")
        line = lines.fetchone()
        digest = bytes(32)
        for row in tool.execute(
            "SELECT id, bench, number, kind, job, happened_at, recorded_at, by, payload, hash, "
            "position FROM entry ORDER BY position"
        ):
            moved = []
            while line is not None and line[0] == row[10]:
                moved.append(line[2:])
                line = lines.fetchone()
            content = _ENCODE((1, *row[:8], msgspec.Raw(row[8].encode()), moved))
            digest = hashlib.sha256(digest + content).digest()
            assert digest == row[9]
        tool.close()

    with Reader.open_reading(shop) as ledger:
        entries = ledger.head()[0]
        ours, bare = side_by_side(ledger.verify, floor, runs=runs)
    yield Row(
        f"verify {entries} entries", ours, "s", "read, canonical bytes, SHA-256", bare, 2.0,
        runs=runs,
    )  # fmt: skip


def taking_in(folder: Path, entries: int = 2_000, runs: int = 3) -> Iterator[Row]:
    """Taking in a chain file, beside posting as many entries on bare sqlite3 in one transaction."""
    with Ledger.create(folder / "shop.chargebench") as shop:
        shop.post(NewEntry("received", "P-01", NOON, dict(PAYLOAD), (LINE,)))
        shop.hand_over(folder / "begin.chain", for_bench="D")
    with begin(folder / "D.chargebench", folder / "begin.chain", NOON) as away:
        away.post_all(
            [NewEntry("received", "P-01", NOON, dict(PAYLOAD), (LINE,)) for _ in range(entries)]
        )
        away.hand_over(folder / "D.chain", only="D")
    rate: list[Any] = []
    for turn in range(runs):
        copy = folder / f"taking{turn}.chargebench"
        shutil.copy(folder / "shop.chargebench", copy)
        with Ledger.open(copy, backups=0) as shop:
            work = lambda shop=shop: shop.take_over(folder / "D.chain", "P-01", NOON)  # noqa: E731
            rate.append(side_by_side(work, runs=1)[0])
    yield Row(
        f"take in {entries} entries", sorted(rate)[runs // 2] / entries * 1e6, "us each", "", None,
        runs=runs,
    )  # fmt: skip
