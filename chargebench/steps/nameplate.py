"""Nameplate: the limits its charge stands under, and the content assumed at first sight."""

from chargebench.calc import flammability
from chargebench.ledger import Transfer
from chargebench.steps import limits
from chargebench.steps.case import NOT_WORKED, Case, Figure, Worked
from chargebench.steps.weigh_in import tolerance
from chargebench.words import say


def work_out(case: Case) -> Worked:
    """Charge limit, room, and what a full release would come to."""
    charge = case.nameplate("charge")
    if charge is None or case.refrigerant is None:
        return NOT_WORKED
    nameplate = charge.quantity.to("g")
    allowed, source, mark = tolerance(case)
    figures = [Figure("tolerance", "Charge tolerance", allowed, source=source, mark=mark)]
    limit = charge_limit(case)
    if limit is not None:
        figures.append(
            Figure(
                "charge-limit",
                say("Charge limit, {title}", title=limit.title),
                limit.mass.to("g"),
                source=f"{limit.by.source}, {limit.by.place}",
                mark="MEMORY" if limit.unverified else limit.by.mark,
            )
        )
    figures += limits.room_figures(case, nameplate)
    figures += limits.climate_figures(case, nameplate)
    return Worked(tuple(figures), (), limit)


def charge_limit(case: Case) -> flammability.ChargeLimit | None:
    """Charge limit of the rule set for this refrigerant and type; None where none is set."""
    if case.refrigerant is None:
        return None
    lfl = case.refrigerant.lfl
    return flammability.charge_limit(
        refrigerant=case.refrigerant.name,
        safety_class=case.refrigerant.safety_class,
        lfl=None if lfl is None else lfl.value,
        cabinet=case.equipment.text("cabinet"),
        rule_set=case.rule_set,
        made_on=case.equipment.date("installed") or case.today,
    )


def refusals(case: Case) -> dict[str, str]:
    """What a nameplate is refused for, beside wrong and missing fields."""
    wanted = {"charge": "a charge", "room_area": "a floor area", "room_height": "a height"}
    return {
        key: say("Expected {what} above zero.", what=what)
        for key, what in wanted.items()
        if (typed := case.step("nameplate").reading(key)) is not None and typed.value <= 0
    }


def movements(case: Case) -> tuple[Transfer, ...]:
    """At first sight the content is assumed to be the nameplate's, marked as assumed."""
    reading = case.step("nameplate").reading("charge")
    name = case.step("nameplate").text("refrigerant")
    if case.equipment_seen or reading is None or not name:
        return ()
    place = f"equipment:{case.equipment_id}"
    return (Transfer("outside", place, name, reading.mass_mg, f"assumed: {reading.text}"),)
