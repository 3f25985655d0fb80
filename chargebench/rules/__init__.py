"""Rule sets: dated limits and duties read from files, each figure with source, place and mark."""

from chargebench.rules.checklist import ChecklistLine, checklist
from chargebench.rules.duties import (
    Climate,
    Inspection,
    LeakCheck,
    LeakRate,
    Recovery,
    RecoveryLevel,
    Regulation,
    ServiceBan,
    SmallAppliance,
    Venting,
    VentingExemption,
)
from chargebench.rules.figure import Cited, Day, Figure, Words
from chargebench.rules.files import load, load_file, names
from chargebench.rules.limits import (
    Charge,
    ChargeLimitRule,
    ChargeTolerance,
    Cylinders,
    Decay,
    Evacuation,
    Flammability,
    PassRule,
    PressureTest,
    Requalification,
    RoomForm,
    RoomMarking,
)
from chargebench.rules.listing import figures
from chargebench.rules.model import RuleSet

__all__ = [
    "Charge",
    "ChargeLimitRule",
    "ChargeTolerance",
    "ChecklistLine",
    "Cited",
    "Climate",
    "Cylinders",
    "Day",
    "Decay",
    "Evacuation",
    "Figure",
    "Flammability",
    "Inspection",
    "LeakCheck",
    "LeakRate",
    "PassRule",
    "PressureTest",
    "Recovery",
    "RecoveryLevel",
    "Regulation",
    "Requalification",
    "RoomForm",
    "RoomMarking",
    "RuleSet",
    "ServiceBan",
    "SmallAppliance",
    "Venting",
    "VentingExemption",
    "Words",
    "checklist",
    "figures",
    "load",
    "load_file",
    "names",
]
