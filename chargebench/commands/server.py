"""Commands for the owner of a shop on a PostgreSQL server: make it, let logins in, upgrade it."""

import argparse
import os
import sys
from getpass import getpass
from pathlib import Path
from typing import TYPE_CHECKING

from chargebench.commands.benches import Command
from chargebench.errors import ChargebenchError

if TYPE_CHECKING:
    from chargebench.ledger import Address

PASSWORD = "CHARGEBENCH_PASSWORD"  # noqa: S105  the name of a variable


def add(command: Command) -> None:
    """Add the three commands."""
    make = command("make-shop", _make, "make a shop in a database of a PostgreSQL server")
    make.add_argument("--name", required=True, help="the shop's name")
    make.add_argument(
        "--person", required=True, metavar="NAME", help="its first person, of the shop"
    )
    make.add_argument("--units", choices=("SI", "IP"), default="SI")
    make.add_argument("--rule-set", default="generic", metavar="NAME")
    make.add_argument("--bench", default="B", metavar="LETTER", help="as which this login records")
    join = command("join-shop", _join, "let a login into a shop on a server")
    join.add_argument("--login", required=True, help="made if it is not there; asks its password")
    whom = join.add_mutually_exclusive_group(required=True)
    whom.add_argument("--bench", metavar="LETTER", help="as which it records")
    whom.add_argument("--officer", action="store_true", help="it only reads")
    command("upgrade-shop", _upgrade, "bring a shop on a server up to this program, for all")


def _address(arguments: argparse.Namespace) -> "Address":
    if arguments.shop is None or isinstance(arguments.shop, Path):
        raise ChargebenchError(
            "Expected the address of the shop's owner: --shop postgresql://owner@server/database."
        )
    address: Address = arguments.shop
    return address


def _make(arguments: argparse.Namespace) -> int:
    from chargebench.desk import Desk

    address = _address(arguments)
    shop = {"name": arguments.name, "units": arguments.units, "rule_set": arguments.rule_set}
    person = {"name": arguments.person, "role": "shop"}
    with Desk.create(address, shop, person, bench=arguments.bench) as desk:
        print(
            f"{arguments.name} is in {address}; this login owns it, as bench {desk.reading.bench}."
        )
    print("Let in who else records with: chargebench join-shop --login NAME --bench LETTER")
    return 0


def _join(arguments: argparse.Namespace) -> int:
    from chargebench.ledger import server

    address = _address(arguments)
    bench = None if arguments.officer else arguments.bench
    made = server.join(address, arguments.login, bench, lambda: _password(arguments.login))
    does = "only reads" if bench is None else f"records as bench {bench}"
    print(f"{arguments.login}{', a new login,' if made else ''} {does} in {address}.")
    print(f"There: chargebench --shop {address.of_login(arguments.login)}")
    return 0


def _password(login: str) -> str:
    """The password a new login is to have: of the surroundings, or asked twice."""
    if PASSWORD in os.environ:
        return os.environ[PASSWORD]
    if not sys.stdin.isatty():
        raise ChargebenchError(
            f"There is no login {login} on this server yet. Set {PASSWORD} to the password it is "
            "to have, or run this where it can be asked."
        )
    first, again = getpass(f"New password of {login}: "), getpass("Once more: ")
    if first != again:
        raise ChargebenchError("The two passwords differ. Nothing was done.")
    return first


def _upgrade(arguments: argparse.Namespace) -> int:
    from chargebench.ledger import server

    address = _address(arguments)
    print(f"{address} {'is up to date now' if server.upgrade(address) else 'was up to date'}.")
    return 0
