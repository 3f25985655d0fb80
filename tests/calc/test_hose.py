import csv
from pathlib import Path

import pytest

from chargebench.calc.hose import hose_content, hose_volume, share_of_charge
from chargebench.errors import OutsideDomain
from chargebench.fluids import saturation
from chargebench.units import Q

# Volumes by geometry; densities by CoolProp 8.0.0 (COMPUTED, the equations of state named there).
TABLE = Path(__file__).parents[1] / "checkdata" / "hose_residual.csv"
ROWS = list(csv.DictReader(TABLE.read_text(encoding="utf-8").splitlines()))
IDS = [f"{r['refrigerant']}-{r['id_mm']}mm-{r['length_in']}in-{r['t_C']}C" for r in ROWS]


@pytest.mark.parametrize("row", ROWS, ids=IDS)
def test_that_a_hose_holds_what_geometry_and_density_give(row: dict[str, str]) -> None:
    volume = hose_volume(
        length=Q(float(row["length_in"]), "inch"), bore=Q(float(row["id_mm"]), "mm")
    )
    assert volume.m_as("mL") == pytest.approx(float(row["volume_mL"]), rel=1e-5)
    curve, temperature = saturation(row["refrigerant"]), Q(float(row["t_C"]), "degC")
    liquid = hose_content(volume=volume, density=curve.liquid_density(temperature))
    vapour = hose_content(volume=volume, density=curve.vapour_density(temperature))
    assert liquid.m_as("g") == pytest.approx(float(row["liquid_g"]), rel=2e-4)
    assert vapour.m_as("g") == pytest.approx(float(row["sat_vapour_g"]), rel=2e-4)
    share = share_of_charge(hose=liquid, nameplate=Q(110, "g"))
    assert share.m_as("percent") == pytest.approx(float(row["liq_pct_of_110g"]), rel=2e-4)


def test_that_a_hose_of_given_volume_needs_no_bore() -> None:
    # 48 mL of liquid R290 at 25 °C is 23.8 g by 492.4 kg/m3 (48.26 mL, CoolProp 8.0.0).
    found = hose_content(volume=Q(48.26, "mL"), density=Q(492.4, "kg/m**3"))
    assert found.m_as("g") == pytest.approx(23.8, abs=0.05)


@pytest.mark.parametrize("grams", [0, -85])
def test_that_a_share_of_no_charge_is_refused(grams: float) -> None:
    with pytest.raises(OutsideDomain, match="nameplate charge above zero"):
        share_of_charge(hose=Q(1, "g"), nameplate=Q(grams, "g"))
