r"""Collect every text that can reach the window, and write and compile its translations.

`python resources/build_translations.py` rewrites resources/translations/*.ts, keeping what is
translated, and compiles them. `--open` prints what has no translation yet. `--take FILE` takes
translations in: lines of text, German and Spanish, parted by tabs, `\\n` for a new line.
"""

import argparse
import ast
import re
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree as ET

ROOT = Path(__file__).resolve().parent.parent
FOLDER = ROOT / "resources" / "translations"
LANGUAGES = ("de", "es")
CONTEXT = "chargebench"
LAYERS = (
    "words.py",
    "errors.py",
    "ui",
    "desk",
    "ledger",
    "jobfile",
    "flags",
    "steps",
    "calc",
    "units",
    "fluids",
    "instruments",
    "rules",
)
_NOT_SHOWN = ("ledger/migrations", "jobfile/schema.py", "ledger/schema.py", "fluids/child.py")
# Texts that are handed to these are names, keys, SQL or formats, never shown.
_NAMES_TO = {
    "setObjectName",
    "setProperty",
    "getLogger",
    "getattr",
    "import_module",
    "QKeySequence",
    "QColor",
    "Q",
    "m_as",
    "to",
    "check",
    "TypeVar",
    "QSettings",
    "strftime",
    "compile",
    "text",
    "getAxis",
    "encode",
    "decode",
    "execute",
    "Column_",
    "warning",
    "debug",
    "exception",
}
_TEMPLATED = {"say", "tr", "joined"}
_LETTERS = re.compile(r"[^\W\d_]{2}")
_PLACE = re.compile(r"\{[^{}]*\}")
_SENTENCE = re.compile(r"^[^{}]*[A-Za-zÀ-ÿ]{2,}[^{}]*$")
_CODE = re.compile(
    r"\b(SELECT|CREATE|INSERT|UPDATE|DELETE|PRAGMA|GRANT|ALTER|REVOKE|INDEXED)\b|::|=="
)


def placeholders(text: str) -> list[str]:
    """Names between braces, in order of their letters."""
    return sorted(_PLACE.findall(text.replace("{{", "").replace("}}", "")))


def texts() -> list[str]:
    """Every text that can reach the window, each once."""
    found: dict[str, None] = {}
    for path in _files():
        for text in _of_module(ast.parse(path.read_text(encoding="utf-8"))):
            found.setdefault(text)
    for line in tomllib.loads((ROOT / "resources" / "checklist.toml").read_text("utf-8"))["lines"]:
        found.setdefault(line["text"])
    for path in sorted((ROOT / "resources" / "rules").glob("*.toml")):
        for text in _sentences(tomllib.loads(path.read_text("utf-8"))):
            found.setdefault(text)
    return sorted(found, key=lambda text: (text.casefold(), text))


def _sentences(part: object) -> Iterator[str]:
    """What a rule set says in sentences: figures that are advice, not numbers."""
    if isinstance(part, dict):
        if isinstance(value := part.get("value"), str) and value.endswith("."):
            yield value
        for each in part.values():
            yield from _sentences(each)
    elif isinstance(part, list):
        for each in part:
            yield from _sentences(each)


def _files() -> Iterator[Path]:
    package = ROOT / "chargebench"
    for layer in LAYERS:
        place = package / layer
        for path in [place] if place.is_file() else sorted(place.rglob("*.py")):
            if not any(part in path.as_posix() for part in _NOT_SHOWN):
                yield path


def _of_module(tree: ast.Module) -> Iterator[str]:
    left_out, given = _docstrings(tree) | _names(tree), _given(tree)
    for node in ast.walk(tree):
        if not isinstance(node, ast.Constant) or not isinstance(node.value, str):
            continue
        if id(node) not in left_out and _shown(node.value, templated=id(node) in given):
            yield node.value


def _given(tree: ast.Module) -> set[int]:
    """Constants that are said or translated as they stand, also both ways of a condition."""
    return {
        id(part)
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in _TEMPLATED and node.args
        for part in ast.walk(node.args[0])
        if isinstance(part, ast.Constant)
    }


