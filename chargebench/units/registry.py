"""The one pint registry, its dimension check, and the exact mass factors."""

import functools
import inspect
from collections.abc import Callable
from fractions import Fraction
from typing import Any, ParamSpec, TypeVar, cast

import pint

Quantity = pint.Quantity[Any]
_Units = pint.util.UnitsContainer


class _Registry(pint.UnitRegistry[Any]):
    """Works out each name of a unit, and each factor between two, once.

    pint looks "kg" up anew at every conversion, which was half the time of a keystroke.
    """

    def __init__(self, **options: Any) -> None:
        super().__init__(**options)
        self._named: dict[tuple[str, bool, bool], _Units] = {}
        self._factors: dict[tuple[_Units, _Units], float] = {}

    def _parse_units_as_container(
        self,
        input_string: str,
        as_delta: bool = True,  # noqa: FBT001, FBT002  as pint has it
        case_sensitive: bool = True,  # noqa: FBT001, FBT002
    ) -> _Units:
        key = (input_string, as_delta, case_sensitive)
        if key not in self._named:
            self._named[key] = super()._parse_units_as_container(*key)
        return self._named[key]

    def _convert(  # type: ignore[override]  # pint itself narrows it
        self,
        value: Any,
        src: _Units,
        dst: _Units,
        inplace: bool = False,  # noqa: FBT001, FBT002
        **context: Any,
    ) -> Any:
        if type(value) is float:
            factor = self._factors.get((src, dst))
            if factor is None:
                factor = self._factors[src, dst] = self._factor(src, dst)
            if factor:
                return value * factor
        return super()._convert(value, src, dst, inplace, **context)

    def _factor(self, src: _Units, dst: _Units) -> float:
        """Factor from one unit to another; zero where pint has to say more, as of temperatures."""
        if not all(self._is_multiplicative(unit) for units in (src, dst) for unit in units):
            return 0.0
        factor = self._get_conversion_factor(src, dst)
        return float(factor) if isinstance(factor, int | float) else 0.0


ureg: pint.UnitRegistry[Any] = _Registry(cache_folder=":auto:")
# pint's "micron" is a length; the trade's micron is a micrometre of mercury (NIST SP 811, B.8).
ureg.define("micron_Hg = 1e-3 * millimeter_Hg")
Q = ureg.Quantity

STANDARD_ATMOSPHERE = Q(101_325, "Pa")  # ISO2533, table 1
EXACT_MG: dict[str, Fraction] = {  # NIST SP811, B.8: 1 lb = 0.453 592 37 kg exactly
    "mg": Fraction(1),
    "g": Fraction(1_000),
    "kg": Fraction(1_000_000),
    "t": Fraction(1_000_000_000),
    "lb": Fraction(45_359_237, 100),
    "oz": Fraction(45_359_237, 1_600),
}

P = ParamSpec("P")
R = TypeVar("R")


def dimensions(**expected: str) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Check the dimension of named parameters where a function is entered; None is let through."""

    def wrap(function: Callable[P, R]) -> Callable[P, R]:
        signature = inspect.signature(function)
        assert set(expected) <= set(signature.parameters), f"{function} has no such parameter"

        @functools.wraps(function)
        def checked(*args: P.args, **kwargs: P.kwargs) -> R:
            given = signature.bind(*args, **kwargs).arguments
            for name, dimension in expected.items():
                value = given.get(name)
                if value is not None and not value.check(dimension):
                    raise pint.DimensionalityError(
                        value.units, dimension, value.dimensionality, "", extra_msg=f" for {name}"
                    )
            return function(*args, **kwargs)

        return cast("Callable[P, R]", checked)

    return wrap


def mass_mg(value: Fraction, unit: str) -> int:
    """Integer milligrams of an exact number of mg, g, kg, t, lb or oz, rounded half to even.

    Source
    ------
    NISTSP811, B.8: 1 lb = 0.453 592 37 kg exactly, 1 oz = 1/16 lb.
    """
    return round(Fraction(value) * EXACT_MG[unit])


def mg(quantity: Quantity) -> int:
    """Integer milligrams of a mass quantity, rounded half to even."""
    return round(Fraction(float(quantity.m_as("mg"))))


def from_mg(milligrams: int) -> Quantity:
    """Mass quantity in grams of integer milligrams."""
    return Q(milligrams / 1_000, "g")
