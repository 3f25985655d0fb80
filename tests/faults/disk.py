"""A disk that fails at every single write, sync and truncation of a whole scenario."""

import errno
import os
import shutil
import subprocess
import sys
import tempfile
from dataclasses import dataclass
from pathlib import Path

from chargebench.errors import ChargebenchError
from chargebench.ledger import Ledger
from tests.ledger import books

ROOT = Path(__file__).resolve().parents[2]
SOURCE = Path(__file__).with_name("failing.c")


@dataclass
class Outcome:
    """One row of the report."""

    kind: str
    tried: int = 0
    lost: int = 0
    altered: int = 0
    closed: int = 0  # shops that did not open again

    @property
    def ok(self) -> bool:
        """Nothing acknowledged lost, nothing altered unseen, every shop opened again."""
        return self.tried > 0 and not (self.lost or self.altered or self.closed)


def shim(folder: Path) -> Path | None:
    """The layer that fails, compiled; None where there is no gcc or no Linux."""
    if sys.platform != "linux" or not shutil.which("gcc"):
        return None
    built = folder / "failing.so"
    subprocess.run(
        ["gcc", "-shared", "-fPIC", "-O1", "-o", str(built), str(SOURCE), "-ldl"], check=True
    )
    return built


def _run(folder: Path, built: Path, at: int, *words: str, number: int, stays: bool) -> list[str]:
    """Ids that were acknowledged by a scenario whose disk failed at a call."""
    surroundings = os.environ | {
        "LD_PRELOAD": str(built),
        "FAULT_AT": str(at),
        "FAULT_ERRNO": str(number),
        "FAULT_STAYS": "1" if stays else "0",
        "FAULT_COUNT": str(folder / "count"),
    }
    done = subprocess.run(
        [sys.executable, "-m", "tests.faults.scenario", str(folder), *words],
        env=surroundings, cwd=ROOT, capture_output=True, text=True, check=False,
    )  # fmt: skip
    if done.returncode:
        raise AssertionError(f"call {at}, errno {number}: {done.stderr[-1500:]}")
    return done.stdout.split()


def every_call(step: int = 1, *words: str, at_most: int | None = None) -> list[Outcome]:
    """Fail every `step`-th call, once and for good, with EIO and ENOSPC; shops checked after."""
    outcomes = []
    with tempfile.TemporaryDirectory(prefix="cbfault") as name:
        whole = Path(name)
        built = shim(whole)
        if built is None:
            return []
        with Ledger.create(whole / "shop.chargebench") as ledger:
            books.receive(ledger, 10**6)
        for number, stays in ((errno.EIO, False), (errno.ENOSPC, True)):
            kind = f"{errno.errorcode[number]}, {'stays' if stays else 'once'}, at each call"
            outcome = Outcome(kind)
            at, last = 1, at_most or 10**6
            while at <= last:
                folder = whole / f"{number}-{at}"
                folder.mkdir()
                shutil.copy(whole / "shop.chargebench", folder)
                said = _run(folder, built, at, *words, number=number, stays=stays)
                calls = int((folder / "count").read_text())
                check(outcome, folder, said)
                shutil.rmtree(folder)
                if calls < at:
                    break
                at += step
            outcomes.append(outcome)
    return outcomes


def check(outcome: Outcome, folder: Path, said: list[str]) -> None:
    """Open the shop again, on a sound disk, and look for everything that was acknowledged."""
    outcome.tried += 1
    kept: set[str] = set()
    files = [folder / "shop.chargebench", *folder.glob("shop.chargebench-aside-*")]
    for path in files:
        try:
            with Ledger.open(path, backups=0) as ledger:
                kept |= {entry.id for entry in ledger.entries()}
                outcome.altered += not ledger.verify().ok
        except ChargebenchError:
            outcome.closed += path == files[0]
    outcome.lost += not set(said) <= kept
