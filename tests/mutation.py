"""Mutation run: does a test fail when `calc` or `rules` is changed in a small wrong way?

    python -m tests.mutation --out REPORT [--again REPORT] [PART OF A PATH ...]

Needs mutmut (its operators; tried with 3.8) and libcst beside the pinned packages, takes an hour or
two, and is no part of the suite. Every mutant is imported and tested in a forked process: only the
tests that run the changed line are collected, the quick ones first, until one fails. A change
outside functions runs the tests of its module and of those that import it. `--again` tries only
what survived in an earlier report.
"""

import argparse
import contextlib
import csv
import gc
import importlib
import importlib.util
import os
import pickle
import signal
import sys
import tempfile
import time
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from importlib.machinery import ModuleSpec, SourceFileLoader
from pathlib import Path
from types import CodeType
from typing import Any

import coverage
import hypothesis
import pytest

import chargebench
from tests.mutants import Mutant, mutants

ROOT = Path(__file__).resolve().parents[1]
MUTATED = ("calc", "rules")
TESTS = ("tests/calc", "tests/rules", "tests/outside", "tests/units")
SLOW_TO_COLLECT = "tests/outside/"
# Slow to import and free of anything of ours that is mutated: imported once, before the forks.
AHEAD = (
    *("numpy", "scipy.stats", "pint", "chemicals", "iapws", "teqp", "_pytest.junitxml"),
    *("chargebench.fluids", "chargebench.units"),
)
PYTEST = (
    *("-q", "-x", "--tb=no", "-c", str(ROOT / "pyproject.toml"), "--rootdir", str(ROOT)),
    *("-o", "addopts=", "--import-mode=importlib", "--hypothesis-profile=mutation"),
    *("-o", "python_files=test_*.py"),  # or pytest itself would import calc/pressure_test.py
    *("-p", "no:cacheprovider", "-p", "no:xdist", "-p", "no:cov", "-p", "no:pytest-qt"),
    *("-W", "ignore::pytest.PytestConfigWarning"),  # options of plugins left out
    *("-W", "ignore::pytest.PytestAssertRewriteWarning"),  # imported ahead
)
# The same examples each time, few, and none made simpler: that one fails is all we ask.
FEW_EXAMPLES: Any = {
    "deadline": None,
    "max_examples": 25,
    "derandomize": True,
    "database": None,
    "phases": (hypothesis.Phase.explicit, hypothesis.Phase.generate),
}
KILLED, SURVIVED, ENDLESS, UNTESTED = "killed", "survived", "endless", "no test"
_NOT_IMPORTED = 99
FIELDS = ("module", "line", "result", "seconds", "kind", "before", "after")


def _named(module: Path) -> str:
    parts = module.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts).removesuffix(".__init__")


def _modules(parts: Sequence[str]) -> Iterator[Path]:
    for package in MUTATED:
        for path in sorted((ROOT / "chargebench" / package).rglob("*.py")):
            if not parts or any(part in str(path.relative_to(ROOT)) for part in parts):
                yield path


@dataclass
class Baseline:
    """What each test takes, and which tests run which line of which file."""

    seconds: dict[str, float] = field(default_factory=dict)
    of_line: dict[str, dict[int, list[str]]] = field(default_factory=dict)

    def tests_for(self, mutant: Mutant) -> list[str]:
        """Tests that may see a mutant, the quick ones first."""
        lines = self.of_line.get(str(mutant.module), {})
        changed = range(mutant.first, mutant.last + 1) if mutant.in_function else ()
        found = {test for line in changed for test in lines.get(line, ()) if test}
        return sorted(found or self._importing(mutant.module), key=lambda test: self.seconds[test])

    def _importing(self, module: Path) -> set[str]:
        """Tests that see what runs as a module is imported: those of it and of who imports it."""
        name = _named(module)
        found = {
            test
            for path in _modules([])
            if path == module or name in path.read_text("utf-8")
            for tests in self.of_line.get(str(path), {}).values()
            for test in tests
            if test
        }
        files = {test.split("::")[0] for test in self.seconds}
        by_name = {file for file in files if name in (ROOT / file).read_text("utf-8")}
        return found | {test for test in self.seconds if test.split("::")[0] in by_name}


class _Only:
    """Pytest plugin: of what was collected only these tests, in this order."""

    def __init__(self, tests: Sequence[str]) -> None:
        self.place = {test: place for place, test in enumerate(tests)}

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        kept = [item for item in items if item.nodeid in self.place]
        items[:] = sorted(kept, key=lambda item: self.place[item.nodeid])


