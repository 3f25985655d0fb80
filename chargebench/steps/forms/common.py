"""Fields that several steps ask for."""

from chargebench.steps.form import Asks, Field
from chargebench.units import Kind


def scale() -> Field:
    """The scale a weighing is made on."""
    return Field("scale", "Scale", Asks.ROW, register="instrument", only="scale", required=True)


def reading(key: str, label: str, kind: Kind, example: str, *, required: bool = False) -> Field:
    """A field for a number with its unit."""
    return Field(key, label, Asks.READING, kind, example, required=required)


AIR = reading("air_pressure", "Air pressure here", Kind.AIR_PRESSURE, "1013 hPa or 29.92 inHg")
SAFETY_LIST = Field("ticks", "Safety list", Asks.TICKS)
