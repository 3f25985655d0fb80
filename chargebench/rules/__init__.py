"""Rule sets: dated limits and duties read from files, each figure with source, place and mark."""

from chargebench.rules.checklist import ChecklistLine, checklist
from chargebench.rules.figure import Cited, Day, Figure, Words
from chargebench.rules.files import load, load_file, names
from chargebench.rules.listing import figures
from chargebench.rules.model import (
    ChargeLimitRule,
    ChargeTolerance,
    Climate,
    Cylinders,
    Decay,
    Evacuation,
    Flammability,
    LeakCheck,
    LeakRate,
    PassRule,
    PressureTest,
    Recovery,
    RecoveryLevel,
    Regulation,
    RoomForm,
    RuleSet,
    SmallAppliance,
    Venting,
)

__all__ = [
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
    "LeakCheck",
    "LeakRate",
    "PassRule",
    "PressureTest",
    "Recovery",
    "RecoveryLevel",
    "Regulation",
    "RoomForm",
    "RuleSet",
    "SmallAppliance",
    "Venting",
    "Words",
    "checklist",
    "figures",
    "load",
    "load_file",
    "names",
]
