"""Which port an instrument hangs on at this bench: kept on this computer, not in the records.

How an instrument speaks is the instrument's and stands in its register row; where it is plugged
in is the bench's.
"""

from dataclasses import dataclass

from chargebench.ui.kept import kept


@dataclass(frozen=True, slots=True)
class Plugged:
    """A port and the adapter behind it."""

    port: str
    identity: str = ""


def plugged(instrument: str) -> Plugged | None:
    """Where an instrument is plugged in; None where this bench does not know."""
    bench = kept()
    port = str(bench.value(f"ports/{instrument}/port", ""))
    return Plugged(port, str(bench.value(f"ports/{instrument}/identity", ""))) if port else None


def plug(instrument: str, where: Plugged | None) -> None:
    """Remember where an instrument is plugged in; None forgets it."""
    bench = kept()
    bench.remove(f"ports/{instrument}")
    if where is not None:
        bench.setValue(f"ports/{instrument}/port", where.port)
        bench.setValue(f"ports/{instrument}/identity", where.identity)
    bench.sync()
