"""The files that belong to the project, and their Python sources parsed once."""

import ast
import shutil
import subprocess
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent.parent
_NOT_OURS = {"__pycache__", "build", "dist", "chargebench-export"}


@cache
def files() -> tuple[Path, ...]:
    """Files of the project: kept by git or about to be; without git, all but what is ignored."""
    if (ROOT / ".git").exists() and shutil.which("git"):
        listing = subprocess.run(
            ["git", "ls-files", "--cached", "--others", "--exclude-standard", "-z"],
            cwd=ROOT,
            capture_output=True,
            check=True,
        ).stdout.decode()
        found = [ROOT / name for name in listing.split("\0") if name]
    else:
        found = [path for path in ROOT.rglob("*") if not _ignored(path.relative_to(ROOT))]
    return tuple(sorted(path for path in found if path.is_file()))


def _ignored(path: Path) -> bool:
    hidden_folder = any(part.startswith(".") and part != ".ci" for part in path.parts[:-1])
    return hidden_folder or bool(_NOT_OURS.intersection(path.parts))


def name(path: Path) -> str:
    """How a file is called in messages."""
    return path.relative_to(ROOT).as_posix()


def sources(*folders: str) -> list[Path]:
    """Python files, all of them or those in the folders."""
    python = [path for path in files() if path.suffix == ".py"]
    places = [ROOT / folder for folder in folders]
    return [path for path in python if not places or any(path.is_relative_to(p) for p in places)]


@cache
def parsed(path: Path) -> ast.Module:
    """The file as a syntax tree."""
    return ast.parse(path.read_text(encoding="utf-8"), str(path))


Function = ast.FunctionDef | ast.AsyncFunctionDef


def functions(path: Path) -> list[Function]:
    """Every function and method of the file, also those inside others."""
    return [node for node in ast.walk(parsed(path)) if isinstance(node, Function)]
