"""Stock-takes: kept as typed until they are signed, then an entry for each cylinder or none."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from chargebench.desk.corrections import STOCK as KEPT_AS
from chargebench.desk.opened import now
from chargebench.desk.stock import Stock
from chargebench.errors import StepRefused
from chargebench.ledger import Entry
from chargebench.steps import stocktake
from chargebench.steps.stocktake import Counted, Word

KEPT_STEP = "stocktake"


@dataclass(frozen=True, slots=True)
class TypedStockTake:
    """What is typed in a stock-take: the scale, and a line for each cylinder."""

    scale: str = ""
    lines: tuple[Mapping[str, str], ...] = ()

    def with_line(self, line: Mapping[str, str]) -> "TypedStockTake":
        """With one more line; a cylinder weighed again takes its earlier line's place."""
        return replace(self, lines=tuple(stocktake.latest((*self.lines, line))))

    def without(self, cylinder: str) -> "TypedStockTake":
        """Without a cylinder's line."""
        left = (
            line for line in self.lines if stocktake.named(line.get("cylinder", ""))[0] != cylinder
        )
        return replace(self, lines=tuple(left))

    def line(self, cylinder: str) -> Mapping[str, str]:
        """A cylinder's line; empty where there is none."""
        found = (
            line for line in self.lines if stocktake.named(line.get("cylinder", ""))[0] == cylinder
        )
        return next(found, {})


class StockTakes(Stock):
    """Counts many cylinders in one go."""

    def stocktake_typed(self) -> TypedStockTake:
        """The stock-take that was begun and not signed, as last kept."""
        kept = self.reading.typed(KEPT_AS, KEPT_STEP)
        return TypedStockTake(kept.get("scale", ""), tuple(kept.get("lines", ())))

    def keep_stocktake(self, typed: TypedStockTake) -> None:
        """Keep what is typed, durably."""
        lines: Sequence[Any] = [dict(line) for line in typed.lines]
        self.ledger.keep_typed(KEPT_AS, KEPT_STEP, {"scale": typed.scale, "lines": lines})

    def look_stocktake(self, typed: TypedStockTake) -> stocktake.StockTake:
        """How the cylinders stand, counted and not; records nothing."""
        return stocktake.count(typed.scale, typed.lines, self._shelf())

    def sign_stocktake(
        self, typed: TypedStockTake, happened_at: datetime | None = None
    ) -> tuple[Entry, ...]:
        """Record a weighing for each cylinder counted and what it all came to, all or none.

        Raises
        ------
        StepRefused
            A line that is not settled, by its cylinder; or nothing was counted.
        PostingRefused
            The ledger does not take one; nothing is recorded.
        """
        shelf, when = self._shelf(), happened_at or now()
        found = stocktake.count(typed.scale, typed.lines, shelf)
        refused = dict(found.refusals)
        refused |= {line.cylinder: f"{line.cylinder}: {line.says}" for line in found.lines
                    if not line.settled}  # fmt: skip
        if not found.lines:
            refused["lines"] = "Expected a cylinder; scan or type its id, then its weight."
        if refused:
            raise StepRefused("Stock-take", refused)
        with self.ledger.together():
            entries = [self._post_act("weigh", self._line(typed, line), shelf, when)
                       for line in found.recorded]  # fmt: skip
            summary = self._post(
                stocktake.KIND,
                {
                    "typed": {"scale": typed.scale},
                    "said": stocktake.said(found, self.units),
                    "entries": [entry.id for entry in entries],
                    "lines": [_summed(line) for line in found.lines],
                    "not_counted": [line.cylinder for line in found.of(Word.OPEN)],
                },
                happened_at=when,
            )
            self.ledger.forget_typed(KEPT_AS, KEPT_STEP)
        self._changed()
        return (*entries, summary)

    @staticmethod
    def _line(typed: TypedStockTake, line: Counted) -> dict[str, str]:
        return stocktake.weigh_typed(typed.line(line.cylinder), typed.scale)


def _summed(line: Counted) -> dict[str, Any]:
    """One cylinder as the summarising entry keeps it."""
    row: dict[str, Any] = {
        "cylinder": line.cylinder,
        "refrigerant": line.refrigerant,
        "gross": line.gross,
        "word": str(line.word),
    }
    if line.weighing is not None:
        row["difference_mg"] = line.weighing.difference_mg
        row["tolerance_mg"] = line.weighing.tolerance_mg
    return row
