"""Entries, transfers, balances and their chain: the only door to SQL.

Nothing recorded changes; more is added. `Ledger` records, `Reader` asks, both over one shop file.
"""

from chargebench.ledger.backup import backups
from chargebench.ledger.beginning import begin
from chargebench.ledger.book import Ledger
from chargebench.ledger.chainfile import is_chain_file
from chargebench.ledger.chainlines import Chain
from chargebench.ledger.conflicts import Conflict
from chargebench.ledger.entry import (
    FIXED_PLACES,
    OPEN_TO_CLOSED,
    Entry,
    NewEntry,
    Transfer,
    mass_words,
    new_id,
)
from chargebench.ledger.handover import HANDED_OVER, TakenOver
from chargebench.ledger.histories import HistoryRow
from chargebench.ledger.pictures import Picture
from chargebench.ledger.place import Address, Place, place_of
from chargebench.ledger.projection import JOB_KINDS, REGISTERS, Job
from chargebench.ledger.reader import Reader
from chargebench.ledger.reading import Balance
from chargebench.ledger.rescue import rescue
from chargebench.ledger.rescued import Rescued
from chargebench.ledger.restoring import GoingBack, Kept, going_back, kept, restore
from chargebench.ledger.sameness import ALIKE, SAME, decision, pair_id
from chargebench.ledger.scan import Checkpoint, Problem
from chargebench.ledger.tablefile import TableFile
from chargebench.ledger.usage import Filters, UsageRow, UsageTotal
from chargebench.ledger.verify import Verification

__all__ = [
    "ALIKE",
    "FIXED_PLACES",
    "HANDED_OVER",
    "JOB_KINDS",
    "OPEN_TO_CLOSED",
    "REGISTERS",
    "SAME",
    "Address",
    "Balance",
    "Chain",
    "Checkpoint",
    "Conflict",
    "Entry",
    "Filters",
    "GoingBack",
    "HistoryRow",
    "Job",
    "Kept",
    "Ledger",
    "NewEntry",
    "Picture",
    "Place",
    "Problem",
    "Reader",
    "Rescued",
    "TableFile",
    "TakenOver",
    "Transfer",
    "UsageRow",
    "UsageTotal",
    "Verification",
    "backups",
    "begin",
    "decision",
    "going_back",
    "is_chain_file",
    "kept",
    "mass_words",
    "new_id",
    "pair_id",
    "place_of",
    "rescue",
    "restore",
]
