"""What the fields can not say of a rule set: words from a list, rows that must be there."""

from chargebench.rules.model import RuleSet
from chargebench.rules.place import Place
from chargebench.words import joined, say

PRESSURE_CLASSES = ("very high", "high", "medium", "low")
GWP_SETS = ("AR4", "AR5", "AR6", "EU-2024")


def check(rule_set: RuleSet, place: Place) -> None:
    """Refuse a rule set whose parts do not fit together."""
    _one_of(rule_set.gwp.set.value, GWP_SETS, place / "gwp" / "set" / "value")
    _recovery(rule_set, place / "recovery")
    _leak_rate(rule_set, place / "leak_rate" / "regulations")
    if rule_set.climate is not None:
        for number, row in enumerate(rule_set.climate.checks):
            here = place / "climate" / "checks" / number / "counts"
            _one_of(row.counts, ("CO2e", "HFO mass"), here)
    _limits(rule_set, place / "flammability")


def _one_of(value: str, allowed: tuple[str, ...], place: Place) -> None:
    if value not in allowed:
        place.refuse(
            say("“{value}” is not one of {allowed}.", value=value, allowed=joined(", ", allowed))
        )


def _recovery(rule_set: RuleSet, place: Place) -> None:
    if rule_set.recovery is None:
        return
    for number, level in enumerate(rule_set.recovery.levels):
        here = place / "levels" / number
        _one_of(level.pressure_class, PRESSURE_CLASSES, here / "pressure_class")
        _one_of(level.measure, ("vacuum", "absolute"), here / "measure")
    for name in PRESSURE_CLASSES:
        if all(level.pressure_class != name for level in rule_set.recovery.levels):
            (place / "levels").refuse(say("no row for pressure class “{name}”.", name=name))


def _leak_rate(rule_set: RuleSet, place: Place) -> None:
    if rule_set.leak_rate is None:
        return
    for number, regulation in enumerate(rule_set.leak_rate.regulations):
        here = place / number
        _one_of(regulation.scope, ("ozone-depleting", "HFC or GWP"), here / "scope")
        counted = here / "inspected_from"
        _one_of(regulation.inspected_from, ("exceedance", "follow-up"), counted)
        if "other" not in regulation.thresholds:
            (here / "thresholds").refuse("expected a row “other” for categories not named.")
        if regulation.scope == "HFC or GWP" and regulation.gwp_above is None:
            (here / "gwp_above").refuse("missing.")


def _limits(rule_set: RuleSet, place: Place) -> None:
    for number, limit in enumerate(rule_set.flammability.limits):
        if (limit.mass is None) == (limit.times_lfl is None):
            (place / "limits" / number).refuse("expected either mass or times_lfl.")
    if not rule_set.flammability.room_forms:
        (place / "room_forms").refuse("expected at least one form.")
