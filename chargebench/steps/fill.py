"""How far a cylinder of the register may be filled, and what filling it asks for."""

import math
from typing import Any

from chargebench.calc import cylinder
from chargebench.calc.compare import above
from chargebench.calc.cylinder import FillLimit
from chargebench.calc.scale import COVERAGE, net_uncertainty
from chargebench.errors import ChargebenchError, OutsideDomain
from chargebench.fluids import saturation
from chargebench.rules import Cylinders, RuleSet
from chargebench.steps.form import NOTHING, Answers
from chargebench.units import Q, Quantity, System, from_mg, mg, shown
from chargebench.words import say

COARSE_SCALE = Q(10, "g")
# Cylinders come in a few sizes; each is worked out once. The rule is kept, so that its id stays.
_LIMITS: dict[tuple[float, Any, str, int], tuple[Cylinders, FillLimit | None]] = {}
_LIMITS_MOST = 1_000


def fill_limit(row: Answers, rule_set: RuleSet) -> FillLimit | None:
    """Fill limit of a cylinder; None where its water capacity or its content is not known.

    A mixed-waste cylinder has no density of its own and so no limit that could be trusted here.
    """
    capacity = row.quantity("water_capacity")
    name = row.text("refrigerant")
    if capacity is None or not name or row.text("contents") == "mixed waste":
        return None
    rule = rule_set.cylinder
    key = (capacity.magnitude, capacity.units, name, id(rule))
    if key not in _LIMITS:
        if len(_LIMITS) >= _LIMITS_MOST:
            _LIMITS.clear()
        _LIMITS[key] = rule, _limit(capacity, name, rule)
    return _LIMITS[key][1]


def _limit(capacity: Quantity, name: str, rule: Cylinders) -> FillLimit | None:
    try:
        return cylinder.fill_limit(
            water_capacity=capacity,
            refrigerant_liquid_density_25C=liquid_density(name, rule.fill_temperature.quantity),
            liquid_density_hot=liquid_density(name, rule.hot_temperature.quantity),
            rule=rule,
            refrigerant=name,
        )
    except ChargebenchError:
        return None  # no liquid at these temperatures and no printed ratio: none can be given


def liquid_density(name: str, temperature: Quantity) -> Quantity | None:
    """Saturated liquid density; None above the critical point."""
    try:
        return saturation(name).liquid_density(temperature)
    except OutsideDomain:
        return None


def tare_mg(row: Answers) -> int | None:
    """Tare as weighed empty, else as stamped."""
    found = row.mass_mg("tare_found")
    return row.mass_mg("tare") if found is None else found


def overfull(
    cylinder_id: str,
    row: Answers,
    content_mg: int,
    added_mg: int,
    rule_set: RuleSet,
    units: System = "SI",
) -> str:
    """Sentence of how far a filling goes over a cylinder's limit; empty where it does not."""
    limit = fill_limit(row, rule_set)
    if limit is None or added_mg <= 0:
        return ""
    after = from_mg(content_mg + added_mg)
    if not above(after, limit.mass):
        return ""
    over: Quantity = after - limit.mass
    return say(
        "{cylinder_id} would hold {after}, over its limit of {limit} ({by}) by "
        "{over}; use another cylinder, or give the reason to fill it above the "
        "limit.",
        cylinder_id=cylinder_id,
        after=shown(after, units),
        limit=shown(limit.mass, units),
        by=limit.by,
        over=shown(over, units),
    )


def unfillable(cylinder_id: str, row: Answers) -> str:
    """Why a cylinder may not be filled at all; empty where it may."""
    if row.yes("refillable") is False:
        return say(
            "{cylinder_id} is non-refillable; recover into a refillable recovery cylinder.",
            cylinder_id=cylinder_id,
        )
    return ""


def net_uncertainty_mg(scale: Answers | None) -> int:
    """Expanded uncertainty (k = 2) of a net mass by this scale, in milligrams.

    A scale whose resolution nobody has entered is taken as a coarse one, 10 g (common practice
    for charging scales; no source).
    """
    resolution = None if scale is None else scale.quantity("resolution")
    repeatability = None if scale is None else scale.quantity("repeatability")
    standard = net_uncertainty(
        resolution=COARSE_SCALE if resolution is None else resolution,
        repeatability=Q(0, "g") if repeatability is None else repeatability,
    )
    return mg(COVERAGE * standard)


def ledger_tolerance_mg(gross_mg: int, scale: Answers | None, rule_set: RuleSet) -> int:
    """Difference between ledger and scale that is not asked about, in milligrams."""
    rule = cylinder.weighing_tolerance(gross=from_mg(abs(gross_mg)), rule=rule_set.cylinder)
    return max(mg(rule), net_uncertainty_mg(scale))


def moved_uncertainty(
    moved_mg: int, scale: Answers | None, rule_set: RuleSet, *, weighed: bool
) -> Quantity:
    """Standard uncertainty of a mass the ledger moved: by its scale, or as somebody invoiced it.

    What an invoice says is taken as weighed on a field scale (common practice; no source).
    """
    share = rule_set.cylinder.weighing_share.quantity.m_as("")
    if not weighed:
        return Q(share * abs(moved_mg) / 1_000 / math.sqrt(3), "g")
    row = NOTHING if scale is None else scale
    readings = net_uncertainty(
        resolution=row.quantity_or("resolution", COARSE_SCALE),
        repeatability=row.quantity_or("repeatability", Q(0, "g")),
    )
    gain = row.quantity_or("gain", Q(0, "percent")).m_as("")
    return Q(math.hypot(readings.m_as("g"), gain * abs(moved_mg) / 1_000 / math.sqrt(3)), "g")
