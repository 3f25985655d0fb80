"""Writes schema_3.chargebench; was run once, when schema 3 was current.

Usage: python -m tests.old_ledgers.make_schema_3
"""

from pathlib import Path

from chargebench.ledger import Ledger
from chargebench.ledger.migrations import STEPS
from tests.ledger import books

FILE = Path(__file__).with_name("schema_3.chargebench")


def write() -> None:
    """One whole job, one open one, and text still being typed."""
    assert len(STEPS) == 3, "the program has moved on; this file stays as it is"
    with Ledger.create(FILE) as ledger:
        books.whole_job(ledger)
        ledger.keep_checkpoint("export")
        job = books.open_job(ledger, "E-204")
        ledger.keep_typed(job, "weigh-in", {"start": "4 312.5 g"})


if __name__ == "__main__":
    write()
