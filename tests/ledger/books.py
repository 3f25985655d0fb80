"""Small readable books for the tests of the ledger: an invented shop and what happens in it."""

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime, timedelta, timezone
from pathlib import Path

from chargebench.ledger import (
    Checkpoint,
    Entry,
    Ledger,
    NewEntry,
    Reader,
    Transfer,
    Verification,
)

NOON = datetime(2026, 3, 2, 12, 0, tzinfo=timezone(timedelta(hours=1)))
BY = "N. Okafor"
CYLINDER, FREEZER = "cylinder:C-014", "equipment:E-203"


def later(minutes: int) -> datetime:
    """So many minutes past noon."""
    return NOON + timedelta(minutes=minutes)


def register(ledger: Ledger) -> None:
    """Two sites, two equipments, two cylinders of R290 and one for mixed waste."""
    register_usual(ledger)
    waste = {"refrigerant": "R404A", "contents": "mixed waste"}
    ledger.put_row("cylinder", "C-099", waste, BY, NOON)


def register_usual(ledger: Ledger) -> None:
    """Two sites, two equipments and two cylinders of R290: entries 1 to 6."""
    ledger.put_row("site", "S-1", {"name": "Bakery, Quay Straße"}, BY, NOON)
    ledger.put_row("site", "S-2", {"name": "Harbour Kitchen"}, BY, NOON)
    ledger.put_row("equipment", "E-203", {"name": "Bakery freezer", "site": "S-1"}, BY, NOON)
    ledger.put_row("equipment", "E-204", {"name": "Walk-in", "site": "S-2"}, BY, NOON)
    for cylinder, contents in (("C-014", "new"), ("C-015", "recovered")):
        row = {"refrigerant": "R290", "contents": contents}
        ledger.put_row("cylinder", cylinder, row, BY, NOON)


def receive(
    ledger: Ledger, mass_mg: int = 4_650_000, *, cylinder: str = CYLINDER, refrigerant: str = "R290"
) -> Entry:
    """A delivery into a cylinder."""
    line = Transfer("supplier", cylinder, refrigerant, mass_mg, f"{mass_mg} mg")
    return ledger.post(NewEntry("received", BY, NOON, {"note": "delivery 7"}, (line,)))


def open_job(ledger: Ledger, equipment: str = "E-203") -> str:
    """A new job on an equipment; its id."""
    job = ledger.post(NewEntry("job-opened", BY, NOON, {"equipment": equipment})).job
    assert job is not None
    return job


def weigh_in(ledger: Ledger, job: str, mass_mg: int = 99_223, hose_mg: int = 300) -> Entry:
    """A charge with its hose loss, as two mass lines of one entry."""
    return ledger.post(
        NewEntry(
            "step-signed",
            BY,
            later(30),
            {
                "step": "weigh-in",
                "start": "4 312.5 g",
                "end": "4 212.977 g",
                "net": f"{mass_mg} mg",
            },
            (
                Transfer(CYLINDER, FREEZER, "R290", mass_mg, "3.5 oz"),
                Transfer(CYLINDER, "atmosphere", "R290", hose_mg, "0.3 g"),
            ),
            job=job,
        )
    )


def whole_job(ledger: Ledger) -> str:
    """Registers, a delivery, a job with a weigh-in, a reversal, and the job's end."""
    register_usual(ledger)
    receive(ledger)
    job = open_job(ledger)
    wrong = weigh_in(ledger, job, 85_000)
    ledger.reverse(wrong.id, BY, later(40), "typed the wrong end reading")
    weigh_in(ledger, job)
    ledger.post(NewEntry("job-closed", BY, later(60), {"result": "runs"}, job=job))
    return job


def sums(ledger: Ledger) -> dict[str, int]:
    """Balances of every refrigerant summed over all places."""
    total: dict[str, int] = {}
    for held in ledger.balances(""):
        total[held.refrigerant] = total.get(held.refrigerant, 0) + held.mass_mg
    return total


@contextmanager
def database_tool(path: Path) -> Iterator[sqlite3.Connection]:
    """The file in the hands of somebody with a database tool: no guards while it is open."""
    tool = sqlite3.connect(path, isolation_level=None)
    try:
        guards = tool.execute("SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'")
        kept = guards.fetchall()
        for name, _ in kept:
            tool.execute(f"DROP TRIGGER {name}")
        yield tool
        for _, sql in kept:
            tool.execute(sql)
        tool.execute("PRAGMA wal_checkpoint(TRUNCATE)")
    finally:
        tool.close()


def foreign(path: Path) -> None:
    """Make a database of some other program."""
    tool = sqlite3.connect(path)
    tool.execute("CREATE TABLE entry (a)")
    tool.commit()
    tool.close()


def newer(path: Path) -> None:
    """Stamp a shop file as of a later schema."""
    tool = sqlite3.connect(path)
    tool.execute("PRAGMA user_version = 99")
    tool.close()


def verified(path: Path, *outside: Checkpoint) -> Verification:
    """What verify finds in a file, guards or no guards."""
    with Reader.open_reading(path, guarded=False) as reader:
        return reader.verify(checkpoints=outside)


def named(path: Path) -> set[int | None]:
    """Numbers of the entries that verify names."""
    return {problem.entry for problem in verified(path).problems}
