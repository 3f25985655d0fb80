"""What a leak would do to a room, and the room a charge needs."""

from chargebench.errors import ChargebenchError
from chargebench.rules import Flammability, RoomForm
from chargebench.units import Q, Quantity, dimensions
from chargebench.words import say


@dimensions(charge="[mass]", room_volume="[volume]")
def concentration_if_leaked(*, charge: Quantity, room_volume: Quantity) -> Quantity:
    """Concentration if the whole charge leaked and mixed with the air of the room.

    Parameters
    ----------
    charge : Quantity [kg]
        Charge.
    room_volume : Quantity [m**3]
        Volume of the room.

    Returns
    -------
    Quantity [kg/m**3]
        Mean; near the floor, or before it mixes, it is higher.

    Raises
    ------
    ChargebenchError
        A room without volume.

    Source
    ------
    EN378, practical limit as mass over room volume.
    """
    _above_zero(room_volume, "a room volume")
    answer: Quantity = (charge / room_volume).to("kg/m**3")
    return answer


@dimensions(concentration="[density]", lfl="[density]")
def share_of_lfl(*, concentration: Quantity, lfl: Quantity) -> Quantity:
    """Concentration as a share of the lower flammable limit.

    Parameters
    ----------
    concentration : Quantity [kg/m**3]
        Concentration in air.
    lfl : Quantity [kg/m**3]
        Lower flammable limit.

    Returns
    -------
    Quantity [percent]
        100 is the lower limit.

    Raises
    ------
    ChargebenchError
        A lower limit of zero.

    Source
    ------
    ISO817, lower flammability limit.
    """
    _above_zero(lfl, "a lower flammable limit")
    answer: Quantity = (concentration / lfl).to("percent")
    return answer


@dimensions(lfl="[density]")
def alarm_concentration(lfl: Quantity, rule: Flammability) -> Quantity:
    """Highest concentration at which a leak detector must alarm.

    Parameters
    ----------
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    rule : Flammability
        The rule set's figures.

    Returns
    -------
    Quantity [g/m**3]
        A share of the lower limit.

    Source
    ------
    ANNEX-DD, leak detection.
    """
    answer: Quantity = (rule.alarm_share.quantity * lfl).to("g/m**3")
    return answer


@dimensions(lfl="[density]", room_volume="[volume]")
def max_charge_for_volume(*, lfl: Quantity, room_volume: Quantity, rule: Flammability) -> Quantity:
    """Most refrigerant that keeps a room under the flammable concentration limit.

    Parameters
    ----------
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    room_volume : Quantity [m**3]
        Volume of the room.
    rule : Flammability
        The rule set's figures.

    Returns
    -------
    Quantity [kg]
        Share of the lower limit times the volume.

    Source
    ------
    RD552/2019, IF-02 (20 % of the lower limit); ASHRAE34 (25 %).
    """
    answer: Quantity = (rule.concentration_share.quantity * lfl * room_volume).to("kg")
    return answer


@dimensions(lfl="[density]", floor_area="[area]", height="[length]")
def max_charge_for_area(
    *, lfl: Quantity, floor_area: Quantity, height: Quantity, form: RoomForm
) -> Quantity:
    """Most refrigerant for a floor area and a height of release.

    Parameters
    ----------
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    floor_area : Quantity [m**2]
        Floor of the room.
    height : Quantity [m]
        Height of release.
    form : RoomForm
        Edition of the formula.

    Returns
    -------
    Quantity [kg]
        For charges above m1.

    Raises
    ------
    ChargebenchError
        A height or lower limit of zero.

    Notes
    -----
    2.5 LFL**1.25 h sqrt(A), numbers for kg and m; from 2018 on at most 0.75 LFL h A.

    Source
    ------
    IEC60335-2-40, annex GG.
    """
    _above_zero(height, "a height of release")
    _above_zero(lfl, "a lower flammable limit")
    area, metres, limit = floor_area.m_as("m**2"), height.m_as("m"), lfl.m_as("kg/m**3")
    most = _per_root_area(form, limit, metres) * max(area, 0.0) ** 0.5
    if form.sealed_factor is not None:
        most = min(most, float(form.sealed_factor.value) * limit * metres * area)
    return Q(most, "kg")


@dimensions(charge="[mass]", lfl="[density]", height="[length]")
def minimum_floor_area(
    *, charge: Quantity, lfl: Quantity, height: Quantity, form: RoomForm
) -> Quantity:
    """Smallest floor for a charge and a height of release.

    Parameters
    ----------
    charge : Quantity [kg]
        Charge, above m1.
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    height : Quantity [m]
        Height of release.
    form : RoomForm
        Edition of the formula.

    Returns
    -------
    Quantity [m**2]
        The area at which `max_charge_for_area` is the charge.

    Raises
    ------
    ChargebenchError
        A height or lower limit of zero.

    Notes
    -----
    (m / (2.5 LFL**1.25 h))**2, numbers for kg and m; from 2018 on at least m / (0.75 LFL h).

    Source
    ------
    IEC60335-2-40, annex GG.
    """
    _above_zero(height, "a height of release")
    _above_zero(lfl, "a lower flammable limit")
    mass, metres, limit = charge.m_as("kg"), height.m_as("m"), lfl.m_as("kg/m**3")
    least = (mass / _per_root_area(form, limit, metres)) ** 2
    if form.sealed_factor is not None:
        least = max(least, mass / (float(form.sealed_factor.value) * limit * metres))
    return Q(least, "m**2")


def _per_root_area(form: RoomForm, lfl: float, height: float) -> float:
    power: float = lfl ** float(form.exponent.value)
    return float(form.coefficient.value) * power * height


@dimensions(charge="[mass]", lfl="[density]")
def marked_floor_area(*, charge: Quantity, lfl: Quantity, rule: Flammability) -> Quantity | None:
    """Room size marked on a commercial appliance above a charge.

    Parameters
    ----------
    charge : Quantity [kg]
        Charge.
    lfl : Quantity [kg/m**3]
        Lower flammable limit.
    rule : Flammability
        The rule set's figures; unverified, to be shown as such.

    Returns
    -------
    Quantity or None [m**2]
        None up to and including the charge from which the marking is owed.

    Raises
    ------
    ChargebenchError
        A lower limit of zero.

    Notes
    -----
    m / (0.25 LFL x 2.2 m)

    Source
    ------
    IEC60335-2-89, room size marking, from memory.
    """
    _above_zero(lfl, "a lower flammable limit")
    marking = rule.marking
    if charge <= marking.charge_above.quantity:
        return None
    share, height = marking.share_of_lfl.quantity, marking.height.quantity
    answer: Quantity = (charge / (share * lfl * height)).to("m**2")
    return answer


def _above_zero(quantity: Quantity, what: str) -> None:
    if not quantity.magnitude > 0:
        raise ChargebenchError(say("Expected {what} above zero.", what=what))
