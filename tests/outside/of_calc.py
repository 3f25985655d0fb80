"""What this program's calculations say for the condition of each worked example."""

import re
from collections.abc import Callable

from chargebench import rules
from chargebench.calc.climate import tonnes_co2e
from chargebench.calc.cylinder import FillLimit, fill_limit, gross_limit, room_left
from chargebench.calc.flammability import charge_limit, max_charge_for_area, minimum_floor_area
from chargebench.calc.leak_flow import Gas, as_refrigerant, mass_rate, smallest_leak
from chargebench.calc.leak_rate import annualizing
from chargebench.calc.pressure_test import ideal_pressure
from chargebench.fluids import refrigerant
from chargebench.units import Kind, Q, Quantity, read
from tests.outside.check import pint_unit
from tests.outside.of_fluids import WATER_25C
from tests.outside.rows import Row

ATMOSPHERE = Q(101_325, "Pa")
FLOW = "Pa * m**3 / s"
# IPCC AR4, for rows that name no potential and no refrigerant of the catalogue.
_AR4 = {"R23": 14_800.0, "R227ea": 3_220.0}
# Viscosities [Pa s] at 20 °C from memory, with molar masses [g/mol].
_AIRS = {"N2": (28.013, 1.76e-5), "air": (28.96, 1.82e-5)}
_TYPED = {
    "1 psi": (Kind.PRESSURE, "1 psia"),
    "1 atm": (Kind.PRESSURE, "1 atm"),
    "1 inHg conventional": (Kind.PRESSURE, "1 inHg(a)"),
    "1 bar": (Kind.PRESSURE, "1 bar(a)"),
    "1 micron Hg": (Kind.PRESSURE, "1 micron"),
    "1 lb": (Kind.MASS, "1 lb"),
    "1 oz avoirdupois": (Kind.MASS, "1 oz"),
}


def number(row: Row, pattern: str) -> float:
    """The number a pattern finds in the row's condition."""
    found = re.search(pattern, row["condition"])
    assert found is not None, row
    return float(found[1])


def _leak_rate(row: Row) -> float:
    if "one month" in row["condition"]:
        added, full, days = 5.0, 100.0, round(365 / 12)
    else:
        added, full = number(row, r"added ([\d.]+)"), number(row, r"charge ([\d.]+)")
        days = round(number(row, r"(\d+) days"))
    return float(annualizing(Q(added, "lb"), Q(full, "lb"), days).m_as("percent"))


def _limit(row: Row) -> FillLimit:
    """Fill limit at 80 %; a relative density where the row has one, else that of water."""
    gravity = number(row, r"SG ([\d.]+)") if "SG" in row["condition"] else 1.0
    return fill_limit(
        water_capacity=Q(number(row, r"WC ([\d.]+)"), "lb"),
        refrigerant_liquid_density_25C=gravity * WATER_25C,
        liquid_density_hot=gravity * WATER_25C,
        rule=rules.load("us-federal").cylinder,
        refrigerant="",
    )


def _gross(row: Row) -> float:
    tare = Q(number(row, r"TW ([\d.]+)"), "lb")
    return float(gross_limit(tare=tare, limit=_limit(row)).m_as("lb"))


def _room(row: Row) -> float:
    content = Q(number(row, r"now ([\d.]+)") - number(row, r"TW ([\d.]+)"), "lb")
    return float(room_left(limit=_limit(row), content=content).m_as("lb"))


def _nitrogen(row: Row) -> float:
    found = re.match(r"([\d.]+) (psig|bar g) at ([\d.]+) ([FC]) -> ([\d.]+) ", row["condition"])
    assert found is not None, row
    gauge, unit, start, scale, end = found.groups()
    air, unit = (Q(14.7, "psi"), "psi") if unit == "psig" else (ATMOSPHERE, "bar")
    ends = ideal_pressure(
        start_pressure=Q(float(gauge), unit) + air,
        start_temperature=Q(float(start), f"deg{scale}"),
        end_temperature=Q(float(end), f"deg{scale}"),
    )
    return float((ends - air).m_as(unit))


def _tube(row: Row) -> float:
    leak = smallest_leak(
        expanded_uncertainty=Q(number(row, r"([\d.]+) bar"), "bar"),
        volume=Q(number(row, r"tube ([\d.]+) L"), "L"),
        time=Q(number(row, r"in ([\d.]+) days"), "day"),
    )
    return float(leak.m_as(FLOW))


