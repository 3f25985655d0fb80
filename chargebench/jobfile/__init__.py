"""Job files: one job as typed, with the register rows it needs, as JSON people can read."""

from chargebench.jobfile.model import Job, JobFile, StepTyped, StockAct
from chargebench.jobfile.read import SIZE_MOST, read
from chargebench.jobfile.schema import schema
from chargebench.jobfile.write import digest, write

__all__ = [
    "SIZE_MOST",
    "Job",
    "JobFile",
    "StepTyped",
    "StockAct",
    "digest",
    "read",
    "schema",
    "write",
]
