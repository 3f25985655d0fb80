"""The lines of a chain file: its head, an entry as it was signed, its end."""

import msgspec


class Chain(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """Which entries of a bench are in a file, the hash they follow, and that of the last."""

    bench: str
    first: int
    last: int
    previous_hash: str
    hash: str


class Head(msgspec.Struct, frozen=True, forbid_unknown_fields=True, omit_defaults=True):
    """The first line: whose entries these are."""

    chargebench_chain: int
    shop: str
    bench: str  # that wrote the file
    made_at: str
    chains: tuple[Chain, ...]
    for_bench: str = ""  # the letter of the further bench this file is to begin

    @property
    def entries(self) -> int:
        """How many entries the file holds."""
        return sum(chain.last - chain.first + 1 for chain in self.chains)


class EntryLine(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A hash and the bytes it is of."""

    hash: str
    entry: msgspec.Raw


class End(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """The last line: a file without it was cut short."""

    end: int  # how many entries there were
