"""What every paper of a shop says of itself: whose it is, when it was made, on which paper."""

import locale
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime

from chargebench.units import System

# Where people print on Letter: Unicode CLDR, supplemental data, paper size (from memory); and as
# Windows calls the larger of these countries.
_LETTER = ("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE")
_LETTER_IN_WORDS = ("Canada", "Chile", "Colombia", "Mexico", "Philippines", "United States")
DEFERENCE = (
    "This paper does not replace local codes, the equipment maker's instructions or a licensed "
    "person's judgement. Where they ask for more, they count."
)


@dataclass(frozen=True, slots=True)
class Letterhead:
    """Whose paper it is."""

    shop: Mapping[str, str]  # the shop's row as typed
    made_at: datetime
    program: str
    paper: str  # A4 or Letter
    period: str = ""
    people: Mapping[str, Mapping[str, str]] = field(default_factory=dict)  # rows by id

    @property
    def name(self) -> str:
        """The shop's name."""
        return self.shop.get("name", "")

    @property
    def units(self) -> System:
        """Units the shop wants shown."""
        return "IP" if self.shop.get("units") == "IP" else "SI"

    def certificate(self, name: str) -> str:
        """Certificate of a person by name, with its type."""
        row = next((row for row in self.people.values() if row.get("name") == name), {})
        return joined(row.get("certificate", ""), row.get("certificate_type", ""))


def joined(*words: str, by: str = ", ") -> str:
    """Words that are there, one after the other."""
    return by.join(word for word in words if word)


def usual_paper(shop: Mapping[str, str]) -> str:
    """The paper a shop has chosen; else that of this computer's country; else by its units."""
    if shop.get("paper"):
        return shop["paper"]
    spoken = (locale.getlocale()[0] or "").partition("_")[2]
    if not spoken:
        return "Letter" if shop.get("units") == "IP" else "A4"
    return "Letter" if spoken in _LETTER + _LETTER_IN_WORDS else "A4"
