"""Mutation run: does a test fail when `calc` or `rules` is changed in a small wrong way?

    python -m tests.mutation --out REPORT [--again REPORT] [PART OF A PATH ...]

Needs mutmut (its operators; tried with 3.8) and libcst beside the pinned packages, takes an hour or
so, and is no part of the suite. A change outside functions runs the tests of its module and of
those that import it. `--again` tries only what survived in an earlier report.
"""

import argparse
import csv
import gc
import importlib
import sys
import tempfile
import time
from collections import Counter, defaultdict
from collections.abc import Sequence
from pathlib import Path

import hypothesis

import chargebench
from tests.mutants import Mutant, mutants
from tests.mutation_trials import (
    AHEAD,
    ENDLESS,
    FEW_EXAMPLES,
    KILLED,
    ROOT,
    SURVIVED,
    UNTESTED,
    Trials,
    baseline,
    modules,
)

FIELDS = ("module", "line", "result", "seconds", "kind", "before", "after")


def _control(module: Path, trials: Trials) -> None:
    """A module as it is must survive, or what kills its mutants is the run itself."""
    code = module.read_text("utf-8")
    for line in range(1, len(code.splitlines()), 100):
        same = Mutant(
            module, line, line + 99, in_function=True, kind="", before="", after="", code=code
        )
        if (result := trials.verdict(same)) not in (SURVIVED, UNTESTED):
            raise SystemExit(f"Expected {module.name} to pass unchanged; it was {result}.")


def _survivors(report: Path | None) -> Counter[tuple[str, ...]] | None:
    """What survived in an earlier report; lines may have moved since, so they do not count."""
    if report is None:
        return None
    with report.open(encoding="utf-8", newline="") as file:
        rows = [row for row in csv.DictReader(file, delimiter="\t") if row["result"] != KILLED]
    return Counter((row["module"], row["kind"], row["before"], row["after"]) for row in rows)


def table(results: Sequence[dict[str, str]]) -> str:
    """Killed and all mutants of each module, and of all."""
    by_module: dict[str, Counter[bool]] = defaultdict(Counter)
    for row in results:
        dead = row["result"] in (KILLED, ENDLESS)
        by_module[row["module"]][dead] += 1
        by_module["all"][dead] += 1
    return "\n".join(
        f"{name}\t{count[True]} of {count.total()}\t{100 * count[True] / count.total():.1f} %"
        for name, count in by_module.items()
    )


def run(parts: Sequence[str], out: Path, again: Path | None) -> list[dict[str, str]]:
    """Test every mutant of the modules and write each result as it comes."""
    results = []
    before = _survivors(again)
    with (
        tempfile.TemporaryDirectory() as folder,
        out.open("w", encoding="utf-8", newline="") as file,
    ):
        sys.dont_write_bytecode, sys.pycache_prefix = False, str(Path(folder, "bytecode"))
        hypothesis.settings.register_profile("mutation", **FEW_EXAMPLES)
        for needed in AHEAD:
            importlib.import_module(needed)
        gc.freeze()  # pytest sweeps the garbage twice a run; what stands now need not be swept
        trials = Trials(baseline(Path(folder)))
        writer = csv.DictWriter(file, FIELDS, delimiter="\t", lineterminator="\n")
        writer.writeheader()
        chosen = list(modules(parts))
        _control(chosen[-1], trials)
        for mutant in (each for module in chosen for each in mutants(module)):
            name = str(mutant.module.relative_to(ROOT))
            if before is not None and not before[name, mutant.kind, mutant.before, mutant.after]:
                continue
            begun = time.monotonic()
            result = trials.verdict(mutant)
            row = (name, mutant.first, result, f"{time.monotonic() - begun:.1f}")
            shown = (*row, mutant.kind, mutant.before, mutant.after)
            results.append(dict(zip(FIELDS, map(str, shown), strict=True)))
            writer.writerow(results[-1])
            file.flush()
    return results


def main() -> int:
    """Run, print the table, and end badly where less than 90 of 100 mutants are killed."""
    asked = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    asked.add_argument("--out", type=Path, required=True)
    asked.add_argument("--again", type=Path)
    asked.add_argument("parts", nargs="*")
    given = asked.parse_args()
    assert Path(chargebench.__file__).is_relative_to(ROOT), "another checkout would be tested"
    results = run(given.parts, given.out, given.again)
    print(table(results))
    dead = sum(row["result"] in (KILLED, ENDLESS) for row in results)
    return 0 if dead >= 0.9 * len(results) else 1


if __name__ == "__main__":
    sys.exit(main())
