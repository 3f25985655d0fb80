"""A person at a terminal instead of a window: who records, and the passphrase that takes."""

import sys
from getpass import getpass
from typing import TYPE_CHECKING

from chargebench.errors import PassphraseRefused

if TYPE_CHECKING:
    from chargebench.desk import Desk


def let_sign(desk: "Desk", by: str | None) -> None:
    """Record as the person named; a passphrase is asked on the terminal, if there is one.

    Raises
    ------
    ChargebenchError
        Nobody of that id or name.
    """
    if by:
        desk.choose(desk.person_called(by))
    desk.asks = lambda: _ask(desk)


def _ask(desk: "Desk") -> None:
    if not desk.has_passphrase or not sys.stdin.isatty():
        return
    name = desk.label("person", desk.person)
    while desk.locked:
        try:
            desk.unlock(getpass(f"PIN or passphrase of {name}: "))
        except PassphraseRefused as refusal:
            print(refusal, file=sys.stderr)
            if refusal.wait_seconds:
                return
        except EOFError:
            return
