import pytest

from chargebench.calc.hose import hose_content, share_of_charge
from chargebench.errors import OutsideDomain
from chargebench.units import Q


def test_that_a_hose_of_given_volume_needs_no_bore() -> None:
    # 48 mL of liquid R290 at 25 °C is 23.8 g by 492.4 kg/m3 (48.26 mL, CoolProp 8.0.0).
    found = hose_content(volume=Q(48.26, "mL"), density=Q(492.4, "kg/m**3"))
    assert found.m_as("g") == pytest.approx(23.8, abs=0.05)


# By hand: 0.25 g of a charge of half a gram is half of it.
def test_that_the_smallest_charge_has_its_share_too() -> None:
    assert share_of_charge(hose=Q(0.25, "g"), nameplate=Q(0.5, "g")).m_as("percent") == 50


@pytest.mark.parametrize("grams", [0, -85])
def test_that_a_share_of_no_charge_is_refused(grams: float) -> None:
    with pytest.raises(OutsideDomain, match="nameplate charge above zero"):
        share_of_charge(hose=Q(1, "g"), nameplate=Q(grams, "g"))
