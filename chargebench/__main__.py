"""Command line and start of the desktop: the only file that knows everything."""

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import chargebench
from chargebench.commands import benches, named, records, server
from chargebench.commands.terminal import let_sign
from chargebench.errors import ChargebenchError

if TYPE_CHECKING:
    from chargebench.desk import Desk
    from chargebench.ledger import Place


def has_display() -> bool:
    """Whether a window can be shown; on Linux that takes X or Wayland."""
    if sys.platform != "linux":
        return True
    if os.environ.get("QT_QPA_PLATFORM") == "offscreen":
        return False
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def _window(arguments: argparse.Namespace) -> int:
    from chargebench.ui.app import run

    shop: Place | None = arguments.shop
    if isinstance(shop, Path) and not shop.exists():
        raise ChargebenchError(f"Expected a shop file; there is none at {shop}.")
    return run(shop)


def _sample(arguments: argparse.Namespace) -> int:
    if arguments.shop:
        named.file(arguments)
    if arguments.headless or not has_display():
        if not arguments.headless:
            print("There is no display here, so no window: doing the same job without one.")
        return _sample_headless(arguments)
    from chargebench.ui.app import run

    return run(lambda: _sample_shop(arguments.shop))


def _sample_shop(path: Path | None) -> "Desk":
    """The sample shop; imported here, for the window shows its shell before it opens a shop."""
    from chargebench.desk import sample, where

    return sample.open_or_build(path or where.sample_file())


def _sample_headless(arguments: argparse.Namespace) -> int:
    from chargebench.desk import sample

    out: Path = arguments.out or Path.cwd() / "chargebench-export"
    out.mkdir(parents=True, exist_ok=True)
    shop = arguments.shop or out / "sample.chargebench"
    if not arguments.shop:
        sample.remove(shop)
    with sample.open_or_build(shop) as desk:
        exported = desk.export(out)
        for line in desk.jobs():
            worst = f"; {line.worst.level}: {line.worst.says}" if line.worst else ""
            print(
                f"{line.number} {line.title}, {line.refrigerant} {line.charge}, {line.now}{worst}"
            )
        checked = desk.verify()
    print(f"Verified: {'all agrees' if checked.ok else 'there are problems'}.")
    print(f"In {exported.folder}:")
    for path in exported.files:
        print(f"  {path.relative_to(exported.folder)}")
    return 0 if checked.ok else 1


def _take_in(arguments: argparse.Namespace) -> int:
    from chargebench.desk import Desk

    with Desk.open(named.opened(arguments)) as desk:
        let_sign(desk, arguments.by)
        for path, said in desk.take_in_files(arguments.files):
            print(f"{path.name}: {said}")
    return 0


def _backup(arguments: argparse.Namespace) -> int:
    from chargebench.desk import Desk
    from chargebench.ledger import backups

    with Desk.open(named.opened(arguments)) as desk:
        copy = desk.backup() or backups(desk.path)[0]  # opening has kept one if anything changed
    print(f"Everything recorded is in the backup {copy}.")
    return 0


def _restore(arguments: argparse.Namespace) -> int:
    from chargebench.ledger import going_back, kept, restore

    shop = named.file(arguments)
    if arguments.copy is None:
        if not (copies := kept(shop)):
            raise ChargebenchError(f"There is no backup of {shop} beside it. Check the path.")
        for copy in copies:
            made_at = copy.made_at.astimezone().isoformat(" ", "seconds")
            print(f"{copy.path}: {made_at}, {copy.entries} entries, {copy.size} bytes")
        return 0
    leaves = going_back(shop, arguments.copy).sentence
    aside = restore(shop, arguments.copy)
    print(f"{shop} is as it was in {arguments.copy}. {leaves}")
    if aside is not None:
        print(f"What was there before is kept as {aside}.")
    return 0


def _rescue(arguments: argparse.Namespace) -> int:
    from chargebench.ledger import rescue

    rescued = rescue(named.file(arguments), arguments.out, datetime.now(UTC))
    for sentence in rescued.sentences:
        print(sentence, file=sys.stderr if sentence in rescued.missing else sys.stdout)
    return 0 if rescued.whole else 1


def _practise(what: str, _arguments: argparse.Namespace) -> int:
    from chargebench.instruments import practising

    practising.run(what, lambda said: print(said, flush=True))
    return 0


def _parser() -> argparse.ArgumentParser:
    shop = argparse.ArgumentParser(add_help=False)
    shop.add_argument("--shop", type=named.place, default=None, help=named.SAYS)
    parser = argparse.ArgumentParser(
        prog="chargebench", description=chargebench.__doc__, parents=[shop]
    )
    parser.add_argument("--version", action="version", version=chargebench.__version__)
    parser.set_defaults(do=_window)
    commands = parser.add_subparsers(title="commands", metavar="")

    def command(
        name: str, do: Callable[[argparse.Namespace], int], says: str
    ) -> argparse.ArgumentParser:
        # A --shop before the command stands unless one after it says otherwise.
        again = argparse.ArgumentParser(add_help=False)
        again.add_argument("--shop", type=named.place, default=argparse.SUPPRESS, help=named.SAYS)
        made = commands.add_parser(name, help=says, description=says, parents=[again])
        made.set_defaults(do=do)
        return made

    sample = command("sample", _sample, "open the sample shop, an invented business")
    sample.add_argument("--headless", action="store_true", help="export it without a window")
    sample.add_argument("--out", type=Path, default=None, help="folder of a headless export")
    take_in = command("take-in", _take_in, "take in job files and chain files of other benches")
    take_in.add_argument(
        "--by", metavar="PERSON", help="who records them: id or name in the register of people"
    )
    take_in.add_argument("files", type=Path, nargs="+", metavar="FILE")
    benches.add(command, named.opened, let_sign)
    records.add(command, named.opened)
    server.add(command)
    for what in ("scale", "gauge"):
        says = f"open a {what} to practise on, and name its port"
        command(f"practice-{what}", partial(_practise, what), says)
    command("backup", _backup, "keep a copy of the shop file beside it")
    restore = command("restore", _restore, "go back to a backup; the present file is kept aside")
    restore.add_argument(
        "copy", type=Path, metavar="BACKUP", nargs="?", help="without it the backups are listed"
    )
    rescue = command(
        "rescue",
        _rescue,
        "read what can be read of a damaged shop file and its backups into a new file; "
        "ends with 0 only where no entry is missing",
    )
    rescue.add_argument("--out", type=Path, required=True, metavar="NEW")
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Run a command; 0 only when it did what was asked."""
    parsed = _parser().parse_args(arguments)
    try:
        result: int = parsed.do(parsed)
    except ChargebenchError as refusal:
        print(f"chargebench: {refusal}", file=sys.stderr)
        return 1
    return result


if __name__ == "__main__":
    sys.exit(main())
