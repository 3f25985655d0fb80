"""Values of the packages chemicals and iapws: other fits to other data, other program texts.

VDI Heat Atlas (2010), section D3.1; McGarry (1983) and Poling, Prausnitz & O'Connell (2001) for
Wagner's and Antoine's equations; Perry's Handbook (2007) for DIPPR's equation 101. Nothing here
comes from this program or from CoolProp. How near each fit comes is a property of the fit.
"""

from typing import Any

import chemicals
import iapws.iapws97
from chemicals import iapws95_Psat, vapor_pressure, volume
from iapws import _iapws

CAS = {
    "R290": "74-98-6", "R600a": "75-28-5", "R1270": "115-07-1", "R170": "74-84-0",
    "R717": "7664-41-7", "R744": "124-38-9", "R32": "75-10-5", "R125": "354-33-6",
    "R134a": "811-97-2", "R143a": "420-46-2", "R152a": "75-37-6", "R1234yf": "754-12-1",
    "R1234ze(E)": "29118-24-9", "R22": "75-45-6", "R12": "75-71-8", "R227ea": "431-89-0",
    "R1336mzz(E)": "66711-86-2", "R115": "76-15-3", "R600": "106-97-8", "R601a": "78-78-4",
    "R13I1": "2314-97-8",
}  # fmt: skip
_TABLES = {
    "VDI": "Psat_data_VDI_PPDS_3",
    "Wagner, McGarry": "Psat_data_WagnerMcGarry",
    "Wagner, Poling": "Psat_data_WagnerPoling",
    "DIPPR": "Psat_data_Perrys2_8",
    "Antoine": "Psat_data_AntoinePoling",
}


def _fit(table: Any, name: str) -> Any:
    return table.loc[CAS[name]] if CAS[name] in table.index else None


def vapour_pressure(name: str, kelvin: float, equation: str) -> float | None:
    """Pressure [Pa] by one of the fits; None where it has none or its range ends.

    Three terms of Antoine leave the printed tables by up to 2.5 % at the ends of their ranges,
    where the equations of state meet the papers' rows: not asked there.
    """
    fit = _fit(getattr(vapor_pressure, _TABLES[equation]), name)
    if fit is None or not getattr(fit, "Tmin", 0) <= kelvin <= getattr(fit, "Tmax", 1e9):
        return None
    if equation in ("VDI", "Wagner, Poling"):
        return float(chemicals.Wagner(kelvin, fit.Tc, fit.Pc, fit.A, fit.B, fit.C, fit.D))
    if equation == "DIPPR":
        return float(chemicals.EQ101(kelvin, fit.C1, fit.C2, fit.C3, fit.C4, fit.C5))
    if equation == "Antoine":
        inside = fit.Tmin + 5 <= kelvin <= fit.Tmax - 5
        return float(chemicals.Antoine(kelvin, fit.A, fit.B, fit.C)) if inside else None
    return float(chemicals.Wagner_original(kelvin, fit.Tc, fit.Pc, fit.A, fit.B, fit.C, fit.D))


def liquid_density(name: str, kelvin: float) -> float | None:
    """Density [kg/m3] of boiling liquid by the VDI Heat Atlas, not next to the critical point."""
    fit = _fit(volume.rho_data_VDI_PPDS_2, name)
    if fit is None or kelvin > 0.98 * fit.Tc:
        return None
    return float(chemicals.EQ116(kelvin, fit.Tc, fit.rhoc, fit.A, fit.B, fit.C, fit.D))


def molar_mass(name: str) -> float:
    """Molar mass [g/mol] from atomic weights."""
    if name == "R1336mzz(E)":  # not in the package's list: CF3CH=CHCF3
        return float(chemicals.molecular_weight({"C": 4, "H": 2, "F": 6}))
    return float(chemicals.MW(CAS[name]))


def warming(name: str, edition: str) -> float | None:
    """Hundred-year potential in the IPCC table of an edition, 2007, 2014 or 2021."""
    found = chemicals.GWP(CAS[name], method=f"IPCC ({edition}) 100yr")
    return None if found is None else float(found)


def lower_limit(name: str) -> float:
    """Lower flammability limit [percent by volume] in NFPA 497 (2008)."""
    return 100 * float(chemicals.LFL(CASRN=CAS[name], method="NFPA 497 (2008)"))


def water_pressure(kelvin: float, formulation: str) -> float:
    """Pressure [Pa] at which water boils, or ice sublimes, by an IAPWS formulation."""
    if formulation == "IAPWS-95":
        return float(iapws95_Psat(kelvin))
    of_temperature = {"IAPWS97": iapws.iapws97._PSat_T, "R14-08": _iapws._Sublimation_Pressure}
    return float(of_temperature[formulation](kelvin)) * 1e6
