"""What connecting gauges to a critically charged sealed system would cost, before it is done."""

from chargebench.calc.charge import hose_content, hose_volume, share_of_charge
from chargebench.calc.readings import connection_cost
from chargebench.errors import ChargebenchError
from chargebench.fluids import saturation
from chargebench.steps.case import Case
from chargebench.steps.weigh_line import ROOM
from chargebench.steps.weigh_line import hose_volume as given_volume
from chargebench.units import Q, Quantity, brief
from chargebench.words import say

LENGTH, BORE = Q(36, "inch"), Q(4.8, "mm")
ASSUMED = "a 36 in hose of 4.8 mm bore, for none is given at the weigh-in"
GIVEN = "the hose given at the weigh-in"


def sentences(case: Case, step: str) -> tuple[str, ...]:
    """Grams and share of the charge in one hose; nothing once gauges are connected."""
    charge = case.nameplate("charge")
    if (
        not case.equipment.yes("factory_sealed")
        or case.step(step).yes("tapped")
        or case.refrigerant is None
        or charge is None
        or charge.quantity.m_as("g") <= 0
    ):
        return ()
    volume, which = _volume(case)
    curve = saturation(case.refrigerant.name)
    at = case.step(step).quantity_or("ambient", ROOM)
    try:
        vapour = hose_content(volume=volume, density=curve.vapour_density(at))
        liquid = hose_content(volume=volume, density=curve.liquid_density(at))
    except ChargebenchError:
        return ()
    cost = connection_cost(hose=vapour, nameplate=charge.quantity, system=case.units)
    share = share_of_charge(hose=liquid, nameplate=charge.quantity)
    says = say(
        "{sentence} Reckoned for {which}, filled with saturated vapour at {at}; "
        "with liquid in it {liquid}, {share:.1f} % of the charge.",
        sentence=cost.sentence,
        which=which,
        at=brief(at.to("degC"), case.units),
        liquid=case.shown(liquid),
        share=share.m_as("percent"),
    )
    return (says,)


def _volume(case: Case) -> tuple[Quantity, str]:
    for line in case.step("weigh_in").lines("lines"):
        found = given_volume(line)
        if found is not None:
            return found[0], GIVEN
    return hose_volume(length=LENGTH, bore=BORE), ASSUMED
