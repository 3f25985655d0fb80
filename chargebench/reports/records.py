"""Stock work and changes of records, as plain data."""

from dataclasses import dataclass
from datetime import datetime

from chargebench.steps import Answers


@dataclass(frozen=True, slots=True)
class StockRecord:
    """Stock work as the ledger has it: received, weighed, decanted or returned."""

    kind: str  # of the entry
    entry: str
    bench: str
    number: int
    at: datetime
    by: str
    answers: Answers
    moved_mg: int
    said: str = ""
    reversed: str = ""  # why it no longer counts


@dataclass(frozen=True, slots=True)
class ChangeRecord:
    """One thing that was said differently afterwards: a field of a register, or an entry."""

    bench: str
    number: int
    at: datetime
    by: str
    what: str  # registered, changed, taken back
    about: str  # equipment:E-003, or entry 88
    field: str = ""
    before: str = ""
    after: str = ""
    reason: str = ""
