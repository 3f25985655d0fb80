"""What a shop can do, as plain methods.

The desk grows by chapters, each a class that adds to the one before: opened, signing, registers,
jobs, stock, records, content, take-in, export.
"""

from chargebench.desk.export import Desk
from chargebench.desk.handed import HandedOut, MetTwice
from chargebench.desk.photos import PhotoLine
from chargebench.desk.rights import Act
from chargebench.desk.views import (
    Correction,
    Exported,
    JobLine,
    JobView,
    Look,
    StepView,
    TickLine,
    UsageTotal,
)
from chargebench.ledger import Filters, HistoryRow, UsageRow
from chargebench.reports import CylinderLine, DueLine, LeakRateLine, RetentionLine

__all__ = [
    "Act",
    "Correction",
    "CylinderLine",
    "Desk",
    "DueLine",
    "Exported",
    "Filters",
    "HandedOut",
    "HistoryRow",
    "JobLine",
    "JobView",
    "LeakRateLine",
    "Look",
    "MetTwice",
    "PhotoLine",
    "RetentionLine",
    "StepView",
    "TickLine",
    "UsageRow",
    "UsageTotal",
]
