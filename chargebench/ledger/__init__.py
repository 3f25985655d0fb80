"""Entries, transfers, balances and their chain: the only door to SQL.

Nothing recorded changes; more is added. `Ledger` records, `Reader` asks, both over one shop file.
"""

from chargebench.ledger.backup import backups
from chargebench.ledger.book import Ledger
from chargebench.ledger.entry import (
    FIXED_PLACES,
    OPEN_TO_CLOSED,
    Entry,
    NewEntry,
    Transfer,
    mass_words,
    new_id,
)
from chargebench.ledger.projection import JOB_KINDS, REGISTERS, Job
from chargebench.ledger.reader import Reader
from chargebench.ledger.reading import Balance, HistoryRow
from chargebench.ledger.restoring import restore
from chargebench.ledger.scan import Checkpoint, Problem
from chargebench.ledger.usage import Filters, UsageRow, UsageTotal
from chargebench.ledger.verify import Verification

__all__ = [
    "FIXED_PLACES",
    "JOB_KINDS",
    "OPEN_TO_CLOSED",
    "REGISTERS",
    "Balance",
    "Checkpoint",
    "Entry",
    "Filters",
    "HistoryRow",
    "Job",
    "Ledger",
    "NewEntry",
    "Problem",
    "Reader",
    "Transfer",
    "UsageRow",
    "UsageTotal",
    "Verification",
    "backups",
    "mass_words",
    "new_id",
    "restore",
]
