"""Write the pinned versions: `python resources/lock.py`, run with the test extra installed plus uv.

`.constraints.txt` holds what the program runs with (and what installs it), `.constraints-test.txt`
what its tests need on top. One resolution serves both, for every supported Python, Linux, Windows
and macOS, so that no package can be pinned twice differently. `--upgrade` takes newer versions;
without it, pins that still satisfy `pyproject.toml` stay as they are.
"""

import re
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
RUN = ROOT / ".constraints.txt"
TEST = ROOT / ".constraints-test.txt"
HEAD = "# Pinned with hashes by resources/lock.py from pyproject.toml; do not edit by hand.\n"
INSTALLERS = "hatchling\n"
PIN = re.compile(r"^(?=\S+==)", re.MULTILINE)


def _compile(target: Path, *arguments: str) -> None:
    command = [
        *("uv", "pip", "compile", "--universal", "--python-version", "3.11", "--generate-hashes"),
        *("--no-emit-index-url", "--no-emit-find-links", "--no-header", "--no-annotate", "--quiet"),
        *(str(ROOT / "pyproject.toml"), *arguments, "--output-file", str(target)),
    ]
    subprocess.run(command, check=True, cwd=ROOT)


def _pins(text: str) -> list[str]:
    """Each pinned package with its hash lines, as one text."""
    return [pin for pin in PIN.split(text) if "==" in pin]


def main() -> None:
    """Resolve everything once, then part it into what runs and what only tests."""
    with tempfile.TemporaryDirectory() as folder:
        installers = Path(folder, "installers.in")
        installers.write_text(INSTALLERS, encoding="utf-8")
        everything, running = Path(folder, "everything.txt"), Path(folder, "running.txt")
        if RUN.exists() and TEST.exists() and "--upgrade" not in sys.argv[1:]:
            kept = RUN.read_text(encoding="utf-8") + TEST.read_text(encoding="utf-8")
            everything.write_text(kept, encoding="utf-8")
        _compile(everything, str(installers), "--extra", "test")
        _compile(running, str(installers), "--constraints", str(everything))
        run = _pins(running.read_text(encoding="utf-8"))
        test = [pin for pin in _pins(everything.read_text(encoding="utf-8")) if pin not in run]
    RUN.write_text(HEAD + "".join(run), encoding="utf-8", newline="\n")
    TEST.write_text(HEAD + "".join(test), encoding="utf-8", newline="\n")
    print(f"{RUN.name}: {len(run)} pins; {TEST.name}: {len(test)} pins more")


if __name__ == "__main__":
    main()
