"""The shop a command is about: the one named with `--shop`, or else this person's own."""

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from chargebench.errors import ChargebenchError

if TYPE_CHECKING:
    from chargebench.ledger import Place

SAYS = "shop file, or postgresql://login@server/database"


def place(text: str) -> "Place":
    """A shop as it is named: a path, or the address of one on a server."""
    if "://" not in text:
        return Path(text)
    from chargebench.ledger import place_of  # not before the window stands, where a file will do

    try:
        return place_of(text)
    except ChargebenchError as refusal:
        raise argparse.ArgumentTypeError(str(refusal)) from None


def file(arguments: argparse.Namespace) -> Path:
    """The shop file, for what is done to files."""
    from chargebench.desk import where

    shop: Place = arguments.shop or where.shop_file()
    if isinstance(shop, Path):
        return shop
    raise ChargebenchError(
        f"{shop} is kept on a server, and this is done to a file. Whoever looks after the server "
        "restores its own backup."
    )


def opened(arguments: argparse.Namespace) -> "Place":
    """The shop to be opened; a file that is not there is refused."""
    from chargebench.desk import where

    path: Place = arguments.shop or where.shop_file()
    if isinstance(path, Path) and not path.exists():
        raise ChargebenchError(
            f"Expected a shop file; there is none at {path}. Name one with --shop, or make one in "
            "the window."
        )
    return path
