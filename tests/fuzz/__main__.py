"""Try N mutated job, chain and shop files: `python -m tests.fuzz N [SEED [KEEP_FOLDER]]`.

Each kind has processes of its own, started anew every few thousand inputs so that a crash of the
interpreter is counted and told; two run at a time. Ends with 1 after any fault.
"""

import json
import subprocess
import sys
import time
from concurrent.futures import ThreadPoolExecutor
from dataclasses import asdict
from pathlib import Path

from tests.fuzz.run import MEMORY_MOST_MIB, Series, series
from tests.fuzz.targets import TARGETS

A_PROCESS = 2_000
AT_A_TIME = 2


def _child(which: int, count: int, seed: int, keep: str) -> Series:
    words = [sys.executable, "-m", "tests.fuzz", "--one", str(which), str(count), str(seed), keep]
    done = subprocess.run(words, capture_output=True, text=True, check=False)
    if done.returncode:
        said = f"the process ended with {done.returncode}: {done.stderr[-2000:]}"
        return Series(TARGETS[which].name, count, faults=[said])
    return Series(**json.loads(done.stdout.splitlines()[-1]))


def main(arguments: list[str]) -> int:
    if arguments[:1] == ["--one"]:
        which, count, seed = map(int, arguments[1:4])
        keep = Path(arguments[4]) if arguments[4] else None
        print(json.dumps(asdict(series(TARGETS[which], count, seed, keep))))
        return 0
    wanted, seed = int(arguments[0]), int((*arguments[1:2], "290")[0])
    folder, began = (*arguments[2:3], "")[0], time.monotonic()
    each = -(-wanted // len(TARGETS))
    parts = [
        (which, min(A_PROCESS, each - start), seed + start, folder)
        for start in range(0, each, A_PROCESS)
        for which in range(len(TARGETS))
    ]
    totals = {target.name: Series(target.name) for target in TARGETS}
    with ThreadPoolExecutor(AT_A_TIME) as pool:
        for part in pool.map(lambda words: _child(*words), parts):
            total = totals[part.name]
            total.tried += part.tried
            total.taken += part.taken
            total.faults += part.faults
            total.memory_mib = max(total.memory_mib, part.memory_mib)
            for fault in part.faults:
                print(f"FAULT {part.name}: {fault}", file=sys.stderr, flush=True)
    print("kind\ttried\trefused or found\ttaken, sound\tfaults\tmost memory [MiB]")
    for total in totals.values():
        refused = total.tried - total.taken - len(total.faults)
        cells = (total.name, total.tried, refused, total.taken, len(total.faults))
        print(*cells, f"{total.memory_mib:.0f} of {MEMORY_MOST_MIB}", sep="\t")
    print(f"{sum(t.tried for t in totals.values())} inputs in {time.monotonic() - began:.0f} s")
    return 0 if all(total.ok for total in totals.values()) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
