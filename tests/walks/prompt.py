"""Commands given and what they said."""

from dataclasses import dataclass
from pathlib import Path

import pytest

from chargebench import __main__ as program


@dataclass
class Said:
    """Exit code, and what was said where."""

    code: int
    out: str
    err: str


@dataclass
class Prompt:
    """Where commands are given."""

    shop: Path
    capture: pytest.CaptureFixture[str]

    def __call__(self, *words: object) -> Said:
        self.capture.readouterr()
        try:
            code = program.main([str(word) for word in words])
        except SystemExit as done:  # argparse: --version, --help, wrong words
            code = done.code if isinstance(done.code, int) else 1
        said = self.capture.readouterr()
        return Said(code, said.out, said.err)

    def on_shop(self, *words: object) -> Said:
        return self(*words, "--shop", self.shop)


def refused(said: Said, *parts: str, code: int = 1) -> None:
    """Check that it was refused, in words that have these parts."""
    assert said.code == code
    for part in parts:
        assert part in said.err
    assert "Traceback" not in said.err
