"""What is asked of the reference: a refrigerant, a range by temperature or pressure, units."""

from chargebench.steps.form import Asks, Field, Form
from chargebench.steps.forms.common import AIR, reading
from chargebench.units import RULES, Kind, System

BY_TEMPERATURE, BY_PRESSURE = "temperature", "pressure"
TEMPERATURES = ("°C", "°F", "K")
# Every unit a pressure can be typed in, once; those of a gauge are above the air's pressure.
PRESSURES = tuple(
    dict.fromkeys(
        unit.label for unit in RULES[Kind.PRESSURE].units.values() if unit.label != "inHg vac"
    )
)
DENSITIES = {"kg/m³": "kg/m**3", "kg/L": "kg/L", "lb/ft³": "lb/ft**3", "lb/gal": "lb/gallon"}


def _form(by: str, range_fields: tuple[Field, ...]) -> Form:
    return Form(
        f"reference-{by}",
        "Reference",
        "Saturation of a refrigerant in any range and units, and what is known of it.",
        (
            Field("refrigerant", "Refrigerant", Asks.REFRIGERANT, required=True, example="R290"),
            *range_fields,
            Field(
                "temperature", "Temperature in", Asks.CHOICE, choices=TEMPERATURES, required=True
            ),
            Field("pressure", "Pressure in", Asks.CHOICE, choices=PRESSURES, required=True),
            Field("density", "Density in", Asks.CHOICE, choices=tuple(DENSITIES), required=True),
            Field("site", "Gauge at site", Asks.ROW, register="site"),
            AIR,
        ),
    )


FORMS = {
    BY_TEMPERATURE: _form(
        BY_TEMPERATURE,
        (
            reading("low", "From", Kind.TEMPERATURE, "-40 °C", required=True),
            reading("high", "To", Kind.TEMPERATURE, "60 °C", required=True),
            reading("step", "In steps of", Kind.DIFFERENCE, "5 K", required=True),
        ),
    ),
    BY_PRESSURE: _form(
        BY_PRESSURE,
        (
            reading("low", "From", Kind.PRESSURE, "0 psig", required=True),
            reading("high", "To", Kind.PRESSURE, "300 psig", required=True),
            reading("step", "In steps of", Kind.PRESSURE, "10 psig", required=True),
        ),
    ),
}
_USUAL: dict[System, dict[str, str]] = {
    "SI": {
        "low": "-50 °C",
        "high": "60 °C",
        "step": "5 K",
        "temperature": "°C",
        "pressure": "bar(g)",
        "density": "kg/m³",
    },
    "IP": {
        "low": "-60 °F",
        "high": "150 °F",
        "step": "5 °F",
        "temperature": "°F",
        "pressure": "psig",
        "density": "lb/ft³",
    },
}
_BY_PRESSURE: dict[System, dict[str, str]] = {
    "SI": {"low": "0 bar(g)", "high": "25 bar(g)", "step": "0.5 bar(g)"},
    "IP": {"low": "0 psig", "high": "400 psig", "step": "10 psig"},
}


def usual(system: System, refrigerant: str, by: str = BY_TEMPERATURE) -> dict[str, str]:
    """What stands in the form at first."""
    pressed = _BY_PRESSURE[system] if by == BY_PRESSURE else {}
    return {"refrigerant": refrigerant, **_USUAL[system], **pressed}
