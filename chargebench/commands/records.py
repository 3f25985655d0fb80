"""Commands of whoever answers for the records: export, verify, list the clauses."""

import argparse
import re
import sys
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from chargebench.commands.benches import Command
from chargebench.errors import ChargebenchError

if TYPE_CHECKING:
    from chargebench.ledger import Checkpoint, Place

Opened = Callable[[argparse.Namespace], "Place"]


def add(command: Command, opened: Opened) -> None:
    """Add the commands; `opened` finds the shop file."""
    export = command(
        "export",
        lambda arguments: _export(arguments, opened(arguments)),
        "write workbook, open tables, checklist, reports and manifest; says nothing to a schedule "
        "when all went well, and goes on where it was broken off",
    )
    export.add_argument("--from", dest="since", type=_day, default=None, metavar="DAY")
    export.add_argument("--to", dest="until", type=_day, default=None, metavar="DAY")
    for what in ("equipment", "refrigerant", "person"):
        says = f"only what concerns this {what}; the summary sheet says so"
        export.add_argument(f"--{what}", default=None, help=says)
    export.add_argument("--out", type=Path, required=True, metavar="DIR")
    export.add_argument("--sign", action="store_true", help="add this bench's signature")
    command("clauses", _clauses, "list each field regulations ask for, and where it stands")
    verify = command(
        "verify",
        lambda arguments: (
            _verify_folder(arguments) if arguments.folder else _verify(arguments, opened(arguments))
        ),
        "recompute the whole ledger, or check a folder that was exported, and say what was checked",
    )
    verify.add_argument(
        "folder", type=Path, nargs="?", help="of an export; no shop file is needed for it"
    )
    verify.add_argument(
        "--key", type=Path, metavar="FILE", help="public key had from the shop, for a signed export"
    )
    verify.add_argument(
        "--head",
        dest="heads",
        action="append",
        default=[],
        metavar="NUMBER:HASH",
        help="chain_head in the manifest of an export: it must still stand; may be given again",
    )


def _export(arguments: argparse.Namespace, shop: "Place") -> int:
    from chargebench.desk import Desk, Filters

    def progress(what: str, done: int, of: int) -> None:
        if sys.stderr.isatty():
            print(f"\r\033[K{what}: {done} of {of}", end="", file=sys.stderr)

    with Desk.open(shop) as desk:
        filters = Filters(
            equipment=arguments.equipment, refrigerant=arguments.refrigerant, by=arguments.person
        )
        exported = desk.export(
            arguments.out,
            arguments.since,
            arguments.until,
            filters,
            progress,
            signed=arguments.sign,
        )
    if sys.stderr.isatty():
        print(file=sys.stderr)
    if sys.stdout.isatty():  # a schedule mails whatever is said
        print(f"{len(exported.files)} files are in {exported.folder}.")
    return 0


def _clauses(_arguments: argparse.Namespace) -> int:
    from chargebench.reports.clauses import clauses

    for each in clauses():
        told = (each.clause, each.field, each.form, each.sheet, each.column, each.note)
        print("\t".join(told))
    return 0


def _verify(arguments: argparse.Namespace, shop: "Place") -> int:
    from chargebench.desk import Desk

    with Desk.open_reading(shop) as desk:
        bench = desk.reading.bench if desk.reading.records else ""
        heads = [_head(text, bench) for text in arguments.heads]
        found = desk.verify(heads=heads)
    for sentence in found.checked:
        print(sentence)
    for problem in found.problems:
        where = "" if problem.entry is None else f"entry {problem.entry}: "
        print(f"PROBLEM {where}{problem.what}", file=sys.stderr)
    for sentence in found.limits:
        print(sentence)
    return 0 if found.ok else 1


def _verify_folder(arguments: argparse.Namespace) -> int:
    from chargebench.reports import signature
    from chargebench.reports.manifest import check_manifest

    folder: Path = arguments.folder
    problems = check_manifest(folder)
    signed = signature.check(folder, arguments.key)
    if not problems:
        print(f"Every file the manifest of {folder} lists is there as it was written.")
    for problem in problems:
        print(f"PROBLEM {problem}", file=sys.stderr)
    if signed is None:
        print("The export is not signed: whoever can write the folder could make it anew.")
    elif signed.good:
        print(signed.says)
    else:
        print(f"PROBLEM {signed.says}", file=sys.stderr)
    return 0 if not problems and (signed is None or signed.good) else 1


def _head(text: str, bench: str) -> "Checkpoint":
    """A head as printed on an export: the number of an entry and its hash, `BENCH:` before them."""
    from chargebench.ledger import Checkpoint

    *named, number, digest = text.strip().split(":")
    if len(named) > 1 or not number.isdigit() or not re.fullmatch("[0-9a-f]{64}", digest.lower()):
        raise ChargebenchError(
            f"Expected a head as in the manifest of an export, the number of its entry, a colon "
            f"and its SHA-256 of 64 digits, such as 12:9f86d0…; got “{text}”."
        )
    return Checkpoint(named[0] if named else bench, int(number), digest.lower(), "given by --head")


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(
            f"expected a day as year-month-day, such as 2026-11-25; got “{text}”"
        ) from None
