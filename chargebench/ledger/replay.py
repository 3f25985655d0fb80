"""The registers, jobs and reversals as the entries alone give them; what verify compares with."""

from typing import Any

import msgspec

from chargebench.ledger import sameness
from chargebench.ledger.entry import payload_text
from chargebench.ledger.projection import CORRECTED_OTHERWISE, ROW_KINDS, takes_over


class Replay:
    """Moved entry by entry, in the order recorded, without a database."""

    def __init__(self) -> None:
        self.rows: dict[tuple[str, str], str] = {}
        self.jobs: dict[str, tuple[Any, ...]] = {}
        self.reversals: dict[str, str] = {}
        self.moved_by: dict[tuple[str, ...], int] = {}
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
