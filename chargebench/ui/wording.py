"""Values as words on the screen: what a typed text was understood as, a figure with its doubt."""

from datetime import date, datetime

from chargebench import fluids
from chargebench.steps import Asks, Field
from chargebench.steps.case import Figure
from chargebench.ui import language
from chargebench.units import Kind, Quantity, Reading, System, gauge, show, shown, unit_for
from chargebench.words import joined, say

_GAUGE: dict[System, tuple[str, int]] = {"SI": ("bar", 2), "IP": ("psi", 1)}

# A scale is read to a tenth of a gram, whatever unit it is shown in.
_SCALE_PLACES = {"g": 1, "kg": 4, "oz": 2, "lb": 4}


def understood(field: Field, value: object, system: System) -> str:
    """What a typed text was understood as; empty where the text says it already."""
    if isinstance(value, Reading):
        return joined("= ", ("", _reading(value, system)))
    if isinstance(value, datetime):
        return f"= {language.weekday(value)} {value:%H:%M}"
    if isinstance(value, date):
        return f"= {language.weekday(value)} {value.year}"
    if field.asks is Asks.REFRIGERANT and isinstance(value, str):
        found = fluids.refrigerant(value)
        return f"= {found.name}, {found.safety_class}"
    return ""


def _reading(reading: Reading, system: System) -> str:
    if reading.kind is Kind.NUMBER:
        return f"{float(reading.value):g}"
    if reading.kind is Kind.SCALE:
        unit = unit_for(reading.quantity, system)[0]
        return show(reading.quantity, unit, _SCALE_PLACES[unit])
    if reading.gauge:
        unit, places = _GAUGE[system]
        return gauge(reading.quantity, unit, places)
    return shown(reading.quantity, system)


def value_of(value: Quantity | str, system: System, *, like: Quantity | str | None = None) -> str:
    """A figure's value or limit; `like` lends its unit where both are of one kind."""
    if isinstance(value, str):
        return value
    if like is None or isinstance(like, str) or value.check("[temperature]"):
        return shown(value, system)
    return shown(value, system, like=like)


def fine_of(value: Quantity, system: System) -> str:
    """A quantity that is small beside its unit, such as a doubt of hundredths of a gram."""
    unit, places = unit_for(value, system)
    return show(value, unit, places + 2)


def figure_of(figure: Figure, system: System) -> str:
    """A figure's value with its doubt: `88.4 g ± 0.8 g`."""
    text = value_of(figure.value, system)
    if figure.doubt is None:
        return text
    return say(
        "{text} ± {value_of}", text=text, value_of=value_of(figure.doubt, system, like=figure.value)
    )


def at(when: datetime) -> str:
    """A moment, on this computer's wall clock."""
    return language.moment(when)
