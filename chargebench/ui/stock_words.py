"""Words of the Stock and Records areas: places, due dates, masses, what an entry was."""

from collections.abc import Mapping
from datetime import date, datetime
from typing import Protocol

from chargebench.desk import Desk
from chargebench.ui import language
from chargebench.units import System, from_mg, shown
from chargebench.words import say

_KINDS = {
    "job-opened": "job opened",
    "job-closed": "job closed",
    "job-reopened": "job reopened",
    "step-signed": "step signed",
    "step-not-needed": "step not needed",
    "taken-in": "taken in",
    "follow-up": "follow-up",
    "register": "register changed",
    "handed-over": "taken over from a bench",
    "bench-named": "bench named",
    "same-as": "one thing or two",
    "settled": "conflict settled",
    "leak-method-changed": "leak rate method changed",
}
_OUTSIDE = {"outside": "assumed content", "difference": "difference found by weighing"}


def mass(milligrams: int, system: System) -> str:
    """A mass in the shop's units."""
    return shown(from_mg(milligrams), system)


def signed_mass(milligrams: int, system: System) -> str:
    """A mass with its sign, as a movement."""
    sign = "+" if milligrams > 0 else ""
    return f"{sign}{mass(milligrams, system)}"


def kind_words(kind: str) -> str:
    """What an entry was."""
    return _KINDS.get(kind, kind)


class _Numbered(Protocol):
    @property
    def bench(self) -> str:
        """Whose chain it stands in."""

    @property
    def number(self) -> int:
        """Its place there."""


def numbered(desk: Desk, entry: _Numbered) -> str:
    """An entry's number, with the letter of its bench where that is another one."""
    if entry.bench == desk.reading.bench:
        return str(entry.number)
    return f"{entry.bench} {entry.number}"


def moved_words(kind: str, source: str, target: str, as_typed: str) -> str:
    """What a mass line was, by both its ends: charged, recovered, left in the hose and so on."""
    if kind != "step-signed":
        return kind_words(kind)
    match source.partition(":")[0], target.partition(":")[0]:
        case "cylinder", "equipment":
            return "charged"
        case "equipment", "cylinder":
            return "recovered"
        case "cylinder", "atmosphere":
            return "left in the hose"
        case "equipment", "atmosphere":
            return "released" if as_typed.startswith("released") else "presumed lost"
        case "outside", _:
            return "assumed"
    return kind_words(kind)


def day(when: date) -> str:
    """A day as people write it."""
    return language.day(when)


def moment(when: datetime) -> str:
    """A moment on this computer's wall clock."""
    return language.moment(when)


def due_words(due: date | None, today: date) -> str:
    """A due date in words: how long there is, or how long it is past."""
    if due is None:
        return "not known"
    days = (due - today).days
    if days == 0:
        return "due today"
    if days < 0:
        return say("overdue by {span}", span=_span(-days))
    return say("in {span}, {due}", span=_span(days), due=day(due))


def due_shape(due: date | None, today: date) -> str:
    """The shape beside a due date: overdue, within a month, or none."""
    if due is None:
        return ""
    days = (due - today).days
    return "check" if days < 0 else "note" if days <= 31 else ""


def _span(days: int) -> str:
    if days < 60:
        return say("{days} days", days=days) if days != 1 else "1 day"
    if days < 730:
        return say("{days} months", days=days // 30)
    return say("{days} years", days=days // 365)


class Places:
    """Places in words; register rows are read once."""

    def __init__(self, desk: Desk) -> None:
        self._rows: dict[str, Mapping[str, Mapping[str, str]]] = {
            "equipment": desk.rows("equipment"),
            "cylinder": desk.rows("cylinder"),
        }

    def words(self, place: str) -> str:
        """A place as people call it."""
        register, _, row_id = place.partition(":")
        if register not in self._rows:
            return _OUTSIDE.get(place, place)
        row = self._rows[register].get(row_id, {})
        name = row.get("refrigerant" if register == "cylinder" else "name", "")
        return f"{row_id} {name}".strip()
