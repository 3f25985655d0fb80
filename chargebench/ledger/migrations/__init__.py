"""One frozen file per step of the schema; a step imports nothing of ours and never changes."""

from collections.abc import Callable

from sqlalchemy import Connection

from chargebench.ledger.migrations import step_0001, step_0002, step_0003

Step = Callable[[Connection], None]
STEPS: tuple[Step, ...] = (step_0001.run, step_0002.run, step_0003.run)
