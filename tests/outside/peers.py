"""Checks against independent libraries: what they compute beside what this program says."""

import itertools
import math
import tomllib
from collections.abc import Iterator
from functools import partial
from typing import Any

from chargebench.calc.hose import hose_content, hose_volume
from chargebench.calc.pressure_test import State, expected_pressure
from chargebench.fluids import NITROGEN, gas_density, names, refrigerant, saturation, water
from chargebench.resource import resource
from chargebench.units import Q, Quantity
from tests.outside import by_chemicals, by_teqp
from tests.outside.check import AIR, Check

KELVIN = (233.15, 253.15, 273.15, 293.15, 303.15)
# 70 °F, 25, 50, 54.4 and 60 °C: fill and hot limits of cylinders.
CYLINDER_KELVIN = (294.26, 298.15, 323.15, 327.55, 333.15)
EXACT = "0.0003 %"  # the same equation in other code
BLENDS = "0.001 %"  # of blends: the two codes differ in the last digits of the gas constant
# Pseudo-pure equations stand in for these blends (Lemmon 2003): p within 0.02 %, density 0.05 %.
PSEUDO_PURE = ("R404A", "R407C", "R410A", "R507A")
NOT_BY_TEQP = ("R438A",)  # no mixture parameters are published for isopentane with HFCs
FITS = {"VDI": "0.1 %", "Wagner, McGarry": "0.35 %", "Wagner, Poling": "0.5 %", "DIPPR": "0.7 %",
        "Antoine": "0.3 %"}  # fmt: skip
WIDER = {"R1270": {"VDI": "0.4 %", "DIPPR": "1.6 %"}}  # fits to data older than its equation
ANTOINE = ("R134a", "R125", "R143a", "R152a")  # elsewhere up to 2 % from the papers' tables
PHASES = (
    ("bubble pressure", "bubble_pa", True), ("liquid density", "liquid_kgm3", True),
    ("dew pressure", "dew_pa", False), ("vapour density", "vapour_kgm3", False),
)  # fmt: skip


def _pures() -> list[str]:
    return [name for name in names() if refrigerant(name).kind == "pure"]


def _celsius(kelvin: float) -> str:
    return f"{kelvin - 273.15:.4g} C"


def _by_teqp(name: str, kelvin: float, *, liquid: bool, density: bool) -> float:
    of = by_teqp.pure if refrigerant(name).kind == "pure" else by_teqp.blend
    found = of(name, kelvin, liquid=liquid)
    return found.kgm3 if density else found.pascal


def _teqp_tolerance(name: str, *, density: bool) -> str:
    if name in PSEUDO_PURE:
        return "0.05 %" if density else "0.02 %"
    return EXACT if refrigerant(name).kind == "pure" else BLENDS


def _teqp() -> Iterator[Check]:
    for name in (name for name in names() if name not in NOT_BY_TEQP):
        inside = saturation(name).axis.high
        pure = refrigerant(name).kind == "pure"
        phases = PHASES[:2] + PHASES[3:] if pure else PHASES
        points = itertools.product(KELVIN[:1] + KELVIN[2:4], phases)
        fills = itertools.product(CYLINDER_KELVIN, PHASES[1:2]) if name != "R455A" else ()
        for kelvin, (quantity, method, liquid) in itertools.chain(points, fills):
            if kelvin > inside:
                continue
            density = "density" in quantity
            yield Check(
                quantity, name, _celsius(kelvin), "kg/m3" if density else "Pa",
                _teqp_tolerance(name, density=density),
                "published equations and mixture parameters in teqp's code", "teqp",
                partial(_by_teqp, name, kelvin, liquid=liquid, density=density),
                partial(getattr(saturation(name), method), kelvin),
            )  # fmt: skip


def _our_gas(name: str, celsius: float, pascal: float) -> float:
    found = gas_density(name, temperature=Q(celsius, "degC"), pressure=Q(pascal, "Pa"))
    return float(found.m_as("kg/m**3"))


