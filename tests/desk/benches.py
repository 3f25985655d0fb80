"""Two benches of one invented shop: the shop's own, and one begun from its chain file."""

import io
from pathlib import Path

from chargebench.desk import Desk, signable
from chargebench.errors import ChainFileRefused
from tests.desk import shops

NOON = shops.at("2026-11-25", "12:00")


def shop_and_bench(folder: Path, letter: str = "D") -> tuple[Desk, Desk]:
    """The shop with 400 g in C-001, and a further bench that knows all of it."""
    shop = shops.build(folder / "shop.chargebench")
    shops.receive(shop)
    return shop, further(shop, folder, letter)


def further(shop: Desk, folder: Path, letter: str) -> Desk:
    """A further bench begun from the shop as it stands."""
    chain = folder / f"begin-{letter}.chain"
    shop.hand_over(chain, for_bench=letter)
    return Desk.begin(folder / f"bench-{letter}.chargebench", chain)


def pass_on(source: Desk, target: Desk, folder: Path, **which: object) -> Path:
    """One bench hands over, the other takes it in; the file."""
    count = len(list(folder.glob("*.chain")))
    chain = folder / f"{source.reading.bench}-{count}.chain"
    source.hand_over(chain, **which)  # type: ignore[arg-type]
    target.take_over(chain)
    return chain


def try_bytes(desk: Desk, content: bytes) -> str:
    """Offer bytes as a chain file: why they were refused, or nothing where they were taken in.

    What a fuzzer calls. Anything but a refusal is a crash; a refusal must leave all as it was.
    """
    before = desk.reading.heads()
    try:
        desk.ledger.take_over(io.BytesIO(content), "P-01", NOON, name="fuzz", check=signable.check)
    except ChainFileRefused as refusal:
        assert desk.reading.heads() == before
        return str(refusal)
    return ""
