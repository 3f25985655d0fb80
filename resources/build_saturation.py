"""Build saturation.json from CoolProp: run by hand when the equations or the catalogue change.

    python resources/build_saturation.py [--points 1500]

Curves of ln p and ln rho over s = sqrt(T_ref - T), T_ref the critical temperature of the equation,
as Chebyshev series of the lowest degree whose error on points not fitted is small enough. The
mixture solver fails in bands of temperature; the series are fitted across them, and where a
traced phase envelope reaches into a band its points are compared too. What the solver returns is
fenced: pressures and densities must run one way and bubble must not lie under dew.
"""

import argparse
import json
import math
import random
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
from numpy.polynomial import chebyshev

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from chargebench.fluids import Refrigerant, names, refrigerant
from chargebench.fluids.child import BORROWED_GAMMA_T, equation_state

OUT = Path(__file__).resolve().parent / "saturation.json"
ZERO = 273.15
LOWEST = {"pure": ZERO - 80, "blend": ZERO - 65}
HIGHEST = {"pure": ZERO + 90, "blend": ZERO + 75}
BELOW_CRITICAL = {"pure": 0.1, "blend": 5.0}  # K kept free under the critical point
NODES = 260
LARGEST_DEGREE = 32
WANTED = {"bubble": 2e-8, "dew": 2e-8, "liquid": 5e-7, "vapour": 5e-7}  # relative
LARGEST_ERROR = {"bubble": 2e-6, "dew": 2e-6, "liquid": 1e-4, "vapour": 1e-4}

PAPERS = {
    "Lemmon-JCED-2009": "Lemmon, McLinden & Wagner, J. Chem. Eng. Data 54 (2009) 3141",
    "Buecker-JPCRD-2006B": "Bücker & Wagner, J. Phys. Chem. Ref. Data 35 (2006) 929",
    "Buecker-JPCRD-2006": "Bücker & Wagner, J. Phys. Chem. Ref. Data 35 (2006) 205",
    "Lemmon-PROPYLENE-2013": "Lemmon, Overhoff, McLinden & Wagner (2013)",
    "Gao-JPCRD-2020": "Gao, Wu, Bell, Harvey & Lemmon, J. Phys. Chem. Ref. Data 52 (2023) 013102",
    "Span-JPCRD-1996": "Span & Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509",
    "TillnerRoth-JPCRD-1997": "Tillner-Roth & Yokozeki, J. Phys. Chem. Ref. Data 26 (1997) 1273",
    "TillnerRoth-JPCRD-1994": "Tillner-Roth & Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657",
    "Lemmon-JPCRD-2005": "Lemmon & Jacobsen, J. Phys. Chem. Ref. Data 34 (2005) 69",
    "LemmonJacobsen-JPCRD-2000": "Lemmon & Jacobsen, J. Phys. Chem. Ref. Data 29 (2000) 521",
    "Outcalt-JPCRD-1996-R152A": "Outcalt & McLinden, J. Phys. Chem. Ref. Data 25 (1996) 605",
    "Lemmon-IJT-2022": "Lemmon & Akasaka, Int. J. Thermophys. 43 (2022)",
    "Thol-IJT-2016-R1234zeE": "Thol & Lemmon, Int. J. Thermophys. 37 (2016)",
    "Kamei-IJT-1995": "Kamei, Beyerlein & Jacobsen, Int. J. Thermophys. 16 (1995)",
    "Marx-BOOK-1992": "Marx, Pruss & Wagner (1992)",
    "Lemmon-IJT-2003": "Lemmon, Int. J. Thermophys. 24 (2003) 991 (pseudo-pure)",
    "Lemmon-JPCRD-2004": "Lemmon & Jacobsen, J. Phys. Chem. Ref. Data 33 (2004) 593",
    "Bell-JCED-2016": "Bell & Lemmon, J. Chem. Eng. Data 61 (2016) 3752",
    "Bell-JPCRD-2022": "Bell, J. Phys. Chem. Ref. Data 51 (2022) 013103",
    "Bell-JPCRD-2023": "Bell, J. Phys. Chem. Ref. Data 52 (2023) 013101",
    "Bell-JCED-2025": "Bell et al., J. Chem. Eng. Data (2025)",
    "Kunz-JCED-2012": "Kunz & Wagner, J. Chem. Eng. Data 57 (2012) 3032 (GERG-2008)",
}


@dataclass
class Sampled:
    """One saturation line at the temperatures where the solver answered."""

    kelvin: "np.ndarray[Any, Any]"
    pascal: "np.ndarray[Any, Any]"
    kgm3: "np.ndarray[Any, Any]"


def coolprop() -> Any:
    """CoolProp's module, imported where it is used."""
    import CoolProp.CoolProp as module  # noqa: N813

    return module


