"""Reading a job file: strict, and every refusal names the place."""

import hashlib
from pathlib import Path
from typing import Any

from chargebench.errors import JobFileRefused
from chargebench.jobfile.check import checked
from chargebench.jobfile.model import VERSION, JobFile
from chargebench.jobfile.shape import Place
from chargebench.jobfile.text import SIZE_MOST, too_large, tree
from chargebench.jobfile.upgrade import UPGRADES
from chargebench.words import joined, say

__all__ = ["SIZE_MOST", "read"]
SHOWN_MOST = 20


def read(source: Path | str | bytes) -> JobFile:
    """A job file from a path or from its bytes.

    Raises
    ------
    JobFileRefused
        Anything that is not a job file as the schema has it; names the place and what was
        expected there, one line a problem.
    """
    content = source if isinstance(source, bytes) else _bytes(Path(source))
    value = _current(tree(content))
    place = Place()
    file = checked(value, place, hashlib.sha256(content).hexdigest())
    if file is None or place.problems:
        shown = place.problems[:SHOWN_MOST]
        more = len(place.problems) - len(shown)
        raise JobFileRefused(
            joined("\n", shown + ([say("and {more} more.", more=more)] if more else []))
        )
    return file


def _bytes(path: Path) -> bytes:
    try:
        size = path.stat().st_size
        if size > SIZE_MOST:
            raise too_large(size)
        return path.read_bytes()
    except OSError as refusal:
        reason = (refusal.strerror or "it can not be read").lower()
        raise JobFileRefused(
            say("Expected a job file at {path}: {reason}.", path=path, reason=reason)
        ) from None


def _current(value: Any) -> Any:
    """The tree in today's format."""
    if not isinstance(value, dict) or "chargebench_job" not in value:
        raise JobFileRefused('Expected a job file: an object that begins {"chargebench_job": 1.')
    version = value["chargebench_job"]
    if type(version) is not int or version < 1:
        raise JobFileRefused(
            say("chargebench_job: Expected a version number up to {version}.", version=VERSION)
        )
    if version > VERSION:
        raise JobFileRefused(
            say(
                "chargebench_job: This file is of version {version}; this program reads "
                "up to version {version_2}. Take it in with a newer chargebench.",
                version=version,
                version_2=VERSION,
            )
        )
    for older in range(version, VERSION):
        value = UPGRADES[older](value)
    return value