def _gases() -> Iterator[Check]:
    """Superheated vapour as it stays in hoses, at one atmosphere and at 3 bar of a low side."""
    for name, (celsius, pascal) in itertools.product(names(), ((20, 101_325), (30, 3e5))):
        if name in NOT_BY_TEQP or pascal > 0.95 * saturation(name).dew_pa(celsius + 273.15):
            continue
        yield Check(
            "gas density", name, f"{celsius} C, {pascal / 1000:g} kPa absolute", "kg/m3",
            _teqp_tolerance(name, density=True),
            "published equations and mixture parameters in teqp's code", "teqp",
            partial(by_teqp.gas_density, name, celsius + 273.15, pascal),
            partial(_our_gas, name, celsius, pascal),
        )  # fmt: skip


def _always(value: float) -> float:
    return value


def _fits() -> Iterator[Check]:
    for equation, name, kelvin in itertools.product(FITS, _pures(), KELVIN):
        expected = by_chemicals.vapour_pressure(name, kelvin, equation)
        if expected is None or (equation == "Antoine" and name not in ANTOINE):
            continue
        yield Check(
            f"vapour pressure, {equation}", name, _celsius(kelvin), "Pa",
            WIDER.get(name, {}).get(equation, FITS[equation]),
            f"{equation} coefficients shipped with chemicals", "chemicals",
            partial(_always, expected), partial(saturation(name).bubble_pa, kelvin),
        )  # fmt: skip
    for name, kelvin in itertools.product(_pures(), KELVIN):
        expected = by_chemicals.liquid_density(name, kelvin)
        if expected is not None:
            yield Check(
                "liquid density, VDI", name, _celsius(kelvin), "kg/m3", "0.5 %",
                "VDI Heat Atlas (2010), D3.1", "chemicals",
                partial(_always, expected), partial(saturation(name).liquid_kgm3, kelvin),
            )  # fmt: skip


def _fluids() -> list[dict[str, Any]]:
    table = tomllib.loads(resource("refrigerants.toml").read_text(encoding="utf-8"))
    found: list[dict[str, Any]] = table["fluid"]
    return found


def _catalogue() -> Iterator[Check]:
    """Molar masses, and the potentials and limits that cite the tables chemicals ships."""
    for fluid in _fluids():
        name = fluid["name"]
        yield Check(
            "molar mass", name, "", "g/mol", "0.01 %", "atomic weights", "chemicals",
            partial(by_chemicals.molar_mass, name), partial(float, fluid["molar_mass"]["value"]),
        )  # fmt: skip
        for which, edition in (("AR4", "2007"), ("AR5", "2014"), ("AR6", "2021")):
            figure = fluid["gwp"].get(which, {"source": "", "mark": ""})
            table = by_chemicals.warming(name, edition)
            if figure["source"] == f"IPCC-{which}" and figure["mark"] != "MEMORY" and table:
                yield Check(
                    f"GWP {which}", name, "100 years", "1", "0",
                    f"IPCC table of {edition} shipped with chemicals", "chemicals",
                    partial(_always, table), partial(float, figure["value"]),
                )  # fmt: skip
        if fluid.get("lfl_volume", {"source": ""})["source"].startswith("NFPA497"):
            yield Check(
                "lower flammability limit", name, "in air", "% by volume", "0.001",
                "NFPA 497 (2008) shipped with chemicals", "chemicals",
                partial(by_chemicals.lower_limit, name),
                partial(float, fluid["lfl_volume"]["value"]),
            )  # fmt: skip


def _water_pascal(kelvin: float) -> float:
    return float(water.vapour_pressure(Q(kelvin, "K")).m_as("Pa"))


