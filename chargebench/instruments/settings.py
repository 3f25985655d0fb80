"""How an instrument speaks on its serial line, as one text a person can read and type.

`9600 8N1, stable ST, moving US, unit g, decimal comma, asked W` is a whole example; the speed and
the frame come first, the rest where it is needed.
"""

import re
from dataclasses import dataclass
from typing import Self

from chargebench.errors import ReadingRefused
from chargebench.words import say

BAUDS = (300, 600, 1200, 2400, 4800, 9600, 14400, 19200, 28800, 38400, 57600, 115200)
BITS = (7, 8)
PARITIES = {"N": "none", "E": "even", "O": "odd"}
STOPS = ("1", "1.5", "2")
EXAMPLE = "9600 8N1, stable ST"
_FRAME = re.compile(r"(\d{3,6})\s+([78])([NEO])(1\.5|1|2)", re.IGNORECASE)
_WORD_LONGEST = 12
_ASKED_LONGEST = 40


@dataclass(frozen=True, slots=True)
class LineSettings:
    """Speed and frame of a line, the marks an instrument sets, and what it leaves unsaid."""

    baud: int = 9600
    bits: int = 8
    parity: str = "N"
    stop: str = "1"
    stable: str = ""  # mark in a line that rests
    moving: str = ""  # mark in a line that does not
    unit: str = ""  # of numbers sent without one
    comma: bool = False  # a comma is the decimal mark
    asked: str = ""  # what makes it speak, where it does not by itself; a line end is added

    def __str__(self) -> str:
        parts = [f"{self.baud} {self.bits}{self.parity}{self.stop}"]
        parts += [
            f"{word} {text}"
            for word, text in (
                ("stable", self.stable),
                ("moving", self.moving),
                ("unit", self.unit),
                ("decimal", "comma" if self.comma else ""),
                ("asked", self.asked),
            )
            if text
        ]
        return ", ".join(parts)

    @classmethod
    def read(cls, text: str) -> Self:
        """Understand the settings' text.

        Raises
        ------
        ReadingRefused
            Text that is none; says what was expected.
        """
        first, *rest = (part.strip() for part in text.split(","))
        frame = _FRAME.fullmatch(first)
        if frame is None or int(frame[1]) not in BAUDS:
            raise ReadingRefused(
                say(
                    "Expected speed and frame of the line, such as {example}; got “{first}”.",
                    example=EXAMPLE,
                    first=first[:40],
                )
            )
        said: dict[str, str] = {}
        for part in rest:
            word, _, value = part.partition(" ")
            value = value.strip()
            longest = _ASKED_LONGEST if word == "asked" else _WORD_LONGEST
            if (
                word not in ("stable", "moving", "unit", "decimal", "asked")
                or not value
                or word in said
                or len(value) > longest
                or (word == "decimal" and value != "comma")
            ):
                raise ReadingRefused(
                    say(
                        "Expected after the speed: stable MARK, moving MARK, unit UNIT, decimal "
                        "comma or asked WORD, each once; got “{part}”.",
                        part=part[:40],
                    )
                )
            said[word] = value
        return cls(
            baud=int(frame[1]),
            bits=int(frame[2]),
            parity=frame[3].upper(),
            stop=frame[4],
            stable=said.get("stable", ""),
            moving=said.get("moving", ""),
            unit=said.get("unit", ""),
            comma="decimal" in said,
            asked=said.get("asked", ""),
        )
