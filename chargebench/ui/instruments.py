"""Instruments as rows: what they can resolve, when they were checked, when the next is due."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from chargebench.desk import Desk
from chargebench.steps import Answers
from chargebench.ui.rowtable import Column
from chargebench.ui.stock_words import day, due_shape, due_words
from chargebench.words import joined

_RESOLVES = (
    ("resolution", ""),
    ("repeatability", "s "),
    ("gain", "± "),
    ("pressure_resolution", ""),
    ("temperature_uncertainty", "± "),
    ("sensitivity", ""),
)


@dataclass(frozen=True, slots=True)
class InstrumentRow:
    """One instrument."""

    id: str
    kind: str
    name: str
    resolves: str
    flammable: str
    calibrated: date | None
    due: date | None


def instrument_rows(desk: Desk, find: str = "") -> list[InstrumentRow]:
    """Instruments that hold every word looked for."""
    wanted = find.casefold().split()
    found: list[InstrumentRow] = []
    for row_id, row in desk.rows("instrument").items():
        text = joined(" ", (row_id, *row.values())).casefold()
        if all(word in text for word in wanted):
            found.append(_row(row_id, desk.check_row("instrument", row)))
    return found


def _row(row_id: str, row: Answers) -> InstrumentRow:
    parts = [
        f"{before}{reading.text}"
        for key, before in _RESOLVES
        if (reading := row.reading(key)) is not None
    ]
    suits = row.yes("flammable_suitable")
    return InstrumentRow(
        id=row_id,
        kind=row.text("kind"),
        name=row.text("name"),
        resolves=joined(", ", parts),
        flammable="" if suits is None else "suitable" if suits else "not suitable",
        calibrated=row.date("calibrated"),
        due=row.date("calibration_due"),
    )


def instrument_columns(desk: Desk) -> Sequence[Column[InstrumentRow]]:
    """Columns of the instruments' list."""
    today = desk.today
    return (
        Column("Instrument", lambda row: row.id),
        Column("Kind", lambda row: row.kind, least=6),
        Column("Name", lambda row: row.name, least=8),
        Column(
            "Calibration due",
            lambda row: due_words(row.due, today),
            shape=lambda row: due_shape(row.due, today),
        ),
        Column("Resolution and accuracy", lambda row: row.resolves or "not given", least=8),
        Column("Flammable gases", lambda row: row.flammable, gives_way=1),
        Column(
            "Calibrated",
            lambda row: day(row.calibrated) if row.calibrated else "",
            gives_way=2,
        ),
    )
