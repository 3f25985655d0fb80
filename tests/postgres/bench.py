"""A bench in a process of its own: waits for the word, takes from a cylinder, names its entries.

Usage: python -m tests.postgres.bench ADDRESS CYLINDER MASS_MG COUNT
"""

import sys

from chargebench.errors import Overdrawn
from chargebench.ledger import Ledger, NewEntry, Transfer
from tests.ledger.books import BY, NOON


def work(address: str, cylinder: str, mass_mg: int, count: int) -> None:
    """Take so often so much, and say the id of each entry that was recorded."""
    with Ledger.open(address) as ledger:
        print("open", flush=True)  # noqa: T201  the watcher reads it
        sys.stdin.readline()
        line = Transfer(cylinder, "equipment:E-203", "R290", mass_mg, f"{mass_mg} mg")
        for turn in range(count):
            try:
                entry = ledger.post(NewEntry("step-signed", BY, NOON, {"turn": turn}, (line,)))
            except Overdrawn:
                continue
            print(entry.id)  # noqa: T201


if __name__ == "__main__":
    work(sys.argv[1], sys.argv[2], int(sys.argv[3]), int(sys.argv[4]))
