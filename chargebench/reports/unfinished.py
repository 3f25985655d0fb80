"""What a broken-off export has already written, so that the next run goes on from there."""

import hashlib
import json
from collections.abc import Callable, Iterable
from pathlib import Path

from chargebench.errors import ExportRefused
from chargebench.reports.content import AuditContent
from chargebench.reports.manifest import inside, sha256_of

NAME = ".unfinished.json"
_SIZE_MOST = 50_000_000  # bytes of a note that is still one


class Unfinished:
    """The parts of an export into a folder, each written once for the same records."""

    def __init__(self, folder: Path, content: AuditContent) -> None:
        self._folder = folder
        self._path = folder / NAME
        self._of = _records(content)
        self._parts = self._read()

    def part(self, name: str, write: Callable[[], Iterable[Path]]) -> tuple[Path, ...]:
        """The files of a part: those that stand as they were left, else written now.

        Raises
        ------
        ExportRefused
            They could not be written.
        """
        kept = self._parts.get(name)
        if kept is not None and all(self._stands(file, digest) for file, digest in kept.items()):
            return tuple(self._folder / file for file in kept)
        written = tuple(write())
        self._parts[name] = {
            path.relative_to(self._folder).as_posix(): sha256_of(path) for path in written
        }
        note = {"of": self._of, "parts": self._parts}
        try:
            self._path.write_text(json.dumps(note), encoding="utf-8")
        except OSError as problem:
            raise ExportRefused(
                f"The export could not be written to {self._folder} ({problem.strerror})."
            ) from problem
        return written

    def finished(self) -> None:
        """Nothing is left to go on with."""
        self._path.unlink(missing_ok=True)

    def _stands(self, file: str, digest: str) -> bool:
        path = self._folder / file
        return path.is_file() and sha256_of(path) == digest

    def _read(self) -> dict[str, dict[str, str]]:
        """Parts noted for the same records; anything else is written anew."""
        try:
            if self._path.stat().st_size > _SIZE_MOST:
                return {}
            note = json.loads(self._path.read_text("utf-8"))
            if note["of"] != self._of:
                return {}
            parts = {
                str(name): {str(file): str(digest) for file, digest in files.items()}
                for name, files in note["parts"].items()
            }
        except (OSError, ValueError, LookupError, TypeError, AttributeError, RecursionError):
            return {}
        if not all(inside(file) for files in parts.values() for file in files):
            return {}
        return parts


def _records(content: AuditContent) -> str:
    """Which records an export is of: program, day, period, choice, rules and where the chain is."""
    rule_set = content.rule_set
    told = (
        *(content.program, content.today.isoformat(), content.period, content.selection.words),
        *(rule_set.name, rule_set.edition, *map(str, content.chain_head)),
    )
    return hashlib.sha256("\n".join(told).encode()).hexdigest()
