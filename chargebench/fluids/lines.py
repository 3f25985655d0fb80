"""Bubble and dew lines as bare floats in kelvin, pascal and kg/m³, refused outside their limits."""

from collections.abc import Sequence
from dataclasses import dataclass

from chargebench.errors import OutsideDomain
from chargebench.fluids.stretched import Axis
from chargebench.units import Q, show
from chargebench.words import Measured, say

ZERO_CELSIUS = 273.15  # K
_SLACK = 1e-9  # relative: a limit given back in another unit is still inside


@dataclass(frozen=True, slots=True)
class Lines:
    """The four stored curves of one refrigerant: ln p and ln rho, bubble and dew."""

    name: str
    axis: Axis
    bubble: Sequence[float]
    dew: Sequence[float]
    liquid: Sequence[float]
    vapour: Sequence[float]

    def bubble_pa(self, kelvin: float) -> float:
        """Bubble pressure.

        Parameters
        ----------
        kelvin : float [K]
            Temperature.

        Returns
        -------
        float [Pa]
            Absolute pressure at which the liquid begins to boil.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.value(self.bubble, self._inside(kelvin))

    def dew_pa(self, kelvin: float) -> float:
        """Dew pressure.

        Parameters
        ----------
        kelvin : float [K]
            Temperature.

        Returns
        -------
        float [Pa]
            Absolute pressure at which the vapour begins to condense.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.value(self.dew, self._inside(kelvin))

    def bubble_kelvin(self, pascal: float) -> float:
        """Bubble temperature.

        Parameters
        ----------
        pascal : float [Pa]
            Absolute pressure.

        Returns
        -------
        float [K]
            Temperature at which the liquid begins to boil.

        Raises
        ------
        OutsideDomain
            A pressure the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.kelvin(self.bubble, self._reached(self.bubble, "bubble", pascal))

    def dew_kelvin(self, pascal: float) -> float:
        """Dew temperature.

        Parameters
        ----------
        pascal : float [Pa]
            Absolute pressure.

        Returns
        -------
        float [K]
            Temperature at which the vapour begins to condense.

        Raises
        ------
        OutsideDomain
            A pressure the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.kelvin(self.dew, self._reached(self.dew, "dew", pascal))

    def liquid_kgm3(self, kelvin: float) -> float:
        """Density of the liquid at its bubble point.

        Parameters
        ----------
        kelvin : float [K]
            Temperature.

        Returns
        -------
        float [kg/m**3]
            Density.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.value(self.liquid, self._inside(kelvin))

    def vapour_kgm3(self, kelvin: float) -> float:
        """Density of the vapour at its dew point.

        Parameters
        ----------
        kelvin : float [K]
            Temperature.

        Returns
        -------
        float [kg/m**3]
            Density.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return self.axis.value(self.vapour, self._inside(kelvin))

    def _inside(self, kelvin: float) -> float:
        low, high = self.axis.low, self.axis.high
        if not low * (1 - _SLACK) <= kelvin <= high * (1 + _SLACK):
            raise OutsideDomain(
                say(
                    "{name} saturation is known here from {low} to {high}; got {given}.",
                    name=self.name,
                    low=_celsius(low),
                    high=_celsius(high),
                    given=_celsius(kelvin),
                )
                + self._why(kelvin)
            )
        return min(max(kelvin, low), high)

    def _why(self, kelvin: float) -> str:
        if kelvin < self.axis.critical:
            return ""
        return say(
            " Above its critical temperature of {critical} it does not boil.",
            critical=_celsius(self.axis.critical),
        )

    def _reached(self, series: Sequence[float], line: str, pascal: float) -> float:
        low = self.axis.value(series, self.axis.low)
        high = self.axis.value(series, self.axis.high)
        if not low * (1 - _SLACK) <= pascal <= high * (1 + _SLACK):
            raise OutsideDomain(
                say(
                    "{name} {line} temperature is known here from {low} to {high}, absolute; "
                    "got {given}.",
                    name=self.name,
                    line=line,
                    low=_kpa(low),
                    high=_kpa(high),
                    given=_kpa(pascal),
                )
            )
        return min(max(pascal, low), high)


def _celsius(kelvin: float) -> str:
    celsius = kelvin - ZERO_CELSIUS
    return say(
        "{celsius} °C ({fahrenheit} °F)",
        celsius=_plain(celsius, 1),
        fahrenheit=_plain(celsius * 9 / 5 + 32, 1),
    )


def _kpa(pascal: float) -> str:
    psi = Q(pascal, "Pa").m_as("psi")
    return say(
        "{kilopascal} kPa ({psi} psi)",
        kilopascal=_plain(pascal / 1000, 1 if abs(pascal) < 1e6 else 0),
        psi=_plain(psi, 1),
    )


def _plain(number: float, places: int) -> Measured:
    return Measured(show(Q(number, ""), "", places).strip())
