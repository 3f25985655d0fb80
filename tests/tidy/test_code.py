"""What the style rules count: sizes, names, comments, sleeps."""

import ast
import re
import tokenize
from pathlib import Path

from tests.tidy import tree

LINES_PER_MODULE = 300
LINES_PER_FUNCTION = 60
# Modules longer than that, each with its reason: {"chargebench/example.py": "one table"}.
# Longer than a head, each with what is to become of it.
LONG_MODULES: dict[str, str] = {
    "chargebench/steps/stock.py": "its mass lines are to stand in a module of their own",
    "tests/benchmarks/shops.py": "stamping and writing are to be parted",
    "tests/calc/test_evidence.py": "what is measured next is to be tested apart",
    "tests/ui/test_records.py": "taking in is to be tested apart",
    "tests/ui/test_signatures.py": "roles are to be tested apart",
}
EMPTY_WORDS = {"manager", "handler", "helper", "helpers", "util", "utils", "data", "process"}
OPEN_END = re.compile(r"\b(?:TO" + r"DO|FIX" + r"ME|XXX|HACK)\b")
OWNED = re.compile(r"\bTO" + r"DO\(\w[\w .@-]*\): \S")
BANNER = re.compile(r"#\s*[-=*#~_]{5,}")


def test_that_modules_fit_in_a_head() -> None:
    long = {
        tree.name(path): lines
        for path in tree.sources()
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > LINES_PER_MODULE
        and tree.name(path) not in LONG_MODULES
    }
    assert long == {}


def test_that_functions_fit_on_a_screen() -> None:
    long = [
        f"{tree.name(path)}:{function.lineno} {function.name} {lines} lines"
        for path in tree.sources()
        for function in tree.functions(path)
        if (lines := (function.end_lineno or 0) - function.lineno + 1) > LINES_PER_FUNCTION
    ]
    assert long == []


def test_that_file_names_say_what_is_inside() -> None:
    empty = [
        tree.name(path)
        for path in tree.sources("chargebench", "resources")
        if EMPTY_WORDS.intersection(re.split(r"[_/.]", tree.name(path)))
    ]
    assert empty == []


def _comments(path: Path) -> list[tokenize.TokenInfo]:
    with path.open("rb") as file:
        return [
            token for token in tokenize.tokenize(file.readline) if token.type == tokenize.COMMENT
        ]


def test_that_every_open_end_has_an_owner() -> None:
    ownerless = [
        f"{tree.name(path)}:{comment.start[0]} {comment.string}"
        for path in tree.sources()
        for comment in _comments(path)
        if OPEN_END.search(comment.string) and not OWNED.search(comment.string)
    ]
    assert ownerless == []


def test_that_no_comment_is_a_banner() -> None:
    banners = [
        f"{tree.name(path)}:{comment.start[0]}"
        for path in tree.sources()
        for comment in _comments(path)
        if BANNER.match(comment.string)
    ]
    assert banners == []


def _tests(path: Path) -> list[tree.Function]:
    """What pytest collects from the file."""
    classes = [node for node in tree.parsed(path).body if isinstance(node, ast.ClassDef)]
    places: list[ast.Module | ast.ClassDef] = [tree.parsed(path), *classes]
    bodies = [node for place in places for node in place.body]
    return [n for n in bodies if isinstance(n, tree.Function) and n.name.startswith("test_")]


def test_that_test_names_state_a_behaviour() -> None:
    nameless = [
        f"{tree.name(path)}:{function.lineno} {function.name}"
        for path in tree.sources("tests")
        if path.name.startswith("test_")
        for function in _tests(path)
        if not re.fullmatch(r"test_that_\w+", function.name)
    ]
    assert nameless == []


def test_that_no_test_sleeps() -> None:
    sleeping = [
        f"{tree.name(path)}:{call.lineno}"
        for path in tree.sources("tests")
        for call in ast.walk(tree.parsed(path))
        if isinstance(call, ast.Call) and _sleeps(call.func)
    ]
    assert sleeping == []


def _sleeps(called: ast.expr) -> bool:
    """Whether the called name is a sleep; `qtbot.wait` is one too, `waitUntil` is not."""
    if isinstance(called, ast.Attribute):
        on_qtbot = isinstance(called.value, ast.Name) and called.value.id == "qtbot"
        return called.attr in ("sleep", "qSleep", "qWait") or (called.attr == "wait" and on_qtbot)
    return isinstance(called, ast.Name) and called.id == "sleep"


def _can_fail(function: tree.Function) -> bool:
    """Whether a test asserts, expects a refusal, or leaves both to a function made for it."""
    for node in ast.walk(function):
        if isinstance(node, ast.Assert):
            return True
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute | ast.Name):
            called = node.func.attr if isinstance(node.func, ast.Attribute) else node.func.id
            if called in ("raises", "warns", "fail", "waitUntil", "waitSignal"):
                return True
            if called.lstrip("_").startswith(("assert", "check", "expect")):
                return True
    return False


def test_that_every_test_can_fail() -> None:
    idle = [
        f"{tree.name(path)}:{function.lineno} {function.name}"
        for path in tree.sources("tests")
        if path.name.startswith("test_")
        for function in _tests(path)
        if not _can_fail(function)
    ]
    assert idle == []
