"""Saturation by teqp, a program text of its own for the published equations of state.

Nothing here comes from this program or from CoolProp's code. Equations are those teqp ships, but
for R1234yf (older there) and R1336mzz(E) (missing). These two, mixture parameters and departure
functions are those of the papers named in `mixture_pairs.csv` and `mixture_model.json`, as the
data files of CoolProp 8.0.0 give them: teqp 0.23.2 ships older ones, and the generalized HFC
function with two exponents exchanged (CoolProp issue 2149). Compositions are the published ones.
"""

import itertools
import json
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
import teqp

from tests.outside.rows import FOLDER, rows

_PARAMETERS = ("betaT", "gammaT", "betaV", "gammaV")
_OTHER_NAMES = {"R227ea": "R227EA", "R152a": "R152A"}
_UNIT = np.array([1.0])


@dataclass(frozen=True)
class Saturated:
    """One saturated state [Pa, kg/m3]: pressure and the density of the phase asked for."""

    pascal: float
    kgm3: float


@cache
def _model_data() -> dict[str, Any]:
    found: dict[str, Any] = json.loads((FOLDER / "mixture_model.json").read_text(encoding="utf-8"))
    return found


@cache
def _fluid(name: str) -> dict[str, Any]:
    own = {fluid["INFO"]["NAME"]: fluid for fluid in _model_data()["fluids"]}
    if name in own:
        known: dict[str, Any] = own[name]
        return known
    aliases = teqp.build_alias_map(teqp.get_datapath())
    path = Path(aliases[_OTHER_NAMES.get(name, name)])
    shipped: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    return shipped


def _reducing(name: str) -> tuple[float, float]:
    """Reducing temperature [K] and molar volume [m3/mol]."""
    state = _fluid(name)["EOS"][0]["STATES"]["reducing"]
    return float(state["T"]), 1 / float(state["rhomolar"])


def _gammas(row: dict[str, str]) -> dict[str, float]:
    """Parameters of the reducing functions, those of Lemmon & Jacobsen (2004) put in this form."""
    if row["gammaT"]:
        return {key: float(row[key]) for key in _PARAMETERS}
    (t1, v1), (t2, v2) = _reducing(row["one"]), _reducing(row["other"])
    volumes = (v1 ** (1 / 3) + v2 ** (1 / 3)) ** 3 / 4
    return {
        "betaT": 1.0,
        "gammaT": (t1 + t2 + float(row["xi_K"])) / (2 * (t1 * t2) ** 0.5),
        "betaV": 1.0,
        "gammaV": (v1 + v2 + float(row["zeta_m3_mol"])) / volumes,
    }


def _pair(one: str, other: str) -> dict[str, Any]:
    row = next(row for row in rows("mixture_pairs") if {row["one"], row["other"]} == {one, other})
    return {
        "Name1": row["one"],
        "Name2": row["other"],
        "CAS1": _fluid(row["one"])["INFO"]["CAS"],
        "CAS2": _fluid(row["other"])["INFO"]["CAS"],
        "BibTeX": row["source"],
        "F": float(row["F"] or 0),
        "function": row["function"],
    } | _gammas(row)


@cache
def _model(*names: str) -> Any:
    pairs = [_pair(*pair) for pair in itertools.combinations(names, 2)]
    return teqp.make_model(
        {
            "kind": "multifluid",
            "model": {
                "components": [_fluid(name) for name in names],
                "BIP": pairs,
                "departure": _model_data()["departures"],
            },
        }
    )


def _pressure(model: Any, kelvin: float, molar: Any) -> float:
    total = molar.sum()
    shares = molar / total
    residual = model.get_Ar01(kelvin, total, shares)
    return float(total * model.get_R(shares) * kelvin * (1 + residual))


@cache
def _pure_densities(name: str, kelvin: float) -> tuple[float, float]:
    """Molar densities of liquid and vapour [mol/m3]."""
    guess = _model(name).build_ancillaries()
    liquid, vapour = _model(name).pure_VLE_T(kelvin, guess.rhoL(kelvin), guess.rhoV(kelvin), 20)
    return float(liquid), float(vapour)


def _molar_mass(name: str) -> float:
    return float(_fluid(name)["EOS"][0]["molar_mass"])


