"""Refrigerants and their properties: the only door to CoolProp, which runs in its own process."""

from chargebench.fluids import water
from chargebench.fluids.catalogue import names, refrigerant
from chargebench.fluids.refrigerant_data import (
    GWP_SETS,
    Component,
    Figure,
    LimitFigure,
    Refrigerant,
)
from chargebench.fluids.saturated import Saturation, saturation

__all__ = [
    "GWP_SETS",
    "Component",
    "Figure",
    "LimitFigure",
    "Refrigerant",
    "Saturation",
    "names",
    "refrigerant",
    "saturation",
    "water",
]
