"""Saturation of the catalogue's refrigerants from stored curves, without CoolProp.

The curves are fitted to CoolProp's equations by resources/build_saturation.py and kept with
model, version, source, limits and error; here they are only evaluated, and refused outside.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Any

from chargebench.errors import UnknownRefrigerant
from chargebench.fluids.lines import ZERO_CELSIUS, Lines
from chargebench.fluids.stretched import Axis
from chargebench.resource import resource
from chargebench.units import Q, Quantity, dimensions
from chargebench.words import say


@dataclass(frozen=True, slots=True)
class Saturation(Lines):
    """Bubble and dew lines of one refrigerant within the limits its curves were fitted to."""

    model: str
    source: str
    estimated_pairs: bool  # mixture data estimated for a pair of components
    coolprop_version: str
    fit_error: Mapping[str, float]  # largest relative error on points not fitted, by curve

    @property
    def domain(self) -> tuple[Quantity, Quantity]:
        """Lowest and highest temperature the curves hold for [°C]."""
        return Q(self.axis.low - ZERO_CELSIUS, "degC"), Q(self.axis.high - ZERO_CELSIUS, "degC")

    @dimensions(temperature="[temperature]")
    def bubble_pressure(self, temperature: Quantity) -> Quantity:
        """Bubble pressure.

        Parameters
        ----------
        temperature : Quantity [K]
            Temperature.

        Returns
        -------
        Quantity [Pa]
            Absolute pressure at which the liquid begins to boil.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.bubble_pa(temperature.m_as("K")), "Pa")

    @dimensions(temperature="[temperature]")
    def dew_pressure(self, temperature: Quantity) -> Quantity:
        """Dew pressure.

        Parameters
        ----------
        temperature : Quantity [K]
            Temperature.

        Returns
        -------
        Quantity [Pa]
            Absolute pressure at which the vapour begins to condense.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.dew_pa(temperature.m_as("K")), "Pa")

    @dimensions(pressure="[pressure]")
    def bubble_temperature(self, pressure: Quantity) -> Quantity:
        """Bubble temperature.

        Parameters
        ----------
        pressure : Quantity [Pa]
            Absolute pressure.

        Returns
        -------
        Quantity [K]
            Temperature at which the liquid begins to boil.

        Raises
        ------
        OutsideDomain
            A pressure the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.bubble_kelvin(pressure.m_as("Pa")), "K")

    @dimensions(pressure="[pressure]")
    def dew_temperature(self, pressure: Quantity) -> Quantity:
        """Dew temperature.

        Parameters
        ----------
        pressure : Quantity [Pa]
            Absolute pressure.

        Returns
        -------
        Quantity [K]
            Temperature at which the vapour begins to condense.

        Raises
        ------
        OutsideDomain
            A pressure the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.dew_kelvin(pressure.m_as("Pa")), "K")

    @dimensions(temperature="[temperature]")
    def liquid_density(self, temperature: Quantity) -> Quantity:
        """Density of the liquid at its bubble point.

        Parameters
        ----------
        temperature : Quantity [K]
            Temperature.

        Returns
        -------
        Quantity [kg/m**3]
            Density.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.liquid_kgm3(temperature.m_as("K")), "kg/m**3")

    @dimensions(temperature="[temperature]")
    def vapour_density(self, temperature: Quantity) -> Quantity:
        """Density of the vapour at its dew point.

        Parameters
        ----------
        temperature : Quantity [K]
            Temperature.

        Returns
        -------
        Quantity [kg/m**3]
            Density.

        Raises
        ------
        OutsideDomain
            A temperature the curves do not hold for.

        Source
        ------
        COOLPROP, fitted.
        """
        return Q(self.vapour_kgm3(temperature.m_as("K")), "kg/m**3")


@cache
def _stored() -> tuple[str, dict[str, Any]]:
    table = json.loads(resource("saturation.json").read_text(encoding="utf-8"))
    return table["coolprop_version"], table["refrigerants"]


@cache
def saturation(name: str) -> Saturation:
    """Stored saturation curves of a refrigerant.

    Parameters
    ----------
    name : str
        As the catalogue writes it.

    Returns
    -------
    Saturation
        Loaded at the first call, then kept.

    Raises
    ------
    UnknownRefrigerant
        A name without stored curves.

    Source
    ------
    COOLPROP, fitted by resources/build_saturation.py.
    """
    version, table = _stored()
    if name not in table:
        raise UnknownRefrigerant(
            say("No saturation curves are stored for “{name}”.", name=name[:20])
        )
    row = table[name]
    return Saturation(
        name=name,
        model=row["model"],
        source=row["source"],
        estimated_pairs=row["estimated_pairs"],
        coolprop_version=version,
        fit_error=MappingProxyType(row["fit_error"]),
        axis=Axis(low=row["low"], high=row["high"], critical=row["critical"]),
        bubble=row["bubble"],
        dew=row.get("dew", row["bubble"]),
        liquid=row["liquid"],
        vapour=row["vapour"],
    )
