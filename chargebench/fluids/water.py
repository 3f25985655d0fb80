"""Boiling line of water, and below its triple point the line on which ice turns to vapour."""

import math

from chargebench.errors import OutsideDomain
from chargebench.units import Q, Quantity, dimensions, show
from chargebench.words import say

_TRIPLE_KELVIN, _TRIPLE_PASCAL = 273.16, 611.657  # IAPWS R14-08(2011), section 2
_COLDEST, _HOTTEST = 193.15 - 1e-9, 473.15 + 1e-9  # a hair of room for °C + 273.15
# IAPWS SR1-86(1992), equation 1.
_CRITICAL_KELVIN, _CRITICAL_PASCAL = 647.096, 22.064e6
_BOILING = (
    (-7.85951783, 1.0),
    (1.84408259, 1.5),
    (-11.7866497, 3.0),
    (22.6807411, 3.5),
    (-15.9618719, 4.0),
    (1.80122502, 7.5),
)
# IAPWS R14-08(2011), equation 6.
_ICE = ((-21.2144006, 0.00333333333), (27.3203819, 1.20666667), (-6.10598130, 1.70333333))


def _pascal(kelvin: float) -> float:
    if kelvin < _TRIPLE_KELVIN:
        theta = kelvin / _TRIPLE_KELVIN
        return _TRIPLE_PASCAL * math.exp(sum(a * theta**b for a, b in _ICE) / theta)
    tau = 1 - kelvin / _CRITICAL_KELVIN
    exponent = sum(a * tau**b for a, b in _BOILING)
    return _CRITICAL_PASCAL * math.exp(exponent * _CRITICAL_KELVIN / kelvin)


@dimensions(temperature="[temperature]")
def vapour_pressure(temperature: Quantity) -> Quantity:
    """Pressure at which water boils, or below 0.01 °C at which ice turns to vapour.

    Parameters
    ----------
    temperature : Quantity [K]
        Temperature of the water or ice, -80 °C to 200 °C.

    Returns
    -------
    Quantity [Pa]
        Absolute pressure.

    Raises
    ------
    OutsideDomain
        A temperature outside those limits.

    Notes
    -----
    Boiling: ln(p/pc) = Tc/T (a1 tau + a2 tau**1.5 + a3 tau**3 + a4 tau**3.5 + a5 tau**4
    + a6 tau**7.5), tau = 1 - T/Tc. Ice: ln(p/pt) = (sum of ai theta**bi) / theta, theta = T/Tt.
    The two meet at the triple point to 4 parts in a million.

    Source
    ------
    IAPWS-SR1, equation 1; IAPWS-R14, equation 6.
    """
    kelvin = temperature.m_as("K")
    if not _COLDEST <= kelvin <= _HOTTEST:
        raise OutsideDomain("Expected a temperature of water between −80 °C and 200 °C.")
    return Q(_pascal(kelvin), "Pa")


@dimensions(pressure="[pressure]")
def boiling_temperature(pressure: Quantity) -> Quantity:
    """Temperature at which water boils, or under 611.657 Pa at which ice turns to vapour.

    Parameters
    ----------
    pressure : Quantity [Pa]
        Absolute pressure.

    Returns
    -------
    Quantity [K]
        Temperature.

    Raises
    ------
    OutsideDomain
        A pressure whose temperature is outside -80 °C to 200 °C.

    Notes
    -----
    `vapour_pressure` solved for its temperature by halving the bracket to 1e-9 K.

    Source
    ------
    IAPWS-SR1, equation 1; IAPWS-R14, equation 6.
    """
    pascal = pressure.m_as("Pa")
    low, high = _pascal(_COLDEST), _pascal(_HOTTEST)
    if not low <= pascal <= high:
        raise OutsideDomain(
            say(
                "Expected an absolute pressure between {low} and {high} for the boiling "
                "line of water.",
                low=show(Q(low, "Pa"), "Pa", 2),
                high=show(Q(high, "Pa"), "kPa", 0),
            )
        )
    cold, hot = _COLDEST, _HOTTEST
    while hot - cold > 1e-9:
        middle = (cold + hot) / 2
        if _pascal(middle) < pascal:
            cold = middle
        else:
            hot = middle
    return Q((cold + hot) / 2, "K")
