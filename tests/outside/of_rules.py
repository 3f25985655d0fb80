"""What this program's rule sets and their calculations say at the boundaries that laws print."""

from collections.abc import Callable
from datetime import date

from chargebench import rules
from chargebench.calc.climate import check_interval
from chargebench.calc.cylinder import fill_limit, tare_loss
from chargebench.calc.evacuation import standard_rules
from chargebench.calc.flammability import charge_limit
from chargebench.calc.leak_rate import Circuit, applies, chronic, inspection, threshold
from chargebench.calc.recovery import Requirement, is_small_appliance, release_allowed, required
from chargebench.fluids import refrigerant
from chargebench.rules import LeakRate
from chargebench.steps.evacuation import _as_decay_rule
from chargebench.units import Q, Quantity
from tests.calc.leaks import additions
from tests.outside.rows import Row

_AFTER_ALL = date(2026, 9, 1)  # every rule of the sets is in force


def _parts(row: Row) -> list[str]:
    return row["condition"].split("; ")


def _mass(text: str) -> Quantity:
    amount, unit = text.split(" ")
    mass: Quantity = Q(float(amount), unit)
    return mass


def _made(text: str) -> date | None:
    day = text.removeprefix("made ")
    return None if day == "unknown" else date.fromisoformat(day)


def _word(found: object) -> str:
    return "yes" if found else "no"


def _american_leaks() -> LeakRate:
    found = rules.load("us-federal").leak_rate
    assert found is not None
    return found


def _required(row: Row, *, small: bool) -> Requirement:
    first, charge, made = _parts(row)
    table = rules.load("us-federal").recovery
    assert table is not None
    found = required(
        pressure_class="medium" if small else first,
        full_charge=_mass(charge),
        small_appliance=small,
        machine_made_on=_made(made),
        compressor_works=first != "compressor does not work",
        rule=table,
    )
    assert found is not None
    return found


def _level(row: Row) -> float:
    level = _required(row, small=False).level
    assert level is not None
    return float(level.quantity.m_as(row["unit"]))


def _absolute_level(row: Row) -> float:
    return float(_required(row, small=False).absolute_pressure.m_as(row["unit"]))


def _share(row: Row) -> float:
    share = _required(row, small=True).share
    assert share is not None
    return float(share.quantity.m_as("percent"))


def _small(row: Row) -> str:
    charge, sealed = _parts(row)
    table = rules.load("us-federal").recovery
    assert table is not None
    factory = sealed == "factory sealed"
    return _word(is_small_appliance(charge=_mass(charge), factory_sealed=factory, rule=table))


def _release(row: Row) -> str:
    american = rules.load("us-federal")
    cabinet = row["condition"]
    return _word(
        release_allowed(row["refrigerant"], cabinet=cabinet, on=_AFTER_ALL, rule_set=american)
    )


def _threshold(row: Row) -> float:
    key, category = _parts(row)
    return float(threshold(_american_leaks().regulation(key), category).quantity.m_as("percent"))


def _regulation(row: Row) -> str:
    known = refrigerant(row["refrigerant"])
    one = Circuit(
        full_charge=_mass(row["condition"]),
        category="commercial refrigeration",
        ozone_depleting=known.contains_hcfc_or_cfc,
        hfc=known.contains_hfc,
        solely_ozone_depleting=known.contains_hcfc_or_cfc and not known.contains_hfc,
        gwp=float(known.gwp["AR4"].value),
        excluded_subsector=False,
    )
    return ", ".join(rule.key for rule in applies(one, _american_leaks(), _AFTER_ALL)) or "none"


def _inspection(row: Row) -> str:
    category, charge = _parts(row)
    ozone = _american_leaks().regulation("82.157")
    found = inspection(ozone, category=category, full_charge=_mass(charge))
    return "none" if found is None else found.every.text


def _chronic(row: Row) -> str:
    added, charge = _parts(row)
    past = additions((_AFTER_ALL, _mass(added).m_as("lb")))
    ozone = _american_leaks().regulation("82.157")
    return _word(chronic(past, _mass(charge), _AFTER_ALL.year, ozone).is_chronic)


def _ratio(row: Row) -> float:
    limit = fill_limit(
        water_capacity=Q(100, "kg"),
        refrigerant_liquid_density_25C=None,
        liquid_density_hot=None,
        rule=rules.load("us-federal").cylinder,
        refrigerant=row["refrigerant"],
    )
    assert limit.printed is not None
    return float(limit.printed.m_as("kg"))


def _tare(row: Row) -> str:
    stamped, found = _parts(row)
    loss = tare_loss(
        stamped=_mass(stamped), found=_mass(found), rule=rules.load("us-federal").cylinder
    )
    return _word(loss.blocks_filling)


def _listed_limit(row: Row) -> float | str:
    name, cabinet, made = _parts(row)
    known = refrigerant(row["refrigerant"])
    limit = charge_limit(
        refrigerant=known.name,
        safety_class=known.safety_class,
        lfl=None if known.lfl is None else known.lfl.value,
        cabinet=cabinet,
        rule_set=rules.load(name),
        made_on=_made(made),
    )
    return "none" if limit is None else float(limit.mass.m_as("g"))


def _interval(row: Row) -> float | str:
    name, amount, *more = _parts(row)
    climate = rules.load(name).climate
    assert climate is not None
    mass, by_mass = _mass(amount), amount.endswith(" kg")
    nothing = Q(0, "kg")
    found = check_interval(
        co2e=nothing if by_mass else mass,
        hfo_mass=mass if by_mass else nothing,
        charge=Q(10, "kg"),
        rule=climate,
        hermetic_labelled="hermetic and labelled" in more,
        residential=False,
        detection="leak detection" in more,
    )
    return "none" if found.every is None else float(found.every.value)


def _vacuum(row: Row) -> str:
    """The words the rule gives readings such as `250 to 1000; 10 min; 250 micron_Hg; ...`."""
    key, minutes, start, end = _parts(row)
    rule = next(rule for rule in rules.load("generic").evacuation.pass_rules if rule.key == key)
    pascals = [_mass(start).m_as("Pa"), _mass(end).m_as("Pa")]
    results = standard_rules([0, _mass(minutes).m_as("min")], pascals, [_as_decay_rule(rule)])
    return str(results[0].word)


OURS: dict[str, Callable[[Row], float | str]] = {
    "recovery level, table 1": _level,
    "recovery level as absolute pressure": _absolute_level,
    "recovery share of a small appliance": _share,
    "small appliance": _small,
    "release to the air allowed": _release,
    "leak rate threshold": _threshold,
    "leak repair regulation": _regulation,
    "leak inspection": _inspection,
    "chronic leaker": _chronic,
    "printed filling ratio": _ratio,
    "lost tare blocks filling": _tare,
    "appliance charge limit": _listed_limit,
    "leak check interval": _interval,
    "vacuum rule": _vacuum,
}
