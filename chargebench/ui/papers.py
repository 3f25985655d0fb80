"""What can be printed where: of a job, of cylinders, of the records."""

from collections.abc import Sequence
from itertools import islice

from PySide6.QtWidgets import QWidget

from chargebench.desk import Desk, Filters, UsageRow
from chargebench.reports.checklist_pdf import has_checklist
from chargebench.reports.statements import disposed
from chargebench.reports.usage_log import UsageTable
from chargebench.ui.period import Period
from chargebench.ui.printing import Paper, PrintDialog
from chargebench.ui.record_columns import total_columns, usage_columns
from chargebench.ui.rowtable import PAGE

LINES_MOST = 2_000  # of the usage log; an export has them all


def of_job(desk: Desk, job: str) -> list[Paper]:
    """Report; handling checklist and statement of disposal where the job has them."""
    record = desk.job_record(job)
    number = record.case.number
    papers: list[Paper] = [
        Paper("Job report", f"{number} report", lambda paper: desk.job_report(job, paper))
    ]
    if has_checklist(record):
        papers.append(
            Paper(
                "Handling checklist",
                f"{number} checklist",
                lambda paper: desk.checklist(job, paper),
            )
        )
    if disposed(record):
        papers.append(
            Paper(
                "Statement of disposal",
                f"{number} disposal",
                lambda paper: desk.disposal_statement(job, paper),
            )
        )
    return papers


def of_cylinder(desk: Desk, cylinder: str, listed: Sequence[str] = ()) -> list[Paper]:
    """Its label; one on a sheet to cut; those of the list shown; how it was handed over."""
    papers: list[Paper] = [
        Paper("Label", f"{cylinder} label", lambda _: desk.cylinder_label(cylinder)),
        Paper(
            "Label on a sheet",
            f"{cylinder} label sheet",
            lambda paper: desk.cylinder_labels([cylinder], paper),
        ),
    ]
    if len(listed) > 1:
        papers.append(
            Paper(
                "Labels of all that are listed",
                "labels",
                lambda paper: desk.cylinder_labels(listed, paper),
            )
        )
    returned = next(
        (row for row in desk.history(f"cylinder:{cylinder}") if row.kind == "returned"), None
    )
    if returned is not None:
        entry = returned.entry
        papers.append(
            Paper(
                "Statement of the last hand-over",
                f"{cylinder} hand-over",
                lambda paper: desk.hand_over_statement(entry, paper),
            )
        )
    return papers


def of_usage(desk: Desk, period: Period, filters: Filters) -> list[Paper]:
    """The usage log as it stands on the screen."""
    return [
        Paper(
            "Usage log",
            "usage log",
            lambda paper: desk.usage_log(_usage(desk, period, filters), str(period.words), paper),
        )
    ]


def _usage(desk: Desk, period: Period, filters: Filters) -> UsageTable:
    columns, totals = usage_columns(desk), total_columns(desk)
    rows, left_out = _lines(desk, period, filters)
    narrowed = (filters.equipment, filters.refrigerant, desk.label("person", filters.by or ""))
    return UsageTable(
        heads=tuple(column.head for column in columns),
        rows=[tuple(column.text(row) for column in columns) for row in rows],
        right=tuple(place for place, column in enumerate(columns) if column.right),
        total_heads=tuple(column.head for column in totals),
        totals=[
            tuple(column.text(row) for column in totals)
            for row in desk.usage_totals(period.since, period.until, filters)
        ],
        narrowed=", ".join(each for each in narrowed if each),
        left_out=left_out,
    )


def _lines(desk: Desk, period: Period, filters: Filters) -> tuple[list[UsageRow], int]:
    """The newest lines, and how many older ones there are."""
    found: list[UsageRow] = []
    more = 0
    before = None
    while page := desk.usage(period.since, period.until, filters, before=before, limit=PAGE):
        room = LINES_MOST - len(found)
        found += islice(page, room)
        more += max(len(page) - room, 0)
        before = page[-1].key
    return found, more


def show(papers: Sequence[Paper], desk: Desk, parent: QWidget) -> PrintDialog:
    """Open the dialog; what comes first is shown."""
    dialog = PrintDialog(papers, desk.paper, parent)
    dialog.open()
    return dialog
