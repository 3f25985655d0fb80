"""A stock-take: many cylinders weighed in one go, each against the ledger.

A line is a weighing as typed: a cylinder's id by hand or scanner, its gross weight, and where the
ledger is wrong whether the difference is booked and why.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum

from chargebench.steps import stock
from chargebench.steps.form import TypedLine, answer
from chargebench.steps.forms.stock import WEIGH
from chargebench.steps.stock import Shelf, Weighing
from chargebench.units import System, from_mg, shown
from chargebench.words import joined, say

KIND = "stock-take"


class Word(StrEnum):
    """How a cylinder stands in a stock-take."""

    AGREES = "agrees"
    DIFFERS = "differs"
    OTHER = "other refrigerant"
    STRANGE = "not in the register"
    UNREAD = "reading wanted"
    OPEN = "not counted yet"


@dataclass(frozen=True, slots=True)
class Counted:
    """One cylinder of a stock-take."""

    cylinder: str
    word: Word
    refrigerant: str = ""
    gross: str = ""
    weighing: Weighing | None = None
    accept: bool | None = None  # whether its difference is booked; None while nobody has said
    reason: str = ""
    says: str = ""  # what is still wanted, or wrong

    @property
    def settled(self) -> bool:
        """Whether it can be signed as it is."""
        return not self.says


@dataclass(frozen=True, slots=True)
class StockTake:
    """A stock-take as far as it is typed: what was counted, and what was not."""

    lines: tuple[Counted, ...]
    open: tuple[Counted, ...]
    refusals: Mapping[str, str] = field(default_factory=dict)  # of what stands above the list

    def of(self, *words: Word) -> tuple[Counted, ...]:
        """Cylinders that stand so."""
        return tuple(line for line in (*self.lines, *self.open) if line.word in words)

    @property
    def recorded(self) -> tuple[Counted, ...]:
        """Those that become an entry of their own."""
        return tuple(line for line in self.lines if line.word in (Word.AGREES, Word.DIFFERS))

    @property
    def sentence(self) -> str:
        """How it stands, in one line."""
        parts = [
            say("{count} {word}", count=len(found), word=word)
            for word in Word
            if (found := self.of(word))
        ]
        return joined(", ", parts) or "no cylinders"


def named(text: str) -> tuple[str, str]:
    """Id and, where the label says another content than the register, its refrigerant."""
    cylinder, _, rest = text.strip().partition(" ")
    return cylinder, rest.strip()


def weigh_typed(line: TypedLine, scale: str) -> dict[str, str]:
    """A line as what is typed in the form of a single weighing."""
    keys = ("gross", "accept", "reason")
    typed = {key: line.get(key, "") for key in keys}
    return {"cylinder": named(line.get("cylinder", ""))[0], "scale": scale, **typed}


def latest(lines: Iterable[TypedLine]) -> list[TypedLine]:
    """One line a cylinder: one weighed again counts as weighed last."""
    found: dict[str, TypedLine] = {}
    for line in lines:
        key = named(line.get("cylinder", ""))[0]
        if key:
            found.pop(key, None)
            found[key] = line
    return list(found.values())


def count(scale: str, lines: Sequence[TypedLine], shelf: Shelf) -> StockTake:
    """Look through a stock-take; records nothing."""
    refusals = {}
    if scale not in shelf.instruments:
        refusals["scale"] = "Expected a scale of the register; choose the one that is used."
    counted = tuple(_counted(line, scale, shelf) for line in latest(lines))
    met = {line.cylinder for line in counted}
    left = tuple(
        Counted(cylinder, Word.OPEN, row.text("refrigerant"))
        for cylinder, row in sorted(shelf.cylinders.items())
        if cylinder not in met
    )
    return StockTake(counted, left, refusals)


def _counted(line: TypedLine, scale: str, shelf: Shelf) -> Counted:
    cylinder, on_label = named(line.get("cylinder", ""))
    gross = line.get("gross", "").strip()
    if cylinder not in shelf.cylinders:
        return Counted(cylinder, Word.STRANGE, on_label, gross)
    answers = answer(WEIGH, weigh_typed(line, scale))
    kind = shelf.cylinder(cylinder).text("refrigerant")
    if other := _other(cylinder, kind, on_label, shelf):
        return Counted(cylinder, Word.OTHER, other, gross)
    says = answers.refusals.get("gross", "")
    weighing = stock.weighing(answers, shelf)
    if not says and gross and scale in shelf.instruments:
        says = joined(" ", stock.refusals("weigh", answers, shelf).values())
    if weighing is None:
        return Counted(cylinder, Word.UNREAD, kind, gross, says=says or "Expected its weight.")
    word = Word.DIFFERS if weighing.beyond else Word.AGREES
    accept, reason = answers.yes("accept"), answers.text("reason")
    if not says and weighing.beyond and accept is None:
        says = "Book the difference with a reason, or leave it to be found out."
    return Counted(cylinder, word, kind, gross, weighing, accept, reason, says)


def _other(cylinder: str, registered: str, on_label: str, shelf: Shelf) -> str:
    """What a cylinder holds by its label or by the ledger that it is not registered for."""
    if shelf.cylinder(cylinder).text("contents") == "mixed waste":
        return ""
    if on_label and on_label.casefold() != registered.casefold():
        return on_label
    held = [name for name, mass in shelf.contents_mg.get(cylinder, {}).items() if mass > 0]
    return ", ".join(name for name in held if name != registered)


def said(found: StockTake, units: System) -> list[str]:
    """What the summarising entry says, a sentence each."""
    sentences = [say("Stock-take: {sentence}.", sentence=found.sentence)]
    for word in (Word.OTHER, Word.STRANGE, Word.OPEN):
        if named_so := found.of(word):
            ids = ", ".join(line.cylinder for line in named_so)
            sentences.append(say("{word}: {ids}.", word=word.capitalize(), ids=ids))
    sentences += [
        say(
            "{cylinder}: {difference} {more} than the ledger says, {booked}.",
            cylinder=line.cylinder,
            difference=shown(from_mg(abs(line.weighing.difference_mg)), units),
            more="more" if line.weighing.difference_mg > 0 else "less",
            booked=say("booked: {reason}", reason=line.reason) if line.accept else "not booked",
        )
        for line in found.of(Word.DIFFERS)
        if line.weighing is not None
    ]
    return sentences
