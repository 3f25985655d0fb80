"""What a person must see: flags raised from a job or a register row against the rule set."""

from chargebench.flags.flag import LEVELS, Flag, Level, worst_first
from chargebench.flags.of_cylinder import of_cylinder
from chargebench.flags.of_equipment import of_detection, of_equipment, of_overdue
from chargebench.flags.of_handover import of_conflict, of_met_twice
from chargebench.flags.of_job import of_follow_up, of_job, of_step_in_job
from chargebench.flags.of_step import of_step
from chargebench.flags.of_stock import of_stock, unaccounted
from chargebench.flags.words import class_words

__all__ = [
    "LEVELS",
    "Flag",
    "Level",
    "class_words",
    "of_conflict",
    "of_cylinder",
    "of_detection",
    "of_equipment",
    "of_follow_up",
    "of_job",
    "of_met_twice",
    "of_overdue",
    "of_step",
    "of_step_in_job",
    "of_stock",
    "unaccounted",
    "worst_first",
]
