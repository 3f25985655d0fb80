"""The one pint registry, its dimension check, and the exact mass factors."""

import functools
import inspect
from collections.abc import Callable
from fractions import Fraction
from typing import Any, ParamSpec, TypeVar, cast

import pint

Quantity = pint.Quantity[Any]

ureg: pint.UnitRegistry[Any] = pint.UnitRegistry(cache_folder=":auto:")
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
