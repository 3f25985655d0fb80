"""No sequence of operations makes mass appear or vanish; a refused one leaves no row."""

import tempfile
from collections import Counter
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from chargebench.errors import AlreadyRecorded, PostingRefused
from chargebench.ledger import Entry, Ledger, NewEntry, Transfer
from tests.ledger import books
from tests.ledger.books import BY, NOON

CYLINDERS = ("cylinder:C-014", "cylinder:C-015", "cylinder:C-099", "cylinder:C-7")
EQUIPMENT = ("equipment:E-203", "equipment:E-204")
SINKS = ("reclaimer", "destruction", "atmosphere", "difference")
REFRIGERANTS = ("R290", "R404A", "R600a")
MASSES = st.integers(0, 5_000)


class Book(RuleBasedStateMachine):
    """A shop worked at random, beside the simplest ledger there is: a counter of masses."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory(prefix="chargebench-book-")
        self.shop = Ledger.create(Path(self.folder.name) / "shop.chargebench")
        self.held: Counter[tuple[str, str]] = Counter()
        self.taken: list[Entry] = []
        self.reversed: set[str] = set()
        self.jobs: dict[str, bool] = {}

    @initialize()
    def fill_registers(self) -> None:
        books.register(self.shop)
        self.recorded = self.shop.head()[0]

    def _fits(self, lines: list[Transfer]) -> bool:
        """Whether a careful bookkeeper takes the lines, told from the counter alone."""
        after = self.held.copy()
        for line in lines:
            after[line.source, line.refrigerant] -= line.mass_mg
            after[line.target, line.refrigerant] += line.mass_mg
        for place, refrigerant in {(t.source, t.refrigerant) for t in lines if t.mass_mg}:
            fell = after[place, refrigerant] < self.held[place, refrigerant]
            if place in CYLINDERS and fell and after[place, refrigerant] < 0:
                return False
        for line in lines:
            if line.target not in CYLINDERS or line.target == "cylinder:C-099" or not line.mass_mg:
                continue
            labelled = "R290" if line.target in CYLINDERS[:2] else line.refrigerant
            others = [
                r for r in REFRIGERANTS if r != line.refrigerant and after[line.target, r] > 0
            ]
            if labelled != line.refrigerant or others:
                return False
        return True

    def _post(self, new: NewEntry, *, welcome: bool) -> None:
        lines = list(new.transfers)
        if welcome and self._fits(lines):
            self.taken.append(self.shop.post(new))
            self._count(lines)
        else:
            with pytest.raises(PostingRefused):
                self.shop.post(new)

    def _count(self, lines: list[Transfer]) -> None:
        self.recorded += 1
        for line in lines:
            self.held[line.source, line.refrigerant] -= line.mass_mg
            self.held[line.target, line.refrigerant] += line.mass_mg

    @rule(to=st.sampled_from(CYLINDERS), what=st.sampled_from(REFRIGERANTS), mass_mg=MASSES)
    def receive(self, to: str, what: str, mass_mg: int) -> None:
        line = Transfer("supplier", to, what, mass_mg, f"{mass_mg} mg")
        self._post(NewEntry("received", BY, NOON, {}, (line,)), welcome=True)

    @rule(
        ends=st.lists(st.sampled_from(CYLINDERS), min_size=2, max_size=2, unique=True),
        what=st.sampled_from(REFRIGERANTS),
        mass_mg=MASSES,
    )
    def decant(self, ends: list[str], what: str, mass_mg: int) -> None:
        line = Transfer(ends[0], ends[1], what, mass_mg, "decanted")
        self._post(NewEntry("decanted", BY, NOON, {}, (line,)), welcome=True)

    @rule(
        source=st.sampled_from(CYLINDERS + EQUIPMENT),
        to=st.sampled_from(SINKS + EQUIPMENT),
        what=st.sampled_from(REFRIGERANTS),
        masses=st.lists(MASSES, min_size=1, max_size=3),
    )
    def move_out(self, source: str, to: str, what: str, masses: list[int]) -> None:
        if source != to:
            lines = tuple(Transfer(source, to, what, mass, "typed") for mass in masses)
            self._post(NewEntry("step-signed", BY, NOON, {}, lines), welcome=True)

    @rule(
        source=st.sampled_from(EQUIPMENT), to=st.sampled_from(CYLINDERS),
        what=st.sampled_from(REFRIGERANTS), mass_mg=MASSES,
    )  # fmt: skip
    def recover(self, source: str, to: str, what: str, mass_mg: int) -> None:
        line = Transfer(source, to, what, mass_mg, "recovered")
        self._post(NewEntry("step-signed", BY, NOON, {}, (line,)), welcome=True)

    @precondition(lambda self: self.taken)
    @rule(pick=st.integers(0, 10**6))
    def reverse(self, pick: int) -> None:
        entry = self.taken[pick % len(self.taken)]
        lines = [line.turned() for line in entry.transfers]
        shut = entry.job is not None and not self.jobs[entry.job]
        if entry.id not in self.reversed and not shut and self._fits(lines):
            self.shop.reverse(entry.id, BY, NOON, "mistyped")
            self.reversed.add(entry.id)
            self._count(lines)
        else:
            with pytest.raises(PostingRefused):
                self.shop.reverse(entry.id, BY, NOON, "mistyped")

    @precondition(lambda self: self.taken)
    @rule(pick=st.integers(0, 10**6), same=st.booleans())
    def post_again(self, pick: int, *, same: bool) -> None:
        entry = self.taken[pick % len(self.taken)]
        payload = entry.payload if same else {"note": "another"}
        new = NewEntry(entry.kind, BY, NOON, payload, entry.transfers, entry.job, entry.id)
        if same:
            assert self.shop.post(new) == entry
        else:
            with pytest.raises(AlreadyRecorded):
                self.shop.post(new)

    @rule()
    def open_job(self) -> None:
        self.jobs[books.open_job(self.shop)] = True
        self.recorded += 1

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 10**6), mass_mg=MASSES)
    def work_in_job(self, pick: int, mass_mg: int) -> None:
        job = list(self.jobs)[pick % len(self.jobs)]
        line = Transfer("outside", "equipment:E-203", "R290", mass_mg, "assumed")
        new = NewEntry("step-signed", BY, NOON, {}, (line,), job=job)
        self._post(new, welcome=self.jobs[job])

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 10**6))
    def close_or_reopen(self, pick: int) -> None:
        job = list(self.jobs)[pick % len(self.jobs)]
        kind = "job-closed" if self.jobs[job] else "job-reopened"
        self.shop.post(NewEntry(kind, BY, NOON, {}, job=job))
        self.jobs[job] = not self.jobs[job]
        self.recorded += 1

    @invariant()
    def mass_is_conserved(self) -> None:
        assert set(books.sums(self.shop).values()) <= {0}

    @invariant()
    def balances_are_what_was_taken(self) -> None:
        found = {(b.place, b.refrigerant): b.mass_mg for b in self.shop.balances("")}
        assert {key: mass for key, mass in found.items() if mass} == {
            key: mass for key, mass in self.held.items() if mass
        }

    @invariant()
    def refused_entries_leave_no_row(self) -> None:
        if hasattr(self, "recorded"):
            assert self.shop.head()[0] == self.recorded
            assert sum(1 for _ in self.shop.entries()) == self.recorded

    def teardown(self) -> None:
        found = self.shop.verify()
        self.shop.close()
        self.folder.cleanup()
        assert found.problems == ()


Book.TestCase.settings = settings(stateful_step_count=30)
TestBook = Book.TestCase
