"""Where in a rule file a key stands, so that a refusal can name file, line and key."""

import re
from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

from chargebench.errors import RuleSetRefused
from chargebench.words import say

Key = str | int
_HEADER = re.compile(r"^\s*(\[\[?)\s*(.+?)\s*\]\]?\s*(?:#.*)?$")
_KEY = re.compile(r'^\s*("[^"]*"|[A-Za-z0-9_-]+)\s*=')


@dataclass(frozen=True, slots=True)
class Text:
    """One rule file as text."""

    path: Path
    content: str

    def line(self, keys: tuple[Key, ...]) -> tuple[int, int]:
        """How many of the keys were found in this file, and the line of the last of them."""
        best = (0, 1)
        header: tuple[Key, ...] = ()
        counts: dict[tuple[Key, ...], int] = {}
        for number, line in enumerate(self.content.splitlines(), 1):
            if found := _HEADER.match(line):
                header = _path(found[2], counts, is_array=found[1] == "[[")
                here = header
            elif found := _KEY.match(line):
                here = (*header, found[1].strip('"'))
            else:
                continue
            shared = min(len(here), len(keys))
            if shared > best[0] and here[:shared] == keys[:shared]:
                best = (shared, number)
        return best


def _path(dotted: str, counts: dict[tuple[Key, ...], int], *, is_array: bool) -> tuple[Key, ...]:
    parts = [part.strip().strip('"') for part in re.findall(r'"[^"]*"|[^.]+', dotted)]
    path: tuple[Key, ...] = ()
    for place, part in enumerate(parts):
        path = (*path, part)
        is_last = place == len(parts) - 1
        if is_last and is_array:
            counts[path] = counts.get(path, -1) + 1
        if path in counts:
            path = (*path, counts[path])
    return path


@dataclass(frozen=True, slots=True)
class Place:
    """A key in the files a rule set is read from, the extending file first."""

    texts: tuple[Text, ...]
    keys: tuple[Key, ...] = ()

    def __truediv__(self, key: Key) -> "Place":
        return Place(self.texts, (*self.keys, key))

    @property
    def dotted(self) -> str:
        """The key as written in a refusal; the first row of an array is 1."""
        return ".".join(str(key + 1) if isinstance(key, int) else key for key in self.keys)

    def refuse(self, why: str) -> NoReturn:
        """Refuse what stands here."""
        found = [(*text.line(self.keys), text.path) for text in self.texts]
        _, line, path = max(found, key=lambda row: row[0])
        raise RuleSetRefused(
            say(
                "{path}, line {line}, {dotted}: {why}",
                path=path.name,
                line=line,
                dotted=self.dotted,
                why=why,
            )
        )
