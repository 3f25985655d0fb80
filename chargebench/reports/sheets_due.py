"""Sheets of leak rates, of what falls due, and of how long records are kept.

Every figure of a leak rate stands beside what it was worked out from, so that it can be reckoned
again from the sheet: the annualizing rate is added / full charge x 365 / days since (at most 365),
the rolling average is added since / full charge, a day due is the start and the span of the rule.
"""

from collections.abc import Iterator

from chargebench.reports.content import AuditContent
from chargebench.reports.dated import DueLine, LeakRateAt, LeakRateLine
from chargebench.reports.table import Cell, Column, Form, Row, Table, kg, lb
from chargebench.sources import SOURCES, checked, cite
from chargebench.steps import Answers

LEAK_RATES = (
    Column("Equipment", 10),
    Column("Name", 26),
    Column("Refrigerant", 12),
    Column("Full charge [kg]", 11, Form.EXACT),
    Column("Full charge [lb]", 11, Form.MASS),
    Column("Regulation", 12),
    Column("Method", 24),
    Column("Added on", 12, Form.DATE),
    Column("Added [kg]", 11, Form.EXACT),
    Column("Entries of the addition", 14),
    Column("Since last addition [d]", 10, Form.WHOLE),
    Column("Annualizing [%]", 12, Form.HUNDREDTHS),
    Column("Rolling from", 12, Form.DATE),
    Column("Added since [kg]", 11, Form.EXACT),
    Column("Entries since", 18),
    Column("Rolling average [%]", 12, Form.HUNDREDTHS),
    Column("Rate that counts [%]", 12, Form.HUNDREDTHS),
    Column("Threshold [%]", 11, Form.HUNDREDTHS),
    Column("State", 13),
    Column("Duty", 28, Form.LONG),
    Column("Due", 12, Form.DATE),
    Column("Duty is", 10),
    Column("Ended on", 12, Form.DATE),
    Column("Ended by entries", 12),
)
DUE = (
    Column("Due", 12, Form.DATE),
    Column("What", 34, Form.LONG),
    Column("About", 20),
    Column("Name", 30, Form.LONG),
    Column("State", 10),
    Column("Runs from", 12, Form.DATE),
    Column("Span of the rule", 12),
    Column("Put off to", 12, Form.DATE),
    Column("Worked out from entries", 16),
    Column("Done on", 12, Form.DATE),
    Column("Ended by entries", 12),
    Column("How it ended, or why it was put off", 34, Form.LONG),
    Column("Regulation", 12),
    Column("Source and place", 50, Form.LONG),
    Column("Checked", 12),
)
TESTS = (
    Column("Job", 10),
    Column("Title", 34, Form.LONG),
    Column("Equipment", 10),
    Column("Entry", 8, Form.WHOLE),
    Column("Recorded by", 18),
    Column("What", 24),
    Column("On", 12, Form.DATE),
    Column("Repaired leak, ground or reference", 40, Form.LONG),
    Column("By", 20),
    Column("Result, or until", 14),
    Column("Ran since the repair, as typed", 14),
    Column("Counts", 8),
)
RETENTION = (
    Column("Record", 32),
    Column("About", 20),
    Column("Name", 34, Form.LONG),
    Column("Closed or retired", 12, Form.DATE),
    Column("Kept for", 10),
    Column("Kept until", 12, Form.DATE),
    Column("May be archived", 10),
    Column("Source and place", 50, Form.LONG),
    Column("Checked", 12),
)


def leak_rates(content: AuditContent) -> Table:
    """A row for each addition, and one for each further duty it set off."""

    def rows() -> Iterator[Row]:
        for line in content.leak_rates:
            for computed in line.computed:
                yield from _computed(line, computed)
            if not line.computed:
                yield (*_head(line), *[None] * 10, line.threshold_pct, _state(line),
                       *_duty(None))  # fmt: skip

    return Table(
        "Leak rates",
        "Per cent of the full charge a year at each addition; “over” is strictly above.",
        LEAK_RATES,
        rows(),
        empty="No equipment has an addition of refrigerant that a leak rate is worked out from.",
    )


