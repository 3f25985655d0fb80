"""What lies where: the top level, and nothing that belongs to somebody's machine."""

import re
from pathlib import Path

from tests.tidy import tree

TOP_LEVEL = {
    *("README.md", "DEVELOPERS.md", "pyproject.toml"),
    *("chargebench", "resources", "tests", "sample_jobs"),
}
DOT_FILES = {
    *(".ci", ".gitignore", ".gitattributes", ".constraints.txt", ".constraints-test.txt"),
    ".pre-commit-config.yaml",
}
# A checkout must work for anybody: no path of one machine, no address of one package index.
PLACES = {
    "a path of one machine": re.compile(r"(?<![\w.:/])/(?:work|root|home|Users)/\w"),
    "a folder beside the checkout": re.compile(r"\.\./" + r"shared|\.library" + "/"),
    "the address of a package index": re.compile(
        r"pypi\.org|pythonhosted\.org|--(?:extra-)?index-url\s|deb\.debian\.org|npmjs\.org"
    ),
}
TEXT = {
    ".py",
    ".md",
    ".toml",
    ".txt",
    ".json",
    ".csv",
    ".yaml",
    ".yml",
    ".qss",
    ".svg",
    ".html",
    "",
}


def _text_files() -> list[Path]:
    return [path for path in tree.files() if path.suffix in TEXT]


def test_that_the_top_level_holds_what_was_agreed() -> None:
    found = {path.relative_to(tree.ROOT).parts[0] for path in tree.files()}
    assert found - TOP_LEVEL - DOT_FILES == set()


def test_that_no_file_names_a_place_of_one_machine() -> None:
    named = [
        f"{tree.name(path)}:{number} names {what}: {line.strip()[:80]}"
        for path in _text_files()
        if path != Path(__file__)
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        for what, pattern in PLACES.items()
        if pattern.search(line)
    ]
    assert named == []


def test_that_packages_are_pinned_once_and_with_hashes() -> None:
    pins = [
        pin
        for name in (".constraints.txt", ".constraints-test.txt")
        for pin in re.split(
            r"^(?=\S+==)", (tree.ROOT / name).read_text(encoding="utf-8"), flags=re.MULTILINE
        )
        if "==" in pin
    ]
    heads = [pin.splitlines()[0].rstrip(" \\") for pin in pins]
    assert len(heads) == len(set(heads))
    assert [pin.splitlines()[0] for pin in pins if "--hash=sha256:" not in pin] == []
