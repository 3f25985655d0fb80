"""Records: usage, flags, leak rates and due dates, entries, verification."""

from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from pathlib import Path

from chargebench import flags
from chargebench.desk.due import DueDates, leak_flags
from chargebench.desk.jobs import AFTER_CLOSING
from chargebench.desk.views import UsageTotal
from chargebench.errors import NotAllowed, StorageRefused
from chargebench.flags import Flag
from chargebench.ledger import Checkpoint, Entry, Filters, UsageRow, Verification
from chargebench.reports import UnaccountedLine
from chargebench.reports.unaccounted import unaccounted
from chargebench.steps import STEPS, answer

UsageKey = tuple[int, int, int]
EVERYTHING = Filters()
_CYLINDERS_AT_ONCE = 200


class Records(DueDates):
    """What was recorded, and what it comes to."""

    def usage(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
        *,
        before: UsageKey | None = None,
        limit: int = 500,
    ) -> Sequence[UsageRow]:
        """Mass lines of a period, the last day included, newest first; paged by `before`."""
        return self.reading.usage(
            day_start(since), day_end(until), filters, before=before, limit=limit
        )

    def usage_totals(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> list[UsageTotal]:
        """A period's movements by refrigerant."""
        totals: dict[str, UsageTotal] = {}
        for row in self.reading.usage_totals(day_start(since), day_end(until), filters):
            total = totals.get(row.refrigerant, UsageTotal(row.refrigerant))
            column = _column(row.source, row.target)
            if column:
                total = replace(total, **{column: getattr(total, column) + row.mass_mg})
            totals[row.refrigerant] = total
        return [totals[name] for name in sorted(totals)]

    def usage_by_month(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> dict[str, UsageTotal]:
        """A period's movements of all refrigerants together, by month such as 2026-11."""
        months: dict[str, UsageTotal] = {}
        for row in self.reading.usage_totals(day_start(since), day_end(until), filters):
            total = months.get(row.month, UsageTotal("all"))
            column = _column(row.source, row.target)
            if column:
                total = replace(total, **{column: getattr(total, column) + row.mass_mg})
            months[row.month] = total
        return dict(sorted(months.items()))

    def unaccounted(
        self,
        since: date | None = None,
        until: date | None = None,
        filters: Filters = EVERYTHING,
    ) -> tuple[UnaccountedLine, ...]:
        """What nobody can account for in a period, by refrigerant, against what was charged."""
        start, end = day_start(since), day_end(until)
        rows = (
            row
            for place in ("difference", "atmosphere")
            for row in self.reading.usage(start, end, replace(filters, place=place))
        )
        totals = self.usage_totals(since, until, filters)
        return unaccounted(rows, {total.refrigerant: total.charged_mg for total in totals})

    def entries(
        self,
        since: date | None = None,
        until: date | None = None,
        *,
        after: str | None = None,
        limit: int | None = None,
        newest_first: bool = False,
    ) -> Iterator[Entry]:
        """Entries of a period, the last day included, in or against the order recorded."""
        return self.reading.entries(
            since=day_start(since),
            until=day_end(until),
            after=after,
            limit=limit,
            newest_first=newest_first,
        )

    def all_flags(self) -> list[Flag]:
        """Flags of jobs (of closed ones as closed), cylinders and leak rates, worst first."""
        found = [flag for part in self.flags_in_parts() for flag in part]
        return list(flags.worst_first(tuple(found)))

    def flags_in_parts(self) -> Iterator[list[Flag]]:
        """Every flag, those that are soonest known first; no job is opened that can have none."""
        yield [*self._of_open_jobs(), *self._of_rules()]
        yield self._of_closed_jobs()
        after: str | None = None
        while lines := self.cylinders(after=after, limit=_CYLINDERS_AT_ONCE):
            after = lines[-1].id
            yield [flag for line in lines for flag in line.flags]
        yield [flag for line in self.leak_rates() for flag in leak_flags(line, self.today)]

    def _of_open_jobs(self) -> Iterator[Flag]:
        for row in self.reading.jobs("open"):
            for flag in self.job(row.id).flags:
                yield _of_job(row.number, flag)

    def _of_rules(self) -> Iterator[Flag]:
        if self.rule_trouble:
            yield Flag("check", "rule-file", self.rule_trouble, "shop:shop")

    def _of_closed_jobs(self) -> list[Flag]:
        """What closed jobs were closed with, and visits promised after closing; newest first."""
        raised: dict[str, list[Flag]] = {}
        for entry in self.reading.closed_with_flags():
            raised[str(entry.job)] = [Flag(**each) for each in entry.payload["flags"]]
        for entry in self.reading.last_without("follow-up", "done_on"):
            promised = answer(STEPS[AFTER_CLOSING], entry.payload["typed"])
            raised.setdefault(str(entry.job), []).extend(flags.of_follow_up(promised, self.today))
        jobs = [job for each in raised if (job := self.reading.job(each)) and job.closed_at]
        jobs.sort(key=lambda job: job.opened_by, reverse=True)
        return [_of_job(job.number, flag) for job in jobs for flag in raised[job.id]]

    def verify(
        self,
        progress: Callable[[int, int], None] | None = None,
        heads: Sequence[Checkpoint] = (),
    ) -> Verification:
        """Recompute the whole ledger and compare, also with heads printed on earlier exports."""
        return self.reading.verify(progress, checkpoints=heads)

    def keep_head(self, why: str) -> None:
        """Keep where the chain stands, so that an end cut off or rewritten later is seen.

        A disk that takes no more must not keep records from leaving, and the head leaves with
        them; so a refusal to keep it here is none of the export's. An officer keeps none here.
        """
        with suppress(StorageRefused, NotAllowed):
            self.ledger.keep_checkpoint(why)

    def backup(self) -> Path | None:
        """Keep a copy of the shop file beside it; None where the newest is still the same."""
        return self.reading.backup()


def _of_job(number: str, flag: Flag) -> Flag:
    return replace(flag, about=f"job:{number}, {flag.about}", says=f"{number}: {flag.says}")


def _column(source: str, target: str) -> str:
    """Column of the totals that a movement between two kinds of places belongs to."""
    if target == "atmosphere":
        return "released_mg"
    pairs = {
        ("supplier", "cylinder"): "received_mg",
        ("cylinder", "equipment"): "charged_mg",
        ("equipment", "cylinder"): "recovered_mg",
    }
    if "difference" in (source, target):
        return "difference_mg"
    if source == "cylinder" and target in ("supplier", "reclaimer", "destruction"):
        return "returned_mg"
    return pairs.get((source, target), "")


def day_start(day: date | None) -> datetime | None:
    """Midnight before a day, by the bench's clock."""
    return None if day is None else datetime.combine(day, time()).astimezone()


def day_end(day: date | None) -> datetime | None:
    """Midnight after a day, by the bench's clock."""
    return None if day is None else day_start(day + timedelta(days=1))