def _head(line: LeakRateLine) -> tuple[Cell, ...]:
    return (
        line.equipment_id,
        line.name,
        line.refrigerant,
        kg(line.full_charge_mg),
        lb(line.full_charge_mg),
        line.regulation,
        line.method,
    )


def _state(line: LeakRateLine) -> str:
    return "no threshold" if line.threshold_pct is None else "nothing added"


def _computed(line: LeakRateLine, at: LeakRateAt) -> Iterator[Row]:
    figures = (
        at.on,
        kg(at.added_mg),
        _numbers(at.entries),
        at.days,
        at.annualizing_pct,
        at.rolling_from,
        kg(at.rolling_mg),
        _numbers(at.rolling_entries),
        at.rolling_pct,
        at.rate_pct,
        line.threshold_pct,
        "over" if at.over else "not over",
    )
    head = (*_head(line)[:-1], at.method)
    for duty in at.duties or (None,):
        yield (*head, *figures, *_duty(duty))


def _duty(duty: DueLine | None) -> tuple[Cell, ...]:
    if duty is None:
        return ("", None, "", None, "")
    return (duty.what, duty.on, duty.state, duty.done_on, _numbers(duty.ended_by))


def _numbers(entries: tuple[int, ...]) -> str:
    return ", ".join(str(number) for number in entries)


def _cited(source: str) -> str:
    key, comma, place = source.partition(",")
    return f"{cite(key)}{comma}{place}" if key in SOURCES else source


def due_dates(content: AuditContent) -> Table:
    """Everything owed, by day, with what it was worked out from and what ended it."""
    return Table(
        "Due dates",
        "What is owed by which day, and what ended it; a day due is the start and the span.",
        DUE,
        (
            (
                each.on,
                each.what,
                each.about,
                each.name,
                each.state,
                each.start,
                each.figure,
                each.extended_to,
                _numbers(each.entries),
                each.done_on,
                _numbers(each.ended_by),
                each.how,
                each.regulation,
                _cited(each.source),
                checked(each.mark),
            )
            for each in content.due
        ),
        empty="Nothing is owed.",
    )


def after_repairs(content: AuditContent) -> Table:
    """Tests of repaired leaks, more time asked for, plans and reports: a row each."""

    def rows() -> Iterator[Row]:
        for job in content.jobs:
            for step in ("leak_search", "follow_up"):
                for record in job.of(step):
                    for said in _after(record.answers):
                        head = (job.case.number, job.title, job.case.equipment_id)
                        yield (*head, record.number, record.by, *said, not record.reversed)

    return Table(
        "After repairs",
        "Tests of repaired leaks with their results, more time asked for, plans and reports.",
        TESTS,
        rows(),
        empty="No test of a repaired leak, no plan and no report was recorded in this period.",
    )


def _after(answers: Answers) -> Iterator[tuple[Cell, ...]]:
    for line in answers.lines("tests"):
        ran = line.reading("ran")
        words = (line.text("where"), line.text("how"), line.text("result"))
        yield (f"{line.text('kind')} verification test", line.date("on"), *words,
               ran.text if ran else "")  # fmt: skip
    for line in answers.lines("extensions"):
        until = line.date("until")
        yield ("more time for the repair", line.date("asked"),
               ". ".join(filter(None, (line.text("ground"), line.text("efforts")))),
               line.text("signed"), until.isoformat() if until else "", "")  # fmt: skip
    for line in answers.lines("papers"):
        yield (line.text("what"), line.date("on"), line.text("reference"), "", "", "")


def retention(content: AuditContent) -> Table:
    """Until when each record is kept; what is older may be archived."""
    return Table(
        "Retention",
        "Until when records are kept by the rule set; what is past that may be archived.",
        RETENTION,
        (
            (
                each.what,
                each.about,
                each.name,
                each.ended_on,
                each.figure,
                each.keep_until,
                each.may_be_archived,
                _cited(each.source),
                checked(each.mark),
            )
            for each in content.retention
        ),
        empty="No job and no equipment is on record.",
    )
