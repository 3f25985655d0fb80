"""The handling checklist: lines as data, chosen by safety class."""

import functools
import tomllib
from dataclasses import dataclass
from pathlib import Path

from chargebench.errors import RuleSetRefused
from chargebench.resource import resource
from chargebench.rules.checking import build
from chargebench.rules.figure import MARKS
from chargebench.rules.place import Place, Text
from chargebench.sources import SOURCES, Mark
from chargebench.words import joined, say

CLASSES = ("A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3")
STEPS = (
    "safety",
    "leak_search",
    "pressure_test",
    "recovery",
    "evacuation",
    "weigh_in",
    "close",
)
WHEN = ("", "opened", "recovered", "released", "out of service")


@dataclass(frozen=True, slots=True)
class ChecklistLine:
    """One line of the handling checklist."""

    key: str
    text: str
    classes: tuple[str, ...]
    step: str
    before_opening: bool  # must be ticked before the circuit is opened
    source: str
    place: str
    mark: Mark
    when: str = ""  # one of WHEN; empty: at every job of these classes


@dataclass(frozen=True, slots=True)
class _Lines:
    lines: tuple[ChecklistLine, ...]


@functools.cache
def _lines() -> tuple[ChecklistLine, ...]:
    return read_checklist(resource("checklist.toml"))


def checklist(safety_class: str) -> tuple[ChecklistLine, ...]:
    """The lines that hold for a safety class, in working order.

    Parameters
    ----------
    safety_class : str
        A1, A2L, A2, A3, B1, B2L, B2 or B3.

    Returns
    -------
    tuple of ChecklistLine
        In the order of the steps.

    Raises
    ------
    RuleSetRefused
        A class that is not one of these.

    Source
    ------
    Each line names its own.
    """
    if safety_class not in CLASSES:
        raise RuleSetRefused(
            say(
                "“{safety_class}” is not one of {classes}.",
                safety_class=safety_class,
                classes=joined(", ", CLASSES),
            )
        )
    return tuple(line for line in _lines() if safety_class in line.classes)


def read_checklist(path: Path) -> tuple[ChecklistLine, ...]:
    """The lines of a checklist file, checked and in the order of the steps."""
    content = path.read_text("utf-8")
    place = Place((Text(path, content),))
    table = tomllib.loads(content)
    lines: tuple[ChecklistLine, ...] = build(_Lines, table, place).lines
    seen: set[str] = set()
    for number, line in enumerate(lines):
        here = place / "lines" / number
        if line.key in seen:
            (here / "key").refuse(say("“{key}” is used twice.", key=line.key))
        seen.add(line.key)
        if line.source not in SOURCES:
            (here / "source").refuse(
                say("“{source}” is not a source in the bibliography.", source=line.source)
            )
        if line.mark not in MARKS:
            (here / "mark").refuse(
                say("“{mark}” is not one of {marks}.", mark=line.mark, marks=joined(", ", MARKS))
            )
        if line.step not in STEPS:
            (here / "step").refuse(
                say("“{step}” is not one of {steps}.", step=line.step, steps=joined(", ", STEPS))
            )
        if line.when not in WHEN:
            (here / "when").refuse(
                say(
                    "“{when}” is not one of {known}.",
                    when=line.when,
                    known=joined(", ", WHEN[1:]),
                )
            )
        for name in line.classes:
            if name not in CLASSES:
                (here / "classes").refuse(
                    say(
                        "“{name}” is not one of {classes}.",
                        name=name,
                        classes=joined(", ", CLASSES),
                    )
                )
    return tuple(sorted(lines, key=lambda line: STEPS.index(line.step)))
