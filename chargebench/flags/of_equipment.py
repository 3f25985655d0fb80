"""Flags of an equipment's leak rate."""

from datetime import date

from chargebench.flags.flag import Flag


def of_equipment(
    equipment: str,
    *,
    name: str,
    rate_pct: float,
    threshold_pct: float,
    source: str,
    mark: str,
    repair_by: date,
) -> Flag:
    """A leak rate over its threshold."""
    return Flag(
        "stop",
        "leak-rate-over",
        f"{name} leaks {rate_pct:.1f} % a year, over the threshold of {threshold_pct:g} %. Repair "
        f"and test by {repair_by}.",
        f"equipment:{equipment}",
        f"{rate_pct:.1f} %",
        f"{threshold_pct:g} %",
        source,
        mark,
    )
