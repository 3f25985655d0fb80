"""Columns of the cylinders' list: what each holds, how far it may be filled, what is due."""

from collections.abc import Sequence
from datetime import date

from chargebench.desk import CylinderLine, Desk
from chargebench.ui.fillbar import share_words
from chargebench.ui.rowtable import Column
from chargebench.ui.stock_words import day, due_shape, due_words, mass
from chargebench.words import say

FILL_COLUMN = 4


def cylinder_columns(desk: Desk) -> Sequence[Column[CylinderLine]]:
    """Columns of the cylinders' list; the one at `FILL_COLUMN` is painted as a bar."""
    system, today = desk.units, desk.today
    return (
        Column("Cylinder", lambda line: line.id),
        Column("Refrigerant", lambda line: line.refrigerant),
        Column("Contents", lambda line: line.contents, gives_way=4),
        Column("Holds", lambda line: mass(line.mass_mg, system), right=True),
        Column("Fill against limit", share_words, least=10, drawn=5),
        Column("Left", lambda line: _left(line, desk), gives_way=1),
        Column("Last weighed", _weighed, gives_way=3),
        Column(
            "Requalification",
            lambda line: due_words(line.due, today),
            shape=lambda line: due_shape(line.due, today),
            gives_way=2,
        ),
        Column(
            "Flag",
            lambda line: line.flags[0].says if line.flags else "",
            shape=lambda line: line.flags[0].level if line.flags else "",
            least=4,
        ),
    )


def _weighed(line: CylinderLine) -> str:
    return day(date.fromisoformat(line.last_weighed)) if line.last_weighed else "never"


def _left(line: CylinderLine, desk: Desk) -> str:
    """What is left to use of new refrigerant; what is left to fill of anything else."""
    if line.contents == "new":
        return say("{mass} to use", mass=mass(max(line.mass_mg, 0), desk.units))
    if line.limit_mg is None:
        return "room not known"
    if line.mass_mg > line.limit_mg:
        return say("{mass} too much", mass=mass(line.mass_mg - line.limit_mg, desk.units))
    return say("{limit} to fill", limit=mass(line.limit_mg - line.mass_mg, desk.units))
