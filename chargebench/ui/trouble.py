"""Refusals nobody caught are shown in words; bugs are logged and said plainly."""

import logging
import sys
from collections.abc import Callable
from pathlib import Path
from types import TracebackType

from chargebench import __version__
from chargebench.errors import ChargebenchError
from chargebench.words import say

_LOG = logging.getLogger("chargebench.bugs")
Hook = Callable[[type[BaseException], BaseException, TracebackType | None], None]


def hook(tell: Callable[[str], None], log_file: Callable[[], Path]) -> Hook:
    """What to do with an exception that reached the top."""

    def met(kind: type[BaseException], value: BaseException, trace: TracebackType | None) -> None:
        if isinstance(value, ChargebenchError):
            tell(str(value))
            return
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, value, trace)
            return
        path = log_file()
        _log_to(path)
        _LOG.error("bug in chargebench %s", __version__, exc_info=(kind, value, trace))
        tell(
            say(
                "Something went wrong that is a fault of this program, not yours. What "
                "was signed and what is typed is kept. The fault is written in {path}.",
                path=path,
            )
        )

    return met


def _log_to(path: Path) -> None:
    if not _LOG.handlers:
        path.parent.mkdir(parents=True, exist_ok=True)
        handler = logging.FileHandler(path, encoding="utf-8")
        handler.setFormatter(logging.Formatter("%(asctime)s %(message)s"))
        _LOG.addHandler(handler)
        _LOG.propagate = False


def default_log() -> Path:
    """The log file of this person on this computer."""
    import platformdirs

    return platformdirs.user_log_path("chargebench") / "bugs.log"
