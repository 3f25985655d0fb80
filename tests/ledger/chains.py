"""Benches of one invented shop, what they do, and chain files that were tampered with."""

import hashlib
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any

from chargebench.ledger import (
    SAME,
    Entry,
    Ledger,
    NewEntry,
    TakenOver,
    Transfer,
    begin,
    decision,
    pair_id,
)
from tests.ledger import books
from tests.ledger.books import BY, CYLINDER, FREEZER, NOON, later

Change = Callable[[list[bytes]], None]


def further(shop: Ledger, letter: str) -> Ledger:
    """A further bench begun from the shop as it stands."""
    chain = shop.path.with_name(f"begin-{letter}.chain")
    shop.hand_over(chain, for_bench=letter)
    return begin(shop.path.with_name(f"{letter}.chargebench"), chain, NOON)


def handed(ledger: Ledger, **which: Any) -> Path:
    """A chain file of a bench as it stands."""
    folder = ledger.path.parent
    chain = folder / f"{ledger.bench}-{len(list(folder.glob('*.chain')))}.chain"
    ledger.hand_over(chain, **which)
    return chain


def take(ledger: Ledger, chain: Path) -> TakenOver:
    """Take a file in."""
    return ledger.take_over(chain, BY, NOON, name=chain.name)


def state(ledger: Ledger) -> tuple[object, ...]:
    """All that taking in could change."""
    return (
        ledger.heads(),
        [entry.hash for entry in ledger.entries()],
        ledger.balances(""),
        [ledger.rows(register) for register in ("site", "equipment", "cylinder", "person")],
        ledger.jobs(),
        ledger.reversals(),
    )


def held(ledger: Ledger) -> dict[tuple[str, str], int]:
    """What every place holds, empty ones left out."""
    return {(b.place, b.refrigerant): b.mass_mg for b in ledger.balances("") if b.mass_mg}


def shop(folder: Path) -> Ledger:
    """The shop's own bench with one whole job: entries 1 to 12."""
    made = Ledger.create(folder / "shop.chargebench")
    books.whole_job(made)
    return made


def changed(chain: Path, change: Change) -> Path:
    """A copy whose lines somebody changed."""
    lines = chain.read_bytes().splitlines(keepends=True)
    change(lines)
    copy = chain.with_suffix(".changed")
    copy.write_bytes(b"".join(lines))
    return copy


def rehashed(lines: list[bytes], at: int, edit: Callable[[list[Any]], None]) -> None:
    """Edit an entry and give every later entry of its bench a hash that fits again.

    Written from the published line format alone: what a forger with a SHA-256 tool would do.
    """
    entry = json.loads(lines[at])["entry"]
    bench, head = entry[2], json.loads(lines[0])
    (chain,) = (each for each in head["chains"] if each["bench"] == bench)
    follows = bytes.fromhex(chain["previous_hash"])
    edit(entry)
    for place in range(1, len(lines) - 1):
        line = json.loads(lines[place])
        if line["entry"][2] != bench:
            continue
        if place >= at:
            content = entry if place == at else line["entry"]
            text = json.dumps(content, ensure_ascii=False, separators=(",", ":")).encode()
            digest = hashlib.sha256(follows + text).hexdigest()
            lines[place] = b'{"hash":"%s","entry":%s}\n' % (digest.encode(), text)
            line["hash"] = digest
        follows = bytes.fromhex(line["hash"])
    chain["hash"] = follows.hex()
    lines[0] = json.dumps(head, separators=(",", ":")).encode() + b"\n"


def draw(ledger: Ledger, mass_mg: int, *, source: str = CYLINDER, job: str | None = None) -> Entry:
    """A charge out of a cylinder, however little it holds."""
    line = Transfer(source, FREEZER, "R290", mass_mg, f"{mass_mg} mg")
    new = NewEntry("step-signed", BY, later(90), {"step": "weigh_in"}, (line,), job=job)
    return ledger.post(new, may_overdraw_mg={source: 10**9})


def decide(ledger: Ledger, one: str, other: str, *, same: bool) -> None:
    """A decision on two cylinders."""
    row = decision("cylinder", one, other, same=same, reason="")
    payload = {"register": SAME, "id": pair_id("cylinder", one, other), "after": row}
    ledger.post(NewEntry(SAME, BY, NOON, payload))
