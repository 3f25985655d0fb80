"""Calendar spans of the rules: whole days, months and years from a day."""

import calendar
from datetime import date, timedelta

from chargebench.rules import Figure

_MONTHS = {"month": 1, "year": 12}


def after(start: date, span: Figure) -> date:
    """The day a calendar span after another.

    Parameters
    ----------
    start : date
        Day from which the span runs.
    span : Figure [day, month or year]
        A rule's span.

    Returns
    -------
    date
        A month or year later falls on the same day of the month, or the last day it has.

    Source
    ------
    COMMON, calendar months; the day of the start is not counted.
    """
    count = int(span.value)
    if span.unit == "day":
        return start + timedelta(days=count)
    months = start.year * 12 + start.month - 1 + count * _MONTHS[span.unit]
    year, month = divmod(months, 12)
    last = calendar.monthrange(year, month + 1)[1]
    return date(year, month + 1, min(start.day, last))
