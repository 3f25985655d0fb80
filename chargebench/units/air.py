"""Gauge to absolute pressure, by the air pressure of the place."""

from chargebench.errors import ReadingRefused
from chargebench.units.reading import Reading, show
from chargebench.units.registry import STANDARD_ATMOSPHERE, Quantity, dimensions
from chargebench.words import say


@dimensions(air_pressure="[pressure]")
def absolute(reading: Reading, air_pressure: Quantity) -> Quantity:
    """Absolute pressure of a reading at a place.

    Parameters
    ----------
    reading : Reading
        A pressure as typed, gauge or absolute.
    air_pressure : Quantity [Pa]
        The air's absolute pressure at the place.

    Returns
    -------
    Quantity [Pa]
        Absolute pressure.

    Raises
    ------
    ReadingRefused
        A vacuum deeper than the air pressure allows.
    """
    pressure: Quantity = reading.quantity.to("Pa")
    if not reading.gauge:
        return pressure
    total: Quantity = pressure + air_pressure.to("Pa")
    if total.m_as("Pa") < 0:
        raise ReadingRefused(
            say(
                "“{text}” is below a perfect vacuum where the air has {air_pressure}; "
                "check the sign and the unit.",
                text=reading.text,
                air_pressure=show(air_pressure, str(reading.pint_unit), 2),
            )
        )
    return total


@dimensions(elevation="[length]")
def air_pressure_at(elevation: Quantity) -> Quantity:
    """Air pressure of the standard atmosphere at a height above sea level.

    Parameters
    ----------
    elevation : Quantity [m]
        Geopotential height, -2 000 m to 11 000 m.

    Returns
    -------
    Quantity [Pa]
        Absolute air pressure.

    Raises
    ------
    ReadingRefused
        Heights outside the formula's layer.

    Notes
    -----
    p = 101 325 (1 - 0.0065 h / 288.15)**5.255 88

    Source
    ------
    ISO2533, 2.7 (linear temperature layer).
    """
    metres = elevation.m_as("m")
    if not -2_000 <= metres <= 11_000:
        raise ReadingRefused("Expected a height between -2000 m and 11000 m above sea level.")
    pressure: Quantity = STANDARD_ATMOSPHERE * (1 - 0.0065 * metres / 288.15) ** 5.255_88
    return pressure