class _Watch:
    """Pytest plugin: how long each test takes, and its name to the lines it runs."""

    def __init__(self, lines: coverage.Coverage) -> None:
        self.lines, self.seconds, self.begun = lines, dict[str, float](), 0.0

    def pytest_runtest_logstart(self, nodeid: str) -> None:
        self.lines.switch_context(nodeid)
        self.begun = time.monotonic()

    def pytest_runtest_logfinish(self, nodeid: str) -> None:
        self.seconds[nodeid] = time.monotonic() - self.begun
        self.lines.switch_context("")


class _Mutated(SourceFileLoader):
    """Import of one module with other code; a finder for `sys.meta_path` as well."""

    def __init__(self, mutant: Mutant) -> None:
        super().__init__(_named(mutant.module), str(mutant.module))
        self.text, self.imported = mutant.code, False

    def get_code(self, fullname: str) -> CodeType:
        assert fullname == self.name
        self.imported = True
        return compile(self.text, self.path, "exec")

    def find_spec(self, name: str, path: object = None, target: object = None) -> ModuleSpec | None:
        del path, target
        if name != self.name:
            return None
        return importlib.util.spec_from_file_location(name, self.path, loader=self)


def _quiet() -> None:
    nothing = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1, 2):
        os.dup2(nothing, stream)


def baseline(folder: Path) -> Baseline:
    """Run all tests once on the code as it is, in a process of their own."""
    kept = folder / "baseline"
    if (child := os.fork()) == 0:
        lines = coverage.Coverage(
            data_file=None,
            config_file=False,
            source=[str(ROOT / "chargebench" / part) for part in MUTATED],
        )
        watch = _Watch(lines)
        lines.start()
        code = pytest.main([*PYTEST, *TESTS], plugins=[watch])
        lines.stop()
        found = lines.get_data()
        of_line = {file: found.contexts_by_lineno(file) for file in found.measured_files()}
        kept.write_bytes(pickle.dumps(Baseline(watch.seconds, of_line)))
        os._exit(int(code))
    if os.waitpid(child, 0)[1] != 0:
        raise SystemExit("Expected all tests to pass on the code as it is; mend them first.")
    made: Baseline = pickle.loads(kept.read_bytes())  # noqa: S301 - written by ourselves above
    return made


def _verdict(mutant: Mutant, known: Baseline) -> str:
    """Whether a test fails on the mutant: those slow to collect are asked only if no other does."""
    tests = known.tests_for(mutant)
    near = [test for test in tests if not test.startswith(SLOW_TO_COLLECT)]
    far = [test for test in tests if test.startswith(SLOW_TO_COLLECT)]
    results = (_tried(mutant, part, known) for part in (near, far) if part)
    return next(
        (result for result in results if result != SURVIVED), SURVIVED if tests else UNTESTED
    )


def _tried(mutant: Mutant, tests: Sequence[str], known: Baseline) -> str:
    """Whether one of the tests fails on the mutant, found out in a forked process."""
    if (child := os.fork()) == 0:
        os.setsid()
        _quiet()
        # The alarm's default ends the process, even in native code.
        signal.alarm(int(30 + 3 * sum(known.seconds[test] for test in tests)))
        sys.meta_path.insert(0, changed := _Mutated(mutant))
        files = sorted({test.split("::")[0] for test in tests})
        code = int(pytest.main([*PYTEST, *files], plugins=[_Only(tests)]))
        os._exit(code if changed.imported else _NOT_IMPORTED)
    status = os.waitpid(child, 0)[1]
    with contextlib.suppress(ProcessLookupError):
        os.killpg(child, signal.SIGKILL)  # what the tests started and left
    if os.WIFSIGNALED(status):
        return ENDLESS if os.WTERMSIG(status) == signal.SIGALRM else KILLED
    assert os.WEXITSTATUS(status) != _NOT_IMPORTED, f"the tests did not import {mutant.module}"
    return SURVIVED if os.WEXITSTATUS(status) in (0, 5) else KILLED


def _control(module: Path, known: Baseline) -> None:
    """A module as it is must survive, or what kills its mutants is the run itself."""
    code = module.read_text("utf-8")
    same = Mutant(module, 1, 1, in_function=False, kind="none", before="", after="", code=code)
    if (result := _verdict(same, known)) not in (SURVIVED, UNTESTED):
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
        known = baseline(Path(folder))
        writer = csv.DictWriter(file, FIELDS, delimiter="\t", lineterminator="\n")
        writer.writeheader()
        modules = list(_modules(parts))
        _control(modules[-1], known)
        for mutant in (each for module in modules for each in mutants(module)):
            name = str(mutant.module.relative_to(ROOT))
            if before is not None and not before[name, mutant.kind, mutant.before, mutant.after]:
                continue
            begun = time.monotonic()
            result = _verdict(mutant, known)
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
