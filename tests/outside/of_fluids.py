"""What this program says of saturation, water and the catalogue, for each row's condition."""

import functools
from collections.abc import Callable

from chargebench.calc.readings import subcooling, superheat
from chargebench.fluids import gas_density, names, refrigerant, saturation, water
from chargebench.fluids.child import equation_state
from chargebench.units import Q, Quantity
from tests.outside.check import AIR, condition, pint_unit, printed
from tests.outside.rows import Row

WATER_25C = Q(997.05, "kg/m**3")  # IAPWS SR1-86


def _number_after(text: str, key: str) -> float:
    """The number after `key` in a condition such as `T=280 K; rho=11 mol/dm3`."""
    part = next(part for part in text.split("; ") if part.startswith(key))
    return float(part.removeprefix(key).split()[0])


def _of_component(row: Row, method: str) -> float:
    """What has no curve here but is part of a blend: the equation its blend is computed with."""
    from CoolProp import CoolProp

    state = equation_state([row["refrigerant"]], [1.0])
    vapour = 1 if method == "vapour_density" else 0
    state.update(CoolProp.QT_INPUTS, vapour, condition(row["condition"]).m_as("K"))
    return float(state.p() if method == "bubble_pressure" else state.rhomass())


def _line(method: str) -> Callable[[Row], float]:
    """A saturation line at the row's temperature or pressure, in the row's unit."""

    def found(row: Row) -> float:
        if row["refrigerant"] not in names():
            return _of_component(row, method)
        value: Quantity = getattr(saturation(row["refrigerant"]), method)(
            condition(row["condition"])
        )
        if row["unit"].startswith("mol/"):
            value = value / refrigerant(row["refrigerant"]).molar_mass
        return printed(value, row["unit"])

    return found


def _difference(
    row: Row, *, pressure: str, measured: Callable[..., Quantity], argument: str
) -> float:
    given, line = row["condition"].split("; ")
    found = measured(
        saturation(row["refrigerant"]),
        line_temperature=condition(line.removeprefix("line ")),
        **{argument: condition(given.removeprefix(pressure))},
    )
    return printed(found, row["unit"])


def _equation_pressure(row: Row) -> float:
    """Pressure of the equation the property process works with, at a paper's check point."""
    from CoolProp import CoolProp

    state = equation_state([row["refrigerant"]], [1.0])
    moles = 1000 * _number_after(row["condition"], "rho=")
    state.update(CoolProp.DmolarT_INPUTS, moles, _number_after(row["condition"], "T="))
    return printed(Q(state.p(), "Pa"), row["unit"])


def _vapour(row: Row) -> float:
    """Molar density of superheated vapour at the row's temperature and pressure."""
    kelvin, pascal = _number_after(row["condition"], "T="), _number_after(row["condition"], "p=")
    found = gas_density(row["refrigerant"], temperature=Q(kelvin, "K"), pressure=Q(pascal, "MPa"))
    return printed(found / refrigerant(row["refrigerant"]).molar_mass, row["unit"])


def _gravity(row: Row) -> float:
    density = saturation(row["refrigerant"]).liquid_density(condition(row["condition"]))
    return float((density / WATER_25C).m_as(""))


def _at_air(method: str) -> Callable[[Row], float]:
    def found(row: Row) -> float:
        return printed(getattr(saturation(row["refrigerant"]), method)(AIR), row["unit"])

    return found


def _filling_ratio(row: Row) -> float:
    """ADR P200: 0.95 of the liquid at 50 °C, and not full of liquid up to 60 °C."""
    dense = saturation(row["refrigerant"]).liquid_density
    warm, hot = (dense(Q(celsius, "degC")).m_as("kg/L") for celsius in (50, 60))
    return float(min(0.95 * warm, hot))


def _composition(row: Row) -> str:
    shares = {part.name: part.mass_percent for part in refrigerant(row["refrigerant"]).composition}
    parts = row["condition"].split("; ")
    assert set(parts) == set(shares)
    return "/".join(f"{shares[part].normalize():f}" for part in parts)


def _water_boils(row: Row) -> float:
    given = condition(row["condition"])
    return float(water.boiling_temperature(given).m_as(pint_unit(row["unit"])))


def _water_pressure(row: Row) -> float:
    return float(water.vapour_pressure(condition(row["condition"])).m_as(row["unit"]))


def _warming(row: Row) -> float | str:
    found = refrigerant(row["refrigerant"]).gwp.get(row["condition"])
    return "none" if found is None else float(found.value)


_superheat = functools.partial(
    _difference, pressure="suction ", measured=superheat, argument="suction_pressure"
)
_subcooling = functools.partial(
    _difference, pressure="liquid ", measured=subcooling, argument="liquid_pressure"
)

OURS: dict[str, Callable[[Row], float | str]] = {
    "saturation_pressure": _line("bubble_pressure"),
    "bubble_pressure": _line("bubble_pressure"),
    "dew_pressure": _line("dew_pressure"),
    "saturation_temperature": _line("bubble_temperature"),
    "saturated_liquid_density": _line("liquid_density"),
    "saturated_vapour_density": _line("vapour_density"),
    "bubble_liquid_molar_density": _line("liquid_density"),
    "dew_vapour_molar_density": _line("vapour_density"),
    "saturation temperature": _line("dew_temperature"),
    "dew pressure": _line("dew_pressure"),
    "dew (near) saturation pressure": _line("dew_pressure"),
    "bubble pressure": _line("bubble_pressure"),
    "liquid density": _line("liquid_density"),
    "dew vapour density": _line("vapour_density"),
    "specific gravity of liquid": _gravity,
    "superheat": _superheat,
    "subcooling": _subcooling,
    "bubble point at 101.325 kPa": _at_air("bubble_temperature"),
    "dew point at 101.325 kPa": _at_air("dew_temperature"),
    "normal boiling point": _at_air("bubble_temperature"),
    "pressure at T and molar density": _equation_pressure,
    "vapour density at T and p": _vapour,
    "ADR P200 filling ratio": _filling_ratio,
    "nominal composition": _composition,
    "boiling temperature of water": _water_boils,
    "water normal boiling point": _water_boils,
    "water boiling point at 100 kPa": _water_boils,
    "water vapour pressure": _water_pressure,
    "GWP": _warming,
    "exchange value": _warming,
    "safety class": lambda row: refrigerant(row["refrigerant"]).safety_class,
    "pressure class": lambda row: refrigerant(row["refrigerant"]).pressure_class,
    "molar mass": lambda row: printed(refrigerant(row["refrigerant"]).molar_mass, row["unit"]),
}
