"""The refrigerants known here, read from resources/refrigerants.toml at the first question."""

import difflib
import tomllib
from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from types import MappingProxyType
from typing import Any, get_args

from chargebench.errors import UnknownRefrigerant
from chargebench.fluids.refrigerants import Component, Figure, Fluid, LimitFigure, Refrigerant
from chargebench.resource import resource
from chargebench.sources import Mark
from chargebench.units import Q
from chargebench.words import joined, say


@cache
def names() -> tuple[str, ...]:
    """Names of the refrigerants, in catalogue order.

    Returns
    -------
    tuple of str
        Pure fluids first, then blends by number; written `R290`, `R1234ze(E)`.

    Source
    ------
    ASHRAE34, designations.
    """
    return tuple(_refrigerants())


def refrigerant(name: str) -> Refrigerant:
    """The catalogue's refrigerant of a name.

    Parameters
    ----------
    name : str
        As `names` writes it.

    Returns
    -------
    Refrigerant
        With composition, class, limits and warming potentials.

    Raises
    ------
    UnknownRefrigerant
        A name that is not in the catalogue; says which are near.

    Source
    ------
    ASHRAE34, designations.
    """
    try:
        return _refrigerants()[name]
    except KeyError:
        raise UnknownRefrigerant(_unknown(name)) from None


def _fold(name: str) -> str:
    return "".join(sign for sign in name.casefold() if sign.isalnum())


def _unknown(name: str) -> str:
    folded = {_fold(known): known for known in names()}
    near = [folded[key] for key in difflib.get_close_matches(_fold(name), folded, 3, 0.75)]
    shown = name if len(name) <= 20 else name[:19] + "…"
    if near:
        return say(
            "“{shown}” is not a refrigerant known here; did you mean {near}?",
            shown=shown,
            near=joined(" or ", near),
        )
    return say(
        "“{shown}” is not a refrigerant known here; expected a designation such as R290.",
        shown=shown,
    )


@cache
def _refrigerants() -> dict[str, Refrigerant]:
    with resource("refrigerants.toml").open("rb") as file:
        table = tomllib.load(file)
    fluids = {row["name"]: _fluid(row) for row in table["fluid"]}
    pure = [_pure(row, fluids[row["name"]]) for row in table["fluid"] if row.get("charged", True)]
    blends = [_blend(row, fluids) for row in table["blend"]]
    return {known.name: known for known in (*pure, *blends)}


def _figure(row: Mapping[str, Any]) -> Figure:
    assert row["mark"] in get_args(Mark), row
    return Figure(Decimal(row["value"]), row["source"], row["mark"])


def _limit(row: Mapping[str, Any], key: str, unit: str = "kg/m**3") -> LimitFigure | None:
    if key not in row:
        return None
    figure = _figure(row[key])
    return LimitFigure(Q(float(figure.value), unit), figure.source, figure.mark)


def _fluid(row: Mapping[str, Any]) -> Fluid:
    return Fluid(
        row["name"],
        row["equation"],
        _figure(row["molar_mass"]),
        row["family"],
        row.get("ods_class", {"value": ""})["value"],
        MappingProxyType({which: _figure(figure) for which, figure in row["gwp"].items()}),
    )


def _common(row: Mapping[str, Any]) -> dict[str, Any]:
    return {
        "name": row["name"],
        "safety_class": row["safety_class"]["value"],
        "safety_class_source": row["safety_class"]["source"],
        "safety_class_mark": row["safety_class"]["mark"],
        "lfl": _limit(row, "lfl"),
        "lfl_volume": _limit(row, "lfl_volume", "percent"),
        "rcl": _limit(row, "rcl"),
        "practical_limit": _limit(row, "practical_limit"),
        "atel_odl": _limit(row, "atel_odl"),
        "pressure_class_override": row.get("pressure_class_override"),
        "notes": row.get("notes", ""),
    }


def _pure(row: Mapping[str, Any], fluid: Fluid) -> Refrigerant:
    return Refrigerant(
        kind="pure",
        composition=(Component(fluid.name, Decimal(100)),),
        composition_source=row["safety_class"]["source"],
        composition_mark="SEEN",
        fluids=(fluid,),
        equation=(fluid.equation,),
        **_common(row),
    )


def _blend(row: Mapping[str, Any], fluids: Mapping[str, Fluid]) -> Refrigerant:
    parts = tuple(
        Component(part["name"], Decimal(part["mass_percent"])) for part in row["composition"]
    )
    assert sum(part.mass_percent for part in parts) == 100, row["name"]
    of_parts = tuple(fluids[part.name] for part in parts)
    return Refrigerant(
        kind=row["kind"],
        composition=parts,
        composition_source=row["composition_source"]["source"],
        composition_mark=row["composition_source"]["mark"],
        fluids=of_parts,
        equation=(row["equation"],) if "equation" in row else tuple(f.equation for f in of_parts),
        **_common(row),
    )
