"""What of a shop's records an export shows: one equipment, one refrigerant, one person, or all."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from chargebench.ledger import Entry


@dataclass(frozen=True, slots=True)
class Selection:
    """What the records are narrowed to; empty, they are not.

    An entry is shown that was signed by the person, belongs to a job on the equipment or moved
    something into or out of it, and moved the refrigerant or belongs to a job on equipment that
    holds it; of its mass lines those of the refrigerant.
    """

    equipment: str = ""
    refrigerant: str = ""
    person: str = ""
    people: frozenset[str] = frozenset()  # every id of the person
    equipment_of: Mapping[str, str] = field(default_factory=dict)  # by job
    refrigerant_of: Mapping[str, str] = field(default_factory=dict)  # by equipment, as registered

    def __bool__(self) -> bool:
        """Whether anything is left out."""
        return bool(self.equipment or self.refrigerant or self.person)

    @property
    def words(self) -> str:
        """What is shown, in words."""
        named = (
            ("equipment", self.equipment),
            ("refrigerant", self.refrigerant),
            ("person", self.person),
        )
        return ", ".join(f"{what} {value}" for what, value in named if value) or "all records"

    def of(self, entry: Entry) -> Entry | None:
        """The entry with the mass lines that are shown; None where it is not."""
        if not self:
            return entry
        if self.person and entry.by not in self.people:
            return None
        if self.equipment and not self._on(entry):
            return None
        if not self.refrigerant:
            return entry
        lines = tuple(each for each in entry.transfers if each.refrigerant == self.refrigerant)
        if not lines and self._kind(entry) != self.refrigerant:
            return None
        return replace(entry, transfers=lines)

    def _on(self, entry: Entry) -> bool:
        place = f"equipment:{self.equipment}"
        return (
            self.equipment_of.get(entry.job or "") == self.equipment
            or any(place in (each.source, each.target) for each in entry.transfers)
            or (entry.kind == "register" and _registered(entry) == place)
        )

    def _kind(self, entry: Entry) -> str:
        """The refrigerant of the equipment worked on, or of the row put into a register."""
        if entry.kind == "register":
            return str((entry.payload["after"] or {}).get("refrigerant", ""))
        return self.refrigerant_of.get(self.equipment_of.get(entry.job or "", ""), "")


def _registered(entry: Entry) -> str:
    return f"{entry.payload['register']}:{entry.payload['id']}"


ALL = Selection()
