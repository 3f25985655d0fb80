"""What a charging hose holds, and what connecting it costs."""

import math
from dataclasses import dataclass

from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity, System, dimensions, show, shown
from chargebench.words import say


@dataclass(frozen=True, slots=True)
class ConnectionCost:
    """What connecting a hose would cost."""

    share: Quantity  # percent of the charge
    sentence: str


@dimensions(length="[length]", bore="[length]")
def hose_volume(*, length: Quantity, bore: Quantity) -> Quantity:
    """Volume inside a hose.

    Parameters
    ----------
    length : Quantity [m]
        Length between the fittings.
    bore : Quantity [mm]
        Inner diameter; a 1/4 in hose is not 1/4 in inside, so measure it or take the maker's.

    Returns
    -------
    Quantity [mL]
        Volume.

    Notes
    -----
    V = pi bore**2 length / 4

    Source
    ------
    COMMON (geometry).
    """
    return Q(math.pi / 4 * bore.m_as("cm") ** 2 * length.m_as("cm"), "mL")


@dimensions(volume="[volume]", density="[mass] / [volume]")
def hose_content(*, volume: Quantity, density: Quantity) -> Quantity:
    """Mass a hose holds.

    Parameters
    ----------
    volume : Quantity [mL]
        Volume of the hose, by `hose_volume` or as its maker gives it.
    density : Quantity [kg/m**3]
        Of liquid, saturated vapour or vapour at suction pressure: its state at disconnection.

    Returns
    -------
    Quantity [g]
        Mass.

    Source
    ------
    COMMON (mass is volume times density).
    """
    return Q(volume.m_as("m**3") * density.m_as("kg/m**3") * 1_000, "g")


@dimensions(hose="[mass]", nameplate="[mass]")
def share_of_charge(*, hose: Quantity, nameplate: Quantity) -> Quantity:
    """Share of the charge that a hose connection costs.

    Parameters
    ----------
    hose : Quantity [g]
        What the hose holds at disconnection.
    nameplate : Quantity [g]
        Charge on the nameplate.

    Returns
    -------
    Quantity [percent]
        Share.

    Raises
    ------
    OutsideDomain
        A nameplate charge that is not above zero.

    Source
    ------
    COMMON (a ratio).
    """
    full = nameplate.m_as("g")
    if full <= 0:
        raise OutsideDomain(
            say(
                "Expected a nameplate charge above zero, not {nameplate}; read it from the "
                "nameplate first.",
                nameplate=show(nameplate, "g", 1),
            )
        )
    return Q(100 * hose.m_as("g") / full, "percent")


@dimensions(hose="[mass]", nameplate="[mass]")
def connection_cost(
    *, hose: Quantity, nameplate: Quantity, system: System = "SI"
) -> ConnectionCost:
    """What connecting a hose would cost, to be weighed against what its reading would tell.

    Parameters
    ----------
    hose : Quantity [g]
        What the hose holds at disconnection.
    nameplate : Quantity [g]
        Charge on the nameplate.
    system : System [-]
        Units the sentence speaks in.

    Returns
    -------
    ConnectionCost [percent]
        Share of the charge, and a sentence.

    Raises
    ------
    OutsideDomain
        A nameplate charge that is not above zero.

    Source
    ------
    COMMON.
    """
    share = share_of_charge(hose=hose, nameplate=nameplate)
    return ConnectionCost(
        share,
        say(
            "Connecting this hose costs {hose}, {share:.1f} % of the charge; surface "
            "temperatures cost nothing.",
            hose=shown(hose, system),
            share=share.m_as("percent"),
        ),
    )
