"""What a hand-over wrote, took in or met, as plain rows and in words."""

from dataclasses import dataclass
from pathlib import Path

from chargebench.ledger import Chain, TakenOver
from chargebench.words import joined, say


@dataclass(frozen=True, slots=True)
class HandedOut:
    """A chain file that was written, and what is in it."""

    path: Path
    chains: tuple[Chain, ...]

    @property
    def entries(self) -> int:
        """How many entries it holds."""
        return sum(chain.last - chain.first + 1 for chain in self.chains)

    @property
    def words(self) -> str:
        """Which entries of which benches."""
        return chain_words(self.chains)


@dataclass(frozen=True, slots=True)
class MetTwice:
    """Two ids that may name one thing: their serial or certificate numbers are the same."""

    register: str
    one: str
    other: str
    what: str
    number: str


def chain_words(chains: tuple[Chain, ...]) -> str:
    """Which entries of which benches, in words."""
    return joined(
        "; ",
        (
            say(
                "bench {bench}: entries {first} to {last}",
                bench=each.bench,
                first=each.first,
                last=each.last,
            )
            for each in chains
        ),
    )


def taken_words(taken: TakenOver) -> str:
    """What a chain file brought, as a sentence or two."""
    if not taken.taken:
        return say("Nothing new: all {known} entries were here already.", known=taken.known)
    says = say("Taken in of {chain_words}.", chain_words=chain_words(taken.chains))
    if taken.known:
        says += say(" {known} entries were here already.", known=taken.known)
    if taken.conflicts:
        count = len(taken.conflicts)
        says += (
            say(" {count} conflicts: see the flags.", count=count)
            if count > 1
            else " 1 conflict: see the flags."
        )
    return says
