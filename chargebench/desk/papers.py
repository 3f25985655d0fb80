"""Papers: job report, checklist, labels, statements, usage log, laid out and ready to be drawn."""

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

import chargebench
from chargebench.desk.opened import now
from chargebench.desk.pictures import Pictures
from chargebench.errors import ChargebenchError
from chargebench.ledger import Entry
from chargebench.reports import JobRecord, Selection, StockRecord
from chargebench.reports.letterhead import Letterhead, usual_paper
from chargebench.steps import STOCK, answer

if TYPE_CHECKING:
    from chargebench.reports.drawn import Drawn
    from chargebench.reports.photos import Photo
    from chargebench.reports.usage_log import UsageTable


class Papers(Pictures):
    """What is printed. Drawing is brought in where it is used: a window opens without it."""

    @property
    def paper(self) -> str:
        """A4 or Letter, as the shop has it."""
        return usual_paper(self.shop)

    def letterhead(self, paper: str = "", period: str = "") -> Letterhead:
        """What every paper of the shop says of itself."""
        return Letterhead(
            shop=self.shop,
            made_at=now(),
            program=f"chargebench {chargebench.__version__}",
            paper=paper or self.paper,
            period=period,
            people=self.rows("person"),
        )

    def job_record(self, job: str) -> JobRecord:
        """A job with all that is signed of it."""
        row = self.reading.job(job)
        record = None if row is None else self._job_record(row, Selection())
        if record is None:
            raise ChargebenchError("There is no such job in this shop.")
        return record

    def job_report(self, job: str, paper: str = "") -> "Drawn":
        """The report of a job for the customer or a warranty claim."""
        from chargebench.reports.job_report import draw_job_report

        return draw_job_report(self.letterhead(paper), self.job_record(job), self._photos(job))

    def _photos(self, job: str) -> "Sequence[Photo]":
        """A job's photos that are kept at this bench."""
        from chargebench.reports.photos import Photo

        found = ((line, self.reading.picture(line.picture)) for line in self.photos(job))
        return [
            Photo(line.caption, kept.media, kept.content)
            for line, kept in found
            if kept is not None
        ]

    def checklist(self, job: str, paper: str = "") -> "Drawn":
        """The handling checklist of a job."""
        from chargebench.reports.checklist_pdf import draw_checklist

        record = self.job_record(job)
        return draw_checklist(self.letterhead(paper, f"job {record.case.number}"), (record,))

    def disposal_statement(self, job: str, paper: str = "") -> "Drawn":
        """Who recovered what from equipment that is disposed of."""
        from chargebench.reports.statements import disposed, draw_disposal

        record = self.job_record(job)
        if not disposed(record):
            raise ChargebenchError(
                "Expected a job with a signed recovery of equipment that is disposed of or taken "
                "out of service."
            )
        return draw_disposal(self.letterhead(paper), record)

    def hand_over_statement(self, entry: str, paper: str = "") -> "Drawn":
        """What was handed to a reclaimer, to destruction or back to a supplier."""
        from chargebench.reports.statements import draw_hand_over

        found = self.reading.entry(entry)
        if found.kind != "returned":
            raise ChargebenchError("Expected an entry by which a cylinder's content was returned.")
        record = self._returned(found)
        row = self.row("cylinder", record.answers.text("cylinder"))
        return draw_hand_over(self.letterhead(paper), record, row)

    def _returned(self, entry: Entry) -> StockRecord:
        return StockRecord(
            kind=entry.kind,
            entry=entry.id,
            bench=entry.bench,
            number=entry.number,
            at=entry.happened_at,
            by=self.row("person", entry.by).get("name", entry.by),
            answers=answer(STOCK["return"], entry.payload["typed"]),
            moved_mg=sum(line.mass_mg for line in entry.transfers),
            reversed=self._reasons().get(entry.id, ""),
        )

    def cylinder_label(self, cylinder: str) -> "Drawn":
        """The label of a cylinder on a page of its own size."""
        from chargebench.reports.label_pdf import Labelled, draw_label

        (line,) = (each for each in self.cylinders() if each.id == cylinder)
        return draw_label(self.letterhead(), Labelled(line, self.answers("cylinder", cylinder)))

    def cylinder_labels(self, cylinders: Iterable[str], paper: str = "") -> "Drawn":
        """Labels on sheets of paper."""
        from chargebench.reports.label_pdf import Labelled, draw_sheet

        wanted = set(cylinders)
        labels = [
            Labelled(line, self.answers("cylinder", line.id))
            for line in self.cylinders()
            if line.id in wanted
        ]
        return draw_sheet(self.letterhead(paper), labels)

    def usage_log(self, usage: "UsageTable", period: str, paper: str = "") -> "Drawn":
        """The usage log as it stands on the screen."""
        from chargebench.reports.usage_log import draw_usage_log

        return draw_usage_log(self.letterhead(paper, period), usage)
