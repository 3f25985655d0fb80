"""Flow through a leak: smallest seen by a standing test, as mass a year, as another gas."""

from dataclasses import dataclass

from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity, dimensions

_GAS_CONSTANT = 8.314_462_618  # J/(mol K), exact since 2019 (SI brochure; from memory)
_REFRIGERANT_VISCOSITY = Q(1.0e-5, "Pa * s")  # vapours at 20 °C lie between 0.7e-5 and 1.3e-5


@dataclass(frozen=True, slots=True)
class FlowRange:
    """A flow known only by its regime: from molecular to viscous, an order of magnitude."""

    molecular: Quantity
    viscous: Quantity

    @property
    def lower(self) -> Quantity:
        """The smaller of the two."""
        return min(self.molecular, self.viscous)

    @property
    def upper(self) -> Quantity:
        """The larger of the two."""
        return max(self.molecular, self.viscous)


@dataclass(frozen=True, slots=True)
class Gas:
    """A gas that leaks: molar mass, viscosity, and the absolute pressures inside and outside."""

    molar_mass: Quantity
    inside: Quantity
    outside: Quantity
    viscosity: Quantity = _REFRIGERANT_VISCOSITY


@dimensions(expanded_uncertainty="[pressure]", volume="[volume]", time="[time]")
def smallest_leak(*, expanded_uncertainty: Quantity, volume: Quantity, time: Quantity) -> Quantity:
    """Smallest nitrogen leak the test can see.

    Parameters
    ----------
    expanded_uncertainty : Quantity [Pa]
        Of the drop, k = 2.
    volume : Quantity [L]
        Of the parts under test.
    time : Quantity [h]
        How long they stood.

    Returns
    -------
    Quantity [Pa m**3/s]
        Flow of nitrogen at the test pressure.

    Raises
    ------
    OutsideDomain
        A time not above zero.

    Notes
    -----
    q = U V / t

    Source
    ------
    PFEIFFER, 7.1.2.
    """
    seconds = time.m_as("s")
    if seconds <= 0:
        raise OutsideDomain("Expected a test time above zero.")
    flow = expanded_uncertainty.m_as("Pa") * volume.m_as("m**3") / seconds
    return Q(flow, "Pa * m**3 / s")


@dimensions(
    expanded_uncertainty="[pressure]", volume="[volume]", leak="[pressure] * [volume] / [time]"
)
def time_needed(*, expanded_uncertainty: Quantity, volume: Quantity, leak: Quantity) -> Quantity:
    """Time to let the test stand so that it sees a wanted leak.

    Parameters
    ----------
    expanded_uncertainty : Quantity [Pa]
        Of the drop, k = 2.
    volume : Quantity [L]
        Of the parts under test.
    leak : Quantity [Pa m**3/s]
        Smallest nitrogen leak that must not escape notice.

    Returns
    -------
    Quantity [h]
        Time.

    Raises
    ------
    OutsideDomain
        A leak not above zero: no test sees that.

    Notes
    -----
    t = U V / q

    Source
    ------
    PFEIFFER, 7.1.2.
    """
    flow = leak.m_as("Pa * m**3 / s")
    if flow <= 0:
        raise OutsideDomain("Expected a leak above zero; no test can prove that there is none.")
    return Q(expanded_uncertainty.m_as("Pa") * volume.m_as("m**3") / flow / 3_600, "hour")


@dimensions(
    leak="[pressure] * [volume] / [time]",
    molar_mass="[mass] / [substance]",
    temperature="[temperature]",
)
def mass_rate(*, leak: Quantity, molar_mass: Quantity, temperature: Quantity) -> Quantity:
    """Mass a year carried by a leak of the same gas.

    Parameters
    ----------
    leak : Quantity [Pa m**3/s]
        Flow of the refrigerant itself, not of nitrogen or air.
    molar_mass : Quantity [g/mol]
        Of the refrigerant.
    temperature : Quantity [K]
        At which the flow was measured.

    Returns
    -------
    Quantity [g/year]
        Mass; a year has 365.25 days here, as everywhere in units.

    Raises
    ------
    OutsideDomain
        A temperature not above absolute zero.

    Notes
    -----
    m = q M / (R T)

    Source
    ------
    PFEIFFER, 7.1.2 (ideal gas).
    """
    kelvin = temperature.m_as("kelvin")
    if kelvin <= 0:
        raise OutsideDomain("Expected a temperature above absolute zero.")
    moles = leak.m_as("Pa * m**3 / s") / (_GAS_CONSTANT * kelvin)
    rate: Quantity = Q(moles * molar_mass.m_as("g/mol"), "g / s").to("g / year")
    return rate


@dimensions(leak="[pressure] * [volume] / [time]", temperature="[temperature]")
def as_refrigerant(
    *, leak: Quantity, test_gas: Gas, refrigerant: Gas, temperature: Quantity
) -> FlowRange:
    """Refrigerant a year through the hole that passes a known flow of test gas.

    Parameters
    ----------
    leak : Quantity [Pa m**3/s]
        Flow of the test gas: nitrogen outward in a pressure test, air inward in a decay test.
    test_gas, refrigerant : Gas [g/mol, Pa, Pa s]
        With the pressures on both sides of the hole in the test and in use.
    temperature : Quantity [K]
        Of both.

    Returns
    -------
    FlowRange [g/year]
        Molecular and viscous flow; an order of magnitude, never a measurement.

    Raises
    ------
    OutsideDomain
        No pressure difference in the test, a pressure below zero, or a temperature, molar mass or
        viscosity not above zero.

    Notes
    -----
    Viscous flow goes with (p1**2 - p2**2) / viscosity, molecular flow with (p1 - p2) / sqrt(M).
    A leak on the liquid side passes far more than either.

    Source
    ------
    LEAKFLOW.
    """
    gases = (test_gas, refrigerant)
    if min(pressure.m_as("Pa") for gas in gases for pressure in (gas.inside, gas.outside)) < 0:
        raise OutsideDomain("Expected absolute pressures, none of them below zero.")
    if min(value.magnitude for gas in gases for value in (gas.molar_mass, gas.viscosity)) <= 0:
        raise OutsideDomain("Expected molar masses and viscosities above zero.")
    difference = test_gas.inside.m_as("Pa") - test_gas.outside.m_as("Pa")
    if difference == 0:
        raise OutsideDomain("Expected a pressure difference across the leak in the test.")
    in_use = refrigerant.inside.m_as("Pa") - refrigerant.outside.m_as("Pa")
    sums = (refrigerant.inside + refrigerant.outside) / (test_gas.inside + test_gas.outside)
    thickness = (test_gas.viscosity / refrigerant.viscosity).m_as("")
    heaviness = (test_gas.molar_mass / refrigerant.molar_mass).m_as("")
    ratio = abs(in_use / difference)
    rate = mass_rate(leak=leak, molar_mass=refrigerant.molar_mass, temperature=temperature)
    return FlowRange(
        molecular=rate * (ratio * heaviness**0.5),
        viscous=rate * (ratio * sums.m_as("") * thickness),
    )
