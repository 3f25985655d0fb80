"""What the keys do: all of them in the guide (F1), those of the page shown at the foot."""

from chargebench.words import joined

_BENCH = ("Ctrl+N new job", "Ctrl+F find", "Enter open", "F7 reference")
_JOB = (
    "Ctrl+Return sign",
    "Ctrl+↑ ↓ steps",
    "F8 flags",
    "F2 take reading",
    "Shift+F8 cautions",
    "Alt+← jobs",
    "Ctrl+P print",
    "F6 steps or form",
    "F9 worked out",
    "Ctrl+Shift+N not needed",
    "Ctrl+Shift+Return close job",
    "Ctrl+R reverse",
    "Ctrl+Z undo",
    "Ctrl+T now",
    "Ctrl+Shift+Delete take a line away",
    "F11 bench display",
    "Ctrl+Shift+P photos",
)
_STOCK = (
    "Ctrl+F find",
    "Enter open",
    "Ctrl+Return record",
    "Ctrl+R reverse",
    "Ctrl+P label",
    "Esc back",
    "F7 reference",
)
_RECORDS = ("Enter open", "Ctrl+R reverse", "Ctrl+P print", "Esc close a panel")
_EVERYWHERE = (
    "Alt+1 2 3 areas",
    "Ctrl+L lock or unlock",
    "F4 who signs",
    "Ctrl+Shift+L passphrase",
    "Ctrl+, shop and rules",
    "Ctrl+Plus, Ctrl+Minus text size",
)
OF_PAGE = {"bench": _BENCH, "job": _JOB, "stock": _STOCK, "records": _RECORDS}

ALL = joined(
    " · ",
    dict.fromkeys(("F1 guide and keys", *_EVERYWHERE, *(k for p in OF_PAGE.values() for k in p))),
)


def at_foot(page: str) -> tuple[str, ...]:
    """Keys of a page as one line, and the same with ever fewer, for where there is less room."""
    parts = ("F1 guide", *OF_PAGE[page], *_EVERYWHERE)
    return tuple(joined(" · ", parts[:many]) for many in range(len(parts), 0, -1))
