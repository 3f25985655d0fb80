"""Rule files read, extended one by another, and checked."""

import functools
import tomllib
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any

from chargebench.errors import RuleSetRefused
from chargebench.resource import resource
from chargebench.rules.checking import build
from chargebench.rules.consistency import check
from chargebench.rules.model import RuleSet
from chargebench.rules.place import Place, Text
from chargebench.words import joined, say

_IDENTITY = ("name", "title", "jurisdiction", "edition", "effective")


def _folder() -> Path:
    return resource("rules")


def names() -> tuple[str, ...]:
    """Names of the shipped rule sets."""
    return tuple(sorted(path.stem for path in _folder().glob("*.toml")))


@functools.cache
def load(name: str) -> RuleSet:
    """A shipped rule set by name.

    Parameters
    ----------
    name : str
        One of `names()`.

    Returns
    -------
    RuleSet
        Checked; the same object each time.

    Raises
    ------
    RuleSetRefused
        An unknown name, or a file that can not be used.

    Source
    ------
    Each figure of the rule set names its own.
    """
    if name not in names():
        raise RuleSetRefused(
            say(
                "No rule set “{name}”; expected one of {names}.",
                name=name,
                names=joined(", ", names()),
            )
        )
    return load_file(_folder() / f"{name}.toml")


def load_file(path: Path, *, over: str = "") -> RuleSet:
    """A rule set from a file of the shop's own; it may extend a shipped one.

    Parameters
    ----------
    path : Path
        A rule file. With `extends = "us-federal"` in `[rule_set]` it holds only what differs:
        tables are laid over those of the extended set key by key, lists replace lists whole, and
        `drops` names tables of the extended set that do not hold.
    over : str
        Name of the shipped set the file must extend, unless it extends none; any where empty.

    Returns
    -------
    RuleSet
        Checked.

    Raises
    ------
    RuleSetRefused
        Names file, line and key, and says what was expected there.

    Source
    ------
    Each figure of the rule set names its own.
    """
    texts, table = _read(path, over)
    place = Place(texts)
    identity = table.pop("rule_set")
    rule_set: RuleSet = build(RuleSet, identity | table, place)
    check(rule_set, place)
    return rule_set


def _read(path: Path, over: str = "") -> tuple[tuple[Text, ...], dict[str, Any]]:
    try:
        content = path.read_text("utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise RuleSetRefused(
            say("{path}: can not be read as a text file.", path=path.name)
        ) from error
    text = Text(path, content)
    try:
        table = tomllib.loads(content, parse_float=Decimal)
    except tomllib.TOMLDecodeError as error:
        raise RuleSetRefused(
            say("{path}: not a TOML file: {error}.", path=path.name, error=str(error))
        ) from error
    place = Place((text,)) / "rule_set"
    identity = table.get("rule_set")
    if not isinstance(identity, dict):
        place.refuse(say("expected a table with {identity}.", identity=joined(", ", _IDENTITY)))
    base, drops = identity.pop("extends", None), identity.pop("drops", [])
    _check_identity(identity, place)
    _date_figures(table, identity["effective"])
    if base is None:
        return (text,), table
    if base not in names():
        (place / "extends").refuse(
            say("“{base}” is not one of {names}.", base=base, names=joined(", ", names()))
        )
    if over and base != over:
        (place / "extends").refuse(
            say("“{base}” is not the rule set chosen, {over}.", base=base, over=over)
        )
    texts, under = _read(_folder() / f"{base}.toml")
    if not isinstance(drops, list):
        (place / "drops").refuse("expected a list.")
    for name in drops:
        if name not in under:
            (place / "drops").refuse(
                say("“{name}” is not a table of {base}.", name=name, base=base)
            )
        del under[name]
    return (text, *texts), _laid_over(under, table)


def _check_identity(identity: dict[str, Any], place: Place) -> None:
    for key in _IDENTITY:
        wanted = date if key == "effective" else str
        if type(identity.get(key)) is not wanted:
            kind = "a date such as 2024-07-15" if wanted is date else "text"
            (place / key).refuse(
                say("expected {kind}.", kind=kind) if key in identity else "missing."
            )
    for key in identity:
        if key not in _IDENTITY:
            (place / key).refuse(
                say("not a key here; expected one of {identity}.", identity=joined(", ", _IDENTITY))
            )


def _date_figures(table: Any, effective: date) -> None:
    """Give each figure without a day of its own the day of its file."""
    if isinstance(table, list):
        for one in table:
            _date_figures(one, effective)
    elif isinstance(table, dict):
        if "source" in table:
            table.setdefault("effective", effective)
        for value in table.values():
            _date_figures(value, effective)


def _laid_over(under: dict[str, Any], over: dict[str, Any]) -> dict[str, Any]:
    laid = dict(under)
    for key, value in over.items():
        below = laid.get(key)
        is_figure = isinstance(value, dict) and "source" in value
        if isinstance(value, dict) and isinstance(below, dict) and not is_figure:
            laid[key] = _laid_over(below, value)
        else:
            laid[key] = value
    return laid
