"""Commands that bring benches of one shop together: hand over, begin a further bench."""

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from chargebench.desk import Desk
    from chargebench.ledger import Place


class Command(Protocol):
    """Makes a command of the program, which takes `--shop` as all do."""

    def __call__(
        self, name: str, do: Callable[[argparse.Namespace], int], says: str
    ) -> argparse.ArgumentParser:
        """Its parser, to add arguments to."""


def add(
    command: Command,
    opened: Callable[[argparse.Namespace], "Place"],
    let_sign: Callable[["Desk", str | None], None],
) -> None:
    """Add both commands; `opened` finds the shop file, `let_sign` says who records."""

    def hand_over(arguments: argparse.Namespace) -> int:
        return _hand_over(arguments, opened(arguments), let_sign)

    handing = command("hand-over", hand_over, "write a chain file for another bench of this shop")
    handing.add_argument("--out", type=Path, required=True, metavar="FILE")
    handing.add_argument("--bench", metavar="LETTER", help="only the entries of this bench")
    handing.add_argument(
        "--first", type=int, default=1, metavar="NUMBER", help="from this entry on; with --bench"
    )
    handing.add_argument(
        "--for-bench", default="", metavar="LETTER", help="to begin a further bench of this letter"
    )
    handing.add_argument("--by", metavar="PERSON", help="who names the bench: id or name")
    begin = command("begin-bench", _begin_bench, "make this computer a further bench of a shop")
    begin.add_argument("file", type=Path, metavar="FILE", help="handed over with --for-bench")


def _hand_over(
    arguments: argparse.Namespace, shop: "Place", let_sign: Callable[["Desk", str | None], None]
) -> int:
    from chargebench.desk import Desk

    # The letter of a new bench is recorded; a plain hand-over only reads.
    with (Desk.open if arguments.for_bench else Desk.open_reading)(shop) as desk:
        if arguments.for_bench:
            let_sign(desk, arguments.by)
        handed = desk.hand_over(
            arguments.out,
            only=arguments.bench,
            first=arguments.first,
            for_bench=arguments.for_bench,
        )
    print(f"In {handed.path}: {handed.words}.")
    if arguments.for_bench:
        print(f"On the other computer: chargebench begin-bench {handed.path.name}")
    return 0


def _begin_bench(arguments: argparse.Namespace) -> int:
    from chargebench.desk import Desk, where

    path: Path = arguments.shop or where.shop_file()
    with Desk.begin(path, arguments.file) as desk:
        print(f"{path} is bench {desk.reading.bench} of {desk.shop.get('name', 'the shop')}.")
    return 0
