"""Hand-over between benches of one shop: chain files out and in, and what then is to be decided."""

import re
from collections.abc import Callable, Iterable, Iterator
from itertools import combinations
from pathlib import Path
from typing import Self

from chargebench import flags, ledger
from chargebench.desk import signable
from chargebench.desk.handed import HandedOut, MetTwice, taken_words
from chargebench.desk.opened import now
from chargebench.desk.registers import PREFIXES
from chargebench.desk.rights import Act
from chargebench.desk.takein import TakeIn
from chargebench.errors import (
    ChainFileRefused,
    ChainFileWaits,
    ChargebenchError,
    JobFileRefused,
)
from chargebench.flags import Flag
from chargebench.ledger import ALIKE, HANDED_OVER, SAME, Conflict, Entry, TakenOver
from chargebench.words import say

Progress = Callable[[int, int], None]
_LETTER = re.compile(r"[A-Z][A-Z0-9]{0,7}")
_NUMBERS = {"cylinder": "serial", "instrument": "serial", "person": "certificate"}
_CALLED = {"serial": "serial number", "certificate": "certificate number"}


class HandOver(TakeIn):
    """Gives this bench's entries to others of the shop, and takes theirs."""

    @classmethod
    def begin(cls, path: Path, source: Path, progress: Progress | None = None) -> Self:
        """Make the file of a further bench, of a chain file handed over for it.

        Raises
        ------
        ChainFileRefused
            The file was not handed over to begin a bench, or is not whole and sound.
        ShopFileRefused
            There is a file already, or none can be written there.
        """
        return cls(ledger.begin(path, source, now(), signable.check, progress))

    def next_bench(self) -> str:
        """The first letter no bench of this shop has."""
        taken = {*self._benches(), *PREFIXES.values()}  # job numbers must not look like ids
        single = (chr(code) for code in range(ord("B"), ord("Z") + 1))
        further = (f"B{number}" for number in range(2, 1_000_000))
        return next(each for each in (*single, *further) if each not in taken)

    def _benches(self) -> set[str]:
        named = self.reading.entries(kind="bench-named")
        return {*self.reading.heads(), self.reading.bench, *(e.payload["bench"] for e in named)}

    def hand_over(
        self,
        path: Path,
        *,
        only: str | None = None,
        first: int = 1,
        for_bench: str = "",
        progress: Progress | None = None,
    ) -> HandedOut:
        """Write a chain file: every entry known here, or those of one bench from a number on.

        With `for_bench` the file begins a further bench of that letter, which is recorded, so that
        no two benches get the same.

        Raises
        ------
        ChainFileRefused
            A letter that is taken or can not be one, or a number that is not there.
        ExportRefused
            The file is there already, or can not be written.
        """
        if for_bench:
            if only is not None:
                raise ChainFileRefused("A new bench begins with every entry; name no other bench.")
            self.name_bench(for_bench, path)
        return self.write_chain_file(
            path, only=only, first=first, for_bench=for_bench, progress=progress
        )

    def write_chain_file(
        self,
        path: Path,
        *,
        only: str | None = None,
        first: int = 1,
        for_bench: str = "",
        progress: Progress | None = None,
    ) -> HandedOut:
        """Write a chain file as `hand_over` does, whose letter, if any, was given already."""
        head = self.reading.hand_over(
            path, only=only, first=first, for_bench=for_bench, progress=progress
        )
        return HandedOut(path, head.chains)

    def name_bench(self, letter: str, path: Path) -> None:
        """Give a further bench its letter, once, before the file at `path` is written for it."""
        if not _LETTER.fullmatch(letter):
            raise ChainFileRefused(
                say(
                    "“{letter}” can not name a bench; a capital letter and up to seven "
                    "more capitals or digits were expected, for example {next_bench}.",
                    letter=letter,
                    next_bench=self.next_bench(),
                )
            )
        if letter in self._benches():
            raise ChainFileRefused(
                say(
                    "There is a bench {letter} already; {next_bench} is free.",
                    letter=letter,
                    next_bench=self.next_bench(),
                )
            )
        if path.exists():
            raise ChainFileRefused(say("{path} is there already. Choose another name.", path=path))
        self._post("bench-named", {"bench": letter})
        self._changed()

    def take_over(self, path: Path, progress: Progress | None = None) -> TakenOver:
        """Take in a chain file: what is new in it, whole or not at all.

        Raises
        ------
        ChainFileRefused
            Why it can not be taken in, and what to do; nothing of it was.
        NotAllowed, SignatureLocked
            Who takes it in may not, or did not unlock their signature.
        """
        by = self._signs(Act.TAKE_IN) if self.person else ""
        try:
            return self.ledger.take_over(
                path, by, now(), name=path.name, check=signable.check, progress=progress
            )
        except ChainFileRefused as refusal:
            said = str(refusal)
            named = said if path.name in said else f"{path.name}: {said}"
            raise type(refusal)(named) from refusal
        finally:
            self._ruled = None  # the shop's own row may have come with it
            self._changed()

    def take_in_files(
        self, paths: Iterable[Path], progress: Progress | None = None
    ) -> Iterator[tuple[Path, str]]:
        """Take in job files and chain files; each with what was recorded of it, in words.

        A chain file that goes on from another waits for it, in whatever order they are given.

        Raises
        ------
        JobFileRefused, ChainFileRefused
            Of the first that can not be taken in; those given before stay taken in.
        """
        waiting = list(paths)
        while waiting:
            left: dict[Path, ChainFileWaits] = {}
            for path in waiting:
                try:
                    yield path, self._take_in_words(path, progress)
                except ChainFileWaits as refusal:
                    left[path] = refusal
            if len(left) == len(waiting):
                raise next(iter(left.values()))
            waiting = list(left)

    def _take_in_words(self, path: Path, progress: Progress | None) -> str:
        if ledger.is_chain_file(path):
            return taken_words(self.take_over(path, progress))
        try:
            return say("{count} entries recorded.", count=len(self.take_in(path)))
        except JobFileRefused as refusal:
            said = str(refusal)
            raise JobFileRefused(said if path.name in said else f"{path.name}: {said}") from refusal

    def met_twice(self) -> list[MetTwice]:
        """Pairs of rows with the same number that nobody has decided on yet."""
        decided = set(self.reading.rows(SAME))
        names = self.reading.names()
        found: list[MetTwice] = []
        for register in ALIKE:
            by_number: dict[str, list[str]] = {}
            for row_id, row in self.rows(register).items():
                number = _plain(row.get(_NUMBERS[register], ""))
                if number:
                    by_number.setdefault(number, []).append(row_id)
            for ids in by_number.values():
                found += [
                    self._pair(register, one, other)
                    for one, other in combinations(ids, 2)
                    if ledger.pair_id(register, one, other) not in decided
                    and not _one_thing(names, register, one, other)
                ]
        return found

    def _pair(self, register: str, one: str, other: str) -> MetTwice:
        key = _NUMBERS[register]
        return MetTwice(register, one, other, _CALLED[key], self.row(register, one)[key])

    def decide(self, register: str, one: str, other: str, *, same: bool, reason: str = "") -> Entry:
        """Record whether two ids name one thing; a later decision takes the place of this one.

        Raises
        ------
        ChargebenchError
            One of them is not in the register.
        """
        for row_id in (one, other):
            if register not in ALIKE or not self.row(register, row_id):
                raise ChargebenchError(
                    say(
                        "Expected a row of the register {register}; got “{row_id}”.",
                        register=register,
                        row_id=row_id,
                    )
                )
        row = ledger.decision(register, one, other, same=same, reason=reason.strip())
        payload = {"register": SAME, "id": ledger.pair_id(register, one, other), "after": row}
        entry = self._post(SAME, payload)
        self._changed()
        return entry

    def conflicts(self) -> dict[str, tuple[Entry, Conflict]]:
        """Conflicts of files taken in, here or at another bench, that nobody has settled yet."""
        settled = {
            (entry.payload["entry"], entry.payload["conflict"])
            for entry in self.reading.entries(kind="settled")
        }
        return {
            f"conflict:{entry.id}/{place}": (entry, Conflict(**each))
            for entry in self.reading.entries(kind=HANDED_OVER)
            for place, each in enumerate(entry.payload["conflicts"])
            if (entry.id, place) not in settled
        }

    def settle(self, key: str, reason: str) -> Entry:
        """Record how a conflict was settled; its flag goes.

        Raises
        ------
        ChargebenchError
            No such conflict is open, or no reason is given.
        """
        if key not in self.conflicts():
            raise ChargebenchError("This conflict is not open any more.")
        if not reason.strip():
            raise ChargebenchError("Expected how it was settled.")
        entry_id, _, place = key.removeprefix("conflict:").rpartition("/")
        payload = {"entry": entry_id, "conflict": int(place), "reason": reason.strip()}
        entry = self._post("settled", payload)
        self._changed()
        return entry

    def flags_in_parts(self) -> Iterator[list[Flag]]:
        """Every flag, with those of hand-overs among them."""
        yield list(self._of_handovers())
        yield from super().flags_in_parts()

    def _of_handovers(self) -> Iterator[Flag]:
        for key, (entry, conflict) in self.conflicts().items():
            job = self.reading.job(conflict.job) if conflict.job else None
            number = job.number if job else ""
            yield flags.of_conflict(conflict, key, entry.payload["from"], number)
        for pair in self.met_twice():
            yield flags.of_met_twice(
                pair.register, pair.one, pair.other, what=pair.what, number=pair.number
            )


def _plain(number: str) -> str:
    """A serial number by its letters and digits, however it was spaced."""
    return re.sub(r"[\W_]", "", number).casefold()


def _one_thing(names: dict[str, str], register: str, one: str, other: str) -> bool:
    called = [names.get(f"{register}:{each}", each) for each in (one, other)]
    return called[0] == called[1]
