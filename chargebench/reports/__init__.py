"""What leaves the program: content as plain data, then the audit workbook, checklist, manifest.

The writers are imported where they are used: they bring libraries a window does not need to open.
"""

from chargebench.reports.content import (
    AuditContent,
    BalanceRecord,
    CylinderLine,
    JobRecord,
    StepRecord,
    Tick,
)
from chargebench.reports.dated import DueLine, LeakRateAt, LeakRateLine, RetentionLine
from chargebench.reports.records import ChangeRecord, StockRecord
from chargebench.reports.selection import Selection
from chargebench.reports.unaccounted import UnaccountedLine

__all__ = [
    "AuditContent",
    "BalanceRecord",
    "ChangeRecord",
    "CylinderLine",
    "DueLine",
    "JobRecord",
    "LeakRateAt",
    "LeakRateLine",
    "RetentionLine",
    "Selection",
    "StepRecord",
    "StockRecord",
    "Tick",
    "UnaccountedLine",
]
