"""The script that sets everything up runs on a bare Python, and an old one can read its refusal."""

import ast
import subprocess
import sys

import pytest

from tests.tidy import tree

SCRIPT = tree.ROOT / "resources" / "bootstrap.py"


def test_that_setting_up_needs_the_standard_library_only() -> None:
    imported = {
        name.split(".")[0]
        for node in ast.walk(tree.parsed(SCRIPT))
        if isinstance(node, ast.Import | ast.ImportFrom)
        for name in (
            [node.module or ""]
            if isinstance(node, ast.ImportFrom)
            else [alias.name for alias in node.names]
        )
    }
    assert imported <= sys.stdlib_module_names


def test_that_an_old_python_reads_as_far_as_the_refusal() -> None:
    body = ast.parse(SCRIPT.read_text(encoding="utf-8"), feature_version=(3, 7)).body
    first = [type(node) for node in body[:3]]
    assert first == [ast.Expr, ast.Import, ast.If]  # docstring, sys, the refusal


@pytest.mark.parametrize(("words", "code"), [([], 2), (["fly"], 2), (["--help"], 0)])
def test_that_a_word_it_does_not_know_gets_the_usage(words: list[str], code: int) -> None:
    done = subprocess.run(
        [sys.executable, SCRIPT, *words], capture_output=True, text=True, timeout=60
    )
    assert done.returncode == code
    assert done.stdout.startswith("usage: python3 resources/bootstrap.py run")
