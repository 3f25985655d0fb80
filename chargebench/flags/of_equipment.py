"""Flags of an equipment's leak rate, and of what is owed of it and not done."""

from datetime import date

from chargebench.flags.flag import Flag
from chargebench.words import Measured, say


def of_equipment(
    equipment: str,
    *,
    name: str,
    rate_pct: float,
    threshold_pct: float,
    source: str,
    mark: str,
    owed: str,
    owed_by: date,
    today: date,
) -> Flag:
    """A leak rate over its threshold, with what is owed first."""
    rate, threshold = Measured(f"{rate_pct:.1f} %"), Measured(f"{threshold_pct:g} %")
    values = {"name": name, "rate": rate, "threshold": threshold, "owed": owed, "by": owed_by}
    if today > owed_by:
        says = say(
            "{name} leaks {rate} a year, over the threshold of {threshold}. Overdue since {by}: "
            "{owed}.",
            **values,
        )
    else:
        says = say(
            "{name} leaks {rate} a year, over the threshold of {threshold}. Next, by {by}: {owed}.",
            **values,
        )
    about = f"equipment:{equipment}"
    return Flag("stop", "leak-rate-over", says, about, str(rate), str(threshold), source, mark)


def of_overdue(
    equipment: str, *, name: str, owed: str, owed_by: date, source: str, mark: str
) -> Flag:
    """Something owed of an equipment by a day that is past."""
    return Flag(
        "check",
        "duty-overdue",
        say("{name}: {owed} was due on {by}.", name=name, owed=owed, by=owed_by),
        f"equipment:{equipment}",
        str(owed_by),
        "",
        source,
        mark,
    )


def of_detection(equipment: str, *, name: str, reaching: str, source: str, mark: str) -> Flag:
    """A charge from which a leak detection system is compulsory, and none is on record."""
    return Flag(
        "check",
        "detection-missing",
        say(
            "{name} must have a leak detection system from {reaching} on, and none is on record. "
            "Fit one, or enter it in the register.",
            name=name,
            reaching=Measured(reaching),
        ),
        f"equipment:{equipment}",
        "",
        reaching,
        source,
        mark,
    )