def sample(state: Any, quality: int, kelvin: "np.ndarray[Any, Any]") -> Sampled:
    """Pressure and density along one line; temperatures where the solver fails are left out."""
    rows = []
    for temperature in kelvin:
        try:
            state.update(coolprop().QT_INPUTS, quality, float(temperature))
        except ValueError:
            continue
        rows.append((temperature, state.p(), state.rhomass()))
    table = np.array(rows)
    return Sampled(table[:, 0], table[:, 1], table[:, 2])


def require(holds: Any, otherwise: str) -> None:
    """Stop the build where a result is not to be stored."""
    if not holds:
        raise SystemExit(f"nothing written: {otherwise}")


def fence(name: str, asked: int, bubble: Sampled, dew: Sampled) -> None:
    """Stop the build where the solver returned nonsense without an error."""
    require((np.diff(np.log(bubble.pascal)) > 0).all(), f"{name}: bubble pressure falls")
    require((np.diff(np.log(dew.pascal)) > 0).all(), f"{name}: dew pressure falls")
    require((np.diff(bubble.kgm3) < 0).all(), f"{name}: liquid density rises")
    require((np.diff(dew.kgm3) > 0).all(), f"{name}: vapour density falls")
    both, at, there = np.intersect1d(bubble.kelvin, dew.kelvin, return_indices=True)
    require(both.size > 0.6 * asked, f"{name}: the solver failed too often")
    gap = bubble.pascal[at] / dew.pascal[there] - 1
    require((gap > -1e-7).all(), f"{name}: bubble under dew")


def domain(fluid: Refrigerant, state: Any, critical: float) -> tuple[float, float]:
    """Temperatures to fit between: as high as both lines can be computed."""
    kind = "pure" if fluid.kind == "pure" else "blend"
    low = max(LOWEST[kind], state.Tmin() if kind == "pure" else 0)
    high = min(HIGHEST[kind], critical - BELOW_CRITICAL[kind])
    if len(fluid.equation) == 1:
        return low, high
    while True:
        top = np.arange(high, high - 0.35, -0.1)
        if min(sample_size(state, quality, top) for quality in (0, 1)) == top.size:
            return low, round(high, 2)
        high -= 0.1


def sample_size(state: Any, quality: int, kelvin: "np.ndarray[Any, Any]") -> int:
    """How many of the temperatures the solver answers at."""
    answered = 0
    for temperature in kelvin:
        try:
            state.update(coolprop().QT_INPUTS, quality, float(temperature))
        except ValueError:
            continue
        answered += 1
    return answered


def critical_kelvin(state: Any, fluids: tuple[str, ...]) -> float:
    """Critical temperature of the equation; of a mixture the highest stable one."""
    if len(fluids) == 1:
        return float(state.T_critical())
    points = [point.T for point in state.all_critical_points() if point.stable and point.p > 0]
    return float(max(points))


class Axis:
    """The stretched temperature axis of one refrigerant."""

    def __init__(self, low: float, high: float, critical: float) -> None:
        self.critical = critical
        self.far, self.near = math.sqrt(critical - low), math.sqrt(critical - high)

    def x(self, kelvin: "np.ndarray[Any, Any]") -> "np.ndarray[Any, Any]":
        """Chebyshev argument, -1 at the cold end."""
        s = np.sqrt(self.critical - kelvin)
        return np.asarray(2 * (self.far - s) / (self.far - self.near) - 1)

    def nodes(self, count: int) -> "np.ndarray[Any, Any]":
        """Temperatures of Chebyshev nodes, cold first."""
        x = -np.cos(np.pi * (np.arange(count) + 0.5) / count)
        s = self.far - (x + 1) * (self.far - self.near) / 2
        return np.asarray(self.critical - s**2)


def fit(
    axis: Axis, kelvin: Any, values: Any, held_kelvin: Any, held: Any, wanted: float
) -> tuple[list[float], float]:
    """Series of the lowest degree that meets the wanted error on held-out points, else the best."""
    best: tuple[list[float], float] = ([], math.inf)
    for degree in range(6, LARGEST_DEGREE + 1):
        series = np.round(chebyshev.chebfit(axis.x(kelvin), np.log(values), degree), 10)
        off = np.expm1(chebyshev.chebval(axis.x(held_kelvin), series) - np.log(held))
        error = float(np.abs(off).max())
        if error < best[1] * 0.8:
            best = (series.tolist(), error)
        if best[1] <= wanted:
            break
    return best


def source_text(fluids: tuple[str, ...]) -> str:
    """Citation of the equation, or of the pair data of a mixture."""
    if len(fluids) == 1:
        return PAPERS[coolprop().get_BibTeXKey(fluids[0], "EOS")]
    keys: list[str] = []
    for first, second in ((a, b) for i, a in enumerate(fluids) for b in fluids[i + 1 :]):
        if frozenset((first, second)) in BORROWED_GAMMA_T:
            continue
        cas = [coolprop().get_fluid_param_string(fluid, "CAS") for fluid in (first, second)]
        keys.append(_pair_key(cas[0], cas[1]))
    papers = "; ".join(PAPERS[key] for key in dict.fromkeys(keys))
    return f"Components by their own equations; pairs: {papers}"


