"""Flags of a small case by their key."""

from chargebench import flags, steps
from chargebench.flags import Flag
from chargebench.steps import STEPS, Case


def by_step(case: Case, step: str) -> dict[str, Flag]:
    """Flags of one step as it stands typed."""
    found = flags.of_step(case, step, steps.work_out(case, step))
    assert len({flag.key for flag in found}) == len(found), found
    return {flag.key: flag for flag in found}


def by_job(case: Case) -> tuple[Flag, ...]:
    """Flags of a whole job."""
    return flags.of_job(case, {step: steps.work_out(case, step) for step in STEPS})


def of_job(case: Case) -> dict[str, Flag]:
    """Flags of a whole job by key."""
    return {flag.key: flag for flag in by_job(case)}
