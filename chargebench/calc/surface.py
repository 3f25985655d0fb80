"""Temperature differences from pipe surfaces alone, on equipment that stays sealed."""

from dataclasses import dataclass

from chargebench.units import Q, Quantity, dimensions


@dataclass(frozen=True, slots=True)
class Differences:
    """Temperature differences taken from surfaces, in kelvin; None where one end is missing."""

    superheat: Quantity | None
    subcooling: Quantity | None
    condensing_split: Quantity | None
    evaporator_difference: Quantity | None


@dimensions(
    evaporator_middle="[temperature]",
    suction_line="[temperature]",
    air_on_evaporator="[temperature]",
    condenser_middle="[temperature]",
    liquid_line="[temperature]",
    ambient="[temperature]",
)
def surface_differences(
    *,
    evaporator_middle: Quantity | None = None,
    suction_line: Quantity | None = None,
    air_on_evaporator: Quantity | None = None,
    condenser_middle: Quantity | None = None,
    liquid_line: Quantity | None = None,
    ambient: Quantity | None = None,
) -> Differences:
    """All differences from surface temperatures alone: no hose is connected, nothing is lost.

    Parameters
    ----------
    evaporator_middle, suction_line, condenser_middle, liquid_line : Quantity [K] or None
        Pipe surfaces, insulated from the air; a bend in the middle of a coil stands for the
        saturation temperature.
    air_on_evaporator, ambient : Quantity [K] or None
        Air entering evaporator and condenser.

    Returns
    -------
    Differences [K]
        Each where both of its ends are given.

    Notes
    -----
    A surface is some kelvin off its refrigerant, and a bend near the end of the coil may be
    superheated or subcooled already.

    Source
    ------
    COMMON.
    """

    def between(warmer: Quantity | None, colder: Quantity | None) -> Quantity | None:
        if warmer is None or colder is None:
            return None
        return Q(warmer.m_as("kelvin") - colder.m_as("kelvin"), "kelvin")

    return Differences(
        superheat=between(suction_line, evaporator_middle),
        subcooling=between(condenser_middle, liquid_line),
        condensing_split=between(condenser_middle, ambient),
        evaporator_difference=between(air_on_evaporator, evaporator_middle),
    )
