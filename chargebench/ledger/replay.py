"""What follows from the entries as they alone give it; what verify compares with."""

from collections.abc import Callable, Sequence
from typing import Any

import msgspec

from chargebench.ledger import sameness, tally
from chargebench.ledger.entry import payload_text
from chargebench.ledger.projection import CORRECTED_OTHERWISE, ROW_KINDS, takes_over


class Replay:
    """Moved entry by entry, in the order recorded; `signed_by` tells of an entry what it was."""

    def __init__(self, signed_by: Callable[[str], tuple[str, str]]) -> None:
        self._signed_by = signed_by
        self.rows: dict[tuple[str, str], str] = {}
        self.jobs: dict[str, tuple[Any, ...]] = {}
        self.reversals: dict[str, str] = {}
        self.moved_by: dict[tuple[str, ...], int] = {}
        self.days: tally.Days = {}
        self.places: set[tuple[str, str, int]] = set()
        self._row_recorded_at: dict[tuple[str, str], str] = {}

    def names(self) -> dict[str, str]:
        """What each id goes by that others name too."""
        decided = (text for (register, _), text in self.rows.items() if register == sameness.SAME)
        return sameness.names(msgspec.json.decode(text, type=dict[str, str]) for text in decided)

    def take(
        self,
        *,
        kind: str,
        job: str | None,
        entry_id: str,
        payload: str,
        at: str,
        recorded_at: str,
        number: int,
        position: int,
    ) -> None:
        """Move by one stored entry; raises KeyError or TypeError if the entry can not be one."""
        if kind not in CORRECTED_OTHERWISE:
            if job is None:
                places = tally.places_named(job, msgspec.json.decode(payload))
                self.places.update((place, kind, position) for place in places)
            return
        content = msgspec.json.decode(payload)
        if kind in ROW_KINDS:
            key, after = (content["register"], content["id"]), payload_text(content["after"])
            standing_at = self._row_recorded_at.get(key, "")
            if takes_over(self.rows.get(key), standing_at, content, recorded_at):
                self.rows[key] = after
                self._row_recorded_at[key] = recorded_at
                self.moved_by["row", *key] = number
        elif kind == "reversal":
            self.reversals.setdefault(content["reverses"], entry_id)
            self.moved_by["reversal", content["reverses"]] = number
        else:
            job_id = str(job)
            self.moved_by["job", job_id] = number
            if kind == "job-opened":
                number, equipment = content["number"], content["equipment"]
                self.jobs[job_id] = (job_id, number, equipment, "open", at, None, position)
            else:
                closed = kind == "job-closed"
                kept = self.jobs[job_id]
                self.jobs[job_id] = (
                    *kept[:3], "closed" if closed else "open", kept[4], at if closed else None,
                    kept[6],
                )  # fmt: skip

    def move(self, bench: str, entry: Sequence[Any], lines: Sequence[Sequence[Any]]) -> None:
        """Add mass lines to their day, or take those of a reversal back from it.

        `entry` is id, kind, the moment, who signed, and the payload. Only the first reversal of
        an entry takes anything back: what two benches reversed at once is one thing.
        """
        entry_id, kind, at, by, payload = entry
        sign = 1
        if kind == "reversal":
            original = msgspec.json.decode(payload)["reverses"]
            if self.reversals.get(original) != entry_id:
                return
            at, by = self._signed_by(original)
            sign = -1
            lines = [(target, source, *rest) for source, target, *rest in lines]
        for key, mass_mg, count in tally.of_lines(at, bench, by, lines, sign):
            tally.add(self.days, key, mass_mg, count)
