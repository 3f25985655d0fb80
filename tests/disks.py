"""Small disks to try real trouble on: full, read-only, taken away.

They take the right to mount, which a superuser has on a Linux that is not shut in. Where that is
missing the tests say so; what is then tried is the same refusal by a file that may not grow, by
rights, and by files moved away, in the tests that need no disk.
"""

import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest


class Disk:
    """A file system of a megabyte in memory."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def fill(self) -> Path:
        """Leave no room; the file that takes it all."""
        rest = self.folder / "rest"
        with rest.open("wb", buffering=0) as file:
            try:
                while True:
                    file.write(b"x" * 4_096)
            except OSError:
                return rest

    def read_only(self) -> None:
        """Let nothing be written any more."""
        _run("mount", "-o", "remount,ro", str(self.folder))

    def take_away(self) -> None:
        """As a drive that is pulled out: whoever has files open keeps them, nobody finds them."""
        _run("umount", "-l", str(self.folder))


def _run(*words: str) -> None:
    subprocess.run(words, check=True, capture_output=True)


@contextmanager
def small_disk(folder: Path, size: str = "1m") -> Iterator[Disk]:
    """A disk of its own at a folder, gone at the end."""
    if sys.platform != "linux":
        pytest.skip("no small disk here; tried by a file that may not grow and by rights")
    folder.mkdir()
    try:
        _run("mount", "-t", "tmpfs", "-o", f"size={size}", "tmpfs", str(folder))
    except (OSError, subprocess.CalledProcessError):
        pytest.skip("no right to mount here; tried by a file that may not grow and by rights")
    try:
        yield Disk(folder)
    finally:
        subprocess.run(["umount", "-l", str(folder)], check=False, capture_output=True)
