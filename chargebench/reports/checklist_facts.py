"""What the handling checklist says of one job before its lines: facts, limits, cautions."""

from chargebench.reports.content import JobRecord
from chargebench.reports.letterhead import joined
from chargebench.sources import checked
from chargebench.steps import Case, Figure
from chargebench.units import Quantity, Reading

AIR_MOLAR_MASS = 28.96  # g/mol, dry air (ISO2533, table 1)
Row = tuple[str, str, str]  # label, value, source


def facts(job: JobRecord) -> list[Row]:
    """What the equipment is, where it stands and who worked on it."""
    case = job.case
    charge = case.nameplate("charge")
    ended = f"{job.closed_at:%Y-%m-%d %H:%M}" if job.closed_at else "still open"
    rows = [
        ("Equipment", joined(case.equipment_id, *_names(job)), ""),
        ("Site", joined(case.site.text("name"), case.site.text("address")), ""),
        ("Nameplate charge", charge_words(case, charge), ""),
        ("Opened, closed", f"{job.opened_at:%Y-%m-%d %H:%M}, {ended}", ""),
        ("Opened by", job.by, ""),
        ("Rule set", case.rule_set.called, ""),
    ]
    safety = case.step("safety")
    place = joined(safety.text("place"), safety.text("ventilation"))
    return [*rows, ("Where the work was done", place, "")] if place else rows


def _names(job: JobRecord) -> tuple[str, ...]:
    keys = ("name", "make", "model", "serial")
    return tuple(job.case.equipment.text(key) for key in keys)


def charge_words(case: Case, charge: object) -> str:
    """A nameplate's charge as read, and in the shop's units."""
    if not isinstance(charge, Reading):
        return "not read"
    understood = case.shown(charge.quantity)
    same = understood.replace("\u202f", " ") == charge.text.strip()
    return charge.text if same else f"{charge.text} ({understood})"


def limits(job: JobRecord) -> list[Row]:
    """Limits worked out for this charge and this room, each with its source and mark."""
    kind = job.case.refrigerant
    assert kind is not None
    rows: list[Row] = []
    if kind.lfl is not None:
        mass = _per_volume(kind.lfl.value)
        rows.append(("Lower flammable limit", mass, said_source(kind.lfl.source, kind.lfl.mark)))
        share = job.case.rule_set.flammability.concentration_share
        alarm = kind.lfl.value * share.quantity.m_as("")
        rows.append(
            (
                "Detector alarm no higher than",
                f"{_per_volume(alarm)} ({share.text} of the lower limit)",
                said_source(f"{share.source}, {share.place}", share.mark),
            )
        )
    if kind.practical_limit is not None:
        limit = kind.practical_limit
        rows.append(
            (
                "Practical limit in a room",
                _per_volume(limit.value),
                said_source(limit.source, limit.mark),
            )
        )
    rows += [figure_row(job.case, each) for each in job.limits]
    if job.case.nameplate("room_area") is None or job.case.nameplate("room_height") is None:
        rows.append(
            ("Room", "floor area or height not recorded: no share of the limit worked out", "")
        )
    return rows


def _per_volume(concentration: Quantity) -> str:
    return f"{concentration.m_as('g/m**3'):.3g} g/m³"


def figure_row(case: Case, each: Figure) -> Row:
    """A figure with its doubt and limit, in the shop's units, and its source."""
    if isinstance(each.value, str):
        value = each.value
    else:
        value = case.shown(each.value)
        if each.doubt is not None:
            value += f" ± {case.shown(each.doubt, like=each.value)}"
    if isinstance(each.limit, str) and each.limit:
        value += f"; limit {each.limit}"
    elif each.limit is not None and not isinstance(each.limit, str):
        value += f"; limit {case.shown(each.limit)}"
    return each.label, value, said_source(each.source, each.mark)


def said_source(key: str, mark: str) -> str:
    """A source by its key, with the place in it and how far it was checked."""
    return f"{key} [{checked(mark)}]" if key and mark else key


def limit_sources(job: JobRecord) -> set[str]:
    """Keys of the works the limits rest on."""
    return {source.partition(",")[0].partition(" [")[0] for _, _, source in limits(job) if source}


def cautions(job: JobRecord) -> list[str]:
    """What to mind here, from this refrigerant, this charge and what the job has raised."""
    kind = job.case.refrigerant
    assert kind is not None
    charge = job.case.nameplate("charge")
    says: list[str] = []
    if isinstance(charge, Reading):
        says.append(
            f"Never more than the nameplate's {charge_words(job.case, charge)}: the limits of the "
            "equipment were worked out for it."
        )
    if kind.molar_mass.m_as("g/mol") > AIR_MOLAR_MASS:
        says.append(
            f"{kind.name} vapour is heavier than air: it sinks and gathers in pits, drains and "
            "under cabinets. Detector and search at floor height."
        )
    says.append(
        "Purge and test with dry nitrogen only; compressed air or oxygen makes a mixture that "
        "can explode."
    )
    says.append("No flame near until the refrigerant is out and nitrogen flows.")
    # What the job raised, but not the lines this list shows as not ticked.
    says += [
        f"{flag.level.capitalize()}: {flag.says}"
        for flag in job.flags
        if flag.level != "note" and flag.key != "safety-list-incomplete"
    ]
    return says