def _water() -> Iterator[Check]:
    boiling = ("IAPWS97", "iapws", "0.02 %"), ("IAPWS-95", "chemicals", "0.02 %")
    warm = itertools.product((0.02, 5, 10, 15, 20, 25, 45, 50, 60, 70, 100, 150, 200), boiling)
    ice = itertools.product(
        (-80, -60, -40, -24.5, -17.3, -10, -1, -0.01), [("R14-08", "iapws", "0.0001 %")]
    )
    for celsius, (formulation, library, tolerance) in itertools.chain(warm, ice):
        kelvin = celsius + 273.15
        yield Check(
            "water vapour pressure", "water", f"{celsius} C", "Pa", tolerance,
            f"IAPWS formulation {formulation}", library,
            partial(by_chemicals.water_pressure, kelvin, formulation),
            partial(_water_pascal, kelvin),
        )  # fmt: skip


def _hose(bore: float, inches: float) -> Quantity:
    return hose_volume(length=Q(inches, "inch"), bore=Q(bore, "mm"))


def _hose_millilitres(bore: float, inches: float) -> float:
    """Volume [mL] by geometry: bore in millimetres, inches of 25.4 mm."""
    return math.pi / 4 * bore**2 * inches * 25.4 / 1000


def _our_hose(bore: float, inches: float) -> float:
    return float(_hose(bore, inches).m_as("mL"))


def _hose_grams(bore: float, inches: float, name: str, celsius: float, *, liquid: bool) -> float:
    density = by_teqp.pure(name, celsius + 273.15, liquid=liquid).kgm3
    return _hose_millilitres(bore, inches) * density / 1000


def _our_hose_grams(
    bore: float, inches: float, name: str, celsius: float, *, liquid: bool
) -> float:
    lines, at = saturation(name), Q(celsius, "degC")
    density = lines.liquid_density(at) if liquid else lines.vapour_density(at)
    return float(hose_content(volume=_hose(bore, inches), density=density).m_as("g"))


def _hoses() -> Iterator[Check]:
    contents = tuple(itertools.product(("R290", "R134a"), (20, 25), (True, False)))
    for bore, inches in itertools.product((4.8, 5.5, 6.35), (36, 60)):
        size = f"{bore} mm by {inches} in"
        yield Check(
            "hose volume", "any", size, "mL", "0.0001 %", "geometry: pi/4 bore^2 length", "BY HAND",
            partial(_hose_millilitres, bore, inches), partial(_our_hose, bore, inches),
        )  # fmt: skip
        for name, celsius, liquid in contents:
            phase = "liquid" if liquid else "saturated vapour"
            yield Check(
                f"hose content, {phase}", name, f"{size}, {celsius} C", "g", EXACT,
                "geometry, and density by teqp", "teqp",
                partial(_hose_grams, bore, inches, name, celsius, liquid=liquid),
                partial(_our_hose_grams, bore, inches, name, celsius, liquid=liquid),
            )  # fmt: skip


def _ours_of_nitrogen(bar: float, start: float, end: float) -> float:
    """Pressure expected after cooling, as the pressure test works it out from two densities."""
    pressure, warm, cold = Q(bar, "bar") + AIR, Q(start, "degC"), Q(end, "degC")
    ideal = pressure * (end + 273.15) / (start + 273.15)
    first, last = (
        State(at, temperature, gas_density(NITROGEN, temperature=temperature, pressure=at))
        for at, temperature in ((pressure, warm), (ideal, cold))
    )
    return float((expected_pressure(start=first, end=last) - AIR).m_as("bar"))


def _nitrogen() -> Iterator[Check]:
    for bar, start, end in ((10, 20, 10), (30, 20, 10), (40, 20, 10), (28, 5, 35)):
        yield Check(
            "nitrogen pressure after temperature change", "N2",
            f"{bar} bar g at {start} C -> {end} C, real gas", "bar g", "0.002",
            "Span et al. (2000) in teqp's code, constant density", "teqp",
            partial(by_teqp.nitrogen_after, bar, start, end),
            partial(_ours_of_nitrogen, bar, start, end),
        )  # fmt: skip


def checks() -> list[Check]:
    """Every check against a library."""
    groups = _teqp(), _gases(), _fits(), _catalogue(), _water(), _hoses(), _nitrogen()
    return [check for group in groups for check in group]