def _docstrings(tree: ast.Module) -> set[int]:
    return {
        id(node.value)
        for node in ast.walk(tree)
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
    }


def _names(tree: ast.Module) -> set[int]:
    """Constants that are names: keys, subscripts, parts of other texts, what is compared."""
    found: set[int] = set()
    for node in ast.walk(tree):
        parts: list[ast.AST] = []
        if isinstance(node, ast.JoinedStr):
            parts = list(ast.walk(node))
        elif isinstance(node, ast.Subscript):
            parts = [node.slice]
        elif isinstance(node, ast.Call):
            called = getattr(node.func, "attr", getattr(node.func, "id", ""))
            if called in _NAMES_TO:
                parts = [part for arg in node.args for part in ast.walk(arg)]
        elif isinstance(node, ast.Assign) and any(
            getattr(target, "id", "") == "__all__" for target in node.targets
        ):
            parts = list(ast.walk(node.value))
        found |= {id(part) for part in parts}
    return found


def _shown(text: str, *, templated: bool) -> bool:
    bare = _PLACE.sub("", text)
    if not text.replace("\n", "").isprintable():
        return False
    if (
        not _LETTERS.search(bare)
        or _CODE.search(text)
        or text.startswith(("qt_", "QWidget", "\n\n"))
    ):
        return False
    if templated:
        return True
    if re.fullmatch(r"[\w./:+-]+", text):  # one word: a name in code, or a word of ours
        return bool(re.fullmatch(r"[A-Za-z][a-z]{2,}(-[a-z]+)*", text))
    return bool(re.search(r"[a-z]{2}", bare)) and not re.search(
        r"[;{}]\s*$|^\W*[\w-]+\s*[:{]\s*#|\\", text
    )


def kept(language: str) -> dict[str, str]:
    """What is translated already."""
    path = FOLDER / f"chargebench_{language}.ts"
    if not path.exists():
        return {}
    root = ET.parse(path).getroot()  # noqa: S314 - a file of this repository
    return {
        message.findtext("source", ""): message.findtext("translation", "")
        for message in root.iter("message")
        if message.findtext("translation", "")
    }


def write(language: str, wanted: list[str], known: dict[str, str]) -> None:
    """Write a language's file for Qt Linguist, and compile it."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ET.SubElement(root, "context")
    ET.SubElement(context, "name").text = CONTEXT
    for text in wanted:
        message = ET.SubElement(context, "message")
        ET.SubElement(message, "source").text = text
        translation = ET.SubElement(message, "translation")
        if known.get(text):
            translation.text = known[text]
        else:
            translation.set("type", "unfinished")
    ET.indent(root, "  ")
    path = FOLDER / f"chargebench_{language}.ts"
    body = ET.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', "utf-8")
    compile_ts(path, path.with_suffix(".qm"))


def compile_ts(path: Path, compiled: Path) -> None:
    """Compile a file of translations for the program."""
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    subprocess.run([tool, "-silent", path, "-qm", compiled], check=True)


def taken(path: Path) -> tuple[dict[str, str], dict[str, str]]:
    """German and Spanish of a file of lines parted by tabs."""
    both: tuple[dict[str, str], dict[str, str]] = ({}, {})
    for line in path.read_text("utf-8").splitlines():
        text, *others = (part.replace("\\n", "\n") for part in line.split("\t"))
        for into, other in zip(both, others, strict=True):
            if placeholders(other) != placeholders(text):
                raise SystemExit(f"{path}: expected the same places in braces: {text} / {other}")
            into[text] = other
    return both


def main() -> None:
    """Write both languages."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--open", action="store_true")
    asked.add_argument("--take", type=Path)
    args = asked.parse_args()
    wanted = texts()
    more = taken(args.take) if args.take else ({}, {})
    for language, new in zip(LANGUAGES, more, strict=True):
        known = kept(language) | new
        if args.open:
            print(*(text.replace("\n", "\\n") for text in wanted if text not in known), sep="\n")
            return
        write(language, wanted, known)


if __name__ == "__main__":
    main()
