"""Measure the program beside floors and peers, and print one table.

Usage: python -m tests.benchmarks [--short] [--shop FILE] [--only start,keys,...]

Nothing is asserted: a machine under test is not a quiet one. `--shop` is a shop made by
`python -m tests.benchmarks.shops FILE 1000000`; without it what needs one is left out.
"""

import argparse
import sys
import tempfile
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from chargebench.desk import sample
from tests.benchmarks import keystroke, ledgers, peers, server, shops, start, workbook
from tests.benchmarks.measure import Row, table

Part = Callable[[], Iterator[Row]]


def _parts(folder: Path, shop: Path | None, *, short: bool) -> dict[str, Part]:
    with sample.open_or_build(folder / "sample.chargebench"):
        pass
    small = folder / "sample.chargebench"
    thousand = folder / "thousand.chargebench"
    shops.make(thousand, 1_000)
    if short:
        return {
            "start": lambda: start.rows(small, None, 3),
            "keys": lambda: keystroke.rows(folder, 100),
            "post": lambda: ledgers.posting(folder, 3),
            "read": lambda: ledgers.reading(thousand),
            "verify": lambda: ledgers.verifying(thousand),
            "workbook": lambda: workbook.own(folder, 10_000),
        }
    large = shop or thousand
    return {
        "start": lambda: start.rows(small, shop),
        "cold": lambda: start.cold(small),
        "memory": lambda: start.memory(small, shop),
        "keys": lambda: keystroke.rows(folder),
        "post": lambda: ledgers.posting(folder),
        "read": lambda: ledgers.reading(large),
        "verify": lambda: ledgers.verifying(large),
        "take-in": lambda: ledgers.taking_in(folder),
        "workbook": lambda: workbook.rows(folder),
        "server": lambda: server.rows(),
        "peers": lambda: peers.rows(large, folder),
    }


def main(arguments: Sequence[str]) -> int:
    """Measure what was asked for and print the table."""
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks")
    parser.add_argument("--short", action="store_true", help="under a minute, small sizes")
    parser.add_argument("--shop", type=Path, help="a shop made by tests.benchmarks.shops")
    parser.add_argument("--only", default="", help="parts, parted by commas")
    asked = parser.parse_args(arguments)
    rows: list[Row] = []
    failed: list[str] = []
    with tempfile.TemporaryDirectory(prefix="chargebench-bench-") as name:
        parts = _parts(Path(name), asked.shop, short=asked.short)
        for part in asked.only.split(",") if asked.only else parts:
            print(f"measuring {part} …", file=sys.stderr, flush=True)
            try:
                for row in parts[part]():
                    rows.append(row)
                    print(table([row]).splitlines()[-1], file=sys.stderr, flush=True)
            except Exception as problem:  # noqa: BLE001  the other parts are still worth having
                failed.append(f"{part} could not be measured: {problem}")
    print(table(rows))
    print("\n".join(failed), file=sys.stderr)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
