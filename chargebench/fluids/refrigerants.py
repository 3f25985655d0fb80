"""What the catalogue says of a refrigerant, each figure with its source and its mark."""

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from functools import cached_property
from types import MappingProxyType
from typing import Literal

from chargebench.errors import OutsideDomain
from chargebench.fluids.saturated import saturation
from chargebench.sources import Mark
from chargebench.units import Q, Quantity
from chargebench.words import say

GWP_SETS = ("AR4", "AR5", "AR6", "EU-2024")
Family = Literal["HFC", "HFO", "HC", "HCFC", "CFC", "natural", "other"]
PressureClass = Literal["very high", "high", "medium", "low"]

# 40 CFR 82.152: classes by liquid saturation pressure at 104 °F.
_CLASS_AT = Q(40, "degC")
_CLASS_ABOVE: tuple[tuple[float, PressureClass], ...] = (
    (355, "very high"),  # psia
    (170, "high"),
    (45, "medium"),
    (0, "low"),
)


@dataclass(frozen=True, slots=True)
class Figure:
    """A dimensionless figure of the catalogue."""

    value: Decimal
    source: str
    mark: Mark


@dataclass(frozen=True, slots=True)
class LimitFigure:
    """A limit of the catalogue as a quantity."""

    value: Quantity
    source: str
    mark: Mark


@dataclass(frozen=True, slots=True)
class Component:
    """One component of a composition; a pure fluid is its own at 100 %."""

    name: str
    mass_percent: Decimal


@dataclass(frozen=True, slots=True)
class Fluid:
    """A chemical of the catalogue: a pure refrigerant, or what occurs only in blends."""

    name: str
    equation: str  # CoolProp's name
    molar_mass: Figure  # g/mol
    family: Family
    ods_class: str  # "I", "II" or ""
    gwp: Mapping[str, Figure]


@dataclass(frozen=True)
class Refrigerant:
    """One refrigerant as the catalogue has it."""

    name: str
    kind: Literal["pure", "zeotrope", "azeotrope"]
    composition: tuple[Component, ...]
    composition_source: str
    composition_mark: Mark
    fluids: tuple[Fluid, ...]  # of the components, in their order
    equation: tuple[str, ...]  # CoolProp's names: one fluid, or the components of a mixture
    safety_class: str
    safety_class_source: str
    safety_class_mark: Mark
    lfl: LimitFigure | None
    lfl_volume: LimitFigure | None
    rcl: LimitFigure | None
    practical_limit: LimitFigure | None
    atel_odl: LimitFigure | None
    pressure_class_override: PressureClass | None
    notes: str

    @property
    def flammable(self) -> bool:
        """Whether its class is any but flammability class 1.

        Source
        ------
        ISO817, classes 1, 2L, 2 and 3.
        """
        return not self.safety_class.endswith("1")

    @property
    def equation_shares(self) -> tuple[float, ...]:
        """Mass shares of `equation`, in its order."""
        if len(self.equation) == 1:
            return (1.0,)
        return tuple(float(part.mass_percent) / 100 for part in self.composition)

    def contains(self, *families: Family) -> bool:
        """Whether a component belongs to one of the families.

        Parameters
        ----------
        families : str
            "HFC", "HFO", "HC", "HCFC", "CFC", "natural" or "other".

        Returns
        -------
        bool
            True where any component does.

        Source
        ------
        40CFR82F, classes I and II; EU2024/573, annexes I and II.
        """
        return any(fluid.family in families for fluid in self.fluids)

    @property
    def contains_hfc(self) -> bool:
        """Whether it contains a saturated hydrofluorocarbon."""
        return self.contains("HFC")

    @property
    def contains_hfo(self) -> bool:
        """Whether it contains an unsaturated fluorocarbon."""
        return self.contains("HFO")

    @property
    def contains_hcfc_or_cfc(self) -> bool:
        """Whether it contains a class I or class II ozone-depleting substance."""
        return self.contains("HCFC", "CFC")

    @property
    def ods_class(self) -> str:
        """Strongest ozone-depletion class among its components: "I", "II" or ""."""
        classes = {fluid.ods_class for fluid in self.fluids}
        return next((found for found in ("I", "II") if found in classes), "")

    @cached_property
    def molar_mass(self) -> Quantity:
        """Mass of a mole, of a blend by its composition [g/mol]."""
        moles_per_gram = sum(
            part.mass_percent / 100 / fluid.molar_mass.value
            for part, fluid in zip(self.composition, self.fluids, strict=True)
        )
        return Q(float(1 / moles_per_gram), "g/mol")

    @cached_property
    def gwp(self) -> Mapping[str, Figure]:
        """Global warming potential over 100 years by set; a set that lacks a component is absent.

        Notes
        -----
        Of a blend: the sum over components of mass share times potential.

        Source
        ------
        EU2024/573, annex VI (mixtures).
        """
        if self.kind == "pure":
            return self.fluids[0].gwp
        return MappingProxyType(
            {
                which: self._blend_gwp(which)
                for which in GWP_SETS
                if all(which in fluid.gwp for fluid in self.fluids)
            }
        )

    def _blend_gwp(self, which: str) -> Figure:
        figures = [fluid.gwp[which] for fluid in self.fluids]
        value = sum(
            (
                part.mass_percent / 100 * figure.value
                for part, figure in zip(self.composition, figures, strict=True)
            ),
            Decimal(0),
        )
        sources = dict.fromkeys(figure.source for figure in figures)
        marks = {figure.mark for figure in figures}
        mark: Mark = "MEMORY" if "MEMORY" in marks else "CALC"
        return Figure(
            value, say("{sources}, by mass from the components", sources=next(iter(sources))), mark
        )

    @cached_property
    def pressure_class(self) -> PressureClass:
        """Pressure class by liquid saturation pressure at 104 °F, unless the data overrule it.

        Notes
        -----
        Over 355 psia, or critical below 104 °F: very high; from 170: high; from 45: medium.

        Source
        ------
        40CFR82F, 82.152 (definitions by pressure).
        """
        if self.pressure_class_override is not None:
            return self.pressure_class_override
        try:
            pascal = saturation(self.name).bubble_pa(_CLASS_AT.m_as("K"))
        except OutsideDomain:
            return "very high"  # critical below 104 °F
        psia = Q(pascal, "Pa").m_as("psi")
        return next(name for limit, name in _CLASS_ABOVE if psia > limit)
