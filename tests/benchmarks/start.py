"""Starting: first paint, ready for typing, with a cold cache, memory, and what was imported."""

import os
import statistics
import sysconfig
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tests.benchmarks.measure import ROOT, RUNS, Row, child

WINDOW = "tests.benchmarks.window"


def _ms(said: dict[str, Any], key: str) -> float:
    return float(said[key] - said["began"]) * 1000


def _cool() -> None:
    """Drop what the page cache holds of the program and its packages."""
    for folder in (sysconfig.get_path("purelib"), sysconfig.get_path("stdlib"), ROOT):
        for path in Path(folder).rglob("*"):
            if path.suffix in (".py", ".pyc", ".so") or ".so." in path.name:
                try:
                    handle = os.open(path, os.O_RDONLY)
                except OSError:
                    continue
                os.posix_fadvise(handle, 0, 0, os.POSIX_FADV_DONTNEED)
                os.close(handle)


def rows(sample: Path, large: Path | None, runs: int = RUNS) -> Iterator[Row]:
    """Every row of starting; the large shop's where there is one."""
    for path in (sample, large):
        if path is not None:
            child(WINDOW, str(path))  # compiles, and keeps the backup of this opening
    empty, first, ready, shown, large_shown = [], [], [], [], []
    chain: dict[str, Any] = {}
    for _ in range(runs):
        empty.append(_ms(child(WINDOW, "empty"), "painted"))
        chain = child(WINDOW, str(sample), "areas")
        first.append(_ms(chain, "painted"))
        ready.append(_ms(chain, "ready"))
        shown.append(_ms(chain, "records"))
        if large is not None:
            large_shown.append(_ms(child(WINDOW, str(large), "areas"), "records"))
    floor = statistics.median(empty)
    print(f"imported at first paint: {', '.join(chain['at_paint']) or 'nothing large'}")
    print(f"imported when ready:     {', '.join(chain['at_ready'])}", flush=True)
    yield Row("first paint", statistics.median(first), "ms", "empty window", floor, 1.4, runs=runs)
    yield Row(
        "ready for typing, sample shop", statistics.median(ready), "ms", "empty window", floor, 5.0,
        runs=runs,
    )  # fmt: skip
    if large_shown:
        yield Row(
            "open 10^6, show Stock and Records", statistics.median(large_shown), "ms",
            "sample shop, the same", statistics.median(shown), 2.0, runs=runs,
        )  # fmt: skip


def cold(sample: Path, runs: int = 3) -> Iterator[Row]:
    """First paint and readiness when no file of the program is in the cache."""
    empty, first, ready = [], [], []
    for _ in range(runs):
        _cool()
        empty.append(_ms(child(WINDOW, "empty"), "painted"))
        _cool()
        said = child(WINDOW, str(sample))
        first.append(_ms(said, "painted"))
        ready.append(_ms(said, "ready"))
    floor = statistics.median(empty)
    for what, found in (("first paint, cold", first), ("ready for typing, cold", ready)):
        yield Row(what, statistics.median(found), "ms", "empty window, cold", floor, runs=runs)


def memory(sample: Path, large: Path | None, runs: int = 3) -> Iterator[Row]:
    """Memory of an idle window."""

    def rss(*arguments: str) -> float:
        return float(statistics.median(child(WINDOW, *arguments)["rss"] for _ in range(runs)))

    floor = rss("libraries")
    idle = rss(str(sample), "idle", "2")
    yield Row(
        "idle window, sample shop", idle, "MiB", "empty window, pint, SQLAlchemy", floor, 1.8,
        runs=runs,
    )  # fmt: skip
    if large is not None:
        more = rss(str(large), "areas", "idle", "4") - rss(str(sample), "areas", "idle", "4")
        yield Row(
            "10^6 over the sample shop, areas shown", more, "MiB", "", None, most=40, runs=runs
        )
