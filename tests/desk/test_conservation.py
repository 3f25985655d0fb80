"""Whatever a shop does in whatever order, mass neither appears nor vanishes."""

import tempfile
from collections import Counter
from collections.abc import Callable
from pathlib import Path
from typing import Any

from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from chargebench.errors import ChargebenchError
from chargebench.ledger import Entry
from tests.desk import shops

CYLINDERS = st.sampled_from(sorted(shops.CYLINDERS))
EQUIPMENT = st.sampled_from(("E-001", "E-002"))
GRAMS = st.one_of(st.integers(0, 3_000), st.floats(0, 200).map(lambda grams: round(grams, 3)))
UNITS = st.sampled_from(("g", "oz", "lb", "kg"))
PLATES = {"E-001": shops.NAMEPLATE, "E-002": {"refrigerant": "R449A", "charge": "20 lb"}}


class Bench(RuleBasedStateMachine):
    """A shop worked at random through its desk, beside a plain counter of what its entries say."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory(prefix="chargebench-desk-")
        self.desk = shops.build(Path(self.folder.name) / "shop.chargebench")
        self.counted: Counter[tuple[str, str]] = Counter()
        self.recorded = self.desk.reading.head()[0]
        self.entries: list[Entry] = []
        self.jobs: list[tuple[str, str]] = []

    def _do(self, act: Callable[[], Entry]) -> None:
        """One act: it is recorded whole, or refused and leaves no entry."""
        try:
            entry = act()
        except ChargebenchError:
            assert self.desk.reading.head()[0] == self.recorded
            return
        self.recorded += 1
        self.entries.append(entry)
        for line in entry.transfers:
            self.counted[line.source, line.refrigerant] -= line.mass_mg
            self.counted[line.target, line.refrigerant] += line.mass_mg

    @rule(cylinder=CYLINDERS, amount=GRAMS, unit=UNITS)
    def receive(self, cylinder: str, amount: float, unit: str) -> None:
        typed = {"cylinder": cylinder, "mass": f"{amount} {unit}", "override": "busy"}
        self._do(lambda: self.desk.act("receive", typed))

    @rule(cylinder=CYLINDERS, grams=GRAMS, to=st.sampled_from(("supplier", "reclaimer")))
    def give_back(self, cylinder: str, grams: float, to: str) -> None:
        typed = {"cylinder": cylinder, "to": to, "mass": f"{grams} g"}
        self._do(lambda: self.desk.act("return", typed))

    @rule(cylinder=CYLINDERS, gross=st.integers(3_000, 12_000), accept=st.booleans())
    def weigh(self, cylinder: str, gross: int, *, accept: bool) -> None:
        typed = {"cylinder": cylinder, "scale": "I-001", "gross": f"{gross} g",
                 "accept": "yes" if accept else "no", "reason": "found so"}  # fmt: skip
        self._do(lambda: self.desk.act("weigh", typed))

    @rule(source=CYLINDERS, into=CYLINDERS, grams=GRAMS, unit=UNITS)
    def decant(self, source: str, into: str, grams: float, unit: str) -> None:
        typed = {"source": source, "target": into, "scale": "I-001", "weighed": "into",
                 "before": "0 g", "after": f"{grams} {unit}", "override": "busy"}  # fmt: skip
        self._do(lambda: self.desk.act("decant", typed))

    @rule(equipment=EQUIPMENT)
    def open_job(self, equipment: str) -> None:
        self.jobs.append((self.desk.open_job(equipment), equipment))
        self.recorded += 1

    def _sign(self, pick: int, step: str, typed: Any) -> None:
        job, _ = self.jobs[pick % len(self.jobs)]
        self._do(lambda: self.desk.sign(job, step, typed))

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 99))
    def read_nameplate(self, pick: int) -> None:
        _, equipment = self.jobs[pick % len(self.jobs)]
        self._sign(pick, "nameplate", PLATES[equipment])

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 99), grams=GRAMS, cylinder=CYLINDERS)
    def recover(self, pick: int, grams: float, cylinder: str) -> None:
        self._sign(pick, "recovery", shops.recovery(grams, cylinder))

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 99), grams=GRAMS)
    def release(self, pick: int, grams: float) -> None:
        typed = {"how": "released where the law allows", "released": f"{grams} g", "ground": "so"}
        self._sign(pick, "recovery", typed)

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 99))
    def evacuate(self, pick: int) -> None:
        self._sign(pick, "evacuation", {"pulled_to": "300 micron"})

    @precondition(lambda self: self.jobs)
    @rule(
        pick=st.integers(0, 99), grams=GRAMS, cylinder=CYLINDERS, hose=st.booleans(),
        kind=st.sampled_from(("into an evacuated system", "brought to full charge")),
    )  # fmt: skip
    def charge(self, pick: int, grams: float, cylinder: str, kind: str, *, hose: bool) -> None:
        typed = shops.weigh_in(grams, cylinder, kind)
        if hose:
            typed["lines"][0] |= {"hose_state": "liquid", "hose_volume": "12 mL"}
        self._sign(pick, "weigh_in", typed)

    @precondition(lambda self: self.jobs)
    @rule(pick=st.integers(0, 99))
    def take_out_of_service(self, pick: int) -> None:
        self._sign(pick, "close", {"ends": "taken out of service"})

    @precondition(lambda self: self.entries)
    @rule(pick=st.integers(0, 999))
    def take_back(self, pick: int) -> None:
        entry = self.entries[pick % len(self.entries)]
        self._do(lambda: self.desk.reverse(entry.id, "mistyped"))

    @invariant()
    def mass_is_conserved(self) -> None:
        assert set(shops.sums(self.desk).values()) <= {0}

    @invariant()
    def balances_are_what_the_entries_say(self) -> None:
        found = {(b.place, b.refrigerant): b.mass_mg for b in self.desk.reading.balances("")}
        assert {key: mass for key, mass in found.items() if mass} == {
            key: mass for key, mass in self.counted.items() if mass
        }

    @invariant()
    def refused_acts_leave_no_entry(self) -> None:
        assert sum(1 for _ in self.desk.entries()) == self.recorded

    @invariant()
    def every_screen_can_be_drawn(self) -> None:
        lines = self.desk.cylinders()
        assert sum(line.mass_mg for line in lines) == sum(
            mass for (place, _), mass in self.counted.items() if place.startswith("cylinder:")
        )
        assert len(self.desk.jobs()) == len(self.jobs)

    def teardown(self) -> None:
        found = self.desk.verify()
        raised = self.desk.all_flags()
        self.desk.close()
        self.folder.cleanup()
        assert found.problems == ()
        assert all(flag.says for flag in raised)


Bench.TestCase.settings = settings(
    max_examples=max(10, settings().max_examples // 5), stateful_step_count=20, deadline=None
)
TestBench = Bench.TestCase