def _leak_of_mass(row: Row) -> float:
    """The flow at 0 °C that loses the row's mass in its time."""
    a_year = mass_rate(
        leak=Q(1, FLOW), molar_mass=refrigerant(row["refrigerant"]).molar_mass,
        temperature=Q(0, "degC"),
    ).m_as("g/year")  # fmt: skip
    return number(row, r"([\d.]+) g in") / number(row, r"in ([\d.]+) years") / float(a_year)


def _helium(row: Row) -> float:
    """Flow of nitrogen or air for one of helium, through the same leak in one regime."""
    molar, viscosity = _AIRS[row["refrigerant"]]
    inside, leak, room = Q(5e5, "Pa"), Q(1e-6, FLOW), Q(20, "degC")
    gases = (
        Gas(Q(mass, "g/mol"), inside, ATMOSPHERE, Q(thick, "Pa * s"))
        for mass, thick in ((4.0026, 1.96e-5), (molar, viscosity))
    )
    flows = as_refrigerant(
        leak=leak, test_gas=next(gases), refrigerant=next(gases), temperature=room
    )
    same = mass_rate(leak=leak, molar_mass=Q(molar, "g/mol"), temperature=room)
    return float((getattr(flows, row["condition"]) / same).m_as(""))


def _room_charge(row: Row) -> float:
    most = max_charge_for_area(
        lfl=Q(0.307, "kg/m**3"),
        floor_area=Q(number(row, r"A=([\d.]+) m2"), "m**2"),
        height=Q(0.6, "m"),
        form=rules.load("generic").flammability.room_form("2018"),
    )
    return float(most.m_as("kg"))


def _floor(row: Row) -> float:
    area = minimum_floor_area(
        charge=Q(number(row, r"charge ([\d.]+) kg"), "kg"),
        lfl=Q(0.307, "kg/m**3"),
        height=Q(0.6, "m"),
        form=rules.load("generic").flammability.room_form("2018"),
    )
    return float(area.m_as("m**2"))


def _appliance_limit(row: Row) -> float:
    known = refrigerant(row["refrigerant"])
    limit = charge_limit(
        refrigerant=known.name,
        safety_class=known.safety_class,
        lfl=None if known.lfl is None else known.lfl.value,
        cabinet="self-contained with doors or drawers",
        rule_set=rules.load("generic"),
    )
    assert limit is not None
    return float(limit.mass.m_as("g"))


def _tonnes_of_a_kilogram(row: Row) -> float:
    if "GWP" in row["condition"]:
        gwp = number(row, r"GWP (\d+)")
    elif row["refrigerant"] in _AR4:
        gwp = _AR4[row["refrigerant"]]
    else:
        gwp = float(refrigerant(row["refrigerant"]).gwp["AR4"].value)
    return float(tonnes_co2e(Q(1, "kg"), gwp).m_as("t"))


def _chiller_rise(row: Row) -> float:
    rise = Q(number(row, r"of ([\d.]+) inHg"), "inHg")
    return float(rise.m_as(row["unit"]))


def _factor(row: Row) -> float:
    if row["condition"] in _TYPED:
        kind, text = _TYPED[row["condition"]]
        return float(read(kind, text).quantity.m_as(row["unit"]))
    amount, unit = row["condition"].split(" ")
    quantity: Quantity = Q(float(amount), pint_unit(unit))
    return float(quantity.m_as(row["unit"]))


OURS: dict[str, Callable[[Row], float | str]] = {
    "annualizing leak rate": _leak_rate,
    "projected leak": _leak_rate,
    "maximum gross weight": _gross,
    "maximum refrigerant in cylinder": lambda row: float(_limit(row).mass.m_as("lb")),
    "remaining capacity": _room,
    "nitrogen pressure after temperature change": _nitrogen,
    "standing vacuum limit (chillers)": _chiller_rise,
    "leak rate q=V dp/dt": _tube,
    "leak that loses a mass": _leak_of_mass,
    "helium to nitrogen leak ratio": _helium,
    "helium to air leak ratio": _helium,
    "maximum charge in a room": _room_charge,
    "minimum floor area": _floor,
    "charge limit, IEC 60335-2-89": _appliance_limit,
    "charge at CO2e threshold": lambda r: number(r, r"([\d.]+) t") / _tonnes_of_a_kilogram(r),
    "charge at 5 t CO2e (rounded)": lambda r: number(r, r"([\d.]+) t") / _tonnes_of_a_kilogram(r),
    "CO2e of 1 kg": _tonnes_of_a_kilogram,
    "unit conversion": _factor,
}
