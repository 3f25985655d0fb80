"""Limits a charge stands under: in its room, by flammability and toxicity, and by climate."""

from decimal import Decimal

from chargebench.calc import climate, flammability
from chargebench.calc.compare import above
from chargebench.rules import Cited
from chargebench.rules.duties import ServiceBan
from chargebench.steps.case import Case, Figure
from chargebench.units import Q, Quantity
from chargebench.words import say

VIRGIN = "virgin"


def room_volume(case: Case) -> Quantity | None:
    """Volume of the room as read today, else as registered; None where it is not known or zero."""
    area, height = case.nameplate("room_area"), case.nameplate("room_height")
    if area is None or height is None:
        return None
    volume: Quantity = (area.quantity * height.quantity).to("m**3")
    return volume if volume.magnitude > 0 else None


def room_figures(case: Case, charge: Quantity) -> list[Figure]:
    """What a full release would come to in the room, and what its floor allows."""
    assert case.refrigerant is not None
    volume = room_volume(case)
    if volume is None:
        return []
    inside = flammability.concentration_if_leaked(charge=charge, room_volume=volume)
    figures: list[Figure] = []
    lfl, practical = case.refrigerant.lfl, case.refrigerant.practical_limit
    rule = case.rule_set.flammability
    if lfl is not None:
        share = flammability.share_of_lfl(concentration=inside, lfl=lfl.value)
        figures.append(
            Figure(
                "share-of-lfl",
                "If all leaked into the room, share of the lower flammable limit",
                share.to("percent"),
                limit=rule.concentration_share.quantity.to("percent"),
                source=_source(rule.concentration_share),
                mark=rule.concentration_share.mark,
            )
        )
        figures += _floor(case, charge, lfl.value)
    if practical is not None:
        figures.append(
            Figure(
                "practical-limit",
                "If all leaked into the room",
                inside,
                limit=practical.value,
                source=say("{source}, practical limit", source=practical.source),
                mark=practical.mark,
            )
        )
    return figures


def _floor(case: Case, charge: Quantity, lfl: Quantity) -> list[Figure]:
    """Most charge for the floor area; only above the charge from which a room rule holds."""
    rule = case.rule_set.flammability
    smallest, *_ = flammability.charge_steps(lfl, rule)
    area = case.nameplate("room_area")
    if not above(charge, smallest) or area is None:
        return []
    height = case.equipment.quantity_or("release_height", rule.heights.floor.quantity)
    form = rule.room_forms[0]
    most = flammability.max_charge_for_area(
        lfl=lfl, floor_area=area.quantity, height=height, form=form
    )
    return [
        Figure(
            "floor-area",
            say("Charge against the most for this floor area ({key} form)", key=form.key),
            charge,
            limit=most,
            source=_source(form.coefficient),
            mark=form.coefficient.mark,
        )
    ]


def gwp(case: Case) -> Decimal | None:
    """Warming potential in the set the rule set counts by; None where the set has none."""
    assert case.refrigerant is not None
    figure = case.refrigerant.gwp.get(case.rule_set.gwp.set.value)
    return None if figure is None else figure.value


def climate_figures(case: Case, charge: Quantity) -> list[Figure]:
    """CO2 equivalent of the charge, and how often the rules want it checked for leaks."""
    rule, potential = case.rule_set.climate, gwp(case)
    if rule is None or potential is None:
        return []
    assert case.refrigerant is not None
    tonnes = climate.tonnes_co2e(charge, potential)
    set_source = _source(case.rule_set.gwp.set)
    figures = [
        Figure(
            "co2e",
            "CO2 equivalent",
            say("{tonnes:.2f} t", tonnes=tonnes.m_as("t")),
            source=set_source,
        )
    ]
    interval = climate.check_interval(
        co2e=tonnes if case.refrigerant.contains_hfc else Q(0, "t"),
        hfo_mass=_hfo(case, charge),
        charge=charge,
        rule=rule,
        hermetic_labelled=bool(case.equipment.yes("hermetic_labelled")),
        detection=bool(case.equipment.yes("leak_detection")),
    )
    every = interval.every
    figures.append(
        Figure(
            "leak-check",
            "Leak check owed every",
            "none owed" if every is None else every.text,
            source=set_source if every is None else _source(every),
            mark="" if every is None else every.mark,
        )
    )
    return figures


def _hfo(case: Case, charge: Quantity) -> Quantity:
    """Mass of unsaturated fluorocarbons in a charge."""
    assert case.refrigerant is not None
    parts = zip(case.refrigerant.composition, case.refrigerant.fluids, strict=True)
    percent = sum(float(part.mass_percent) for part, fluid in parts if fluid.family == "HFO")
    mass: Quantity = charge * (percent / 100)
    return mass


def service_ban(case: Case) -> ServiceBan | None:
    """Ban on servicing with what was charged, where the rule set has one."""
    rule, potential = case.rule_set.climate, gwp(case) if case.refrigerant else None
    if rule is None or potential is None:
        return None
    origin = case.step("weigh_in").text("origin")
    if not origin:
        return None
    cooling = case.equipment.text("category") == "comfort cooling"
    return climate.service_ban(
        gwp=potential,
        use="air conditioning" if cooling else "refrigeration",
        on=case.today,
        rule=rule,
        reclaimed=origin != VIRGIN,
    )


def _source(figure: Cited) -> str:
    return f"{figure.source}, {figure.place}"
