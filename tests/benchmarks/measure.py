"""Measuring one thing beside another in the same run, and the table of what came out."""

import gc
import json
import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

RUNS = 5
ROOT = Path(__file__).resolve().parents[2]


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the table: what the program takes, what it is held against, and the target."""

    what: str
    ours: float
    unit: str
    beside: str  # the floor or peer
    theirs: float | None
    ratio_most: float | None = None  # the target as a ratio
    most: float | None = None  # the target as a figure in `unit`
    runs: int = RUNS
    note: str = ""
    more_is_better: bool = False

    @property
    def ratio(self) -> float | None:
        """Ours over theirs."""
        return None if not self.theirs else self.ours / self.theirs

    @property
    def met(self) -> str:
        """Whether the target is met; nothing where there is none."""
        if self.ratio_most is None and self.most is None:
            return ""
        against = (self.ratio, self.ratio_most), (self.ours, self.most)
        for found, limit in against:
            if limit is not None and found is not None:
                good = found >= limit if self.more_is_better else found <= limit
                if not good:
                    return "no"
        return "yes"

    @property
    def target(self) -> str:
        """The target in words."""
        sign = ">=" if self.more_is_better else "<="
        parts = []
        if self.ratio_most is not None:
            parts.append(f"{sign} {self.ratio_most:g} x")
        if self.most is not None:
            parts.append(f"{sign} {self.most:g} {self.unit}")
        return ", ".join(parts)


def timed(work: Callable[[], Any]) -> float:
    """Seconds one call takes."""
    gc.collect()
    began = time.perf_counter()
    work()
    return time.perf_counter() - began


def median(work: Callable[[], Any], runs: int = RUNS) -> float:
    """Median seconds of so many calls, after one that warms up."""
    work()
    return statistics.median(timed(work) for _ in range(runs))


def side_by_side(*works: Callable[[], Any], runs: int = RUNS) -> list[float]:
    """Median seconds of each, one after the other in turn, so that all see the same machine."""
    found: list[list[float]] = [[] for _ in works]
    for _ in range(runs):
        for times, work in zip(found, works, strict=True):
            times.append(timed(work))
    return [statistics.median(times) for times in found]


def child(module: str, *arguments: str, python: str = sys.executable) -> dict[str, Any]:
    """What a module run in a process of its own says as its last line, with when it was started."""
    began = time.time()
    done = subprocess.run(
        [python, "-m", module, *arguments],
        capture_output=True,
        text=True,
        cwd=ROOT,
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        check=False,
    )
    if done.returncode:
        raise RuntimeError(f"{module} {arguments}: {done.stderr[-2000:]}")
    said: dict[str, Any] = json.loads(done.stdout.splitlines()[-1])
    return {**said, "began": began}


def rss_mib() -> float:
    """Memory this process holds now, in MiB."""
    for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines():
        if line.startswith("VmRSS:"):
            return int(line.split()[1]) / 1024
    raise RuntimeError("no VmRSS")


def peak_mib() -> float:
    """Most memory this process ever held, in MiB."""
    for line in Path("/proc/self/status").read_text(encoding="ascii").splitlines():
        if line.startswith("VmHWM:"):
            return int(line.split()[1]) / 1024
    raise RuntimeError("no VmHWM")


def table(rows: Sequence[Row]) -> str:
    """The rows as a Markdown table."""
    lines = [
        "| what | ours | floor or peer | theirs | ratio | target | met |",
        "|---|---:|---|---:|---:|---|---|",
    ]
    for row in rows:
        theirs = "" if row.theirs is None else f"{row.theirs:.4g} {row.unit}"
        ratio = "" if row.ratio is None else f"{row.ratio:.2f}"
        what = row.what + (f" ({row.note})" if row.note else "")
        what += "" if row.runs == RUNS else f" [{row.runs} run{'s' * (row.runs > 1)}]"
        lines.append(
            f"| {what} | {row.ours:.4g} {row.unit} | {row.beside} | {theirs} | {ratio} | "
            f"{row.target} | {row.met} |"
        )
    return "\n".join(lines)
