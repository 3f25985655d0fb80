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
from chargebench.reports.unaccounted import UnaccountedLine

__all__ = [
    "AuditContent",
    "BalanceRecord",
    "CylinderLine",
    "DueLine",
    "JobRecord",
    "LeakRateAt",
    "LeakRateLine",
    "RetentionLine",
    "StepRecord",
    "Tick",
    "UnaccountedLine",
]
