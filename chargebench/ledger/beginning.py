"""A further bench of a shop: a file of its own, begun from a chain file handed over for it."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from chargebench.errors import ChainFileRefused, ShopFileRefused
from chargebench.ledger import backup, chainfile, sqlite
from chargebench.ledger.book import Ledger
from chargebench.ledger.entry import NewEntry
from chargebench.ledger.place import Place, place_of
from chargebench.words import say


def begin(
    path: Place | str,
    source: Path,
    happened_at: datetime,
    check: Callable[[NewEntry], None] = lambda _: None,
    progress: Callable[[int, int], None] | None = None,
) -> Ledger:
    """Make the file of a further bench and open it: same shop, same registers, its own letter.

    Raises
    ------
    ChainFileRefused
        The file was not handed over to begin a bench, or can not be taken in.
    ShopFileRefused
        There is a file already, or none can be written there.
    """
    path = place_of(path)
    if not isinstance(path, Path):
        raise ShopFileRefused(
            "A further bench is begun as a file. A bench that works on the server itself is let "
            "in by the shop's owner with: chargebench join-shop."
        )
    with chainfile.opened(source) as file:
        head = file.head
    if not head.for_bench:
        raise ChainFileRefused(
            say(
                "{source} was not made to begin a bench. At the shop, hand over for a "
                "new bench: that gives it a letter of its own.",
                source=source.name,
            )
        )
    if path.exists():
        raise ShopFileRefused(
            say("{path} is there already. Open it, or choose another name.", path=path)
        )
    half = path.with_name(path.name + ".begun")
    backup.remove(half)
    try:
        with Ledger.create(half, head.for_bench) as ledger:
            ledger.belong_to(head.shop, head.bench)
            ledger.take_over(
                source, "", happened_at, name=source.name, check=check, progress=progress
            )
        sqlite.alone(half)  # folds what waits beside it into the one file
        backup.settle(half)
        half.replace(path)
        backup.settle_folder(path.parent)
    finally:
        backup.remove(half)
    return Ledger.open(path, backups=0)
