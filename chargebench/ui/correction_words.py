"""Corrections in words: what was signed is struck, with who took it back, when and why."""

from collections.abc import Callable
from html import escape

from chargebench.desk import Correction
from chargebench.ledger import Entry
from chargebench.ui.stock_words import kind_words, moment
from chargebench.words import joined, say

Named = Callable[[str], str]  # a person by id


def taken_back_words(was: Entry, reversal: Entry, named: Named) -> str:
    """One line of rich text: the original struck, its reversal with the reason."""
    return say(
        "<s>Entry {was_number}, {kind_words} by {named}, {happened_at}</s> "
        "<b>reversed</b> by entry {reversal_number}, {named_2}, {happened_at_2}: "
        "{reason}",
        was_number=was.number,
        kind_words=kind_words(was.kind),
        named=escape(named(was.by)),
        happened_at=moment(was.happened_at),
        reversal_number=reversal.number,
        named_2=escape(named(reversal.by)),
        happened_at_2=moment(reversal.happened_at),
        reason=escape(str(reversal.payload["reason"])),
    )


def correction_words(entry: Entry, correction: Correction, named: Named) -> str:
    """What became of an entry, or what it corrects, as rich text."""
    says: list[str] = []
    if correction.reversed_by is not None:
        says.append(taken_back_words(entry, correction.reversed_by, named))
    else:
        says.append(
            say(
                "Entry {entry_number}, {kind_words} by {named}, {happened_at}",
                entry_number=entry.number,
                kind_words=kind_words(entry.kind),
                named=escape(named(entry.by)),
                happened_at=moment(entry.happened_at),
            )
        )
    if correction.reverses is not None:
        why = escape(str(entry.payload["reason"]))
        says.append(
            say(
                "takes entry {reverses_number} back: {why}",
                reverses_number=correction.reverses.number,
                why=why,
            )
        )
    if correction.replaces is not None:
        says.append(
            say("replaces entry {replaces_number}", replaces_number=correction.replaces.number)
        )
    if correction.replaced_by is not None:
        says.append(
            say(
                "replaced by entry {replaced_by_number}",
                replaced_by_number=correction.replaced_by.number,
            )
        )
    return joined("; ", says) + "."


def others(correction: Correction) -> tuple[Entry, ...]:
    """The entries one can go to from here."""
    every = (
        correction.reversed_by,
        correction.reverses,
        correction.replaces,
        correction.replaced_by,
    )
    return tuple(entry for entry in every if entry is not None)
