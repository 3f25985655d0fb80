"""Columns of the list of jobs, on a wide page and on a narrow one."""

from collections.abc import Sequence

from chargebench.desk.views import JobLine
from chargebench.ui.rowtable import Column
from chargebench.words import say

FLAG_EMS = 16


def job_columns(*, narrow: bool) -> Sequence[Column[JobLine]]:
    """Columns; on a narrow page refrigerant, charge and step stand under the equipment's name."""
    number: Column[JobLine] = Column("Job", lambda line: line.number)
    flag: Column[JobLine] = Column("Flag", _flag, shape=_level, least=8 if narrow else FLAG_EMS)
    if narrow:
        return (number, Column("Equipment", _in_two_lines, least=12), flag)
    return (
        number,
        Column("Equipment", lambda line: line.title, least=9),
        Column("Refrigerant", lambda line: line.refrigerant),
        Column("Charge", lambda line: line.charge),
        Column("Stands at", lambda line: line.now),
        flag,
    )


def _in_two_lines(line: JobLine) -> str:
    return say(
        "{title}\n{refrigerant} {charge} · {now}",
        title=line.title,
        refrigerant=line.refrigerant,
        charge=line.charge,
        now=line.now,
    )


def _level(line: JobLine) -> str:
    return line.worst.level if line.worst else ""


def _flag(line: JobLine) -> str:
    return (
        say("{level}  {says}", level=line.worst.level.upper(), says=line.worst.says)
        if line.worst
        else ""
    )
