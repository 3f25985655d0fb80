"""The exact words of refusals, kept in text files: a change of words is a change somebody sees.

A file is blocks of "== name", the words below it, parted by an empty line.
"""

from pathlib import Path

FOLDER = Path(__file__).parent


def kept(group: str) -> dict[str, str]:
    """Words of a group by name."""
    words: dict[str, str] = {}
    for block in (FOLDER / f"{group}.txt").read_text(encoding="utf-8").split("== ")[1:]:
        name, _, said = block.partition("\n")
        assert name not in words, f"{name} is kept twice"
        words[name] = said.rstrip("\n")
    return words
