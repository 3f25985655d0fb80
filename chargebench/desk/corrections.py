"""Corrections: what was signed stays, a further entry takes it back, another takes its place."""

from collections.abc import Sequence

from chargebench.desk.cases import Cases
from chargebench.desk.opened import now
from chargebench.desk.photos import PICTURE
from chargebench.desk.rights import Act
from chargebench.desk.views import Correction
from chargebench.errors import ChargebenchError, NotReversible
from chargebench.ledger import Entry
from chargebench.steps import stock
from chargebench.words import say

STEP_KINDS = ("step-signed", "step-not-needed", "follow-up")
STOCK = "stock"  # stands where the job's id stands, for text of stock work kept while typed
_ACTS = {kind: act for act, kind in stock.KINDS.items()}


class Corrections(Cases):
    """Takes back what was recorded, and tells what became of an entry."""

    def reverse(self, entry_id: str, reason: str) -> Entry:
        """Take back a recorded entry by a further one; its text stands open again to be mended.

        Raises
        ------
        PostingRefused
            What can not be reversed, is already, or belongs to a closed job.
        NotAllowed
            Somebody else's entry, and who works is not of the shop.
        """
        if not reason.strip():
            raise ChargebenchError("Expected a reason for the reversal.")
        entry = self.reading.entry(entry_id)
        if says := self.why_not_reversed(entry):
            raise NotReversible(says)
        own = entry.by == self.person
        reversal = self.ledger.reverse(
            entry_id,
            self._signs(Act.CORRECT_OWN if own else Act.CORRECT_OTHERS),
            now(),
            reason.strip(),
            may_overdraw_mg={
                line.target: line.mass_mg for line in entry.transfers
            },  # a correction is not refused for what happened since; below zero is flagged
        )
        self._open_again(entry)
        self._changed(entry.job)
        return reversal

    @staticmethod
    def why_not_reversed(entry: Entry) -> str:
        """Why an entry of its kind is not taken back; empty where it can be."""
        moves = entry.kind != "reversal" and bool(entry.transfers)
        if moves or entry.kind in (*STEP_KINDS, *_ACTS, PICTURE):
            return ""
        return say(
            "Entry {entry_number} ({kind}) is not reversed; record the right state as a new entry.",
            entry_number=entry.number,
            kind=entry.kind,
        )

    def _open_again(self, entry: Entry) -> None:
        typed = entry.payload.get("typed")
        if typed is None:
            return
        if entry.job and "step" in entry.payload:
            self.ledger.keep_typed(entry.job, entry.payload["step"], typed)
        elif (act := _ACTS.get(entry.kind)) and not self.reading.typed(STOCK, act):
            self.ledger.keep_typed(STOCK, act, typed)

    def act_to_mend(self, entry: Entry) -> str:
        """The stock act in which a reversed entry's text stands open again; empty for none."""
        return "" if entry.job else _ACTS.get(entry.kind, "")

    def entry(self, entry_id: str) -> Entry:
        """One entry."""
        return self.reading.entry(entry_id)

    def reversed_among(self, entries: Sequence[str]) -> frozenset[str]:
        """Those of these entries that were taken back."""
        return frozenset(self.reading.reversals_of(entries))

    def taken_back(self, job: str, step: str) -> list[tuple[Entry, Entry]]:
        """Entries of a step that were taken back, oldest first, each with its reversal."""
        recorded = {entry.id: entry for entry in self.reading.entries(job=job)}
        return [
            (recorded[reversal.payload["reverses"]], reversal)
            for reversal in recorded.values()
            if reversal.kind == "reversal"
            and recorded[reversal.payload["reverses"]].payload.get("step") == step
        ]

    def correction(self, entry: Entry) -> Correction:
        """What an entry takes back or replaces, and what became of it."""
        back = self.reading.reversals_of([entry.id]).get(entry.id)
        first = {name: entry.payload.get(name) for name in ("reverses", "replaces")}
        return Correction(
            reverses=self.reading.entry(first["reverses"]) if first["reverses"] else None,
            reversed_by=self.reading.entry(back) if back else None,
            replaces=self.reading.entry(first["replaces"]) if first["replaces"] else None,
            replaced_by=self._replacement(entry) if back and entry.job else None,
        )

    def _replacement(self, entry: Entry) -> Entry | None:
        later = self.reading.entries(job=entry.job, after=entry.id)
        return next((each for each in later if each.payload.get("replaces") == entry.id), None)
