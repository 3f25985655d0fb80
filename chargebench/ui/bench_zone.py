"""Where a weigh-in stands towards its stop, and what is heard of it."""

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from chargebench.errors import ReadingRefused
from chargebench.ui.mass_view import MassView
from chargebench.ui.sound import Tone
from chargebench.units import Kind, Reading, read
from chargebench.words import say

NEAR_SHARE = 0.10  # of the nameplate still to go: our own choice of when to warn
AGAIN_SHARE = 0.15  # further away than this, tones are due again


class Zone(StrEnum):
    """Where a weigh-in stands towards its stop."""

    FAR = "still to go"
    NEAR = "still to go: slowly"
    AT = "stop now"
    PAST = "over nameplate"
    UNKNOWN = "type the scale's reading"


TONES = {Zone.NEAR: Tone.NEAR, Zone.AT: Tone.AT, Zone.PAST: Tone.PAST}
_ORDER = (Zone.UNKNOWN, Zone.FAR, Zone.NEAR, Zone.AT, Zone.PAST)


def zone_of(view: MassView | None) -> Zone:
    """Where a weigh-in stands towards its stop."""
    if view is None or view.to_go is None:
        return Zone.UNKNOWN
    to_go, allowed = view.size(view.to_go), view.size(view.tolerance)
    if to_go < -allowed:
        return Zone.PAST
    if to_go <= allowed:
        return Zone.AT
    return Zone.NEAR if to_go <= NEAR_SHARE * view.size(view.nameplate) else Zone.FAR


class Warned:
    """Which tone is due: one for each zone on the way, none for a display that flickers back."""

    def __init__(self) -> None:
        self._furthest = Zone.FAR

    def enter(self, view: MassView | None) -> Tone | None:
        """Come to where a weigh-in stands; the tone its zone is entered with."""
        zone = zone_of(view)
        if view is None or view.to_go is None:
            return None
        if view.size(view.to_go) > AGAIN_SHARE * view.size(view.nameplate):
            self._furthest = Zone.FAR
        if _ORDER.index(zone) <= _ORDER.index(self._furthest):
            return None
        self._furthest = zone
        return TONES[zone]


@dataclass(frozen=True, slots=True)
class Seen:
    """What a weigh-in comes to at one reading: its masses, and the stop flags that stand."""

    view: MassView | None
    stops: tuple[str, ...] = ()


Looks = Callable[[str, str], Seen]  # start and present reading as text, worked out


def unit_of(text: str) -> str:
    """Unit a scale reading is typed in; empty where there is none, or it is no reading."""
    try:
        return read(Kind.SCALE, text).unit
    except ReadingRefused:
        return ""


def whole(reading: Reading) -> str:
    """The reading with its unit written out."""
    bare = reading.text.lstrip("+-\u2212").replace(",", "").replace(".", "").isdigit()
    return (
        say("{reading} {unit}", reading=reading.text, unit=reading.unit) if bare else reading.text
    )
