"""Handling checklist for flammable refrigerants, on paper: a section for each job."""

from collections.abc import Sequence
from itertools import groupby

from chargebench.flags import class_words
from chargebench.reports.checklist_facts import cautions, facts, limit_sources, limits, said_source
from chargebench.reports.content import JobRecord, Tick
from chargebench.reports.drawn import Box, Drawn
from chargebench.reports.letterhead import DEFERENCE, Letterhead
from chargebench.reports.page import BODY, GREY, Page, fewest
from chargebench.reports.sheets_front import MARKS
from chargebench.rules import ChecklistLine
from chargebench.sources import cite
from chargebench.steps import STEPS

TICKED, NOT_TICKED = "\u2611", "\u2610"
TITLE = "Handling checklist, flammable refrigerants"
_SIZES = (BODY, 8.6)  # points: smaller where that saves a page
_WHO, _BOX = 44.0, 7.0  # mm: who ticked it, the box


def draw_checklist(letterhead: Letterhead, jobs: Sequence[JobRecord]) -> Drawn:
    """The handling checklists of those jobs that are on flammable refrigerants."""
    flammable = [job for job in jobs if has_checklist(job)]
    page = fewest(lambda size: _laid_out(letterhead, flammable, size), _SIZES)
    return page.finish(f"{TITLE}, {letterhead.name}", letterhead.made_at, letterhead.program)


def _laid_out(letterhead: Letterhead, jobs: Sequence[JobRecord], body: float) -> Page:
    page = Page(
        paper=letterhead.paper,
        head=f"{letterhead.name}   ·   {TITLE}   ·   {letterhead.period}",
        foot=DEFERENCE,
        body=body,
    )
    for place, job in enumerate(jobs):
        if place:
            page.add_page()
        _section(page, job)
    if jobs:
        _sources(page, jobs)
    else:
        page.title_line(TITLE)
        page.paragraph(f"No job on a flammable refrigerant in the period {letterhead.period}.")
    return page


def has_checklist(job: JobRecord) -> bool:
    """Whether a job is on a refrigerant that asks for the list."""
    return job.case.refrigerant is not None and job.case.refrigerant.flammable


def _section(page: Page, job: JobRecord) -> None:
    kind = job.case.refrigerant
    assert kind is not None
    page.title_line(f"{job.case.number}  {job.title}")
    page.paragraph(f"{kind.name}, {class_words(kind.safety_class)}", bold=True)
    page.y += 1
    page.facts(facts(job))
    _state(page, job)
    page.heading("Limits for this job and this room")
    page.facts(limits(job))
    page.heading("Cautions")
    for sentence in cautions(job):
        page.bullet(sentence)
    _lines(page, job)
    page.heading("Who stands for this list", keep=36)
    page.paragraph(DEFERENCE)
    page.sign_here("Name", "Signature", "Date")


def _state(page: Page, job: JobRecord) -> None:
    """How many lines nobody ticked, said first and plainly."""
    due = [tick for tick in job.checklist if not job.set_aside(tick.line.step)]
    missing = [tick for tick in due if not tick.by]
    page.y += 1
    if missing:
        says = f"{NOT_TICKED}  {len(missing)} of {len(due)} lines are NOT TICKED."
    else:
        says = f"{TICKED}  Every line called for is ticked ({len(due)})."
    page.paragraph(says, bold=True)


def _lines(page: Page, job: JobRecord) -> None:
    for step, ticks in groupby(job.checklist, key=lambda tick: tick.line.step):
        lines = list(ticks)
        page.heading(f"At {STEPS[step].title}", keep=24)
        if reason := job.set_aside(step):
            says = f"Step set aside, {len(lines)} lines not called for: {reason}"
            page.paragraph(says, grey=GREY)
            continue
        if not job.case.is_signed(step):
            page.paragraph("Step not signed yet.", grey=GREY)
            page.y += 0.5
        for tick in lines:
            _line(page, tick)


def _line(page: Page, tick: Tick) -> None:
    cited, room = _cited(tick.line), page.across - _BOX - _WHO - 3
    tall = page.height_of(tick.line.text, room) + page.height_of(cited, room, page.small)
    page.need(max(tall, 9))
    top, missing = page.y, not tick.by
    page.block(page.left, top, _BOX, NOT_TICKED if missing else TICKED, page.body + 2, bold=missing)
    below = page.block(page.left + _BOX, top, room, tick.line.text)
    below = page.block(page.left + _BOX, below, room, cited, page.small, grey=GREY)
    who = page.block(page.right - _WHO, top, _WHO, _who(tick), bold=missing)
    below = max(below, who)
    if missing:
        page.mark(Box(page.left - 2.5, top, 1, below - top))
    page.y = below + 1.2


def _who(tick: Tick) -> str:
    if tick.by:
        when = f"\n{tick.at:%Y-%m-%d %H:%M}" if tick.at else ""
        return f"{tick.by}{when}"
    return "NOT TICKED\nname, time ............."


def _cited(line: ChecklistLine) -> str:
    return said_source(f"{line.source}, {line.place}" if line.place else line.source, line.mark)


def _sources(page: Page, jobs: Sequence[JobRecord]) -> None:
    """The works cited by key above."""
    keys = {tick.line.source for job in jobs for tick in job.checklist}
    keys |= {source for job in jobs for source in limit_sources(job)}
    page.heading("Sources")
    page.paragraph(MARKS, page.small)
    page.y += 1
    for key in sorted(keys):
        page.paragraph(f"{key}: {cite(key)}", page.small, grey=GREY)