def pure(name: str, kelvin: float, *, liquid: bool) -> Saturated:
    """A pure refrigerant that boils at a temperature [K]."""
    found = _pure_densities(name, kelvin)
    pascal = _pressure(_model(name), kelvin, _UNIT * found[1])
    return Saturated(pascal, found[0 if liquid else 1] * _molar_mass(name))


@cache
def composition(blend: str) -> tuple[tuple[str, ...], tuple[float, ...]]:
    """Components and their mole shares, from the published composition by mass."""
    row = next(row for row in rows("compositions") if row["refrigerant"] == blend)
    names = tuple(part.strip() for part in row["condition"].split(";"))
    masses = [float(share) for share in row["expected"].split("/")]
    moles = [mass / _molar_mass(name) for mass, name in zip(masses, names, strict=True)]
    return names, tuple(mole / sum(moles) for mole in moles)


def _density(model: Any, kelvin: float, pascal: float, shares: Any, start: float) -> float:
    """Molar density [mol/m3] of the phase that `start` lies in, by Newton's method."""
    density, heat = start, model.get_R(shares) * kelvin
    for _ in range(50):
        first, second = (
            model.get_Ar01(kelvin, density, shares), model.get_Ar02n(kelvin, density, shares)[2],
        )  # fmt: skip
        step = (pascal - density * heat * (1 + first)) / (heat * (1 + 2 * first + second))
        density += step
        if abs(step) < 1e-13 * density:
            break
    return density


def blend(name: str, kelvin: float, *, liquid: bool) -> Saturated:
    """A blend at its bubble (liquid) or dew point (vapour) of a temperature [K].

    From Raoult's law on, pressure and the other phase's composition are corrected by the ratios of
    teqp's fugacity coefficients until they stay.
    """
    names, shares = composition(name)
    model, mole = _model(*names), np.array(shares)
    pures = np.array([_pure_densities(part, kelvin) for part in names])
    boiling = np.array([pure(part, kelvin, liquid=True).pascal for part in names])
    pascal = float((mole * boiling).sum() if liquid else 1 / (mole / boiling).sum())
    other = mole * boiling / pascal if liquid else mole * pascal / boiling
    for _ in range(200):
        of_liquid, of_vapour = (mole, other) if liquid else (other, mole)
        thin = _density(model, kelvin, pascal, of_vapour, pascal / (8.314 * kelvin))
        dense = _density(model, kelvin, pascal, of_liquid, 1 / (of_liquid / pures[:, 0]).sum())
        ratios = model.get_fugacity_coefficients(
            kelvin, dense * of_liquid
        ) / model.get_fugacity_coefficients(kelvin, thin * of_vapour)
        corrected = mole * ratios if liquid else mole / ratios
        total = float(corrected.sum())
        pascal *= total if liquid else 1 / total
        other = corrected / total
        if abs(total - 1) < 1e-9:
            break
    else:
        raise AssertionError(f"{name} at {kelvin} K found no equilibrium")
    masses = np.array([_molar_mass(part) for part in names])
    return Saturated(pascal, float((dense if liquid else thin) * (mole * masses).sum()))


def gas_density(name: str, kelvin: float, pascal: float) -> float:
    """Density [kg/m3] of superheated vapour, of a blend by its mixture model."""
    pure_one = name not in {row["refrigerant"] for row in rows("compositions")}
    names, shares = ((name,), (1.0,)) if pure_one else composition(name)
    start = pascal / (8.314 * kelvin)
    density = _density(_model(*names), kelvin, pascal, np.array(shares), start)
    masses = np.array([_molar_mass(part) for part in names])
    return float(density * (masses * shares).sum())


def nitrogen_after(bar: float, start: float, end: float) -> float:
    """Gauge pressure [bar] of nitrogen enclosed at `bar` gauge and brought to `end` [C]."""
    model, pascal, kelvin = _model("Nitrogen"), bar * 1e5 + 101_325, start + 273.15
    density = _density(model, kelvin, pascal, _UNIT, pascal / (8.314 * kelvin))
    return (_pressure(model, end + 273.15, density * _UNIT) - 101_325) / 1e5
