"""Handling checklist for flammable refrigerants, on paper: a section for each job."""

import os
from itertools import groupby
from pathlib import Path

from chargebench.errors import ExportRefused
from chargebench.flags import class_words
from chargebench.reports.checklist_facts import cautions, facts, limit_sources, limits, said_source
from chargebench.reports.content import AuditContent, JobRecord, Tick
from chargebench.reports.page import BLACK, BODY, GREY, SMALL, Page
from chargebench.reports.sheets_front import MARKS
from chargebench.rules import ChecklistLine
from chargebench.sources import cite
from chargebench.steps import STEPS

TICKED, NOT_TICKED = "\u2611", "\u2610"
DEFERENCE = (
    "This list does not replace local codes, the equipment maker's instructions or a licensed "
    "person's judgement. Where they ask for more, they count."
)
_TEXT, _WHO, _BOX = 122.0, 44.0, 7.0  # mm: the line, who ticked it, the box


def write_checklist(content: AuditContent, path: Path) -> None:
    """Write the handling checklists of the period's jobs on flammable refrigerants.

    Raises
    ------
    ExportRefused
        It could not be written; then there is no file, or the one before.
    """
    shop = content.shop.get("name", "")
    flammable = [job for job in content.jobs if _flammable(job)]
    with Page(
        title=f"Handling checklist, flammable refrigerants, {shop}",
        head=f"{shop}   ·   Handling checklist, flammable refrigerants   ·   {content.period}",
        foot=DEFERENCE,
        made_at=content.made_at,
        paper="A4" if content.shop.get("units") == "SI" else "Letter",
    ) as page:
        for job in flammable:
            page.add_page()
            _section(page, content, job)
        if flammable:
            _sources(page, flammable)
        else:
            page.add_page()
            page.title_line("Handling checklist, flammable refrigerants")
            page.face(BODY)
            page.paragraph(f"No job on a flammable refrigerant in the period {content.period}.")
        _save(page, path)


def _flammable(job: JobRecord) -> bool:
    return job.case.refrigerant is not None and job.case.refrigerant.flammable


def _save(page: Page, path: Path) -> None:
    part = path.with_name(f".{path.name}.part")
    try:
        with part.open("wb") as file:
            file.write(bytes(page.output()))
            file.flush()
            os.fsync(file.fileno())
        part.replace(path)
    except OSError as refusal:
        reason = refusal.strerror or str(refusal)
        raise ExportRefused(f"The checklist could not be written to {path}: {reason}.") from None
    finally:
        part.unlink(missing_ok=True)


def _section(page: Page, content: AuditContent, job: JobRecord) -> None:
    kind = job.case.refrigerant
    assert kind is not None
    page.title_line(f"{job.case.number}  {job.title}")
    page.face(BODY, bold=True)
    page.paragraph(f"{kind.name}, {class_words(kind.safety_class)}")
    page.ln(1)
    _facts(page, facts(content, job))
    _state(page, job)
    page.heading("Limits for this job and this room")
    _facts(page, limits(job))
    page.heading("Cautions")
    for sentence in cautions(job):
        _bullet(page, sentence)
    _lines(page, job)
    page.heading("Who stands for this list")
    page.paragraph(DEFERENCE)
    page.ln(9)
    page.face(SMALL, grey=GREY)
    page.paragraph("Name, signature, date  " + "." * 96)


def _facts(page: Page, rows: list[tuple[str, str, str]]) -> None:
    """Rows of label, value, and where it is from in small type."""
    for label, value, source in rows:
        page.face(BODY)
        tall = page.height_of(value, 122, 4.4)
        if page.get_y() + tall + 4 > page.h - 22:
            page.add_page()
        y = page.get_y()
        page.face(BODY, grey=GREY)
        label_below = page.block(page.l_margin, y, 54, label, 4.4)
        page.face(BODY)
        value_below = page.block(page.l_margin + 56, y, 122, value, 4.4)
        if source:
            page.face(SMALL, grey=GREY)
            value_below = page.block(page.l_margin + 56, value_below, 122, source, 3.4)
        page.set_y(max(label_below, value_below) + 0.8)


def _state(page: Page, job: JobRecord) -> None:
    """How many lines nobody ticked, said first and plainly."""
    due = [tick for tick in job.checklist if not job.set_aside(tick.line.step)]
    missing = [tick for tick in due if not tick.by]
    page.ln(1)
    page.face(BODY, bold=True)
    if missing:
        page.paragraph(f"{NOT_TICKED}  {len(missing)} of {len(due)} lines are NOT TICKED.")
    else:
        page.paragraph(f"{TICKED}  Every line called for is ticked ({len(due)}).")


def _bullet(page: Page, sentence: str) -> None:
    page.face(BODY)
    y = page.get_y()
    page.block(page.l_margin, y, 5, "•", 4.4)
    page.set_y(page.block(page.l_margin + 5, y, page.epw - 5, sentence, 4.4) + 0.6)


def _lines(page: Page, job: JobRecord) -> None:
    for step, ticks in groupby(job.checklist, key=lambda tick: tick.line.step):
        lines = list(ticks)
        page.heading(f"At {STEPS[step].title}")
        if reason := job.set_aside(step):
            page.face(BODY, grey=GREY)
            page.paragraph(f"Step set aside, {len(lines)} lines not called for: {reason}")
            continue
        if not job.case.is_signed(step):
            page.face(BODY, grey=GREY)
            page.paragraph("Step not signed yet.")
            page.ln(0.5)
        for tick in lines:
            _line(page, tick)


def _line(page: Page, tick: Tick) -> None:
    cited = _cited(tick.line)
    page.face(BODY)
    tall = page.height_of(tick.line.text, _TEXT, 4.4)
    page.face(SMALL)
    tall += page.height_of(cited, _TEXT, 3.3)
    if page.get_y() + max(tall, 9) > page.h - 24:
        page.add_page()
    y = page.get_y()
    page.face(BODY + 2, bold=not tick.by)
    page.block(page.l_margin, y, _BOX, TICKED if tick.by else NOT_TICKED, 4.6)
    page.face(BODY)
    below = page.block(page.l_margin + _BOX, y, _TEXT, tick.line.text, 4.4)
    page.face(SMALL, grey=GREY)
    below = page.block(page.l_margin + _BOX, below, _TEXT, cited, 3.3)
    page.face(BODY, bold=not tick.by)
    below = max(below, page.block(page.l_margin + _BOX + _TEXT + 3, y, _WHO, _who(tick), 4.4))
    if not tick.by:
        page.set_draw_color(BLACK)
        page.rect(page.l_margin - 2.5, y, 1, below - y, style="F")
    page.set_y(below + 1.4)


def _who(tick: Tick) -> str:
    if tick.by:
        when = f"\n{tick.at:%Y-%m-%d %H:%M}" if tick.at else ""
        return f"{tick.by}{when}"
    return "NOT TICKED\nname, time ............."


def _cited(line: ChecklistLine) -> str:
    return said_source(f"{line.source}, {line.place}" if line.place else line.source, line.mark)


def _sources(page: Page, jobs: list[JobRecord]) -> None:
    """The works cited by key above."""
    keys = {tick.line.source for job in jobs for tick in job.checklist}
    keys |= {source for job in jobs for source in limit_sources(job)}
    page.heading("Sources")
    page.face(SMALL)
    page.paragraph(MARKS, 3.6)
    page.ln(1)
    for key in sorted(keys):
        page.face(SMALL, grey=GREY)
        page.paragraph(f"{key}: {cite(key)}", 3.6)
