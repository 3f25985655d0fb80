"""Export: audit workbook, handling checklist, due dates, job files and manifest into a folder."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

from chargebench.desk.handover import HandOver
from chargebench.desk.records import EVERYTHING
from chargebench.desk.views import Exported
from chargebench.errors import ExportRefused
from chargebench.ledger import Filters, Ledger

Progress = Callable[[str, int, int], None]
WORKBOOK, CHECKLIST, CALENDAR, JOBS = "audit.xlsx", "checklist.pdf", "due.ics", "jobs"


class Desk(HandOver):
    """What a shop can do, as plain methods; the only thing the window and commands call."""

    def export(
        self,
        folder: Path,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
        progress: Progress | None = None,
        cancelled: Callable[[], bool] | None = None,
    ) -> Exported:
        """Write the records of a period into a folder, narrowed to what the filters choose.

        Raises
        ------
        ExportRefused
            Cancelled, or a file could not be written.
        ChargebenchError
            A filter names what is not on record.
        """
        # Brought in here: writers of workbooks and PDF are not needed until something leaves.
        from chargebench.reports import calendar_file, checklist_pdf, manifest, workbook

        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as problem:
            raise ExportRefused(f"Expected a folder that can be written; {problem}.") from problem
        if isinstance(self.reading, Ledger):  # a desk of a worker thread only reads
            self.keep_head("export")  # before it is verified: exported again, the same is said
        content = self.content(since, until, filters)
        workbook.write_workbook(content, folder / WORKBOOK, progress, cancelled)
        checklist_pdf.write_checklist(content, folder / CHECKLIST)
        jobs = self.write_job_files(folder / JOBS, (record.case.job for record in content.jobs))
        calendar = calendar_file.write_calendar(
            folder / CALENDAR,
            content.due,
            shop_id=self.reading.shop_id,
            shop=content.shop.get("name", ""),
            program=content.program,
            at=content.made_at,
        )
        files = (folder / WORKBOOK, folder / CHECKLIST, calendar, *jobs)
        names = [path.relative_to(folder).as_posix() for path in files]
        written = (*files, manifest.write_manifest(content, folder, names))
        return Exported(folder, written)
