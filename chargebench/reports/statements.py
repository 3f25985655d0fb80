"""Statements on one page: equipment disposed of, and refrigerant handed over."""

from collections.abc import Mapping

from chargebench.reports.content import JobRecord, StepRecord
from chargebench.reports.drawn import Drawn
from chargebench.reports.letterhead import DEFERENCE, Letterhead, joined
from chargebench.reports.page import Fact, Page
from chargebench.reports.records import StockRecord
from chargebench.sources import cite
from chargebench.steps import Answers
from chargebench.steps.closing import OUT_OF_SERVICE
from chargebench.steps.recovery import NOTHING_LEFT, RECOVERED, Recovered
from chargebench.units import from_mg, shown

_RECOVERED = (
    "All refrigerant that had not leaked before was recovered from the equipment named here, by "
    "the person and on the day named here."
)
_LEAKED = (
    "No refrigerant was left in the equipment named here when it was opened for recovery: it had "
    "leaked out before."
)
_RELEASED = (
    "The refrigerant of the equipment named here was released, on the ground and on the day named "
    "here."
)
_SAYS = {RECOVERED: _RECOVERED, NOTHING_LEFT: _LEAKED}


def disposed(job: JobRecord) -> bool:
    """Whether a job has a recovery for good: of equipment opened for it, or left out of service."""
    record, close = job.counts("recovery"), job.counts("close")
    return record is not None and (
        record.answers.text("opening") == "disposed of"
        or (close is not None and close.answers.text("ends") == OUT_OF_SERVICE)
    )


def draw_disposal(letterhead: Letterhead, job: JobRecord) -> Drawn:
    """Who recovered what, when, from which equipment, for whoever disposes of it."""
    record = job.counts("recovery")
    assert record is not None
    page = _page(letterhead, "Statement of recovery before disposal")
    page.paragraph(_SAYS.get(record.answers.text("how"), _RELEASED))
    page.y += 2
    page.heading("Recovered by")
    page.facts(
        [
            ("Person", joined(record.by, letterhead.certificate(record.by)), ""),
            *_company(letterhead),
            ("On", f"{record.at:%Y-%m-%d}", f"job {job.case.number}, entry {record.number}"),
        ]
    )
    page.heading("From")
    page.facts(_equipment(job))
    page.heading("What was recovered")
    page.facts(_taken(letterhead, job, record))
    page.heading("Why this is asked for")
    page.paragraph(f"{cite('40CFR82F')}, 82.155 and 82.156(a)(3).", page.small)
    page.y += 4
    page.sign_here("Signed for the company, name, date", "Equipment taken over by, name, date")
    title = f"Statement of recovery, job {job.case.number}"
    return page.finish(title, letterhead.made_at, letterhead.program)


def _page(letterhead: Letterhead, title: str) -> Page:
    page = Page(
        paper=letterhead.paper,
        head=joined(letterhead.name, title, by="   ·   "),
        foot=f"{DEFERENCE} Made {letterhead.made_at:%Y-%m-%d} from signed entries.",
    )
    page.title_line(title)
    page.y += 2
    return page


def _company(letterhead: Letterhead) -> list[Fact]:
    shop = letterhead.shop
    return [
        ("Company", letterhead.name, ""),
        ("Address", shop.get("address", "") or "not recorded", ""),
        ("Company certificate", shop.get("certificate", "") or "not recorded", ""),
    ]


def _equipment(job: JobRecord) -> list[Fact]:
    row, site, plate = job.case.equipment, job.case.site, job.case.step("nameplate")
    return [
        ("Equipment", joined(job.case.equipment_id, row.text("name"), row.text("circuit")), ""),
        (
            "Make, model, serial",
            joined(
                row.text("make"),
                plate.text("model") or row.text("model"),
                plate.text("serial") or row.text("serial"),
            )
            or "not recorded",
            "",
        ),
        ("Where it stood", joined(site.text("name"), site.text("address")) or "not recorded", ""),
        ("Owner or operator", site.text("owner_operator") or "not recorded", ""),
    ]


def _taken(letterhead: Letterhead, job: JobRecord, record: StepRecord) -> list[Fact]:
    case, result = job.case, record.worked.result
    charge, level = case.nameplate("charge"), record.answers.reading("level")
    rows = [
        ("Refrigerant", case.refrigerant.name if case.refrigerant else "not recorded", ""),
        ("Full charge", charge.text if charge is not None else "not recorded", ""),
        ("How", record.answers.text("how"), record.answers.text("ground")),
    ]
    if isinstance(result, Recovered):
        said = shown(from_mg(result.taken_mg), letterhead.units)
        doubt = shown(from_mg(result.doubt_mg), letterhead.units)
        rows.append(("Recovered", f"{said} ± {doubt} (k = 2)" if result.taken_mg else said, ""))
        if result.released_mg:
            rows.append(("Released", shown(from_mg(result.released_mg), letterhead.units), ""))
    into = [line.text("cylinder") for line in record.answers.lines("lines")]
    close = job.counts("close")
    rows += [
        ("Into", joined(*into), ""),
        ("Level reached", level.text if level is not None else "", ""),
        ("Disposal", close.answers.text("disposal") if close is not None else "", ""),
    ]
    return [row for row in rows if row[1]]


def draw_hand_over(
    letterhead: Letterhead, record: StockRecord, cylinder: Mapping[str, str]
) -> Drawn:
    """What was handed to a reclaimer, to destruction or back to a supplier."""
    given = record.answers
    title = f"Hand-over of refrigerant to a {given.text('to')}"
    if given.text("to") == "destruction":
        title = "Hand-over of refrigerant for destruction"
    page = _page(letterhead, title)
    page.heading("From")
    page.facts([*_company(letterhead), ("Handed over by", record.by, "")])
    page.heading("To")
    receiver = given.text("receiver") or "not recorded"
    page.facts([("Receiver", receiver, ""), ("Document", given.text("document"), "")])
    page.heading("What")
    page.facts(_content(letterhead, record, cylinder))
    if record.reversed:
        page.heading("Taken back")
        page.paragraph(f"This hand-over was taken back: {record.reversed}.", bold=True)
    page.heading("Why this is asked for")
    page.paragraph(f"{cite('40CFR82F')}, 82.156(a)(3) and 82.164.", page.small)
    page.y += 4
    page.sign_here("Handed over, name, date", "Received, name, date")
    return page.finish(f"{title}, entry {record.number}", letterhead.made_at, letterhead.program)


def _content(
    letterhead: Letterhead, record: StockRecord, cylinder: Mapping[str, str]
) -> list[Fact]:
    given: Answers = record.answers
    mass = given.reading("mass")
    moved = shown(from_mg(record.moved_mg), letterhead.units)
    rows = [
        ("On", f"{record.at:%Y-%m-%d}", f"entry {record.bench}-{record.number}"),
        ("Cylinder", joined(given.text("cylinder"), cylinder.get("serial", "")), ""),
        ("Refrigerant", cylinder.get("refrigerant", ""), ""),
        ("Contents", joined(cylinder.get("contents", ""), cylinder.get("batch", "")), ""),
        ("Net mass", moved, f"as typed: {mass.text}" if mass is not None else ""),
        ("Remarks", given.text("remarks"), ""),
    ]
    return [row for row in rows if row[1]]
