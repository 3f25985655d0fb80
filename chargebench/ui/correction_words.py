"""Corrections in words: what was signed is struck, with who took it back, when and why."""

from collections.abc import Callable
from html import escape

from chargebench.desk import Correction
from chargebench.ledger import Entry
from chargebench.ui.stock_words import kind_words, moment

Named = Callable[[str], str]  # a person by id


def taken_back_words(was: Entry, reversal: Entry, named: Named) -> str:
    """One line of rich text: the original struck, its reversal with the reason."""
    return (
        f"<s>Entry {was.number}, {kind_words(was.kind)} by {escape(named(was.by))}, "
        f"{moment(was.happened_at)}</s> <b>reversed</b> by entry {reversal.number}, "
        f"{escape(named(reversal.by))}, {moment(reversal.happened_at)}: "
        f"{escape(str(reversal.payload['reason']))}"
    )


def correction_words(entry: Entry, correction: Correction, named: Named) -> str:
    """What became of an entry, or what it corrects, as rich text."""
    says: list[str] = []
    if correction.reversed_by is not None:
        says.append(taken_back_words(entry, correction.reversed_by, named))
    else:
        says.append(
            f"Entry {entry.number}, {kind_words(entry.kind)} by {escape(named(entry.by))}, "
            f"{moment(entry.happened_at)}"
        )
    if correction.reverses is not None:
        why = escape(str(entry.payload["reason"]))
        says.append(f"takes entry {correction.reverses.number} back: {why}")
    if correction.replaces is not None:
        says.append(f"replaces entry {correction.replaces.number}")
    if correction.replaced_by is not None:
        says.append(f"replaced by entry {correction.replaced_by.number}")
    return "; ".join(says) + "."


def others(correction: Correction) -> tuple[Entry, ...]:
    """The entries one can go to from here."""
    every = (
        correction.reversed_by,
        correction.reverses,
        correction.replaces,
        correction.replaced_by,
    )
    return tuple(entry for entry in every if entry is not None)
