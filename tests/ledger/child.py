"""A bench in a process of its own: posts and keeps typed text, says so line by line, until killed.

Usage: python -m tests.ledger.child FILE NAME COUNT
"""

import sys
from pathlib import Path

from chargebench.ledger import Ledger, NewEntry, Transfer
from tests.ledger.books import BY, CYLINDER, NOON


def say(*words: object) -> None:
    """One line to whoever watches, at once."""
    sys.stdout.write(" ".join(map(str, words)) + "\n")
    sys.stdout.flush()


def work(file: Path, name: str, count: int) -> None:
    """Take a milligram at a time; announce, post, acknowledge; then the same with typed text."""
    with Ledger.open(file, backups=2) as ledger:
        say("open")
        for turn in range(1, count + 1):
            post = f"{name}-{turn}"
            line = Transfer(CYLINDER, f"equipment:{name}", "R290", 1, "1 mg")
            say("try", post)
            ledger.post(NewEntry("step-signed", BY, NOON, {"turn": turn}, (line,), id=post))
            say("posted", post)
            ledger.keep_typed("job", "weigh-in", {"name": name, "turn": str(turn)})
            say("typed", turn)
    say("done")


if __name__ == "__main__":
    work(Path(sys.argv[1]), sys.argv[2], int(sys.argv[3]))
