"""How a mutant is tried: in a forked process, on the tests that run its line, until one fails.

Warm: all tests stand collected, and the changed functions are given their new code; quick, but
blind to what was worked out at collecting. What survives is tried cold, its module imported anew.
"""

import contextlib
import functools
import gc
import importlib.util
import multiprocessing
import os
import pickle
import signal
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field
from importlib.machinery import ModuleSpec, SourceFileLoader
from inspect import CO_OPTIMIZED
from multiprocessing.connection import Connection
from pathlib import Path
from types import CodeType, FunctionType
from typing import Any

import coverage
import hypothesis
import pytest

from tests.mutants import Mutant

ROOT, MUTATED = Path(__file__).resolve().parents[1], ("calc", "rules")
TESTS = ("tests/calc", "tests/rules", "tests/outside", "tests/units")
# Simulations, slow and made to be tolerant; without them the score can only be lower.
LEFT_OUT = ROOT / "tests/calc/test_decay_hit_rates.py"
SLOW_TO_COLLECT = "tests/outside/"
# Slow to import and free of anything of ours that is mutated: imported once, before the forks.
AHEAD = (
    *("numpy", "scipy.stats", "pint", "chemicals", "iapws", "teqp", "_pytest.junitxml"),
    *("chargebench.fluids", "chargebench.units"),
)
PYTEST = (
    *("-q", "-x", "--tb=no", "-c", str(ROOT / "pyproject.toml"), "--rootdir", str(ROOT)),
    *("-o", "addopts=", "--import-mode=importlib", "--hypothesis-profile=mutation"),
    *("--ignore", str(LEFT_OUT)),
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
_NOT_IMPORTED = 99  # exit code


def named(module: Path) -> str:
    parts = module.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts).removesuffix(".__init__")


def modules(parts: Sequence[str]) -> Iterator[Path]:
    for package in MUTATED:
        for path in sorted((ROOT / "chargebench" / package).rglob("*.py")):
            if not parts or any(
                part in str(path.relative_to(ROOT / "chargebench")) for part in parts
            ):
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
        names = _called(module)
        found = {
            test
            for path in modules([])
            if path == module or any(name in path.read_text("utf-8") for name in names)
            for tests in self.of_line.get(str(path), {}).values()
            for test in tests
            if test
        }
        files = {test.split("::")[0] for test in self.seconds}
        texts = {file: (ROOT / file).read_text("utf-8") for file in files}
        by_name = {file for file, text in texts.items() if any(name in text for name in names)}
        return found | {test for test in self.seconds if test.split("::")[0] in by_name}


def _called(module: Path) -> tuple[str, ...]:
    """How an import may call a module: by its name, or by its package if that hands it on."""
    name = named(module)
    package, front = name.rpartition(".")[0], module.with_name("__init__.py")
    if name not in front.read_text("utf-8"):
        return (name,)
    above, _, last = package.rpartition(".")
    return name, package, f"from {above} import {last}"


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
        super().__init__(named(mutant.module), str(mutant.module))
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


def _forked(work: Callable[[], int], seconds: float) -> str:
    """What becomes of tests run in a process of their own, by its exit code."""
    if (child := os.fork()) == 0:
        os.setsid()
        _quiet()
        signal.alarm(int(seconds))  # its default ends the process, even in native code
        os._exit(work())
    status = os.waitpid(child, 0)[1]
    with contextlib.suppress(ProcessLookupError):
        os.killpg(child, signal.SIGKILL)  # what the tests started and left
    if os.WIFSIGNALED(status):
        return ENDLESS if os.WTERMSIG(status) == signal.SIGALRM else KILLED
    assert os.WEXITSTATUS(status) != _NOT_IMPORTED, "the tests did not import the mutant"
    return SURVIVED if os.WEXITSTATUS(status) in (0, 5) else KILLED


