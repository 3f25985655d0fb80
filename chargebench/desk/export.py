"""Export: workbook, tables, checklist, job reports, due dates, job files, manifest, signature."""

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path

from chargebench.desk import where
from chargebench.desk.papers import Papers
from chargebench.desk.records import EVERYTHING
from chargebench.desk.views import Exported
from chargebench.errors import ExportRefused
from chargebench.ledger import Filters, Ledger
from chargebench.reports import AuditContent
from chargebench.words import say

Progress = Callable[[str, int, int], None]
WORKBOOK, CHECKLIST, CALENDAR, JOBS = "audit.xlsx", "checklist.pdf", "due.ics", "jobs"
REPORTS, TABLES = "reports", "tables"


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
        *,
        signed: bool = False,
    ) -> Exported:
        """Write the records of a period into a folder, narrowed to what the filters choose.

        Broken off and begun again for the same records, it goes on with the part it stopped in.
        `signed` adds this bench's signature over the manifest.

        Raises
        ------
        ExportRefused
            Cancelled, or a file could not be written.
        ChargebenchError
            A filter names what is not on record.
        """
        # Brought in here: writers of workbooks and PDF are not needed until something leaves.
        from chargebench.reports import manifest, open_tables, signature, unfinished, workbook

        _make(folder)
        if isinstance(self.reading, Ledger):  # a desk of a worker thread only reads
            self.keep_head("export")  # before it is verified: exported again, the same is said
        content = self.content(since, until, filters)
        begun = unfinished.Unfinished(folder, content)
        book, jobs = folder / WORKBOOK, [record.case.job for record in content.jobs]

        def write_workbook() -> tuple[Path]:
            workbook.write_workbook(content, book, progress, cancelled)
            return (book,)

        files = (
            *begun.part("workbook", write_workbook),
            *begun.part(
                "tables", lambda: open_tables.write_tables(content, folder, progress, cancelled)
            ),
            *begun.part("checklist", lambda: self._write_checklist(folder, content)),
            *begun.part("due dates", lambda: self._write_calendar(folder, content)),
            *begun.part(
                "job reports",
                lambda: self._write_reports(folder / REPORTS, content, progress, cancelled),
            ),
            *begun.part("job files", lambda: self.write_job_files(folder / JOBS, jobs)),
        )
        names = [path.relative_to(folder).as_posix() for path in files]
        written = (*files, manifest.write_manifest(content, folder, names))
        if signed:
            written = (*written, *signature.sign(folder, signature.bench_key(where.bench_key())))
        begun.finished()
        return Exported(folder, written)

    def _write_checklist(self, folder: Path, content: AuditContent) -> tuple[Path]:
        from chargebench.reports import checklist_pdf, pdf

        drawn = checklist_pdf.draw_checklist(self.letterhead(period=content.period), content.jobs)
        return (pdf.write(drawn, folder / CHECKLIST),)

    def _write_calendar(self, folder: Path, content: AuditContent) -> tuple[Path]:
        from chargebench.reports import calendar_file

        path = calendar_file.write_calendar(
            folder / CALENDAR,
            content.due,
            shop_id=self.reading.shop_id,
            shop=content.shop.get("name", ""),
            program=content.program,
            at=content.made_at,
        )
        return (path,)

    def _write_reports(
        self,
        folder: Path,
        content: AuditContent,
        progress: Progress | None,
        cancelled: Callable[[], bool] | None,
    ) -> Iterator[Path]:
        """Job reports, one at a time, for they may hold photos; statements after them."""
        from chargebench.reports import job_report, pdf, statements

        folder.mkdir(exist_ok=True)
        letterhead, of = self.letterhead(), len(content.jobs)
        for done, job in enumerate(content.jobs):
            if cancelled is not None and cancelled():
                raise ExportRefused("Cancelled. The job reports are not complete.")
            if progress is not None:
                progress("Job reports", done, of)
            drawn = job_report.draw_job_report(letterhead, job, self._photos(job.case.job))
            yield pdf.write(drawn, folder / f"{job.case.number}.pdf")
            if statements.disposed(job):
                drawn = statements.draw_disposal(letterhead, job)
                yield pdf.write(drawn, folder / f"{job.case.number} disposal.pdf")
        for record in content.stock():
            if record.kind == "returned":
                row = content.row("cylinder", record.answers.text("cylinder"))
                drawn = statements.draw_hand_over(letterhead, record, row)
                name = f"{record.bench}-{record.number} hand-over.pdf"
                yield pdf.write(drawn, folder / name)


def _make(folder: Path) -> None:
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as problem:
        raise ExportRefused(
            say("Expected a folder that can be written; {problem}.", problem=problem)
        ) from problem
