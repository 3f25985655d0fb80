"""Sheets as data: columns with the unit in the head, rows of plain values, charts beside them."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum

HEAD_ROW = 4  # name, what it holds, a blank, the head
MG_PER_KG = 1_000_000
LINE_POINTS, LINES_MOST = 15.0, 27  # 409 points is the tallest row a spreadsheet has
LB_PER_KG = Decimal(1) / Decimal("0.45359237")  # NISTSP811, B.8, exact


class Form(StrEnum):
    """How a column's numbers are shown; the value is the spreadsheet's number format."""

    PLAIN = "General"
    WHOLE = "#,##0"
    TENTHS = "0.0"
    HUNDREDTHS = "0.00"
    THOUSANDTHS = "0.000"
    MASS = "#,##0.0000"
    EXACT = "#,##0.000000"  # kilograms to the milligram
    PERCENT = '0.0"%"'
    DATE = "yyyy-mm-dd"
    WHEN = "yyyy-mm-dd hh:mm"
    MOMENT = "yyyy-mm-dd hh:mm:ss"
    LONG = "@"  # text that wraps


# Narrower, a spreadsheet shows no date at all but ####; on paper some need more than on a screen.
_DATES = {Form.DATE: 13, Form.WHEN: 19, Form.MOMENT: 22}


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
    least: float = 14
    form: Form = Form.PLAIN

    @property
    def width(self) -> float:
        """Width in characters: what is asked for; no word of the head broken, no date hidden."""
        shown = _DATES.get(self.form, 0)
        return max(self.least, shown, *(len(word) + 4 for word in self.head.split()))


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
class Bars:
    """One bar chart of a table's own rows: a group of bars for each, one bar for each column."""

    title: str
    names: int  # column number of what each group is called, from 1
    columns: tuple[int, ...]
    rows: int
    y_title: str
    named: tuple[str, ...] = ()  # written beside the references for viewers
    values: tuple[tuple[float, ...], ...] = ()  # by column


@dataclass(frozen=True, slots=True)
class Table:
    """One sheet."""

    name: str
    says: str  # what the sheet holds, in its first row
    columns: tuple[Column, ...]
    rows: Iterable[Row]
    empty: str = "Nothing was recorded in this period."
    foot: tuple[str, ...] = ()
    charts: tuple[Curve | Bars, ...] = ()


def letter_of(columns: Sequence[Column], head: str) -> str:
    """Letter of the column with this head, as a formula names it."""
    at = next(at for at, column in enumerate(columns) if column.head == head)
    return (chr(64 + at // 26) if at >= 26 else "") + chr(65 + at % 26)


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


def height(texts: Sequence[tuple[Cell, float]]) -> float | None:
    """Height in points of a row of wrapped texts, each with its column's width in characters.

    Spreadsheets do not agree on when they fit a row to its text, so it is said; an estimate.
    """
    lines = max((_lines(text, width) for text, width in texts if isinstance(text, str)), default=1)
    return None if lines <= 1 else LINE_POINTS * min(lines, LINES_MOST) + 1


def _lines(text: str, width: float) -> int:
    """Lines a text takes when words are kept whole."""
    room = max(int(width * 0.92) - 2, 4)
    lines = 0
    for part in text.split("\n"):
        left = 0
        lines += 1
        for word in part.split(" "):
            if left and left + 1 + len(word) > room:
                lines += 1
                left = 0
            left += len(word) + (1 if left else 0)
            lines += max(left - 1, 0) // room
            left = left % room if left > room else left
    return lines