def baseline(folder: Path) -> Baseline:
    """Run all tests once on the code as it is, in a process of their own."""
    kept = folder / "baseline"

    def watched() -> int:
        source = [str(ROOT / "chargebench" / part) for part in MUTATED]
        lines = coverage.Coverage(data_file=None, config_file=False, source=source)
        watch = _Watch(lines)
        lines.start()
        code = pytest.main([*PYTEST, *TESTS], plugins=[watch])
        lines.stop()
        found = lines.get_data()
        of_line = {file: found.contexts_by_lineno(file) for file in found.measured_files()}
        kept.write_bytes(pickle.dumps(Baseline(watch.seconds, of_line)))
        return int(code)

    if _forked(watched, 3_600) != SURVIVED:
        raise SystemExit("Expected all tests to pass on the code as it is; mend them first.")
    made: Baseline = pickle.loads(kept.read_bytes())  # noqa: S301 - written by ourselves above
    return made


class Trials:
    """Tries mutants, one after another."""

    def __init__(self, known: Baseline) -> None:
        self.known = known
        self.warm, answers = multiprocessing.Pipe()
        if os.fork() == 0:
            _quiet()
            self.warm.close()
            pytest.main([*PYTEST, *TESTS], plugins=[_Warm(answers)])
            os._exit(0)
        answers.close()

    def verdict(self, mutant: Mutant) -> str:
        """Whether a test fails on the mutant."""
        tests = self.known.tests_for(mutant)
        if not tests:
            return UNTESTED
        if mutant.in_function:
            self.warm.send((mutant, tests, self._patience(tests)))
            result: str = self.warm.recv()
            if result != SURVIVED:
                return result
        # Those slow to collect are asked only if no other fails.
        near = [test for test in tests if not test.startswith(SLOW_TO_COLLECT)]
        far = [test for test in tests if test.startswith(SLOW_TO_COLLECT)]
        results = (self._cold(mutant, part) for part in (near, far) if part)
        return next((result for result in results if result != SURVIVED), SURVIVED)

    def _patience(self, tests: Sequence[str]) -> float:
        return 30 + 3 * sum(self.known.seconds[test] for test in tests)

    def _cold(self, mutant: Mutant, tests: Sequence[str]) -> str:
        def work() -> int:
            sys.meta_path.insert(0, changed := _Mutated(mutant))
            files = sorted({test.split("::")[0] for test in tests})
            code = int(pytest.main([*PYTEST, *files], plugins=[_Only(tests)]))
            return code if changed.imported else _NOT_IMPORTED

        return _forked(work, self._patience(tests))


class _Warm:
    """Pytest plugin: in place of running the tests collected, run those asked for, on mutants."""

    def __init__(self, answers: Connection) -> None:
        self.answers = answers
        self.functions: list[FunctionType] = []
        self.caches: list[Any] = []

    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        items = {item.nodeid: item for item in session.items}
        for each in gc.get_objects():
            if isinstance(each, FunctionType):
                self.functions.append(each)
            elif isinstance(each, functools._lru_cache_wrapper):
                self.caches.append(each)
        gc.freeze()
        with contextlib.suppress(EOFError):
            while True:
                mutant, tests, seconds = self.answers.recv()
                asked = [items[test] for test in tests]
                work = functools.partial(self._tried, session, mutant, asked)
                self.answers.send(_forked(work, seconds))
        return True

    def _tried(self, session: pytest.Session, mutant: Mutant, items: list[pytest.Item]) -> int:
        new = dict(_functions(compile(mutant.code, str(mutant.module), "exec")))
        old = dict(
            _functions(compile(mutant.module.read_text("utf-8"), str(mutant.module), "exec"))
        )
        for function in self.functions:
            name = function.__code__.co_qualname
            if function.__code__.co_filename == str(mutant.module) and new.get(name) != old.get(
                name
            ):
                function.__code__ = new[name]
        for cache in self.caches:
            cache.cache_clear()
        for item in items:
            item.config.hook.pytest_runtest_protocol(item=item, nextitem=None)
            if session.testsfailed:
                return 1
        return 0


def _functions(code: CodeType) -> Iterator[tuple[str, CodeType]]:
    """Functions of a module and of its classes; what is inside of them goes with them."""
    for inner in code.co_consts:
        if isinstance(inner, CodeType):
            if inner.co_flags & CO_OPTIMIZED:
                yield inner.co_qualname, inner
            else:
                yield from _functions(inner)
