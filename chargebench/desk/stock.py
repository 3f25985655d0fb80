"""Stock: what every cylinder holds, and receiving, weighing, decanting and returning."""

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, datetime
from functools import cache, partial
from itertools import islice

from chargebench import flags
from chargebench.calc.scale import COVERAGE, ledger_uncertainty
from chargebench.desk.joblist import JobList
from chargebench.desk.registers import Understood
from chargebench.desk.views import Look
from chargebench.errors import Overfilled, StepRefused
from chargebench.flags import Flag
from chargebench.fluids import refrigerant
from chargebench.ledger import Entry, HistoryRow, Reader
from chargebench.reports import CylinderLine
from chargebench.rules import ChecklistLine, RuleSet
from chargebench.steps import STOCK, Answers, Typed, answer, fill, safety_list, stock
from chargebench.units import Quantity, System, from_mg, mg
from chargebench.words import say


class Stock(JobList):
    """Cylinders and their movements outside a job."""

    def __init__(self, ledger: Reader, person: str = "") -> None:
        super().__init__(ledger, person)
        self._shelf_read: stock.Shelf | None = None

    def cylinders(
        self, find: str = "", *, after: str | None = None, limit: int | None = None
    ) -> list[CylinderLine]:
        """Cylinders with what they hold, by id; those after one, as many as are asked for.

        `find` is looked for in everything a line shows.
        """
        wanted = find.casefold().split()
        rows = {
            cylinder: row
            for cylinder, row in self.choices("cylinder").items()
            if after is None or cylinder > after
            if not wanted or _has(wanted, (cylinder, *row.values()))
        }
        page = dict(islice(rows.items(), limit))
        contents, weighed = self._contents(), self.reading.last_naming("weighed", "cylinder:")
        judged = (self.rule_set, self.today, self.units)
        understood = Understood(page, partial(self._understand, "cylinder"))
        return [
            self._cylinder_line(each, row, contents.get(each, {}), weighed, judged)
            for each, row in understood.items()
        ]

    def _cylinder_line(
        self,
        cylinder: str,
        row: Answers,
        held: dict[str, int],
        weighed: dict[str, Entry],
        judged: tuple[RuleSet, date, System],
    ) -> CylinderLine:
        rule_set, today, units = judged
        limit_found = fill.fill_limit(row, rule_set)
        tare = fill.tare_mg(row)
        last = weighed.get(f"cylinder:{cylinder}")
        limit = None if limit_found is None else mg(limit_found.mass)
        return CylinderLine(
            id=cylinder,
            refrigerant=row.text("refrigerant"),
            contents=row.text("contents"),
            mass_mg=sum(held.values()),
            limit_mg=limit,
            by="" if limit_found is None else str(limit_found.by),
            gross_limit_mg=None if limit is None or tare is None else limit + tare,
            refillable=row.yes("refillable"),
            due=row.date("requalification_due"),
            last_weighed="" if last is None else last.happened_at.date().isoformat(),
            flags=flags.worst_first(
                (
                    *flags.of_cylinder(cylinder, row, held, rule_set, today, units),
                    *self._unaccounted(cylinder, last),
                )
            ),
        )

    def _unaccounted(self, cylinder: str, last: Entry | None) -> tuple[Flag, ...]:
        """A difference that the last weighing found and nobody booked stays in sight."""
        if last is None or last.transfers or "weighed" not in last.payload:
            return ()
        found = stock.Weighing(cylinder, **last.payload["weighed"])
        return (flags.unaccounted(found, self.units),) if found.beyond else ()

    def history(
        self, place: str, before: tuple[int, int] | None = None, limit: int = 200
    ) -> list[HistoryRow]:
        """A place's movements with running balance, newest first."""
        return self.reading.history(place, before=before, limit=limit)

    def look_stock(self, act: str, typed: Typed) -> Look:
        """Understand and work out what is typed in a stock form."""
        answers = answer(STOCK[act], typed)
        shelf = self._shelf()
        worked = stock.work_out(act, answers, shelf)
        return Look(answers, worked, flags.of_stock(act, answers, shelf, worked))

    def act(self, act: str, typed: Typed, happened_at: datetime | None = None) -> Entry:
        """Record stock work.

        Raises
        ------
        StepRefused
            Wrong or missing fields, each with what it wants.
        Overfilled
            A cylinder filled above its limit without a reason.
        PostingRefused
            The ledger does not take it; nothing is recorded.
        """
        answers = answer(STOCK[act], typed)
        shelf = self._shelf()
        fields = dict(answers.refusals)
        fields |= {
            path: say("Expected {label}.", label=label.lower())
            for path, label in answers.missing.items()
        }
        if not fields:
            fields |= stock.refusals(act, answers, shelf)
        if fields:
            raise StepRefused(STOCK[act].title, fields)
        overfull = stock.overfull(act, answers, shelf)
        if overfull and not answers.text("override"):
            raise Overfilled(overfull)
        entry = self._post_act(act, typed, shelf, happened_at)
        self._changed()
        return entry

    def _post_act(
        self, act: str, typed: Typed, shelf: stock.Shelf, happened_at: datetime | None = None
    ) -> Entry:
        """Record an act that was looked through; whoever calls says what has changed."""
        answers = answer(STOCK[act], typed)
        worked = stock.work_out(act, answers, shelf)
        return self._post(
            stock.KINDS[act],
            {
                "typed": {key: text for key, text in typed.items() if text},
                "said": list(worked.sentences),
                "places": list(stock.places(act, answers)),
                **stock.recorded(act, answers, shelf),
            },
            transfers=stock.movements(act, answers, shelf),
            happened_at=happened_at,
            may_overdraw_mg=stock.overdraw_allowed_mg(act, answers, shelf),
        )

    def _ledger_doubt_mg(self, cylinder: str) -> int:
        """What the ledger may be off by for a cylinder, from all that moved since it was set.

        It was set when a weighing was booked, with what that scale may have been off by; what
        moved since was weighed with its own scale, or came as invoiced.
        """
        place, shelf = f"cylinder:{cylinder}", self._shelf()
        undone = self.reading.reversals()
        parts: list[Quantity] = []
        seen: set[str] = set()
        for row in self._all_history(place):
            if row.entry in undone or row.kind == "reversal" or row.entry in seen:
                continue
            seen.add(row.entry)
            entry = self.reading.entry(row.entry)
            weighed = entry.payload.get("weighed")
            if weighed is not None:
                doubt = weighed.get("scale_mg", weighed["tolerance_mg"])
                parts.append(from_mg(doubt) / COVERAGE)
                break
            typed = entry.payload.get("typed", {})
            parts += stock.doubts(typed, entry.transfers, place, shelf)
        return mg(ledger_uncertainty(parts)) if parts else 0

    def _all_history(self, place: str) -> Iterator[HistoryRow]:
        before = None
        while page := self.history(place, before):
            yield from page
            before = page[-1].key

    def cautions(self, act: str, answers: Answers) -> tuple[ChecklistLine, ...]:
        """What to mind at an act, by the class of what is moved."""
        cylinder = answers.text("source") or answers.text("cylinder")
        name = self._shelf().cylinder(cylinder).text("refrigerant")
        return safety_list.at_stock(act, refrigerant(name).safety_class if name else "")

    def _shelf(self) -> stock.Shelf:
        """What stock work needs to know; read once until something is recorded."""
        if self._shelf_read is None:
            self._shelf_read = stock.Shelf(
                cylinders=self.all_answers("cylinder"),
                contents_mg=self._contents(),
                instruments=self.all_answers("instrument"),
                rule_set=self.rule_set,
                units=self.units,
                ledger_doubt_mg=cache(self._ledger_doubt_mg),
            )
        return self._shelf_read

    def _changed(self, job: str | None = None) -> None:
        super()._changed(job)
        self._shelf_read = None


def _has(wanted: Sequence[str], shown: Iterable[str]) -> bool:
    """Whether every word is in what a line shows."""
    text = " ".join(shown).casefold()
    return all(word in text for word in wanted)
