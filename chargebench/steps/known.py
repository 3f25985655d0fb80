"""What is known of a refrigerant, each with its source and how far it was checked."""

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal

from chargebench.fluids import LimitFigure, Refrigerant, Saturation, refrigerant, saturation
from chargebench.units import System, show, shown
from chargebench.words import joined, say

_LIMITS = (
    ("lfl", "Lower flammable limit"),
    ("lfl_volume", "Lower flammable limit by volume"),
    ("rcl", "Concentration limit for people"),
    ("practical_limit", "Practical limit"),
    ("atel_odl", "Toxicity or oxygen limit"),
)
_CURVES = {
    "bubble": "bubble pressure",
    "dew": "dew pressure",
    "liquid": "liquid density",
    "vapour": "vapour density",
}


@dataclass(frozen=True, slots=True)
class Known:
    """One thing known."""

    what: str
    value: str
    source: str = ""  # key of sources.py with the place in it
    mark: str = ""


def known(name: str, system: System) -> tuple[Known, ...]:
    """Composition, class, limits, warming potentials; then model, equation, error and domain."""
    found, curve = refrigerant(name), saturation(name)
    return (*_of_refrigerant(found, system), *_of_curve(curve, system))


def _of_refrigerant(found: Refrigerant, system: System) -> Iterator[Known]:
    parts = joined(
        ", ",
        (
            say("{part} {mass_percent:f} %", part=part.name, mass_percent=part.mass_percent)
            for part in found.composition
        ),
    )
    yield Known(
        "Composition by mass",
        say("{kind}: {parts}", kind=found.kind, parts=parts)
        if len(found.composition) > 1
        else "pure",
        found.composition_source,
        found.composition_mark,
    )
    yield Known(
        "Safety class", found.safety_class, found.safety_class_source, found.safety_class_mark
    )
    yield Known("Molar mass", show(found.molar_mass, "g/mol", 2), found.fluids[0].molar_mass.source)
    for key, what in _LIMITS:
        limit: LimitFigure | None = getattr(found, key)
        if limit is not None:
            yield Known(what, _limit(limit, system), limit.source, limit.mark)
    if found.lfl is None:
        yield Known("Lower flammable limit", "none known here" if found.flammable else "none")
    for which, figure in found.gwp.items():
        yield Known(
            say("GWP, 100 years, {which}", which=which),
            _plain(figure.value),
            figure.source,
            figure.mark,
        )
    yield Known("Pressure class at 104 °F", found.pressure_class, "40CFR82F, 82.152")
    if found.notes:
        yield Known("Note", found.notes)


def _plain(value: Decimal) -> str:
    return f"{value:,.6g}".replace(",", "\u202f")


def _limit(limit: LimitFigure, system: System) -> str:
    if limit.value.check("[mass] / [volume]"):
        return shown(limit.value, system)
    return show(limit.value, "percent", 2)


def _of_curve(curve: Saturation, system: System) -> Iterator[Known]:
    yield Known("Model", curve.model)
    if curve.estimated_pairs:
        yield Known(
            "Estimated pair data", "how two of its components mix was estimated, not fitted"
        )
    yield Known("Equation", curve.source)
    yield Known(
        "Computed by",
        say("CoolProp {coolprop_version}, curves fitted", coolprop_version=curve.coolprop_version),
        "COOLPROP",
    )
    errors = joined(
        ", ",
        (
            say("{curves} {error:.1g} %", curves=_CURVES[key], error=100 * error)
            for key, error in curve.fit_error.items()
        ),
    )
    yield Known("Largest fit error", errors)
    low, high = curve.domain
    yield Known(
        "Holds from, to", say("{low}, {high}", low=shown(low, system), high=shown(high, system))
    )
