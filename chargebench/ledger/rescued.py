"""What a rescue brought into a new file, and what is missing there."""

from dataclasses import dataclass
from pathlib import Path

from chargebench.words import joined, say


@dataclass(frozen=True, slots=True)
class Rescued:
    """What a rescue brought into a new file, and what is missing there."""

    path: Path
    entries: int
    from_backups: int
    missing: tuple[str, ...]
    notes: tuple[str, ...]

    @property
    def whole(self) -> bool:
        """Whether every entry known to have been recorded is there."""
        return not self.missing

    @property
    def sentences(self) -> tuple[str, ...]:
        """All of it in words."""
        taken = (
            say(", {from_backups} of them from backups", from_backups=self.from_backups)
            if self.from_backups
            else ""
        )
        said = say(
            "{entries} entries were read{taken} and are in {path}.",
            entries=self.entries,
            taken=taken,
            path=self.path,
        )
        whole = "No entry is known to be missing." if self.whole else ""
        return tuple(each for each in (said, *self.missing, whole, *self.notes) if each)


def unread(bench: str, first: int, upto: int, after: str, before: str) -> str:
    """Which entries can not be read, and between which moments they were recorded."""
    moments = (
        say("after {moment}", moment=after) if after else "",
        say("before {moment}", moment=before) if before else "",
    )
    when = joined(" and ", (each for each in moments if each))
    known = say(", recorded {when}", when=when) if when else ""
    if first == upto:
        return say(
            "Entry {first} of bench {bench} can not be read{known}.",
            first=first,
            bench=bench,
            known=known,
        )
    return say(
        "Entries {first} to {upto} of bench {bench} can not be read{known}.",
        first=first,
        upto=upto,
        bench=bench,
        known=known,
    )
