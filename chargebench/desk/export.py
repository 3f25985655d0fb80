"""Export: workbook, checklist, job reports, due dates, job files and manifest into a folder."""

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from chargebench.desk.papers import Papers
from chargebench.desk.records import EVERYTHING
from chargebench.desk.views import Exported
from chargebench.errors import ExportRefused
from chargebench.ledger import Filters, Ledger
from chargebench.reports import AuditContent

Progress = Callable[[str, int, int], None]
WORKBOOK, CHECKLIST, CALENDAR, JOBS = "audit.xlsx", "checklist.pdf", "due.ics", "jobs"
REPORTS = "reports"


class Desk(Papers):
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
        from chargebench.reports import calendar_file, checklist_pdf, manifest, pdf, workbook

        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as problem:
            raise ExportRefused(f"Expected a folder that can be written; {problem}.") from problem
        if isinstance(self.reading, Ledger):  # a desk of a worker thread only reads
            self.keep_head("export")  # before it is verified: exported again, the same is said
        content = self.content(since, until, filters)
        workbook.write_workbook(content, folder / WORKBOOK, progress, cancelled)
        letterhead = self.letterhead(period=content.period)
        pdf.write(checklist_pdf.draw_checklist(letterhead, content.jobs), folder / CHECKLIST)
        reports = tuple(self._write_reports(folder / REPORTS, content, progress, cancelled))
        jobs = self.write_job_files(folder / JOBS, (record.case.job for record in content.jobs))
        calendar = calendar_file.write_calendar(
            folder / CALENDAR,
            content.due,
            shop_id=self.reading.shop_id,
            shop=content.shop.get("name", ""),
            program=content.program,
            at=content.made_at,
        )
        files = (folder / WORKBOOK, folder / CHECKLIST, calendar, *reports, *jobs)
        names = [path.relative_to(folder).as_posix() for path in files]
        written = (*files, manifest.write_manifest(content, folder, names))
        return Exported(folder, written)

    def _write_reports(
        self,
        folder: Path,
        content: AuditContent,
        progress: Progress | None,
        cancelled: Callable[[], bool] | None,
    ) -> Iterator[Path]:
        """A report for each job of the period, one at a time, for they may hold photos."""
        from chargebench.reports import job_report, pdf

        folder.mkdir(exist_ok=True)
        letterhead, of = self.letterhead(), len(content.jobs)
        for done, job in enumerate(content.jobs):
            if cancelled is not None and cancelled():
                raise ExportRefused("Cancelled. The job reports are not complete.")
            if progress is not None:
                progress("Job reports", done, of)
            drawn = job_report.draw_job_report(letterhead, job, self._photos(job.case.job))
            yield pdf.write(drawn, folder / f"{job.case.number}.pdf")