def _pair_key(first: str, second: str) -> str:
    try:
        return str(coolprop().get_mixture_binary_pair_data(first, second, "BibTeX"))
    except ValueError:
        return str(coolprop().get_mixture_binary_pair_data(second, first, "BibTeX"))


def model_text(fluids: tuple[str, ...], *, pure: bool) -> tuple[str, bool]:
    """How the curve was made, and whether it rests on estimated pair data."""
    if len(fluids) == 1:
        return ("pure fluid equation" if pure else "pseudo-pure fluid equation"), False
    borrowed = any(pair <= set(fluids) for pair in BORROWED_GAMMA_T)
    text = "mixture equation, estimated pair data" if borrowed else "mixture equation"
    return text, borrowed


def envelope_error(fluid: Refrigerant, axis: Axis, series: list[float], t: Any) -> str:
    """Largest difference of the bubble series from a traced envelope, for the log."""
    state = equation_state(fluid.equation, fluid.equation_shares)
    try:
        state.build_phase_envelope("")
    except ValueError:
        return "no envelope"
    traced = sample(state, 0, t)
    off = np.abs(np.expm1(chebyshev.chebval(axis.x(traced.kelvin), series) - np.log(traced.pascal)))
    sound = off < 1e-4  # a trace sometimes jumps to another root; that one says nothing
    return f"envelope {off[sound].max():.1e} at {sound.sum()} of {t.size}"


def build(fluid: Refrigerant, points: int) -> dict[str, Any]:
    """The stored row of one refrigerant."""
    state = equation_state(fluid.equation, fluid.equation_shares)
    critical = critical_kelvin(state, fluid.equation)
    low, high = domain(fluid, state, critical)
    axis = Axis(low, high, critical)
    lines = [sample(state, quality, axis.nodes(NODES)) for quality in (0, 1)]
    fence(fluid.name, NODES, *lines)
    dice = random.Random(fluid.name)  # noqa: S311 - not a secret; the same points at each build
    held_at = np.array(sorted([low, high, *(dice.uniform(low, high) for _ in range(points))]))
    held = [sample(state, quality, held_at) for quality in (0, 1)]
    fence(fluid.name, held_at.size, *held)
    row: dict[str, Any] = {}
    errors: dict[str, float] = {}
    for curve, line, out in zip(("bubble", "dew"), lines, held, strict=True):
        row[curve], errors[curve] = fit(
            axis, line.kelvin, line.pascal, out.kelvin, out.pascal, WANTED[curve]
        )
    for curve, line, out in zip(("liquid", "vapour"), lines, held, strict=True):
        row[curve], errors[curve] = fit(
            axis, line.kelvin, line.kgm3, out.kelvin, out.kgm3, WANTED[curve]
        )
    for curve, error in errors.items():
        require(error <= LARGEST_ERROR[curve], f"{fluid.name}: {curve} off by {error:.1e}")
    holes = [f"{NODES - line.kelvin.size}" for line in lines]
    traced = (
        envelope_error(fluid, axis, row["bubble"], held_at[:: max(1, points // 200)])
        if len(fluid.equation) > 1
        else ""
    )
    print(
        f"{fluid.name:11} {low - ZERO:6.1f} to {high - ZERO:5.1f} °C, nodes failed {holes}, errors "
        + " ".join(f"{curve} {error:.1e} ({len(row[curve])})" for curve, error in errors.items()),
        traced,
        flush=True,
    )
    if fluid.kind == "pure":
        require(row["bubble"] == row["dew"], f"{fluid.name}: a pure fluid with a glide")
        del row["dew"]
    model, estimated = model_text(fluid.equation, pure=fluid.kind == "pure")
    return {
        "model": model,
        "estimated_pairs": estimated,
        "source": source_text(fluid.equation),
        "low": low,
        "high": high,
        "critical": critical,
        "fit_error": {curve: float(f"{error:.1e}") for curve, error in errors.items()},
        **row,
    }


def main() -> None:
    """Build every curve and write the file, one refrigerant a line."""
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--points", type=int, default=1500, help="held-out points per line")
    options.add_argument("--only", nargs="*", help="try these without writing the file")
    given = options.parse_args()
    rows = {name: build(refrigerant(name), given.points) for name in given.only or names()}
    if given.only:
        return
    head = json.dumps({"coolprop_version": coolprop().get_global_param_string("version")})[1:-1]
    body = ",\n".join(
        f"  {json.dumps(name)}: {json.dumps(row, ensure_ascii=False, separators=(',', ':'))}"
        for name, row in rows.items()
    )
    OUT.write_text(f'{{\n {head},\n "refrigerants": {{\n{body}\n }}\n}}\n', encoding="utf-8")
    print(f"wrote {OUT.name}, {OUT.stat().st_size / 1000:.1f} kB, {len(rows)} refrigerants")


if __name__ == "__main__":
    main()
