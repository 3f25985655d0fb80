"""What is fuzzed: a job file, a chain file and a shop file, each with what must hold afterwards."""

import json
import shutil
from collections.abc import Callable
from pathlib import Path
from random import Random
from typing import Any, ClassVar

from chargebench.desk import Desk
from chargebench.errors import ChargebenchError
from chargebench.ledger import Ledger, Reader, rescue
from tests.desk import benches, shops
from tests.fuzz import mutate
from tests.jobfile import broken
from tests.ledger import chains

SAMPLES = Path(__file__).resolve().parents[2] / "sample_jobs"
RESCUED_ONCE_IN = 40


class Target:
    """A shop to try files on. `try_one` gives back whether the file was taken, or raises."""

    name: ClassVar[str]

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._kept = folder / "kept.chargebench"
        self._desk: Desk | None = None

    def mutated(self, chance: Random) -> bytes:
        """A file that is nearly right."""
        raise NotImplementedError

    def try_one(self, content: bytes, chance: Random) -> bool:
        """Offer it; anything but a refusal that changed nothing, or a sound take-in, raises."""
        raise NotImplementedError

    @property
    def desk(self) -> Desk:
        """The shop as it was before anything was taken in."""
        if self._desk is None:
            copy = self.folder / "tried.chargebench"
            shutil.copy(self._kept, copy)
            self._desk = Desk(Ledger.open(copy, backups=0), "P-01")
        return self._desk

    def forget(self) -> None:
        """Throw away what was taken in."""
        if self._desk is not None:
            self._desk.close()
            self._desk = None

    def offer(self, content: bytes, take: Callable[[bytes], str]) -> bool:
        """Take a file in: refused with nothing changed, or whole into a shop that verifies."""
        before = (self.desk.reading.heads(), self.desk.reading.balances(""))
        if take(content):
            assert (self.desk.reading.heads(), self.desk.reading.balances("")) == before, "partial"
            return False
        assert self.desk.verify().problems == ()
        self.desk.all_flags()
        self.forget()
        return True


class JobFiles(Target):
    """Job files: a small good one and those of the sample shop, as bytes and as trees."""

    name = "job files"

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        Desk.create(self._kept, shops.SHOP, shops.PERSON).close()
        small = [broken.file()] * 6
        self._files = small + [path.read_bytes() for path in sorted(SAMPLES.glob("*.json"))]

    def mutated(self, chance: Random) -> bytes:
        whole = chance.choice(self._files)
        change = mutate.of_json if chance.random() < 0.6 else mutate.of_bytes
        return change(whole, chance)

    def try_one(self, content: bytes, chance: Random) -> bool:  # noqa: ARG002
        return self.offer(content, self._take)

    def _take(self, content: bytes) -> str:
        path = self.folder / "job.json"
        path.write_bytes(content)
        try:
            self.desk.take_in(path)
        except ChargebenchError as refusal:
            return str(refusal)
        return ""


class ChainFiles(Target):
    """Chain files: bytes changed, and entries edited by a forger who makes every hash fit."""

    name = "chain files"

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        shop, bench = benches.shop_and_bench(folder)
        with shop, bench:
            job = bench.open_job("E-001", "warm")
            bench.sign(job, "nameplate", shops.NAMEPLATE)
            bench.reverse(bench.sign(job, "weigh_in", shops.weigh_in(90)).id, "mistyped")
            bench.act("weigh", {"cylinder": "C-001", "scale": "I-001", "gross": "4000 g"})
            bench.save_row("cylinder", None, shops.CYLINDERS["C-001"])
            bench.hand_over(folder / "whole.chain")
            bench.hand_over(folder / "new.chain", only="D")
        (folder / "shop.chargebench").replace(self._kept)
        self._whole = (folder / "whole.chain").read_bytes()
        self._new = (folder / "new.chain").read_bytes()

    def mutated(self, chance: Random) -> bytes:
        if chance.random() < 0.5:
            return mutate.of_bytes(chance.choice((self._whole, self._new)), chance)
        lines = self._new.splitlines(keepends=True)
        if chance.random() < 0.2:
            at = chance.choice((0, len(lines) - 1))
            lines[at] = mutate.of_json(lines[at], chance) + b"\n"
        else:
            forged = chance.randrange(1, len(lines) - 1)
            chains.rehashed(lines, forged, lambda entry: self._edit(entry, chance))
        return b"".join(lines)

    @staticmethod
    def _edit(entry: list[Any], chance: Random) -> None:
        if chance.random() < 0.3:
            entry[chance.randrange(len(entry))] = chance.choice(mutate.ODD)
        else:
            mutate.change_tree(entry, chance)

    def try_one(self, content: bytes, chance: Random) -> bool:  # noqa: ARG002
        return self.offer(content, lambda tried: benches.try_bytes(self.desk, tried))


class ShopFiles(Target):
    """Shop files: opened, read, verified and now and then rescued, whatever is in them."""

    name = "shop files"

    def __init__(self, folder: Path) -> None:
        super().__init__(folder)
        with shops.build(self._kept) as desk:
            shops.receive(desk)
            job = desk.open_job("E-001", "warm")
            desk.sign(job, "nameplate", shops.NAMEPLATE)
            desk.sign(job, "weigh_in", shops.weigh_in(90))
        with Reader.open_reading(self._kept) as reader:
            self._entries = [entry.hash for entry in reader.entries()]
            self._held = {(b.place, b.refrigerant): b.mass_mg for b in reader.balances("")}
        self._whole = self._kept.read_bytes()

    def mutated(self, chance: Random) -> bytes:
        change = mutate.of_pages if chance.random() < 0.5 else mutate.of_bytes
        return change(self._whole, chance)

    def try_one(self, content: bytes, chance: Random) -> bool:
        path = self.folder / "tried.chargebench"
        path.write_bytes(content)
        try:
            sound = self._read(path)
        except ChargebenchError:
            sound = False
        if chance.randrange(RESCUED_ONCE_IN) == 0:
            self._rescue(path)
        for each in self.folder.glob("tried.chargebench*"):
            if each.is_file():
                each.unlink()
        return sound

    def _read(self, path: Path) -> bool:
        """Whether verify finds nothing; then all that was signed must stand there unaltered."""
        with Reader.open_reading(path, guarded=False) as reader:
            if not reader.verify().ok:
                return False
        with Ledger.open(path, backups=0) as ledger:
            assert [entry.hash for entry in ledger.entries()] == self._entries, "altered unseen"
            held = {(b.place, b.refrigerant): b.mass_mg for b in ledger.balances("")}
            assert held == self._held, "a balance altered unseen"
        return True

    def _rescue(self, path: Path) -> None:
        """What a rescue brings over are entries that were signed, and the new file opens."""
        out = self.folder / "rescued.chargebench"
        try:
            rescue(path, out, shops.at("2026-11-25", "12:00"))
        except ChargebenchError:
            return
        with Reader.open_reading(out, guarded=False) as reader:
            brought = {entry.hash for entry in reader.entries() if entry.kind != "rescued"}
        assert brought <= set(self._entries), "rescue brought what was never signed"
        for each in self.folder.glob("rescued.chargebench*"):
            if each.is_file():
                each.unlink()


TARGETS = (JobFiles, ChainFiles, ShopFiles)


def shown(content: bytes) -> str:
    """The start of a file, for a message."""
    return json.dumps(content[:200].decode("utf-8", "replace"))
