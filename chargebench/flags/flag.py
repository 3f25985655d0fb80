"""A flag: something a person must see, as a whole sentence with its figure, limit and source."""

from dataclasses import dataclass
from typing import Literal

Level = Literal["stop", "check", "note"]
LEVELS: tuple[Level, ...] = ("stop", "check", "note")  # worst first


@dataclass(frozen=True, slots=True)
class Flag:
    """What is wrong or to be looked at, by how much, against what, and what to do."""

    level: Level
    key: str  # which rule raised it, such as over-nameplate
    says: str
    about: str  # step:weigh_in, cylinder:C-014, equipment:E-003, ...
    figure: str = ""
    limit: str = ""
    source: str = ""  # key of sources.py with the place in it
    mark: str = ""


def worst_first(flags: tuple[Flag, ...]) -> tuple[Flag, ...]:
    """Flags in the order they are to be read."""
    return tuple(sorted(flags, key=lambda flag: LEVELS.index(flag.level)))
