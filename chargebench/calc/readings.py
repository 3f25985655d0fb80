"""Running readings: superheat, subcooling, split, evaporator difference, compression ratio.

What they support, and what they can not prove, is in `evidence`, taken up here.
"""

from typing import Protocol

from chargebench.calc.evidence import (
    Bands,
    Current,
    Evidence,
    Findings,
    NextMeasurement,
    evidence,
    next_measurement,
)
from chargebench.calc.evidence_rules import CondenserState, FanState, Frost, Hypothesis, Says
from chargebench.calc.hose import ConnectionCost, connection_cost
from chargebench.calc.surface import Differences, surface_differences
from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity, dimensions

__all__ = [
    "Bands",
    "CondenserState",
    "ConnectionCost",
    "Current",
    "Differences",
    "Evidence",
    "FanState",
    "Findings",
    "Frost",
    "Hypothesis",
    "NextMeasurement",
    "SaturationCurve",
    "Says",
    "compression_ratio",
    "condensing_split",
    "connection_cost",
    "evaporator_difference",
    "evidence",
    "next_measurement",
    "subcooling",
    "superheat",
    "surface_differences",
]


class SaturationCurve(Protocol):
    """What is asked of a saturation: temperatures at a pressure."""

    def bubble_temperature(self, pressure: Quantity) -> Quantity:
        """Temperature at which liquid begins to boil."""
        ...

    def dew_temperature(self, pressure: Quantity) -> Quantity:
        """Temperature at which vapour begins to condense."""
        ...


def _kelvin(temperature: Quantity) -> float:
    kelvin: float = temperature.m_as("kelvin")
    return kelvin


@dimensions(suction_pressure="[pressure]", line_temperature="[temperature]")
def superheat(
    saturation: SaturationCurve, *, suction_pressure: Quantity, line_temperature: Quantity
) -> Quantity:
    """Superheat of the vapour in the suction line.

    Parameters
    ----------
    saturation : Saturation [Pa, K]
        Of the refrigerant.
    suction_pressure : Quantity [Pa]
        Absolute, at the place of the temperature.
    line_temperature : Quantity [K]
        Of the suction line.

    Returns
    -------
    Quantity [K]
        Difference; negative where the line is colder than the dew point.

    Raises
    ------
    OutsideDomain
        A pressure outside the saturation curve.

    Notes
    -----
    T_line - T_dew(p): vapour, hence dew; with a zeotrope the bubble point would add the glide.

    Source
    ------
    COMMON.
    """
    dew = saturation.dew_temperature(suction_pressure)
    return Q(_kelvin(line_temperature) - _kelvin(dew), "kelvin")


@dimensions(liquid_pressure="[pressure]", line_temperature="[temperature]")
def subcooling(
    saturation: SaturationCurve, *, liquid_pressure: Quantity, line_temperature: Quantity
) -> Quantity:
    """Subcooling of the liquid in the liquid line.

    Parameters
    ----------
    saturation : Saturation [Pa, K]
        Of the refrigerant.
    liquid_pressure : Quantity [Pa]
        Absolute, at the place of the temperature: discharge pressure less the drop of the
        condenser, where that is known.
    line_temperature : Quantity [K]
        Of the liquid line.

    Returns
    -------
    Quantity [K]
        Difference; negative where the line is warmer than the bubble point.

    Raises
    ------
    OutsideDomain
        A pressure outside the saturation curve.

    Notes
    -----
    T_bubble(p) - T_line: liquid, hence bubble.

    Source
    ------
    COMMON.
    """
    bubble = saturation.bubble_temperature(liquid_pressure)
    return Q(_kelvin(bubble) - _kelvin(line_temperature), "kelvin")


@dimensions(discharge_pressure="[pressure]", ambient="[temperature]")
def condensing_split(
    saturation: SaturationCurve, *, discharge_pressure: Quantity, ambient: Quantity
) -> Quantity:
    """Condensing temperature over the air entering the condenser.

    Parameters
    ----------
    saturation : Saturation [Pa, K]
        Of the refrigerant.
    discharge_pressure : Quantity [Pa]
        Absolute.
    ambient : Quantity [K]
        Air entering the condenser.

    Returns
    -------
    Quantity [K]
        Difference.

    Raises
    ------
    OutsideDomain
        A pressure outside the saturation curve.

    Notes
    -----
    (T_bubble(p) + T_dew(p)) / 2 - T_ambient: the middle of the glide, as a surface in the middle
    of the coil shows it.

    Source
    ------
    COMMON.
    """
    bubble = _kelvin(saturation.bubble_temperature(discharge_pressure))
    dew = _kelvin(saturation.dew_temperature(discharge_pressure))
    return Q((bubble + dew) / 2 - _kelvin(ambient), "kelvin")


@dimensions(suction_pressure="[pressure]", air_temperature="[temperature]")
def evaporator_difference(
    saturation: SaturationCurve, *, suction_pressure: Quantity, air_temperature: Quantity
) -> Quantity:
    """Air onto the evaporator over its evaporating temperature.

    Parameters
    ----------
    saturation : Saturation [Pa, K]
        Of the refrigerant.
    suction_pressure : Quantity [Pa]
        Absolute.
    air_temperature : Quantity [K]
        Of the air entering the coil.

    Returns
    -------
    Quantity [K]
        Difference.

    Raises
    ------
    OutsideDomain
        A pressure outside the saturation curve.

    Notes
    -----
    T_air - T_dew(p): evaporators are rated by the dew point.

    Source
    ------
    COMMON.
    """
    dew = saturation.dew_temperature(suction_pressure)
    return Q(_kelvin(air_temperature) - _kelvin(dew), "kelvin")


@dimensions(suction_pressure="[pressure]", discharge_pressure="[pressure]")
def compression_ratio(*, suction_pressure: Quantity, discharge_pressure: Quantity) -> float:
    """Ratio of discharge to suction pressure, both absolute.

    Parameters
    ----------
    suction_pressure, discharge_pressure : Quantity [Pa]
        Absolute; gauge pressures give a wrong ratio.

    Returns
    -------
    float [-]
        Ratio.

    Raises
    ------
    OutsideDomain
        A suction pressure that is not above zero.

    Notes
    -----
    p_discharge / p_suction

    Source
    ------
    COMMON.
    """
    suction = suction_pressure.m_as("Pa")
    if suction <= 0:
        raise OutsideDomain("Expected an absolute suction pressure above zero.")
    ratio: float = discharge_pressure.m_as("Pa") / suction
    return ratio
