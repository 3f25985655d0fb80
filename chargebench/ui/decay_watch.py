"""What the timer of a test watches: which fields it writes, what it asks for, in which words."""

from dataclasses import dataclass

from chargebench.errors import ReadingRefused
from chargebench.steps import Typed
from chargebench.steps.form import TypedLine
from chargebench.units import Kind, read
from chargebench.words import say


@dataclass(frozen=True, slots=True)
class Watched:
    """The fields of one timed test."""

    started: str
    every: str
    lines: str
    every_s: float  # between readings where nothing else is typed
    begin: str
    begin_hint: str
    first: str  # what is asked for before the start
    example: str
    temperature: str = ""  # example of one, where each reading has its own


DECAY = Watched(
    started="decay_started",
    every="decay_every",
    lines="decay",
    every_s=60.0,
    begin="&Isolated now",
    begin_hint="The pump is valved off: the decay test starts at this moment.",
    first="Isolate the pump",
    example="420 micron",
)
PRESSURE = Watched(
    started="test_started",
    every="test_every",
    lines="readings",
    every_s=600.0,
    begin="&Isolated now",
    begin_hint="The regulator is closed off: the pressure test starts at this moment.",
    first="Close off the nitrogen",
    example="150 psig",
    temperature="72 F",
)
WATCHED = {"evacuation": DECAY, "pressure_test": PRESSURE}


def seconds_of(line: TypedLine) -> float:
    """When a reading was taken, from the start."""
    try:
        return float(read(Kind.DURATION, line.get("at", "")).quantity.m_as("s"))
    except ReadingRefused:
        return 0.0


def every_of(watched: Watched, typed: Typed) -> float:
    """Seconds between two readings."""
    try:
        seconds = float(read(Kind.DURATION, str(typed.get(watched.every, ""))).quantity.m_as("s"))
    except ReadingRefused:
        return watched.every_s
    return seconds if seconds >= 1 else watched.every_s


def due(watched: Watched, typed: Typed, lines: list[TypedLine]) -> float:
    """When the next reading is due, in seconds from the start: the first one at once."""
    if not lines:
        return 0.0
    every = every_of(watched, typed)
    return (seconds_of(lines[-1]) // every + 1) * every


def ends_of(watched: Watched, lines: list[TypedLine]) -> dict[str, str]:
    """Start, end and hold of a pressure test, as its first and last readings say."""
    if watched is not PRESSURE or not lines:
        return {}
    first, last = lines[0], lines[-1]
    said = {"start_pressure": first["reading"], "start_temperature": first.get("temperature", "")}
    if len(lines) > 1:
        said |= {
            "end_pressure": last["reading"],
            "end_temperature": last.get("temperature", ""),
            "hold": last["at"],
        }
    return {key: text for key, text in said.items() if text}


def clock(seconds: float) -> str:
    """Seconds as a clock shows them: 4:05."""
    minutes, rest = divmod(int(seconds), 60)
    return f"{minutes}:{rest:02d}"


def span(seconds: float) -> str:
    """Seconds as a time span a form understands: 4 min 5 s."""
    minutes, rest = divmod(int(seconds), 60)
    if not minutes:
        return f"{rest} s"
    return (
        say("{minutes} min {rest} s", minutes=minutes, rest=rest)
        if rest
        else say("{minutes} min", minutes=minutes)
    )
