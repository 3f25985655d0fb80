"""What a bench does in a process of its own while the disk fails: says each entry it was told of.

Usage: python -m tests.faults.scenario FOLDER [early]   (`early`: acknowledges before recording)
"""

import sys
from contextlib import suppress
from pathlib import Path

from chargebench.errors import ChargebenchError
from chargebench.ledger import Ledger, NewEntry, Transfer, backups, new_id, rescue, restore
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, NOON

ROUNDS = 4


def _post(ledger: Ledger, *, early: bool) -> None:
    line = Transfer(CYLINDER, "equipment:E-203", "R290", 1, "1 mg")
    new = NewEntry("step-signed", BY, NOON, {}, (line,), id=new_id())
    if early:
        print(new.id, flush=True)
    entry = ledger.post(new)
    if not early:
        print(entry.id, flush=True)


def work(folder: Path, *, early: bool) -> None:
    """Post, keep typed text, back up, hand over, restore and rescue; go on after each refusal."""
    shop = folder / "shop.chargebench"
    for turn in range(ROUNDS):
        with suppress(ChargebenchError), Ledger.open(shop) as ledger:
            _post(ledger, early=early)
            ledger.keep_typed("job", "weigh-in", {"turn": str(turn)})
            with suppress(ChargebenchError):
                ledger.backup_to(folder / f"copy-{turn}.chargebench")
            with suppress(ChargebenchError):
                ledger.hand_over(folder / f"{turn}.chargebench.chain")
            _post(ledger, early=early)
    with suppress(ChargebenchError):
        Ledger.open(shop).close()
        restore(shop, backups(shop)[0])
    with suppress(ChargebenchError):
        rescue(shop, folder / "rescued.chargebench", books.NOON)


if __name__ == "__main__":
    work(Path(sys.argv[1]), early=sys.argv[2:] == ["early"])
