"""Sheets as data: columns with the unit in the head, rows of plain values, charts beside them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum

HEAD_ROW = 4  # name, what it holds, a blank, the head
MG_PER_KG = 1_000_000
LB_PER_KG = Decimal(1) / Decimal("0.45359237")  # NISTSP811, B.8, exact


class Form(StrEnum):
    """How a column's numbers are shown; the value is the spreadsheet's number format."""

    PLAIN = "General"
    WHOLE = "#,##0"
    TENTHS = "0.0"
    HUNDREDTHS = "0.00"
    THOUSANDTHS = "0.000"
    MASS = "#,##0.000###"
    PERCENT = '0.0"%"'
    DATE = "yyyy-mm-dd"
    WHEN = "yyyy-mm-dd hh:mm"
    MOMENT = "yyyy-mm-dd hh:mm:ss"
    LONG = "@"  # text that wraps


@dataclass(frozen=True, slots=True)
class Formula:
    """A live formula with the value the program worked out for it."""

    text: str  # begins with =
    value: Decimal | int | float | str


Cell = str | int | float | Decimal | bool | date | datetime | Formula | None
Row = Sequence[Cell]


@dataclass(frozen=True, slots=True)
class Column:
    """One column; `head` carries the unit."""

    head: str
    width: float = 14
    form: Form = Form.PLAIN


@dataclass(frozen=True, slots=True)
class Curve:
    """One chart of a table: columns of x and y values, in rows of another sheet."""

    title: str
    sheet: str
    x: int  # column number, from 1
    y: int
    first: int  # row numbers, from 1
    last: int
    x_title: str
    y_title: str
    x_values: tuple[float, ...] = ()  # written beside the references for viewers
    y_values: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Table:
    """One sheet."""

    name: str
    says: str  # what the sheet holds, in its first row
    columns: tuple[Column, ...]
    rows: Iterable[Row]
    empty: str = "Nothing was recorded in this period."
    foot: tuple[str, ...] = ()
    charts: tuple[Curve, ...] = ()


def kg(mass_mg: int | None) -> Decimal | None:
    """Kilograms of integer milligrams, exact."""
    return None if mass_mg is None else Decimal(mass_mg) / MG_PER_KG


def lb(mass_mg: int | None) -> float | None:
    """Pounds of integer milligrams."""
    return None if mass_mg is None else float(Decimal(mass_mg) / MG_PER_KG * LB_PER_KG)


def clock(moment: datetime | None) -> datetime | None:
    """The wall clock where it happened; spreadsheets know no time zones."""
    return None if moment is None else moment.replace(tzinfo=None)


def zone(moment: datetime | None) -> str:
    """Offset from UTC, which the wall clock leaves out."""
    return "" if moment is None else moment.strftime("%z")[:3] + ":" + moment.strftime("%z")[3:5]
