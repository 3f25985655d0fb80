"""Figures of one dimension each, as the fields of the rule tables ask for them."""

from typing import Annotated

from chargebench.rules.figure import Figure, Words

Mass = Annotated[Figure, "[mass]"]
Pressure = Annotated[Figure, "[pressure]"]
Share = Annotated[Figure, "[]"]
Span = Annotated[Figure, "[time]"]
CalendarSpan = Annotated[Figure, "[time]", "calendar"]  # whole days, months or years
Temperature = Annotated[Figure, "[temperature]"]
Length = Annotated[Figure, "[length]"]
Volume = Annotated[Figure, "[volume]"]
Density = Annotated[Figure, "[density]"]
PressureRate = Annotated[Figure, "[pressure] / [time]"]
DayOfYear = Annotated[Words, "MM-DD"]
